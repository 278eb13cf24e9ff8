package sillwright.work.resin;

import sillwright.measure.Basis;
import sillwright.wood.Interval;

/// What is done about a group of open drying checks, and what it takes.
///
/// @param advice     leave, coat or fill
/// @param consolidantMl run into the walls of the checks first; 0 where they are left
/// @param skimMl     filler that the checks hold, with its doubt
/// @param why        one sentence
public record Checks(Advice advice, double consolidantMl, Interval skimMl, String why) {
    /// From the least done.
    public enum Advice { LEAVE, COAT, FILL }

    /// A coat of paint bridges a check no wider than this, mm: 1/32 in, own choice.
    public static final double BRIDGED_MM = 0.8;
    /// Checks no wider than this drain and close by themselves where they stand upright, mm: 1/8 in, own choice.
    public static final double DRAINS_MM = 3.2;
    /// Walls drink so deep, mm: own choice.
    private static final double WALL_MM = 2;

    public static final Basis[] BASIS = {
        Basis.read("A window restorers' treatment standard", "sill checks filled to their bottoms, with bare bands between them so the sill can dry"),
        Basis.practice("a check that stands upright drains; one that lies open to the sky holds water"),
        Basis.own("a coat bridges to 1/32 in (0.8 mm); upright checks are left to 1/8 in (3.2 mm)")};

    /// A group of checks as it was measured, mm.
    public record Group(int count, double lengthMm, double widthMm, double depthMm) {}

    /// @param level whether the face looks up, so that water stands in them
    /// @param voids share of the wood that resin can fill
    public static Checks of(Group group, boolean level, double voids, double fill) {
        double half = group.count * group.lengthMm * group.widthMm * group.depthMm / 2000;
        if (group.widthMm <= BRIDGED_MM)
            return new Checks(Advice.COAT, 0, Interval.exactly(0), "no wider than a coat of paint bridges: prime them well and paint");
        if (!level && group.widthMm <= DRAINS_MM)
            return new Checks(Advice.LEAVE, 0, Interval.exactly(0), "they stand upright and drain, and close when the wood is damp: brush primer into them, fill nothing");
        double walls = 2.0 * group.count * group.lengthMm * group.depthMm * WALL_MM / 1000 * voids * fill;
        return new Checks(Advice.FILL, walls, new Interval(half * 0.7, half, half * 2), level ? "they lie open upward and hold water: run consolidant in, then fill them to their bottoms; leave the wood between them bare of resin so that it can dry"
                : "too wide for paint to bridge or to close again: run consolidant in, then fill them to their bottoms");
    }
}
