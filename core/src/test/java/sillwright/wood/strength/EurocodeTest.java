package sillwright.wood.strength;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class EurocodeTest {
    @TestFactory
    Stream<DynamicTest> the_metric_examples_come_to_what_was_published() {
        double bending = Eurocode.designMPa(24, Eurocode.Stays.MEDIUM, 1), shear = Eurocode.designMPa(2.5, Eurocode.Stays.MEDIUM, 1);
        double tipping = Eurocode.tipping(50, 200, 0.9 * 5000 + 2 * 200, 24, 7400), moment = (1.35 * 0.5 + 1.5 * 1.5) * 0.5 * 4.5 * 4.5 / 8, stress = moment * 1e6 / (75 * 200 * 200 / 6.0);
        Map<String, Double> values = Map.of("bending C24 medium 1", bending, "along C24 short 2", Eurocode.designMPa(21, Eurocode.Stays.SHORT, 2),
                "across C18 permanent 3", Eurocode.designMPa(2.2, Eurocode.Stays.PERMANENT, 3), "shear C24 medium 1", shear, "shear use", 1.5 * 3656 / (75 * 225) / shear,
                "tipping slenderness", tipping, "tipping", Eurocode.beam(tipping), "beam moment", moment, "beam stress", stress, "beam use", stress / (1.1 * bending));
        return Published.rows("eurocode").stream().map(row -> DynamicTest.dynamicTest(row.get("what"),
                () -> assertEquals(row.number("expected"), values.get(row.get("what")), row.number("tolerance"))));
    }

    @TestFactory
    Stream<DynamicTest> a_column_keeps_the_share_that_was_computed() {
        return Published.rows("eurocode-column").stream().map(row -> DynamicTest.dynamicTest("line " + row.line(), () -> {
            double relative = row.number("relative");
            if (!row.get("side_mm").isEmpty()) {
                double worked = Eurocode.slenderness(row.number("length_mm") * Math.sqrt(12) / row.number("side_mm"), row.number("along_MPa"), row.number("elastic05_MPa"));
                assertEquals(relative, worked, 0.5e-6);
                relative = worked;
            }
            assertEquals(row.number("kc"), Eurocode.column(relative), 0.6e-6);
        }));
    }

    @Test
    void a_stout_column_loses_nothing_and_the_more_slender_the_more() {
        assertEquals(1, Eurocode.column(0.3));
        for (double relative = 0.31; relative < 3; relative += 0.01) assertTrue(Eurocode.column(relative + 0.01) < Eurocode.column(relative));
        assertEquals(Eurocode.beam(0.75), Eurocode.beam(0.750001), 0.003);
        assertEquals(1.2, Eurocode.combined(0.4, 0.8, 0.5, 0.2, 0.26), 1e-12);
    }
}
