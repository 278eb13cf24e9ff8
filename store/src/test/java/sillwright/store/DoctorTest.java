package sillwright.store;

import module java.base;
import module java.sql;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sillwright.walk.Body;
import sillwright.walk.Entry;
import sillwright.walk.Fault;

@DisplayNameGeneration(ReplaceUnderscores.class)
class DoctorTest {
    @TempDir
    Path folder;

    /// Does what no program may: takes the guards off, changes rows, and puts the guards on again.
    static void tamper(Store store, String where, String... harm) throws SQLException {
        try (Connection past = store.past(where); Statement statement = past.createStatement()) {
            Map<String, String> guards = new LinkedHashMap<>();
            if (store == Store.SQLITE) {
                try (ResultSet rows = statement.executeQuery("select name, sql from sqlite_master where type = 'trigger'")) { while (rows.next()) guards.put(rows.getString(1), rows.getString(2)); }
                for (String guard : guards.keySet()) statement.execute("drop trigger " + guard);
            } else for (String table : List.of("entry", "photo", "photo_name", "aside")) statement.execute("alter table " + table + " disable trigger user");
            for (String sql : harm) statement.execute(sql);
            for (String guard : guards.values()) statement.execute(guard);
            if (store == Store.POSTGRES) for (String table : List.of("entry", "photo", "photo_name", "aside")) statement.execute("alter table " + table + " enable trigger user");
        }
    }

    private String book(Store store) {
        String where = store.fresh(folder);
        try (Book book = Book.begin(where)) {
            book.append("shed", BookTest.shed());
            book.photos().keep("shed", "photos/1.jpg", PictureTest.jpeg(20, 20));
        }
        return where;
    }

    private static void finds(Checkup checkup, boolean grave, String... words) {
        assertTrue(checkup.faults().stream().anyMatch(f -> f.grave() == grave && Arrays.stream(words).allMatch(f.line()::contains)), () -> String.join(" + ", words) + " in " + checkup.faults());
        for (Fault fault : checkup.faults()) assertFalse(fault.mend().isEmpty(), fault.line());
        assertEquals(!grave, checkup.sound());
    }

    @ParameterizedTest
    @EnumSource
    void a_whole_book_is_clean(Store store) {
        Checkup checkup = Doctor.examine(book(store));
        assertTrue(checkup.clean(), () -> checkup.toString());
        assertEquals(List.of(1, 10L, 1L), List.of(checkup.buildings(), checkup.entries(), checkup.photos()));
    }

    @ParameterizedTest
    @EnumSource
    void one_changed_letter_is_found(Store store) throws SQLException {
        String where = book(store);
        tamper(store, where, "update entry set said = replace(said, '3/8 in', '1/8 in') where place = 4");
        finds(Doctor.examine(where), true, "000000000004", "digest differs");
    }

    @ParameterizedTest
    @EnumSource
    void a_line_kept_under_another_time_is_found(Store store) throws SQLException {
        String where = book(store);
        tamper(store, where, "update entry set wall_ms = wall_ms + 1 where place = 5");
        finds(Doctor.examine(where), true, "000000000005", "another id, time or device");
    }

    @ParameterizedTest
    @EnumSource
    void a_line_that_was_taken_away_is_found(Store store) throws SQLException {
        String where = book(store);
        tamper(store, where, "delete from entry where place in (3, 7, 8)");
        finds(Doctor.examine(where), true, "place 4", "the entry before it is missing");
        finds(Doctor.examine(where), true, "place 9", "2 entries before it are missing");
    }

    @ParameterizedTest
    @EnumSource
    void a_picture_that_is_another_or_gone_is_found(Store store) throws SQLException {
        String where = book(store);
        tamper(store, where, "update photo set bytes = " + (store == Store.SQLITE ? "x'ffd8ffff'" : "'\\xffd8ffff'"));
        finds(Doctor.examine(where), true, "not the picture that was kept");
        tamper(store, where, "delete from photo");
        finds(Doctor.examine(where), true, "photos/1.jpg", "not here");
    }

    @ParameterizedTest
    @EnumSource
    void a_guard_that_was_taken_off_is_found(Store store) throws SQLException {
        String where = book(store);
        try (Connection past = store.past(where); Statement statement = past.createStatement()) {
            statement.execute(store == Store.SQLITE ? "drop trigger photo_no_delete" : "alter table photo disable trigger photo_no_change");
        }
        finds(Doctor.examine(where), true, "the guard photo_no_");
    }

