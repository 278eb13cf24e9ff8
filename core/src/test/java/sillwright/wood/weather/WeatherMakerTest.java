package sillwright.wood.weather;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/// Invented climates; a failure names the seed.
@DisplayNameGeneration(ReplaceUnderscores.class)
class WeatherMakerTest {
    private static final int YEARS = 300;
    private static final long SEED = 20260425;

    private static Normals normals(double[] high, double[] low, double[] rain, double[] days, double[] humidity) {
        List<Normals.Month> months = new ArrayList<>();
        for (int m = 0; m < 12; m++) months.add(new Normals.Month(high[m], low[m], rain[m], days[m], humidity[m], 3 + m % 3));
        return new Normals(months);
    }

    public static Normals lakeside() {
        return normals(new double[] {0, 2, 8, 15, 21, 27, 29, 28, 24, 17, 9, 2}, new double[] {-8, -6, -1, 4, 10, 15, 18, 17, 13, 6, 0, -6}, new double[] {50, 48, 64, 92, 105, 98, 94, 108, 83, 81, 73, 56},
                new double[] {10.8, 9.1, 11, 11.7, 11.9, 10.5, 9.4, 9.3, 8.4, 9.8, 10, 11}, new double[] {.73, .72, .69, .65, .66, .67, .69, .72, .71, .69, .73, .76});
    }

    public static Normals rainyCoast() {
        return normals(new double[] {8, 9, 12, 14, 18, 20, 24, 24, 21, 15, 10, 8}, new double[] {3, 3, 4, 6, 9, 12, 14, 14, 11, 8, 5, 3}, new double[] {146, 98, 106, 81, 55, 41, 18, 25, 41, 99, 160, 146},
                new double[] {18, 15, 17, 15, 11, 9, 5, 5, 8, 14, 18, 18}, new double[] {.80, .77, .74, .70, .68, .66, .63, .66, .72, .79, .81, .82});
    }

    public static Normals desert() {
        return normals(new double[] {20, 22, 25, 30, 35, 40, 41, 40, 37, 31, 24, 19}, new double[] {7, 9, 12, 16, 21, 25, 28, 28, 25, 18, 11, 7}, new double[] {22, 23, 25, 7, 3, 0.6, 26, 25, 16, 15, 16, 22},
                new double[] {4, 4, 4, 2, 1, 0.5, 4, 5, 3, 3, 3, 4}, new double[] {.50, .44, .39, .28, .22, .20, .32, .36, .35, .37, .43, .51});
    }

    static List<Normals> climates() { return List.of(lakeside(), rainyCoast(), desert()); }

    /// Within four and a half standard errors of a mean over the years, each month; 3 climates of 12 months and 5 quantities would stray so far by chance once in a thousand runs.
    @ParameterizedTest
    @MethodSource("climates")
    void its_months_have_the_means_and_the_wet_days_of_the_normals(Normals normals) {
        Weather weather = WeatherMaker.years(normals, YEARS, new Random(SEED));
        for (int month = 0; month < 12; month++) {
            double[] high = new double[YEARS], low = new double[YEARS], rain = new double[YEARS], wet = new double[YEARS], humidity = new double[YEARS], wind = new double[YEARS];
            int days = Normals.daysIn(month);
            for (int y = 0; y < YEARS; y++)
                for (int d = 365 * y + Normals.firstDay(month); d < 365 * y + Normals.firstDay(month) + days; d++) {
                    double top = -100, bottom = 100;
                    for (int h = 24 * d; h < 24 * d + 24; h++) {
                        top = Math.max(top, weather.tempC[h]);
                        bottom = Math.min(bottom, weather.tempC[h]);
                        humidity[y] += weather.humidity[h] / days / 24;
                        wind[y] += weather.windMs[h] / days / 24;
                        assertTrue(weather.humidity[h] > 0 && weather.humidity[h] <= 0.99 && weather.windMs[h] >= 0 && weather.fallsMm[h] >= 0);
                    }
                    high[y] += top / days;
                    low[y] += bottom / days;
                    rain[y] += weather.dayMm(d);
                    if (weather.dayMm(d) >= Normals.LEAST_MM - 1e-9) wet[y]++;
                }
            Normals.Month normal = normals.month(month);
            String where = "month " + (month + 1) + ", seed " + SEED + ": ";
            meets(normal.rainDays(), wet, 0, where + "wet days");
            meets(normal.rainMm(), rain, 0, where + "rain, mm");
            meets(normal.highC(), high, 0.3, where + "high, °C");
            meets(normal.lowC(), low, 0.3, where + "low, °C");
            meets(normal.humidity(), humidity, 0.01, where + "humidity");
            meets(normal.windMs(), wind, 0, where + "wind, m/s");
        }
    }

    /// @param slack what the shape of a day (half cosines through the hours, 99 % at most) is known to cost
    private static void meets(double wanted, double[] years, double slack, String what) {
        double mean = Arrays.stream(years).average().orElseThrow(), variance = Arrays.stream(years).map(y -> (y - mean) * (y - mean)).sum() / (years.length - 1);
        assertEquals(wanted, mean, 4.5 * Math.sqrt(variance / years.length) + slack, what);
    }

