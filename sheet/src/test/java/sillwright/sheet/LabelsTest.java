package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class LabelsTest {
    @ParameterizedTest(name = "{0} labels")
    @ValueSource(ints = {10, 40, 120})
    void labels_never_cover_each_other_however_many_there_are(int count) {
        for (long seed = 1; seed <= 5; seed++) {
            Random random = new Random(seed);
            Canvas canvas = new Canvas(120, 80);
            Labels labels = new Labels(canvas, new Box(0, 0, 120, 80));
            for (int i = 0; i < count; i++) Marks.pointed(canvas, labels, 20 + random.nextDouble() * 40, 20 + random.nextDouble() * 20, "R" + i
                    + " butt splice", Ink.SMALL, Ink.ACT);
            apart(canvas.labels(), "seed " + seed);
        }
    }

    @Test
    void a_label_stands_near_its_point_on_bare_paper() {
        Canvas canvas = new Canvas(100, 100);
        Box box = new Labels(canvas, new Box(0, 0, 100, 100)).place(50, 50, 20, 5);
        assertTrue(Math.hypot(box.nearX(50) - 50, box.nearY(50) - 50) < 3, box.toString());
    }

    @Test
    void a_label_keeps_off_paper_that_had_better_stay_bare() {
        Canvas canvas = new Canvas(100, 100);
        Labels labels = new Labels(canvas, new Box(0, 0, 100, 100));
        Box wood = new Box(45, 0, 55, 100);
        labels.avoid(wood, 1);
        assertFalse(labels.place(50, 50, 20, 5).overlaps(wood));
    }

    @Test
    void a_label_never_covers_a_point_that_another_speaks_of() {
        Canvas canvas = new Canvas(100, 100);
        Labels labels = new Labels(canvas, new Box(0, 0, 100, 100));
        labels.keepBare(58, 50, 1);
        Box box = labels.place(50, 50, 20, 5);
        assertFalse(box.overlaps(new Box(57, 49, 2, 2)), box.toString());
    }

    static void apart(List<Drawing.Label> labels, String where) {
        for (int i = 0; i < labels.size(); i++)
            for (int j = i + 1; j < labels.size(); j++)
                assertFalse(labels.get(i).box().overlaps(labels.get(j).box()), where + ": '" + labels.get(i).words() + "' covers '"
                        + labels.get(j).words() + "'");
    }
}
