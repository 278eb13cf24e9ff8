package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.wood.Capacity;
import sillwright.wood.Climate;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Outlook;

import static sillwright.sheet.Text.*;

/// How far it has gone: every damaged member with its map.
final class WoodSheet {
    private WoodSheet() {}

    static Markup page(Assessment assessment) {
        Units units = assessment.settings().units();
        List<Markup> all = new ArrayList<>(List.of(h2("wood", "Wood")));
        Climate.words(assessment.survey().building()).ifPresent(words -> all.add(p(words)));
        List<Condition> damaged = assessment.wood().all().stream().filter(Condition::needsWork).toList();
        if (damaged.isEmpty()) all.add(p("No member was found soft, so there is nothing to map."));
        else all.add(small("Each map lays the probed faces of a member open. The depths between the probes are estimated, and every figure from "
                + "them is given with the bounds that hold the truth nine times in ten."
                + " Strength figures are screening values."));
        if (!assessment.wood().outlooks().isEmpty()) all.add(div("caution", b("Drying and decay to come. "), Outlook.CAUTION));
        for (Condition condition : damaged) all.add(member(assessment, condition, units));
        return div("upright", all);
    }

    private static Markup member(Assessment assessment, Condition condition, Units units) {
        List<Markup> all = new ArrayList<>(List.of(h3("wood-" + condition.member().id(), Words.sentence(Said.title(condition.member())) + ": "
                + Said.state(condition.state()))));
        StringBuilder found = new StringBuilder(condition.words());
        for (Damage damage : condition.damages()) found.append(' ').append(damage(damage, units));
        all.add(p(Said.sideTitle(assessment.survey(), condition.member().side()) + ". " + found + " " + moisture(condition)));
        assessment.wood().capacity(condition.member().id()).ifPresent(capacity -> all.addAll(capacity(capacity, units)));
        if (condition.member().bearsLoad() && assessment.wood().capacity(condition.member().id()).flatMap(Capacity::alert).isEmpty())
            all.add(div("caution", b("Caution. "),
                    "Bears load: what is left is a screening figure. Shore before cutting; a licensed engineer settles the load."));
        if (!condition.maps().isEmpty()) all.add(Text.drawing(MemberMap.draw(condition, units)));
        assessment.wood().outlook(condition.member().id()).ifPresentOrElse(outlook -> all.addAll(outlook(outlook, Said.title(condition.member()))), () -> {
            if (!assessment.wood().outlooks().isEmpty()) all.add(p(Outlook.NO_SOURCE));
        });
        return div("member", all);
    }

    private static List<Markup> capacity(Capacity capacity, Units units) {
        List<Markup> all = new ArrayList<>();
        all.add(p(capacity.words() + " "));
        capacity.alert().ifPresent(alert -> all.add(div("caution", b(alert + " "), "A shore there bears about " + Words.force(capacity.shore().loadN(), units) + ", on a pad "
                + Said.length(capacity.shore().padSideMm(), units) + " square on ordinary ground.")));
        all.add(small("Taken for granted: " + String.join(" ", capacity.assumptions())));
        return all;
    }

    private static List<Markup> outlook(Outlook outlook, String title) {
        String next = outlook.asIs().yearsToNext().map(years -> " With the water as it is, the next grade of decay is about " + Words.number(years.median(), 0) + " years off ("
                + Words.number(years.low(), 0) + " to " + Words.number(years.high(), 0) + ").").orElse("");
        String stopped = outlook.stopped().yearsToNext().map(years -> " With it stopped, about " + Words.number(years.median(), 0) + ".").orElse(" With it stopped, not within 60 years.");
        return List.of(p(outlook.words() + next + (next.isEmpty() ? "" : stopped)), Text.drawing(OutlookDrawing.draw(outlook, title)));
    }

    private static String moisture(Condition condition) {
        if (condition.moisture().isEmpty()) return "No moisture reading was taken.";
        long beyond = condition.moisture().stream().filter(reading -> !reading.within()).count();
        return "Moisture, corrected for temperature: " + condition.wettest().map(Words::percent).orElse("unknown") + " at the wettest of "
                + Words.count(condition.moisture().size(), "reading")
                + (beyond == 0 ? "." : "; " + beyond + " lie outside 7 to 30 %, where a pin meter is not to be trusted.");
    }

    private static String damage(Damage damage, Units units) {
        return "Soft " + Said.stretch(damage, units) + ", " + Said.length(damage.deepestMm(), units) + " at the deepest"
                + (damage.ranOut() ? " (a probe ran out: at least that)" : "") + ". "
                + "Softened and decayed wood " + Said.wood(damage.volumeMl().median(), units) + " (" + Said.wood(damage.volumeMl().low(), units)
                        + " to " + Said.wood(damage.volumeMl().high(), units) + "). "
                + Words.percent(damage.section().areaKept()) + " of the section is left at its worst place, at worst "
                        + Words.percent(damage.section().keptLow()) + ".";
    }
}
