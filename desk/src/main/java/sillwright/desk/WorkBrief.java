package sillwright.desk;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Species;
import sillwright.work.Comparison.Compared;
import sillwright.work.Repair;
import sillwright.work.SafePlan;
import sillwright.work.Tool;
import sillwright.work.WorkFindings;
import sillwright.work.WorkFindings.Bar;
import sillwright.work.WorkFindings.CutPlan;
import sillwright.work.WorkFindings.SafeSide;

/// The treatments of one repair side by side, and what all of them take, in columns of a terminal.
final class WorkBrief {
    private WorkBrief() {}

    static void compared(Repair repair, PrintWriter out) {
        if (repair.comparison().all().isEmpty()) {
            for (Repair.Alternative other : repair.alternatives()) Brief.wrap(out, "      not " + other.treatment().words() + ": ", other.against());
            return;
        }
        out.println("      " + FigureCommand.pad("", 26) + FigureCommand.pad("kept", 8) + FigureCommand.pad("years, wet", 14) + FigureCommand.pad("hours", 8) + FigureCommand.pad("undone", 9) + "load uses");
        for (Compared one : repair.comparison().all()) if (one.worked()) row(one, out);
        for (Compared one : repair.comparison().all()) if (!one.worked()) Brief.wrap(out, "      not " + one.treatment().words() + ": ", String.join("; ", one.refusals()));
        for (String turn : repair.comparison().turns()) Brief.wrap(out, "      would change it: ", turn);
    }

    private static void row(Compared one, PrintWriter out) {
        out.println((one.taken() ? "    > " : "      ") + FigureCommand.pad(one.treatment().words(), 26) + FigureCommand.pad(Words.percent(one.keptShare()), 8)
                + FigureCommand.pad(Words.number(one.lasting().stopped(), 0) + ", " + Words.number(one.lasting().running(), 0), 14) + FigureCommand.pad(Words.number(one.hours(), 1), 8)
                + FigureCommand.pad(one.undone().words(), 9) + one.use().map(use -> Words.significant(use, 2)).orElse("-")
                + (one.holds() ? "" : "   refused by a limit") + (one.recommended() && !one.taken() ? "   recommended" : "")
                + one.worseThan().map(better -> "   no better in anything than " + better.words()).orElse(""));
    }

    /// What to buy, how to saw it, and what to have at hand, each line with the repairs that need it.
    static void order(WorkFindings work, PrintWriter out, Units units) {
        out.println("WHAT TO ORDER");
        if (work.order().isEmpty()) out.println("  Nothing.");
        for (WorkFindings.OrderLine line : work.order()) {
            Brief.wrap(out, "  " + FigureCommand.pad(Brief.amount(line, units), 14), line.item() + ", for " + Brief.some(line.repairs()));
            if (!line.note().isEmpty()) Brief.wrap(out, " ".repeat(16), line.note());
        }
        out.println();
        cuts(work, out, units);
        if (work.plan().tools().isEmpty()) return;
        out.println("TOOLS TO HAVE AT HAND");
        for (Tool tool : work.plan().tools()) Brief.wrap(out, "  " + FigureCommand.pad(String.valueOf(tool.count()), 4), tool.words() + ": " + tool.job() + "; for " + Brief.some(tool.repairs()));
        out.println();
    }

    private static void cuts(WorkFindings work, PrintWriter out, Units units) {
        if (work.cuts().isEmpty()) return;
        out.println("HOW TO SAW IT");
        int number = 0;
        for (CutPlan plan : work.cuts()) {
            Brief.wrap(out, "  ", Species.said(plan.species()) + ", " + plan.bought().name() + (plan.proven() ? "" : ": another layout might save up to " + Words.percent(plan.gap())));
            for (Bar bar : plan.bars()) {
                List<String> pieces = new ArrayList<>();
                for (int k = 0; k < bar.pieces().size(); k++)
                    pieces.add(bar.pieces().get(k).label() + " " + Words.length(bar.pieces().get(k).lengthMm(), units) + (bar.flaws().isEmpty() ? "" : " from " + Words.length(bar.startsMm().get(k), units)));
                Brief.wrap(out, "    " + FigureCommand.pad(String.valueOf(++number), 4), Words.length(bar.stockMm(), units) + (bar.inHand() ? " in the rack" : "") + ": " + String.join(", ", pieces));
            }
        }
        if (!work.leftOvers().isEmpty())
            Brief.wrap(out, "  ", "Keep: " + String.join(", ", work.leftOvers().stream().map(left -> Words.length(left.lengthMm(), units) + " of " + left.name() + " (" + left.bar() + ")").toList()) + ".");
        out.println();
    }

    /// How to work safely: what holds at every side once, then each side with what holds there.
    static void safety(WorkFindings work, Function<String, String> title, PrintWriter out, Units units) {
        if (work.safety().isEmpty()) return;
        out.println("HOW TO WORK SAFELY");
        Brief.wrap(out, "  ", "The usual duties, each with its section behind it; screening, not advice. Local rules may be stricter; a certified firm does it where the law asks.");
        List<String> everywhere = said(work.safety().getFirst()).filter(line -> work.safety().stream().allMatch(side -> said(side).anyMatch(line::equals))).toList();
        if (work.safety().size() > 1) {
            out.println("  Everywhere");
            for (String line : everywhere) Brief.wrap(out, "    - ", line);
        }
        for (SafeSide side : work.safety()) {
            Brief.wrap(out, "  ", title.apply(side.side()) + ": painted surface disturbed " + Words.area(side.paintMm2(), units) + (side.leadApplies() ? "; the federal lead rule covers this work" : "; on what is known the federal lead rule does not cover it")
                    + (side.sheetingMm2() > 0 ? "; ground sheeting " + Words.area(side.sheetingMm2(), units) + ", out to " + Words.length(side.coverMm(), units) : "") + (side.barrier() ? "; a vertical barrier" : ""));
            for (SafePlan.Stand stand : side.plan().stands())
                Brief.wrap(out, "    - ", (stand.scaffold() ? "a scaffold" : "a ladder of " + Words.length(stand.length(), units)) + " to reach " + Words.length(stand.height(), units) + " up, for " + Brief.some(stand.repairs()));
            for (String line : said(side).filter(line -> work.safety().size() == 1 || !everywhere.contains(line)).toList()) Brief.wrap(out, "    - ", line);
        }
        out.println();
    }

    private static Stream<String> said(SafeSide side) { return Stream.concat(side.duties().stream(), side.cautions().stream()).distinct(); }
}
