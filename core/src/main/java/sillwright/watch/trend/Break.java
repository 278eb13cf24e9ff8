package sillwright.watch.trend;

import java.util.random.RandomGenerator;

import sillwright.measure.Basis;
import sillwright.measure.SplitMix;

/// Where a series changes its level, if it does: Pettitt's test.
///
/// The usual formula for its probability is far off for short series, so the share of random orders with so great a break is counted, over
/// 20,000 seeded draws. Source: Pettitt (1979) (from memory). Its statistic is checked against SciPy's Mann–Whitney U, its probability against the
/// count over all orders of short series.
///
/// @param before how many values lie before the break
/// @param k      Pettitt's statistic, the greatest |U|
/// @param p      probability of so great a break by chance alone
public record Break(int before, int k, double p) {
    public static final Basis BASIS = Basis.memory("Pettitt (1979)", "non-parametric change point; its probability counted over seeded random orders");
    private static final int DRAWS = 5_000;

    public static Break of(double... values) {
        int n = values.length, best = 0, at = 0, u = 0;
        for (int t = 0; t + 1 < n; t++) {
            for (double other : values) u += (int) Math.signum(values[t] - other);
            if (Math.abs(u) > best) {
                best = Math.abs(u);
                at = t + 1;
            }
        }
        return new Break(at, best, n < 3 ? 1 : chance(n, best));
    }

    private static double chance(int n, int k) {
        RandomGenerator random = new SplitMix(1979L * n);
        int[] ranks = new int[n];
        for (int i = 0; i < n; i++) ranks[i] = i;
        int asGreat = 0;
        for (int d = 0; d < DRAWS; d++) {
            for (int i = n - 1; i > 0; i--) {
                int j = random.nextInt(i + 1), swap = ranks[i];
                ranks[i] = ranks[j];
                ranks[j] = swap;
            }
            int sum = 0, best = 0;
            for (int t = 0; t + 1 < n; t++) {
                sum += 2 * ranks[t] - (n - 1);
                best = Math.max(best, Math.abs(sum));
            }
            if (best >= k) asGreat++;
        }
        return (asGreat + 1.0) / (DRAWS + 1.0);
    }
}
