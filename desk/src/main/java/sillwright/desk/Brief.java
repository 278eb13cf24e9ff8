package sillwright.desk;

import java.io.PrintWriter;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Fault;
import sillwright.watch.WatchFindings;
import sillwright.water.WaterFindings;
import sillwright.wood.Condition;
import sillwright.work.Costing;
import sillwright.work.Repair;
import sillwright.work.WorkFindings;
import sillwright.work.cost.Range;

/// What a person wants to know first: the water to stop, what cannot wait, what to order, what to watch.
final class Brief {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

    /// Sources at or above this are told first, each with what stops it.
    private static final double NEARLY_SURE = 0.75;

    private Brief() {}

    static void print(Assessment a, PrintWriter out) {
        out.println(CheckCommand.counts(a.survey()));
        a.survey().building().filter(b -> !b.note().isEmpty()).ifPresent(b -> out.println(b.note()));
        out.println();
        water(a.water(), out);
        urgent(a, out);
        order(a, out);
        cost(a.work(), out);
        when(a.work(), out);
        watch(a.watch(), out);
        gaps(a, out);
    }

    static void water(WaterFindings water, PrintWriter out) {
        out.println("THE WATER TO STOP, before any wood is opened");
        if (water.toStop().isEmpty()) out.println("  No source stands out yet.");
        List<WaterFindings.RankedSource> sure = water.toStop().stream().filter(source -> source.probability() >= NEARLY_SURE).toList();
        List<WaterFindings.RankedSource> first = sure.isEmpty() ? water.toStop().stream().limit(3).toList() : sure;
        List<WaterFindings.RankedSource> others = water.toStop().stream().filter(source -> !first.contains(source)).toList();
        for (WaterFindings.RankedSource source : first) {
            out.println("  " + FigureCommand.pad(source.id(), 4) + Words.sentence(source.words()) + ": " + Words.chance(source.probability()) + " likely.");
            if (!source.remedies().isEmpty()) wrap(out, "       ", Words.sentence(source.remedies().getFirst().words()));
        }
        if (!others.isEmpty())
            wrap(out, "  ", "More likely than not as well: " + Words.list(others.stream().map(source -> source.id() + " " + source.words() + " (" + Words.chance(source.probability()) + ")").toList()) + ".");
        water.nextLook().ifPresent(look -> wrap(out, "  ", "Next look, " + look.side() + " side, about " + Words.number(look.minutes(), 0) + " min: " + look.words()));
        out.println();
    }

    private static void urgent(Assessment a, PrintWriter out) {
        out.println("WHAT CANNOT WAIT");
        List<Repair> urgent = a.work().urgent();
        if (urgent.isEmpty()) out.println("  Nothing that bears load is in danger by what was probed.");
        else wrap(out, "  ", "Keep people off and from under these, prop what bears load, and call a licensed engineer before anything is cut.");
        for (Repair repair : urgent)
            wrap(out, "  ", FigureCommand.pad(repair.id(), 4) + Words.sentence(repair.damage().member().title()) + ": "
                    + (a.wood().of(repair.damage().member().id()).state() == Condition.State.HOLLOW ? "hollow" : Words.percent(repair.damage().section().areaKept()) + " of the section left")
                    + "; " + repair.treatment().words());
        int others = a.work().repairs().size() - urgent.size();
        if (others > 0) out.println("  And " + Words.count(others, "repair") + " that can follow in order.");
        out.println();
    }

    private static void order(Assessment a, PrintWriter out) {
        out.println("WHAT TO ORDER");
        if (a.work().order().isEmpty()) out.println("  Nothing.");
        for (WorkFindings.OrderLine line : a.work().order())
            wrap(out, "  " + FigureCommand.pad(amount(line, a.settings().units()), 14), line.item() + ", for " + some(line.repairs()));
        out.println();
    }

    static void when(WorkFindings work, PrintWriter out) {
        work.plan().timetable().ifPresent(timetable -> {
            out.println("WHEN IT IS DONE");
            wrap(out, "  ", timetable.words());
            out.println();
        });
    }

    static void cost(WorkFindings work, PrintWriter out) {
        Costing cost = work.plan().cost();
        if (cost.hours().draws() == 0) return;
        out.println("WHAT IT COSTS");
        Range hours = cost.hours();
        wrap(out, "  ", Words.number(hours.low(), 0) + " to " + Words.number(hours.high(), 0) + " hours of work, one person's (4 in 5 of the draws; mean " + Words.number(hours.exact(), 0) + ").");
        if (cost.priced() && cost.money().draws() > 0) {
            wrap(out, "  ", cost.words(cost.money()) + " (4 in 5 of the draws; mean " + Costing.sum(cost.money().exact()) + ", half of them under " + Costing.sum(cost.money().middle()) + ").");
            wrap(out, "  ", "Most of the spread comes from " + Words.list(cost.money().drivers().stream().limit(3).map(driver -> driver.words() + " (" + Words.percent(driver.share()) + ")").toList()) + ".");
        } else if (!cost.priced()) wrap(out, "  ", "No price book was given: --prices FILE puts money to it.");
        for (String gap : cost.bill().gaps()) wrap(out, "  ", gap);
        out.println();
    }

    static String amount(WorkFindings.OrderLine line, Units units) {
        return switch (line.measure()) {
            case VOLUME -> Words.volume(line.buy(), units);
            case AREA -> Words.area(line.buy(), units);
            case COUNT -> Words.number(line.buy(), 0);
            case LENGTH -> Words.length(line.buy(), units);
        };
    }

    static String some(List<String> repairs) {
        return repairs.size() <= 4 ? Words.list(repairs) : Words.list(repairs.subList(0, 3)) + " and " + (repairs.size() - 3) + " more";
    }

    private static void watch(WatchFindings watch, PrintWriter out) {
        out.println("WHAT TO WATCH");
        for (WatchFindings.Round round : watch.rounds())
            out.println("  " + FigureCommand.pad(round.first().map(DAY::format).orElse("any day"), 18) + round.title() + ", " + Words.count(round.checks().size(), "stop") + ", about "
                    + Words.number(round.minutes(), 0) + " minutes" + (round.first().isPresent() ? ", and every year after" : ""));
        out.println();
    }

    static void gaps(Assessment a, PrintWriter out) {
        List<String> gaps = new ArrayList<>(a.water().gaps());
        gaps.addAll(a.wood().gaps());
        gaps.addAll(a.work().gaps());
        long aside = a.survey().faults().stream().filter(Fault::grave).count();
        if (aside > 0) gaps.add(Words.count((int) aside, "fault") + " in the survey had something set aside: sillwright check names each.");
        if (gaps.isEmpty()) return;
        out.println("WHAT IS NOT KNOWN YET");
        for (String gap : gaps) wrap(out, "  ", gap);
        out.println();
    }

    /// Prints words within 100 columns, later lines below the first word.
    static void wrap(PrintWriter out, String indent, String words) {
        StringBuilder line = new StringBuilder(indent);
        boolean first = true;
        for (String word : words.split(" ")) {
            if (line.length() + word.length() + 1 > 100 && line.length() > indent.length() + 4 && !first) {
                out.println(line);
                line = new StringBuilder(" ".repeat(indent.isBlank() ? indent.length() + 4 : indent.length()));
                first = true;
            }
            line.append(first ? "" : " ").append(word);
            first = false;
        }
        out.println(line);
    }
}
