package sillwright.wood.strength;

import sillwright.measure.Unit;

/// Wood pressed by what it stands on or carries.
public final class Bearing {
    private Bearing() {}

    /// Cb: a short bearing away from the end is helped by the wood beside it.
    ///
    /// Source: *NDS* 2018, 3.10.4 (from memory).
    ///
    /// @param lengthMm along the grain; 6 in and more gives 1
    /// @param toEndMm  from the bearing to the end of the piece; 3 in or less gives 1
    public static double helped(double lengthMm, double toEndMm) {
        double inches = Unit.INCH.fromOwn(lengthMm);
        return toEndMm > Unit.INCH.toOwn(3) && inches < 6 - 1e-9 ? (inches + 0.375) / inches : 1;
    }

    /// What may press at an angle to the grain.
    ///
    /// Source: Hankinson's formula, *NDS* 2018, 3.10.3 (from memory).
    ///
    /// @param alongMPa  Fc*
    /// @param acrossMPa Fc⊥′
    /// @param angleDeg  0 along the grain, 90 square to it
    public static double atAngleMPa(double alongMPa, double acrossMPa, double angleDeg) {
        double sin = Math.sin(Math.toRadians(angleDeg)), cos = Math.cos(Math.toRadians(angleDeg));
        return alongMPa * acrossMPa / (alongMPa * sin * sin + acrossMPa * cos * cos);
    }

    /// End grain on end grain or on a hard seat, as a post's foot: above this share of Fc* a rigid metal plate spreads the load.
    ///
    /// Source: *NDS* 2018, 3.10.1 (from memory).
    public static final double NEEDS_PLATE = 0.75;

    /// What a foot bears whose rim has gone: only the sound end grain counts.
    ///
    /// @param loadN    along the grain
    /// @param soundMm2 end grain that is left and touches
    /// @param alongMPa Fc*
    /// @return share of what it may bear; [Combined#BEYOND] where nothing is left
    public static double foot(double loadN, double soundMm2, double alongMPa) {
        return soundMm2 > 0 ? Math.min(Combined.BEYOND, loadN / soundMm2 / alongMPa) : loadN > 0 ? Combined.BEYOND : 0;
    }
}
