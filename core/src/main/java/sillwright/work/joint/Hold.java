package sillwright.work.joint;

/// What one fastener bears: sideways, and drawn out of the main member.
///
/// Reference values: dry wood, ten years of load, side grain.
///
/// @param lateralN    least of the six ways to yield, lessened where it does not go deep enough
/// @param byRootN     the same with the divisor by the root of the thread; alike for what has no thread
/// @param mode        how it yields
/// @param outNPerMm   force to draw it out, for each length in the main member
/// @param deepMm      depth in the main member that counts sideways
public record Hold(double lateralN, double byRootN, YieldLimit.Mode mode, double outNPerMm, double deepMm) {
    /// A fastener driven through a side member into a main member.
    ///
    /// @param diameterMm  by name: the shank of a nail, the nominal diameter of a screw, lag or bolt
    /// @param lengthMm    whole, under the head
    /// @param sideMm      thickness of the member next to the head
    /// @param sideG       specific gravity of it, oven-dry
    /// @param mainG       of the member that holds the point
    public record Driven(double diameterMm, double lengthMm, double sideMm, double sideG, double mainG) {
        double deepMm() { return lengthMm - sideMm; }
    }

    /// Least depth in the main member at which a fastener counts at all, in diameters: nails and screws, lags. Source: *NDS* 12.1 (from memory).
    public static final double LEAST_THIN = 6, LEAST_LAG = 4;
    private static final double FULL_THIN = 10, FULL_LAG = 8;

    /// A common nail, straight. Source: *NDS* 2018, ch. 12 (from memory; see [YieldLimit]).
    public static Hold nail(Driven of) {
        return thin(of, of.diameterMm, of.deepMm(), of.sideMm, 1, Fastener.nailOutNPerMm(of.mainG, of.diameterMm));
    }

    /// The same driven aslant from a third of its length up, at 30° to the member.
    public static Hold toeNail(Driven of) {
        Fastener.Toe toe = Fastener.Toe.of(of.lengthMm);
        return thin(of, of.diameterMm, toe.mainMm(), toe.sideMm(), Fastener.Toe.LATERAL, Fastener.Toe.OUT * Fastener.nailOutNPerMm(of.mainG, of.diameterMm));
    }

    /// A wood screw. The divisor is taken by the diameter by name, the lower of two readings that are not settled.
    public static Hold screw(Driven of, double rootMm) {
        return thin(of, rootMm, of.deepMm(), of.sideMm, 1, Fastener.screwOutNPerMm(of.mainG, of.diameterMm));
    }

    private static Hold thin(Driven of, double bendsMm, double deepMm, double sideMm, double factor, double outNPerMm) {
        double d = of.diameterMm, kept = Fastener.deepEnough(deepMm, d, FULL_THIN);
        var dowel = new YieldLimit.Dowel(bendsMm, bearing(deepMm, FULL_THIN * d, 2 * d), sideMm, YieldLimit.bearingThinMPa(of.mainG), YieldLimit.bearingThinMPa(of.sideG),
                Fastener.nailYieldMPa(d));
        YieldLimit.Yield yield = YieldLimit.least(dowel, YieldLimit.thin(d));
        double byRoot = bendsMm == d ? yield.lateralN() : YieldLimit.least(dowel, YieldLimit.thin(bendsMm)).lateralN();
        return new Hold(yield.lateralN() * kept * factor, byRoot * kept * factor, yield.mode(), outNPerMm, deepMm);
    }

    /// A lag screw.
    ///
    /// @param angleSideDeg of the load to the grain of the side member, 0 to 90
    static Hold lag(Driven of, Fastener.Lag lag, double angleSideDeg, double angleMainDeg) {
        double d = lag.nominalMm(), deep = of.deepMm() - lag.tipMm();
        var dowel = new YieldLimit.Dowel(lag.rootMm(), deep, of.sideMm, YieldLimit.bearingMPa(of.mainG, d, angleMainDeg), YieldLimit.bearingMPa(of.sideG, d, angleSideDeg), lag.yieldMPa());
        YieldLimit.Yield yield = YieldLimit.least(dowel, YieldLimit.thick(lag.rootMm(), Math.max(angleSideDeg, angleMainDeg)));
        double lateral = yield.lateralN() * Fastener.deepEnough(deep, d, FULL_LAG);
        return new Hold(lateral, lateral, yield.mode(), Fastener.lagOutNPerMm(of.mainG, d), deep);
    }

    /// A bolt through both members, the nut drawn up on a washer; it draws out of nothing. Source: *NDS* 2018, 12.3 and Table I1 (from memory): 45 ksi.
    ///
    /// @param mainMm thickness of the member under the nut
    /// @param angleDeg of the load to the grain of both, 0 to 90
    public static Hold bolt(Driven of, double mainMm, double angleDeg) { return through(of, mainMm, angleDeg, Fastener.BOLT_YIELD_MPA); }

    /// A dowel of dense hardwood, by the same equations with the bending yield of wood, 13 ksi; half of that, since wood also shears. Source: design of pegged joints
    /// by yield limits (from memory); the half is this program's own choice.
    public static Hold dowel(Driven of, double mainMm, double angleDeg) {
        Hold bent = through(of, mainMm, angleDeg, Fastener.DOWEL_YIELD_MPA);
        return new Hold(bent.lateralN / 2, bent.byRootN / 2, bent.mode, 0, bent.deepMm);
    }

    private static Hold through(Driven of, double mainMm, double angleDeg, double yieldMPa) {
        double d = of.diameterMm;
        var dowel = new YieldLimit.Dowel(d, mainMm, of.sideMm, YieldLimit.bearingMPa(of.mainG, d, angleDeg), YieldLimit.bearingMPa(of.sideG, d, angleDeg), yieldMPa);
        YieldLimit.Yield yield = YieldLimit.least(dowel, YieldLimit.thick(d, angleDeg));
        return new Hold(yield.lateralN(), yield.lateralN(), yield.mode(), 0, mainMm);
    }

    /// Bearing length: the whole depth, less half the tip where it is short of the full depth.
    private static double bearing(double deepMm, double fullMm, double tipMm) { return deepMm < fullMm - 1e-9 ? deepMm - tipMm / 2 : deepMm; }
}
