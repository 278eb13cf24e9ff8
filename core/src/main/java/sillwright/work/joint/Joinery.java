package sillwright.work.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;

/// One joint between old wood and new, with its sizes, its fixings, and how much of it the load uses up.
///
/// @param sort       what it is
/// @param lengthMm   along the grain; 0 for a square joint
/// @param slope      along for one across; 0 where it does not slope
/// @param nibMm      how far each tip is cut square; 0 where it runs to nothing
/// @param throughMm  of the section, the way the joint goes through
/// @param wideMm     of the section, the other way
/// @param glueMm2    one glued face
/// @param buttMm2    the section: what a square joint would glue
/// @param efficiency share of the whole wood's strength that it keeps in the way it is used
/// @param fixings    where there are any
/// @param clamps     while the glue sets
/// @param strength   under the member's load, where that is known
/// @param basis      what it rests on
public record Joinery(Sort sort, double lengthMm, double slope, double nibMm, double throughMm, double wideMm, double glueMm2, double buttMm2, double efficiency, Optional<Fixings> fixings,
                      int clamps, Optional<Strength> strength, List<Basis> basis) {
    public Joinery { basis = List.copyOf(basis); }

    public enum Sort { BUTT, SCARF, HALF_LAP, INLAY, SISTER }

    /// What the load does to the joint.
    ///
    /// @param alongMPa   even stress along the grain; pressed less than nothing
    /// @param bentMPa    at the edge, from bending at the joint
    /// @param shearMPa   along the glue line
    /// @param squareMPa  square to the glue line; less than nothing where it is pressed shut
    /// @param shearMayMPa what wood may bear in shear there
    /// @param wholeUse   share of the whole wood's capacity that the load uses at the joint
    /// @param fixingsUse share of what its fixings bear sideways that the side force uses; 0 where none is asked
    /// @param use        the greatest: over the efficiency, of the glue line's shear, of the fixings
    /// @param governs    which of these that is
    public record Strength(double alongMPa, double bentMPa, double shearMPa, double squareMPa, double shearMayMPa, double wholeUse, double fixingsUse, double use, Governs governs) {}

    public enum Governs { WOOD, GLUE_LINE, FIXINGS }

    /// What comes upon a joint.
    ///
    /// @param alongN      along the grain; pressed less than nothing
    /// @param bendingNmm  at the joint, over the side it goes through
    /// @param sideN       across the grain
    /// @param wholeUse    share of the capacity of a whole section there that this uses
    /// @param shearMayMPa adjusted shear value of the wood
    public record Load(double alongN, double bendingNmm, double sideN, double wholeUse, double shearMayMPa) {}

    /// A part of a post's load that pushes it sideways at a joint: the two and a half per cent that bracing is commonly sized for. Source: common practice of bracing
    /// design (from memory).
    public static final double SIDE_SHARE = 0.025;
    /// Of a half lap only one shoulder is sure to bear. Own choice.
    static final double ONE_SHOULDER = 0.5;
    /// How much of a section each nib takes at a tip: an eighth, and a quarter of an inch at least. Common practice, no source.
    private static final double NIB_SHARE = 0.125, NIB_LEAST_MM = 6.35;
    private static final double CLAMP_EVERY_MM = 200;

    static final Basis GLUE = Basis.own("the glue line may bear no more shear than the wood's own design value");

    public static double nibMm(double throughMm) { return Math.max(NIB_LEAST_MM, NIB_SHARE * throughMm); }

    /// Length of a scarf from nib to nib.
    public static double scarfMm(double throughMm, double slope, double nibMm) { return slope * (throughMm - 2 * nibMm); }

    /// The share that a scarf keeps: by its slope, and, at a nib, of the wood that is left beside it. Pressed, nibs bear, and nothing is lost to them.
    public static double scarfKeeps(double throughMm, double slope, double nibMm, boolean pressed) {
        return Scarf.efficiency(slope) * (pressed ? 1 : (throughMm - nibMm) / throughMm);
    }

    /// @param pressed whether the load only presses it
    public static Joinery scarf(double throughMm, double wideMm, double slope, double nibMm, boolean pressed, Optional<Fixings> fixings, Optional<Load> load) {
        double length = scarfMm(throughMm, slope, nibMm), glue = wideMm * (throughMm - 2 * nibMm) * Scarf.areaRatio(slope), keeps = scarfKeeps(throughMm, slope, nibMm, pressed);
        Optional<Strength> strength = load.map(on -> {
            double area = throughMm * wideMm, along = on.alongN / area, bent = Math.abs(on.bendingNmm) / (wideMm * throughMm * throughMm / 6);
            double shear = Scarf.shearMPa(Math.abs(along) + bent, slope), square = Scarf.peelMPa(along + bent, slope), fix = fixings.filter(f -> on.sideN > 0 && f.lateralN() > 0).map(f -> on.sideN / f.lateralN()).orElse(0.0);
            return strength(along, bent, shear, square, on, on.wholeUse / keeps, shear / on.shearMayMPa, fix);
        });
        return new Joinery(Sort.SCARF, length, slope, nibMm, throughMm, wideMm, glue, throughMm * wideMm, keeps, fixings, clamps(length), strength, with(fixings, GLUE));
    }

    /// A halved joint, bolted; each half bears on the other's shoulder.
    public static Joinery halfLap(double throughMm, double wideMm, double lapMm, Fixings bolts, Optional<Load> load) {
        Optional<Strength> strength = load.map(on -> {
            double along = on.alongN / (throughMm * wideMm);
            return strength(along, 0, 0, 0, on, on.wholeUse / ONE_SHOULDER, 0, bolts.lateralN() > 0 ? on.sideN / bolts.lateralN() : 0);
        });
        return new Joinery(Sort.HALF_LAP, lapMm, 0, throughMm / 2, throughMm, wideMm, wideMm * lapMm + throughMm * wideMm, throughMm * wideMm, ONE_SHOULDER, Optional.of(bolts), clamps(lapMm), strength,
                with(Optional.of(bolts), Basis.own("a half lap is counted by one of its shoulders")));
    }

    /// A square joint: pressed it bears on its whole end; in anything else it has a quarter of the wood's strength at most.
    public static Joinery butt(double throughMm, double wideMm, boolean pressed, Optional<Fixings> fixings, Optional<Load> load) {
        double keeps = pressed ? 1 : Scarf.efficiency(0), area = throughMm * wideMm;
        Optional<Strength> strength = load.map(on -> strength(on.alongN / area, Math.abs(on.bendingNmm) / (wideMm * throughMm * throughMm / 6), 0, on.alongN / area, on, on.wholeUse / keeps, 0,
                fixings.filter(f -> on.sideN > 0 && f.lateralN() > 0).map(f -> on.sideN / f.lateralN()).orElse(0.0)));
        return new Joinery(Sort.BUTT, 0, 0, 0, throughMm, wideMm, area, area, keeps, fixings, 2, strength, with(fixings, Basis.read("Wood Handbook, FPL-GTR-190", "ch. 10: a glued end-grain butt at most 25 %")));
    }

    private static Strength strength(double along, double bent, double shear, double square, Load on, double wood, double glue, double fixings) {
        double use = Math.max(wood, Math.max(glue, fixings));
        return new Strength(along, bent, shear, square, on.shearMayMPa, on.wholeUse, fixings, use, use == wood ? Governs.WOOD : use == glue ? Governs.GLUE_LINE : Governs.FIXINGS);
    }

    private static int clamps(double lengthMm) { return (int) Math.max(2, 1 + Math.ceil(lengthMm / CLAMP_EVERY_MM)); }

    private static List<Basis> with(Optional<Fixings> fixings, Basis own) {
        List<Basis> all = new ArrayList<>(List.of(own));
        if (fixings.isPresent()) {
            all.add(Fixings.BASIS);
            all.addAll(Spacing.BASIS);
        }
        return all;
    }
}
