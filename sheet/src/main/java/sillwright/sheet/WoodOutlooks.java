package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.measure.Words;
import sillwright.wood.Condition;
import sillwright.wood.Forecast;
import sillwright.wood.Interval;
import sillwright.wood.Outlook;

import static sillwright.sheet.Text.*;

/// Drying and decay to come, a row for each damaged member.
final class WoodOutlooks {
    private WoodOutlooks() {}

    static List<Markup> part(Assessment assessment, List<Condition> damaged) {
        if (assessment.wood().outlooks().isEmpty()) return List.of();
        List<Markup> all = new ArrayList<>(List.of(div("keep", h3("wood-outlook", "Drying and decay to come"), div("caution", b("Caution. "), Outlook.CAUTION))));
        Map<String, String> places = WoodSheet.places(assessment);
        List<List<?>> rows = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (Condition condition : damaged) {
            Optional<Outlook> outlook = assessment.wood().outlook(condition.member().id());
            String place = places.getOrDefault(condition.member().id(), ""), title = Said.title(condition.member());
            if (outlook.isEmpty()) unknown.add(title);
            else rows.add(row(outlook.get(), place, title));
        }
        double limit = assessment.wood().outlooks().values().iterator().next().limit();
        all.addAll(table(List.of("Where", "Member", "Liquid water on it", "Moisture", "Dry to " + Words.percent(limit) + ", the water stopped", "Years to the next grade of decay",
                "with the water stopped", "20 years"), List.of(7, 22, 10, 7, 22, 11, 9, 12), rows));
        all.add(small("Next grade: slight, moderate or severe decay, or as good as failed. 20 years: the strip runs from now to 20 years on, its height from sound to failed. Firm and hatched: with the water as it is, and its bounds; dashed: with the water stopped."));
        if (rows.stream().anyMatch(row -> row.get(4).toString().contains("*")))
            all.add(small("* with its coat taken off there, and a sheet hung before it that keeps rain out and lets air by."));
        if (!unknown.isEmpty()) all.add(p(b(Words.sentence(Words.list(unknown)) + ": "), Outlook.NO_SOURCE));
        return all;
    }

    private static List<?> row(Outlook outlook, String place, String title) {
        return List.of(place, title, Words.number(outlook.wettingHours(), 0) + " h/y" + (outlook.atAnEnd() ? ", end" : ""), Outlook.moist(outlook.meanMoisture()), dries(outlook),
                next(outlook.asIs()), next(outlook.stopped()),
                Text.drawing(OutlookDrawing.strip(outlook, title)));
    }

    private static String dries(Outlook outlook) {
        Interval days = outlook.dryDownDays();
        if (days.median() <= 0) return "dry enough to treat";
        String opened = outlook.openedDays().median() < days.median() ? "; opened* " + brief(outlook.openedDays().median()) : "";
        if (days.median() >= Outlook.LONGEST_DAYS) return "over a year" + opened;
        String high = days.high() >= Outlook.LONGEST_DAYS ? "over a year" : brief(days.high()), low = brief(days.low());
        return brief(days.median()) + " (" + (high.endsWith(unit(days.low())) ? low.substring(0, low.indexOf(' ')) : low) + " – " + high + ")" + opened;
    }

    /// Short, so that a row stays one line.
    private static String brief(double days) { return Math.max(1, Math.round(unit(days).equals("d") ? days : days / 7)) + " " + unit(days); }

    private static String unit(double days) { return days < 21 ? "d" : "wk"; }

    /// `4`, or with its bounds where they differ from it.
    private static String years(Interval years) {
        String low = Words.number(years.low(), 0), high = Words.number(years.high(), 0), said = Words.number(years.median(), 0);
        return low.equals(high) ? said : said + " (" + low + " to " + high + ")";
    }

    private static String next(Forecast forecast) {
        return forecast.yearsToNext().map(WoodOutlooks::years)
                .orElse("over " + Forecast.LONGEST_YEARS);
    }
}
