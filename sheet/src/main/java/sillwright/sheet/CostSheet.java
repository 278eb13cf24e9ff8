package sillwright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import sillwright.Assessment;
import sillwright.measure.Words;
import sillwright.water.WaterFindings;
import sillwright.work.Costing;
import sillwright.work.cost.Line;
import sillwright.work.cost.Range;

import static sillwright.sheet.Text.*;

/// What the work costs: the range, what drives it, the hours by task.
final class CostSheet {
    /// A remedy is named by no fewer letters than these. Own choice.
    private static final int CLAUSE = 40;

    private CostSheet() {}

    /// A part that runs on under the order; nothing where no work is planned.
    static List<Markup> part(Assessment assessment) {
        Costing cost = assessment.work().plan().cost();
        if (cost.hours().draws() == 0) return List.of();
        List<Markup> all = new ArrayList<>(List.of(h3("cost", "What it costs")));
        all.add(p("Hours: " + hours(cost.hours()) + ", one person's, mean " + Words.number(cost.hours().exact(), 0) + "."
                + (cost.priced() && cost.money().draws() > 0 ? " Money: " + cost.words(cost.money()) + ", middle " + Costing.sum(cost.money().middle()) + ", mean " + Costing.sum(cost.money().exact())
                        + " (" + Costing.sum(cost.money().mean()) + " by " + cost.money().draws() + " draws), standard deviation " + Costing.sum(cost.money().spread())
                        + ". One in ten of the draws is under the range, one in ten over it." : " Money wants a price book.")));
        Range drives = cost.priced() ? cost.money() : cost.hours();
        if (!drives.drivers().isEmpty()) all.add(small("What the spread comes from: " + String.join("; ", drives.drivers().stream().limit(5)
                .map(driver -> driver.words() + " " + Words.percent(driver.share())).toList()) + "."));
        List<List<?>> tasks = new ArrayList<>();
        for (Line line : cost.bill().lines()) if (line.toil())
            tasks.add(List.of(Words.sentence(line.words()), Words.number(line.hours(), 1), line.likely().map(Costing::sum).orElse("-"), some(line.refs())));
        all.addAll(table(List.of("Labour", "Hours", "Cost", "For", "Labour", "Hours", "Cost", "For"), List.of(29, 4, 5, 12, 29, 4, 5, 12), twoToARow(tasks)));
        all.addAll(remedies(assessment, cost));
        all.addAll(list(cost.bill().gaps()));
        return all;
    }

    /// Short rows two beside each other, down the left and then down the right.
    private static List<List<?>> twoToARow(List<List<?>> rows) {
        int half = (rows.size() + 1) / 2;
        List<List<?>> pairs = new ArrayList<>();
        for (int i = 0; i < half; i++) {
            List<Object> pair = new ArrayList<>(rows.get(i));
            pair.addAll(half + i < rows.size() ? rows.get(half + i) : Collections.nCopies(rows.getFirst().size(), ""));
            pairs.add(pair);
        }
        return pairs;
    }

    /// Each remedy that is in the sum, and the others beside it: what stops the water, its hours and its money.
    private static List<Markup> remedies(Assessment assessment, Costing cost) {
        List<List<?>> rows = new ArrayList<>();
        for (WaterFindings.RankedSource source : assessment.water().toStop())
            for (Costing.Remedied one : cost.remedies()) {
                if (!one.source().equals(source.id())) continue;
                String words = source.remedies().stream().filter(remedy -> remedy.word().equals(one.remedy())).findFirst().orElseThrow().words();
                rows.add(List.of(source.id(), (one.summed() ? "" : "or: ") + firstClause(words), n(Costing.hours(one.hours())), one.money().draws() > 0 ? cost.words(one.money()) : "-",
                        one.material().isEmpty() ? "none" : one.material()));
            }
        if (rows.isEmpty()) return List.of();
        List<Markup> all = new ArrayList<>(table(List.of("", "What stops the water", "Hours", "Cost", "Material allowed for"), List.of(4, 52, 8, 14, 22), rows));
        all.add(small("The first remedy of each source is in the sum; those after \"or\" are not. Material is an allowance of common practice: measure before ordering. The remedies stand in full at their sources, under Water, and in the tasks."));
        return all;
    }

    /// What stands in full among the remedies of its source and in the tasks.
    private static String firstClause(String words) {
        for (int at = CLAUSE; at < words.length(); at++) if (words.charAt(at) == ';' || words.charAt(at) == ',' && words.startsWith(", ", at)) return words.substring(0, at);
        return words;
    }

    private static String hours(Range range) { return Words.number(range.low(), 0) + " to " + Words.number(range.high(), 0); }

    private static String some(List<String> refs) {
        int told = refs.size() <= 2 ? refs.size() : 1;
        return String.join(", ", refs.subList(0, told)) + (told < refs.size() ? " and " + (refs.size() - told) + " more" : "");
    }
}
