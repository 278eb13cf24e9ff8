package sillwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Species;
import sillwright.work.Costing;
import sillwright.work.DesignWords;
import sillwright.work.Repair;
import sillwright.work.WorkFindings;
import sillwright.work.cost.Line;
import sillwright.work.schedule.Timetable;

import static sillwright.sheet.Text.*;

/// What will hold: each repair with its drawing, then what to buy, what to saw, in what order, and how to work safely.
final class WorkSheet {
    private WorkSheet() {}

    static Markup repairs(Assessment assessment, Print.Paper paper) {
        List<Repair> repairs = assessment.work().repairs();
        if (repairs.isEmpty()) return div("upright runon", h2("work", "Repairs"), p("No repair is called for."));
        List<Markup> all = new ArrayList<>(List.of(h3("made", "How each is made")));
        Shared cautions = new Shared(repairs.stream().map(Repair::cautions).toList(), Shared.MANY), steps = Shared.cutShort(repairs.stream().map(WorkSheet::steps).toList(), 'A');
        all.add(Text.drawing(RepairDrawing.legend()));
        List<Markup> told = cautions.told();
        if (!told.isEmpty()) all.add(div("caution", b("Cautions for several repairs, named there by their letter."), told));
        all.addAll(steps.run("Steps that come again, cut short at the repairs and named there by their letter:"));
        Shared numbers = Shared.cutShort(repairs.stream().map(repair -> DesignWords.brief(repair.design(), assessment.settings().units())).toList(), Shared.NUMBERED);
        all.addAll(numbers.run("Numbers that come again:"));
        Markup each = Flow.of(all, Extent.over(all), repairs.stream().map(repair -> repair(assessment, repair, cautions, steps, numbers)).toList(), paper.roomMm());
        return div("upright runon", h2("work", "Repairs"), div("rest", ChoiceSheet.chosen(assessment), ChoiceSheet.table(assessment)), each);
    }

    private static Flow.Entry repair(Assessment assessment, Repair repair, Shared cautions, Shared steps, Shared numbers) {
        Units units = assessment.settings().units();
        List<Markup> all = new ArrayList<>();
        all.add(h3("repair-text-" + repair.id(), repair.id() + "  " + Words.sentence(repair.treatment().words()) + ": " + Said.title(repair.damage().member())));
        List<Object> facts = new ArrayList<>();
        if (repair.urgent()) facts.add(act("Cannot wait. "));
        facts.add(new Node.Text(Said.sideTitle(assessment.survey(), repair.damage().member().side()) + "; old wood taken away: " + Words.wood(repair.woodLostMl(), units)
                + ". " + (repair.waterFirst().isEmpty() ? "" : "Stop first: " + String.join(", ", repair.waterFirst()) + ". ")));
        String letters = cautions.letters(repair.cautions());
        if (!letters.isEmpty()) facts.add(List.of(act("Caution "), new Node.Text(letters + ".")));
        all.add(notes(facts));
        all.addAll(cautions(cautions.own(repair.cautions())));
        all.add(Text.drawing(RepairDrawing.small(repair, units)));
        List<Markup> words = new ArrayList<>();
        // What it waits for is said above and in its steps, and what speaks for it in the table of choices.
        words.addAll(run("Why", repair.reasons().stream().filter(reason -> !reason.startsWith("Wait until") && !reason.equals(repair.comparison().words())).toList()));
        words.addAll(run("In numbers", DesignWords.brief(repair.design(), units).stream().map(numbers::brief).toList()));
        return new Flow.Entry(div("atom", all), steps(repair).stream().map(steps::brief).toList(), words);
    }

    /// Its steps; the water to stop first is named above them by its number.
    private static List<String> steps(Repair repair) {
        return repair.steps().stream().map(step -> !repair.waterFirst().isEmpty() && step.startsWith("Stop the water first: ") ? "Stop the water first." : step).toList();
    }

