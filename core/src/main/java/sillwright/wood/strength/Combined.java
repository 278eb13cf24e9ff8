package sillwright.wood.strength;

/// A piece pressed along the grain and bent at once.
///
/// Axis 1 bends it over its greater side, axis 2 over its lesser. Stresses in MPa.
///
/// @param pressMPa     fc
/// @param allowedMPa   Fc′, with Cp
/// @param critical1MPa FcE by axis 1
/// @param critical2MPa FcE by axis 2
/// @param tippingMPa   FbE of a beam bent by axis 1
/// @param bent1MPa     fb1, by loads from the side
/// @param bent2MPa     fb2
/// @param allowed1MPa  Fb1′, with CL
/// @param allowed2MPa  Fb2′
/// @param off1         how the press bends it by axis 1, as a multiple of fc: 6e/d of a rectangle, eA/S of any section
/// @param off2         the same by axis 2
public record Combined(double pressMPa, double allowedMPa, double critical1MPa, double critical2MPa, double tippingMPa, double bent1MPa, double bent2MPa,
                       double allowed1MPa, double allowed2MPa, double off1, double off2) {
    /// Stands for a sum that has no bound: pressed to where it buckles whatever its strength.
    public static final double BEYOND = 99;

    /// The sum that must not pass 1: the first term squared, so that a small sum can hide a larger [#press].
    ///
    /// Source: *NDS* 2018, eq. 3.9-3 for loads from the side (from memory, confirmed by worked examples that were read) and eq. 15.4-1 for a load
    /// off the middle (from memory); eA/S for 6e/d in a section that is no rectangle is derived.
    public double unity() {
        double edge = bent1MPa + pressMPa * off1, tip = edge / tippingMPa;
        double left1 = 1 - pressMPa / critical1MPa, left2 = 1 - pressMPa / critical2MPa - tip * tip;
        if (!(left1 > 0 && left2 > 0)) return BEYOND;
        double one = bent1MPa + pressMPa * off1 * (1 + 0.234 * pressMPa / critical1MPa);
        double two = bent2MPa + pressMPa * off2 * (1 + 0.234 * pressMPa / critical2MPa + 0.234 * tip * tip);
        double press = press();
        return Math.min(BEYOND, press * press + one / (allowed1MPa * left1) + two / (allowed2MPa * left2));
    }

    /// fc/Fc′.
    public double press() { return pressMPa / allowedMPa; }

    /// The second condition: fc/FcE2 + (fb1/FbE)², less than 1.
    public double stability() {
        double tip = (bent1MPa + pressMPa * off1) / tippingMPa;
        return pressMPa / critical2MPa + tip * tip;
    }

    /// The greatest of the three, for the unity alone flatters a piece that is mostly pressed.
    public double greatest() { return Math.min(BEYOND, Math.max(unity(), Math.max(press(), stability()))); }

    /// Pulled along the grain and bent: the sum that must not pass 1 at the face that is pulled.
    ///
    /// Source: *NDS* 2018, eq. 3.9-1 (from memory, confirmed by a worked example that was read).
    ///
    /// @param bendingMPa Fb*, without CL
    public static double pulled(double pullMPa, double tensionMPa, double bentMPa, double bendingMPa) { return pullMPa / tensionMPa + bentMPa / bendingMPa; }
}
