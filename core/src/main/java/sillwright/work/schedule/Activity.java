package sillwright.work.schedule;

import java.util.List;

/// One job in the order of work.
///
/// @param amount minutes of work for one crew; days of waiting where it goes on by itself
/// @param itself whether it goes on by itself, weekends and all: drying
/// @param needs  what weather it needs while a crew is at it
/// @param after  those that come before it, all of them earlier in the list
public record Activity(int amount, boolean itself, Fit needs, List<Before> after) {
    public Activity {
        if (amount < 1) throw new IllegalArgumentException("an activity takes a minute at least, not " + amount);
        after = List.copyOf(after);
    }

    public static Activity work(int minutes, Fit needs, List<Before> after) { return new Activity(minutes, false, needs, after); }

    public static Activity waits(int days, List<Before> after) { return new Activity(days, true, Fit.ANY, after); }

    /// @param activity its place in the list
    /// @param nights   that must lie between its end and the start of this one: 0 where this may follow on the same day; a cure of one whole day is 2
    public record Before(int activity, int nights) {}

    /// What a day must be fit for, from the least asked to the most.
    public enum Fit {
        /// Under cover, or whatever the weather: fetching, marking.
        ANY,
        /// No heavy rain or storm in the hours of work.
        OUTDOORS,
        /// No rain in the hours of work: wood lies open.
        DRY,
        /// Dry, and warm enough for resins to set.
        WARM,
        /// Weather for paint.
        PAINT,
        /// Warm, and at a time of year in which days for paint follow: what is opened now can be closed before winter.
        OPENING;

        /// The step of weather that a day must reach at the least.
        Fit weather() { return this == OPENING ? WARM : this; }
    }
}
