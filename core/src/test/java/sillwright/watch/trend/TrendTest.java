package sillwright.watch.trend;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Csv;

import static org.junit.jupiter.api.Assertions.*;

/// The statistics of series against SciPy; `trend.py` beside the tables wrote them.
@DisplayNameGeneration(ReplaceUnderscores.class)
class TrendTest {
    private record Series(double[] times, double[] values) {
        double[][] years() {
            double[][] years = new double[values.length / 2][2];
            for (int i = 0; i < values.length; i++) years[i / 2][i % 2] = values[i];
            return years;
        }
    }

    private static Csv read(String file) throws IOException {
        try (InputStream in = TrendTest.class.getResourceAsStream("/checks/watch/" + file)) { return Csv.read(new String(in.readAllBytes(), StandardCharsets.UTF_8)); }
    }

    private static Map<String, Series> series() throws IOException {
        Map<String, List<double[]>> rows = new LinkedHashMap<>();
        for (Csv.Row row : read("trend-series.csv").rows())
            rows.computeIfAbsent(row.get("series"), _ -> new ArrayList<>()).add(new double[] {row.number("time"), row.get("value").isEmpty() ? Double.NaN : row.number("value")});
        Map<String, Series> all = new LinkedHashMap<>();
        rows.forEach((name, list) -> all.put(name, new Series(list.stream().mapToDouble(r -> r[0]).toArray(), list.stream().mapToDouble(r -> r[1]).toArray())));
        return all;
    }

    @Test
    void slopes_tests_and_breaks_are_what_another_program_finds() throws IOException {
        Map<String, Series> all = series();
        int compared = 0;
        for (Csv.Row row : read("trend-answers.csv").rows()) {
            String name = row.get("series"), what = row.get("what");
            if (name.startsWith("orders")) continue;
            Series one = all.get(name);
            double found = name.startsWith("seasonal") ? Kendall.seasonal(one.years(), what.equals("p")).p() : switch (what) {
                case "slope" -> Slopes.of(one.times, one.values, 0.95).slope();
                case "low" -> Slopes.of(one.times, one.values, 0.95).low();
                case "high" -> Slopes.of(one.times, one.values, 0.95).high();
                case "p" -> Kendall.of(one.values).p();
                case "breakK" -> Break.of(one.values).k();
                case "breakAt" -> Break.of(one.values).before();
                default -> throw new AssertionError(what);
            };
            assertEquals(row.number("expected"), found, 1e-9 * Math.max(1, Math.abs(found)), name + " " + what);
            compared++;
        }
        assertTrue(compared >= 80, "compared " + compared);
    }

    @Test
    void the_chance_of_a_break_is_its_share_of_all_orders() throws IOException {
        for (Csv.Row row : read("trend-answers.csv").rows()) {
            if (!row.get("series").startsWith("orders")) continue;
            int n = Integer.parseInt(row.get("series").substring(7)), k = Integer.parseInt(row.get("what"));
            double[] order = orderWith(n, k);
            assertEquals(row.number("expected"), Break.of(order).p(), 0.025, "n " + n + ", K " + k);
        }
    }

    /// Any order of 0..n-1 whose greatest break is k.
    private static double[] orderWith(int n, int k) {
        RandomGenerator random = new SplittableRandom(7);
        double[] order = IntStream.range(0, n).asDoubleStream().toArray();
        for (int tries = 0; tries < 200_000; tries++) {
            if (Break.of(order).k() == k) return order;
            int i = random.nextInt(n), j = random.nextInt(n);
            double swap = order[i];
            order[i] = order[j];
            order[j] = swap;
            if (Break.of(order).k() == k) return order;
        }
        return fail("no order of " + n + " has K " + k);
    }

    @Test
    void noise_is_called_a_trend_one_time_in_twenty_and_no_more() {
        long seed = 1982;
        RandomGenerator random = new SplittableRandom(seed);
        int plain = 0, seasonal = 0, breaks = 0, draws = 2000;
        for (int d = 0; d < draws; d++) {
            double[] values = random.doubles(10).map(u -> u + 0.2).toArray();
            double[][] years = new double[5][2];
            for (int i = 0; i < 10; i++) years[i / 2][i % 2] = values[i] + i % 2;
            if (Kendall.of(values).p() <= 0.05) plain++;
            if (Kendall.seasonal(years, d % 2 == 0).p() <= 0.05) seasonal++;
            if (Break.of(values).p() <= 0.05) breaks++;
        }
        for (int count : List.of(plain, breaks)) assertTrue(count <= 0.065 * draws, "seed " + seed + ": " + count + " of " + draws);
        assertTrue(seasonal <= 0.075 * draws, "seed " + seed + ": the normal form of the seasonal test on five years " + seasonal + " of " + draws);
    }

    @Test
    void a_constant_series_has_no_trend() {
        assertEquals(1, Kendall.of(3, 3, 3, 3, 3).p());
        assertEquals(0, Break.of(3, 3, 3, 3).k());
        assertEquals(0, Slopes.of(new double[] {1, 2, 3}, new double[] {5, 5, 5}, 0.95).slope());
        assertEquals(1, Kendall.seasonal(new double[][] {{1, 2}, {1, 2}, {1, 2}}, true).p());
    }

    @Test
    void the_normal_distribution_is_that_of_the_tables() {
        assertEquals(1.959963984540054, Normal.quantile(0.975), 1e-12);
        assertEquals(0.15729920705028513, Normal.erfc(1), 1e-15);
        assertEquals(2.209049699858544e-5, Normal.erfc(3), 1e-18);
        assertEquals(1.8427007929497148, Normal.erfc(-1), 1e-15);
    }
}
