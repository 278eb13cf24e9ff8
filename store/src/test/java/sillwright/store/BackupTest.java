package sillwright.store;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sillwright.measure.Refused;
import sillwright.walk.Entry;

@DisplayNameGeneration(ReplaceUnderscores.class)
class BackupTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource
    void a_backup_taken_while_others_write_is_a_whole_book_of_that_moment(Store store) throws Exception {
        try (Book book = Book.begin(store.fresh(folder))) {
            List<Entry> history = Histories.of(new Random(5), 400);
            List<Entry> distinct = new ArrayList<>(new LinkedHashSet<>(history));
            book.photos().keep("shed", "photos/1.jpg", PictureTest.jpeg(30, 30));
            AtomicBoolean enough = new AtomicBoolean();
            Thread writer = Thread.ofVirtual().start(() -> {
                for (Entry entry : history) if (!enough.get()) book.append("shed", entry);
            });
            for (int i = 0; i < 4; i++) {
                int before = book.read("shed").entries().size();
                Path file = folder.resolve("deep/backup-" + i + ".book");
                Backup.Written written = Backup.write(book, file);
                try (Book copy = Book.open(file.toString())) {
                    List<Entry> copied = copy.read("shed").entries();
                    assertEquals(distinct.subList(0, copied.size()), copied, "in the same order, none left out");
                    assertTrue(copied.size() >= before);
                    assertEquals(copied.size(), written.entries());
                    assertEquals(1, written.photos());
                    assertTrue(Doctor.examine(copy).sound());
                    String mark = book.since("shed", "", 3).mark();
                    assertEquals(copied.size() < 3, copy.since("shed", mark, 10).again(), "a phone's mark fits the backup too");
                }
            }
            enough.set(true);
            writer.join();
            try (var files = Files.list(folder.resolve("deep"))) { assertEquals(4, files.count(), "nothing unfinished is left"); }
        }
    }

    @Test
    void a_backup_of_a_server_goes_back_into_a_server() {
        try (Book book = Book.begin(Store.POSTGRES.fresh(folder)); Book again = Book.begin(Store.POSTGRES.fresh(folder))) {
            book.append("shed", BookTest.shed());
            book.append("barn", BookTest.shed().subList(0, 3));
            book.photos().keep("shed", "photos/1.jpg", PictureTest.jpeg(30, 30));
            Path file = folder.resolve("office.book");
            Backup.write(book, file);
            try (Book copy = Book.open(file.toString())) { Merge.into(again, copy); }
            for (String building : List.of("shed", "barn")) assertEquals(book.read(building), again.read(building));
            assertEquals(book.photos().of("shed"), again.photos().of("shed"));
            assertFalse(book.since("shed", again.since("shed", "", 5).mark(), 5).again());
        }
    }

    @Test
    void a_file_that_is_there_is_not_written_over() throws IOException {
        Path file = Files.writeString(folder.resolve("house.book"), "dear to somebody");
        try (Book book = Book.begin(Store.SQLITE.fresh(folder))) {
            assertThrows(Refused.class, () -> Backup.write(book, file));
            assertEquals("dear to somebody", Files.readString(file));
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_book_with_a_fault_can_still_be_backed_up_and_the_fault_is_told(Store store) throws Exception {
        String where = store.fresh(folder);
        try (Book book = Book.begin(where)) {
            book.append("shed", BookTest.shed());
            DoctorTest.tamper(store, where, "update entry set said = replace(said, '3/8 in', '1/8 in') where place = 4");
            Path file = folder.resolve("hurt.book");
            assertFalse(Backup.write(book, file).faults().isEmpty());
            try (Book copy = Book.open(file.toString())) {
                assertTrue(copy.read("shed").entries().containsAll(BookTest.shed().subList(4, 10)));
            }
        }
    }
}