    /// A heading and what belongs under it, run on in one small paragraph; empty where there is nothing.
    private static List<Markup> run(String head, List<String> all) {
        return all.isEmpty() ? List.of() : List.of(notes(b(head + ": "), new Node.Text(String.join("; ", all.stream().map(words -> words.replaceFirst("[.;]$", "")).toList())
                + ".")));
    }

    static Markup orders(Assessment assessment) {
        Units units = assessment.settings().units();
        WorkFindings work = assessment.work();
        List<Markup> all = new ArrayList<>(List.of(h2("order", "What to order and what to saw")));
        List<List<?>> rows = new ArrayList<>();
        for (WorkFindings.OrderLine line : work.order()) {
            List<Object> row = new ArrayList<>(List.of(line.item() + (line.measure() == WorkFindings.OrderLine.Measure.LENGTH && !line.note().isEmpty() ? " (" + line.note() + ")" : ""), Counted.words(line.measure(), line.need(), units), Counted.buy(line, units)));
            if (work.plan().cost().priced()) row.add(work.plan().cost().line(line.item()).flatMap(Line::likely).map(Costing::sum).orElse("no price"));
            row.add(some(line.repairs(), work.repairs().size()));
            rows.add(row);
        }
        if (rows.isEmpty()) all.add(p("Nothing is to be bought."));
        boolean priced = work.plan().cost().priced();
        all.addAll(priced ? table(List.of("Item", "Net", "Buy", "Cost", "For"), List.of(56, 8, 14, 5, 17), rows) : table(List.of("Item", "Net", "Buy", "For"), List.of(59, 9, 14, 18), rows));
        if (work.order().stream().anyMatch(line -> line.repairs().size() > 4)) all.add(small("All repairs that a line is for stand in order.csv."));
        all.addAll(tools(work));
        all.addAll(CostSheet.part(assessment));
        if (!work.cuts().isEmpty()) {
            all.add(h3("cuts", "Cut list"));
            all.add(small("Lengths are net; each cut takes its kerf. Check every piece against the building before sawing. Hatched in the bars: left over. Where nothing else is said, no layout uses less stock."));
            all.addAll(cuts(work, units));
            if (!work.leftOvers().isEmpty()) all.add(notes("Rests to keep: " + String.join("; ", work.leftOvers().stream().map(left -> Species.said(left.species()) + " " + left.name() + " " + Said.length(left.lengthMm(), units) + " (bar " + left.bar() + ")").toList()) + "."));
        }
        return div("upright runon", all);
    }

    private static List<Markup> tools(WorkFindings work) {
        if (work.plan().tools().isEmpty()) return List.of();
        List<Markup> all = new ArrayList<>(List.of(h3("tools", "Tools to have at hand")));
        all.add(twoColumns(work.plan().tools().stream().map(tool -> notes(b(Words.sentence(tool.words())), new Node.Text((tool.count() > 1 ? ", " + tool.count() : "") + ": " + tool.job() + "; for "
                + some(tool.repairs(), work.repairs().size()) + "."))).toList()));
        return all;
    }

    /// The table of orders has them all; here the first few say enough.
    private static String some(List<String> repairs, int all) { return all > 4 && repairs.size() == all ? "all repairs" : some(repairs); }

    private static String some(List<String> repairs) {
        int told = repairs.size() <= 4 ? repairs.size() : 3;
        return String.join(", ", repairs.subList(0, told)) + (told < repairs.size() ? " and " + (repairs.size() - told) + " more" : "");
    }

    private static List<Markup> cuts(WorkFindings work, Units units) {
        double longest = work.cuts().stream().flatMap(plan -> plan.bars().stream()).mapToDouble(WorkFindings.Bar::stockMm).max().orElse(1);
        List<List<?>> rows = new ArrayList<>();
        for (WorkFindings.CutPlan plan : work.cuts())
            for (WorkFindings.Bar bar : plan.bars())
                rows.add(List.of(bar == plan.bars().getFirst() ? CutDrawing.stock(plan, units) + saves(plan) : "",
                        Said.length(bar.stockMm(), units) + (bar.inHand() ? ", in the rack" : ""),
                        String.join("; ", bar.pieces().stream().map(piece -> piece.label() + " " + Said.length(piece.lengthMm(), units)).toList()),
                        Said.length(bar.longestLeftMm(), units), Text.drawing(CutDrawing.strip(plan, bar, longest, units))));
        return table(List.of("Stock", "Length", "Pieces in order", "Left over", "The bar"), List.of(22, 8, 32, 9, 29), rows);
    }

