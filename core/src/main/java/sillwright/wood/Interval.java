package sillwright.wood;

/// A value that is not known exactly: the middle, and the bounds that hold the truth nine times in ten.
public record Interval(double low, double median, double high) {
    public Interval {
        if (!(low <= median && median <= high)) throw new IllegalArgumentException(low + " " + median + " " + high);
    }

    public static Interval exactly(double value) { return new Interval(value, value, value); }

    public Interval times(double factor) { return new Interval(low * factor, median * factor, high * factor); }

    public Interval plus(Interval other) { return new Interval(low + other.low, median + other.median, high + other.high); }
}
