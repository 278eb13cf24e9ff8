package sillwright.wood;

/// What is left of a member's section at one station, against the whole.
///
/// @param stationMm  from the member's start
/// @param frontMm    lost from the front, mm; the others likewise, as [sillwright.walk.Member.SectionSide] has them
/// @param areaKept   fraction of the area
/// @param sxKept     fraction of the least section modulus for bending about the level axis of the section
/// @param syKept     the same about its other axis
/// @param shiftXMm   of the centroid, to the right
/// @param shiftYMm   of the centroid, to the back
/// @param keptLow    the area kept where the decay is as deep as the 90 % bound
public record SectionLeft(double stationMm, double frontMm, double backMm, double leftMm, double rightMm, double areaKept, double sxKept, double syKept,
                          double shiftXMm, double shiftYMm, double keptLow) {
    /// Nothing lost.
    public static SectionLeft whole(double stationMm) { return new SectionLeft(stationMm, 0, 0, 0, 0, 1, 1, 1, 0, 0, 1); }
}
