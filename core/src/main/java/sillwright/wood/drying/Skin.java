package sillwright.wood.drying;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.walk.Member;

/// One face of a piece: what lies on it and what water comes to it.
///
/// @param open   false where nothing passes
/// @param airSM  resistance of still air to dry wood at 20 °C, s/m of moisture; 0 where the face is at rest with the air at once
/// @param filmSM resistance of the paint at 20 °C, s/m
/// @param leak   share of the face that is open: through which liquid gets in
/// @param soakedSM resistance of an unbroken film with liquid on it, s/m: water goes as it goes through the film itself, until the walls of the wood are full and no further; 0 where liquid gets in by `leak`
/// @param share  liquid that reaches the face over rain on level ground
/// @param stays  hours that it stays wet once rain has stopped
public record Skin(boolean open, double airSM, double filmSM, double leak, double soakedSM, double share, double stays) {
    private static final double STILL_AIR = 1 / 3.2e-8, PERM = 5.72135e-11, SATURATED_PA = 2338.8, SATURATED_KG_M3 = 0.0173, HEAT_OF_AIR = 1200;
    /// What 2 mm of softwood near saturation lets through, where vapour gathers to a crack in the film.
    private static final double OPEN_PERMS = 80;
    /// What a sound film lets through while it is soaked: about half of what the standard allows for joinery, 90 g/m² into dry softwood in three days.
    private static final double SOAKED_PERMS = 3.5;
    /// Wind past a wall in the lee of its own house, trees and neighbours, m/s: this program's own choice.
    private static final double PAST_WALL_MS = 1;
    /// How far moisture at rest rises with humidity, between 40 and 90 %.
    private static final double SLOPE = 0.25;

    public static final List<Basis> BASIS = List.of(
            Basis.memory("Vapour permeance of paint on wood", "an oil paint in good order 0.3 to 1 perm; 0.6 is used; 1 perm is 57.2 ng/(s·m²·Pa)"),
            Basis.own("a failing film passes 5 perm and lets liquid in over a tenth of the face; a sound one passes it as a film does, 3.5 perm when soaked, until the walls of the wood are full and no further; a stain passes 10 perm and liquid over a fifth; where a film is open, vapour goes out as through 2 mm of damp wood, 80 perm"),
            Basis.read("Podgorski, Collignan and Lanvin, IRG/WP 12-40580 (2012)", "abstract: coats on spruce take up less than the 175 g/m² in 72 h of EN 927-2 for joinery; here a sound film takes up about half of that"),
            Basis.memory("McAdams, Heat Transmission, and the Lewis relation", "heat to air that moves past a wall 5.7 + 3.8v W/(m²·K), v in m/s; vapour by that over the heat capacity of air, 1200 J/(m³·K)"));

    public static final Skin SEALED = new Skin(false, 0, 0, 0, 0, 0, 0);
    /// At rest with the air at once, as in closed answers.
    public static final Skin AT_ONCE = new Skin(true, 0, 0, 0, 0, 0, 0);

    /// Under a coat, with no water on it. A coat that is not known is taken to be failing.
    ///
    /// Where liquid gets in vapour gets out, so that a coat that leaks dries by its leaks.
    /// The film's resistance in moisture is density · slope / (permeance · saturation pressure): it carries vapour by the difference in pressure, and
    /// pressure goes with moisture by the slope of the sorption curve, taken as 0.25.
    public static Skin under(Member.Coat coat, Timber timber) {
        double perms = switch (coat) {
            case NONE -> Double.POSITIVE_INFINITY;
            case SOUND -> 0.6;
            case FAILING, NOT_KNOWN -> 5;
            case STAIN -> 10;
        };
        double leak = switch (coat) {
            case NONE -> 1;
            case SOUND -> 0.01;
            case FAILING, NOT_KNOWN -> 0.1;
            case STAIN -> 0.2;
        };
        return new Skin(true, STILL_AIR, timber.densityKgM3() * SLOPE / ((perms + OPEN_PERMS * leak) * PERM * SATURATED_PA), leak,
                coat == Member.Coat.SOUND ? timber.densityKgM3() * SLOPE / (SOAKED_PERMS * PERM * SATURATED_PA) : 0, 0, 0);
    }

    /// The same in moving air, as it is outside: the still air of a drying room lets bare wet wood dry many times too slowly.
    ///
    /// The vapour that moving air takes up, by its density at rest with the wood, turned into moisture by the slope of the sorption curve, as for the film.
    ///
    /// @param windMS past the wall, 0 to 10 m/s
    public Skin inWind(double windMS, Timber timber) {
        double vapourMS = (5.7 + 3.8 * windMS) / HEAT_OF_AIR;
        return new Skin(open, Math.min(airSM, timber.densityKgM3() * SLOPE / (vapourMS * SATURATED_KG_M3)), filmSM, leak, soakedSM, share, stays);
    }

    /// Under a coat on a wall in the open, where air moves past it.
    public static Skin outside(Member.Coat coat, Timber timber) { return under(coat, timber).inWind(PAST_WALL_MS, timber); }

    /// The same with water coming to it.
    public Skin wetted(double share, double stays) { return new Skin(open, airSM, filmSM, leak, soakedSM, share, stays); }
}
