package sillwright.work.cost;

import java.util.random.RandomGenerator;

import sillwright.measure.Refused;
import sillwright.measure.Words;

/// A number known by three points: the least it may be, the likeliest, the most. Between them it is spread as a triangle.
///
/// Source: three-point estimating by the triangular distribution, a standard of estimating texts (from memory).
public record Spread(double low, double mid, double high) {
    public Spread {
        if (!(low <= mid && mid <= high && Math.abs(low) < 1e12 && Math.abs(high) < 1e12))
            throw new Refused("", "{} to {} to {} is no range from the least over the likeliest to the most", "write them in order, such as low 20, price 24, high 30",
                    Words.significant(low, 6), Words.significant(mid, 6), Words.significant(high, 6));
    }

    public static Spread exactly(double value) { return new Spread(value, value, value); }

    public Spread times(double factor) { return new Spread(low * factor, mid * factor, high * factor); }

    /// The sum of two that err together: both turn out high, or both low.
    public Spread with(Spread other) { return new Spread(low + other.low, mid + other.mid, high + other.high); }

    /// Mean of the triangle.
    public double mean() { return (low + mid + high) / 3; }

    /// Variance of the triangle: (a² + b² + c² - ab - ac - bc) / 18.
    public double variance() { return Math.max(0, (low * low + mid * mid + high * high - low * mid - low * high - mid * high) / 18); }

    /// The chance that it is more than this.
    public double over(double value) {
        if (value < low) return 1;
        if (value >= high) return 0;
        double width = high - low;
        return value < mid ? 1 - (value - low) * (value - low) / (width * (mid - low)) : (high - value) * (high - value) / (width * (high - mid));
    }

    /// One draw, by the inverse of the distribution.
    public double draw(RandomGenerator random) {
        double width = high - low;
        if (width == 0) return mid;
        double u = random.nextDouble();
        return u * width < mid - low ? low + Math.sqrt(u * width * (mid - low)) : high - Math.sqrt((1 - u) * width * (high - mid));
    }
}
