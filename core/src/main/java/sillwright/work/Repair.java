package sillwright.work;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.wood.Damage;
import sillwright.work.stock.Quality;

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
/// @param comparison   the treatments side by side
/// @param design       how it is made, in numbers
/// @param ruling       what somebody settled about it
public record Repair(String id, Damage damage, Treatment treatment, List<String> reasons, List<Alternative> alternatives, boolean urgent,
                     List<String> waterFirst, List<String> steps, List<Piece> pieces, List<Need> needs, List<String> cautions, List<Basis> basis,
                     Comparison comparison, Design design, Optional<Ruling> ruling) {
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

    /// Neither compared nor designed.
    public Repair(String id, Damage damage, Treatment treatment, List<String> reasons, List<Alternative> alternatives, boolean urgent, List<String> waterFirst, List<String> steps,
                  List<Piece> pieces, List<Need> needs, List<String> cautions, List<Basis> basis) {
        this(id, damage, treatment, reasons, alternatives, urgent, waterFirst, steps, pieces, needs, cautions, basis, Comparison.NONE, Design.NONE, Optional.empty());
    }

    /// The same repair under its number, its pieces named by it.
    Repair numbered(String number) {
        List<Piece> named = pieces.stream().map(piece -> piece.under(number)).toList();
        return new Repair(number, damage, treatment, reasons, alternatives, urgent, waterFirst, steps, named, needs, cautions, basis, comparison, design, ruling);
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
    /// @param quality asked of its stock
    /// @param set     name of the pieces it is sawn beside from one board, so that the grain runs on; empty where paint hides it
    public record Piece(String label, String repair, String species, double widthMm, double depthMm, double lengthMm, Quality quality, String set) {
        public Piece(String label, String repair, String species, double widthMm, double depthMm, double lengthMm) { this(label, repair, species, widthMm, depthMm, lengthMm, Quality.FINISH, ""); }

        private Piece under(String number) { return new Piece(number + " " + label.strip(), number, species, widthMm, depthMm, lengthMm, quality, set); }
    }

    /// Something used up: so much of a material.
    ///
    /// @param amount in the material's own measure: mL, mm², or a count
    /// @param size   as it is asked for, `#8 × 2 in`; empty where the material has no sizes
    public record Need(Material material, double amount, String size) {
        Need with(Need other) { return new Need(material, amount + other.amount, size); }

        public Need(Material material, double amount) { this(material, amount, ""); }

        /// `stainless screw #8 × 2 in`
        public String item() { return size.isEmpty() ? material.words() : material.words() + " " + size; }
    }

    public double woodLostMl() { return Treatment.woodLostMl(treatment, damage.member().sectionMm2(), damage.member().lengthMm()); }
}
