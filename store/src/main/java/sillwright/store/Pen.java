package sillwright.store;

import java.time.InstantSource;
import java.util.random.RandomGenerator;

import sillwright.walk.Body;
import sillwright.walk.Entry;

/// Writes new entries into a book: gives each an id and a stamp later than all that this device wrote before, also
/// before it was last switched off, and later than what others wrote.
///
/// A stamp of another device more than a day ahead is not followed: one phone with a wrong year would take every other
/// along. An entry that amends or strikes such a one is stamped after it all the same.
public final class Pen {
    /// How far ahead of the wall's time another device's stamp is believed: a day covers every time zone. This program's own choice.
    static final long MOST_AHEAD_MS = 86_400_000;

    private final Book book;
    private final InstantSource wall;
    private final RandomGenerator random;
    private final String device;
    private final String author;
    private final HybridClock clock;

    Pen(Book book, InstantSource wall, RandomGenerator random, String device, String author) {
        this.book = book;
        this.wall = wall;
        this.random = random;
        this.device = device;
        this.author = author;
        this.clock = new HybridClock(wall);
    }

    /// Writes one entry; it is durable when this returns.
    public Entry write(String building, Body body) {
        Entry entry = entry(body);
        book.append(building, entry);
        return entry;
    }

    /// Says an earlier entry again, rightly.
    public Entry amend(String building, Entry earlier, Body instead) {
        clock.follow(earlier.stamp());
        return write(building, new Body.Amended(earlier.id(), instead));
    }

    /// Takes an earlier entry back.
    public Entry strike(String building, Entry earlier, String because) {
        clock.follow(earlier.stamp());
        return write(building, new Body.Struck(earlier.id(), because));
    }

    /// An entry that speaks of an earlier one, stamped after it; not yet in the book.
    public Entry after(Entry earlier, Body body) {
        clock.follow(earlier.stamp());
        return entry(body);
    }

    /// An entry with its id and stamp, not yet in the book.
    public Entry entry(Body body) {
        book.read(ledger -> {
            ledger.latest(device).ifPresent(clock::follow);
            ledger.latestUpTo(wall.millis() + MOST_AHEAD_MS).ifPresent(clock::follow);
            return ledger;
        });
        Entry.Stamp stamp = clock.next();
        String id;
        synchronized (random) { id = EntryIds.at(stamp.wallMs(), random); }
        return new Entry(id, stamp, device, author, body);
    }
}
