package sillwright.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import sillwright.measure.Refused;

/// One building out of a book: as `*.survey.json`, or as a zip of it with its photos and what was set aside.
///
/// The same book gives the same bytes, whenever it is exported.
public final class Export {
    /// On every file in a zip, so that the day of the export does not change it.
    private static final LocalDateTime ALWAYS = LocalDateTime.of(2000, 1, 1, 0, 0);

    private Export() {}

    /// What was written.
    ///
    /// @param photos  how many pictures went along
    /// @param missing files that entries name and that are not in the book
    /// @param left    how many pictures, and lines that were set aside, did not go along; none with a zip
    public record Written(Path file, int entries, int photos, List<String> missing, int left) {
        public Written { missing = List.copyOf(missing); }
    }

    /// The pictures go without what tells where they were taken.
    public static Written write(Book book, String building, Path file) { return write(book, building, file, false); }

    /// @param file   a name that ends in `.zip` makes a zip
    /// @param places whether the pictures may tell where they were taken
    /// @throws Refused when nothing is kept of the building, or the file cannot be written
    public static Written write(Book book, String building, Path file, boolean places) {
        SurveyFile.Held held = book.read(building);
        if (held.entries().isEmpty() && held.setAside().isEmpty()) throw new Refused(building, "nothing is kept of this building", "sillwright book list names those there are");
        List<Photos.Named> photos = book.photos().of(building);
        List<String> missing = book.photos().missing(building);
        String note = "from a field book";
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".zip")) {
            SurveyFile.write(file, note, held.entries());
            return new Written(file, held.entries().size(), 0, missing, photos.size() + held.setAside().size());
        }
        WholeFile.write(file, part -> zip(book, building, held, photos, note, places, part));
        return new Written(file, held.entries().size(), photos.size(), missing, 0);
    }

    private static void zip(Book book, String building, SurveyFile.Held held, List<Photos.Named> photos, String note, boolean places, Path part) throws IOException {
        try (OutputStream out = Files.newOutputStream(part); ZipOutputStream zip = new ZipOutputStream(out)) {
            Set<String> used = new HashSet<>();
            put(zip, used, building + ".survey.json", SurveyFile.text(note, held.entries()).getBytes(StandardCharsets.UTF_8));
            List<String> asides = new ArrayList<>(held.setAside());
            asides.sort(null);
            for (String aside : asides) {
                byte[] bytes = aside.getBytes(StandardCharsets.UTF_8);
                put(zip, used, "set-aside/" + Line.digest(bytes) + ".txt", bytes);
            }
            zip.setLevel(Deflater.NO_COMPRESSION);
            for (Photos.Named named : photos) {
                Photos.Found found = book.photos().get(named.sha256()).orElseThrow();
                // A name can stand for one file only: another picture goes by its digest.
                put(zip, used, used.contains(named.file()) ? Photos.file(found.sha256(), found.media()) : named.file(), places ? found.bytes() : Placeless.of(found.bytes(), found.media()));
            }
        }
    }

    private static void put(ZipOutputStream zip, Set<String> used, String name, byte[] bytes) throws IOException {
        if (!used.add(name)) return;
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(ALWAYS);
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }
}
