package sillwright.page;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Semaphore;
import java.util.function.Function;

import sillwright.Settings;
import sillwright.measure.Units;
import sillwright.store.Book;
import sillwright.walk.Survey;

/// The buildings that lie open; the one that nobody looked at for longest is put away when there are too many.
final class Desks {
    private static final int MOST = 4;
    /// Roads walked at one time, of whatever buildings: more would only share the processors, and each needs its memory. Own choice.
    private static final int ROADS = 4;

    private final Book book;
    private final Function<Survey, Settings> settings;
    private final Semaphore roads = new Semaphore(ROADS, true);
    private final Map<String, Desk> open = new LinkedHashMap<>(8, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Desk> eldest) { return size() > MOST; }
    };

    Desks(Book book, Function<Survey, Settings> settings) {
        this.book = book;
        this.settings = settings;
    }

    Book book() { return book; }

    synchronized Desk of(String building) { return open.computeIfAbsent(building, _ -> new Desk(book, building, settings, roads)); }

    /// The same building told in other units than it was measured in: a road of its own, walked only for those who ask for it.
    synchronized Desk of(String building, Units units) {
        return open.computeIfAbsent(building + " in " + units, _ -> new Desk(book, building, survey -> settings.apply(survey).in(units), roads));
    }
}
