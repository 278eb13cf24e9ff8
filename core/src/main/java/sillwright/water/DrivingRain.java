package sillwright.water;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.walk.Building.Month;

/// Rain that the wind drives onto a wall.
public final class DrivingRain {
    private DrivingRain() {}

    static final Basis ASHRAE = Basis.memory("ASHRAE 160", "rain on walls: F_E · F_D · 0.2 · wind · cos · rain, and 1 % of it behind the cladding");
    static final Basis FREE_WIND = Basis.read("Straube, Building Science Digest 148 (2010)", "rain on a wall is a deposition factor · driving-rain factor · wind · cos · rain");
    static final Basis DROPS = Basis.memory("Drop size and fall speed formulas used with Digest 148", "D = 1.105·r^0.232 mm; cubic in D");
    static final Basis ISO = Basis.memory("ISO 15927-3", "(2/9)·v·r^(8/9)·cos");
    static final Basis INDEX = Basis.memory("Lacy's driving-rain index", "yearly rain in m times mean wind in m/s: under 3 sheltered, over 7 severe");

    /// How the place lies to the wind.
    public enum Exposure { SHELTERED, MEDIUM, SEVERE }

    /// What is above the wall.
    public enum Cover {
        /// A wall under a steep roof.
        STEEP_ROOF(0.35),
        /// A wall under a low-slope roof.
        LOW_ROOF(0.5),
        /// A wall that runoff reaches.
        RUNOFF(1.0);

        private final double factor;

        Cover(double factor) { this.factor = factor; }

        /// The deposition factor F_D.
        public double factor() { return factor; }
    }

    /// Exposure factor F_E, by height of the building.
    ///
    /// Source: ASHRAE 160 (from memory).
    ///
    /// @param heightMm of the building, mm; the table ends at 50 m
    public static double exposureFactor(Exposure exposure, double heightMm) {
        double[] to = {10e3, 15e3, 20e3, 30e3, 40e3, 50e3};
        double[] factors = switch (exposure) {
            case SEVERE -> new double[] {1.3, 1.3, 1.4, 1.5, 1.5, 1.5, 1.5};
            case MEDIUM -> new double[] {1.0, 1.1, 1.2, 1.3, 1.4, 1.5, 1.5};
            case SHELTERED -> new double[] {0.7, 0.8, 0.9, 1.1, 1.2, 1.3, 1.5};
        };
        int row = 0;
        while (row < to.length && heightMm > to[row]) row++;
        return factors[row];
    }

    /// Rain that strikes a wall, L/(m²·h).
    ///
    /// Source: ASHRAE 160: F_E · F_D · 0.2 kg·s/(m³·mm) · U · cos θ · r (from memory).
    ///
    /// @param exposure the factor F_E, 0.7 to 1.5
    /// @param cover    the factor F_D, 0.35 to 1
    /// @param windMs   mean hourly wind at 10 m, m/s
    /// @param angleDeg between the wind and the wall's normal, degrees; nothing strikes it from 90 on
    /// @param rainMmH  on level ground, mm/h
    public static double onWall(double exposure, double cover, double windMs, double angleDeg, double rainMmH) {
        return exposure * cover * 0.2 * windMs * facing(angleDeg) * rainMmH;
    }

    /// Rain carried through a standing frame in the free wind, L/(m²·h): driving-rain factor · wind · cos · rain.
    ///
    /// Source: Straube, Building Science Digest 148 (read); a wall gets a share of it, half at most under a peaked roof
    /// with a 12 in overhang (read there).
    public static double freeWind(double windMs, double angleDeg, double rainMmH) {
        return windMs * facing(angleDeg) * rainMmH / fallSpeedMs(dropMm(rainMmH));
    }

    /// Index of one hour, L/m². Source: ISO 15927-3, (2/9)·v·r^(8/9)·cos θ (from memory).
    public static double isoHour(double windMs, double angleDeg, double rainMmH) {
        return 2.0 / 9 * windMs * Math.pow(rainMmH, 8.0 / 9) * facing(angleDeg);
    }

    /// Middle drop size of a rain, mm. Source: D50 = 1.105·r^0.232 (from memory).
    public static double dropMm(double rainMmH) { return 1.105 * Math.pow(rainMmH, 0.232); }

    /// Speed a drop falls at, m/s. Source: a cubic in the drop's size (from memory).
    ///
    /// @param dropMm 0.5 to 5 mm
    public static double fallSpeedMs(double dropMm) {
        return -0.166033 + dropMm * (4.91844 + dropMm * (-0.888016 + dropMm * 0.054888));
    }

    /// Yearly driving-rain index of a place, m²/s: yearly rain in m times mean wind in m/s.
    ///
    /// Source: Lacy's index (from memory): under 3 sheltered, 3 to 7 moderate, over 7 severe.
    public static double yearlyIndex(List<Month> months) {
        double rain = 0, wind = 0;
        for (Month month : months) {
            rain += month.rain().own() / 1000;
            wind += month.wind().own() / months.size();
        }
        return rain * wind;
    }

    private static double facing(double angleDeg) { return Math.max(0, Math.cos(Math.toRadians(angleDeg))); }
}
