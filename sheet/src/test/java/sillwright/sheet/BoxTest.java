package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class BoxTest {
    @Test
    void boxes_that_share_an_edge_do_not_overlap() {
        assertFalse(new Box(0, 0, 10, 5).overlaps(new Box(10, 0, 10, 5)));
        assertTrue(new Box(0, 0, 10, 5).overlaps(new Box(9.9, 4.9, 10, 5)));
    }

    @Test
    void a_line_crosses_a_box_where_walking_along_it_finds_the_inside() {
        Random random = new Random(7);
        Box box = new Box(3, 4, 5, 2);
        for (int i = 0; i < 4000; i++) {
            double x1 = random.nextDouble() * 12, y1 = random.nextDouble() * 10, x2 = random.nextDouble() * 12, y2 = random.nextDouble() * 10;
            boolean walked = false;
            double nearest = Double.MAX_VALUE;
            for (int step = 0; step <= 4000; step++) {
                double x = x1 + (x2 - x1) * step / 4000, y = y1 + (y2 - y1) * step / 4000;
                double inside = Math.min(Math.min(x - 3, 8 - x), Math.min(y - 4, 6 - y));
                walked |= inside > 0;
                nearest = Math.min(nearest, Math.abs(inside));
            }
            if (!walked && nearest < 0.01) continue;
            assertEquals(walked, box.crossedBy(x1, y1, x2, y2), "line " + i + " of seed 7");
        }
    }
}
