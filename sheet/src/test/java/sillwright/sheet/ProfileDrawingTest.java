package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Profile;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ProfileDrawingTest {
    private static Profile.Offset at(double across, double out) { return new Profile.Offset(mm(across), mm(out)); }

    private static Quantity mm(double value) { return Quantity.read(Words.number(value, 3) + " mm", Kind.LENGTH); }

    /// A cove of 20 mm and a torus of 25 mm, a step each twelfth of a half turn.
    private static Profile moulding() {
        List<Profile.Offset> steps = new ArrayList<>();
        for (int i = 0; i <= 6; i++) steps.add(at(20 * Math.sin(i * Math.PI / 12), 20 - 20 * Math.cos(i * Math.PI / 12)));
        for (int i = 0; i <= 12; i++) steps.add(at(45 - 25 * Math.cos(i * Math.PI / 12), 24 + 25 * Math.sin(i * Math.PI / 12)));
        return new Profile("s-base", "base", steps);
    }

    @ParameterizedTest
    @EnumSource
    void no_label_stands_on_the_line_that_is_cut_along(Units units) {
        Drawing drawing = ProfileDrawing.draw(moulding(), Porch.assessment(units).wood().of("s-post-3").member(), units);
        List<Markup> levels = drawing.svg().all("line").stream().filter(line -> line.get("y1").equals(line.get("y2")) && Math.abs(number(line, "x2") - number(line, "x1") - 1.8) < 0.01).toList();
        assertEquals(moulding().offsets().size(), levels.size(), "a cross for each step");
        List<Drawing.Label> radii = drawing.labels().stream().filter(label -> label.words().contains("R ")).toList();
        assertTrue(radii.size() >= 2, drawing.labels().toString());
        for (int i = 1; i < levels.size(); i++)
            for (Drawing.Label label : radii) assertFalse(label.box().crossedBy(number(levels.get(i - 1), "x1") + 0.9, number(levels.get(i - 1), "y1"), number(levels.get(i), "x1") + 0.9, number(levels.get(i), "y1")), label.words() + " at step " + i);
    }

    private static double number(Markup line, String name) { return Double.parseDouble(line.get(name)); }
}
