package sillwright.work.joint;

import sillwright.measure.Unit;

/// What a dowel fastener in single shear bears sideways: the least of six ways it can yield.
///
/// Reference values: dry wood, ten years of load, one fastener, side grain. Load duration, wet service, end grain and group action are the reader's.
/// Source: *NDS* 2018, ch. 12, single shear (from memory); IIIs is confirmed by 180 table cells that were read, IV by one, II by cells of the table of bolts from memory; all six by
/// Johansen's statics solved anew, and Im, Is and IIIm by that alone.
public final class YieldLimit {
    private YieldLimit() {}

    /// How it yields. `I` crushes one member, `II` turns the fastener in both, `III` bends it once, `IV` twice; m main, s side.
    public enum Mode {
        IM("Im"), IS("Is"), II("II"), IIIM("IIIm"), IIIS("IIIs"), IV("IV");

        private final String word;

        Mode(String word) { this.word = word; }

        public String word() { return word; }
    }

    /// @param diameterMm that bends: the shank of a nail, the root of a screw or lag
    /// @param mainMm     bearing length in the main member
    /// @param sideMm     bearing length in the side member
    /// @param mainMPa    dowel bearing strength of the main member
    /// @param sideMPa    of the side member
    /// @param yieldMPa   bending yield strength of the fastener
    record Dowel(double diameterMm, double mainMm, double sideMm, double mainMPa, double sideMPa, double yieldMPa) {}

    /// What the yield values are divided by, for modes I, II and the rest.
    record Reduction(double crushed, double turned, double bent) {}

    record Yield(Mode mode, double lateralN) {}

    static Yield least(Dowel of, Reduction by) {
        double d = of.diameterMm, lm = of.mainMm, ls = of.sideMm, fem = of.mainMPa, fes = of.sideMPa, fyb = of.yieldMPa;
        double re = fem / fes, rt = lm / ls;
        double k1 = (Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt)) / (1 + re);
        double k2 = -1 + Math.sqrt(2 * (1 + re) + 2 * fyb * (1 + 2 * re) * d * d / (3 * fem * lm * lm));
        double k3 = -1 + Math.sqrt(2 * (1 + re) / re + 2 * fyb * (2 + re) * d * d / (3 * fem * ls * ls));
        double[] values = {d * lm * fem / by.crushed, d * ls * fes / by.crushed, k1 * d * ls * fes / by.turned, k2 * d * lm * fem / ((1 + 2 * re) * by.bent),
                k3 * d * ls * fem / ((2 + re) * by.bent), d * d / by.bent * Math.sqrt(2 * fem * fyb / (3 * (1 + re)))};
        int least = 0;
        for (int i = 1; i < values.length; i++) if (values[i] < values[least]) least = i;
        return new Yield(Mode.values()[least], values[least]);
    }

    /// KD: 2.2 to 0.17 in of diameter, then 10 D + 0.5 with D in inches.
    static double kd(double diameterMm) {
        double inches = Unit.INCH.fromOwn(diameterMm);
        return inches <= 0.17 ? 2.2 : 10 * inches + 0.5;
    }

    /// For thin fasteners, under 1/4 in: one divisor for every mode.
    static Reduction thin(double diameterMm) {
        double kd = kd(diameterMm);
        return new Reduction(kd, kd, kd);
    }

    /// For lags and bolts of 1/4 in and more by name; where the root is thinner than 1/4 in it is treated as thin.
    ///
    /// @param angleDeg the greatest angle of load to grain in either member, 0 to 90
    static Reduction thick(double rootMm, double angleDeg) {
        double angle = 1 + 0.25 * angleDeg / 90;
        if (rootMm < Unit.INCH.toOwn(0.25)) return new Reduction(kd(rootMm) * angle, kd(rootMm) * angle, kd(rootMm) * angle);
        return new Reduction(4 * angle, 3.6 * angle, 3.2 * angle);
    }

    /// Dowel bearing strength of wood under a fastener thinner than 1/4 in, any direction: 16600 G^1.84 psi, to 50 psi as the table prints it.
    static double bearingThinMPa(double gravity) { return printed(16600 * Math.pow(gravity, 1.84)); }

    /// Under a fastener of 1/4 in and more: 11200 G psi along the grain, 6100 G^1.45/√D psi across it, Hankinson's formula between.
    static double bearingMPa(double gravity, double nominalMm, double angleDeg) {
        double along = printed(11200 * gravity), across = printed(6100 * Math.pow(gravity, 1.45) / Math.sqrt(Unit.INCH.fromOwn(nominalMm)));
        double sin = Math.sin(Math.toRadians(angleDeg)), cos = Math.cos(Math.toRadians(angleDeg));
        return along * across / (along * sin * sin + across * cos * cos);
    }

    private static double printed(double psi) { return Unit.PSI.toOwn(Math.round(psi / 50) * 50); }
}
