package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Interval;
import sillwright.wood.NextProbe;

import static sillwright.sheet.Text.*;

/// How sure the bounds of each damage are, what to cut out to have all of it, and where one more push of the probe would tell most: a row for each.
final class DoubtSheet {
    private DoubtSheet() {}

    static List<Markup> part(Assessment assessment, List<Condition> damaged, Units units) {
        Map<String, String> places = WoodSheet.places(assessment);
        List<List<?>> rows = new ArrayList<>();
        for (Condition condition : damaged)
            for (Damage damage : condition.damages())
                rows.add(row(places.getOrDefault(condition.member().id(), ""), damage, damage == condition.damages().getFirst() ? condition.next() : Optional.empty(), units));
        String unit = units == Units.US ? "in" : "mm";
        List<Markup> all = new ArrayList<>(List.of(h3("wood-doubt", "How sure that is, and where to probe next")));
        all.add(small("The bounds hold nine times in ten. Lengths in " + unit + ". The recess is the smallest with square corners that takes all that may be soft, and sound wood beside it. Probe next: the spot whose reading is expected to leave "
                + "least open, by turns with the widest stretch not probed; there, " + String.join(", ", Stream.of(NextProbe.Why.values()).map(why -> letter(why) + " " + why.words()).toList())
                + ". Open: what is known of the soft wood of that face, " + (units == Units.US ? "in³" : "mL") + ", or of the line to cut to, and the share of that width which a reading there would leave. Unprobed: faces that softness may have reached."));
        all.addAll(table(List.of("Where", "Deepest, " + unit, "Skin soft", "Soft from, to, " + unit, "Recess: long × (from – to) × deep", "Probe next: along, across", "", "Open", "Leaves", "Unprobed"), units == Units.US ? List.of(6, 8, 9, 19, 24, 17, 2, 7, 3, 5) : List.of(6, 8, 9, 19, 23, 13, 2, 7, 3, 10), rows));
        return all;
    }

    private static List<?> row(String place, Damage damage, Optional<NextProbe> next, Units units) {
        Damage.Doubt doubt = damage.doubt();
        Damage.CutOut cut = doubt.cutOut();
        String soft = Words.percent(doubt.softShare().median()) + " (" + Words.percent(doubt.softShare().low()).replace(" %", "") + " – " + Words.percent(doubt.softShare().high()).replace(" %", "") + ")";
        String recess = Choice.said(cut.face()) + ": " + bare(cut.toMm() - cut.fromMm(), units) + " × (" + bare(cut.acrossFromMm(), units) + " – " + bare(cut.acrossToMm(), units) + ") × " + bare(cut.deepMm(), units);
        return List.of(n(place), n(between(doubt.deepestMm(), units)), n(soft), between(doubt.softFromMm(), units) + " to " + between(doubt.softToMm(), units), recess,
                next.map(one -> push(one, units)).orElse(""), next.filter(one -> !one.enough()).map(one -> letter(one.why())).orElse(""), next.filter(one -> !one.enough()).map(one -> n(open(one, units))).orElse(n("")),
                next.filter(one -> !one.enough()).map(one -> Words.percent(one.left())).orElse(""), next.map(one -> String.join(", ", one.unseen().stream().map(Choice::said).toList())).orElse(""));
    }

    private static String letter(NextProbe.Why why) { return Shared.letter(why.ordinal(), 'a'); }

    private static String push(NextProbe next, Units units) {
        return next.enough() ? "probed enough" : Choice.said(next.face()) + ": " + bare(next.alongMm(), units) + ", " + bare(next.acrossMm(), units);
    }

    private static String open(NextProbe next, Units units) {
        return switch (next.decides()) {
            case VOLUME -> Words.woodNumber(next.now().low(), units) + " – " + Words.woodNumber(next.now().high(), units);
            case CUT_LINE -> "line " + between(next.now(), units);
        };
    }

    private static String between(Interval interval, Units units) {
        String low = bare(interval.low(), units), high = bare(interval.high(), units);
        return low.equals(high) ? low : low + " – " + high;
    }

    /// Without its unit, which the column names; feet keep theirs.
    private static String bare(double mm, Units units) { return Said.length(mm, units).replaceFirst(" (in|mm)$", ""); }
}
