package sillwright.walk;

import sillwright.measure.Refused;

/// What an entry says. A thing described twice stands as described last.
public sealed interface Body permits Building, Side, Member, ProbeReading, MoistureReading, Sighting, Photo, WorkDone, OpenChecks, Profile, Decision, Body.Amended, Body.Struck {
    /// Says an earlier entry again, rightly.
    ///
    /// @param entry   the id of the entry that is amended
    /// @param instead what it should say; of the same kind as what it said
    record Amended(String entry, Body instead) implements Body {
        public Amended {
            if (instead instanceof Amended || instead instanceof Struck)
                throw new Refused("instead", "an amendment cannot be amended in place", "amend the first entry again, or strike the amendment");
        }
    }

    /// Takes back an earlier entry; striking a strike restores it.
    ///
    /// @param entry   the id of the entry that is struck
    /// @param because why, in free words
    record Struck(String entry, String because) implements Body {}
}
