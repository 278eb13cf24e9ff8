package sillwright.wood.strength;

import sillwright.measure.Unit;

/// What a reference design value is multiplied by for size, wet service, warmth and the way the piece lies. Each 1 where it does not apply.
public final class Factors {
    private Factors() {}

    /// Repetitive: three or more joists side by side, not more than 24 in apart, joined by a floor. Bending only.
    /// Source: *NDS* 4.3.9 (from memory).
    public static final double REPETITIVE = 1.15;

    /// CF in bending. Lumber by its named width and thickness; timbers deeper than 12 in by (12/d)^(1/9).
    ///
    /// Source: lumber, *NDS* Supplement tables 4A and 4B (read, secondary); timbers, 4.3.6.2 (from memory).
    static double sizeInBending(DesignValues wood, double widthMm, double depthMm) {
        double wide = Math.max(widthMm, depthMm);
        if (wood.use() != Use.LUMBER) return wide > Unit.INCH.toOwn(12) ? Math.pow(Unit.INCH.toOwn(12) / wide, 1.0 / 9) : 1;
        return lumberByWidth(wood, Use.namedInches(wide), Use.isFourThick(widthMm, depthMm));
    }

    /// CF in tension: lumber only, by its width as if it were 2 or 3 in thick.
    static double sizeInTension(DesignValues wood, double widthMm, double depthMm) {
        return wood.use() == Use.LUMBER ? lumberByWidth(wood, Use.namedInches(Math.max(widthMm, depthMm)), false) : 1;
    }

    private static double lumberByWidth(DesignValues wood, int named, boolean four) {
        if (wood.isSouthernPine()) return (named > 12 ? 0.9 : 1) * (four && named >= 8 ? 1.1 : 1);
        return switch (named) {
            case 4 -> 1.5;
            case 5 -> 1.4;
            case 6 -> 1.3;
            case 8 -> four ? 1.3 : 1.2;
            case 10 -> four ? 1.2 : 1.1;
            case 12 -> four ? 1.1 : 1.0;
            default -> four ? 1.0 : 0.9;
        };
    }

    /// CF along the grain: lumber only.
    ///
    /// Source: *NDS* Supplement tables 4A and 4B (read, secondary).
    static double sizeAlong(DesignValues wood, double widthMm, double depthMm) {
        if (wood.use() != Use.LUMBER) return 1;
        int named = Use.namedInches(Math.max(widthMm, depthMm));
        if (wood.isSouthernPine()) return named > 12 ? 0.9 : 1;
        return switch (named) {
            case 4 -> 1.15;
            case 5, 6 -> 1.1;
            case 8 -> 1.05;
            case 10, 12 -> 1.0;
            default -> 0.9;
        };
    }

    /// Cfu: bent over its lesser side, on the flat. Lumber gains; beams and stringers of the higher grades lose.
    ///
    /// Source: *NDS* Supplement tables 4A and 4D (from memory; lumber 2 and 3 in thick read in the code of a public program).
    static double onTheFlat(DesignValues wood, double widthMm, double depthMm) {
        if (wood.use() == Use.BEAM) return wood.grade() == Grade.SELECT_STRUCTURAL ? 0.86 : wood.grade() == Grade.NO1 ? 0.74 : 1;
        if (wood.use() == Use.POST) return 1;
        boolean four = Use.isFourThick(widthMm, depthMm);
        double wide = Math.max(widthMm, depthMm);
        if (wide < Unit.INCH.toOwn(3.25)) return 1;
        return switch (Use.namedInches(wide)) {
            case 4 -> four ? 1.0 : 1.1;
            case 5 -> four ? 1.05 : 1.1;
            case 6, 8 -> four ? 1.05 : 1.15;
            default -> four ? 1.1 : 1.2;
        };
    }

    /// CM: in use wetter than 19 % (timbers likewise).
    ///
    /// Source: *NDS* Supplement tables 4A and 4D (read, secondary); Southern Pine timbers, whose values serve wet as dry (from memory).
    record Wet(double bending, double tension, double shear, double across, double along, double elastic) {
        static final Wet DRY = new Wet(1, 1, 1, 1, 1, 1);

        /// @param bendingMPa Fb·CF
        /// @param alongMPa   Fc·CF
        static Wet of(DesignValues wood, double bendingMPa, double alongMPa) {
            if (wood.use() != Use.LUMBER) return wood.isSouthernPine() ? DRY : new Wet(1, 1, 1, 0.67, 0.91, 1);
            return new Wet(bendingMPa <= Unit.PSI.toOwn(1150) + 1e-9 ? 1 : 0.85, 1, 0.97, 0.67, alongMPa <= Unit.PSI.toOwn(750) + 1e-9 ? 1 : 0.8, 0.9);
        }
    }

    /// Ct: in use above 100 °F for long, as beneath a dark roof. Strength, and tension with stiffness.
    ///
    /// Source: *NDS* table 2.3.3 (read, secondary).
    ///
    /// @param tempC the wood at its warmest, up to 65 °C (150 °F)
    public record Warm(double strength, double tensionAndElastic) {
        public static Warm of(double tempC, boolean wet) {
            if (tempC <= 37.8 + 1e-9) return new Warm(1, 1);
            if (tempC <= 51.7 + 1e-9) return new Warm(wet ? 0.7 : 0.8, 0.9);
            return new Warm(wet ? 0.5 : 0.7, 0.9);
        }
    }
}
