package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.Assessment;
import sillwright.measure.Words;
import sillwright.watch.Gathered;
import sillwright.watch.LookAhead;
import sillwright.watch.Trend;
import sillwright.watch.Verdict;
import sillwright.watch.WatchFindings.Ask;
import sillwright.watch.WatchFindings.Check;
import sillwright.watch.WatchFindings.Round;

import static sillwright.sheet.Text.*;

/// The rounds of the year as lists to walk with: a box to tick and room to write.
final class WatchSheet {
    private WatchSheet() {}

    static Markup page(Assessment assessment) { return div("upright", h2("watch", "Watch"), told(assessment)); }

    /// The same without its heading, for a page that has one.
    static List<Markup> told(Assessment assessment) {
        List<Markup> all = new ArrayList<>();
        verdicts(assessment, all);
        trends(assessment, all);
        due(assessment, all);
        assessment.watch().ahead().ifPresent(ahead -> ahead(assessment, ahead, all));
        if (assessment.watch().rounds().isEmpty()) all.add(p("No round is planned."));
        for (Round round : assessment.watch().rounds()) round(assessment, round, all);
        return all;
    }

    static void verdicts(Assessment assessment, List<Markup> all) {
        if (assessment.watch().verdicts().isEmpty()) return;
        all.add(h3("verdicts", "Did it work?"));
        List<List<?>> rows = new ArrayList<>();
        for (Verdict verdict : assessment.watch().verdicts()) rows.add(List.of(verdict.id(), switch (verdict.state()) {
            case DRY -> "dry";
            case DRYING -> "drying";
            case NOT_DRYING -> "NOT DRYING";
            case WET_AGAIN -> "WET AGAIN";
            case TOO_EARLY -> "too early";
            case NO_PLACE -> "not metered";
        }, verdict.words()));
        all.addAll(table(List.of("", "Verdict", "Why"), List.of(6, 14, 80), rows));
    }

    static void trends(Assessment assessment, List<Markup> all) {
        if (assessment.watch().trends().isEmpty()) return;
        all.add(h3("trends", "Where it is going"));
        List<List<?>> rows = new ArrayList<>();
        for (Trend trend : assessment.watch().trends()) rows.add(List.of(drawing(TrendDrawing.strip(trend)), trend.words()));
        all.addAll(table(List.of("Readings, and what dry wood would show", "What may be said"), List.of(28, 72), rows));
    }

    private static void due(Assessment assessment, List<Markup> all) {
        if (assessment.watch().due().isEmpty()) return;
        all.add(h3("due", "What falls due"));
        List<List<?>> rows = new ArrayList<>();
        for (Gathered due : Gathered.of(assessment.watch().due(), assessment.survey(), assessment.settings().start())) rows.add(List.of(due.on().map(Said::day).orElse("now"), due.words(), due.because(), Words.number(due.hours(), 1) + " h" + (due.money().draws() > 0 ? ", " + assessment.work().plan().cost().words(due.money()) : "")));
        all.addAll(table(List.of("By", "What", "Because", "About"), List.of(12, 50, 22, 16), rows));
    }

    private static void ahead(Assessment assessment, LookAhead ahead, List<Markup> all) {
        var units = assessment.settings().units();
        all.add(h3("ahead", "Ten years ahead"));
        all.add(p(ahead.words(units)));
        all.add(drawing(AheadDrawing.draw(ahead, units)));
        List<List<?>> rows = new ArrayList<>();
        for (int c = 0; c < ahead.courses().size(); c++) {
            LookAhead.Course course = ahead.courses().get(c);
            LookAhead.Year two = course.years().get(2), last = course.years().getLast();
            LookAhead.Spent cost = ahead.cost(last);
            rows.add(List.of(AheadDrawing.letter(c), course.title(), Words.wood(last.goneMl().median(), units), volume(last.lostMl(), units), ahead.sum(cost.spent().median()), ahead.sum(cost.all()),
                    Words.percent(two.risk()), Words.percent(last.risk())));
        }
        all.addAll(table(List.of("", "Course", "Soft or cut by then", "Lost once all is mended", "Spent by then", "With mending then", "At a limit in 2 years", "In 10"), List.of(4, 19, 12, 20, 11, 18, 9, 7), rows));
        all.add(p("What is soft must be cut out some day, and its repair takes sound wood with it: so every course is counted to the day when all is mended. Today they stand alike; they part as decay goes on. "
                + (ahead.priced() ? "" : "A price book puts money in place of the hours. ") + sillwright.wood.Outlook.CAUTION + " " + String.join(" ", ahead.left())));
    }

    private static String volume(sillwright.wood.Interval wood, sillwright.measure.Units units) {
        return Words.wood(wood.median(), units) + " (" + Words.wood(wood.low(), units) + " to " + Words.wood(wood.high(), units) + ")";
    }

    private static void round(Assessment assessment, Round round, List<Markup> all) {
        all.add(h3("round-" + round.id(), round.title() + round.first().map(first -> ", first on " + Said.day(first) + ", then every year").orElse("")));
        all.add(p(round.why() + " " + Words.count(round.checks().size(), "stop") + ", about " + Words.number(round.minutes(), 0) + " minutes"
                + (round.left() == 0 ? "." : "; " + Words.count(round.left(), "lesser stop") + " left for the next.")
                + " Walked by ______________ on __________, meter __________, air ______"));
        List<List<?>> rows = new ArrayList<>();
        String side = "";
        for (Check check : round.checks()) {
            String here = Said.sideTitle(assessment.survey(), check.side());
            boolean first = true;
            for (Ask ask : check.asks()) {
                rows.add(List.of("[  ]", first ? (here.equals(side) ? "" : here + ": ") + check.place() : "", ask.words() + (first && !check.because().isEmpty() ? " (" + check.because() + ")" : ""),
                        ask.last().isEmpty() ? "–" : ask.last(), ask.expected(), switch (ask.kind()) {
                            case METER -> "____ %";
                            case PROBE -> "____ deep";
                            case LOOK -> "ok / ";
                            case DO -> "done / ";
                        }));
                first = false;
                side = here;
            }
        }
        if (rows.isEmpty()) return;
        all.addAll(table(List.of("", "Where", "Look", "Last time", "Should be", "Found"), List.of(5, 20, 34, 15, 15, 11), rows));
    }
}
