package sillwright.wood.strength;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sillwright.measure.Csv;
import sillwright.measure.Unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sillwright.wood.strength.Published.inches;
import static sillwright.wood.strength.Published.psi;
import static sillwright.wood.strength.Published.toPsi;

@DisplayNameGeneration(ReplaceUnderscores.class)
class CombinedTest {
    @TestFactory
    Stream<DynamicTest> studs_pressed_and_bent_come_to_what_the_examples_say() {
        return Stream.of("combined", "combined-computed").flatMap(file -> Published.rows(file).stream()
                .map(row -> DynamicTest.dynamicTest(file + " line " + row.line() + ": " + row.get("case") + " " + row.get("result"),
                        () -> assertEquals(row.number("expected"), value(row), row.number("tolerance") + 1e-9))));
    }

    /// A length of 0 stands for an axis that is braced.
    private static double value(Csv.Row row) {
        double b = inches(row.number("width_in")), d = inches(row.number("depth_in")), l1 = inches(row.number("length1_in")), l2 = inches(row.number("length2_in"));
        double emin = psi(row.number("elastic_psi")), along = psi(row.number("along_psi"));
        double critical1 = Buckling.columnMPa(emin, l1, d), critical2 = l2 == 0 ? Double.POSITIVE_INFINITY : Buckling.columnMPa(emin, l2, b);
        double cp = Buckling.share(Math.min(critical1, critical2), along, Buckling.SAWN);
        boolean tips = row.get("tips").equals("true");
        double tipping = tips ? Buckling.beamMPa(emin, Buckling.beamSlender(Buckling.Loading.MIDDLE.lengthMm(l1, d), d, b)) : Double.POSITIVE_INFINITY;
        double fb1 = psi(row.number("bending1_psi")), cl = tips ? Buckling.share(tipping, fb1, Buckling.BEAM) : 1;
        double fc = Unit.POUND.toOwn(row.number("press_lb")) / (b * d);
        double bent1 = Unit.INCH_POUND.toOwn(row.number("moment1_inlb")) / (b * d * d / 6), bent2 = Unit.INCH_POUND.toOwn(row.number("moment2_inlb")) / (d * b * b / 6);
        var state = new Combined(fc, along * cp, critical1, critical2, tipping, bent1, bent2, fb1 * cl, psi(row.number("bending2_psi")), 0, 0);
        return switch (row.get("result")) {
            case "FcE1" -> toPsi(critical1);
            case "Cp" -> cp;
            case "Fc" -> toPsi(along * cp);
            case "CL" -> cl;
            case "Fb1" -> toPsi(fb1 * cl);
            case "fc" -> toPsi(fc);
            case "fb1" -> toPsi(bent1);
            case "fb2" -> toPsi(bent2);
            case "press" -> state.press();
            case "unity" -> state.unity();
            default -> throw new AssertionError(row.get("result"));
        };
    }

    /// AWC, Structural Wood Design Solved Example Problems, E1.6, as a public program's test quotes it (read): a 2x8 of Hem-Fir No.2, 12 ft, 1420 lb of pull and 32 lb/ft.
    @Test
    void a_joist_pulled_and_bent_comes_to_what_the_example_says() {
        var wood = Adjusted.of(DesignValues.of("hem-fir", Grade.NO2, inches(1.5), inches(7.25)), inches(1.5), inches(7.25), Adjusted.Service.of(Duration.PERMANENT, false));
        var beam = Beam.rectangle(inches(1.5), inches(7.25), inches(144), false, wood);
        double bent = beam.bentMPa(Unit.POUND_PER_FOOT.toOwn(32)), pull = Unit.POUND.toOwn(1420) / beam.areaMm2();
        assertEquals(918, toPsi(wood.bendingMPa()), 1e-9);
        assertEquals(567, toPsi(wood.tensionMPa()), 1e-9);
        assertEquals(130.57, toPsi(pull), 0.005);
        assertEquals(0.673833, beam.cl(), 0.5e-6);
        assertEquals(618.58, toPsi(beam.allowedBendingMPa()), 0.005);
        assertEquals(0.80328, Combined.pulled(pull, wood.tensionMPa(), bent, wood.bendingMPa()), 0.5e-5);
    }

    @Test
    void a_load_off_the_middle_without_offset_is_the_plain_form_and_more_of_anything_never_helps() {
        long seed = 43;
        var random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double fc = random.nextDouble() * 3, allowed = 2 + random.nextDouble() * 4, fce1 = 5 + random.nextDouble() * 20, fce2 = 4 + random.nextDouble() * 20;
            double tipping = 10 + random.nextDouble() * 50, fb1 = random.nextDouble() * 3, fb2 = random.nextDouble() * 3, a1 = 5 + random.nextDouble() * 5, a2 = 5 + random.nextDouble() * 5;
            double off1 = random.nextDouble(), off2 = random.nextDouble();
            var plain = new Combined(fc, allowed, fce1, fce2, tipping, fb1, fb2, a1, a2, 0, 0);
            String say = "seed " + seed + ", draw " + i;
            if (1 - fc / fce2 - fb1 * fb1 / tipping / tipping > 0 && fc < fce1)
                assertEquals(Math.min(Combined.BEYOND, fc * fc / allowed / allowed + fb1 / a1 / (1 - fc / fce1) + fb2 / a2 / (1 - fc / fce2 - fb1 * fb1 / tipping / tipping)), plain.unity(), 1e-9, say);
            var off = new Combined(fc, allowed, fce1, fce2, tipping, fb1, fb2, a1, a2, off1, off2);
            assertTrue(off.unity() >= plain.unity(), say);
            assertTrue(new Combined(fc * 1.01, allowed, fce1, fce2, tipping, fb1, fb2, a1, a2, off1, off2).greatest() >= off.greatest(), say);
            assertTrue(new Combined(fc, allowed, fce1, fce2, tipping, fb1 * 1.01, fb2 * 1.01, a1, a2, off1, off2).greatest() >= off.greatest(), say);
            assertTrue(off.greatest() >= off.press() - 1e-12 && off.greatest() <= Combined.BEYOND, say);
        }
    }

    @Test
    void a_post_pressed_to_where_it_buckles_is_beyond_bounds() {
        assertEquals(Combined.BEYOND, new Combined(5, 3, 4, 6, 50, 0, 0, 8, 8, 0.1, 0).unity());
        assertEquals(Combined.BEYOND, new Combined(5, 3, 9, 4, 50, 0, 0, 8, 8, 0, 0).unity());
    }
}
