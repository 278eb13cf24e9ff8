package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.Assessment;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Survey;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ElevationTest {
    /// The scene with one more member on its west side, where there is room.
    private static Assessment with(String run, String width, String length, String slant) {
        Assessment porch = Porch.assessment(Units.SI);
        Map<String, Member> members = new LinkedHashMap<>(porch.survey().members());
        Quantity size = Quantity.read(width, Kind.LENGTH);
        members.put("new", new Member("new", "west", sillwright.walk.MemberKind.OTHER, "one more", Member.Role.DECORATIVE, "oak-white",
                Member.Run.valueOf(run), size, size, Quantity.read(length, Kind.LENGTH),
                Quantity.read("2m", Kind.LENGTH), Quantity.read("1m", Kind.LENGTH), slant.isEmpty() ? Optional.empty()
                        : Optional.of(Quantity.read(slant, Kind.ANGLE)), Member.EndGrain.BARE, Member.EndGrain.BARE,
                Member.Coat.NONE, Member.Contact.NONE));
        Survey s = porch.survey();
        Survey survey = new Survey(s.building(), s.sides(), members, s.probes(), s.moistures(), s.sightings(), s.photos(), s.faults(), s.entries());
        return new Assessment(survey, porch.settings(), porch.water(), porch.wood(), porch.work(), porch.watch());
    }

    private static double ratio(Drawing drawing) {
        for (Drawing.Label label : drawing.labels()) if (label.words().startsWith("scale 1:")) return Double.parseDouble(label.words().substring(8));
        throw new AssertionError("no scale is said");
    }

    private static List<Box> shapes(Drawing drawing) {
        List<Box> all = new ArrayList<>();
        for (Markup shape : drawing.svg().all("polygon")) {
            String[] numbers = shape.get("points").split("[ ,]");
            double[] points = new double[numbers.length];
            for (int i = 0; i < numbers.length; i++) points[i] = Double.parseDouble(numbers[i]);
            all.add(View.around(points));
        }
        return all;
    }

    private static boolean drawn(Drawing drawing, double wideMm, double highMm) {
        double ratio = ratio(drawing);
        return shapes(drawing).stream().anyMatch(box -> Math.abs(box.width() - wideMm / ratio) < 0.02
                && Math.abs(box.height() - highMm / ratio) < 0.02);
    }

    @Test
    void a_member_of_three_metres_spans_three_metres_at_the_scale_that_is_said() {
        assertFalse(drawn(Elevation.draw(Porch.assessment(Units.SI), "west"), 3000, 100));
        assertTrue(drawn(Elevation.draw(with("LEVEL", "100mm", "3m", ""), "west"), 3000, 100));
        assertTrue(drawn(Elevation.draw(with("UPRIGHT", "100mm", "3m", ""), "west"), 100, 3000));
    }

    @Test
    void a_raking_member_spans_its_run_and_its_rise() {
        double run = 3000 * Math.cos(Math.PI / 6) + 100 * Math.sin(Math.PI / 6), rise = 3000 * Math.sin(Math.PI / 6) + 100 * Math.cos(Math.PI / 6);
        assertTrue(drawn(Elevation.draw(with("RAKING", "100mm", "3m", "30deg"), "west"), run, rise));
        assertTrue(drawn(Elevation.draw(with("RAKING", "100mm", "3m", "-30deg"), "west"), run, rise));
    }

    @Test
    void of_an_outward_member_only_the_end_is_seen() { assertTrue(drawn(Elevation.draw(with("OUTWARD", "130mm", "3m", ""), "west"), 130, 130)); }

    @Test
    void the_dimension_strings_say_the_length_and_the_heights_in_the_readers_units() {
        List<String> us = words(Elevation.draw(Porch.assessment(Units.US), "west")), si = words(Elevation.draw(Porch.assessment(Units.SI), "west"));
        assertTrue(us.containsAll(List.of("26 ft", "17 ft", "25 ft 8 in")), us.toString());
        assertTrue(si.containsAll(List.of("7925 mm", "5182 mm", "7823 mm")), si.toString());
    }

    @Test
    void likely_water_is_flagged_on_its_side_and_unlikely_water_is_not() {
        List<String> south = words(Elevation.draw(Porch.assessment(Units.US), "south")),
                west = words(Elevation.draw(Porch.assessment(Units.US), "west"));
        assertTrue(south.containsAll(List.of("W1", "W2", "W4")) && !south.contains("W5") && !south.contains("W3"), south.toString());
        assertTrue(west.contains("W3") && !west.contains("W1"), west.toString());
    }

    @Test
    void every_repair_is_named_on_the_side_of_its_member() {
        String west = String.join("|", words(Elevation.draw(Porch.assessment(Units.US), "west"))),
                south = String.join("|", words(Elevation.draw(Porch.assessment(Units.US), "south")));
        assertTrue(west.contains("R6 replace in kind") && west.contains("R7 butt splice") && !west.contains("R1 "), west);
        for (String repair : List.of("R1 scarf splice 1:5 !", "R2", "R3", "R4", "R5", "R8", "R9", "R10")) assertTrue(south.contains(repair), repair
                + " in " + south);
    }

    @Test
    void a_side_that_nobody_described_is_refused_with_the_names_of_those_described() {
        Refused refused = assertThrows(Refused.class, () -> Elevation.draw(Porch.assessment(Units.US), "north"));
        assertEquals("use one of south and west", refused.mend());
    }

    @Test
    void a_bare_side_without_roof_edge_or_member_can_be_drawn() {
        Side side = new Side("n", "", Quantity.read("0deg", Kind.ANGLE), Quantity.read("3m", Kind.LENGTH), List.of(),
                new Side.Ground(Side.Surface.SOIL, Optional.empty(), Optional.empty()), Optional.empty(), List.of());
        Assessment empty = Porch.empty();
        Survey survey = new Survey(Optional.empty(), Map.of("n", side), Map.of(), List.of(), List.of(), List.of(), List.of(), List.of(), 1);
        Drawing drawing = Elevation.draw(new Assessment(survey, empty.settings(), empty.water(), empty.wood(), empty.work(), empty.watch()), "n");
        assertTrue(words(drawing).contains("n side"), words(drawing).toString());
    }

    private static List<String> words(Drawing drawing) { return drawing.labels().stream().map(Drawing.Label::words).toList(); }
}
