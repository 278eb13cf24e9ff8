package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Species;
import sillwright.work.DayPlan;
import sillwright.work.Repair;
import sillwright.work.WorkFindings.TaskKind;
import sillwright.work.schedule.Crew;

import static sillwright.sheet.Text.*;

/// A sheet for each day of the plan, or for days in a row that are alike: what is done, with boxes to tick, the weather it wants, what to have at hand, what to mind, what comes next, and lines to note what was done.
final class DaySheet {
    private DaySheet() {}

    static List<Markup> pages(Assessment assessment) {
        List<DayPlan> days = DayPlan.of(assessment.work());
        List<Markup> all = new ArrayList<>();
        for (int from = 0, to; from < days.size(); from = to) {
            List<Markup> body = body(assessment, days.get(from));
            for (to = from + 1; to < days.size() && body(assessment, days.get(to)).equals(body); ) to++;
            all.add(sheet(assessment, days.subList(from, to), body).with("class", all.isEmpty() ? "upright" : "upright runon keep"));
        }
        return all;
    }

    static Markup folded(Assessment assessment, int days) {
        List<DayPlan> all = DayPlan.of(assessment.work());
        List<Markup> shown = new ArrayList<>(List.of(h2("days", "Day by day")));
        if (all.isEmpty()) shown.add(p("No work is planned."));
        for (DayPlan day : all.subList(0, Math.min(days, all.size())))
            shown.add(Markup.of("details", Markup.of("summary", Said.day(day.day()) + ": " + String.join("; ", day.items().stream().map(item -> item.task().title()).toList())), sheet(assessment, List.of(day), body(assessment, day)).with("class", "day")));
        if (all.size() > days) shown.add(small((all.size() - days) + " more days: printed with --for crew."));
        return div("upright", shown);
    }

    private static Markup sheet(Assessment assessment, List<DayPlan> days, List<Markup> body) {
        DayPlan first = days.getFirst(), last = days.getLast();
        Crew crew = assessment.settings().outfit().crew();
        int[] hours = crew.hoursOf(first.day());
        double light = Crew.daylightH(crew.latitudeDeg(), first.day().getDayOfYear());
        List<Markup> all = new ArrayList<>(List.of(h2("day-" + first.number(), Said.days(first.day(), last.day()) + ", day " + first.number() + (first == last ? "" : " to " + last.number()) + " of " + first.of())));
        all.add(p("At the work between " + hours[0] + " and " + hours[1] + " o'clock by the sun; daylight " + Words.number(light, 1) + " h. " + (crew.crews() > 1 ? Words.count(crew.crews(), "crew") + ". " : "")
                + (first.weather().isEmpty() ? "Any weather will do." : "")));
        all.addAll(body);
        all.add(p(b("Next: "), last.then().isEmpty() ? "the work is done; the watch begins." : last.then() + "."));
        for (DayPlan one : days) {
            all.add(p((first == last ? "Done" : Said.day(one.day()) + ", done") + ", and what was found: ____________________________________________________________"));
            all.add(p("Rain ______   air ______   wood ______ %   hours ______   by ____________________"));
        }
        return div("upright", all);
    }

    /// What days in a row may share.
    private static List<Markup> body(Assessment assessment, DayPlan day) {
        Units units = assessment.settings().units();
        Crew crew = assessment.settings().outfit().crew();
        List<Markup> all = new ArrayList<>();
        if (!day.weather().isEmpty()) all.add(div("caution", b("The weather it wants. "), String.join("; or ", day.weather()) + ". If the day is not so, do what stands next that its weather allows, and plan anew in the evening."));
        List<List<?>> rows = new ArrayList<>();
        for (DayPlan.Item item : day.items()) {
            rows.add(List.of("[  ]", item.task().id(), hours(item.minutes()), List.of(b(item.task().title() + (crew.crews() > 1 ? ", crew " + item.crew() : "") + ". "),
                    new Node.Text((item.begun() ? "Go on" : "Begin") + (item.ends() ? ", and end it today. " : ". ") + said(item)))));
            for (Repair repair : item.repairs()) if (item.task().kind() != TaskKind.DRY) rows.add(List.of("", "[  ]", repair.id(), Words.sentence(repair.treatment().words()) + ": " + Said.title(repair.damage().member())));
        }
        all.addAll(table(List.of("", "", "", "To do, in this order"), List.of(5, 6, 9, 80), rows));
        List<List<?>> bring = new ArrayList<>();
        for (Repair.Piece piece : day.pieces()) bring.add(List.of("[  ]", piece.label() + ", " + Species.said(piece.species()) + ", " + Said.size(piece.widthMm(), piece.depthMm(), piece.lengthMm(), units)));
        for (Repair.Need need : day.needs()) bring.add(List.of("[  ]", Counted.words(need, units)));
        for (String tool : day.bring()) bring.add(List.of("[  ]", Words.sentence(tool)));
        List<List<?>> mind = new ArrayList<>();
        for (String caution : day.cautions()) mind.add(List.of(Words.sentence(bare(caution)) + "."));
        all.add(pair(table(List.of("", "To have at hand"), List.of(8, 92), bring), mind.isEmpty() ? List.of() : table(List.of("To mind today"), List.of(100), mind)));
        for (String rest : day.rests()) all.add(p(b("Leave alone: "), rest + "."));
        return all;
    }

    /// Without the section behind it, which stands with the duties of the side: a sheet that is read each morning is read when it is short.
    private static String bare(String caution) { return caution.replaceFirst(" \\((?:[^()]|\\([^()]*\\))*\\)$", ""); }

    /// Its own words without the list of members, which follows.
    private static String said(DayPlan.Item item) {
        String words = item.task().words();
        int colon = words.indexOf(": ");
        return item.repairs().isEmpty() || colon < 0 ? words : words.substring(0, colon) + ":";
    }

    private static String hours(int minutes) { return minutes % 60 == 0 ? minutes / 60 + " h" : minutes < 60 ? minutes + " min" : minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60 + " h"; }
}
