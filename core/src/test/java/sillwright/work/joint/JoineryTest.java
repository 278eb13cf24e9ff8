package sillwright.work.joint;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Unit;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class JoineryTest {
    private static Joinery scarf(double slope, double nib, double along, double bending, double whole) {
        return Joinery.scarf(140, 140, slope, nib, false, Optional.empty(), Optional.of(new Joinery.Load(along, bending, 0, whole, 1.0)));
    }

    @Test
    void a_flatter_scarf_is_never_less_efficient_nor_more_used() {
        for (double nib : new double[] {0, 17.5})
            for (double slope = 4; slope < 24; slope += 0.5) {
                Joinery steep = scarf(slope, nib, 20_000, 1e6, 0.6), flat = scarf(slope + 0.5, nib, 20_000, 1e6, 0.6);
                assertTrue(flat.efficiency() >= steep.efficiency() - 1e-12);
                assertTrue(flat.strength().orElseThrow().use() <= steep.strength().orElseThrow().use() + 1e-12);
                assertTrue(flat.lengthMm() > steep.lengthMm());
            }
    }

    @Test
    void nibs_shorten_a_scarf_and_cost_it_strength_where_it_is_pulled_and_none_where_it_is_pressed() {
        assertEquals(8 * (140 - 35), Joinery.scarfMm(140, 8, 17.5), 1e-9);
        assertEquals(0.8 * (140 - 17.5) / 140, Joinery.scarfKeeps(140, 8, 17.5, false), 1e-12);
        assertEquals(0.8, Joinery.scarfKeeps(140, 8, 17.5, true), 1e-12);
    }

    /// The worked values of a plain scarf at 1000 psi: 123.077 shear and 15.3846 square to it at 1:8.
    @Test
    void the_glue_line_bears_what_statics_say() {
        double area = 140 * 140, pull = Unit.PSI.toOwn(1000) * area;
        Joinery.Strength strength = scarf(8, 0, pull, 0, 0.5).strength().orElseThrow();
        assertEquals(123.077, Unit.PSI.fromOwn(strength.shearMPa()), 0.0005);
        assertEquals(15.3846, Unit.PSI.fromOwn(strength.squareMPa()), 0.00005);
        Joinery.Strength pressed = Joinery.scarf(140, 140, 8, 0, true, Optional.empty(), Optional.of(new Joinery.Load(-pull, 0, 0, 0.5, 1))).strength().orElseThrow();
        assertTrue(pressed.squareMPa() < 0, "pressed shut");
    }

    @Test
    void fasteners_keep_their_distances_whatever_the_face() {
        for (long seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            double wide = 20 + random.nextDouble() * 280, from = random.nextDouble() * 100, to = from + random.nextDouble() * 1500;
            Spacing least = random.nextBoolean() ? Spacing.thin(4.2 + random.nextDouble() * 2, random.nextBoolean(), random.nextBoolean()) : Spacing.thick(9.5 + random.nextDouble() * 6, random.nextBoolean(), random.nextBoolean());
            List<Fixings.Place> places = Fixings.spread(from, to, 150, wide, least);
            assertFalse(places.isEmpty());
            for (Fixings.Place place : places) {
                assertTrue(place.alongMm() >= from - 1e-9 && place.alongMm() <= to + 1e-9, "seed " + seed);
                if (places.stream().map(Fixings.Place::acrossMm).distinct().count() > 1)
                    assertTrue(place.acrossMm() >= least.edgeMm() - 1e-9 && wide - place.acrossMm() >= least.edgeMm() - 1e-9, "seed " + seed);
                for (Fixings.Place other : places)
                    if (other != place) assertTrue(Math.abs(other.alongMm() - place.alongMm()) >= least.rowMm() - 1e-9 || Math.abs(other.acrossMm() - place.acrossMm()) >= least.apartMm() - 1e-9, "seed " + seed);
            }
        }
    }

    @Test
    void a_bolt_is_worked_by_the_same_equations_as_a_lag_of_its_root() {
        double d = Unit.INCH.toOwn(0.5);
        Hold bolt = Hold.bolt(new Hold.Driven(d, 140, 70, 0.5, 0.5), 70, 0);
        YieldLimit.Yield plain = YieldLimit.least(new YieldLimit.Dowel(d, 70, 70, YieldLimit.bearingMPa(0.5, d, 0), YieldLimit.bearingMPa(0.5, d, 0), Unit.PSI.toOwn(45_000)), YieldLimit.thick(d, 0));
        assertEquals(plain.lateralN(), bolt.lateralN(), 1e-9);
        assertTrue(Hold.dowel(new Hold.Driven(d, 140, 70, 0.5, 0.5), 70, 0).lateralN() < bolt.lateralN() / 2, "a dowel bears far less than a bolt");
    }
}
