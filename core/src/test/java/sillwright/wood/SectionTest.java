package sillwright.wood;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.wood.Section.Point;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/// Sections that no figure takes, against values worked by an independent program (computed); the unit is the inch as a bare number.
@DisplayNameGeneration(ReplaceUnderscores.class)
class SectionTest {
    private static List<Point> outline(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) points.add(new Point(xy[i], xy[i + 1]));
        return points;
    }

    private static void near(double expected, double value, int decimals) { assertEquals(expected, value, 0.5 * Math.pow(10, -decimals) + 1e-12); }

    @Test
    void a_post_with_one_corner_gone_is_skew_and_weaker_than_its_square_axes_say() {
        Section left = Section.of(outline(0, 0, 5.5, 0, 5.5, 2.5, 3.5, 2.5, 3.5, 5.5, 0, 5.5), List.of());
        near(24.25, left.areaMm2(), 6);
        near(2.31701, left.xMm(), 5);
        near(2.44072, left.yMm(), 5);
        near(60.0606, left.ixMm4(), 4);
        near(51.3338, left.iyMm4(), 4);
        near(-16.3724, left.ixyMm4(), 4);
        near(72.6411, left.greatestMm4(), 4);
        near(38.7533, left.leastMm4(), 4);
        near(1.26415, left.gyrationMm(), 5);
        near(19.6323, left.sBackMm3(), 4);
        near(24.6077, left.sFrontMm3(), 4);
        near(16.1275, left.sRightMm3(), 4);
        near(22.1552, left.sLeftMm3(), 4);
        near(16.1275, left.syMm3(), 4);
        assertTrue(left.leastMm4() < 0.8 * Math.min(left.ixMm4(), left.iyMm4()));
    }

    @Test
    void a_hollow_post_counts_what_is_round_the_hollow() {
        List<Point> post = outline(0, 0, 5.5, 0, 5.5, 5.5, 0, 5.5);
        Section centred = Section.of(post, List.of(outline(1.5, 1.5, 4, 1.5, 4, 4, 1.5, 4)));
        near(24, centred.areaMm2(), 6);
        near(73, centred.ixMm4(), 4);
        near(26.5455, centred.sxMm3(), 4);
        Section off = Section.of(post, List.of(outline(3, 2, 5, 2, 5, 4, 3, 4)));
        near(26.25, off.areaMm2(), 6);
        near(2.55952, off.xMm(), 5);
        near(2.71190, off.yMm(), 5);
        near(74.6338, off.ixMm4(), 4);
        near(67.7195, off.iyMm4(), 4);
        near(-1.44048, off.ixyMm4(), 5);
        near(74.9219, off.greatestMm4(), 4);
        near(67.4314, off.leastMm4(), 4);
    }

    @Test
    void a_slanting_loss_is_exact_too() {
        Section left = Section.of(outline(0, 0, 5.5, 0, 3.5, 5.5, 0, 5.5), List.of());
        near(24.75, left.areaMm2(), 6);
        near(2.28704, left.xMm(), 5);
        near(2.54630, left.yMm(), 5);
        near(61.3636, left.ixMm4(), 4);
        near(45.8567, left.iyMm4(), 4);
        near(-11.1570, left.ixyMm4(), 4);
        near(67.1967, left.greatestMm4(), 4);
        near(40.0236, left.leastMm4(), 4);
    }

    @Test
    void walked_the_other_way_round_it_is_the_same_section() {
        List<Point> one = outline(0, 0, 5.5, 0, 3.5, 5.5, 0, 5.5);
        assertEquals(Section.of(one, List.of()).ixMm4(), Section.of(one.reversed(), List.of()).ixMm4(), 1e-12);
        List<Point> hole = outline(1, 1, 2, 1, 2, 2);
        assertEquals(Section.of(one, List.of(hole)).areaMm2(), Section.of(one, List.of(hole.reversed())).areaMm2(), 1e-12);
    }

    @Test
    void losing_more_never_leaves_more_and_the_middle_moves_away_from_the_loss() {
        long seed = 31;
        var random = new Random(seed);
        for (int i = 0; i < 5_000; i++) {
            double width = 40 + random.nextDouble() * 300, depth = 40 + random.nextDouble() * 300;
            double front = random.nextDouble() * depth / 3, back = random.nextDouble() * depth / 3, left = random.nextDouble() * width / 3, right = random.nextDouble() * width / 3;
            Section.Kept kept = Section.left(width, depth, front, back, left, right), more = Section.left(width, depth, front + 5, back, left, right);
            String say = "seed " + seed + ", draw " + i;
            assertEquals((width - left - right) * (depth - front - back), kept.rest().areaMm2(), 1e-6, say);
            assertEquals((left - right) / 2, kept.shiftXMm(), 1e-9, say);
            assertEquals((front - back) / 2, kept.shiftYMm(), 1e-9, say);
            assertTrue(kept.area() <= 1 && kept.sx() <= 1 && kept.sy() <= 1, say);
            assertTrue(more.area() < kept.area() && more.sx() < kept.sx() && more.shiftYMm() > kept.shiftYMm(), say);
            assertTrue(kept.rest().leastMm4() <= Math.min(kept.rest().ixMm4(), kept.rest().iyMm4()) * (1 + 1e-12), say);
        }
    }

    @Test
    void losses_that_meet_are_refused_in_words() {
        Refused refused = assertThrows(Refused.class, () -> Section.left(139.7, 139.7, 0, 0, 76.2, 63.5));
        assertEquals("left and right: losses of 76.2 mm and 63.5 mm meet within the width of 139.7 mm: nothing is left to hold; "
                + "measure the depth of soft wood again, or plan to replace the piece", refused.line(Units.SI));
        assertThrows(Refused.class, () -> Section.left(100, 100, 60, 60, 0, 0));
        assertThrows(Refused.class, () -> Section.left(100, 100, -1, 0, 0, 0));
        assertThrows(Refused.class, () -> Section.left(100, 100, Double.NaN, 0, 0, 0));
    }
}
