package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.walk.Side;

/// Laws that hold on any house, tried on drawn ones; a failure names its seed, and `-Dhouses=500` tries more.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DrawnHousesTest {
    static LongStream seeds() { return LongStream.rangeClosed(1, Integer.getInteger("houses", 24)); }

    private static List<Drawing> elevations(Assessment house) {
        List<Drawing> all = new ArrayList<>();
        for (String side : house.survey().sides().keySet()) all.addAll(List.of(Elevation.draw(house, side), Elevation.standing(house, side)));
        return all;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void no_label_covers_another_or_leaves_the_sheet(long seed) {
        Units units = seed % 2 == 0 ? Units.US : Units.SI;
        Assessment house = DrawnHouses.assessment(seed, units);
        List<Drawing> all = elevations(house);
        house.wood().all().stream().filter(condition -> !condition.maps().isEmpty()).forEach(condition -> all.addAll(List.of(MemberMap.draw(condition, units), MemberMap.small(condition, units))));
        house.work().repairs().forEach(repair -> all.addAll(List.of(RepairDrawing.draw(repair, units), RepairDrawing.small(repair, units))));
        for (Drawing drawing : all) {
            String where = "seed " + seed + ", " + drawing.id();
            LabelsTest.apart(drawing.labels(), where);
            Box sheet = new Box(0, 0, drawing.widthMm(), drawing.heightMm()).grown(0.05);
            for (Drawing.Label label : drawing.labels()) assertTrue(sheet.holds(label.box()), where + ": '" + label.words() + "' at " + label.box() + " is off the sheet of " + sheet);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void the_key_to_the_plan_marks_the_one_wall_that_is_looked_at_as_long_as_it_is(long seed) {
        Assessment house = DrawnHouses.assessment(seed, Units.SI);
        for (String side : house.survey().sides().keySet()) {
            List<Markup> walls = Elevation.draw(house, side).svg().all("line").stream().filter(line -> !line.get("data-wall").isEmpty()).toList();
            assertEquals(house.survey().sides().size(), walls.size(), "seed " + seed);
            Markup seen = walls.stream().filter(line -> line.get("stroke").equals(Ink.ACT)).reduce((one, other) -> { throw new AssertionError("two walls are marked, seed " + seed); }).orElseThrow();
            assertEquals(side, seen.get("data-wall"), "seed " + seed);
            double all = house.survey().sides().values().stream().mapToDouble(Side::lengthMm).sum(), drawn = walls.stream().mapToDouble(DrawnHousesTest::drawnMm).sum();
            for (Markup wall : walls) assertEquals(house.survey().sides().get(wall.get("data-wall")).lengthMm() / all, drawnMm(wall) / drawn, 0.01, "seed " + seed);
        }
    }

    private static double drawnMm(Markup line) {
        return Math.hypot(Double.parseDouble(line.get("x2")) - Double.parseDouble(line.get("x1")), Double.parseDouble(line.get("y2")) - Double.parseDouble(line.get("y1")));
    }
}
