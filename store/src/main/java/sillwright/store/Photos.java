package sillwright.store;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import sillwright.measure.Refused;
import sillwright.walk.Body;
import sillwright.walk.Entry;
import sillwright.walk.Photo;

/// The pictures of a book, kept in it under the SHA-256 of their bytes: one that is sent twice is kept once, and a
/// picture that is not what it was shows it.
///
/// A new entry names its picture by [#file]; a survey that names it `photos/post-3.jpg` keeps that name too.
public final class Photos {
    private static final Pattern BY_DIGEST = Pattern.compile("photos/([0-9a-f]{64})\\.(?:jpg|png|webp)");
    private static final int LONGEST_FILE = 300;

    private final Book book;

    Photos(Book book) { this.book = book; }

    /// A picture as it is kept.
    public record Found(String sha256, String media, byte[] bytes) {
        /// True where the bytes are still those that were kept.
        public boolean unharmed() { return sha256.equals(Line.digest(bytes)); }
    }

    /// What a survey calls a picture.
    public record Named(String file, String sha256) {}

    /// The name that a new entry gives a picture.
    public static String file(String sha256, String media) {
        return "photos/" + sha256 + switch (media) {
            case "image/png" -> ".png";
            case "image/webp" -> ".webp";
            default -> ".jpg";
        };
    }

    /// Keeps a picture; it is durable when this returns.
    ///
    /// @return the file name for the entry that shows it
    /// @throws Refused when this is no JPEG, PNG or WebP picture, or too large a one
    public String keep(byte[] picture) {
        Picture seen = Picture.of(picture);
        String sha256 = Line.digest(picture);
        book.write(ledger -> ledger.keepPhoto(sha256, seen.media(), picture, book.nowMs()));
        return file(sha256, seen.media());
    }

    /// Keeps a picture that a phone sends under its digest.
    ///
    /// @return true where it was not here yet
    /// @throws Refused also when the bytes are not those that the digest was taken of
    public boolean keepAs(String sha256, byte[] picture) {
        Picture seen = Picture.of(picture);
        if (!sha256.equals(Line.digest(picture)))
            throw new Refused("sha256", "is not the SHA-256 of the picture that came", "send the picture again; the name is 64 hex digits in lower case, of its bytes");
        return book.write(ledger -> ledger.keepPhoto(sha256, seen.media(), picture, book.nowMs()));
    }

    public boolean has(String sha256) { return book.read(ledger -> ledger.hasPhoto(sha256)); }

    /// Keeps a picture under the name that a survey gives it.
    public String keep(String building, String file, byte[] picture) {
        Book.named(building);
        Picture seen = Picture.of(picture);
        named(file);
        String sha256 = Line.digest(picture);
        book.write(ledger -> {
            ledger.keepPhoto(sha256, seen.media(), picture, book.nowMs());
            return ledger.namePhoto(building, file, sha256, book.nowMs());
        });
        return file(sha256, seen.media());
    }

    private static void named(String file) {
        new Photo(file, "", Optional.empty(), "");
        if (file.length() > LONGEST_FILE || file.chars().anyMatch(c -> Character.isISOControl(c) || Character.isSurrogate((char) c)))
            throw new Refused("file", "is too long, or holds a letter that cannot be printed", "rename the picture, such as photos/post-3.jpg");
    }

    public Optional<Found> get(String sha256) { return book.read(ledger -> ledger.photo(sha256)); }

    /// The picture that a building's entries call by this name. Of two under one name, the one whose digest comes first,
    /// whatever came first: `doctor` names both.
    public Optional<Found> get(String building, String file) {
        return book.read(ledger -> digest(file, ledger.photoNames(building)).flatMap(ledger::photo));
    }

    static Optional<String> digest(String file, List<Named> names) {
        for (Named named : names) if (named.file().equals(file)) return Optional.of(named.sha256());
        Matcher match = BY_DIGEST.matcher(file);
        return match.matches() ? Optional.of(match.group(1)) : Optional.empty();
    }

    /// Every picture of a building that is here, by every name it has.
    public List<Named> of(String building) {
        List<Entry> entries = book.read(building).entries();
        return book.read(ledger -> {
            Set<Named> all = new LinkedHashSet<>(ledger.photoNames(building));
            for (String file : called(entries)) {
                Matcher match = BY_DIGEST.matcher(file);
                if (match.matches() && ledger.hasPhoto(match.group(1))) all.add(new Named(file, match.group(1)));
            }
            return List.copyOf(all);
        });
    }

    /// The files that a building's entries name and that are not here: a phone may still have them.
    public List<String> missing(String building) {
        List<Entry> entries = book.read(building).entries();
        return book.read(ledger -> {
            List<Named> names = ledger.photoNames(building);
            List<String> missing = new ArrayList<>();
            for (String file : called(entries)) if (digest(file, names).filter(ledger::hasPhoto).isEmpty()) missing.add(file);
            return List.copyOf(missing);
        });
    }

    static Set<String> called(List<Entry> entries) {
        Set<String> files = new TreeSet<>();
        for (Entry entry : entries) {
            if (entry.body() instanceof Photo photo) files.add(photo.file());
            if (entry.body() instanceof Body.Amended(_, Photo photo)) files.add(photo.file());
        }
        return files;
    }
}