    /// Order-1 chain of f 0.5: p01 0.375, p11 0.625; mean wet spell 1/(1 - p11), mean dry spell 1/p01; variance of the wet days of a year π(1-π)T(1+r)/(1-r).
    @Test
    void wet_and_dry_days_come_in_spells() {
        double[] even = new double[12], rain = new double[12], days = new double[12], humid = new double[12];
        for (int m = 0; m < 12; m++) {
            even[m] = 15;
            days[m] = Normals.daysIn(m) / 2.0;
            rain[m] = 8 * days[m];
            humid[m] = 0.7;
        }
        double[] low = even.clone();
        Arrays.setAll(low, m -> 5);
        Weather weather = WeatherMaker.years(normals(even, low, rain, days, humid), 400, new Random(SEED));
        int wet = 0, spells = 0, total = 365 * 400;
        double[] yearly = new double[400];
        for (int d = 0; d < total; d++) {
            boolean now = weather.dayMm(d) > 0, before = d > 0 && weather.dayMm(d - 1) > 0;
            if (now) {
                wet++;
                yearly[d / 365]++;
                if (!before) spells++;
            }
        }
        assertEquals(1 / (1 - 0.625), wet / (double) spells, 0.05, "wet spell, seed " + SEED);
        assertEquals(1 / 0.375, (total - wet) / (double) spells, 0.05, "dry spell, seed " + SEED);
        double mean = wet / 400.0, variance = Arrays.stream(yearly).map(y -> (y - mean) * (y - mean)).sum() / 399;
        assertEquals(0.25 * 365 * 1.25 / 0.75, variance, 5 * variance * Math.sqrt(2.0 / 399), "variance of wet days, seed " + SEED);
    }

    /// Geng's amounts: mean μ and, for f 0.4 and μ 6, gamma shape 0.680272: variance β² α = 52.92 (from memory), less a little for the least that counts.
    @Test
    void amounts_are_spread_as_gengs_gamma() {
        Random random = new Random(SEED);
        double sum = 0, squares = 0;
        int n = 200_000;
        for (int i = 0; i < n; i++) {
            double mm = Rainfall.amountMm(6, random);
            assertTrue(mm >= Normals.LEAST_MM);
            sum += mm;
            squares += mm * mm;
        }
        assertEquals(6, sum / n, 0.1, "seed " + SEED);
        assertEquals(52.92 * (1 - Normals.LEAST_MM / 6), squares / n - sum / n * sum / n, 2, "seed " + SEED);
    }

    /// WGEN's matrices give day-to-day correlations of a unit variance: high 0.62, low 0.69 with itself (worked from A, B: the stationary covariance).
    @Test
    void warm_days_follow_warm_days() {
        double[] mild = new double[12], low = new double[12], zero = new double[12], humid = new double[12];
        Arrays.fill(mild, 20);
        Arrays.fill(low, 10);
        Arrays.fill(humid, 0.6);
        Weather weather = WeatherMaker.years(normals(mild, low, zero, zero, humid), 100, new Random(SEED));
        double sum = 0, squares = 0, products = 0;
        int n = 36_499;
        for (int d = 0; d < n; d++) {
            double x = weather.tempC[24 * d + 14] - 20, next = weather.tempC[24 * d + 38] - 20;
            sum += x;
            squares += x * x;
            products += x * next;
        }
        double mean = sum / n, variance = squares / n - mean * mean;
        assertEquals(0.62, (products / n - mean * mean) / variance, 0.05, "seed " + SEED);
        assertEquals(4.5, Math.sqrt(variance), 0.3, "seed " + SEED);
    }

    @Test
    void the_same_seed_gives_the_same_hours_and_another_gives_others() {
        Weather one = WeatherMaker.years(lakeside(), 2, new Random(1)), same = WeatherMaker.years(lakeside(), 2, new Random(1)), other = WeatherMaker.years(lakeside(), 2, new Random(2));
        assertArrayEquals(one.fallsMm, same.fallsMm);
        assertArrayEquals(one.tempC, same.tempC);
        assertArrayEquals(one.humidity, same.humidity);
        assertArrayEquals(one.windMs, same.windMs);
        assertFalse(Arrays.equals(one.fallsMm, other.fallsMm));
    }

    @ParameterizedTest
    @CsvSource({"0.1", "0.5", "0.68", "1", "4", "30"})
    void gamma_draws_have_their_mean_and_variance(double shape) {
        Random random = new Random(SEED);
        double sum = 0, squares = 0;
        int n = 400_000;
        for (int i = 0; i < n; i++) {
            double x = Rainfall.gamma(shape, random);
            sum += x;
            squares += x * x;
        }
        assertEquals(shape, sum / n, 5 * Math.sqrt(shape / n), "seed " + SEED);
        assertEquals(shape, squares / n - sum / n * sum / n, 0.03 * shape + 0.003, "seed " + SEED);
    }
}
