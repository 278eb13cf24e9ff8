package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.Assessment;
import sillwright.watch.WatchFindings.Check;
import sillwright.watch.WatchFindings.Round;

import static sillwright.sheet.Text.*;

/// The rounds of the year as lists to walk with: a box to tick and room to write.
final class WatchSheet {
    private WatchSheet() {}

    static Markup page(Assessment assessment) {
        List<Markup> all = new ArrayList<>(List.of(h2("watch", "Watch")));
        if (assessment.watch().rounds().isEmpty()) all.add(p("No round is planned."));
        for (Round round : assessment.watch().rounds()) {
            all.add(h3("round-" + round.id(), round.title() + ", first on " + Said.day(round.first()) + ", then every year"));
            all.add(p(round.why()));
            List<List<?>> rows = new ArrayList<>();
            for (Check check : round.checks())
                rows.add(List.of("[   ]", Said.sideTitle(assessment.survey(), check.side()), check.words() + (check.because().isEmpty() ? "" : " ("
                        + check.because() + ")"), check.last().isEmpty() ? "–" : check.last(), check.expected(), ""));
            all.addAll(table(List.of("", "Side", "Look", "Last time", "Should be", "Found"), List.of(6, 15, 35, 14, 15, 15), rows));
        }
        return div("upright", all);
    }
}
