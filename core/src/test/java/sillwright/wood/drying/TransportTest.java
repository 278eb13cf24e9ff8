package sillwright.wood.drying;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillwright.walk.Species;
import sillwright.wood.moisture.Diffusion;
import sillwright.wood.moisture.Moisture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class TransportTest {
    private static Air steady(int hours, double atRest) {
        Air air = new Air(hours);
        Arrays.fill(air.atRest, atRest);
        Arrays.fill(air.quick, 1);
        Arrays.fill(air.vapour, 1);
        Arrays.fill(air.runs, 1);
        return air;
    }

    /// Everything at work: rain, frost, films, standing water, sides, wood from dry to soaked.
    static Stack many(int pieces, Random random) {
        Stack stack = new Stack(12, pieces, 3600);
        for (int m = 0; m < pieces; m++) {
            Species species = new ArrayList<>(Species.all().values()).get(random.nextInt(Species.all().size()));
            Timber timber = Timber.of(species, random.nextBoolean() ? Timber.Grain.ACROSS : Timber.Grain.ALONG);
            Skin near = skin(timber, random), far = skin(timber, random);
            stack.lay(m, timber, 0.01 + 0.2 * random.nextDouble(), near, far, 1 + random.nextDouble(), 0.05 + (timber.full() - 0.06) * random.nextDouble() * random.nextDouble());
            if (random.nextInt(3) == 0) stack.lose(m, Timber.of(species, Timber.Grain.ACROSS), Skin.under(sillwright.walk.Member.Coat.NONE, timber), 0.1);
        }
        return stack;
    }

    private static Skin skin(Timber timber, Random random) {
        var coats = sillwright.walk.Member.Coat.values();
        Skin skin = random.nextInt(6) == 0 ? Skin.SEALED : Skin.under(coats[random.nextInt(coats.length)], timber);
        return random.nextBoolean() ? skin : skin.wetted(2 * random.nextDouble(), random.nextInt(30));
    }

    static Air changing(int hours, Random random) {
        Air air = new Air(hours);
        for (int h = 0; h < hours; h++)
            air.set(h, 10 + 20 * Math.sin(h / 700.0) + 5 * Math.sin(h / 4.0), random.nextDouble(), random.nextInt(8) == 0 ? -3 * Math.log(1 - random.nextDouble()) : 0);
        return air;
    }

    @ParameterizedTest(name = "D {0}, {1} faces")
    @CsvSource({"1e-10, 2", "3e-11, 2", "1e-10, 1", "1e-9, 2"})
    void with_one_coefficient_it_dries_as_cranks_plane_sheet(double m2PerS, int faces) {
        double thicknessM = 0.02, tau1 = Math.pow(thicknessM / faces, 2) / m2PerS;
        Stack stack = new Stack(160, 1, tau1 / 20_000);
        stack.lay(0, Timber.steady(m2PerS), thicknessM, Skin.AT_ONCE, faces == 2 ? Skin.AT_ONCE : Skin.SEALED, 1.02, 0.25);
        Air air = steady(1, 0.10);
        for (int step = 1; step <= 20_000; step++) {
            Transport.PLAIN.hours(stack, air, 0, 1);
            if (step % 1000 != 0) continue;
            double tau = step / 20_000.0, share = (0.25 - stack.mean(0)) / 0.15;
            assertEquals(Diffusion.share(Diffusion.fourier(thicknessM * 1000, faces, m2PerS, tau * tau1)), share, 0.001 * share, "tau " + tau);
            assertEquals(Diffusion.shareAt(tau, 0), (0.25 - stack.moisture[faces == 2 ? 80 : 159][0]) / 0.15, 0.001, "the middle at tau " + tau);
        }
    }

    /// Crank, ch. 4.3.6: a sheet whose faces resist, E for L = S l / D (from memory; computed from the series by another program).
    @ParameterizedTest(name = "L {0}, tau {1}")
    @CsvSource({"1, 0.1, 0.080403", "1, 0.5, 0.318895", "1, 1, 0.529603", "1, 2, 0.775606", "10, 0.1, 0.273882", "10, 0.2, 0.416738", "10, 0.5, 0.684984", "10, 1, 0.886504"})
    void with_a_surface_that_resists_it_dries_as_the_series_says(double biot, double tau, double done) {
        double d = 1e-10, l = 0.01;
        int steps = 20_000;
        Stack stack = new Stack(160, 1, tau * l * l / d / steps);
        Skin skin = new Skin(true, l / (biot * d), 0, 1, 0, 0, 0);
        stack.lay(0, Timber.steady(d), 2 * l, skin, skin, 1.02, 0.25);
        Transport.PLAIN.hours(stack, steady(steps, 0.10), 0, steps);
        assertEquals(done, (0.25 - stack.mean(0)) / 0.15, 0.001 * done);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void what_it_holds_changes_by_what_came_in_and_by_nothing_else(long seed) {
        Random random = new Random(seed);
        Stack stack = many(33, random);
        double[] before = new double[33];
        for (int m = 0; m < 33; m++) before[m] = stack.held(m);
        Transport.PLAIN.hours(stack, changing(5000, random), 0, 5000);
        int moved = 0;
        for (int m = 0; m < 33; m++) {
            double came = stack.gained[m] + stack.gainedBySides[m], most = Math.max(before[m], stack.held(m));
            assertEquals(before[m] + came, stack.held(m), 1e-9 * most, "piece " + m + ", seed " + seed);
            if (came != 0) moved++;
        }
        assertTrue(moved > 25, moved + " pieces took or gave water");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void no_step_however_long_takes_it_out_of_bounds(long seed) {
        for (double stepS : new double[] {60, 3600, 86400, 1e9}) {
            Random random = new Random(seed);
            Stack stack = new Stack(12, 40, stepS);
            Air air = changing(300, random);
            for (int m = 0; m < 40; m++) {
                Timber timber = Timber.of(Species.named("pine-eastern-white"), m % 2 == 0 ? Timber.Grain.ACROSS : Timber.Grain.ALONG);
                stack.lay(m, timber, 0.02 + 0.1 * random.nextDouble(), skin(timber, random), skin(timber, random), 1.3, 0.05 + random.nextDouble());
            }
            double least = Arrays.stream(air.atRest).min().orElseThrow();
            Transport.PLAIN.hours(stack, air, 0, 300);
            for (int i = 0; i < 12; i++) for (int m = 0; m < 40; m++) {
                double u = stack.moisture[i][m];
                assertTrue(u >= Math.min(least, 0.05) - 1e-9 && u <= stack.full[m] + 1e-9, u + " in piece " + m + " by steps of " + stepS + " s, seed " + seed);
            }
        }
    }

    @ParameterizedTest(name = "{0} C, {1}, from {2}")
    @CsvSource({"20, 0.65, 0.05", "20, 0.65, 0.28", "5, 0.9, 0.6", "30, 0.3, 1.0", "-5, 0.5, 0.2"})
    void in_steady_air_it_comes_to_rest_where_the_sorption_curve_says(double tempC, double humidity, double start) {
        Stack stack = new Stack(12, 2, 3600 * 24);
        Timber timber = Timber.of(Species.named("pine-eastern-white"), Timber.Grain.ACROSS);
        stack.lay(0, timber, 0.02, Skin.under(sillwright.walk.Member.Coat.NONE, timber), Skin.under(sillwright.walk.Member.Coat.SOUND, timber), 1.3, start);
        stack.lay(1, timber, 0.04, Skin.under(sillwright.walk.Member.Coat.FAILING, timber), Skin.SEALED, 1.3, start);
        Air air = new Air(1);
        air.set(0, tempC, humidity, 0);
        for (int day = 0; day < 20_000; day++) Transport.PLAIN.hours(stack, air, 0, 1);
        for (int m = 0; m < 2; m++) for (int i = 0; i < 12; i++) assertEquals(Moisture.atRest(tempC, humidity), stack.moisture[i][m], 1e-6);
    }

    /// Dry wood whose face is kept wet takes up A √t. A comes out within a fifth of the one the coefficient of free water was made for, the walls' own diffusion coming on top;
    /// the square root itself holds within a fiftieth.
    @ParameterizedTest(name = "{0}")
    @CsvSource({"ALONG, 0.015", "ACROSS, 0.003"})
    void a_face_kept_wet_drinks_with_the_square_root_of_time(Timber.Grain grain, double sucks) {
        Timber timber = Timber.of(Species.named("pine-eastern-white"), grain);
        Stack stack = new Stack(400, 1, 60);
        stack.lay(0, timber, grain == Timber.Grain.ALONG ? 0.4 : 0.1, new Skin(true, 0, 0, 1, 0, 1, 1e9), Skin.SEALED, 1.01, 0.12);
        Air air = steady(1, 0.12);
        air.rainMm[0] = 1e6;
        double first = 0;
        for (int minute = 1; minute <= 48 * 60; minute++) {
            Transport.PLAIN.hours(stack, air, 0, 1);
            if (minute % 360 != 0) continue;
            double drinks = timber.densityKgM3() * stack.gained[0] / Math.sqrt(60 * minute);
            if (first == 0) first = drinks;
            assertEquals(sucks, drinks, 0.2 * sucks, minute + " min");
            assertEquals(first, drinks, 0.02 * first, minute + " min");
        }
    }

    @Test
    void no_face_takes_more_than_the_rain_brings() {
        Timber timber = Timber.of(Species.named("pine-eastern-white"), Timber.Grain.ALONG);
        Stack stack = new Stack(30, 1, 3600);
        stack.lay(0, timber, 0.4, new Skin(true, 0, 0, 1, 0, 0.5, 0), Skin.SEALED, 1.15, 0.12);
        Air air = steady(1, 0.12);
        air.rainMm[0] = 0.04;
        Transport.PLAIN.hours(stack, air, 0, 1);
        double tookKgM2 = timber.densityKgM3() * stack.gained[0];
        assertTrue(tookKgM2 <= 0.02 + 1e-12 && tookKgM2 > 0.019, tookKgM2 + " kg/m² of 0.02");
    }

    /// Slow twin: one piece at a time, the coefficients by their plain definitions and quadrature, the system by elimination with pivoting.
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void each_step_is_that_of_the_plain_algorithm(long seed) {
        Random random = new Random(seed);
        Stack stack = many(17, random);
        stack.anySides = false;
        Air air = changing(60, random);
        for (int h = 0; h < 60; h++) {
            double[][] before = new double[12][];
            for (int i = 0; i < 12; i++) before[i] = stack.moisture[i].clone();
            Transport.PLAIN.hours(stack, air, h, h + 1);
            for (int m = 0; m < 17; m++) {
                double[] twin = SlowTwin.step(stack, before, m, air.quick[h], air.runs[h]);
                for (int i = 0; i < 12; i++) assertEquals(twin[i], stack.moisture[i][m], 2e-5 * twin[i], "hour " + h + ", piece " + m + ", slice " + i + ", seed " + seed);
            }
        }
    }

    @Test
    void parted_between_two_workers_it_gives_the_same_to_the_last_digit() {
        Stack whole = many(40, new Random(5)), parted = many(40, new Random(5));
        Air air = changing(800, new Random(6));
        Transport.PLAIN.hours(whole, air, 0, 800);
        Transport.PLAIN.hours(parted, air, 0, 800, 16, 40);
        Transport.PLAIN.hours(parted, air, 0, 300, 0, 16);
        Transport.PLAIN.hours(parted, air, 300, 800, 0, 16);
        for (int i = 0; i < 12; i++) assertArrayEquals(whole.moisture[i], parted.moisture[i]);
        assertArrayEquals(whole.gained, parted.gained);
        assertArrayEquals(whole.wetHours, parted.wetHours);
    }

    @Test
    void a_sound_film_keeps_water_out_and_a_failing_one_keeps_it_in() {
        Timber timber = Timber.of(Species.named("pine-eastern-white"), Timber.Grain.ACROSS);
        var coats = List.of(sillwright.walk.Member.Coat.NONE, sillwright.walk.Member.Coat.SOUND, sillwright.walk.Member.Coat.FAILING);
        Stack stack = new Stack(20, 3, 3600);
        for (int m = 0; m < 3; m++) {
            Skin skin = Skin.under(coats.get(m), timber);
            stack.lay(m, timber, 0.05, skin.wetted(1, 6), skin, 1.3, 0.12);
        }
        Air rain = steady(72, 0.20), dry = steady(30 * 24, 0.12);
        Arrays.fill(rain.rainMm, 1);
        Transport.PLAIN.hours(stack, rain, 0, 72);
        double[] wet = {stack.mean(0), stack.mean(1), stack.mean(2)};
        Transport.PLAIN.hours(stack, dry, 0, 30 * 24);
        assertTrue(wet[0] > wet[2] && wet[2] > wet[1] && wet[1] < 0.14, Arrays.toString(wet));
        double bareLost = (wet[0] - stack.mean(0)) / (wet[0] - 0.12), failingLost = (wet[2] - stack.mean(2)) / (wet[2] - 0.12);
        assertTrue(bareLost > failingLost, bareLost + " of it went from bare wood, " + failingLost + " from under a failing film");
    }

    /// Through an unbroken film water goes as it goes through the film itself: no further than to full walls. A film that fails lets it fill the wood.
    @ParameterizedTest(name = "{0} mm")
    @CsvSource({"12", "20", "40"})
    void under_standing_water_a_sound_film_lets_the_walls_fill_and_no_more(double thickMm) {
        Timber timber = Timber.of(Species.all().get("pine-eastern-white"), Timber.Grain.ACROSS);
        Stack stack = new Stack(16, 2, 3600);
        Skin sound = Skin.outside(sillwright.walk.Member.Coat.SOUND, timber).wetted(1, 1e9), failing = Skin.outside(sillwright.walk.Member.Coat.FAILING, timber).wetted(1, 1e9);
        stack.lay(0, timber, thickMm / 1000, sound, sound, 1.3, 0.12);
        stack.lay(1, timber, thickMm / 1000, failing, failing, 1.3, 0.12);
        Air air = new Air(1);
        air.set(0, 15, 0.8, 1);
        for (int h = 0; h < 5 * 8760; h++) Transport.PLAIN.hours(stack, air, 0, 1);
        assertTrue(stack.mean(0) > 0.25 && stack.mean(0) < timber.saturation() + 0.01, "sound: " + stack.mean(0));
        assertTrue(stack.mean(1) > 0.6, "failing: " + stack.mean(1));
    }

    /// Podgorski, Collignan and Lanvin, IRG/WP 12-40580, abstract (read): what five coats on spruce took up in 72 h of EN 927-5 lay under the 175 g/m² of EN 927-2.
    @Test
    void a_sound_film_takes_up_less_in_three_days_than_the_standard_allows_for_joinery() {
        Timber timber = Timber.of(Species.all().get("spruce-sitka"), Timber.Grain.ACROSS);
        Stack stack = new Stack(16, 2, 3600);
        for (int m = 0; m < 2; m++)
            stack.lay(m, timber, 0.020, Skin.outside(m == 0 ? sillwright.walk.Member.Coat.SOUND : sillwright.walk.Member.Coat.NONE, timber).wetted(1, 1e9), Skin.SEALED, 1.3, 0.12);
        double[] before = {stack.held(0), stack.held(1)};
        Air air = new Air(1);
        air.set(0, 20, 0.65, 100);
        for (int h = 0; h < 72; h++) Transport.PLAIN.hours(stack, air, 0, 1);
        double soundG = 1000 * timber.densityKgM3() * (stack.held(0) - before[0]), bareG = 1000 * timber.densityKgM3() * (stack.held(1) - before[1]);
        assertTrue(soundG > 1 && soundG < 175, soundG + " g/m² through a sound film");
        assertTrue(bareG > 5 * 175, bareG + " g/m² into bare wood");
    }
}
