package sillwright.wood.strength;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.measure.Unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sillwright.wood.strength.Published.inches;
import static sillwright.wood.strength.Published.psi;
import static sillwright.wood.strength.Published.toPsi;

/// Posts, beams, bearings and what comes down on them.
@DisplayNameGeneration(ReplaceUnderscores.class)
class BearerTest {
    /// HUD, Residential Structural Design Guide, 2nd ed. (2017), Example 5.1, as a public program's test quotes it (read): a floor joist 2x8 at 16 in, 10 and 30 psf.
    /// Its shear value, 75 psi doubled, is of an older standard.
    @Test
    void a_floor_joist_spans_what_the_example_says() {
        var wood = new Adjusted(psi(975 * 1.15 * 1.2), 0, 0, psi(75 * 2.0), psi(405), 0, psi(1.5e6), 0);
        assertEquals(1345, toPsi(wood.bendingMPa()), 0.6);
        double all = Unit.PSF.toOwn(40) * inches(16), live = Unit.PSF.toOwn(30) * inches(16);
        Beam one = Beam.rectangle(inches(1.5), inches(7.25), 1, false, wood);
        assertEquals(13.14, Unit.INCH_MODULUS.fromOwn(one.modulusMm3()), 0.005);
        assertEquals(47.63, Unit.INCH_INERTIA.fromOwn(one.inertiaMm4()), 0.005);
        assertEquals(14.865, feet(Math.sqrt(wood.bendingMPa() / one.bentMPa(all))), 0.005);
        assertEquals(40.8, feet(wood.shearMPa() / one.shearMPa(all)), 0.05);
        assertEquals(45.6, feet(2 * wood.acrossMPa() * inches(1.5) * inches(2) / all), 0.05);
        assertEquals(13.8, feet(Math.cbrt(1.0 / 360 / one.sagMm(live))), 0.05);
    }

    private static double feet(double mm) { return Unit.FOOT.fromOwn(mm); }

    /// Hankinson's formula and the notched beam, worked by an independent program (computed: C26, C28).
    @Test
    void bearing_at_an_angle_and_a_notch_come_to_what_was_computed() {
        assertEquals(869.5652, Bearing.atAngleMPa(1000, 625, 30), 0.00005);
        assertEquals(769.2308, Bearing.atAngleMPa(1000, 625, 45), 0.00005);
        assertEquals(689.6552, Bearing.atAngleMPa(1000, 625, 60), 0.00005);
        assertEquals(1870.595, Unit.POUND.fromOwn(Beam.notchedN(psi(180), inches(3.5), inches(9.25), inches(7.25))), 0.0005);
        assertEquals(1, Bearing.helped(inches(2), inches(2.5)));
    }

    /// Worked by an independent program (computed: C38).
    @Test
    void a_porch_post_carries_half_its_bays_and_half_the_porch() {
        double ft = Unit.FOOT.toOwn(1);
        Tributary post = Tributary.post(8 * ft, 8 * ft, 8 * ft, 0, true, false);
        assertEquals(32, Unit.SQUARE_FOOT.fromOwn(post.roofMm2()), 1e-9);
        UnitLoads snow = new UnitLoads(Unit.PSF.toOwn(15), 0, Unit.PSF.toOwn(30), 0, 0, 0), live = new UnitLoads(Unit.PSF.toOwn(10), Unit.PSF.toOwn(20), 0, 0, 0, 0);
        assertEquals(1440, Unit.POUND.fromOwn(post.heaviest(snow)), 1e-6);
        assertEquals(960, Unit.POUND.fromOwn(post.heaviest(live)), 1e-6);
        double side = Tributary.padSideMm(post.heaviest(snow), UnitLoads.all().get("soil").loadMPa());
        assertEquals(0.96, Unit.SQUARE_FOOT.fromOwn(side * side), 1e-9);
    }

    @Test
    void every_combination_is_checked_with_the_shortest_of_its_loads() {
        var loads = Tributary.post(2000, 3000, 2400, 300, true, true).loads(UnitLoads.usual());
        assertEquals(List.of(Duration.PERMANENT, Duration.NORMAL, Duration.SNOW, Duration.CONSTRUCTION), loads.stream().map(Tributary.Load::duration).toList());
        for (int i = 1; i < 3; i++) assertTrue(loads.get(i).load() > loads.get(i - 1).load());
        assertEquals(2500 * (1500 * Unit.PSF.toOwn(15) + 1200 * Unit.PSF.toOwn(10)), loads.getFirst().load(), 1e-6);
        assertEquals(List.of(Duration.PERMANENT, Duration.NORMAL), Tributary.spaced(400).loads(UnitLoads.usual()).stream().map(Tributary.Load::duration).toList());
    }

    @Test
    void at_its_capacity_a_post_is_just_used_up_and_a_load_off_the_middle_never_helps() {
        long seed = 47;
        var random = new Random(seed);
        for (int i = 0; i < 3_000; i++) {
            double w = 80 + random.nextDouble() * 150, d = 80 + random.nextDouble() * 150, l = 500 + random.nextDouble() * 4000, off = random.nextDouble() * 60;
            Adjusted wood = Adjusted.of(DesignValues.of("pine-eastern-white", Grade.NO2, w, d), w, d, Adjusted.Service.of(Duration.SNOW, random.nextBoolean()));
            Post post = Post.rectangle(w, d, l, wood);
            String say = "seed " + seed + ", draw " + i;
            assertEquals(1, post.under(post.capacityN(off), off).greatest(), 1e-9, say);
            assertTrue(post.capacityN(off) <= post.capacityN(0) * (1 + 1e-12), say);
            assertEquals(post.allowedMPa() * post.areaMm2(), post.capacityN(0), 1e-9 * post.capacityN(0), say);
            assertTrue(Post.rectangle(w, d, l * 1.05, wood).cp() < post.cp(), say);
            assertTrue(Post.rectangle(w, d, l * 1.05, wood).capacityN(off) <= post.capacityN(off) * (1 + 1e-12), say);
        }
    }

    @Test
    void at_its_capacity_a_beam_is_just_used_up_and_a_longer_one_bears_less() {
        Adjusted wood = Adjusted.of(DesignValues.of("hem-fir", Grade.NO2, inches(3.5), inches(9.25)), inches(3.5), inches(9.25), Adjusted.Service.of(Duration.NORMAL, false));
        double before = Double.MAX_VALUE;
        for (double span = 300; span < 9000; span += 150) {
            Beam beam = Beam.rectangle(inches(3.5), inches(9.25), span, false, wood);
            assertEquals(1, beam.greatest(beam.capacityNPerMm()), 1e-12);
            assertTrue(beam.capacityNPerMm() < before);
            before = beam.capacityNPerMm();
        }
    }

    @Test
    void a_foot_with_nothing_sound_bears_nothing() {
        assertEquals(Combined.BEYOND, Bearing.foot(100, 0, 5));
        assertEquals(0, Bearing.foot(0, 0, 5));
        assertEquals(0.5, Bearing.foot(1000, 400, 5), 1e-12);
    }
}
