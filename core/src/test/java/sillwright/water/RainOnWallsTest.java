package sillwright.water;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import sillwright.walk.Side.Surface;
import sillwright.water.DrivingRain.Exposure;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class RainOnWallsTest {
    /// Formulas from memory, worked by an independent program (computed).
    @ParameterizedTest(name = "{0} mm/h")
    @CsvSource({"1, 1.1050, 4.2586, 0.23482", "5, 1.6052, 5.6679, 0.17643", "25, 2.3318, 7.1702, 0.13947"})
    void drops_grow_and_fall_faster_with_the_rain(double rain, double dropMm, double speedMs, double factor) {
        assertEquals(dropMm, DrivingRain.dropMm(rain), 0.00005);
        assertEquals(speedMs, DrivingRain.fallSpeedMs(DrivingRain.dropMm(rain)), 0.00005);
        assertEquals(factor, DrivingRain.freeWind(1, 0, rain) / rain, 0.000005);
    }

    /// ASHRAE 160's table of exposure (from memory).
    @ParameterizedTest(name = "{0}, {1} m")
    @CsvSource({"SEVERE, 9, 1.3", "MEDIUM, 9, 1.0", "SHELTERED, 9, 0.7", "MEDIUM, 12, 1.1", "SHELTERED, 18, 0.9", "SEVERE, 25, 1.5", "MEDIUM, 45, 1.5", "SHELTERED, 45, 1.3", "SHELTERED, 60, 1.5"})
    void taller_and_opener_buildings_catch_more(Exposure exposure, double heightM, double factor) {
        assertEquals(factor, DrivingRain.exposureFactor(exposure, heightM * 1000));
    }

    /// The bound without air drag for a splash of half a metre (computed).
    @ParameterizedTest(name = "{0} m out")
    @CsvSource({"0.15, 0.489", "0.30, 0.455", "0.45, 0.399", "0.60, 0.320"})
    void splash_from_further_out_reaches_less_high(double outM, double reachM) {
        assertEquals(reachM, Splash.riseMm(500, outM * 1000) / 1000, 0.00051);
    }

    @Test
    void share_at_the_reach_is_one_in_twenty_whatever_the_overhang() {
        for (Surface ground : Surface.values())
            for (double out : new double[] {0, 100, 200})
                if (Splash.reachMm(ground, out) > 0) assertEquals(Math.exp(-3), Splash.share(Splash.reachMm(ground, out), ground, out), 1e-9, ground + " " + out);
    }

    @Test
    void more_clearance_and_more_overhang_never_let_more_splash_reach() {
        for (long seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            double clear = random.nextDouble(600), out = random.nextDouble(1200);
            Surface ground = Surface.values()[random.nextInt(5)];
            double share = Splash.share(clear, ground, out);
            assertTrue(share >= 0 && share <= 1, "seed " + seed);
            assertTrue(Splash.share(clear + 10, ground, out) < share && Splash.share(clear, ground, out + 10) <= share, "seed " + seed);
        }
    }

    @Test
    void advice_tells_the_three_heights_apart() {
        assertTrue(Splash.advice(76, Surface.SOIL).startsWith("too low"));
        assertTrue(Splash.advice(76, Surface.PAVING).contains("stands in the splash"));
        assertTrue(Splash.advice(200, Surface.SOIL).contains("stands in the splash"));
        assertTrue(Splash.advice(160, Surface.GRAVEL).startsWith("clear of"));
        assertTrue(Splash.advice(310, Surface.SOIL).startsWith("clear of"));
    }
}
