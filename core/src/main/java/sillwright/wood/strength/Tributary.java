package sillwright.wood.strength;

import java.util.ArrayList;
import java.util.List;

/// The roof, floor and wall that one piece carries.
///
/// @param roofMm2  of roof, on the level
/// @param floorMm2 of floor
/// @param wallMm2  of wall, on its face
public record Tributary(double roofMm2, double floorMm2, double wallMm2) {
    public static final double NONE = 0;

    /// One combination of loads and how long its shortest stays.
    ///
    /// @param words  what is in it
    /// @param load   N, or N/mm where the areas were for each mm of length
    public record Load(String words, double load, Duration duration) {}

    /// One post of a row: half the bay on each side of it, half the depth of the porch and its overhang.
    public static Tributary post(double leftBayMm, double rightBayMm, double deepMm, double overhangMm, boolean roof, boolean floor) {
        double along = (leftBayMm + rightBayMm) / 2;
        return new Tributary(roof ? along * (deepMm / 2 + overhangMm) : NONE, floor ? along * deepMm / 2 : NONE, NONE);
    }

    /// Each mm of a beam or sill: half of what spans to it from either side, and the wall that stands on it.
    public static Tributary perMm(double roofSpanMm, double floorSpanMm, double wallHighMm) { return new Tributary(roofSpanMm / 2, floorSpanMm / 2, wallHighMm); }

    /// Each mm of one joist or stringer of a row.
    public static Tributary spaced(double spacingMm) { return new Tributary(NONE, spacingMm, NONE); }

    /// The combinations to check, from the longest-lasting to the shortest: a heavier load that soon goes may harm less. Floor and roof are taken
    /// whole together, where the standard would allow three quarters.
    ///
    /// Source: *ASCE 7* allowable stress combinations, made heavier (from memory).
    public List<Load> loads(UnitLoads on) {
        double dead = roofMm2 * on.roofDeadMPa() + floorMm2 * on.floorDeadMPa() + wallMm2 * on.wallDeadMPa(), floor = floorMm2 * on.floorLiveMPa();
        List<Load> all = new ArrayList<>(List.of(new Load("its own weight and what it carries for good", dead, Duration.PERMANENT)));
        if (floor > 0) all.add(new Load("with people on the floor", dead + floor, Duration.NORMAL));
        if (roofMm2 > 0) {
            all.add(new Load(floor > 0 ? "with people on the floor and snow on the roof" : "with snow on the roof", dead + floor + roofMm2 * on.snowMPa(), Duration.SNOW));
            all.add(new Load(floor > 0 ? "with people on the floor and on the roof" : "with people on the roof", dead + floor + roofMm2 * on.roofLiveMPa(), Duration.CONSTRUCTION));
        }
        return List.copyOf(all);
    }

    /// The heaviest of them, N: what a shore must bear.
    public double heaviest(UnitLoads on) { return loads(on).stream().mapToDouble(Load::load).max().orElse(0); }

    /// Side of the square pad beneath a shore.
    ///
    /// @param soilMPa what the ground may bear
    public static double padSideMm(double loadN, double soilMPa) { return Math.sqrt(loadN / soilMPa); }
}
