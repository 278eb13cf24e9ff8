package sillwright.store;

import module java.base;
import module java.sql;

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
import org.junit.jupiter.params.provider.ValueSource;
import sillwright.measure.Refused;
import sillwright.walk.Body;
import sillwright.walk.Entry;

@DisplayNameGeneration(ReplaceUnderscores.class)
class BookTest {
    @TempDir
    Path folder;

    static List<Entry> shed() { return SurveyFile.read("shed", SurveyFileTest.SHED).entries(); }

    @ParameterizedTest
    @EnumSource
    void what_was_appended_is_read_again_by_the_next_program(Store store) {
        String where = store.fresh(folder);
        try (Book book = Book.begin(where)) {
            assertEquals(new Kept(10, 0, List.of()), book.append("shed", shed()));
        }
        try (Book book = Book.open(where)) {
            assertEquals(shed(), book.read("shed").entries());
            assertEquals(List.of(), book.read("shed").fold().faults());
            assertEquals(List.of(new Book.Shelf("shed", 10, shed().getLast().stamp().wallMs())), book.buildings());
            assertEquals(List.of(), book.read("barn").entries());
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatever_people_write_comes_back_as_they_wrote_it(Store store) {
        for (long seed = 1; seed <= 20; seed++) {
            List<Entry> history = Histories.of(new Random(seed), 80);
            try (Book book = Book.begin(store.fresh(folder))) {
                book.append("shed", history);
                assertEquals(new LinkedHashSet<>(history), new LinkedHashSet<>(book.read("shed").entries()), "seed " + seed);
                assertTrue(Doctor.examine(book).sound(), "seed " + seed);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_same_entry_sent_twice_is_kept_once(Store store) {
        try (Book book = Book.begin(store.fresh(folder))) {
            book.append("shed", shed().subList(0, 6));
            assertEquals(new Kept(4, 6, List.of()), book.append("shed", shed()));
            List<Entry> doubled = new ArrayList<>(shed());
            doubled.addAll(shed());
            assertEquals(new Kept(0, 20, List.of()), book.append("shed", doubled));
            assertEquals(shed(), book.read("shed").entries());
        }
    }

    @ParameterizedTest
    @EnumSource
    void two_entries_that_share_an_id_are_both_kept_and_the_fold_names_them(Store store) {
        Entry first = shed().get(3);
        Entry other = new Entry(first.id(), first.stamp(), "phone-2", "B", new Body.Struck(shed().get(6).id(), "another"));
        try (Book book = Book.begin(store.fresh(folder))) {
            book.append("shed", shed());
            assertEquals(new Kept(1, 0, List.of(first.id())), book.append("shed", other));
            assertEquals(11, book.read("shed").entries().size());
            assertTrue(book.read("shed").fold().faults().stream().anyMatch(f -> f.entry().endsWith(first.id()) && f.what().contains("same id")));
            assertEquals(new Kept(0, 1, List.of()), book.append("shed", other), "and it is known the next time");
        }
        try (Book book = Book.begin(store.fresh(folder))) {
            assertEquals(new Kept(2, 0, List.of(first.id())), book.append("shed", List.of(first, other)), "also when they come together");
        }
    }

    @ParameterizedTest
    @EnumSource
    void an_entry_that_cannot_be_kept_keeps_the_others_out(Store store) {
        Entry bad = new Entry("x".repeat(101), shed().getFirst().stamp(), "", "", shed().getFirst().body());
        try (Book book = Book.begin(store.fresh(folder))) {
            Refused refused = assertThrows(Refused.class, () -> book.append("shed", List.of(shed().getFirst(), bad)));
            assertTrue(refused.getMessage().contains("longer than 100"), refused.getMessage());
            assertEquals(List.of(), book.read("shed").entries());
        }
    }

    @ParameterizedTest
    @EnumSource
    void what_cannot_be_read_of_a_survey_is_set_aside_and_shown(Store store) {
        var held = SurveyFile.read("shed.survey.json", SurveyFileTest.SHED.replace("icicles", "icecles\\u0000"));
        try (Book book = Book.begin(store.fresh(folder))) {
            book.take("shed", held);
            book.take("shed", held);
            var read = book.read("shed");
            assertEquals(9, read.entries().size());
            assertEquals(held.setAside(), read.setAside());
            assertTrue(read.faults().getFirst().what().contains("could not be read"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "../shed", "a/b", "a\\b", "a..b", ".hidden", "x\u0000", "a\nb"})
    void a_building_has_a_short_name(String building) {
        try (Book book = Book.begin(Store.SQLITE.fresh(folder))) {
            assertThrows(Refused.class, () -> book.append(building, shed()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_reader_that_comes_back_gets_what_it_has_not_had(Store store) {
        try (Book book = Book.begin(store.fresh(folder))) {
            book.append("barn", shed().subList(0, 2));
            book.append("shed", shed().subList(0, 5));
            var first = book.since("shed", "", 3);
            assertEquals(shed().subList(0, 3), first.entries());
            assertTrue(first.more());
            book.append("barn", shed());
            var second = book.since("shed", first.mark(), 3);
            assertEquals(shed().subList(3, 5), second.entries());
            assertFalse(second.more() || second.again());
            assertEquals(second.mark(), book.since("shed", second.mark(), 3).mark());
            book.append("shed", shed());
            assertEquals(shed().subList(5, 10), book.since("shed", second.mark(), 100).entries());
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_reader_whose_mark_is_of_another_history_begins_again(Store store) {
        String mark;
        try (Book lost = Book.begin(store.fresh(folder))) {
            lost.append("shed", shed());
            mark = lost.since("shed", "", 8).mark();
        }
        try (Book restored = Book.begin(store.fresh(folder))) {
            restored.append("shed", shed().subList(0, 4));
            var since = restored.since("shed", mark, 100);
            assertTrue(since.again());
            assertEquals(shed().subList(0, 4), since.entries());
            restored.append("shed", shed().reversed());
            assertEquals(10, restored.since("shed", mark, 100).entries().size(), "the place is there now, and holds another entry");
            assertTrue(restored.since("shed", "nonsense", 100).again());
        }
    }

    @ParameterizedTest
    @EnumSource
    void nobody_changes_a_line_or_takes_one_away(Store store) throws SQLException {
        String where = store.fresh(folder);
        try (Book book = Book.begin(where)) {
            book.take("shed", SurveyFile.read("shed", SurveyFileTest.SHED.replace("icicles", "icecles")));
            book.photos().keep("shed", "photos/1.jpg", PictureTest.jpeg(4, 3));
            List<String> harm = new ArrayList<>();
            for (String table : List.of("entry", "photo", "photo_name", "aside")) {
                harm.add("delete from " + table);
                harm.add("update " + table + " set received_ms = 1");
                harm.add((store == Store.SQLITE ? "insert or replace into " : "insert into ") + table + " select * from " + table);
            }
            harm.add(store == Store.SQLITE ? "insert or replace into entry select place, 'barn', id, digest, wall_ms, tick, device, said, received_ms from entry" : "truncate entry");
            try (Connection past = store.past(where); Statement statement = past.createStatement()) {
                for (String sql : harm) assertThrows(SQLException.class, () -> statement.execute(sql), sql);
            }
            assertEquals(9, book.read("shed").entries().size());
            assertTrue(Doctor.examine(book).sound());
        }
    }

    @ParameterizedTest
    @EnumSource
    void many_threads_and_two_programs_at_once_lose_and_double_nothing(Store store) throws Exception {
        String where = store.fresh(folder);
        List<List<Entry>> all = new ArrayList<>();
        for (int i = 0; i < 8; i++) all.add(Histories.of(new Random(i + 100), 40));
        Book.begin(where).close();
        try (Book one = Book.open(where); Book two = Book.open(where); var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            List<Future<?>> done = new ArrayList<>();
            for (int i = 0; i < 16; i++) {
                int thread = i;
                done.add(threads.submit(() -> {
                    // Every history is sent by two threads, each through a program of its own.
                    for (Entry entry : all.get(thread / 2)) (thread % 2 == 0 ? one : two).append("shed", entry);
                }));
            }
            for (Future<?> each : done) each.get();
            List<Entry> kept = one.read("shed").entries();
            Set<Entry> sent = all.stream().flatMap(List::stream).collect(Collectors.toSet());
            assertEquals(sent.size(), kept.size());
            assertEquals(sent, new HashSet<>(kept));
            assertEquals(List.of(), Doctor.examine(two).faults().stream().filter(f -> f.grave()).toList());
        }
    }

    @ParameterizedTest
    @EnumSource
    void two_programs_may_begin_the_same_book_at_once(Store store) throws Exception {
        for (int round = 0; round < 5; round++) {
            String where = store.fresh(folder);
            try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
                List<Future<Book>> opened = new ArrayList<>();
                for (int i = 0; i < 3; i++) opened.add(threads.submit(() -> Book.begin(where)));
                for (int i = 0; i < 3; i++) opened.get(i).get().append("shed", shed().get(i));
                assertEquals(3, opened.getFirst().get().read("shed").entries().size());
                for (Future<Book> book : opened) book.get().close();
            }
        }
    }

    @Test
    void a_closed_book_is_one_file_and_a_copy_of_it_is_whole() throws IOException {
        Path file = folder.resolve("one/house.book");
        try (Book book = Book.begin(file.toString())) {
            book.append("shed", shed());
            book.photos().keep(PictureTest.jpeg(40, 30));
        }
        try (var files = Files.list(file.getParent())) { assertEquals(List.of(file), files.toList()); }
        Path copy = Files.copy(file, folder.resolve("copy.book"));
        try (Book book = Book.open(copy.toString())) {
            assertEquals(shed(), book.read("shed").entries());
            assertTrue(Doctor.examine(book).clean());
        }
    }

    @Test
    void a_write_waits_for_the_disk() throws SQLException {
        String where = Store.SQLITE.fresh(folder);
        try (Book book = Book.begin(where)) {
            assertEquals((Integer) 2, book.engine().<Integer>write(handle -> handle.createQuery("pragma synchronous").mapTo(Integer.class).one()), "FULL");
            assertEquals("wal", book.engine().write(handle -> handle.createQuery("pragma journal_mode").mapTo(String.class).one()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void what_is_no_book_is_refused(Store store) throws Exception {
        String where = store.fresh(folder);
        assertThrows(Refused.class, () -> Book.open(where), "nothing is there");
        try (Connection past = store.past(where); Statement statement = past.createStatement()) {
            statement.execute("create table things (name text)");
        }
        assertThrows(Refused.class, () -> Book.open(where), "it is another program's");
        if (store == Store.SQLITE) {
            assertThrows(Refused.class, () -> Book.begin(where), "and is left alone");
            Path text = Files.writeString(folder.resolve("letter.txt"), "dear all, ".repeat(500));
            assertTrue(assertThrows(Refused.class, () -> Book.begin(text.toString())).getMessage().contains("not a field book"));
            assertThrows(Refused.class, () -> Book.begin(folder.toString()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_book_of_a_newer_program_is_refused(Store store) throws Exception {
        String where = store.fresh(folder);
        Book.begin(where).close();
        try (Connection past = store.past(where); Statement statement = past.createStatement()) {
            statement.execute("insert into flyway_schema_history (installed_rank, version, description, type, script, checksum, installed_by, execution_time, success) "
                    + "values (99, '99', 'later', 'SQL', 'V99__later.sql', 1, 'x', 1, " + (store == Store.SQLITE ? "1" : "true") + ")");
        }
        assertTrue(assertThrows(Refused.class, () -> Book.open(where)).getMessage().contains("version 99"));
    }

    @Test
    void the_newest_step_is_the_last_of_the_files() throws Exception {
        Set<Integer> steps = new TreeSet<>();
        for (String part : List.of("both", "sqlite", "postgresql")) {
            var at = Book.class.getResource("sql/" + part);
            try (var files = Files.list(Path.of(at.toURI()))) { files.forEach(f -> steps.add(Integer.parseInt(f.getFileName().toString().replaceFirst("V(\\d+)__.*", "$1")))); }
        }
        assertEquals(Migrations.NEWEST, ((TreeSet<Integer>) steps).last());
    }

    @Test
    void a_server_is_refused_in_words_and_without_its_password() {
        Cluster cluster = Cluster.get();
        String right = cluster.freshDatabase();
        for (String wrong : List.of(right.replace("keeper:", "keeper:un"), right + "none", right.replace(":" + cluster.port, ":1"), "postgresql://nowhere", "postgres://a b/c")) {
            Refused refused = assertThrows(Refused.class, () -> Book.begin(wrong));
            assertFalse(refused.getMessage().contains("secret"), refused.getMessage());
        }
        try (Book book = Book.begin(right)) { assertFalse(book.name().contains("secret"), book.name()); }
    }
}
