package sillwright.work;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.wood.Damage;

/// One damage and what is done about it.
///
/// @param id           `R1`, `R2`, ... the first to be done first
/// @param damage       what is wrong
/// @param treatment    what is done
/// @param reasons      why this one, in words a carpenter would use
/// @param alternatives the others, from least wood lost to most, each with what speaks against it
/// @param urgent       true where it cannot wait
/// @param waterFirst   ids of the water sources to stop before this is begun; not empty where its water still runs
/// @param steps        how it is made, in order, with dimensions
/// @param pieces       new wood
/// @param needs        what it uses up
/// @param cautions     said beside it
/// @param basis        what it rests on
public record Repair(String id, Damage damage, Treatment treatment, List<String> reasons, List<Alternative> alternatives, boolean urgent,
                     List<String> waterFirst, List<String> steps, List<Piece> pieces, List<Need> needs, List<String> cautions, List<Basis> basis) {
    public Repair {
        reasons = List.copyOf(reasons);
        alternatives = List.copyOf(alternatives);
        waterFirst = List.copyOf(waterFirst);
        steps = List.copyOf(steps);
        pieces = List.copyOf(pieces);
        needs = List.copyOf(needs);
        cautions = List.copyOf(cautions);
        basis = List.copyOf(basis);
    }

    /// A treatment that was not chosen.
    ///
    /// @param lostMl  original wood it would take away
    /// @param against the number or the rule that speaks against it
    public record Alternative(Treatment treatment, double lostMl, String against) {}

    /// A piece of new wood, net.
    ///
    /// @param label   `R3 new foot`
    /// @param species of the member it joins, or the nearest that serves
    public record Piece(String label, String repair, String species, double widthMm, double depthMm, double lengthMm) {}

    /// Something used up: so much of a material.
    ///
    /// @param amount in the material's own measure: mL, mm², or a count
    public record Need(Material material, double amount) {}

    public double woodLostMl() { return Treatment.woodLostMl(treatment, damage.member().sectionMm2(), damage.member().lengthMm()); }
}
