package sillwright.wood.strength;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Refused;
import sillwright.measure.Words;

/// What a graded piece may be stressed to before any factor: ten years of load, dry, MPa.
///
/// @param group      the group of the tables, `douglas-fir-larch`; empty where several stand together
/// @param use        what the size is graded as
/// @param bendingMPa Fb, with the size of Southern Pine lumber already in it
/// @param tensionMPa Ft
/// @param shearMPa   Fv
/// @param acrossMPa  Fc⊥, bearing square to the grain
/// @param alongMPa   Fc, along the grain
/// @param elasticMPa E
/// @param leastElasticMPa Emin, for buckling
/// @param basis      where from
/// @param cautions   where another stood in, and why that is the careful side
public record DesignValues(String group, Use use, Grade grade, double bendingMPa, double tensionMPa, double shearMPa, double acrossMPa, double alongMPa,
                           double elasticMPa, double leastElasticMPa, List<Basis> basis, List<String> cautions) {
    public DesignValues {
        basis = List.copyOf(basis);
        cautions = List.copyOf(cautions);
    }

    /// Of a species of the Wood Handbook, or of a group of the design tables, by the size first sawn.
    ///
    /// A species without values, or with none for its size, takes the least of all the wood listed for that use and grade, and no more than its
    /// own lumber: on the careful side, and it says so.
    ///
    /// @throws Refused with the nearest names where neither table has the wood, and for a timber of No.3, which has no design value
    public static DesignValues of(String wood, Grade grade, double widthMm, double depthMm) {
        Use use = Use.of(widthMm, depthMm);
        int named = Use.namedInches(Math.max(widthMm, depthMm));
        if (use != Use.LUMBER && grade == Grade.NO3)
            throw new Refused("grade", "timbers of No.3 have no design value", "have it graded, use no2 if a grader would pass it, or shore it and ask a licensed engineer");
        return DesignTable.of(wood).values(wood, use, grade, named);
    }

    /// For wood whose name is in no table: the least of the species whose first word is a word of the name, or where there are none of all wood listed.
    public static DesignValues orCareful(String wood, Grade grade, double widthMm, double depthMm) {
        if (DesignTable.knows(wood)) return of(wood, grade, widthMm, depthMm);
        List<DesignValues> kin = new ArrayList<>();
        for (String species : DesignTable.kin(wood)) kin.add(of(species, grade, widthMm, depthMm));
        String caution = "the table has no " + (wood.isEmpty() ? "wood without a name" : wood) + ": the least of "
                + (kin.isEmpty() ? "all wood listed" : "the woods that share its name") + " stands in" + near(wood);
        if (kin.isEmpty()) kin.add(DesignTable.weakest(Use.of(widthMm, depthMm), grade, Use.namedInches(Math.max(widthMm, depthMm))));
        return least("", kin, caution);
    }

    private static String near(String wood) {
        List<String> near = Words.near(wood, sillwright.walk.Species.all().keySet());
        return wood.isEmpty() || near.isEmpty() ? "" : " (near that name are " + Words.list(near) + ")";
    }

    /// For wood whose name is in no table the least of the species that share its name, as [#orCareful] has it.
    ///
    /// @throws Refused as [#of] does, where no wood shares its name
    public static DesignValues orKin(String wood, Grade grade, double widthMm, double depthMm) {
        return DesignTable.kin(wood).isEmpty() ? of(wood, grade, widthMm, depthMm) : orCareful(wood, grade, widthMm, depthMm);
    }

    /// The least of each value; where there is but one, that one with a caution.
    static DesignValues least(String group, List<DesignValues> several, String caution) {
        DesignValues first = several.getFirst();
        double fb = first.bendingMPa, ft = first.tensionMPa, fv = first.shearMPa, fcp = first.acrossMPa, fc = first.alongMPa, e = first.elasticMPa, emin = first.leastElasticMPa;
        List<Basis> basis = new ArrayList<>();
        for (DesignValues one : several) {
            fb = Math.min(fb, one.bendingMPa);
            ft = Math.min(ft, one.tensionMPa);
            fv = Math.min(fv, one.shearMPa);
            fcp = Math.min(fcp, one.acrossMPa);
            fc = Math.min(fc, one.alongMPa);
            e = Math.min(e, one.elasticMPa);
            emin = Math.min(emin, one.leastElasticMPa);
        }
        basis.add(Basis.own(Words.sentence(caution)));
        if (several.size() == 1) basis.addAll(first.basis);
        else basis.add(Basis.memory("NDS Supplement 2018", "tables 4A, 4B and 4D as this program holds them, some read and some not: the least of each value among "
                + Words.count(several.size(), "row")));
        return new DesignValues(group, first.use, first.grade, fb, ft, fv, fcp, fc, e, emin, basis, List.of(caution));
    }

    /// Southern Pine: its lumber goes by width and its timbers serve wet as dry.
    boolean isSouthernPine() { return group.equals("southern-pine"); }
}
