package sillwright.wood.moisture;

/// Water in wood: where it comes to rest, and what a pin meter's reading means. Moisture is a fraction of oven-dry mass.
public final class Moisture {
    /// Cell walls hold no more than about this; what is above lies free in the cells.
    /// Source: *Wood Handbook*, FPL-GTR-190, ch. 4, p. 4-2 (read): averages about 30 %, several points either way.
    public static final double FIBRE_SATURATION = 0.30;

    private Moisture() {}

    /// Moisture content that wood comes to rest at in steady air: the two-hydrate sorption model.
    ///
    /// Knows no species and no hysteresis: drying wood stands a little above this, wetting wood a little below.
    /// Within 0.0006 of the 344 printed cells that were read.
    /// Source: *Wood Handbook*, FPL-GTR-282, ch. 4, eq. 4-5 in °C (read in a public copy and in public source text).
    ///
    /// @param tempC    air, °C, -1 to 99 as printed in the table
    /// @param humidity fraction of saturation, 0 to less than 1; the table goes from 0.05 to 0.95
    /// @return mass of water per mass of oven-dry wood; 0.12 is what a meter shows as 12 %
    public static double atRest(double tempC, double humidity) {
        double t = tempC, h = humidity;
        double w = 349 + 1.29 * t + 0.0135 * t * t;
        double k = 0.805 + 7.36e-4 * t - 2.73e-6 * t * t;
        double k1 = 6.27 - 9.38e-3 * t - 3.03e-4 * t * t;
        double k2 = 1.91 + 4.07e-2 * t - 2.93e-4 * t * t;
        double kh = k * h, one = k1 * kh, two = k1 * k2 * kh * kh;
        return 18 / w * (kh / (1 - kh) + (one + 2 * two) / (1 + one + two));
    }

    /// Moisture of wood at some temperature from a resistance meter's reading, on the meter's Douglas-fir scale.
    ///
    /// Meters are set for wood near 20 °C; cold wood holds more than they show, warm wood less. The species constants of the
    /// equation (slope 1 and offset 0 for Douglas-fir) were not found for other woods.
    /// Source: temperature equation of Pfaff and Garrahan (1986) as used with ASTM D4444 meters (from memory).
    ///
    /// @param shown what the meter shows, a fraction, 0.07 to 0.30
    /// @param tempC of the wood, °C, about -18 to 49
    public static double fromMeter(double shown, double tempC) {
        double r = shown * 100, t = tempC;
        return (r + 0.567 - 0.0260 * t + 0.000051 * t * t) / (0.881 * Math.pow(1.0056, t)) / 100;
    }

    /// Whether a pin meter can be trusted at this moisture: 7 to 30 %.
    /// Source: abstract of FPL-GTR-6 (read) for the upper end, makers' notes (read) for the lower.
    public static boolean withinMeter(double moisture) { return moisture >= 0.07 && moisture <= FIBRE_SATURATION; }
}
