package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

import sillwright.Assessment;
import sillwright.measure.Units;

/// What every drawing owes its reader.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DrawingsTest {
    static Stream<Drawing> drawings() {
        List<Drawing> all = new ArrayList<>();
        for (Units units : Units.values()) all.addAll(List.of(MemberMap.legend(units), RepairDrawing.legend()));
        for (Units units : Units.values())
            for (Assessment assessment : List.of(Porch.assessment(units), Crowd.assessment(units))) {
                assessment.survey().sides().keySet().forEach(side -> all.addAll(List.of(Elevation.draw(assessment, side), Elevation.standing(assessment, side))));
                assessment.wood().all().forEach(condition -> all.addAll(List.of(MemberMap.draw(condition, units), MemberMap.small(condition, units))));
                assessment.work().repairs().forEach(repair -> {
                    all.add(RepairDrawing.draw(repair, units));
                    all.add(RepairDrawing.untitled(repair, units));
                    all.add(RepairDrawing.small(repair, units));
                });
                all.addAll(CutDrawing.draw(assessment.work().cuts(), units));
                assessment.work().cuts().forEach(plan -> plan.bars().forEach(bar -> all.add(CutDrawing.strip(plan, bar, 5000, units))));
                all.addAll(WallChart.draw(assessment.work()));
                assessment.work().safety().forEach(side -> SafeDrawing.draw(assessment, side).ifPresent(all::add));
            }
        return all.stream();
    }

    /// A4 less its margins of 12.5 mm, less 4 mm between its halves.
    private static final double HALF_A4_MM = (210 - 25) / 2.0 - 4;

    @ParameterizedTest
    @EnumSource
    void what_stands_two_to_a_page_fits_half_of_the_narrower_paper(Units units) {
        Assessment porch = Porch.assessment(units);
        List<Drawing> small = new ArrayList<>();
        porch.wood().all().forEach(condition -> small.add(MemberMap.small(condition, units)));
        porch.work().repairs().forEach(repair -> small.add(RepairDrawing.small(repair, units)));
        for (Drawing drawing : small) assertTrue(drawing.widthMm() <= HALF_A4_MM, drawing.id() + " is " + drawing.widthMm() + " mm wide");
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void no_label_covers_another(Drawing drawing) { LabelsTest.apart(drawing.labels(), drawing.id()); }

    @ParameterizedTest
    @MethodSource("drawings")
    void every_label_is_on_the_sheet_and_large_enough_to_read(Drawing drawing) {
        Box sheet = new Box(0, 0, drawing.widthMm(), drawing.heightMm());
        for (Drawing.Label label : drawing.labels()) {
            assertTrue(sheet.grown(0.05).holds(label.box()), drawing.id() + ": '" + label.words() + "' at " + label.box() + " is off the sheet of "
                    + sheet);
            assertTrue(label.sizeMm() * Lettering.CAPITAL >= 2.2, drawing.id() + ": " + label.words());
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void every_hatch_used_is_there_and_every_hatch_there_is_used(Drawing drawing) throws Exception {
        String xml = drawing.file();
        Xml.parse(xml);
        List<String> used = new ArrayList<>(), there = new ArrayList<>();
        Matcher url = Pattern.compile("url\\(#([^)]+)\\)").matcher(xml);
        while (url.find()) if (!used.contains(url.group(1))) used.add(url.group(1));
        drawing.svg().all("pattern").forEach(pattern -> there.add(pattern.get("id")));
        assertEquals(used.stream().sorted().toList(), there.stream().sorted().toList(), drawing.id());
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void every_drawing_says_in_words_what_it_shows(Drawing drawing) {
        assertTrue(drawing.told().length() > 20 && !drawing.svg().all("desc").getFirst().text().isBlank(), drawing.id());
        assertTrue(drawing.heightMm() > 3.9 && drawing.heightMm() < 400, drawing.id() + " is " + drawing.heightMm() + " mm high");
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void every_drawing_fits_between_the_margins_of_letter_and_of_a4(Drawing drawing) {
        boolean lies = drawing.id().startsWith("elevation-") && drawing.widthMm() > 190;
        double least = lies ? Math.min(279.4, 297) - 2 * 12 : Math.min(215.9, 210) - 2 * 13, deepest = lies ? Math.min(215.9, 210) - 2 * 12 : 279.4 - 2 * 13;
        assertTrue(drawing.widthMm() <= least && drawing.heightMm() <= deepest, drawing.id() + " is " + drawing.widthMm() + " by " + drawing.heightMm());
    }
}
