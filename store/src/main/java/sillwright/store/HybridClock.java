package sillwright.store;

import java.time.InstantSource;

import sillwright.walk.Entry.Stamp;

/// A hybrid logical clock: the wall's time where that is later than all it has seen, else one tick past it. So what is
/// written after something is also stamped after it, whatever the clocks of the devices show.
///
/// Source: Kulkarni, Demirbas, Madappa, Avva, Leone, *Logical Physical Clocks*, 2014 (from memory).
final class HybridClock {
    private final InstantSource wall;
    private Stamp last = new Stamp(0, 0);

    HybridClock(InstantSource wall) { this.wall = wall; }

    /// Never stamps at or before this again.
    synchronized void follow(Stamp seen) {
        if (seen.compareTo(last) > 0) last = seen;
    }

    /// A stamp later than every one before.
    synchronized Stamp next() {
        long now = Math.max(0, wall.millis());
        if (now > last.wallMs()) last = new Stamp(now, 0);
        else if (last.tick() < Integer.MAX_VALUE) last = new Stamp(last.wallMs(), last.tick() + 1);
        else last = new Stamp(last.wallMs() + 1, 0);
        return last;
    }
}
