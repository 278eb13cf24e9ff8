package sillwright.desk.demo;

import module java.base;

import sillwright.walk.Body;
import sillwright.walk.Entry;

/// Somebody with a phone, who writes one entry after another. Ids, pauses and the unsteadiness of the hand come from a
/// seed, so that the same walk is always written the same.
final class Walker {
    private final String device;
    private final String author;
    private final RandomGenerator random;
    private final List<Entry> entries = new ArrayList<>();
    private long nowMs;

    /// @param seed for `java.util.Random`, whose numbers are the same on every machine
    Walker(String device, String author, Instant start, long seed) {
        this.device = device;
        this.author = author;
        this.random = new Random(seed);
        this.nowMs = start.toEpochMilli();
    }

    Entry write(Body body) {
        var entry = new Entry(id(), new Entry.Stamp(nowMs, 0), device, author, body);
        entries.add(entry);
        nowMs += random.nextInt(9_000, 26_000);
        return entry;
    }

    void amend(Entry entry, Body instead) { write(new Body.Amended(entry.id(), instead)); }

    Entry strike(Entry entry, String because) { return write(new Body.Struck(entry.id(), because)); }

    /// Moves on to the next side.
    void rest(Duration pause) { nowMs += pause.toMillis(); }

    Instant now() { return Instant.ofEpochMilli(nowMs); }

    RandomGenerator hand() { return random; }

    List<Entry> entries() { return List.copyOf(entries); }

    /// A UUID of version 7 (RFC 9562, from memory): 48 bits of milliseconds, then chance.
    private String id() {
        long high = nowMs << 16 | 0x7000 | random.nextInt(0x1000);
        long low = 0x8000_0000_0000_0000L | random.nextLong() >>> 2;
        return new UUID(high, low).toString();
    }
}
