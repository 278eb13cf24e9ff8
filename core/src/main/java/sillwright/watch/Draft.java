package sillwright.watch;

import java.util.List;
import java.util.Optional;

import sillwright.walk.Sign;
import sillwright.walk.Spot;
import sillwright.watch.WatchFindings.Ask;

/// One thing to be asked, before it has found its stop and its round.
///
/// @param stop    what is asked at one place has one key: a member's id, a roof edge, a side
/// @param title   how the stop is called: `foot of porch post 3`; empty where the words tell it
/// @param side    id; empty for the whole building
/// @param back    true for what is looked at standing back from the wall
/// @param leftMm  from the side's left end: close up one walks from left to right
/// @param aboveMm above grade
/// @param weight  what matters more is kept where the round grows too long
/// @param minutes it takes
/// @param when    the rounds it belongs to
record Draft(String stop, String title, String side, Optional<String> member, boolean back, double leftMm, double aboveMm, Ask ask, String because,
             double weight, double minutes, List<When> when) {
    enum When { SPRING, AUTUMN, LEAVES, STORM }

    static final List<When> BOTH = List.of(When.SPRING, When.AUTUMN), SPRING = List.of(When.SPRING), AUTUMN = List.of(When.AUTUMN);
    static final List<When> WATER = List.of(When.SPRING, When.AUTUMN, When.STORM), GUTTERS = List.of(When.SPRING, When.AUTUMN, When.LEAVES);
    static final List<When> STORMS = List.of(When.STORM), SPRING_AND_STORM = List.of(When.SPRING, When.STORM);

    /// Weights, the greatest first: what may fall, what was repaired, what a verdict waits for, the water that did it, what is wet, the common round.
    static final double DANGER = 100, REPAIR = 90, VERDICT = 85, SOURCE = 80, WET = 70, FIRST_YEAR = 60, GUTTER = 55, COMMON = 40, SMALL = 25;

    static Ask look(String words, String last, String expected) { return new Ask(Ask.Kind.LOOK, words, last, expected, Optional.empty(), Optional.empty()); }

    static Ask look(String words, String expected, Sign sign) { return new Ask(Ask.Kind.LOOK, words, "", expected, Optional.empty(), Optional.of(sign)); }

    static Ask task(String words, String expected) { return new Ask(Ask.Kind.DO, words, "", expected, Optional.empty(), Optional.empty()); }

    static Ask meter(String words, String last, String expected, Spot spot) { return new Ask(Ask.Kind.METER, words, last, expected, Optional.of(spot), Optional.empty()); }

    static Ask probe(String words, String last, String expected, Optional<Spot> spot) { return new Ask(Ask.Kind.PROBE, words, last, expected, spot, Optional.empty()); }
}
