package sillwright.work;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.measure.Csv;
import sillwright.measure.Refused;
import sillwright.measure.Unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class YieldLimitTest {
    /// Steel of the plates of Table 12K, psi (read with the table).
    private static final double PLATE_PSI = 61_850;

    @TestFactory
    Stream<DynamicTest> a_lag_through_a_steel_plate_bears_what_the_table_says() throws IOException {
        String text;
        try (InputStream in = YieldLimitTest.class.getResourceAsStream("/checks/work/lag-plate.csv")) {
            text = new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
        return Csv.read(text).rows().stream().map(row -> DynamicTest.dynamicTest("line " + row.line(), () -> {
            double nominal = Unit.INCH.toOwn(row.number("diameter_in")), angle = row.number("angle_deg");
            Fastener.Lag lag = Fastener.lag(nominal).orElseThrow();
            assertEquals(row.number("root_in"), Unit.INCH.fromOwn(lag.rootMm()), 1e-9);
            var dowel = new YieldLimit.Dowel(lag.rootMm(), 8 * nominal, Unit.INCH.toOwn(row.number("plate_in")), YieldLimit.bearingMPa(row.number("gravity"), nominal, angle),
                    Unit.PSI.toOwn(PLATE_PSI), lag.yieldMPa());
            YieldLimit.Yield yield = YieldLimit.least(dowel, YieldLimit.thick(lag.rootMm(), angle));
            assertEquals(YieldLimit.Mode.IIIS, yield.mode());
            assertEquals(row.number("lateral_lb"), Unit.POUND.fromOwn(yield.lateralN()), 5.0001);
        }));
    }

    /// The governing equation solved anew: for mode IV by Johansen's balance of one rigid-plastic hinge in each member, without the code's closed form.
    @Test
    void two_hinges_balance_as_statics_asks() {
        double d = 4, fem = 30, fes = 20, fyb = 600, hinge = fyb * d * d * d / 6;
        // a and b are the depths crushed in main and side: equal forces, and two plastic moments between the hinges
        double a = Math.sqrt(2 * 2 * hinge / (fem * d * (1 + fem / fes))), force = fem * d * a, b = force / (fes * d);
        assertEquals(2 * hinge, force * (a + b) - fem * d * a * a / 2 - fes * d * b * b / 2, 1e-9);
        var yield = YieldLimit.least(new YieldLimit.Dowel(d, 1000, 1000, fem, fes, fyb), new YieldLimit.Reduction(1, 1, 1));
        assertEquals(YieldLimit.Mode.IV, yield.mode());
        assertEquals(force, yield.lateralN(), 1e-9 * force);
    }

    @Test
    void turned_about_the_joint_is_the_same_joint() {
        long seed = 8;
        var random = new Random(seed);
        Map<YieldLimit.Mode, YieldLimit.Mode> mirror = Map.of(YieldLimit.Mode.IM, YieldLimit.Mode.IS, YieldLimit.Mode.IS, YieldLimit.Mode.IM, YieldLimit.Mode.II, YieldLimit.Mode.II,
                YieldLimit.Mode.IIIM, YieldLimit.Mode.IIIS, YieldLimit.Mode.IIIS, YieldLimit.Mode.IIIM, YieldLimit.Mode.IV, YieldLimit.Mode.IV);
        Set<YieldLimit.Mode> seen = EnumSet.noneOf(YieldLimit.Mode.class);
        for (int i = 0; i < 20_000; i++) {
            double d = 2 + random.nextDouble() * 16, lm = 4 + random.nextDouble() * 120, ls = 4 + random.nextDouble() * 120;
            double fem = 8 + random.nextDouble() * 50, fes = 8 + random.nextDouble() * 50, fyb = 250 + random.nextDouble() * 500;
            var by = new YieldLimit.Reduction(4, 3.6, 3.2);
            var one = YieldLimit.least(new YieldLimit.Dowel(d, lm, ls, fem, fes, fyb), by);
            var other = YieldLimit.least(new YieldLimit.Dowel(d, ls, lm, fes, fem, fyb), by);
            assertEquals(one.lateralN(), other.lateralN(), 1e-9 * one.lateralN(), "seed " + seed);
            assertEquals(mirror.get(one.mode()), other.mode(), "seed " + seed);
            seen.add(one.mode());
        }
        assertEquals(EnumSet.allOf(YieldLimit.Mode.class), seen, "every mode was met");
    }

    @Test
    void denser_wood_and_stouter_steel_never_bear_less() {
        for (double g = 0.31; g < 0.72; g += 0.02) {
            assertTrue(z("nail", "diameter=0.148in length=3in side=3/4in sideG=" + g + " mainG=" + g) <= z("nail", "diameter=0.148in length=3in side=3/4in sideG=" + (g + 0.02) + " mainG=" + (g + 0.02)));
            assertTrue(z("lag", "diameter=3/8in length=5in side=1.5in sideG=" + g + " mainG=" + g) < z("lag", "diameter=1/2in length=6in side=1.5in sideG=" + g + " mainG=" + g));
        }
    }

    @Test
    void a_fastener_too_short_is_refused_and_a_short_one_counts_in_proportion() {
        assertThrows(Refused.class, () -> z("nail", "diameter=0.162in length=2in side=1.5in sideG=0.5 mainG=0.5"));
        assertThrows(Refused.class, () -> z("lag", "diameter=1/2in length=3in side=1.5in sideG=0.5 mainG=0.5"));
        assertEquals(0.5, Fastener.deepEnough(15, 3, 10), 1e-12);
        assertEquals(1, Fastener.deepEnough(45, 3, 10), 1e-12);
    }

    @Test
    void a_wood_the_table_of_connections_lacks_is_taken_from_the_species_table_and_says_so() {
        Answer teak = answer("nail", "diameter=0.148in length=3in side=3/4in sideSpecies=teak mainSpecies=douglas-fir-coast");
        assertTrue(teak.cautions().stream().anyMatch(caution -> caution.contains("no teak")));
        assertEquals(0.50, ConnectionGravity.of("douglas-fir-coast").gravity());
        assertEquals(Math.floor(55 / (1 - 0.07)) / 100, ConnectionGravity.of("teak").gravity(), 1e-12);
        assertThrows(Refused.class, () -> answer("nail", "diameter=0.148in length=3in side=3/4in mainSpecies=oak-white"));
        assertThrows(Refused.class, () -> answer("lag", "diameter=0.3in length=3in side=3/4in sideG=0.5 mainG=0.5"));
        assertThrows(Refused.class, () -> answer("screw", "diameter=0.164in rootDiameter=0.19in length=3in side=3/4in sideG=0.5 mainG=0.5"));
    }

    private static double z(String figure, String inputs) { return answer(figure, inputs).own("Z"); }

    private static Answer answer(String figure, String inputs) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String pair : inputs.split(" ")) typed.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1));
        return Figures.named(figure).answer(typed);
    }
}
