package sillwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import sillwright.measure.Words;
import sillwright.work.Comparison;
import sillwright.work.Comparison.Compared;
import sillwright.work.Costing;
import sillwright.work.Repair;

import static sillwright.sheet.Text.*;

/// The treatments that would hold side by side, what refuses the others, and what would change the choice.
final class ComparedSheet {
    private ComparedSheet() {}

    static List<Markup> of(Repair repair) {
        Comparison comparison = repair.comparison();
        List<Markup> all = new ArrayList<>();
        boolean priced = comparison.all().stream().anyMatch(one -> one.money().isPresent());
        List<List<?>> rows = new ArrayList<>();
        for (Compared one : comparison.all()) if (one.worked()) rows.add(row(one, priced));
        List<String> heads = new ArrayList<>(List.of("Would hold", "Wood kept", "Years; wet", "Hours"));
        List<Integer> widths = new ArrayList<>(List.of(34, 11, 13, 9));
        if (priced) {
            heads.add("Cost");
            widths.add(9);
        }
        heads.addAll(List.of("Undone", "Load uses"));
        widths.addAll(priced ? List.of(12, 12) : List.of(17, 16));
        all.addAll(table(heads, widths, rows));
        Map<String, List<String>> against = new LinkedHashMap<>();
        for (Compared one : comparison.all()) if (!one.worked()) for (String refusal : one.refusals()) against.computeIfAbsent(refusal, _ -> new ArrayList<>()).add(one.treatment().words());
        List<String> refused = new ArrayList<>();
        against.forEach((reason, names) -> refused.add(Words.list(names) + " \u2013 " + reason));
        if (!refused.isEmpty()) all.add(small(b("Refused: "), new Node.Text(String.join("; ", refused) + ".")));
        if (!comparison.turns().isEmpty()) all.add(small(b("What would change it: "), new Node.Text(comparison.turns().getFirst())));
        return all;
    }

    private static List<?> row(Compared one, boolean priced) {
        List<Object> row = new ArrayList<>();
        String name = one.treatment().words() + one.worseThan().map(better -> " (no better in anything than " + better.words() + ")").orElse("") + (one.holds() ? "" : " (chosen though a limit refuses it)") + (one.recommended() && !one.taken() ? " (recommended)" : "");
        row.add(one.taken() ? b(name) : name);
        row.add(Words.percent(one.keptShare()));
        row.add(Words.number(one.lasting().stopped(), 0) + "; " + Words.number(one.lasting().running(), 0));
        row.add(Words.number(one.hours(), 1));
        if (priced) row.add(one.money().map(Costing::sum).orElse("no price"));
        row.add(one.undone().words());
        row.add(one.use().map(use -> Words.significant(use, 2)).orElse("\u2013"));
        return row;
    }
}
