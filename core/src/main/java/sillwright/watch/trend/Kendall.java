package sillwright.watch.trend;

import java.util.Arrays;

import sillwright.measure.Basis;

/// Does a series go up or down, more than chance would have it? The Mann–Kendall test, and its seasonal form.
///
/// Sources: Mann (1945), Kendall (1975) for the test; Hirsch, Slack and Smith (1982) for the seasonal form and Hirsch and Slack
/// (1984) for the covariance between seasons (from memory). Checked against SciPy.
///
/// @param s   pairs that rise less pairs that fall
/// @param p   probability of so strong a trend, up or down, by chance alone
public record Kendall(int s, double p) {
    public static final Basis BASIS = Basis.memory("Hirsch, Slack and Smith (1982); Hirsch and Slack (1984)", "seasonal Kendall test with the covariance between seasons");
    /// Up to so many values without ties the probability is exact.
    private static final int EXACT = 60;

    /// The test of one series in the order of time.
    public static Kendall of(double... values) {
        int n = values.length, s = 0;
        for (int i = 0; i < n; i++) for (int j = i + 1; j < n; j++) s += (int) Math.signum(values[j] - values[i]);
        if (n < 2) return new Kendall(0, 1);
        double ties = ties(values);
        if (ties == 0 && n <= EXACT) return new Kendall(s, exact(n, s));
        double variance = (n * (n - 1.0) * (2 * n + 5) - ties) / 18;
        return new Kendall(s, variance <= 0 ? 1 : twoSided((Math.abs(s) - 1) / Math.sqrt(variance)));
    }

    /// The seasonal test: each season is compared with itself only.
    ///
    /// @param years rows of equal length, a value for each season, NaN where there is none
    /// @param together true where what the seasons share is not to be counted twice: by their covariance, which wants about ten years to be worth its while
    public static Kendall seasonal(double[][] years, boolean together) {
        int n = years.length, m = n == 0 ? 0 : years[0].length, s = 0;
        double[][] ranks = new double[m][];
        double[][] season = new double[m][n];
        int[] counts = new int[m];
        for (int g = 0; g < m; g++) {
            for (int y = 0; y < n; y++) {
                season[g][y] = years[y][g];
                if (!Double.isNaN(season[g][y])) counts[g]++;
            }
            ranks[g] = ranks(season[g], counts[g]);
            for (int i = 0; i < n; i++) for (int j = i + 1; j < n; j++) s += sign(season[g][j] - season[g][i]);
        }
        double variance = 0;
        for (int g = 0; g < m; g++)
            for (int h = together ? 0 : g; h < (together ? m : g + 1); h++) {
                double k = 0, r = 0;
                for (int i = 0; i < n; i++) {
                    r += ranks[g][i] * ranks[h][i];
                    for (int j = i + 1; j < n; j++) k += sign((season[g][j] - season[g][i]) * (season[h][j] - season[h][i]));
                }
                variance += (k + 4 * r - n * (counts[g] + 1.0) * (counts[h] + 1.0)) / 3;
            }
        return new Kendall(s, variance <= 0 ? 1 : twoSided((Math.abs(s) - 1) / Math.sqrt(variance)));
    }

    private static int sign(double value) { return Double.isNaN(value) ? 0 : (int) Math.signum(value); }

    /// Middle ranks from 1; a missing value has the middle of all.
    private static double[] ranks(double[] values, int count) {
        double[] ranks = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            if (Double.isNaN(values[i])) {
                ranks[i] = (count + 1) / 2.0;
                continue;
            }
            double below = 0, same = 0;
            for (double other : values) {
                if (other < values[i]) below++;
                if (other == values[i]) same++;
            }
            ranks[i] = below + (same + 1) / 2;
        }
        return ranks;
    }

    /// Sum of t(t-1)(2t+5) over groups of equal values.
    static double ties(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double sum = 0;
        for (int i = 0; i < sorted.length; ) {
            int j = i;
            while (j < sorted.length && sorted[j] == sorted[i]) j++;
            double t = j - i;
            if (t > 1) sum += t * (t - 1) * (2 * t + 5);
            i = j;
        }
        return sum;
    }

    /// Share of all orders of n values whose count of falling pairs is as far from the middle: by the recurrence of Mahonian numbers.
    private static double exact(int n, int s) {
        int pairs = n * (n - 1) / 2, falling = Math.min((pairs - s) / 2, (pairs + s) / 2);
        if (s == 0) return 1;
        double[] share = {1};
        for (int k = 2; k <= n; k++) {
            double[] next = new double[share.length + k - 1];
            for (int i = 0; i < share.length; i++) for (int add = 0; add < k; add++) next[i + add] += share[i] / k;
            share = next;
        }
        double p = 0;
        for (int i = 0; i <= falling; i++) p += share[i];
        return Math.min(1, 2 * p);
    }

    static double twoSided(double z) { return z <= 0 ? 1 : Normal.erfc(z / Math.sqrt(2)); }
}
