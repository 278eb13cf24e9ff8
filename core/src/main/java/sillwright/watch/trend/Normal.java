package sillwright.watch.trend;

/// The normal distribution.
public final class Normal {
    private Normal() {}

    /// The complementary error function, to 1e-15 of its value: the series near 0, Lentz's continued fraction further out.
    /// Source: a standard of numerical texts (from memory).
    public static double erfc(double x) {
        if (x < 0) return 2 - erfc(-x);
        if (x < 2) {
            double term = x, sum = x;
            for (int n = 1; n < 200 && Math.abs(term) > 1e-17 * Math.abs(sum); n++) {
                term *= -x * x / n;
                sum += term / (2 * n + 1);
            }
            return 1 - 2 / Math.sqrt(Math.PI) * sum;
        }
        double fraction = 0;
        for (int n = 120; n > 0; n--) fraction = n / 2.0 / (x + fraction);
        return Math.exp(-x * x) / Math.sqrt(Math.PI) / (x + fraction);
    }

    /// Probability below z.
    public static double below(double z) { return erfc(-z / Math.sqrt(2)) / 2; }

    /// The z below which a share lies, by Newton's steps on [#below].
    ///
    /// @param share above 0, below 1
    public static double quantile(double share) {
        double z = 0;
        for (int i = 0; i < 60; i++) {
            double step = (below(z) - share) / (Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI));
            z -= Math.clamp(step, -1, 1);
            if (Math.abs(step) < 1e-14) break;
        }
        return z;
    }
}
