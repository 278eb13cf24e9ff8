package sillwright.watch;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.walk.Sign;
import sillwright.walk.Spot;

/// What to look at, and when; where each place is going; whether what was done has worked; what falls due, and what the years to come hold.
///
/// @param rounds   the rounds of a year, in the order they come, those that wait for a storm last
/// @param trends   places read more than once, and where they are going
/// @param verdicts whether each remedy did its work
/// @param due      what falls due, in order
/// @param ahead    ten years under each course; empty where no weather or no damage lets it be worked
public record WatchFindings(List<Round> rounds, List<Trend> trends, List<Verdict> verdicts, List<Due> due, Optional<LookAhead> ahead) {
    public WatchFindings {
        rounds = List.copyOf(rounds);
        trends = List.copyOf(trends);
        verdicts = List.copyOf(verdicts);
        due = List.copyOf(due);
    }

    /// Rounds alone.
    public WatchFindings(List<Round> rounds) { this(rounds, List.of(), List.of(), List.of(), Optional.empty()); }

    /// One walk round the building.
    ///
    /// @param id     `spring`
    /// @param first  the day it first falls due, from then on every year; empty where it waits for a storm
    /// @param why    what this time of the year is good for
    /// @param checks in the order one walks: side by side the same way round, on each side first what is seen standing back, from roof
    ///               to ground, then close up from left to right
    /// @param left   checks that were left for another round, so that this one can be walked
    public record Round(String id, String title, Optional<LocalDate> first, String why, List<Check> checks, int left, List<Basis> basis) {
        public Round {
            checks = List.copyOf(checks);
            basis = List.copyOf(basis);
        }

        public Round(String id, String title, LocalDate first, String why, List<Check> checks, List<Basis> basis) { this(id, title, Optional.of(first), why, checks, 0, basis); }

        public double minutes() { return checks.stream().mapToDouble(Check::minutes).sum(); }
    }

    /// One stop of a round: a place, and what is asked of it.
    ///
    /// @param side     id; empty for the whole building
    /// @param member   id, where it is on one
    /// @param words    what to do: `foot of porch post 3: meter, 6 in up; push an awl in beside the repair`
    /// @param last     what it was last time, in words; empty where it was never looked at
    /// @param expected what it should be now
    /// @param because  the sources, repairs or works it watches over; empty for the common round
    /// @param asks     each thing that is asked, one box to tick or one value to write
    /// @param minutes  about how long it takes
    public record Check(String side, Optional<String> member, String words, String last, String expected, String because, List<Ask> asks, double minutes) {
        public Check { asks = List.copyOf(asks); }

        public Check(String side, Optional<String> member, String words, String last, String expected, String because) {
            this(side, member, words, last, expected, because, List.of(new Ask(Ask.Kind.LOOK, words, last, expected, Optional.empty(), Optional.empty())), 2);
        }

        /// The place alone, without what is asked.
        public String place() {
            int end = words.indexOf(": ");
            return end < 0 ? "" : words.substring(0, end);
        }
    }

    /// One thing asked at a stop.
    ///
    /// @param kind     how it is answered: a meter's percent, a probe's depth, seen or not seen, done or not
    /// @param words    `meter, 6 in up`
    /// @param last     empty where never read
    /// @param expected what it should be now
    /// @param spot     where the meter or the probe goes
    /// @param sign     the sign that a look answers, where the closed list has it: recorded as seen, or looked for and not seen
    public record Ask(Kind kind, String words, String last, String expected, Optional<Spot> spot, Optional<Sign> sign) {
        public enum Kind { METER, PROBE, LOOK, DO }
    }
}
