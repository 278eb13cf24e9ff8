package sillwright.store;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import sillwright.walk.Fault;

/// Two books made one by union: whatever is in either is in both when each has been merged into the other. The fold is
/// the same whatever the order, and merging again changes nothing.
public final class Merge {
    private static final int AT_ONCE = 500;

    private Merge() {}

    /// What a merge brought.
    ///
    /// @param photos pictures that were new
    /// @param aside  what could not be read as an entry, and is kept as it came
    /// @param faults of the source, where something in it is no longer what was kept
    public record Merged(Kept kept, int photos, int aside, List<Fault> faults) {
        public Merged { faults = List.copyOf(faults); }
    }

    /// Adds to one book all that is in another; the other is only read.
    public static Merged into(Book target, Book source) {
        return source.read(from -> {
            List<Fault> faults = new ArrayList<>();
            int photos = photos(target, source, from, faults), aside = 0;
            for (String building : from.everyBuilding()) {
                for (Photos.Named named : from.photoNames(building))
                    target.write(to -> to.namePhoto(building, named.file(), named.sha256(), target.nowMs()));
                for (Ledger.Aside one : from.asides(building)) aside += target.write(to -> to.setAside(building, one.bytes(), target.nowMs())) ? 1 : 0;
            }
            Lines lines = new Lines(target, source, faults);
            from.eachLine(lines::take);
            lines.flush();
            return new Merged(lines.kept, photos, aside + lines.aside, faults);
        });
    }

    private static int photos(Book target, Book source, Ledger from, List<Fault> faults) {
        int fresh = 0;
        for (String sha256 : from.everyPhoto()) {
            if (target.read(to -> to.hasPhoto(sha256))) continue;
            Photos.Found found = from.photo(sha256).orElseThrow();
            if (found.unharmed()) fresh += target.write(to -> to.keepPhoto(sha256, found.media(), found.bytes(), target.nowMs())) ? 1 : 0;
            else faults.add(new Fault(source.name(), "photo " + sha256.substring(0, 12), "", "is not the picture that was kept, and was left behind", "send it again from the phone", true));
        }
        return fresh;
    }

    /// Lines on their way, some at a time. One that is no longer what was kept goes aside: it may still be read by eye.
    private static final class Lines {
        private final Book target;
        private final Book source;
        private final List<Fault> faults;
        private final List<Line> waiting = new ArrayList<>();
        private Kept kept = Kept.NOTHING;
        private int aside;

        Lines(Book target, Book source, List<Fault> faults) {
            this.target = target;
            this.source = source;
            this.faults = faults;
        }

        void take(Line line) {
            if (!line.unharmed()) {
                faults.add(new Fault(source.name(), line.id(), "", "is not what was kept, and was set aside", "send it again from the phone, or restore it from a backup", true));
                aside += target.write(to -> to.setAside(line.building(), line.said().getBytes(StandardCharsets.UTF_8), target.nowMs())) ? 1 : 0;
                return;
            }
            waiting.add(line);
            if (waiting.size() == AT_ONCE) flush();
        }

        void flush() {
            List<Line> lines = Arrays.asList(waiting.toArray(Line[]::new));
            if (!lines.isEmpty()) kept = kept.and(target.add(lines, _ -> {}));
            waiting.clear();
        }
    }
}
