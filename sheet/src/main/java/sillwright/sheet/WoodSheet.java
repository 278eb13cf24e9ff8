package sillwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.wood.Capacity;
import sillwright.wood.Climate;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Interval;
import sillwright.wood.strength.Combined;

import static sillwright.sheet.Text.*;

/// How far it has gone: the figures of all damaged members in tables, then a map of each.
final class WoodSheet {
    private WoodSheet() {}

    static Markup page(Assessment assessment, Print.Paper paper) {
        Units units = assessment.settings().units();
        List<Markup> all = new ArrayList<>(List.of(h2("wood", "Wood")));
        Climate.words(assessment.survey().building()).ifPresent(words -> all.add(p(words)));
        List<Condition> damaged = assessment.wood().all().stream().filter(Condition::needsWork).toList();
        if (damaged.isEmpty()) all.add(p("No member was found soft, so there is nothing to map."));
        else {
            all.addAll(left(assessment, damaged, units));
            all.addAll(DoubtSheet.part(assessment, damaged, units));
            all.addAll(WoodOutlooks.part(assessment, damaged));
        }
        List<Markup> over = List.of(h3("wood-maps", "Decay maps"), Text.drawing(MemberMap.legend(units)));
        return div("upright runon", div("head", all), damaged.isEmpty() ? List.of() : Flow.of(over, Extent.over(over), damaged.stream().map(condition -> new Flow.Entry(member(assessment, condition, units), List.of(), List.of())).toList(), paper.roomMm()));
    }

    /// `south 4`: the side and the number that a member goes by on its elevation.
    static Map<String, String> places(Assessment assessment) {
        Map<String, String> places = new LinkedHashMap<>();
        for (String side : assessment.survey().sides().keySet()) Elevation.numbers(assessment, side).forEach((member, number) -> places.put(member, side + " " + number));
        return places;
    }

    private static List<Markup> left(Assessment assessment, List<Condition> damaged, Units units) {
        List<Markup> all = new ArrayList<>(List.of(h3("wood-left", "How much is soft, and what is left")));
        all.add(small("Depths between the probes are estimated; the bounds in brackets hold the truth nine times in ten. Bending: what is left of the modulus about the level axis and about the other."));
        Map<String, String> places = places(assessment);
        List<List<?>> rows = new ArrayList<>();
        for (Condition condition : damaged)
            for (Damage damage : condition.damages()) rows.add(row(assessment, condition, damage, damage == condition.damages().getFirst(), places, units));
        all.addAll(table(List.of("Where", "Member", "Soft", "Deepest", "Soft wood, " + (units == Units.US ? "in³" : "mL"), "Left", "at worst", "Bending", "Wettest"),
                List.of(7, 24, 24, 8, 14, 5, 5, 8, 5), rows));
        if (damaged.stream().anyMatch(condition -> condition.member().bearsLoad())) all.add(div("caution", b("Caution. "),
                "Where a member bears load, what is left is a screening figure. Shore before cutting; a licensed engineer settles the load."));
        if (damaged.stream().anyMatch(condition -> condition.moisture().stream().anyMatch(reading -> !reading.within())))
            all.add(small("* read outside 7 to 30 %, where a pin meter is not to be trusted. Moisture is corrected for temperature."));
        all.addAll(loads(assessment, damaged, units));
        return all;
    }

    /// How much its load uses of what is left, of those that bear one.
    private static List<Markup> loads(Assessment assessment, List<Condition> damaged, Units units) {
        Map<String, String> places = places(assessment);
        Shared taken = new Shared(damaged.stream().map(condition -> assessment.wood().capacity(condition.member().id()).map(Capacity::assumptions).orElse(List.of())).toList(), 1);
        List<List<?>> rows = new ArrayList<>();
        for (Condition condition : damaged)
            assessment.wood().capacity(condition.member().id()).ifPresent(capacity -> {
                String used = capacity.verdict() == Capacity.Verdict.HOLLOW ? "not known: hollow" : used(capacity.utilisation());
                rows.add(List.of(places.getOrDefault(condition.member().id(), ""), Said.title(condition.member()), capacity.alert().isPresent() ? act(used) : used,
                        capacity.governing().map(at -> Said.length(at.stationMm(), units) + " from its start: " + Choice.said(at.by())).orElse(""), taken.letters(capacity.assumptions())));
            });
        List<Markup> all = new ArrayList<>(Text.table(List.of("Where", "Member that bears load", "Load uses of what is left, by screening", "Where it is worst, and what governs", "Taken for granted"), List.of(7, 26, 24, 25, 18), rows));
        all.addAll(taken.run("Taken for granted:"));
        return all;
    }

    private static List<?> row(Assessment assessment, Condition condition, Damage damage, boolean first, Map<String, String> places, Units units) {
        String id = condition.member().id();
        boolean outside = condition.moisture().stream().anyMatch(reading -> !reading.within());
        return List.of(first ? places.getOrDefault(id, "") : "", first ? Said.title(condition.member()) : "", Said.stretch(damage, units),
                Said.length(damage.deepestMm(), units) + (damage.ranOut() ? " or more" : ""), soft(damage.volumeMl(), units),
                Words.percent(damage.section().areaKept()), Words.percent(damage.section().keptLow()),
                n(Words.percent(damage.section().sxKept()) + ", " + Words.percent(damage.section().syKept())),
                first ? condition.wettest().map(Words::percent).orElse("–") + (outside ? "*" : "") : "");
    }

    private static String soft(Interval mL, Units units) { return Words.woodNumber(mL.median(), units) + " (" + Words.woodNumber(mL.low(), units) + " – " + Words.woodNumber(mL.high(), units) + ")"; }

    private static String used(Interval share) { return used(share.median()) + " (" + used(share.low()) + " – " + used(share.high()) + ")"; }

    private static String used(double share) { return share >= Combined.BEYOND ? "beyond count" : Words.significant(share, 2); }

    private static Markup member(Assessment assessment, Condition condition, Units units) {
        List<Markup> all = new ArrayList<>(List.of(h4(Words.sentence(Said.title(condition.member())) + ", " + places(assessment).getOrDefault(condition.member().id(), "") + ": " + Said.state(condition.state())).with("id",
                "wood-" + condition.member().id())));
        Optional<Capacity> capacity = assessment.wood().capacity(condition.member().id());
        capacity.flatMap(Capacity::alert).ifPresent(alert -> all.add(div("caution", b(alert + " "), capacity.get().words() + " A shore there bears about "
                + Words.force(capacity.get().shore().loadN(), units) + ", on a pad " + Said.length(capacity.get().shore().padSideMm(), units) + " square on ordinary ground.")));
        if (!condition.maps().isEmpty()) all.add(Text.drawing(MemberMap.small(condition, units)));
        return div("atom", all);
    }
}
