package sillwright.water;

import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.walk.Choice;
import sillwright.walk.Side.GutterShape;

/// What a gutter carries, and how soon it overflows when it cannot empty.
public final class Gutters {
    private Gutters() {}

    static final Basis LEVEL = Basis.read("Beij 1934 (National Bureau of Standards), as given in the EPA SWMM Reference Manual, vol. III", "eqs. 6-68, 6-69");
    static final Basis OLDER_TABLE = Basis.memory("International Plumbing Code, 2012 and before", "table 1106.6, semicircular gutters");
    static final Basis NEWER_TABLE = Basis.memory("International Plumbing Code, 2015 and after", "table 1106.6");
    static final Basis MANNING = Basis.memory("Manning's equation, a standard of hydraulic texts", "full section, n = 0.012");
    static final Basis NO_FRICTION = new Basis("Momentum of water let in along a level gutter, no friction", "critical depth at the outfall",
            sillwright.measure.Known.COMPUTED);
    static final Basis OGEE = Basis.own("an ogee gutter is counted as the rectangle of its depth and 0.8 of its top width: its front curves in");

    /// Fall of the first column of the older code table, 1/16 in/ft.
    static final double FIRST_FALL = 1.0 / 192;
    /// A run where none is given: 30 ft.
    static final double STANDING_RUN_MM = 9144;

    private static final double FOOT_MM = 304.8, LITRES_PER_FT3 = 28.316846592, GRAVITY = 9.80665;

    /// The shape and size of a gutter's section.
    ///
    /// @param sizeMm  diameter of a half-round, else width at the top
    /// @param depthMm of a rectangular or ogee gutter; half the diameter of a half-round
    public record Section(GutterShape shape, double sizeMm, double depthMm) {
        /// With the depth that is common where none was measured: half a diameter, or three quarters of the width.
        public static Section of(GutterShape shape, double sizeMm, Optional<Double> depthMm) {
            return new Section(shape, sizeMm, shape == GutterShape.HALF_ROUND ? sizeMm / 2 : depthMm.orElse(0.75 * sizeMm));
        }

        /// Width that the rectangle of the same depth and area has, mm.
        double meanWidthMm() { return shape == GutterShape.OGEE ? 0.8 * sizeMm : sizeMm; }

        /// Area of the full section, mm².
        public double areaMm2() { return shape == GutterShape.HALF_ROUND ? Math.PI * sizeMm * sizeMm / 8 : meanWidthMm() * depthMm; }

        String words() { return Choice.word(shape); }
    }

    /// What a gutter carries, L/s, by the rule of its shape.
    ///
    /// Half-round: the plumbing code's table of 2012 and before, and the level-gutter formula under its least fall of
    /// 1/16 in/ft. Rectangular and ogee: the level-gutter formula, which leaves the help of a fall out of account.
    ///
    /// @param fall  rise over run, 0 or more
    /// @param runMm from the high end to the outlet, mm; a half-round one does not depend on it
    public static double capacityLs(Section section, double fall, double runMm) {
        if (section.shape != GutterShape.HALF_ROUND || fall < FIRST_FALL - 1e-9) return levelLs(section, runMm);
        return GutterTable.olderHalfRoundLs(section.sizeMm, fall);
    }

    /// What a level gutter carries, L/s, its water coming in along the run and leaving freely at one end.
    ///
    /// Half-round 0.52·w^2.5, else 7.75·(d/w)^1.6·(w/L)^0.3·w^2.5, in ft³/s and ft. A sagging gutter is no better.
    /// Source: Beij 1934, in the EPA SWMM Reference Manual, vol. III, eqs. 6-68 and 6-69 (read).
    ///
    /// @param runMm from the high end to the outlet, mm
    public static double levelLs(Section section, double runMm) {
        double w = section.meanWidthMm() / FOOT_MM, d = section.depthMm / FOOT_MM, run = runMm / FOOT_MM;
        double cubicFeet = section.shape == GutterShape.HALF_ROUND ? 0.52 * Math.pow(w, 2.5)
                : 7.75 * Math.pow(d / w, 1.6) * Math.pow(w / run, 0.3) * Math.pow(w, 2.5);
        return cubicFeet * LITRES_PER_FT3;
    }

