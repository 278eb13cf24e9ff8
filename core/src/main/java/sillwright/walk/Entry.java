package sillwright.walk;

import java.util.Comparator;

import sillwright.measure.Refused;

/// One line of the field book: never changed once written.
///
/// @param id     a UUID of version 7, lower case
/// @param stamp  when it was written
/// @param device the phone or desk it was written on
/// @param author who wrote it
/// @param body   what it says
public record Entry(String id, Stamp stamp, String device, String author, Body body) {
    public Entry {
        if (id.isEmpty()) throw new Refused("id", "is empty", "give every entry an id of its own, a UUID of version 7");
    }

    /// A hybrid logical clock: the wall clock in milliseconds since 1970 UTC, and a count that orders what one
    /// millisecond, or a clock that ran back, would leave unordered.
    public record Stamp(long wallMs, int tick) implements Comparable<Stamp> {
        public Stamp {
            if (wallMs < 0 || tick < 0) throw new Refused("at", "lies before 1970", "set the clock of the device");
        }

        @Override
        public int compareTo(Stamp other) {
            return wallMs != other.wallMs ? Long.compare(wallMs, other.wallMs) : Integer.compare(tick, other.tick);
        }
    }

    /// The order of the fold: the clock, then the id. The same for every order of arrival.
    public static final Comparator<Entry> ORDER = Comparator.comparing(Entry::stamp).thenComparing(Entry::id);
}
