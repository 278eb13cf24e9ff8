package sillwright.measure;

/// Water vapour in air: the one formula that every stage shares.
public final class Vapour {
    private static final double TRIPLE_C = 0.01;

    private Vapour() {}

    /// Pressure of water vapour over a flat surface of water, or of ice at and below the triple point.
    ///
    /// Source: *ASHRAE Handbook, Fundamentals* (2017), ch. 1, eq. 5 and 6 (read in public source text).
    ///
    /// @param tempC °C, -100 to 200
    /// @return Pa
    public static double saturationPa(double tempC) {
        double t = tempC + 273.15;
        if (tempC <= TRIPLE_C)
            return Math.exp(-5.6745359e3 / t + 6.3925247 - 9.677843e-3 * t + 6.2215701e-7 * t * t + 2.0747825e-9 * t * t * t
                    - 9.484024e-13 * t * t * t * t + 4.1635019 * Math.log(t));
        return Math.exp(-5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t - 1.4452093e-8 * t * t * t + 6.5459673 * Math.log(t));
    }

    /// The temperature of a surface on which this air begins to leave water; below freezing, frost.
    ///
    /// Found by halving on [#saturationPa], so that the two agree to the last digits.
    ///
    /// @param tempC    air, °C, -60 to 200
    /// @param humidity fraction of saturation, 0.01 to 1
    public static double dewPointC(double tempC, double humidity) {
        double wanted = humidity * saturationPa(tempC), low = -100, high = tempC;
        while (high - low > 1e-11) {
            double middle = (low + high) / 2;
            if (middle <= low || middle >= high) break;
            if (saturationPa(middle) < wanted) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }
}
