package sillwright.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// The last entries of a building as they are passed on, each read and held against its digest once: phones that come back into signal together all ask for the same.
///
/// An entry never changes, and writers take turns, so that none arrives at a place that was passed: what is held here stays right.
final class Recent {
    /// Letters held of a building, of one byte each, and buildings of which any are held. This program's own choice.
    private static final int MOST = 8 << 20, BUILDINGS = 4;

    /// All that arrived of one building behind a place, without a gap.
    private static final class Run {
        private final List<Entries.Said> all = new ArrayList<>();
        private long behind = -1;
        private long letters;

        private long last() { return all.isEmpty() ? behind : all.getLast().place(); }

        synchronized List<Entries.Said> after(Entries entries, String building, long place, int most) {
            if (behind < 0 || place > last()) begin(place);
            if (place < behind) return entries.after(building, place, most);
            List<Entries.Said> given = new ArrayList<>(all.subList(first(place), Math.min(all.size(), first(place) + most)));
            if (given.size() == most) return given;
            List<Entries.Said> more = entries.after(building, last(), most - given.size());
            given.addAll(more);
            // One that is no longer what was kept is looked at anew each time.
            if (more.stream().allMatch(Entries.Said::unharmed)) hold(more);
            return given;
        }

        private void begin(long place) {
            all.clear();
            letters = 0;
            behind = place;
        }

        /// The index of the first entry after a place.
        private int first(long place) {
            int low = 0, high = all.size();
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (all.get(middle).place() > place) high = middle;
                else low = middle + 1;
            }
            return low;
        }

        private void hold(List<Entries.Said> more) {
            all.addAll(more);
            for (Entries.Said one : more) letters += one.said().length();
            if (letters <= MOST) return;
            List<Entries.Said> older = all.subList(0, all.size() - all.size() / 2);
            behind = older.getLast().place();
            older.clear();
            letters = all.stream().mapToLong(one -> one.said().length()).sum();
        }
    }

    private final Map<String, Run> runs = new LinkedHashMap<>(8, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Run> eldest) { return size() > BUILDINGS; }
    };

    /// What arrived after a place, oldest first.
    List<Entries.Said> after(Ledger ledger, String building, long place, int most) {
        Run run;
        synchronized (runs) { run = runs.computeIfAbsent(building, _ -> new Run()); }
        return run.after(new Entries(ledger.handle()), building, place, most);
    }
}
