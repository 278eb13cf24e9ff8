package sillwright.watch.trend;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import sillwright.measure.Basis;

/// How steep: the middle of the slopes between all pairs of values, with an interval.
///
/// Sources: Theil (1950), Sen (1968) eq. 2.6 for the interval; Hirsch, Slack and Smith (1982) for pairs within a season only (from memory).
/// Checked against SciPy's theilslopes.
///
/// @param slope middle of all slopes, value by unit of time
/// @param low   lower bound of the interval
/// @param high  upper bound
public record Slopes(double slope, double low, double high) {
    public static final Basis BASIS = Basis.memory("Theil (1950); Sen (1968)", "median of pairwise slopes, and its interval by the variance of Kendall's S");

    /// @param times  of the values
    /// @param share  that the interval should cover, such as 0.95
    public static Slopes of(double[] times, double[] values, double share) { return of(List.of(times), List.of(values), share); }

    /// The common slope of several series, each compared with itself only: of the seasons of one place, or of the spots of one damage.
    ///
    /// @throws IllegalArgumentException where no series has two values at different times
    public static Slopes of(List<double[]> times, List<double[]> values, double share) {
        List<Double> slopes = new ArrayList<>();
        double variance = 0;
        for (int g = 0; g < times.size(); g++) {
            double[] t = times.get(g), v = values.get(g);
            for (int i = 0; i < t.length; i++) for (int j = 0; j < t.length; j++) if (t[j] > t[i]) slopes.add((v[j] - v[i]) / (t[j] - t[i]));
            double n = t.length;
            variance += (n * (n - 1) * (2 * n + 5) - Kendall.ties(t) - Kendall.ties(v)) / 18;
        }
        if (slopes.isEmpty()) throw new IllegalArgumentException("no two values at different times");
        Collections.sort(slopes);
        double z = Normal.quantile(1 - (1 - share) / 2), reach = z * Math.sqrt(Math.max(0, variance));
        int count = slopes.size();
        int upper = (int) Math.min(Math.rint((count + reach) / 2), count - 1), lower = (int) Math.max(Math.rint((count - reach) / 2) - 1, 0);
        double middle = count % 2 == 1 ? slopes.get(count / 2) : (slopes.get(count / 2 - 1) + slopes.get(count / 2)) / 2;
        return new Slopes(middle, slopes.get(lower), slopes.get(upper));
    }
}
