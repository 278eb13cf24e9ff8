package sillwright.water;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import sillwright.measure.Unit;
import sillwright.walk.Side.GutterShape;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class GuttersTest {
    private static Gutters.Section halfRound(double inches) { return Gutters.Section.of(GutterShape.HALF_ROUND, inches * 25.4, Optional.empty()); }

    private static double gpm(double litresPerS) { return Unit.GALLON_PER_MINUTE.fromOwn(litresPerS); }

    /// Classes of a trade table (read): flat to 3 in 12, to 5, to 8, to 11, 12 and over.
    @ParameterizedTest
    @CsvSource({"0, 1.0", "3, 1.0", "4, 1.05", "5, 1.05", "6, 1.1", "8, 1.1", "9, 1.2", "11, 1.2", "12, 1.3", "16, 1.3"})
    void a_steeper_roof_catches_more_as_the_trade_table_says(double in12, double factor) {
        assertEquals(factor, RoofWater.pitchFactor(in12 / 12));
    }

    @Test
    void every_cell_of_the_older_code_table_lies_within_7_percent_of_the_level_gutter_formula_times_root_two_for_each_doubling() {
        int cells = 0;
        for (GutterTable row : GutterTable.ALL) {
            if (!row.shape().equals("half-round") || row.edition() != 2012) continue;
            assertEquals(1, row.carriesLs() / Gutters.fallenHalfRoundLs(row.sizeMm(), row.fall()), 0.07, row.toString());
            cells++;
        }
        assertEquals(28, cells);
    }

    @Test
    void a_larger_gutter_and_a_greater_fall_never_carry_less_between_the_cells() {
        for (long seed = 1; seed <= 500; seed++) {
            Random random = new Random(seed);
            double size = random.nextDouble(2, 12), fall = Gutters.FIRST_FALL * random.nextDouble(1, 10);
            double carries = Gutters.capacityLs(halfRound(size), fall, 9000);
            assertTrue(Gutters.capacityLs(halfRound(size * 1.02), fall, 9000) > carries, "seed " + seed);
            assertTrue(Gutters.capacityLs(halfRound(size), fall * 1.02, 9000) > carries, "seed " + seed);
        }
    }

    @Test
    void full_bore_of_5_in_at_a_sixteenth_is_about_60_gpm_and_nothing_flows_full_without_fall() {
        assertEquals(60, gpm(Gutters.fullBoreLs(halfRound(5), Gutters.FIRST_FALL)), 1);
        assertEquals(0, Gutters.fullBoreLs(halfRound(5), 0));
    }

    /// Worked by an independent program (computed): 30 ft of 5 in half-round, 472.5 ft² caught.
    @Test
    void a_gutter_with_its_outlet_shut_overflows_after_a_twentieth_of_an_inch_of_rain() {
        assertEquals(0.0519, Gutters.rainToOverflowMm(halfRound(5), 9144, Unit.SQUARE_FOOT.toOwn(472.5)) / 25.4, 0.00005);
        assertEquals(9.817, halfRound(5).areaMm2() / (25.4 * 25.4), 0.0005);
        assertEquals(15.30, Unit.GALLON.fromOwn(halfRound(5).areaMm2() * 9144 / 1000), 0.005);
    }

    /// Worked by an independent program (computed): a sharp hole, C = 0.6, gpm.
    @ParameterizedTest
    @CsvSource({"0.5, 3, 1.473, 0.0005", "1, 3, 5.891, 0.0005", "2, 3, 23.565, 0.0005", "2, 2.5, 21.511, 0.0006", "0.5, 2.5, 1.344, 0.0005", "1, 2.5, 5.378, 0.0005"})
    void a_choked_outlet_lets_out_what_a_sharp_hole_does(double diameterIn, double headIn, double gpm, double tolerance) {
        assertEquals(gpm, gpm(Gutters.holeLs(diameterIn * 25.4, headIn * 25.4)), tolerance);
    }

    @Test
    void an_ogee_carries_less_than_the_rectangle_around_it() {
        var ogee = Gutters.Section.of(GutterShape.OGEE, 127, Optional.of(95.0));
        var box = Gutters.Section.of(GutterShape.RECTANGULAR, 127, Optional.of(95.0));
        assertTrue(Gutters.capacityLs(ogee, 0, 9144) < Gutters.capacityLs(box, 0, 9144));
        assertTrue(ogee.areaMm2() < box.areaMm2());
    }

    @Test
    void the_rule_of_a_downspouts_area_is_kind_to_small_pipes_and_unkind_to_large_ones_beside_the_code_table() {
        double before = 2, least = 2, most = 0;
        for (GutterTable row : GutterTable.ALL) {
            if (!row.shape().equals("leader-round") || row.edition() != 2015) continue;
            double ratio = Downspouts.ruleLs(Downspouts.areaMm2(row.sizeMm(), Optional.empty())) / row.carriesLs();
            assertTrue(ratio < before, row.toString());
            before = ratio;
            least = Math.min(least, ratio);
            most = Math.max(most, ratio);
        }
        assertTrue(least > 0.4 && least < 1 && most > 1 && most < 1.5, least + " " + most);
    }
}
