package sillwright.store;

import java.util.List;

import sillwright.walk.Fault;

/// What the doctor found.
///
/// @param faults  of the book itself: the database, the lines, the pictures, the clocks
/// @param surveys of what was recorded: entries that the fold sets aside, readings off their member
public record Checkup(String book, int buildings, long entries, long photos, List<Fault> faults, List<Fault> surveys) {
    public Checkup {
        faults = List.copyOf(faults);
        surveys = List.copyOf(surveys);
    }

    /// True where the book itself is whole, whatever was written in it.
    public boolean sound() { return faults.stream().noneMatch(Fault::grave); }

    /// True where nothing at all was found.
    public boolean clean() { return faults.isEmpty() && surveys.isEmpty(); }
}
