package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import sillwright.measure.Units;
import sillwright.work.Design;
import sillwright.work.Repair;
import sillwright.work.Treatment;
import sillwright.work.joint.Fixings;
import sillwright.work.joint.Hold;
import sillwright.work.joint.Joinery;
import sillwright.work.joint.Spacing;

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

    /// The scarf of the first, with six screws in two rows.
    private static Repair screwed() {
        Repair plain = REPAIRS.getFirst();
        double slope = plain.treatment() instanceof Treatment.ScarfSplice(_, var along, _, _) ? along : 0, d = 4.826;
        Spacing least = Spacing.thin(d, true, false);
        Fixings screws = new Fixings(Fixings.Sort.SCREW, "#10", d, 101.6, Fixings.spread(90, 608.5, 260, 139.7, least), least, Hold.screw(new Hold.Driven(d, 101.6, 50, 0.36, 0.36), 3.9));
        Design design = new Design(Optional.of(Joinery.scarf(139.7, 139.7, slope, 0, false, Optional.of(screws), Optional.empty())), List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty(), 0, List.of());
        return new Repair(plain.id(), plain.damage(), plain.treatment(), plain.reasons(), plain.alternatives(), plain.urgent(), plain.waterFirst(), plain.steps(), plain.pieces(), plain.needs(), plain.cautions(), plain.basis(),
                plain.comparison(), design, Optional.empty());
    }

    private static List<Double> sorted(Markup group, String attribute) { return Markup.of("g", List.of(group)).all("circle").stream().map(circle -> Double.parseDouble(circle.get(attribute))).distinct().sorted().toList(); }

    @Test
    void the_joint_is_drawn_larger_its_fasteners_at_their_places_and_each_space_told() {
        Repair repair = screwed();
        Drawing drawing = RepairDrawing.draw(repair, Units.SI);
        Markup detail = drawing.svg().all("g").stream().filter(group -> !group.get("data-ratio").isEmpty() && !sorted(group, "cx").isEmpty()).findFirst().orElseThrow();
        double ratio = Double.parseDouble(detail.get("data-ratio"));
        assertTrue(ratio < ratio(drawing), ratio + " is no larger than the views");
        List<Double> alongs = repair.design().joint().orElseThrow().fixings().orElseThrow().places().stream().map(Fixings.Place::alongMm).distinct().sorted().toList();
        List<Double> rows = repair.design().joint().orElseThrow().fixings().orElseThrow().places().stream().map(Fixings.Place::acrossMm).distinct().sorted().toList();
        List<Double> xs = sorted(detail, "cx"), ys = sorted(detail, "cy");
        assertEquals(alongs.size(), xs.size());
        for (int i = 1; i < xs.size(); i++) assertEquals(alongs.get(i) - alongs.get(i - 1), (xs.get(i) - xs.get(i - 1)) * ratio, 0.02 * ratio);
        assertEquals(rows.getLast() - rows.getFirst(), (ys.getLast() - ys.getFirst()) * ratio, 0.02 * ratio);
        List<String> words = drawing.labels().stream().map(Drawing.Label::words).toList();
        for (double space : new double[] {alongs.getFirst(), alongs.get(1) - alongs.getFirst(), rows.getFirst(), rows.getLast() - rows.getFirst()})
            assertTrue(words.contains(Said.length(space, Units.SI)), () -> Said.length(space, Units.SI) + " is not told: " + words);
        assertTrue(words.contains(Said.length(698.5, Units.SI) + ", 1:5"), words::toString);
    }

    @Test
    void no_words_of_a_joint_stand_on_others() {
        List<Drawing.Label> labels = RepairDrawing.draw(screwed(), Units.US).labels();
        for (int i = 0; i < labels.size(); i++) for (int k = i + 1; k < labels.size(); k++)
            assertFalse(labels.get(i).box().overlaps(labels.get(k).box()), labels.get(i).words() + " on " + labels.get(k).words());
    }

    @Test
    void a_repair_that_cuts_nothing_shows_no_new_wood() {
        for (Repair repair : REPAIRS)
            if (repair.woodLostMl() == 0) assertEquals(List.of(), newWood(RepairDrawing.draw(repair, Units.SI)), repair.id());
    }
}
