package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Sighting;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.work.Repair;

import static sillwright.sheet.Text.*;

/// Each side: its elevation on a sheet of its own, then its members and what was seen there.
final class WalkSheet {
    private WalkSheet() {}

    static List<Markup> pages(Assessment assessment) {
        List<Markup> all = new ArrayList<>();
        for (Side side : assessment.survey().sides().values()) {
            all.add(div("lying", Text.drawing(Elevation.draw(assessment, side.id()))));
            all.add(div("upright", table(assessment, side)));
        }
        return all;
    }

    private static List<Markup> table(Assessment assessment, Side side) {
        Units units = assessment.settings().units();
        List<Markup> all = new ArrayList<>(List.of(h2("side-" + side.id(), Said.title(side))));
        String clearance = side.ground().clearance().map(mm -> ", the lowest wood " + Said.length(mm.own(), units) + " above it").orElse("");
        all.add(p("Looks " + Said.point(side.bearing().own()) + " (" + Math.round(side.bearing().own()) + "°), " + Said.length(side.lengthMm(), units)
                + " long. At its foot: " + Choice.said(side.ground().surface()) + clearance + "."));
        Map<String, Integer> numbers = Elevation.numbers(assessment, side.id());
        List<List<?>> rows = new ArrayList<>();
        for (Member member : assessment.survey().membersOn(side.id())) rows.add(row(assessment, member, numbers.get(member.id()), units));
        if (rows.isEmpty()) all.add(p("No member of this side was described."));
        all.addAll(Text.table(List.of("No.", "Member", "Size", "Condition", "Moisture", "Soft to", "Treatment"), List.of(4, 29, 24, 10, 8, 9, 16),
                rows));
        List<Object> seen = new ArrayList<>();
        for (Sighting sighting : assessment.survey().sightingsOn(side.id()))
            seen.add((sighting.seen() ? "" : "looked for, not seen: ") + sighting.sign().words() + sighting.member()
                    .map(id -> ", " + Said.title(assessment.survey().members().get(id))).orElse("")
                    + (sighting.words().isBlank() ? "" : " – " + sighting.words()));
        if (!seen.isEmpty()) {
            all.add(h3("seen-" + side.id(), "Seen on this side"));
            all.addAll(list(seen));
        }
        return all;
    }

    private static List<?> row(Assessment assessment, Member member, int number, Units units) {
        Condition condition = assessment.wood().conditions().get(member.id());
        String state = condition == null ? "not worked" : Said.state(condition.state());
        String moisture = condition == null ? "" : condition.wettest().map(Words::percent).orElse("–");
        double deepest = condition == null ? 0 : condition.damages().stream().mapToDouble(Damage::deepestMm).max().orElse(0);
        List<Object> treatments = new ArrayList<>();
        assessment.work().repairs().stream().filter(repair -> repair.damage().member().id().equals(member.id())).forEach(repair ->
                treatments.add(p(treatment(repair))));
        boolean wet = condition != null && condition.wettest().orElse(0.0) >= 0.20;
        return List.of(String.valueOf(number), List.of(new Node.Text(Said.title(member)), small(Choice.said(member.kind()) + ", " + member.species()
                + ", " + Choice.said(member.role()))),
                Said.size(member.widthMm(), member.depthMm(), member.lengthMm(), units), condition != null && condition.needsWork() ? b(state)
                        : new Node.Text(state), wet ? b(moisture) : new Node.Text(moisture),
                deepest > 0 ? Said.length(deepest, units) : "–", treatments.isEmpty() ? new Node.Text("–") : treatments);
    }

    private static List<Node> treatment(Repair repair) {
        String words = repair.id() + " " + repair.treatment().words();
        Node urgent = repair.urgent() ? act(", cannot wait") : new Node.Text("");
        return words.contains(":") ? List.of(n(words), urgent) : List.of(new Node.Text(words), urgent);
    }
}
