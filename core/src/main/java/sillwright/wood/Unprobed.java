package sillwright.wood;

import java.util.Arrays;

/// The widest stretch along a face that nobody has probed, and the spot that parts it best.
///
/// A seat of decay that no reading met tells of itself by nothing, so that what a model expects there is a guess; a walk in even steps finds it. The stretch beyond the last
/// reading toward an end counts double, since it is seen from one side only, and its spot lies near the end itself: decay begins where end grain drinks. Common practice, no source.
///
/// @param alongMm  of the spot
/// @param acrossMm over the other half of the face than the reading next to it, so that steps along go from side to side
/// @param wideMm   how wide the stretch is
record Unprobed(double alongMm, double acrossMm, double wideMm) {
    /// A narrower stretch is not walked: the seat that fits between its readings is small. Own choice.
    static final double WORTH_MM = 100;
    /// How far from an end its spot lies, mm, and how far across; where steps go from side to side they keep off the middle. Own choices.
    private static final double FROM_END_MM = 50, ONE_SIDE = 0.35;

    boolean worth() { return wideMm > WORTH_MM; }

    /// @param taken one reading or more
    static Unprobed widest(Readings taken, Slab slab) {
        double[] at = Arrays.copyOf(taken.alongMm, taken.count);
        Arrays.sort(at);
        double before = at[0], beyond = slab.lengthMm() - at[at.length - 1];
        double wide = 2 * Math.max(before, beyond), spot = before >= beyond ? Math.min(FROM_END_MM, before / 3) : slab.lengthMm() - Math.min(FROM_END_MM, beyond / 3);
        for (int i = 1; i < at.length; i++) {
            if (at[i] - at[i - 1] <= wide) continue;
            wide = at[i] - at[i - 1];
            spot = (at[i] + at[i - 1]) / 2;
        }
        int next = 0;
        for (int i = 1; i < taken.count; i++) if (Math.abs(taken.alongMm[i] - spot) < Math.abs(taken.alongMm[next] - spot)) next = i;
        return new Unprobed(spot, slab.acrossMm() * (taken.acrossMm[next] > slab.acrossMm() / 2 ? ONE_SIDE : 1 - ONE_SIDE), wide);
    }
}
