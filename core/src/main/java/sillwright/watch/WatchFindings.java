package sillwright.watch;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;

/// What to look at, and when.
///
/// @param rounds the rounds of a year, in the order they come
public record WatchFindings(List<Round> rounds) {
    public WatchFindings { rounds = List.copyOf(rounds); }

    /// One walk round the building.
    ///
    /// @param id     `spring`
    /// @param first  the day it first falls due; it comes again every year
    /// @param why    what this time of the year is good for
    /// @param checks in the order one walks: side by side, roof to ground
    public record Round(String id, String title, LocalDate first, String why, List<Check> checks, List<Basis> basis) {
        public Round {
            checks = List.copyOf(checks);
            basis = List.copyOf(basis);
        }
    }

    /// One thing to look at.
    ///
    /// @param side     id; empty for the whole building
    /// @param member   id, where it is on one
    /// @param words    what to do: `meter the foot of porch post 3, 6 in up`
    /// @param last     what it was last time, in words; empty where it was never looked at
    /// @param expected what it should be now
    /// @param because  the source or repair it watches over, by id; empty for the common round
    public record Check(String side, Optional<String> member, String words, String last, String expected, String because) {}
}
