package sillwright.store;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import sillwright.walk.Building;

/// Which buildings there are, and what they are called: every phone asks when it comes into signal. Only what arrived since the last time is looked through.
final class Shelves {
    /// @param place  the last entry that was looked at
    /// @param called the building's name
    private record Known(long place, Optional<String> called) {}

    private final Map<String, Known> titles = new HashMap<>();
    private TreeMap<String, Book.Shelf> all = new TreeMap<>();
    private long counted;

    /// Counted on from the last time: writers take turns, so that nothing arrives at a place that was passed.
    synchronized List<Book.Shelf> all(Ledger ledger) {
        long last = ledger.last();
        if (last > counted) {
            for (Book.Shelf more : ledger.shelves(counted, last))
                all.merge(more.building(), more, (a, b) -> new Book.Shelf(a.building(), a.entries() + b.entries(), Math.max(a.lastMs(), b.lastMs())));
            counted = last;
        }
        return List.copyOf(all.values());
    }

    /// The name that the fold gives; empty where nobody described the building yet.
    Optional<String> title(Ledger ledger, String building) {
        Known known;
        synchronized (this) { known = titles.get(building); }
        long last = ledger.last(building);
        boolean still = known != null && known.place <= last && (known.place == last || ledger.describing(building, known.place).isEmpty());
        Optional<String> called = still ? known.called : read(building, ledger.describing(building, 0));
        synchronized (this) { titles.put(building, new Known(last, called)); }
        return called;
    }

    private static Optional<String> read(String building, List<Line> describing) {
        Reading reading = new Reading(building);
        describing.forEach(reading::line);
        return reading.held().fold().building().map(Building::name);
    }
}
