package sillwright.work.schedule;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import sillwright.measure.Words;

/// An order of work on the calendar.
///
/// @param slots      of each activity, in the year whose end is the one at the confidence
/// @param stints     who works on what on which day of that year, in order
/// @param confidence that the work is done by `finish`, a fraction
/// @param finish     the last day at that confidence
/// @param middle     the last day in half of the years
/// @param bound      no order ends before this day at that confidence
/// @param years      of generated weather; 1 where no weather is known
/// @param wetMonth   what a wet month does, where weather is known
public record Timetable(List<Slot> slots, List<Stint> stints, double confidence, LocalDate finish, LocalDate middle, LocalDate bound, int years, Optional<Wet> wetMonth) {
    public Timetable {
        slots = List.copyOf(slots);
        stints = List.copyOf(stints);
    }

    /// @param first     day of it
    /// @param last      day of it, inclusive
    /// @param floatDays it may end so many days later, by what comes after it alone, and the end still holds
    public record Slot(LocalDate first, LocalDate last, int floatDays) {}

    /// A stretch of work of one crew on one day.
    ///
    /// @param crew     0 for the first
    /// @param activity its place in the list
    public record Stint(LocalDate day, int crew, int activity, int minutes) {}

    /// A month in which every second fit day is lost.
    public record Wet(int month, LocalDate finish) {}

    public boolean proven() { return !finish.isAfter(bound); }

    public long gapDays() { return Math.max(0, finish.toEpochDay() - bound.toEpochDay()); }

    /// What is known of the end, in a sentence.
    public String words() {
        String sure = years > 1 ? "In " + Math.round(100 * confidence) + " of 100 generated years all is done by " + Words.day(finish) + ", in half of them by " + Words.day(middle) + ". "
                : "All is done by " + Words.day(finish) + " if every day is dry and warm: no weather is known here. ";
        return sure + (proven() ? "No order of work ends earlier." : "No order of work ends before " + Words.day(bound) + ", so at most " + gapDays() + (gapDays() == 1 ? " day" : " days") + " could be saved.")
                + wetMonth.map(wet -> " Where every second fit day of " + Month.of(wet.month()).getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " is lost, the end moves to " + Words.day(wet.finish()) + ".").orElse("");
    }
}
