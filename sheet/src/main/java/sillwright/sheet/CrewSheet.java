package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Species;
import sillwright.work.Repair;

import static sillwright.sheet.Text.*;

/// A sheet for each repair, to be taken to the wood: the drawing at full size, the steps with a box to tick, what to bring, what to mind. No prose.
final class CrewSheet {
    private CrewSheet() {}

    static List<Markup> pages(Assessment assessment) {
        List<Repair> repairs = assessment.work().repairs();
        List<Markup> all = new ArrayList<>();
        for (Repair repair : repairs) all.add(sheet(assessment, repair, repair == repairs.getFirst()));
        return all;
    }

    private static Markup sheet(Assessment assessment, Repair repair, boolean first) {
        Units units = assessment.settings().units();
        List<Markup> head = new ArrayList<>();
        if (first) head.add(h2("work", "Repairs"));
        List<Object> where = new ArrayList<>();
        if (repair.urgent()) where.add(act("Cannot wait. "));
        where.add(new Node.Text(Said.sideTitle(assessment.survey(), repair.damage().member().side()) + ", no. "
                + Elevation.numbers(assessment, repair.damage().member().side()).get(repair.damage().member().id())
                + (repair.waterFirst().isEmpty() ? "" : ". Stopped first: " + String.join(", ", repair.waterFirst().stream().map(source -> source + " [  ]").toList()))));
        head.add(h3("repair-text-" + repair.id(), repair.id() + "  " + Words.sentence(repair.treatment().words()) + ": " + Said.title(repair.damage().member())));
        head.add(p(where));
        head.addAll(cautions(repair.cautions()));
        head.add(Text.drawing(RepairDrawing.untitled(repair, units)));
        List<List<?>> steps = new ArrayList<>();
        for (int i = 0; i < repair.steps().size(); i++) steps.add(List.of("[  ]", String.valueOf(i + 1), repair.steps().get(i)));
        List<List<?>> bring = new ArrayList<>();
        for (Repair.Piece piece : repair.pieces()) bring.add(List.of("[  ]", Species.said(piece.species()), Said.size(piece.widthMm(), piece.depthMm(), piece.lengthMm(), units)));
        for (Repair.Need need : repair.needs()) {
            String[] said = Counted.words(need, units).split(": ", 2);
            bring.add(List.of("[  ]", said[0], said.length > 1 ? said[1] : ""));
        }
        List<Markup> left = table(List.of("", "", "Step"), List.of(7, 6, 87), steps), right = table(List.of("", "To bring", "Net"), List.of(9, 51, 40), bring);
        return div(first ? "upright" : "upright runon", div("keep", head), pair(left, right), p("Done by ______________ on __________   meter beside the joint ______ %"));
    }
}