    private static String saves(WorkFindings.CutPlan plan) { return plan.proven() ? "" : " (another layout might save up to " + Words.percent(plan.gap()) + ")"; }

    static Markup plan(Assessment assessment) {
        List<Markup> all = new ArrayList<>(List.of(h2("plan", "Order of work")));
        List<WorkFindings.Task> tasks = assessment.work().tasks();
        if (tasks.isEmpty()) all.add(p("No work is planned."));
        for (Drawing drawing : WallChart.draw(assessment.work()))
            if (all.size() == 1) all.set(0, div("keep", all.getFirst(), Text.drawing(drawing)));
            else all.add(Text.drawing(drawing));
        if (!tasks.isEmpty()) all.add(small("Filled: stopping water. Cross-hatched: shoring. Lined: work on wood. Dotted: drying, by the meter and "
                + "not by the date. Open: setting up, paint, clearing up. Where nothing but drying goes on for long, time is drawn shorter."));
        Optional<Timetable> timetable = assessment.work().plan().timetable();
        timetable.ifPresent(known -> all.add(p(known.words() + " Float is how many days later a task may end, by what comes after it alone, and the end still holds.")));
        List<Markup> each = new ArrayList<>();
        Map<String, List<Integer>> lots = new LinkedHashMap<>();
        for (int i = 0; i < tasks.size(); i++) lots.computeIfAbsent(tasks.get(i).lot(), _ -> new ArrayList<>()).add(i);
        lots.forEach((lot, places) -> {
            List<Object> words = new ArrayList<>();
            if (!lot.isEmpty()) words.addAll(List.of(b(lot + ". "), new Node.Text(some(tasks.stream().filter(task -> task.lot().equals(lot)).flatMap(task -> task.refs().stream()).distinct().toList()) + ": ")));
            for (int at : places) words.addAll(List.of(b(tasks.get(at).id() + " "), new Node.Text(Said.days(tasks.get(at).start(), tasks.get(at).end()) + " " + brief(tasks.get(at))
                    + timetable.filter(known -> at < known.slots().size()).map(known -> ", float " + known.slots().get(at).floatDays() + " d").orElse("") + (at == places.getLast() ? "." : "; "))));
            (lot.isEmpty() ? all : each).add(notes(words));
        });
        return div("upright runon", div("head", all), columns(each));
    }

    /// A task without its lot, which stands above it; with the water it stops.
    private static String brief(WorkFindings.Task task) {
        String title = task.lot().isEmpty() ? task.title() : task.title().replace(", " + task.lot(), "");
        return title + (task.hours() > 0 ? ", " + Words.number(task.hours(), 1) + " h" : "") + (task.lot().isEmpty() && !task.refs().isEmpty() ? " (" + String.join(", ", task.refs()) + ")" : "");
    }

    /// Every task in full, for those who do it.
    static Markup tasks(Assessment assessment) {
        List<Markup> all = new ArrayList<>(List.of(Markup.of("h1", assessment.survey().name()), h2("tasks", "Day by day")));
        List<List<?>> rows = new ArrayList<>();
        for (WorkFindings.Task task : assessment.work().tasks()) rows.add(List.of("[  ]", task.id(), Said.days(task.start(), task.end()),
                List.of(b(task.title() + ". "), new Node.Text(task.words())), String.join(", ", task.after()), String.join(", ", task.refs())));
        if (rows.isEmpty()) all.add(p("No work is planned."));
        else all.add(small("Tick each when it is done. Dates are a plan: the meter says when wood is dry."));
        all.addAll(table(List.of("", "", "Days", "Task", "After", "Serves"), List.of(4, 4, 13, 54, 9, 16), rows));
        return div("upright", all);
    }
}
