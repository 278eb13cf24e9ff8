package sillwright.work.joint;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Unit;

/// Nails, wood screws and lag screws: how strong their steel is, how deep they must go, what draws them out.
final class Fastener {
    /// Bending yield strength of a common bolt, 45 ksi. Source: *NDS* 2018, Table I1 (from memory).
    static final double BOLT_YIELD_MPA = Unit.PSI.toOwn(45_000);

    static final double DOWEL_YIELD_MPA = Unit.PSI.toOwn(13_000);

    private Fastener() {}

    /// Bending yield strength by shank diameter: common wire nails, and wood screws by their diameter by name.
    ///
    /// Source: *NDS* 2018, Table I1 (read, secondary) for nails; for screws from memory.
    ///
    /// @param diameterMm 0.099 to 0.375 in
    static double nailYieldMPa(double diameterMm) {
        double inches = Unit.INCH.fromOwn(diameterMm) - 1e-9;
        double psi = inches <= 0.142 ? 100_000 : inches <= 0.177 ? 90_000 : inches <= 0.236 ? 80_000 : inches <= 0.273 ? 70_000 : inches <= 0.344 ? 60_000 : 45_000;
        return Unit.PSI.toOwn(psi);
    }

    /// A lag screw by its diameter by name. Source: *NDS*, Table L2 (read, secondary); yield from memory, confirmed by table cells that were read.
    ///
    /// @param tipMm length of the tapered tip, which holds nothing
    record Lag(double nominalMm, double rootMm, double tipMm, double yieldMPa) {
        private static Lag of(double inches, double root, double tip, double psi) {
            return new Lag(Unit.INCH.toOwn(inches), Unit.INCH.toOwn(root), Unit.INCH.toOwn(tip), Unit.PSI.toOwn(psi));
        }
    }

    private static final List<Lag> LAGS = List.of(Lag.of(0.25, 0.173, 0.1563, 70_000), Lag.of(0.3125, 0.227, 0.1875, 60_000), Lag.of(0.375, 0.265, 0.2188, 45_000),
            Lag.of(0.4375, 0.328, 0.2813, 45_000), Lag.of(0.5, 0.371, 0.3125, 45_000), Lag.of(0.625, 0.471, 0.4063, 45_000), Lag.of(0.75, 0.579, 0.5, 45_000));

    static Optional<Lag> lag(double nominalMm) { return LAGS.stream().filter(lag -> Math.abs(lag.nominalMm - nominalMm) < 0.15).findFirst(); }

    /// Force to draw a nail from side grain, for each length in the wood: 1380 G^2.5 D lb/in. Source: *NDS* 12.2 (read in a worked example).
    static double nailOutNPerMm(double gravity, double diameterMm) {
        return Unit.POUND_PER_INCH.toOwn(1380 * Math.pow(gravity, 2.5) * Unit.INCH.fromOwn(diameterMm));
    }

    /// The same for the thread of a wood screw: 2850 G² D lb/in. Source: *NDS* 12.2 (from memory).
    static double screwOutNPerMm(double gravity, double diameterMm) {
        return Unit.POUND_PER_INCH.toOwn(2850 * gravity * gravity * Unit.INCH.fromOwn(diameterMm));
    }

    /// The same for the thread of a lag screw, tip not counted: 1800 G^1.5 D^0.75 lb/in. Source: *NDS* Table 12.2A (read).
    static double lagOutNPerMm(double gravity, double diameterMm) {
        return Unit.POUND_PER_INCH.toOwn(1800 * Math.pow(gravity, 1.5) * Math.pow(Unit.INCH.fromOwn(diameterMm), 0.75));
    }

    /// How much of its value a fastener keeps that does not go so deep as the tables assume: in proportion, never more than all.
    ///
    /// @param fullDiameters 10 for nails and screws, 8 for lags. Source: *NDS* table notes (from memory; one worked example read)
    static double deepEnough(double penetrationMm, double diameterMm, double fullDiameters) { return Math.min(1, penetrationMm / (fullDiameters * diameterMm)); }

    /// A toe-nail: started a third of its length from the member's end, at 30° to the member.
    ///
    /// @param sideMm  bearing length in the member nailed
    /// @param mainMm  depth in the other, measured square to it
    /// @param alongMm length of nail in the other
    record Toe(double sideMm, double mainMm, double alongMm) {
        static final double LATERAL = 0.83, OUT = 0.67;

        /// Source: *NDS* 12.1.6 and commentary (from memory).
        static Toe of(double lengthMm) {
            double cos = Math.cos(Math.toRadians(30));
            return new Toe(lengthMm / 3, lengthMm * cos - lengthMm / 3, lengthMm - lengthMm / 3 / cos);
        }
    }
}
