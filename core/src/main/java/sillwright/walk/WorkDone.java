package sillwright.walk;

import java.time.LocalDate;
import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// Work that was done: a source of water stopped, a repair made, a coat put on, a step of the order of work finished.
///
/// From that day on the wood that was taken out speaks no more for the condition of the member, and what the work was
/// against is looked at anew: see [Survey#probesOn], [Survey#moisturesOn].
///
/// @param done    what sort of work
/// @param on      the day it was finished
/// @param side    where
/// @param member  on which member, where it is on one; a repair always is
/// @param from    the stretch of the member it reaches over, from its start, mm; the whole member where left out
/// @param to      where that stretch ends, mm
/// @param against the source of water it stops, by its word: `gutter-clogged`
/// @param place   nearer than the side, as the findings name it: `main eave`; empty for the whole side
/// @param step    the step of the order of work that it finishes, as the plan named it
/// @param coat    the coat that was put on
/// @param hours   people's hours it took
/// @param cost    what it cost, in the money of the price book
/// @param words   anything more, in free words
public record WorkDone(Done done, LocalDate on, String side, Optional<String> member, Optional<Quantity> from, Optional<Quantity> to,
                       Optional<String> against, String place, Optional<String> step, Optional<Coating> coat, Optional<Double> hours,
                       Optional<Double> cost, String words) implements Body {
    public WorkDone {
        if (side.isEmpty()) throw new Refused("side", "is empty", "name the side it was done on");
        if (on.getYear() < 1900 || on.getYear() > 2200) throw new Refused("on", "'{}' is not a day this can be used for", "write the day it was finished, such as 2026-06-12", on.toString());
        if (done == Done.STOP_WATER && against.isEmpty())
            throw new Refused("against", "does not say which water was stopped", "name the source, such as gutter-clogged");
        if (done.onWood() && member.isEmpty()) throw new Refused("member", "does not say which piece was repaired", "name the member");
        Measured.notNegative("from", from);
        Measured.notNegative("to", to);
        if ((from.isPresent() || to.isPresent()) && member.isEmpty())
            throw new Refused("from", "measures along a member, and none is named", "name the member, or leave from and to out");
        if (from.isPresent() && to.isPresent() && !(from.get().own() < to.get().own()))
            throw new Refused("to", "{} is not further along than {}", "change the two about", to.get(), from.get());
        hours.ifPresent(value -> notNegative("hours", value));
        cost.ifPresent(value -> notNegative("cost", value));
    }

    private static void notNegative(String field, double value) {
        if (!(value >= 0 && Double.isFinite(value))) throw new Refused(field, "{} is less than nothing", "write it again, or leave it out", value);
    }

    /// What sort of work, in the order that the trade does it.
    public enum Done {
        SHORE, STOP_WATER, CLEAN, DRY, RECOAT, FILL, CONSOLIDATE, DUTCHMAN, BUILD_UP, BUTT_SPLICE, HALF_LAP, SCARF_SPLICE, REPLACE, OTHER;

        /// Whether it is a repair of one piece of wood.
        public boolean onWood() {
            return switch (this) {
                case RECOAT, FILL, CONSOLIDATE, DUTCHMAN, BUILD_UP, BUTT_SPLICE, HALF_LAP, SCARF_SPLICE, REPLACE -> true;
                case SHORE, STOP_WATER, CLEAN, DRY, OTHER -> false;
            };
        }

        /// Whether the soft wood within its stretch is gone or made hard, so that what was probed before tells of it no more.
        public boolean endsTheDamage() {
            return switch (this) {
                case CONSOLIDATE, DUTCHMAN, BUILD_UP, BUTT_SPLICE, HALF_LAP, SCARF_SPLICE, REPLACE -> true;
                case SHORE, STOP_WATER, CLEAN, DRY, RECOAT, FILL, OTHER -> false;
            };
        }
    }

    /// The record of a coat.
    ///
    /// @param film     what sort
    /// @param primer   coats of primer
    /// @param coats    coats over it
    /// @param backs    whether backs and hidden faces were primed
    /// @param ends     whether the end grain was sealed
    /// @param moisture of the wood when it was coated, a fraction
    /// @param air      temperature, °C
    /// @param humidity of the air, a fraction
    public record Coating(Film film, int primer, int coats, boolean backs, boolean ends, Optional<Quantity> moisture, Optional<Quantity> air,
                          Optional<Quantity> humidity) {
        public Coating {
            if (primer < 0 || primer > 9) throw new Refused("primer", "{} is not a number of coats", "write 0 to 9", primer);
            if (coats < 0 || coats > 9 || primer + coats == 0) throw new Refused("coats", "{} is not a number of coats", "write 1 to 9", coats);
            moisture.ifPresent(value -> {
                if (!(value.own() >= 0 && value.own() <= 1.5)) throw new Refused("moisture", "{} is not a moisture content", "write what the meter showed, such as 14%", value);
            });
            humidity.ifPresent(value -> {
                if (!(value.own() >= 0 && value.own() <= 1)) throw new Refused("humidity", "{} is not a relative humidity", "write 0% to 100%", value);
            });
        }
    }

    /// What a coat is made of.
    public enum Film { OIL_PAINT, WATER_PAINT, SOLID_STAIN, STAIN, OIL, LIMEWASH, OTHER }

    /// Whether it reaches a point of a member.
    public boolean reaches(String other, double alongMm) {
        return member.filter(other::equals).isPresent() && alongMm >= from.map(Quantity::own).orElse(0.0) - 1e-6
                && alongMm <= to.map(Quantity::own).orElse(Double.MAX_VALUE) + 1e-6;
    }

    /// `scarf splice`, `water stopped`
    public String said() {
        return switch (done) {
            case SHORE -> "shored";
            case STOP_WATER -> "water stopped";
            case CLEAN -> "cleaned";
            case DRY -> "left to dry";
            case RECOAT -> "recoated";
            case FILL -> "filled";
            case CONSOLIDATE -> "consolidated";
            case REPLACE -> "replaced in kind";
            case DUTCHMAN, BUILD_UP, BUTT_SPLICE, HALF_LAP, SCARF_SPLICE -> Choice.said(done);
            case OTHER -> words.isEmpty() ? "other work" : words;
        };
    }
}
