package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.Repair;
import sillwright.work.WorkFindings;

import static sillwright.sheet.Text.*;

/// What will hold: each repair with its drawing, then what to buy, what to saw, in what order, and how to work safely.
final class WorkSheet {
    private WorkSheet() {}

    static Markup repairs(Assessment assessment) {
        List<Markup> all = new ArrayList<>(List.of(h2("work", "Repairs")));
        if (assessment.work().repairs().isEmpty()) all.add(p("No repair is called for."));
        for (Repair repair : assessment.work().repairs()) all.addAll(repair(assessment, repair));
        return div("upright", all);
    }

    private static List<Markup> repair(Assessment assessment, Repair repair) {
        Units units = assessment.settings().units();
        List<Markup> all = new ArrayList<>();
        List<Markup> head = new ArrayList<>(List.of(h3("repair-text-" + repair.id(), repair.id() + "  " + Words.sentence(repair.treatment().words())
                + ": " + Said.title(repair.damage().member()))));
        head.add(p(repair.urgent() ? List.of(act("Cannot wait. ")) : List.of(), Said.sideTitle(assessment.survey(), repair.damage().member().side())
                + ". Original wood taken away: " + Said.wood(repair.woodLostMl(), units) + ". "
                + (repair.waterFirst().isEmpty() ? "" : "Stop first: " + Words.list(repair.waterFirst()) + ".")));
        head.addAll(cautions(repair.cautions()));
        head.add(Text.drawing(RepairDrawing.untitled(repair, units)));
        all.add(div("keep", head));
        List<Markup> left = new ArrayList<>(), right = new ArrayList<>();
        section(left, "How it is made", steps(repair.steps()));
        section(right, "Why this one", list(repair.reasons()));
        section(right, "What it uses up", list(repair.needs().stream().map(need -> Counted.words(need, units)).toList()));
        all.add(pair(left, right));
        List<List<?>> rows = new ArrayList<>();
        for (Repair.Alternative other : repair.alternatives()) rows.add(List.of(other.treatment().words(), Said.wood(other.lostMl(), units),
                other.against()));
        all.addAll(table(List.of("Instead", "Wood lost", "What speaks against it"), List.of(24, 14, 62), rows));
        return all;
    }

    private static void section(List<Markup> all, String head, List<Markup> body) {
        if (body.isEmpty()) return;
        all.add(h4(head));
        all.addAll(body);
    }

    static Markup orders(Assessment assessment) {
        Units units = assessment.settings().units();
        WorkFindings work = assessment.work();
        List<Markup> all = new ArrayList<>(List.of(h2("order", "What to order and what to saw")));
        List<List<?>> rows = new ArrayList<>();
        for (WorkFindings.OrderLine line : work.order())
            rows.add(List.of(line.item(), Counted.words(line.measure(), line.need(), units), Counted.buy(line, units),
                    some(line.repairs())));
        if (rows.isEmpty()) all.add(p("Nothing is to be bought."));
        all.addAll(table(List.of("Item", "Net", "Buy", "For"), List.of(44, 14, 24, 18), rows));
        if (!work.cuts().isEmpty()) {
            all.add(h3("cuts", "Cut list"));
            all.add(small("Lengths are net; each cut takes its kerf. Check every piece against the building before sawing."));
            for (Drawing drawing : CutDrawing.draw(work.cuts(), units)) all.add(Text.drawing(drawing));
            all.addAll(list(work.cuts().stream().map(plan -> CutDrawing.words(plan, units)).toList()));
            all.addAll(cuts(work, units));
        }
        return div("upright", all);
    }

    /// The table of orders has them all; here the first few say enough.
    private static String some(List<String> repairs) {
        int told = repairs.size() <= 8 ? repairs.size() : 6;
        return String.join(", ", repairs.subList(0, told)) + (told < repairs.size() ? " and " + (repairs.size() - told) + " more, in order.csv" : "");
    }

    private static List<Markup> cuts(WorkFindings work, Units units) {
        List<List<?>> rows = new ArrayList<>();
        for (WorkFindings.CutPlan plan : work.cuts())
            for (WorkFindings.Bar bar : plan.bars())
                rows.add(List.of(plan.species() + ", " + Said.length(plan.widthMm(), units) + " × " + Said.length(plan.depthMm(), units),
                        Said.length(bar.stockMm(), units),
                        String.join("; ", bar.pieces().stream().map(piece -> piece.label() + " " + Said.length(piece.lengthMm(), units)).toList()),
                                Said.length(bar.leftMm(), units)));
        return table(List.of("Stock", "Length", "Pieces in order", "Left over"), List.of(28, 12, 48, 12), rows);
    }

    static Markup plan(Assessment assessment) {
        List<Markup> all = new ArrayList<>(List.of(h2("plan", "Order of work")));
        List<WorkFindings.Task> tasks = assessment.work().tasks();
        if (tasks.isEmpty()) all.add(p("No work is planned."));
        for (Drawing drawing : WallChart.draw(tasks)) all.add(Text.drawing(drawing));
        if (!tasks.isEmpty()) all.add(small("Filled: stopping water. Cross-hatched: shoring. Lined: work on wood. Dotted: drying, by the meter and "
                + "not by the date. Open: setting up, paint, clearing up."));
        List<List<?>> rows = new ArrayList<>();
        for (WorkFindings.Task task : tasks) rows.add(List.of(task.id(), n(Said.days(task.start(), task.end())),
                List.of(b(task.title()), p(task.words())), String.join(", ", task.after()), String.join(", ", task.refs())));
        all.addAll(table(List.of("", "Days", "Task", "After", "Serves"), List.of(6, 22, 46, 12, 14), rows));
        return div("upright", all);
    }

    static Markup safety(Assessment assessment) {
        Units units = assessment.settings().units();
        List<Markup> all = new ArrayList<>(List.of(h2("safety", "Working safely")));
        all.add(p("The usual duties, beside the numbers they concern. The local code, the licensed inspector and the maker's sheet decide."));
        for (WorkFindings.SafeSide side : assessment.work().safety()) {
            all.add(h3("safe-" + side.side(), Said.sideTitle(assessment.survey(), side.side())));
            all.add(p("Painted surface disturbed: " + Words.area(side.paintMm2(), units) + ". "
                    + (side.leadApplies() ? "The federal lead rule covers this work. "
                    : "On what is known the federal lead rule does not cover this work. ")
                    + (side.coverMm() > 0 ? "Ground cover: " + Said.length(side.coverMm(), units) + " out from the wall. " : "")
                            + (side.barrier() ? "A vertical barrier is wanted." : "")));
            all.addAll(list(side.duties()));
            all.addAll(cautions(side.cautions()));
        }
        if (assessment.work().safety().isEmpty()) all.add(p("No repair is planned, so no plan was made."));
        return div("upright runon", all);
    }
}