    /// The level half-round gutter times √2 for each doubling of fall from 1/16 in/ft: the rule behind the older table.
    static double fallenHalfRoundLs(double diameterMm, double fall) {
        return levelLs(Section.of(GutterShape.HALF_ROUND, diameterMm, Optional.empty()), STANDING_RUN_MM) * Math.sqrt(Math.max(1, fall / FIRST_FALL));
    }

    /// What the newer code table lets it carry, L/s, where it has this size and fall.
    public static Optional<Double> newerTableLs(Section section, double fall) {
        return switch (section.shape) {
            case HALF_ROUND -> GutterTable.row("half-round", section.sizeMm, section.sizeMm, fall, 2015).map(GutterTable::carriesLs);
            case RECTANGULAR -> GutterTable.row("rectangular", section.sizeMm, section.depthMm, fall, 2015).map(GutterTable::carriesLs);
            case OGEE -> Optional.empty();
        };
    }

    /// Flow of the full section down a fall, L/s: what it would carry were all its water let in at the top.
    ///
    /// Far more than a gutter that fills along its run; printed beside it, never in its place.
    /// Source: Manning's equation with n = 0.012, smooth metal (from memory).
    ///
    /// @param fall rise over run; nothing flows at 0
    public static double fullBoreLs(Section section, double fall) {
        double areaM2 = section.areaMm2() / 1e6;
        double wettedM = (section.shape == GutterShape.HALF_ROUND ? Math.PI * section.sizeMm / 2 : section.meanWidthMm() + 2 * section.depthMm) / 1000;
        return 1000 * areaM2 * Math.pow(areaM2 / wettedM, 2.0 / 3) * Math.sqrt(fall) / 0.012;
    }

    /// The most a level gutter could carry without friction, L/s: full at the high end, critical depth at the outfall.
    ///
    /// Rectangular 3^(-3/4)·√g·B·D^1.5, half-round 0.108895·√g·D^2.5, g 9.81 m/s² (computed). A measured gutter carries about a
    /// sixth less.
    public static double noFrictionLs(Section section) {
        double root = Math.sqrt(9.81);
        double size = section.meanWidthMm() / 1000, depth = section.depthMm / 1000;
        return 1000 * root * (section.shape == GutterShape.HALF_ROUND ? 0.108895 * Math.pow(size, 2.5) : Math.pow(3, -0.75) * size * Math.pow(depth, 1.5));
    }

    /// Rain that fills a gutter whose outlet is shut, mm. Full of leaves it has no room, and overflows at once.
    ///
    /// Source: volume of the gutter over area of the roof (computed).
    ///
    /// @param caughtMm2 the roof on plan times its pitch factor, mm²
    public static double rainToOverflowMm(Section section, double lengthMm, double caughtMm2) {
        return section.areaMm2() * lengthMm / caughtMm2;
    }

    /// Minutes until a gutter whose outlet is shut overflows.
    ///
    /// @param inflowLs what the roof sends, L/s; more than nothing
    public static double minutesToOverflow(Section section, double lengthMm, double inflowLs) {
        return section.areaMm2() * lengthMm / 1e6 / inflowLs / 60;
    }

    /// What runs out through a hole, L/s: an outlet choked with leaves.
    ///
    /// Source: sharp-edged orifice with C = 0.6; the coefficient as in the EPA SWMM Reference Manual, vol. III, eq. 6-75 (read).
    ///
    /// @param headMm water above the hole, mm
    public static double holeLs(double diameterMm, double headMm) {
        double areaM2 = Math.PI * diameterMm * diameterMm / 4e6;
        return 1000 * 0.6 * areaM2 * Math.sqrt(2 * GRAVITY * headMm / 1000);
    }
}
