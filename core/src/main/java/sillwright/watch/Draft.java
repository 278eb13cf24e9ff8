package sillwright.watch;

import java.util.List;

import sillwright.watch.WatchFindings.Check;

/// A check before its place in the round is settled.
///
/// @param aboveMm above grade: the higher comes first on a side
/// @param weight  what matters more is kept where the round grows too long
/// @param when    the rounds it belongs to
record Draft(Check check, double aboveMm, double weight, List<When> when) {
    enum When { SPRING, AUTUMN }

    static final List<When> BOTH = List.of(When.SPRING, When.AUTUMN);
    static final List<When> SPRING = List.of(When.SPRING);
    static final List<When> AUTUMN = List.of(When.AUTUMN);

    /// Weights, the greatest first: what may fall, what was repaired, the water that did it, what is wet, the common round.
    static final double DANGER = 100, REPAIR = 90, SOURCE = 80, WET = 70, FIRST_YEAR = 60, GUTTER = 55, COMMON = 40, SMALL = 25;
}
