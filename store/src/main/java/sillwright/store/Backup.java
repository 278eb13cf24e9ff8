package sillwright.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Refused;
import sillwright.walk.Fault;

/// A backup is itself a book in one file, taken while the other is being written in, and read again before it is
/// called one. To restore it, copy it, or merge it into a new book.
public final class Backup {
    private Backup() {}

    /// What was backed up.
    ///
    /// @param faults what the doctor found in the copy, and so in the book
    public record Written(Path file, long entries, long photos, long bytes, List<Fault> faults) {
        public Written { faults = List.copyOf(faults); }
    }

    /// @throws Refused when there is a file already, it cannot be written, or the copy does not say what the book says
    public static Written write(Book book, Path file) {
        if (Files.exists(file)) throw new Refused(file.toString(), "there is a file of this name already", "name the backup for the day, such as house-2026-04-18.book");
        List<Written> written = new ArrayList<>();
        WholeFile.write(file, part -> {
            if (!book.engine().ask(engine -> engine.copy(part))) gather(book, part);
            written.add(verified(book, part, file));
        });
        return written.getFirst();
    }

    private static void gather(Book book, Path part) {
        try (Book copy = Book.begin(part.toString(), book.clock())) { Merge.into(copy, book); }
    }

    private static Written verified(Book book, Path part, Path file) throws IOException {
        Checkup checkup;
        Sum copied;
        long entries, photos;
        try (Book copy = Book.open(part.toString(), book.clock())) {
            copied = copy.read(ledger -> Sum.of(ledger, Long.MAX_VALUE));
            checkup = Doctor.examine(copy);
            entries = copy.read(ledger -> ledger.count("entry"));
            photos = copy.read(ledger -> ledger.count("photo"));
        }
        Sum kept = book.read(ledger -> Sum.of(ledger, copied.lines()));
        if (!kept.equals(copied)) throw new Refused(file.toString(), "the copy does not say what the book says, and was not kept", "run: sillwright book doctor, and look to the disk");
        return new Written(file, entries, photos, Files.size(part), checkup.faults());
    }

    /// A digest over the first unharmed lines of a book, in order of arrival.
    private record Sum(long lines, String digest) {
        static Sum of(Ledger ledger, long most) {
            StringBuilder all = new StringBuilder();
            long[] count = {0};
            ledger.eachLine(line -> {
                if (count[0] == most || !line.unharmed()) return;
                count[0]++;
                all.append(line.building()).append('/').append(line.id()).append('/').append(line.digest()).append('\n');
            });
            return new Sum(count[0], Line.digest(all.toString().getBytes(StandardCharsets.UTF_8)));
        }
    }
}
