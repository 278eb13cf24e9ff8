package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.WorkFindings.SafeSide;

import static sillwright.sheet.Text.*;

/// How to work safely: what holds, told once, then each side from above, with the letters of what holds there.
final class SafeSheet {
    private SafeSheet() {}

    static Markup page(Assessment assessment) {
        Units units = assessment.settings().units();
        List<SafeSide> sides = assessment.work().safety();
        List<Markup> all = new ArrayList<>(List.of(h2("safety", "Working safely")));
        all.add(p("The usual duties, each with its section behind it; screening, not advice. The local code, the licensed inspector and the maker's sheet decide."));
        if (sides.isEmpty()) all.add(p("No repair is planned, so no plan was made."));
        Shared shared = new Shared(sides.stream().map(SafeSheet::said).toList(), 1);
        all.addAll(shared.run("Named at each side by its letter:"));
        for (SafeSide side : sides) {
            List<Markup> part = new ArrayList<>(List.of(h3("safe-" + side.side() + "-text", Said.sideTitle(assessment.survey(), side.side()))));
            String letters = shared.letters(said(side));
            Optional<SafeDrawing.Untitled> drawing = SafeDrawing.untitled(assessment, side);
            part.add(p(drawing.map(plan -> "From above, " + plan.scale().words() + ". ").orElse("") + "Painted surface disturbed: " + Words.area(side.paintMm2(), units) + ". " + (side.leadApplies() ? "The federal lead rule covers this work. " : "On what is known the federal lead rule does not cover this work. ")
                    + (letters.isEmpty() ? "" : "Duties: " + letters + ". ") + String.join(" ", shared.own(said(side)).stream().map(words -> Words.sentence(words) + ".").toList())));
            drawing.ifPresent(plan -> part.add(Text.drawing(plan.drawing())));
            all.add(div("keep", part));
        }
        return div("upright runon", all);
    }

    private static List<String> said(SafeSide side) { return Stream.concat(side.duties().stream(), side.cautions().stream()).toList(); }
}
