package sillwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.walk.Member.Coat;
import sillwright.walk.Member.Contact;
import sillwright.walk.Member.EndGrain;
import sillwright.walk.Member.Face;
import sillwright.walk.Member.Role;
import sillwright.walk.Member.Run;
import sillwright.walk.MemberKind;
import sillwright.walk.Side;
import sillwright.walk.Survey;
import sillwright.water.Source;
import sillwright.water.WaterFindings;
import sillwright.watch.WatchFindings;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Interval;
import sillwright.wood.Maps;
import sillwright.wood.SectionLeft;
import sillwright.wood.WoodFindings;
import sillwright.work.Repair;
import sillwright.work.Treatment;
import sillwright.work.WorkFindings;

/// An invented side with sixty members close together, long names, all treatments, damage at either end and nowhere
/// near one: what a drawing must bear.
final class Crowd {
    static final int MEMBERS = 60;

    private Crowd() {}

    private static Quantity mm(double value) { return Quantity.read(Math.round(value) + "mm", Kind.LENGTH); }

    static Assessment assessment(Units units) { return assessment(units, 2); }

    /// @param every so many members, one is damaged
    static Assessment assessment(Units units, int every) {
        Side side = new Side("long/side",
                "A side with a title that is much longer than any title block of a drawing has ever had the room for, & <marks>",
                Quantity.read("0deg", Kind.ANGLE), mm(14000), List.of(),
                new Side.Ground(Side.Surface.GRASS, Optional.empty(), Optional.empty()), Optional.empty(), List.of());
        Map<String, Member> members = new LinkedHashMap<>();
        Map<String, Condition> conditions = new LinkedHashMap<>();
        List<Repair> repairs = new ArrayList<>();
        for (int i = 0; i < MEMBERS; i++) {
            Run run = Run.values()[i % 4];
            double length = 400 + i * 97 % 3000;
            Member member = new Member("m" + i, side.id(), MemberKind.values()[i % MemberKind.values().length], i % 3 == 0 ? "" : "member " + i
                    + " of a very long row, counted from the left end", Role.values()[i % 3], "oak-white", run,
                    mm(40 + i % 7 * 30), mm(20 + i % 5 * 30), mm(length), mm(i * 230), mm(i % 4 * 600), run == Run.RAKING
                            ? Optional.of(Quantity.read((i % 2 == 0 ? "-" : "") + "30deg", Kind.ANGLE)) : Optional.empty(),
                    EndGrain.BARE, EndGrain.BARE, Coat.NONE, Contact.NONE);
            members.put(member.id(), member);
            if (i % every != 0) {
                conditions.put(member.id(), new Condition(member, Condition.State.NOT_PROBED, List.of(), List.of(), Optional.empty(), List.of(), 0,
                        "", List.of()));
                continue;
            }
            Face face = member.faces().getFirst();
            double from = i % 3 == 0 ? 0 : length * 0.55, to = i % 3 == 1 ? length : i % 3 == 0 ? length * 0.3 : length * 0.8,
                    deep = member.throughMm(face) * (0.2 + i % 5 * 0.2);
            SectionLeft left = new SectionLeft(from, deep, 0, 0, 0, 1 - deep / member.throughMm(face), 0.5, 0.4, 0, 0, 0);
            Damage damage = new Damage(member.id() + "/1", member, face, from, to, deep, new Interval(10, 20, 40), 1000, left, i % 4 == 0);
            conditions.put(member.id(), new Condition(member, Condition.State.DECAYED, List.of(Maps.of(member, face, (along, across) -> along >= from
                    && along <= to ? deep : 0, List.of())), List.of(damage), Optional.empty(), List.of(), 4, "Soft.", List.of()));
            repairs.add(repair("R" + (repairs.size() + 1), damage, i, repairs.size()));
        }
        List<WaterFindings.RankedSource> sources = new ArrayList<>();
        for (int i = 0; i < 12; i++) sources.add(new WaterFindings.RankedSource("W" + (i + 1), Source.values()[i], side.id(), "", i * 1200, i * 300,
                0.9, 0.2, List.of(), List.of(), List.of()));
        Survey survey = new Survey(Optional.empty(), Map.of(side.id(), side), members, List.of(), List.of(), List.of(), List.of(), List.of(), 1);
        return new Assessment(survey, Porch.settings(units), new WaterFindings(List.of(), List.of(), sources, Optional.empty(), List.of()),
                new WoodFindings(conditions, List.of()),
                new WorkFindings(repairs, List.of(), List.of(), List.of(), List.of(), List.of()), new WatchFindings(List.of()));
    }

    private static Repair repair(String id, Damage damage, int i, int kind) {
        Member member = damage.member();
        double length = member.lengthMm();
        Treatment treatment = switch (kind % 8) {
            case 0 -> new Treatment.Watch("spring");
            case 1 -> new Treatment.Recoat(20_000);
            case 2 -> new Treatment.Consolidate(100);
            case 3 -> new Treatment.Dutchman(length * 0.5, member.widthMm() * 0.6, member.depthMm() * 0.5);
            case 4 -> new Treatment.BuildUp(length * 0.4);
            case 5 -> new Treatment.ButtSplice(length * 0.5);
            case 6 -> new Treatment.ScarfSplice(length * 0.7, 8, Math.min(length * 0.6, 8 * member.depthMm()), 0);
            default -> new Treatment.Replace("nothing is left");
        };
        return new Repair(id, damage, treatment, List.of(), List.of(), i % 5 == 0, List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }
}
