package sillwright.wood.strength;

import sillwright.measure.Basis;

/// What a piece may be stressed to where it is, before buckling: design values with every factor but CL, Cp and Cb, MPa.
///
/// @param bendingMPa   Fb*, bent over its greater side
/// @param flatMPa      the same bent over its lesser side, on the flat
/// @param tensionMPa   Ft′
/// @param shearMPa     Fv′
/// @param acrossMPa    Fc⊥′, to which no duration applies
/// @param alongMPa     Fc*
/// @param elasticMPa   E′
/// @param leastElasticMPa Emin′
public record Adjusted(double bendingMPa, double flatMPa, double tensionMPa, double shearMPa, double acrossMPa, double alongMPa, double elasticMPa,
                       double leastElasticMPa) {
    public static final Basis BASIS = Basis.memory("NDS 2018", "4.3: CD, CM, Ct, CF and Cfu on the values of the Supplement; CM and CF of the tables read, secondary");

    /// Where a piece serves.
    ///
    /// @param wet        wetter than 19 % in use
    /// @param warmestC   the wood at its warmest for long, °C
    /// @param repetitive one of three or more alike, side by side under a floor
    public record Service(Duration duration, boolean wet, double warmestC, boolean repetitive) {
        public static Service of(Duration duration, boolean wet) { return new Service(duration, wet, 21, false); }
    }

    /// @param widthMm one side as first sawn
    /// @param depthMm the other
    public static Adjusted of(DesignValues wood, double widthMm, double depthMm, Service service) {
        double fb = wood.bendingMPa() * Factors.sizeInBending(wood, widthMm, depthMm), fc = wood.alongMPa() * Factors.sizeAlong(wood, widthMm, depthMm);
        Factors.Wet wet = service.wet ? Factors.Wet.of(wood, fb, fc) : Factors.Wet.DRY;
        Factors.Warm warm = Factors.Warm.of(service.warmestC, service.wet);
        double cd = service.duration.factor(), strength = cd * warm.strength();
        double bending = fb * strength * wet.bending() * (service.repetitive && wood.use() == Use.LUMBER ? Factors.REPETITIVE : 1);
        return new Adjusted(bending, bending * Factors.onTheFlat(wood, widthMm, depthMm), wood.tensionMPa() * Factors.sizeInTension(wood, widthMm, depthMm) * cd * warm.tensionAndElastic() * wet.tension(),
                wood.shearMPa() * strength * wet.shear(), wood.acrossMPa() * warm.strength() * wet.across(), fc * strength * wet.along(),
                wood.elasticMPa() * warm.tensionAndElastic() * wet.elastic(), wood.leastElasticMPa() * warm.tensionAndElastic() * wet.elastic());
    }
}
