package sillwright.work.joint;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    /// A slow twin by statics alone: each way of yielding as forces and moments that balance about the shear plane, solved by halving, with no closed form.
    /// Source: Johansen's theory (1949), rigid-plastic wood and dowel (from memory).
    private static double[] balanced(YieldLimit.Dowel of) {
        double main = of.mainMPa() * of.diameterMm(), side = of.sideMPa() * of.diameterMm(), lm = of.mainMm(), ls = of.sideMm(), hinge = of.yieldMPa() * Math.pow(of.diameterMm(), 3) / 6;
        // turned: crushed one way to depth a and the other way beyond; bent: crushed to the hinge and no further
        DoubleUnaryOperator mainTurned = p -> main * (Math.pow((p / main + lm) / 2, 2) - lm * lm / 2), sideTurned = p -> side * (Math.pow((p / side + ls) / 2, 2) - ls * ls / 2);
        DoubleUnaryOperator mainBent = p -> p * p / main / 2, sideBent = p -> p * p / side / 2;
        double im = main * lm, is = side * ls;
        return new double[] {im, is, root(p -> mainTurned.applyAsDouble(p) + sideTurned.applyAsDouble(p), Math.min(im, is)), root(p -> mainTurned.applyAsDouble(p) + sideBent.applyAsDouble(p) - hinge, im),
            root(p -> mainBent.applyAsDouble(p) + sideTurned.applyAsDouble(p) - hinge, is), root(p -> mainBent.applyAsDouble(p) + sideBent.applyAsDouble(p) - 2 * hinge, 1e9)};
    }

    /// Where a rising function passes nothing; without end where it does not below `most`.
    private static double root(DoubleUnaryOperator of, double most) {
        if (of.applyAsDouble(most) < 0) return Double.POSITIVE_INFINITY;
        double low = 0, high = most;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            if (of.applyAsDouble(middle) < 0) low = middle;
            else high = middle;
        }
        return high;
    }

    @Test
    void all_six_ways_of_yielding_are_what_statics_balances_to() {
        Random random = new Random(11);
        Map<YieldLimit.Mode, Integer> seen = new EnumMap<>(YieldLimit.Mode.class);
        for (int i = 0; i < 20_000; i++) {
            var dowel = new YieldLimit.Dowel(2 + random.nextDouble() * 16, 4 + random.nextDouble() * 120, 4 + random.nextDouble() * 120, 8 + random.nextDouble() * 50, 8 + random.nextDouble() * 50, 250 + random.nextDouble() * 500);
            var yield = YieldLimit.least(dowel, new YieldLimit.Reduction(1, 1, 1));
            double[] all = balanced(dowel);
            double least = Arrays.stream(all).min().orElseThrow();
            assertEquals(least, yield.lateralN(), 1e-7 * least, () -> "seed 11, " + dowel);
            assertEquals(least, all[yield.mode().ordinal()], 1e-7 * least, () -> "seed 11, " + dowel);
            seen.merge(yield.mode(), 1, Integer::sum);
        }
        assertEquals(6, seen.size(), seen::toString);
        for (int count : seen.values()) assertTrue(count >= 100, seen::toString);
    }

    /// Source: NDS 2018, Table 12A, bolts in single shear through two pieces of 1-1/2 in, lb to the nearest 10 (from memory): a mode, II, that no cell read yet reaches.
    @ParameterizedTest(name = "{0} in, G {1}, {2} deg: {3} lb")
    @CsvSource({"0.5, 0.55, 0, 530", "0.625, 0.55, 0, 660", "0.75, 0.55, 0, 800", "1, 0.55, 0, 1060", "0.5, 0.55, 90, 250", "0.625, 0.55, 90, 280", "0.75, 0.55, 90, 310", "0.5, 0.5, 0, 480", "0.625, 0.5, 0, 600", "0.75, 0.5, 0, 720", "1, 0.5, 0, 970"})
    void a_bolt_through_two_planks_turns_in_both_at_what_the_table_says(double inches, double gravity, double angle, double pounds) {
        double d = Unit.INCH.toOwn(inches), plank = Unit.INCH.toOwn(1.5);
        Hold hold = Hold.bolt(new Hold.Driven(d, 2 * plank, plank, gravity, gravity), plank, angle);
        assertEquals(YieldLimit.Mode.II, hold.mode());
        assertEquals(pounds, Unit.POUND.fromOwn(hold.lateralN()), 5.0001);
    }

    /// Source: NDS 2018, Table 12F, a 1 in bolt in double shear with 1-1/2 in in the middle, lb to the nearest 10 (from memory). Its way of yielding, the middle crushed whole, is the same in single shear
    /// where the other member is so thick and dense that the bolt stands fast in it; turned about, it is the thin side that is crushed whole.
    @ParameterizedTest(name = "G {0}: {1} lb")
    @CsvSource({"0.5, 2100", "0.43, 1800", "0.42, 1760"})
    void a_plank_on_a_bolt_that_stands_fast_is_crushed_whole_at_what_the_table_says(double gravity, double pounds) {
        double inch = Unit.INCH.toOwn(1), plank = 1.5 * inch, thick = 12 * inch;
        Hold main = Hold.bolt(new Hold.Driven(inch, plank + thick, thick, 0.73, gravity), plank, 0), side = Hold.bolt(new Hold.Driven(inch, plank + thick, plank, gravity, 0.73), thick, 0);
        assertEquals(YieldLimit.Mode.IM, main.mode());
        assertEquals(YieldLimit.Mode.IS, side.mode());
        assertEquals(pounds, Unit.POUND.fromOwn(main.lateralN()), 5.0001);
        assertEquals(pounds, Unit.POUND.fromOwn(side.lateralN()), 5.0001);
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
