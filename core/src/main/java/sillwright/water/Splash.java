package sillwright.water;

import sillwright.measure.Basis;
import sillwright.walk.Side.Surface;

/// How much of the rain that splashes from the ground reaches wood above it.
///
/// No published curve of splash against height on walls was found. The curve here is a model choice, fixed by the two
/// heights that a timber standard asks for: of every hundred parts, five reach its height.
public final class Splash {
    private Splash() {}

    static final Basis MODEL = Basis.own("share of splash above a height z is exp(-z/λ): λ 100 mm over soil and paving, 50 mm over gravel, so that the standard's heights leave 5 %; grass 75 mm and mulch 50 mm by analogy");
    static final Basis CODE = Basis.read("International Residential Code", "R317.1 item 5: 6 in above ground, 2 in above slabs, steps and paving");
    static final Basis STANDARD = Basis.read("DIN 68800-2, a published reading of §5.2.1.3", "30 cm above ground, less over coarse gravel or paving that sheds");
    static final Basis GRAVEL_LEAST = Basis.read("A timber builders' handbook page, 2023", "never under 15 cm, and 15 cm only over a gravel bed");
    static final Basis FAR_LINE = new Basis("A drop's flight without air drag", "a splash that could rise H reaches H - x²/(4H) at x out", sillwright.measure.Known.COMPUTED);
    static final Basis DRIP_SPEED = Basis.memory("Fall with quadratic drag", "terminal speed of a large drop 9 m/s");
    static final Basis CARRIES = Basis.memory("Studies of plant disease carried by splash", "highest from smooth hard ground, less from soil, least from straw or mulch");

    /// Dirt carried by splash is seen to this height, mm: house-care pages speak of 50 cm (read, no data given).
    static final double DIRT_MM = 500;

    /// The height over which splash falls to 1/e, mm.
    ///
    /// A model choice; see [Splash].
    public static double fadeMm(Surface ground) {
        return switch (ground) {
            case PAVING, SOIL -> 100;
            case GRASS -> 75;
            case GRAVEL, MULCH -> 50;
        };
    }

    /// How high the splash comes that matters, mm: above it goes one part in twenty.
    ///
    /// @param overhangMm how far from the wall the roof lets the rain reach the ground, mm; 0 where nothing shelters
    public static double reachMm(Surface ground, double overhangMm) { return Math.max(0, riseMm(3 * fadeMm(ground), overhangMm)); }

    /// Share of the splash at the wall's foot that comes as high as the wood, 0 to 1.
    ///
    /// A splash that starts at a distance must be able to rise higher straight up to pass the same height at the wall:
    /// (z + √(z² + x²)) / 2. Model choice with the flight of a drop without drag; see [Splash].
    ///
    /// @param clearanceMm from the ground to the wood, mm
    /// @param overhangMm  from the wall out to where the water falls, mm
    public static double share(double clearanceMm, Surface ground, double overhangMm) {
        double needed = (clearanceMm + Math.hypot(clearanceMm, overhangMm)) / 2;
        return Math.exp(-needed / fadeMm(ground));
    }

    /// The highest point at a distance that a splash can reach which could rise so high straight up, mm; may be less than nothing.
    ///
    /// Source: the envelope of throws without drag (computed): an upper bound.
    public static double riseMm(double straightUpMm, double outMm) { return straightUpMm - outMm * outMm / (4 * straightUpMm); }

    /// Speed at the ground of a drip from an eave, m/s.
    ///
    /// Source: fall with drag that grows as the square of speed, terminal speed 9 m/s (from memory).
    ///
    /// @param eaveMm height of the roof edge above the ground, mm
    public static double dripSpeedMs(double eaveMm) {
        double terminal = 9;
        return terminal * Math.sqrt(1 - Math.exp(-2 * 9.81 * eaveMm / 1000 / (terminal * terminal)));
    }

    /// The least that the residential code asks between wood and what lies beneath, mm: 6 in, or 2 in over paving.
    public static double codeMm(Surface ground) { return ground == Surface.PAVING ? 2 * 25.4 : 6 * 25.4; }

    /// What good timber practice asks, mm: 300, or 150 over a bed of coarse gravel.
    public static double standardMm(Surface ground) { return ground == Surface.GRAVEL ? 150 : 300; }

    /// What to do about a clearance, one sentence.
    public static String advice(double clearanceMm, Surface ground) {
        boolean paved = ground == Surface.PAVING;
        String code = paved ? "2 in (51 mm) above paving" : "6 in (152 mm) above ground";
        String standard = ground == Surface.GRAVEL ? "15 cm (6 in) over gravel" : "30 cm (12 in)";
        if (clearanceMm < codeMm(ground) - 0.05)
            return "too low: lower the ground, or raise the wood, to the code's " + code + " at least, better to " + standard + ", and let the ground fall away";
        if (clearanceMm < standardMm(ground) - 0.05)
            return "the code's " + code + " is met, yet the wood stands in the splash: keep it coated, and give it " + standard
                    + (paved ? ", or let the paving fall 2 % away" : ground == Surface.GRAVEL ? "" : ", or a bed of coarse gravel that water sinks into");
        return "clear of all but one part in twenty of the splash: leave it so, and keep soil and mulch from rising";
    }
}
