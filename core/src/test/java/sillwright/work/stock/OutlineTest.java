package sillwright.work.stock;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.work.stock.Outline.Stroke;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class OutlineTest {
    private static Outline of(List<double[]> points) {
        return Outline.of(points.stream().mapToDouble(p -> p[0]).toArray(), points.stream().mapToDouble(p -> p[1]).toArray());
    }

    private static void arc(List<double[]> points, double cx, double cy, double radius, double from, double to, int steps) {
        for (int i = 0; i <= steps; i++) {
            double angle = Math.toRadians(from + (to - from) * i / steps);
            points.add(new double[] {cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)});
        }
    }

    @Test
    void a_quarter_round_is_one_arc_of_its_radius_that_swells() {
        List<double[]> points = new ArrayList<>();
        arc(points, 0, 0, 19.05, 90, 0, 8);
        Outline outline = of(points);
        assertEquals(1, outline.strokes().size());
        assertEquals(19.05, outline.strokes().getFirst().radiusMm(), 1e-6);
        assertFalse(outline.strokes().getFirst().cove());
        assertEquals(0, outline.worstMm(), 1e-6);
    }

    @Test
    void a_cove_is_hollow_and_a_half_round_rises_by_its_radius() {
        List<double[]> cove = new ArrayList<>(), bead = new ArrayList<>();
        arc(cove, 20, 20, 20, 180, 270, 8);
        assertTrue(of(cove).strokes().getFirst().cove());
        arc(bead, 10, 0, 10, 180, 0, 12);
        Stroke half = of(bead).strokes().getFirst();
        assertEquals(10, half.radiusMm(), 1e-6);
        assertEquals(10, half.riseMm(), 1e-6);
        assertFalse(half.cove());
    }

    @Test
    void flat_step_fillet_and_round_come_out_as_three_lines_and_an_arc() {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i <= 6; i++) points.add(new double[] {i * 4, 20});
        points.add(new double[] {24, 14});
        for (int i = 1; i <= 3; i++) points.add(new double[] {24 + i * 3, 14});
        arc(points, 33, -6, 20, 90, 0, 8);
        points.remove(11);
        Outline outline = of(points);
        assertEquals(List.of(false, false, false, true), outline.strokes().stream().map(Stroke::arc).toList());
        assertEquals(20, outline.strokes().getLast().radiusMm(), 1e-6);
        assertFalse(outline.strokes().getLast().cove());
    }

    @Test
    void an_arc_read_to_the_sixty_fourth_of_an_inch_is_found_to_within_a_twentieth() {
        for (long seed = 1; seed <= 30; seed++) {
            Random random = new Random(seed);
            double radius = 10 + random.nextDouble() * 40;
            List<double[]> points = new ArrayList<>();
            arc(points, radius, 0, radius, 180, 90, 10);
            for (double[] point : points) {
                point[0] = Math.max(0, Math.round(point[0] / Outline.READ_MM) * Outline.READ_MM);
                point[1] = Math.round(point[1] / Outline.READ_MM) * Outline.READ_MM;
            }
            Outline outline = of(points);
            Stroke longest = outline.strokes().stream().max(Comparator.comparingInt(Stroke::steps)).orElseThrow();
            assertEquals(radius, longest.radiusMm(), radius / 20, "seed " + seed + ": " + outline);
            assertTrue(outline.worstMm() <= Outline.READ_MM, "seed " + seed);
        }
    }

    @Test
    void strokes_meet_end_to_end_whatever_the_steps() {
        for (long seed = 1; seed <= 40; seed++) {
            Random random = new Random(seed);
            List<double[]> points = new ArrayList<>();
            double x = 0;
            for (int i = 0; i < 5 + random.nextInt(30); i++) points.add(new double[] {x += 0.5 + random.nextDouble() * 4, random.nextDouble() * 30});
            Outline outline = of(points);
            assertArrayEquals(points.getFirst(), new double[] {outline.strokes().getFirst().fromX(), outline.strokes().getFirst().fromY()});
            for (int i = 1; i < outline.strokes().size(); i++) assertEquals(outline.strokes().get(i - 1).toX(), outline.strokes().get(i).fromX(), "seed " + seed);
            assertEquals(points.getLast()[0], outline.strokes().getLast().toX());
            assertTrue(outline.worstMm() <= 3 * Outline.READ_MM + 1e-9, "seed " + seed);
        }
    }
}
