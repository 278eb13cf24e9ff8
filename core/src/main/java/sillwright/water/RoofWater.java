package sillwright.water;

import sillwright.measure.Basis;

/// What a roof sends to its edge in the rain.
public final class RoofWater {
    private RoofWater() {}

    static final Basis INFLOW = Basis.read("Public notes on plumbing code sizing", "1 in/h on 96.25 ft² is 1 gpm: 231 in³ to the gallon");
    static final Basis PITCH = Basis.read("A home magazine's page on gutters, after sheet-metal practice",
            "pitch factors 1.0 to 3 in 12, 1.05 to 5, 1.1 to 8, 1.2 to 11, 1.3 from 12");

    /// How much more rain a pitched roof catches than its plan: driven rain falls aslant.
    ///
    /// Steps of a trade table, so a pitch between two classes takes the higher; 1.3 from 12 in 12 up.
    /// Source: sheet-metal practice, as quoted on a home magazine's page on gutters (read).
    ///
    /// @param pitch rise over run, 0 or more; the table says nothing of roofs steeper than 12 in 12 but "and over"
    /// @return factor on the plan area, 1.0 to 1.3
    public static double pitchFactor(double pitch) {
        double in12 = pitch * 12 - 1e-9;
        if (in12 <= 3) return 1.0;
        if (in12 <= 5) return 1.05;
        if (in12 <= 8) return 1.1;
        return in12 <= 11 ? 1.2 : 1.3;
    }

    /// What a roof sends to its edge, L/s: all the rain on its plan area, times the pitch factor.
    ///
    /// No delay and no loss, which is right for a short roof in a steady burst. Source: volume over time (computed);
    /// the factor as [#pitchFactor(double)].
    ///
    /// @param planMm2 roof that drains to the edge, on plan, mm²
    /// @param rainMmH mm/h
    /// @param pitch   rise over run
    public static double inflowLs(double planMm2, double rainMmH, double pitch) {
        return planMm2 / 1e6 * pitchFactor(pitch) * rainMmH / 3600;
    }
}
