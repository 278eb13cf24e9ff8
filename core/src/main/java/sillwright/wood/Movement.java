package sillwright.wood;

import sillwright.walk.Species;
import sillwright.wood.moisture.Moisture;

/// How wood changes size with its moisture.
public final class Movement {
    private Movement() {}

    /// Which way a board was sawn, and so which shrinkage its width follows.
    public enum Grain { FLAT, QUARTER }

    /// Shrinkage of the width of a board, green to oven-dry: along the rings for flat grain, across them for quartered.
    public static double shrinkage(Species species, Grain grain) {
        return switch (grain) {
            case FLAT -> species.tangential();
            case QUARTER -> species.radial();
        };
    }

    /// Change of a width between two moistures; less than nothing when it shrinks.
    ///
    /// Above fibre saturation wood does not move: a moisture above it counts as 30 %. Between, shrinkage is taken as straight.
    /// Source: *Wood Handbook*, ch. 13, eq. 13-2 (from memory); its coefficient table (read) is met to the last digit.
    ///
    /// @param widthMm   at the first moisture
    /// @param shrinkage green to oven-dry in that direction, a fraction, more than 0
    /// @param from      moisture at which the width was taken, a fraction
    /// @param to        moisture it goes to
    public static double changeMm(double widthMm, double shrinkage, double from, double to) {
        double first = Math.min(from, Moisture.FIBRE_SATURATION), last = Math.min(to, Moisture.FIBRE_SATURATION);
        return widthMm * (last - first) / (Moisture.FIBRE_SATURATION / shrinkage - Moisture.FIBRE_SATURATION + first);
    }

    /// The gap that opens between two pieces side by side, each held along its middle: half of what both shrink. Less than
    /// nothing where they swell against each other.
    ///
    /// @param oneMm   change of the one piece's width
    /// @param otherMm change of its neighbour's
    public static double gapBesideMm(double oneMm, double otherMm) { return -(oneMm + otherMm) / 2; }

    /// The gap, both edges together, about a piece inlaid in an opening: what the piece shrinks more than the opening.
    ///
    /// @param pieceMm   change of the piece's width
    /// @param openingMm change of the same width of the wood around it
    public static double gapInlaidMm(double pieceMm, double openingMm) { return openingMm - pieceMm; }
}
