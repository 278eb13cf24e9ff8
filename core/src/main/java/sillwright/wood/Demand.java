package sillwright.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Unit;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.wood.strength.Duration;
import sillwright.wood.strength.Tributary;
import sillwright.wood.strength.UnitLoads;

/// What a member is asked to bear: N on a post or a base, N for each mm along a beam or sill. Several combinations, each with how long it stays.
///
/// @param loads at least one; the worst of them counts
/// @param said  where it comes from, in words
/// @param basis what it rests on
public record Demand(List<Tributary.Load> loads, String said, List<Basis> basis) {
    public Demand {
        loads = List.copyOf(loads);
        basis = List.copyOf(basis);
        if (loads.isEmpty()) throw new IllegalArgumentException("no load");
    }

    /// A load that somebody worked out and typed.
    public static Demand typed(double load, Duration duration) {
        return new Demand(List.of(new Tributary.Load("as typed", load, duration)), "load as typed", List.of());
    }

    /// The sizes that tell how much roof and floor a member carries, mm.
    ///
    /// @param bayMm      from post to post
    /// @param deepMm     of the porch, from the wall to its front beam
    /// @param overhangMm of its roof beyond the beam
    /// @param houseMm    span of the house's roof and floors that come down on a sill
    /// @param wallMm     height of wall on a sill
    /// @param spacingMm  from joist to joist
    public record Layout(double bayMm, double deepMm, double overhangMm, double houseMm, double wallMm, double spacingMm) {
        /// A small house, where nobody measured: this program's own choice, on the larger side.
        public static final Layout USUAL = new Layout(ft(8), ft(8), ft(1), ft(24), ft(18), Unit.INCH.toOwn(16));

        private static double ft(double feet) { return Unit.FOOT.toOwn(feet); }

        public Layout withBay(double bayMm, double deepMm) { return new Layout(bayMm, deepMm, overhangMm, houseMm, wallMm, spacingMm); }
    }

    /// A beam that starts higher than this above grade carries a roof, a lower one a floor, mm.
    private static final double ROOF_ABOVE_MM = 1800;

    /// What a member of its kind usually carries; empty for one that carries nothing that can be told from its kind.
    public static Optional<Demand> usual(Member member, Layout layout, UnitLoads on) {
        Optional<Tributary> area = switch (member.kind()) {
            case POST, COLUMN, COLUMN_BASE, PLINTH -> Optional.of(Tributary.post(layout.bayMm, layout.bayMm, layout.deepMm, layout.overhangMm, true, standsOnGround(member)));
            case BEAM -> Optional.of(member.above().own() > ROOF_ABOVE_MM ? Tributary.perMm(layout.deepMm + 2 * layout.overhangMm, 0, 0) : Tributary.perMm(0, layout.deepMm, 0));
            case JOIST, STRINGER -> Optional.of(Tributary.spaced(layout.spacingMm));
            case SILL -> Optional.of(Tributary.perMm(layout.houseMm, layout.houseMm / 2, layout.wallMm));
            case WINDOW_SILL, THRESHOLD, FASCIA, SOFFIT, FRIEZE, RAKE_BOARD, CORNER_BOARD, CASING, BRICKMOULD, HEAD_CASING, CLAPBOARD, SHINGLE, WATER_TABLE,
                 SKIRT_BOARD, TREAD, RAIL, BALUSTER, NEWEL, FLOORBOARD, BRACKET, SASH, DOOR, SHUTTER, OTHER -> Optional.empty();
        };
        return area.map(carried -> {
            List<Basis> basis = new ArrayList<>(List.of(Basis.own("the roof, floor and wall that a " + Choice.said(member.kind()) + " carries, where nobody measured them")));
            basis.addAll(UnitLoads.basis());
            return new Demand(carried.loads(on), "load assumed from the usual roof and floor over a " + Choice.said(member.kind()), basis);
        });
    }

    /// A post down to the ground carries the floor too.
    private static boolean standsOnGround(Member member) {
        return switch (member.contact()) {
            case GROUND, MASONRY, CONCRETE -> true;
            case NONE, PORCH_FLOOR -> false;
        };
    }
}
