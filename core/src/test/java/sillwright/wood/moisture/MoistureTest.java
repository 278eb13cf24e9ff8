package sillwright.wood.moisture;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillwright.Figures;
import sillwright.measure.Vapour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class MoistureTest {
    @Test
    void damper_air_never_leaves_wood_drier() {
        for (double tempC = -1; tempC <= 99; tempC += 2.5)
            for (double humidity = 0.01; humidity < 0.98; humidity += 0.01)
                assertTrue(Moisture.atRest(tempC, humidity + 0.01) > Moisture.atRest(tempC, humidity), tempC + " °C, " + humidity);
    }

    @Test
    void warmer_air_of_the_same_dampness_leaves_wood_drier_from_room_heat_up() {
        for (double humidity = 0.05; humidity <= 0.951; humidity += 0.05)
            for (double tempC = 20; tempC < 95; tempC += 5)
                assertTrue(Moisture.atRest(tempC + 5, humidity) < Moisture.atRest(tempC, humidity), tempC + " °C, " + humidity);
    }

    @Test
    void dry_air_leaves_dry_wood() { assertEquals(0, Moisture.atRest(20, 0), 1e-15); }

    /// Over water and over ice, Pa (computed from the ASHRAE equations by an independent program).
    @ParameterizedTest(name = "{0} °C, {1} Pa")
    @CsvSource({"-20, 103.2604", "-10, 259.9029", "0, 611.1536", "10, 1227.9953", "20, 2338.8037", "25, 3169.2165", "30, 4246.0302", "40, 7383.4600"})
    void vapour_presses_as_the_handbook_of_the_trade_says(double tempC, double pascal) { assertEquals(pascal, Vapour.saturationPa(tempC), 0.00005); }

    @Test
    void the_two_equations_meet_at_the_triple_point() {
        assertEquals(Vapour.saturationPa(0.0100001), Vapour.saturationPa(0.01), 0.05);
    }

    @Test
    void the_dew_point_undoes_the_pressure_and_never_lies_above_the_air() {
        long seed = 5;
        var random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            double tempC = -40 + random.nextDouble() * 130, humidity = 0.01 + random.nextDouble() * 0.99, dewC = Vapour.dewPointC(tempC, humidity);
            String say = "seed " + seed + ": " + tempC + " °C, " + humidity;
            assertTrue(dewC <= tempC, say);
            if (Math.abs(dewC - 0.01) > 1e-6) assertEquals(humidity, Vapour.saturationPa(dewC) / Vapour.saturationPa(tempC), 1e-9, say);
        }
        assertEquals(20, Vapour.dewPointC(20, 1), 1e-9);
    }

    /// A maker's rule (read): half a point for each 5 °C; the equation is near it about 20 °C and at a reading of 12.
    @Test
    void the_meter_rule_of_half_a_point_for_five_degrees_holds_near_room_heat() {
        assertEquals(0.005, Moisture.fromMeter(0.12, 15) - Moisture.fromMeter(0.12, 20), 0.0006);
        assertTrue(Moisture.fromMeter(0.24, 15) - Moisture.fromMeter(0.24, 20) > 0.007, "the flat rule is too small for wet wood");
    }

    @Test
    void a_meter_is_trusted_between_seven_and_thirty() {
        assertTrue(Moisture.withinMeter(0.07) && Moisture.withinMeter(0.30) && !Moisture.withinMeter(0.069) && !Moisture.withinMeter(0.301));
        var cold = Figures.named("meter").answer(Map.of("reading", "28%", "species", "douglas-fir-coast", "temp", "20F"));
        assertEquals(new sillwright.measure.Answer.True(false), cold.results().get("withinRange"));
    }

    @Test
    void a_species_without_meter_constants_is_corrected_for_temperature_alone_and_says_so() {
        var pine = Figures.named("meter").answer(Map.of("reading", "14%", "species", "pine-eastern-white", "temp", "50F"));
        var fir = Figures.named("meter").answer(Map.of("reading", "14%", "species", "douglas-fir-coast", "temp", "50F"));
        assertEquals(fir.own("mc"), pine.own("mc"));
        assertTrue(pine.cautions().stream().anyMatch(c -> c.contains("pine-eastern-white were not found")));
        assertTrue(fir.cautions().stream().noneMatch(c -> c.contains("not found")));
    }
}
