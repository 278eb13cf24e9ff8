package sillwright.store;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// How far a reader has come: the place of the last entry it had, and the head of that entry's digest.
record Mark(long place, String head) {
    static final Mark BEGIN = new Mark(0, "");
    private static final Pattern WRITTEN = Pattern.compile("([0-9]{1,18})\\.([0-9a-f]{16})");

    static Mark of(Line line) { return new Mark(line.place(), line.digest().substring(0, 16)); }

    static Mark of(Entries.Said said) { return new Mark(said.place(), said.digest().substring(0, 16)); }

    /// Nothing where the text is no mark: then reading begins again.
    static Optional<Mark> read(String text) {
        Matcher match = WRITTEN.matcher(text);
        return match.matches() ? Optional.of(new Mark(Long.parseLong(match.group(1)), match.group(2))) : Optional.empty();
    }

    boolean fits(String digest) { return digest.startsWith(head); }

    String text() { return place == 0 ? "" : place + "." + head; }
}
