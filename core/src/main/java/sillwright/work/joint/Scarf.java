package sillwright.work.joint;

/// A plain glued scarf: how long, how much glue face, and what the glue line bears. Slopes are so many along for one across (`n`).
///
/// Stresses are taken as even over the glue face; real ends peak, so that tests fall below.
public final class Scarf {
    private Scarf() {}

    /// Length of the sloping face along the grain.
    public static double lengthMm(double depthMm, double slope) { return depthMm * slope; }

    /// Area of the glue face over the section. Source: geometry (read in form, computed).
    public static double areaRatio(double slope) { return Math.sqrt(1 + slope * slope); }

    public static double glueAreaMm2(double widthMm, double depthMm, double slope) { return widthMm * depthMm * areaRatio(slope); }

    /// Shear along the glue line from a stress along the grain: σ sin θ cos θ with tan θ = 1/n.
    /// Source: statics of an inclined plane (read in form at a public reference page).
    public static double shearMPa(double alongMPa, double slope) { return Math.abs(alongMPa) * slope / (1 + slope * slope); }

    /// Tension square to the glue line from a stress along the grain: σ sin² θ; less than nothing where the joint is pressed shut.
    public static double peelMPa(double alongMPa, double slope) { return alongMPa / (1 + slope * slope); }

    private static final double[] SLOPE = {0, 5, 8, 10, 12, 20};
    private static final double[] KEPT = {0.25, 0.65, 0.80, 0.85, 0.90, 0.95};

    /// Share of clear wood's strength in tension that a well-made glued scarf keeps, straight between published values.
    ///
    /// 1:5 to 1:12 as older editions of the *Wood Handbook* have it (from memory; 1:12 is 0.85 in some); 1:20 an article on scarf joints (read), whose
    /// 0.65 at 1:4 contradicts 0.65 at 1:5 and is not used. Below 1:5 it falls toward the square glued butt, 0.25 at most (*Wood Handbook*, FPL-GTR-190,
    /// ch. 10, read): that line is this program's own choice, on the careful side. Beyond 1:20 it stays at 0.95.
    public static double efficiency(double slope) {
        for (int i = 1; i < SLOPE.length; i++)
            if (slope <= SLOPE[i]) return KEPT[i - 1] + (KEPT[i] - KEPT[i - 1]) * (slope - SLOPE[i - 1]) / (SLOPE[i] - SLOPE[i - 1]);
        return KEPT[KEPT.length - 1];
    }
}
