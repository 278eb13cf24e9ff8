package sillwright.work.joint;

import java.util.List;

import sillwright.measure.Basis;

/// How near fasteners may stand to edges, ends and each other, mm.
///
/// @param edgeMm  from the edge of the wood along the grain
/// @param endMm   from its end
/// @param rowMm   from one to the next along the grain
/// @param apartMm from row to row across it
public record Spacing(double edgeMm, double endMm, double rowMm, double apartMm) {
    public static final List<Basis> BASIS = List.of(
            Basis.memory("NDS commentary", "nails and screws, lead hole bored: edge 2.5 D, end 10 D pulled and 5 D pressed, in a row 10 D, between rows 3 D; not bored: 15 D, 10 D, 15 D, 5 D"),
            Basis.memory("NDS 2018, tables 12.5.1A to D", "bolts and lags along the grain: edge 1.5 D, end 7 D pulled and 4 D pressed in softwood, in a row 4 D, between rows 1.5 D; edge 4 D where pushed across the grain"));

    /// Nails and wood screws. Source: *NDS* commentary (from memory).
    ///
    /// @param bored  whether a lead hole is bored
    /// @param pulled whether the joint is pulled apart along the grain
    public static Spacing thin(double diameterMm, boolean bored, boolean pulled) {
        double d = diameterMm;
        return bored ? new Spacing(2.5 * d, (pulled ? 10 : 5) * d, 10 * d, 3 * d) : new Spacing(2.5 * d, (pulled ? 15 : 10) * d, 15 * d, 5 * d);
    }

    /// Bolts and lag screws of a quarter inch and more, for the whole value. Source: *NDS* 2018, 12.5 (from memory).
    ///
    /// @param across whether they are also pushed across the grain
    public static Spacing thick(double diameterMm, boolean pulled, boolean across) {
        double d = diameterMm;
        return new Spacing((across ? 4 : 1.5) * d, (pulled ? 7 : 4) * d, 4 * d, (across ? 2.5 : 1.5) * d);
    }
}
