package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.Assessment;
import sillwright.walk.Fault;

import static sillwright.sheet.Text.*;

/// What is not in the dossier: what could not be worked, and every entry that could not be used.
final class GapSheet {
    private GapSheet() {}

    static List<String> gaps(Assessment assessment) {
        List<String> all = new ArrayList<>(assessment.water().gaps());
        all.addAll(assessment.wood().gaps());
        all.addAll(assessment.work().gaps());
        return all;
    }

    static Markup page(Assessment assessment) {
        List<Markup> all = new ArrayList<>(List.of(h2("gaps", "Gaps and faults")));
        List<String> gaps = gaps(assessment);
        if (gaps.isEmpty() && assessment.survey().faults().isEmpty()) return div("upright runon", all, p("Nothing was left unworked. Every entry of the book could be used, and none was used in spite of a fault."));
        all.add(gaps.isEmpty() ? p("Nothing was left unworked.") : h3("unworked", "What could not be worked, and what would let it be"));
        all.addAll(list(gaps));
        all.addAll(entries(assessment, true, "set-aside", "Entries set aside", "Every entry of the book could be used."));
        all.addAll(entries(assessment, false, "used-anyway", "Entries used in spite of a fault", "None was used in spite of a fault."));
        return div("upright runon", all);
    }

    private static List<Markup> entries(Assessment assessment, boolean grave, String id, String head, String none) {
        List<List<?>> rows = new ArrayList<>();
        for (Fault fault : assessment.survey().faults())
            if (fault.grave() == grave) rows.add(List.of(fault.file().isEmpty() ? fault.entry() : fault.file() + ", " + fault.entry(), fault.field(),
                    fault.what(), fault.mend()));
        if (rows.isEmpty()) return List.of(p(none));
        List<Markup> all = new ArrayList<>(List.of(h3(id, head)));
        all.addAll(table(List.of("Entry", "Field", "What is wrong", "How to mend it"), List.of(26, 10, 34, 30), rows));
        return all;
    }
}
