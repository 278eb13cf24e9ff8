package sillwright.wood.strength;

/// How far a slender piece falls short of its strength, sideways or lengthways.
public final class Buckling {
    private Buckling() {}

    /// c of [#share] for a column of sawn wood; a round pole has 0.85, glued laminated timber 0.9.
    public static final double SAWN = 0.8;

    public static final double ROUND = 0.85;

    public static final double GLUED = 0.9;

    /// c for a beam.
    public static final double BEAM = 0.95;

    /// Beyond this a column, and a beam by its own measure, is too slender for the code.
    public static final double MOST_SLENDER = 50;

    /// The same while it is being built.
    public static final double MOST_SLENDER_BUILDING = 75;

    /// Cp of a column with c 0.8, 0.85 or 0.9, CL of a beam with 0.95: 1 where stout, toward nothing as it grows slender.
    ///
    /// Source: *NDS* 2018, eq. 3.7-1 and 3.3-6 (from memory), which published worked examples that were read confirm to the last digit.
    ///
    /// @param criticalMPa FcE or FbE, more than 0
    /// @param strengthMPa Fc* or Fb*
    public static double share(double criticalMPa, double strengthMPa, double c) {
        double r = criticalMPa / strengthMPa, half = (1 + r) / (2 * c);
        return r / c / (half + Math.sqrt(half * half - r / c));
    }

    /// FcE by the side of a rectangle that bends.
    ///
    /// Source: *NDS* 2018, 3.7.1 (from memory, confirmed by worked examples that were read).
    ///
    /// @param leastElasticMPa Emin′
    /// @param lengthMm        effective length, Ke times the length
    /// @param sideMm          of the rectangle, the way it bends
    public static double columnMPa(double leastElasticMPa, double lengthMm, double sideMm) {
        double slender = lengthMm / sideMm;
        return 0.822 * leastElasticMPa / (slender * slender);
    }

    /// The same of any section, by its radius of gyration; equal to [#columnMPa] for a rectangle, whose side is r√12.
    public static double columnByGyrationMPa(double leastElasticMPa, double lengthMm, double gyrationMm) {
        return columnMPa(leastElasticMPa, lengthMm, side(gyrationMm));
    }

    /// The side of a rectangle with this radius of gyration.
    public static double side(double gyrationMm) { return gyrationMm * Math.sqrt(12); }

    /// FbE.
    ///
    /// Source: *NDS* 2018, 3.3.3 (from memory, confirmed by worked examples that were read).
    ///
    /// @param slender RB, see [#beamSlender]
    public static double beamMPa(double leastElasticMPa, double slender) { return 1.20 * leastElasticMPa / (slender * slender); }

    /// RB: effective length le, side of the section upright and level.
    public static double beamSlender(double lengthMm, double uprightMm, double levelMm) { return Math.sqrt(lengthMm * uprightMm / (levelMm * levelMm)); }

    /// How the ends of a column are held: what its length counts for.
    ///
    /// Source: *NDS* appendix G, recommended values (from memory).
    public enum Ends {
        FIXED_FIXED(0.65), FIXED_PINNED(0.8), PINNED(1.0), SWAY_GUIDED(1.2), FLAGPOLE(2.1), PINNED_GUIDED(2.4);

        private final double times;

        Ends(double times) { this.times = times; }

        /// Ke.
        public double times() { return times; }
    }

    /// How a beam on two supports is loaded: the length le that stands for its unbraced length lu when it tips.
    ///
    /// Source: *NDS* table 3.3.3 (read in the code of a public program; any loading and end moments from memory).
    public enum Loading {
        UNIFORM, MIDDLE, MIDDLE_BRACED, ANY;

        /// @param unbracedMm between points held from going sideways
        /// @param uprightMm  depth of the beam
        public double lengthMm(double unbracedMm, double uprightMm) {
            boolean shallow = unbracedMm < 7 * uprightMm;
            return switch (this) {
                case UNIFORM -> shallow ? 2.06 * unbracedMm : 1.63 * unbracedMm + 3 * uprightMm;
                case MIDDLE -> shallow ? 1.80 * unbracedMm : 1.37 * unbracedMm + 3 * uprightMm;
                case MIDDLE_BRACED -> 1.11 * unbracedMm;
                case ANY -> shallow ? 2.06 * unbracedMm : Math.max(1.63 * unbracedMm + 3 * uprightMm, 1.84 * unbracedMm);
            };
        }
    }

    /// The side that stands for a round column: of a square of the same area.
    public static double sideOfRound(double diameterMm) { return diameterMm * Math.sqrt(Math.PI) / 2; }

    /// The side that stands for one that tapers over its length, ends held alike or not known: a third up from the thin end.
    ///
    /// Source: *NDS* 3.7.2 (from memory).
    public static double sideOfTaper(double thinMm, double thickMm) { return thinMm + (thickMm - thinMm) / 3; }

    /// What Cp is multiplied by, about the axis that bends the plies apart, of a column nailed up from planks; bolted 0.75.
    ///
    /// Source: *NDS* 15.3 (from memory; 0.6 confirmed by a worked example that was read).
    public static final double NAILED_PLIES = 0.6;

    public static final double BOLTED_PLIES = 0.75;
}
