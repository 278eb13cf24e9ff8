package sillwright.wood;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.walk.ProbeReading;
import sillwright.walk.Spot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class NextProbeTest {
    private static final double THROUGH = 140, REACH = 100, HAND = 1.5;

    private static Quantity mm(double value) { return new Quantity(value, Unit.MILLIMETRE, value + " mm"); }

    private static ProbeReading reading(Member.Face face, double along, double across, double depth) {
        return new ProbeReading(new Spot("post", face, mm(along), mm(across)), mm(Math.min(depth, REACH)), mm(REACH), depth >= REACH);
    }

    @Test
    void without_a_reading_there_is_no_next_and_with_one_the_same_spot_comes_twice() {
        Member post = DecayCalibrationTest.post();
        assertTrue(NextProbe.of(post, List.of()).isEmpty());
        List<ProbeReading> readings = List.of(reading(Member.Face.FRONT, 60, 60, 55));
        NextProbe next = NextProbe.of(post, readings).orElseThrow();
        assertEquals(next, NextProbe.of(post, readings).orElseThrow());
        assertFalse(next.enough());
        assertEquals(Member.Face.FRONT, next.face());
        assertTrue(Math.hypot(next.alongMm() - 60, next.acrossMm() - 60) >= 25);
        assertTrue(next.words(Units.US).startsWith("Probe next: front face"), next.words(Units.US));
    }

    @Test
    void a_face_that_is_known_all_over_is_enough_and_the_face_opposite_deep_wood_is_named() {
        List<ProbeReading> readings = new ArrayList<>();
        for (int c = 0; c < 18; c++) for (int r = 0; r < 3; r++) readings.add(reading(Member.Face.FRONT, 25 + 50 * c, 23 + 47 * r, Math.max(0, 90 - c * 15)));
        NextProbe next = NextProbe.of(DecayCalibrationTest.post(), readings).orElseThrow();
        assertTrue(next.enough(), next.toString());
        assertTrue(next.unseen().contains(Member.Face.BACK), next.toString());
        assertTrue(next.words(Units.SI).startsWith("Probed enough"));
    }

    private static FaceStudy study(double length, Readings readings) { return FaceStudy.of(new Slab(length, 120, THROUGH), readings, new Random(1)); }

    private static Readings none() { return Readings.of(new double[0], new double[0], new double[0], new Readings.Says[0]); }

    private static Readings sound(Readings before, double... alongs) {
        Readings all = before;
        for (double along : alongs) all = all.with(along, 60, 0, Readings.Says.AT_MOST);
        return all;
    }

    @Test
    void the_widest_stretch_that_nobody_probed_is_parted_at_its_middle_and_an_end_counts_double() {
        Slab slab = new Slab(2000, 120, THROUGH);
        Unprobed within = Unprobed.widest(sound(none(), 150, 500, 1300, 1800), slab), end = Unprobed.widest(sound(none(), 20, 500, 1000, 1500), slab), start = Unprobed.widest(sound(none(), 1400), slab);
        assertEquals(900, within.alongMm(), 1e-9);
        assertEquals(800, within.wideMm(), 1e-9);
        assertEquals(1950, end.alongMm(), 1e-9);
        assertEquals(1000, end.wideMm(), 1e-9);
        assertEquals(50, start.alongMm(), 1e-9);
        assertFalse(Unprobed.widest(sound(none(), IntStream.range(0, 20).mapToDouble(i -> 50 + 100.0 * i).toArray()), slab).worth());
    }

    @Test
    void steps_along_go_from_one_side_of_the_face_to_the_other() {
        Readings low = none().with(100, 20, 0, Readings.Says.AT_MOST), high = none().with(100, 100, 0, Readings.Says.AT_MOST);
        assertTrue(Unprobed.widest(low, new Slab(2000, 120, THROUGH)).acrossMm() > 60);
        assertTrue(Unprobed.widest(high, new Slab(2000, 120, THROUGH)).acrossMm() < 60);
    }

    /// A seat at the start that is not known well yet: pushes go by turns into it and to where nobody looked.
    @Test
    void while_a_seat_is_open_pushes_go_by_turns_into_it_and_into_the_widest_stretch_that_nobody_probed() {
        Readings taken = sound(none().with(60, 40, 60, Readings.Says.EXACTLY), 700, 1300);
        for (int turn = 0; turn < 4; turn++) {
            FaceNext next = FaceNext.of(study(2000, taken), REACH, Decay.LOAD_MARGIN_MM);
            Unprobed unprobed = Unprobed.widest(taken, new Slab(2000, 120, THROUGH));
            assertEquals(NextProbe.Decides.VOLUME, next.decides());
            if (taken.count % 2 == 0) {
                assertEquals(unprobed.alongMm(), next.alongMm(), 1e-9);
                assertEquals(NextProbe.Why.UNSEEN, next.why());
            } else assertTrue(next.alongMm() < 700, next.toString());
            taken = next.alongMm() < 250 ? taken.with(next.alongMm(), next.acrossMm(), 60 - next.alongMm() / 5, Readings.Says.EXACTLY) : taken.with(next.alongMm(), next.acrossMm(), 0, Readings.Says.AT_MOST);
        }
    }

    /// Twenty pushes along a face that is sound all over: wherever a seat began, it would have been met, and no hole is near another.
    @Test
    void a_face_that_reads_sound_is_walked_from_end_to_end() {
        double length = 2400;
        Readings taken = sound(none(), 1000);
        while (taken.count < 20) {
            FaceNext next = FaceNext.of(study(length, taken), REACH, Decay.LOAD_MARGIN_MM);
            if (next.enough()) break;
            for (int i = 0; i < taken.count; i++) assertTrue(Math.hypot(taken.alongMm[i] - next.alongMm(), taken.acrossMm[i] - next.acrossMm()) >= ProbeGain.APART_MM);
            taken = taken.with(next.alongMm(), next.acrossMm(), 0, Readings.Says.AT_MOST);
        }
        assertTrue(Unprobed.widest(taken, new Slab(length, 120, THROUGH)).wideMm() <= 240, String.valueOf(Unprobed.widest(taken, new Slab(length, 120, THROUGH))));
    }
}