    @ParameterizedTest
    @EnumSource
    void a_step_of_the_database_that_is_another_is_found(Store store) throws SQLException {
        String where = book(store);
        try (Connection past = store.past(where); Statement statement = past.createStatement()) {
            statement.execute("update flyway_schema_history set checksum = 1 where version = '1'");
        }
        finds(Doctor.examine(where), true, "step 1 of the database");
    }

    @ParameterizedTest
    @EnumSource
    void wrong_clocks_missing_pictures_and_what_was_set_aside_are_noted(Store store) {
        String where = book(store);
        try (Book book = Book.open(where)) {
            Entry known = BookTest.shed().get(6);
            long years = 1000L * 86_400_000;
            book.append("shed", new Entry("a", new Entry.Stamp(book.nowMs() + years, 0), "phone-7", "A", known.body()));
            book.append("shed", List.of(new Entry("b", new Entry.Stamp(5, 5), "phone-8", "A", known.body()), new Entry("c", new Entry.Stamp(5, 5), "phone-8", "A", known.body())));
            book.append("shed", new Entry("d", new Entry.Stamp(6, 0), "phone-8", "A", new sillwright.walk.Photo("photos/none.jpg", "south", Optional.empty(), "")));
            book.photos().keep("shed", "photos/1.jpg", PictureTest.jpeg(21, 20));
            book.take("shed", new SurveyFile.Held("x", List.of(), List.of(), List.of("{\"id\":\"e\"}")));
            Checkup checkup = Doctor.examine(book);
            for (String words : List.of("clock of 'phone-7' is wrong", "c: has the same stamp as b", "photos/none.jpg: is named by an entry", "photos/1.jpg: is the name of more than one", "could not be read as an entry"))
                finds(checkup, false, words);
            assertEquals(5, checkup.faults().size(), () -> checkup.faults().toString());
        }
    }

    @ParameterizedTest
    @EnumSource
    void what_the_fold_sets_aside_is_told_and_leaves_the_book_sound(Store store) {
        String where = book(store);
        try (Book book = Book.open(where)) {
            book.append("shed", new Entry("a", new Entry.Stamp(1, 0), "", "", new Body.Struck("nobody", "")));
            Checkup checkup = Doctor.examine(book);
            assertTrue(checkup.sound() && !checkup.clean());
            assertEquals(1, checkup.surveys().size());
        }
    }

    @Test
    void a_damaged_page_is_found_whichever_it_is() throws IOException {
        Path whole = Path.of(book(Store.SQLITE));
        Random random = new Random(11);
        int pages = (int) (Files.size(whole) / 4096);
        assertTrue(pages > 10);
        for (int page = 0; page < pages; page++) {
            Path hurt = Files.copy(whole, folder.resolve("hurt-" + page + ".book"));
            byte[] noise = new byte[4096];
            random.nextBytes(noise);
            try (var file = new RandomAccessFile(hurt.toFile(), "rw")) {
                file.seek(page * 4096L);
                file.write(noise);
            }
            Checkup checkup = Doctor.examine(hurt.toString());
            assertFalse(checkup.sound(), "page " + page);
            for (Fault fault : checkup.faults()) assertFalse(fault.mend().isEmpty(), fault.line());
        }
    }

    @Test
    void what_cannot_be_opened_is_told_too() throws IOException {
        assertFalse(Doctor.examine(folder.resolve("none.book").toString()).sound());
        assertFalse(Doctor.examine(Files.writeString(folder.resolve("text.book"), "x".repeat(5000)).toString()).sound());
        Path torn = Path.of(book(Store.SQLITE));
        Files.write(torn, Arrays.copyOf(Files.readAllBytes(torn), 20_000));
        assertFalse(Doctor.examine(torn.toString()).sound());
    }

    @Test
    void a_server_that_does_not_wait_for_its_disk_is_told() throws SQLException {
        String where = Cluster.get().freshDatabase();
        Book.begin(where).close();
        try (Connection past = Store.POSTGRES.past(where); Statement statement = past.createStatement()) {
            statement.execute("alter database " + where.substring(where.lastIndexOf('/') + 1) + " set synchronous_commit = off");
        }
        assertTrue(Doctor.examine(where).sound(), "the book asks for it itself");
        try (Book book = Book.open(where)) {
            assertEquals("on", book.engine().<String>write(handle -> handle.createQuery("show synchronous_commit").mapTo(String.class).one()));
        }
    }
}
