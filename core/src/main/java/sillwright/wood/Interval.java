package sillwright.wood;

import java.util.Arrays;

/// A value that is not known exactly: the middle, and the bounds that hold the truth nine times in ten.
public record Interval(double low, double median, double high) {
    public Interval {
        if (!(low <= median && median <= high)) throw new IllegalArgumentException(low + " " + median + " " + high);
    }

    public static Interval exactly(double value) { return new Interval(value, value, value); }

    /// The middle of many draws, and the bounds that hold nine in ten of them.
    public static Interval of(double[] draws) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        return new Interval(at(sorted, 0.05), at(sorted, 0.5), at(sorted, 0.95));
    }

    private static double at(double[] sorted, double share) {
        double place = share * sorted.length - 0.5;
        int below = Math.max(0, Math.min(sorted.length - 1, (int) Math.floor(place))), above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + Math.max(0, Math.min(1, place - below)) * (sorted[above] - sorted[below]);
    }

    public Interval times(double factor) { return new Interval(low * factor, median * factor, high * factor); }

    public Interval plus(Interval other) { return new Interval(low + other.low, median + other.median, high + other.high); }
}
