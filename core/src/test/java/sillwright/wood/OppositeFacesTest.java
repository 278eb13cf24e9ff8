package sillwright.wood;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.measure.Quantity;
import sillwright.measure.Memo;
import sillwright.measure.Unit;
import sillwright.walk.Member;
import sillwright.walk.Member.Face;
import sillwright.walk.MemberKind;
import sillwright.walk.ProbeReading;
import sillwright.walk.Spot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/// What the readings of one face say of the wood beneath the face opposite, from the readings to the section left.
@DisplayNameGeneration(ReplaceUnderscores.class)
class OppositeFacesTest {
    private static final double THROUGH = 90, REACH = 100;

    private static Quantity mm(double value) { return new Quantity(value, Unit.MILLIMETRE, value + " mm"); }

    private static Member plank() {
        return new Member("m", "south", MemberKind.POST, "m", Member.Role.BEARS_LOAD, "pine-eastern-white", Member.Run.UPRIGHT, mm(140), mm(THROUGH), mm(900), mm(0), mm(0),
                Optional.empty(), Member.EndGrain.BARE, Member.EndGrain.COVERED, Member.Coat.NONE, Member.Contact.NONE);
    }

    private static ProbeReading push(Face face, double along, double across, double depth, double reach) {
        return new ProbeReading(new Spot("m", face, mm(along), mm(across)), mm(Math.min(depth, reach)), mm(reach), depth >= reach);
    }

    private static MemberStudy study(List<ProbeReading> probes) {
        Map<Face, List<ProbeReading>> byFace = new EnumMap<>(Face.class);
        for (ProbeReading probe : probes) byFace.computeIfAbsent(probe.spot().face(), _ -> new ArrayList<>()).add(probe);
        return new MemberStudy(plank(), byFace, 3, Memo.NONE);
    }

    /// A short probe ran out at 40 mm from the front; from the back 30 mm are soft and then sound wood begins: so between both something is sound, and no draw has them meet there.
    @Test
    void two_probes_from_opposite_faces_leave_the_wood_that_the_second_stopped_in() {
        List<ProbeReading> front = new ArrayList<>(), both = new ArrayList<>();
        for (double x : new double[] {60, 120, 180}) for (double y : new double[] {35, 70, 105}) front.add(push(Face.FRONT, x, y, 99, 40));
        for (double x : new double[] {400, 700}) front.add(push(Face.FRONT, x, 70, 0, 40));
        both.addAll(front);
        for (double x : new double[] {60, 120, 180}) for (double y : new double[] {35, 70, 105}) both.add(push(Face.BACK, x, y, 30, REACH));
        for (double x : new double[] {400, 700}) both.add(push(Face.BACK, x, 70, 0, REACH));
        MemberStudy alone = study(front), known = study(both);
        FaceDraws before = alone.soft().get(Face.FRONT).draws, after = known.soft().get(Face.FRONT).draws, back = known.soft().get(Face.BACK).draws;
        int through = 0, met = 0;
        for (int d = 0; d < FaceStudy.DRAWS; d++)
            for (double x : new double[] {60, 120, 180}) {
                int column = after.grid.columnAt(x), row = after.grid.rows() / 2;
                if (before.depthMm(d, column, row) > 66) through++;
                assertTrue(after.depthMm(d, column, row) > 30, "still at least so deep as the short probe went, near it");
                if (after.depthMm(d, column, row) + back.depthMm(d, column, row) > THROUGH + 6) met++;
            }
        assertTrue(through > 60, through + " of 600 go further without the back");
        assertTrue(met < 12, met + " of 600 meet");
        assertTrue(known.section(0, 300).shapes().orElseThrow().kept().median() > 0.05);
        assertEquals(List.of(), known.overlaps());
    }

    /// A probe that met nothing sound all the way through says that the back is soft there too, though only its sound places were probed.
    @Test
    void a_hole_right_through_is_seen_from_both_faces() {
        List<ProbeReading> probes = new ArrayList<>(List.of(push(Face.BACK, 450, 70, 0, REACH), push(Face.BACK, 750, 70, 0, REACH)));
        for (double x : new double[] {450, 600, 750}) probes.add(push(Face.FRONT, x, 70, 0, REACH));
        for (double x : new double[] {60, 110}) probes.add(push(Face.FRONT, x, 70, THROUGH, REACH));
        MemberStudy study = study(probes);
        FaceDraws back = study.soft().get(Face.BACK).draws;
        int soft = 0;
        for (int d = 0; d < back.count; d++) if (back.depthMm(d, back.grid.columnAt(85), back.grid.rows() / 2) > THROUGH / 2) soft++;
        assertTrue(soft > 0.9 * back.count, soft + " of " + back.count);
        DepthMap map = study.maps().stream().filter(one -> one.face() == Face.BACK).findFirst().orElseThrow();
        assertTrue(map.chance((int) (85 / 900.0 * map.columns()), map.rows() / 2) > 0.9);
        assertTrue(map.chance((int) (600 / 900.0 * map.columns()), map.rows() / 2) < 0.05);
        assertTrue(study.section(0, 200).areaKept() < 0.7);
    }

    @Test
    void readings_that_overlap_past_the_thickness_are_named() {
        List<ProbeReading> probes = List.of(push(Face.FRONT, 100, 70, 60, REACH), push(Face.BACK, 102, 72, 50, REACH), push(Face.FRONT, 300, 70, 30, REACH), push(Face.BACK, 300, 70, 20, REACH),
                push(Face.FRONT, 600, 70, 60, REACH), push(Face.BACK, 700, 70, 60, REACH));
        assertEquals(List.of(100.0), study(probes).overlaps());
    }

    /// Of a face with sound readings only: what may hide between them shrinks as they grow denser, and counts in no damage.
    @Test
    void sound_readings_say_how_much_may_hide_between_them() {
        List<Double> high = new ArrayList<>();
        for (int columns : new int[] {1, 3, 9, 18}) {
            List<ProbeReading> probes = new ArrayList<>();
            for (int c = 0; c < columns; c++) for (double y : new double[] {35, 105}) probes.add(push(Face.FRONT, (c + 0.5) * 900 / columns, y, 0, REACH));
            MemberStudy study = study(probes);
            Interval share = study.hiddenShare().orElseThrow();
            assertEquals(0, share.low());
            assertTrue(study.soft().isEmpty() && Damages.of(study).isEmpty());
            assertTrue(study.maps().getFirst().volumeMl().high() >= 0);
            high.add(share.high());
        }
        // In whole cells: the last two may come to the same few.
        for (int i = 1; i < high.size(); i++) assertTrue(high.get(i) <= high.get(i - 1), high.toString());
        assertTrue(high.getFirst() > 0.02 && high.getLast() < 0.02 && high.get(2) < 0.5 * high.getFirst(), high.toString());
        assertFalse(study(List.of(push(Face.FRONT, 60, 70, 40, REACH))).hiddenShare().isPresent());
    }
}
