package sillwright.wood.moisture;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import sillwright.wood.Climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class DiffusionTest {
    @Test
    void the_short_series_and_the_long_agree_where_both_can_be_worked() {
        for (double tau = 0.002; tau < 3; tau *= 1.2) assertEquals(Diffusion.shareLong(tau), Diffusion.shareShort(tau), 1e-12, "τ " + tau);
    }

    @Test
    void the_change_goes_one_way_from_nothing_to_all() {
        assertEquals(0, Diffusion.share(0), 0);
        assertEquals(1, Diffusion.share(50), 1e-12);
        double before = 0;
        for (double tau = 1e-9; tau < 20; tau *= 1.1) {
            double now = Diffusion.share(tau);
            assertTrue(now > before || now == 1, "τ " + tau);
            before = now;
        }
    }

    /// Half-way values of the same table (computed).
    @ParameterizedTest(name = "τ {0}")
    @CsvSource({"0.001, 0.000000", "0.01, 0.000407", "0.05, 0.113848", "0.1, 0.264349", "0.2, 0.446824", "0.3, 0.570157", "0.5, 0.737812", "1, 0.923649", "2, 0.993525"})
    void half_way_to_the_face_the_change_comes_sooner_than_in_the_middle(double tau, double share) {
        assertEquals(share, Diffusion.shareAt(tau, 0.5), 0.0000005);
        assertTrue(Diffusion.shareAt(tau, 0.5) >= Diffusion.shareAt(tau, 0));
    }

    @Test
    void the_mean_over_the_thickness_is_the_share_of_the_whole() {
        for (double tau : new double[] {0.02, 0.15, 0.25, 0.8}) {
            double sum = 0;
            for (int i = 0; i < 20_000; i++) sum += Diffusion.shareAt(tau, (i + 0.5) / 20_000);
            assertEquals(Diffusion.share(tau), sum / 20_000, 1e-8, "τ " + tau);
        }
    }

    @ParameterizedTest(name = "erfc {0}")
    @CsvSource({"0, 1", "0.25, 0.723674", "0.5, 0.479500", "1, 0.157299"})
    void the_error_function_is_the_books(double x, double value) { assertEquals(value, Diffusion.erfc(x), 0.0000005); }

    @Test
    void both_ways_of_working_the_error_function_meet() { assertEquals(Diffusion.erfc(Math.nextDown(2.0)), Diffusion.erfc(2), 1e-14); }

    @Test
    void one_open_face_takes_four_times_as_long_as_two() {
        assertEquals(Diffusion.fourier(25, 2, 1e-10, 1e5), Diffusion.fourier(25, 1, 1e-10, 4e5), 1e-15);
    }

    /// The plain algorithm beside the series: explicit steps over a fine grid.
    @Test
    void stepping_it_through_by_hand_gives_the_same_share() {
        int cells = 200;
        double step = 1.0 / cells, timeStep = 0.4 * step * step, tau = 0;
        double[] now = new double[cells];
        while (tau < 0.3) {
            double[] next = new double[cells];
            for (int i = 0; i < cells; i++) {
                double left = i == 0 ? 0 : (now[i - 1] - now[i]) / step, right = i == cells - 1 ? (1 - now[i]) / (step / 2) : (now[i + 1] - now[i]) / step;
                next[i] = now[i] + timeStep * (left + right) / step;
            }
            now = next;
            tau += timeStep;
        }
        assertEquals(Diffusion.share(tau), Arrays.stream(now).average().orElseThrow(), 1e-4);
    }

    @Test
    void two_cold_dry_months_do_not_make_a_wet_one() {
        List<Double> cold = Collections.nCopies(12, -10.0), dry = Collections.nCopies(12, 0.0);
        assertEquals(0, Climate.scheffer(cold, dry), 0);
        assertEquals(Climate.Hazard.LOW, Climate.hazard(34.99));
        assertEquals(Climate.Hazard.MODERATE, Climate.hazard(35));
        assertEquals(Climate.Hazard.MODERATE, Climate.hazard(65));
        assertEquals(Climate.Hazard.HIGH, Climate.hazard(65.01));
    }
}
