package sillwright.wood.strength;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sillwright.wood.strength.Published.inches;
import static sillwright.wood.strength.Published.psi;

@DisplayNameGeneration(ReplaceUnderscores.class)
class BucklingTest {
    private static double cp(double alongPsi, double elasticPsi, double slender) {
        return Buckling.share(Buckling.columnMPa(psi(elasticPsi), slender, 1), psi(alongPsi), Buckling.SAWN);
    }

    @TestFactory
    Stream<DynamicTest> a_column_keeps_the_share_of_its_strength_that_was_computed() {
        return Published.rows("column-stability").stream().map(row -> DynamicTest.dynamicTest("line " + row.line(),
                () -> assertEquals(row.number("cp"), cp(row.number("along_psi"), row.number("elastic_psi"), row.number("length") / row.number("side")), 0.5e-6)));
    }

    @TestFactory
    Stream<DynamicTest> planks_nailed_together_keep_the_share_that_was_published() {
        return Published.rows("column-plies").stream().map(row -> DynamicTest.dynamicTest("line " + row.line(),
                () -> assertEquals(row.number("cp"), cp(row.number("along_psi"), row.number("elastic_psi"), row.number("slender"))
                        * (row.get("nailed").equals("true") ? Buckling.NAILED_PLIES : 1), 0.5e-6)));
    }

    @TestFactory
    Stream<DynamicTest> a_beam_tips_as_the_examples_say() {
        return Published.rows("beam-stability").stream().map(row -> DynamicTest.dynamicTest("line " + row.line() + ": " + row.get("result"), () -> {
            double deep = inches(row.number("depth_in")), wide = inches(row.number("width_in")), fb = psi(row.number("bending_psi"));
            double le = Buckling.Loading.valueOf(row.get("loading")).lengthMm(inches(row.number("unbraced_in")), deep), rb = Buckling.beamSlender(le, deep, wide);
            double critical = Buckling.beamMPa(psi(row.number("elastic_psi")), rb), cl = Buckling.share(critical, fb, Buckling.BEAM);
            double value = switch (row.get("result")) {
                case "le" -> le / 25.4;
                case "RB" -> rb;
                case "FbE" -> Published.toPsi(critical);
                case "CL" -> cl;
                case "Fb" -> Published.toPsi(fb * cl);
                default -> throw new AssertionError(row.get("result"));
            };
            assertEquals(row.number("expected"), value, row.number("tolerance"));
        }));
    }

    @Test
    void a_rectangle_buckles_alike_by_its_side_and_by_its_radius_of_gyration() {
        assertEquals(Buckling.columnMPa(4000, 2500, 90), Buckling.columnByGyrationMPa(4000, 2500, 90 / Math.sqrt(12)), 1e-12);
        assertEquals(9.864 * 4000 / (100.0 * 100), Buckling.columnByGyrationMPa(4000, 2500, 25), 1e-12);
    }

    /// The closed form solves c·x² − (1 + r)·x + r = 0 for its lesser root.
    @Test
    void the_share_is_the_least_root_of_its_equation_and_the_more_slender_the_less() {
        long seed = 41;
        var random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double strength = 1 + random.nextDouble() * 20, critical = Math.exp(random.nextDouble() * 16 - 5), c = List.of(0.8, 0.85, 0.9, 0.95).get(random.nextInt(4));
            double r = critical / strength, x = Buckling.share(critical, strength, c);
            String say = "seed " + seed + ", draw " + i;
            assertEquals(0, c * x * x - (1 + r) * x + r, 1e-9 * (1 + r), say);
            assertTrue(x > 0 && x < 1 && x < r, say);
            assertTrue(Buckling.share(critical * 0.9, strength, c) < x, say);
        }
    }

    @Test
    void a_round_post_counts_as_the_square_of_its_area_and_a_tapered_one_a_third_up() {
        assertEquals(0.886, Buckling.sideOfRound(1), 0.0005);
        assertEquals(110, Buckling.sideOfTaper(100, 130), 1e-12);
        assertEquals(0.65, Buckling.Ends.FIXED_FIXED.times());
    }
}
