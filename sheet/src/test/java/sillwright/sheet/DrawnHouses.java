package sillwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

import sillwright.Assessment;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.walk.Member.Face;
import sillwright.walk.Member.Run;
import sillwright.walk.MemberKind;
import sillwright.walk.ProbeReading;
import sillwright.walk.Side;
import sillwright.walk.Spot;
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

/// Houses drawn from a seed: three to five walls of any length and bearing, roof edges and openings, members of every kind, probes, damage, repairs and sources anywhere on them.
final class DrawnHouses {
    private final Random random;
    private final Map<String, Side> sides = new LinkedHashMap<>();
    private final Map<String, Member> members = new LinkedHashMap<>();
    private final Map<String, Condition> conditions = new LinkedHashMap<>();
    private final List<Repair> repairs = new ArrayList<>();

    private DrawnHouses(long seed) { this.random = new Random(seed); }

    static Assessment assessment(long seed, Units units) { return new DrawnHouses(seed).drawn(units); }

    private static Quantity mm(double value) { return Quantity.read(Math.round(value) + "mm", Kind.LENGTH); }

    private double between(double low, double high) { return low + (high - low) * random.nextDouble(); }

    private <T> T any(T[] all) { return all[random.nextInt(all.length)]; }

    private Assessment drawn(Units units) {
        int walls = 3 + random.nextInt(3);
        for (int i = 0; i < walls; i++) side("wall-" + i, 360.0 * i / walls + between(0, 50));
        for (int i = 0, count = 8 + random.nextInt(50); i < count; i++) member(i, any(sides.values().toArray(Side[]::new)));
        List<WaterFindings.RankedSource> sources = new ArrayList<>();
        for (int i = 0, count = 2 + random.nextInt(14); i < count; i++) {
            Side side = any(sides.values().toArray(Side[]::new));
            sources.add(new WaterFindings.RankedSource("W" + (i + 1), any(Source.values()), side.id(), "", between(0, side.lengthMm()), between(0, 6000), 0.9, 0.2, List.of(), List.of(), List.of()));
        }
        Survey survey = new Survey(Optional.empty(), sides, members, List.of(), List.of(), List.of(), List.of(), List.of(), 1);
        return new Assessment(survey, Porch.settings(units), new WaterFindings(List.of(), List.of(), sources, Optional.empty(), List.of()), new WoodFindings(conditions, List.of()),
                new WorkFindings(repairs, List.of(), List.of(), List.of(), List.of(), List.of()), new WatchFindings(List.of()));
    }

    private void side(String id, double bearing) {
        double length = between(2500, 20000), eave = between(2400, 6500);
        List<Side.RoofEdge> edges = random.nextBoolean() ? List.of(new Side.RoofEdge("eave", Side.Edge.EAVE, mm(0), mm(length), mm(eave), mm(300), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()))
                : List.of(new Side.RoofEdge("gable", Side.Edge.RAKE, mm(0), mm(length), mm(eave), mm(300), Optional.of(mm(eave + length * 0.35)), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
        List<Side.Opening> openings = new ArrayList<>();
        for (int i = 0, count = random.nextInt(5); i < count; i++)
            openings.add(new Side.Opening(any(Side.OpeningKind.values()), mm(between(0, length - 1000)), mm(between(0, eave - 1500)), mm(between(500, 1000)), mm(between(600, 1400))));
        sides.put(id, new Side(id, random.nextBoolean() ? "" : "the " + id + " towards the lane", Quantity.read(Math.round(bearing % 360) + "deg", Kind.ANGLE), mm(length), edges,
                new Side.Ground(any(Side.Surface.values()), Optional.empty(), Optional.empty()), Optional.empty(), openings));
    }

    private void member(int i, Side side) {
        Run run = any(Run.values());
        double length = Math.round(between(200, run == Run.UPRIGHT ? 3000 : Math.min(6000, side.lengthMm())));
        Member member = new Member("m" + i, side.id(), any(MemberKind.values()), random.nextInt(3) == 0 ? "" : "piece " + i + " by the door", any(Member.Role.values()), "oak-white", run, mm(between(40, 250)), mm(between(15, 200)),
                mm(length), mm(between(0, Math.max(1, side.lengthMm() - length))), mm(between(0, 3000)), run == Run.RAKING ? Optional.of(Quantity.read(Math.round(between(-50, 50)) + "deg", Kind.ANGLE)) : Optional.empty(),
                Member.EndGrain.BARE, Member.EndGrain.BARE, Member.Coat.NONE, Member.Contact.NONE);
        members.put(member.id(), member);
        if (random.nextInt(3) == 0) {
            conditions.put(member.id(), new Condition(member, Condition.State.NOT_PROBED, List.of(), List.of(), Optional.empty(), List.of(), 0, "", List.of()));
            return;
        }
        Face face = any(member.faces().toArray(Face[]::new));
        double start = random.nextInt(3) == 0 ? 0 : between(0, length * 0.8), end = Math.min(length, start + between(length * 0.05, length)), deep = member.throughMm(face) * between(0.05, 1);
        List<ProbeReading> probes = new ArrayList<>();
        for (int n = 0, count = random.nextInt(30); n < count; n++) {
            double along = between(0, length);
            probes.add(new ProbeReading(new Spot(member.id(), face, mm(along), mm(between(0, member.acrossMm(face)))), mm(along >= start && along <= end ? between(1, 90) : 0), mm(100), false));
        }
        Damage damage = new Damage(member.id() + "/1", member, face, start, end, deep, new Interval(10, 20, 40), 1000, new SectionLeft(start, deep, 0, 0, 0, 1 - deep / member.throughMm(face), 0.5, 0.4, 0, 0, 0), random.nextBoolean());
        conditions.put(member.id(), new Condition(member, Condition.State.DECAYED, List.of(Maps.of(member, face, (along, across) -> along >= start && along <= end ? deep : 0, probes)), List.of(damage), Optional.empty(), List.of(), probes.size(),
                "Soft.", List.of()));
        Treatment treatment = switch (random.nextInt(5)) {
            case 0 -> new Treatment.Consolidate(100);
            case 1 -> new Treatment.Dutchman(Math.min(length, end - start + 20), member.widthMm() * between(0.3, 1), member.depthMm() * between(0.2, 0.6));
            case 2 -> new Treatment.ButtSplice(length * between(0.1, 0.9));
            case 3 -> new Treatment.ScarfSplice(length * 0.7, 8, Math.min(length * 0.6, 8 * member.depthMm()), 0);
            default -> new Treatment.Replace("nothing is left");
        };
        repairs.add(new Repair("R" + (repairs.size() + 1), damage, treatment, List.of(), List.of(), random.nextInt(5) == 0, List.of(), List.of(), List.of(), List.of(), List.of(), List.of()));
    }
}
