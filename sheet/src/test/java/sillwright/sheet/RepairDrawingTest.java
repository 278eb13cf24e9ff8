package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import sillwright.measure.Units;
import sillwright.work.Repair;
import sillwright.work.Treatment;

@DisplayNameGeneration(ReplaceUnderscores.class)
class RepairDrawingTest {
    private static final List<Repair> REPAIRS = Porch.assessment(Units.SI).work().repairs();

    private static double[] points(Markup shape) {
        String[] numbers = shape.get("points").split("[ ,]");
        double[] points = new double[numbers.length];
        for (int i = 0; i < numbers.length; i++) points[i] = Double.parseDouble(numbers[i]);
        return points;
    }

    private static List<double[]> newWood(Drawing drawing) {
        return drawing.svg().all("polygon").stream().filter(shape -> shape.get("fill").contains("hatch-new")).map(RepairDrawingTest::points).toList();
    }

    private static double ratio(Drawing drawing) {
        String words = drawing.labels().stream().map(Drawing.Label::words).filter(word -> word.startsWith("views 1:")).findFirst().orElseThrow();
        return Double.parseDouble(words.substring(8));
    }

    @Test
    void the_scarf_slopes_as_it_is_said_to_and_runs_its_whole_length_to_scale() {
        Drawing drawing = RepairDrawing.draw(REPAIRS.getFirst(), Units.SI);
        double ratio = ratio(drawing);
        double[] side = newWood(drawing).stream().filter(points -> Math.abs(points[5] - points[7]) > 1).findFirst().orElseThrow();
        double up = Math.abs(side[5] - side[7]), over = Math.abs(side[4] - side[6]);
        assertEquals(5, up / over, 0.01);
        assertEquals(1180, Math.abs(side[7] - side[1]) * ratio, 0.02 * ratio);
        assertEquals(5 * 139.7, up * ratio, 0.02 * ratio);
    }

    @Test
    void a_butt_splice_is_new_to_its_joint_and_no_further() {
        Drawing drawing = RepairDrawing.draw(REPAIRS.get(1), Units.SI);
        for (double[] shape : newWood(drawing)) assertEquals(420, View.around(shape).height() * ratio(drawing), 0.02 * ratio(drawing));
    }

    @Test
    void a_dutchman_has_its_size_to_scale() {
        Drawing drawing = RepairDrawing.draw(REPAIRS.get(3), Units.SI);
        Box patch = View.around(newWood(drawing).getFirst());
        assertEquals(380, patch.width() * ratio(drawing), 0.02 * ratio(drawing));
        assertEquals(40, patch.height() * ratio(drawing), 0.02 * ratio(drawing));
    }

    @ParameterizedTest
    @ValueSource(strings = {"46-7/16 in", "3 ft 10-7/16 in"})
    void lengths_are_said_to_the_sixteenth(String length) {
        List<String> words = RepairDrawing.draw(REPAIRS.getFirst(), Units.US).labels().stream().map(Drawing.Label::words).toList();
        assertEquals(length.contains("ft"), words.contains(length), words.toString());
    }

    @Test
    void a_splice_at_the_far_end_is_drawn_at_the_far_end() {
        Joint joint = Crowd.assessment(Units.SI).work().repairs().stream().filter(repair -> repair.damage().atFarEnd()
                && repair.treatment() instanceof Treatment.ButtSplice)
                .map(repair -> Joint.of(repair.damage(), repair.treatment())).findFirst().orElseThrow();
        assertTrue(joint.end() > joint.tip() && joint.tip() > 0, joint.toString());
    }

    @Test
    void a_repair_that_cuts_nothing_shows_no_new_wood() {
        for (Repair repair : REPAIRS)
            if (repair.woodLostMl() == 0) assertEquals(List.of(), newWood(RepairDrawing.draw(repair, Units.SI)), repair.id());
    }
}
