package sillwright.wood.drying;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.walk.Member;

/// One face of a piece: what lies on it and what water comes to it.
///
/// @param open   false where nothing passes
/// @param airSM  resistance of still air to dry wood at 20 °C, s/m of moisture; 0 where the face is at rest with the air at once
/// @param filmSM resistance of the paint at 20 °C, s/m
/// @param leak   share of the face through which liquid gets in
/// @param share  liquid that reaches the face over rain on level ground
/// @param stays  hours that it stays wet once rain has stopped
public record Skin(boolean open, double airSM, double filmSM, double leak, double share, double stays) {
    private static final double STILL_AIR = 1 / 3.2e-8, PERM = 5.72135e-11, SATURATED_PA = 2338.8;
    /// How far moisture at rest rises with humidity, between 40 and 90 %.
    private static final double SLOPE = 0.25;

    public static final List<Basis> BASIS = List.of(
            Basis.memory("Vapour permeance of paint on wood", "an oil paint in good order 0.3 to 1 perm; 0.6 is used; 1 perm is 57.2 ng/(s·m²·Pa)"),
            Basis.own("a failing film passes 5 perm and lets liquid in over a tenth of the face; a sound one over a hundredth; a stain passes 10 perm and liquid over a fifth"));

    public static final Skin SEALED = new Skin(false, 0, 0, 0, 0, 0);
    /// At rest with the air at once, as in closed answers.
    public static final Skin AT_ONCE = new Skin(true, 0, 0, 0, 0, 0);

    /// Under a coat, with no water on it. A coat that is not known is taken to be failing.
    ///
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
        return new Skin(true, STILL_AIR, timber.densityKgM3() * SLOPE / (perms * PERM * SATURATED_PA), leak, 0, 0);
    }

    /// The same with water coming to it.
    public Skin wetted(double share, double stays) { return new Skin(open, airSM, filmSM, leak, share, stays); }
}
