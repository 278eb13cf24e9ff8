package sillwright.walk;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// What somebody settled about a recommendation: agreed to it, took another in its place, or would not have it; and why.
///
/// It names a place and not a damage, for damages are numbered anew with every reading: a later one on the same place stands in place of an earlier.
///
/// @param about   the soft stretch of a member, or the source of water
/// @param verdict what was settled
/// @param taken   what is taken, or with [Verdict#REFUSED] what is refused: the word of a treatment or of a remedy, as the findings write it
/// @param by      who settled it
/// @param because why, in free words; empty only where the recommendation was agreed to
public record Decision(About about, Verdict verdict, String taken, By by, String because) implements Body {
    public Decision {
        if (taken.isBlank()) throw new Refused("taken", "is empty", "name what is taken by its word in the findings, such as dutchman");
        if (because.isBlank() && verdict != Verdict.ACCEPTED) throw new Refused("because", "gives no reason", "write in a few words why the recommendation was not taken");
    }

    /// What is decided about.
    public sealed interface About {
        /// A soft stretch of a member: the one that the station lies in.
        ///
        /// @param along the station, from the member's start
        record Wood(String member, Quantity along) implements About {
            public Wood {
                if (member.isEmpty()) throw new Refused("member", "is empty", "name the member");
                Measured.notNegative("along", along);
            }
        }

        /// A source of water.
        ///
        /// @param source its word, such as `gutter-clogged`
        /// @param side   where
        /// @param place  nearer, as the findings name it; empty for the whole side
        record Water(String source, String side, String place) implements About {
            public Water {
                if (side.isEmpty()) throw new Refused("side", "is empty", "name the side");
            }
        }

        /// Whether a later decision about the one stands in place of an earlier about the other: stations count as one place within 6 in, as readings of a meter do.
        default boolean same(About other) {
            return switch (this) {
                case Wood(var member, var along) -> other instanceof Wood(var its, var there) && member.equals(its) && Math.abs(along.own() - there.own()) <= Survey.ONE_PLACE_MM + 1e-6;
                case Water _ -> equals(other);
            };
        }
    }

    public enum Verdict {
        /// The recommendation is agreed to.
        ACCEPTED,
        /// Another is taken in place of the one recommended.
        OVERRULED,
        /// This one is not to be done; the next that would hold is recommended.
        REFUSED
    }

    /// Who answers for it.
    public enum By { PRACTITIONER, OWNER, ENGINEER, REVIEW_BOARD }

    /// `chosen by the owner in place of scarf splice 1:8, because the old end is to stay`.
    ///
    /// @param said  what was taken or refused, as it is said
    /// @param other what was recommended, as it is said
    public String words(String said, String other) {
        return switch (verdict) {
            case ACCEPTED -> "agreed to by the " + Choice.said(by) + (because.isBlank() ? "" : ": " + because);
            case OVERRULED -> "chosen by the " + Choice.said(by) + (said.equals(other) ? ", and it is what is recommended now" : " in place of " + other) + ", because " + because;
            case REFUSED -> said + " was refused by the " + Choice.said(by) + ", because " + because;
        };
    }
}
