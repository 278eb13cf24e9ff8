package sillwright.store;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sillwright.walk.Entry;
import sillwright.walk.FieldBook;
import sillwright.walk.Survey;

@DisplayNameGeneration(ReplaceUnderscores.class)
class MergeTest {
    private static final int HISTORIES = Integer.getInteger("histories", 60);

    @TempDir
    Path folder;

    @Test
    void books_that_grew_apart_give_the_same_fold_in_whatever_order_they_are_merged() throws IOException {
        Path empty = folder.resolve("empty.book");
        Book.begin(empty.toString()).close();
        for (long seed = 1; seed <= HISTORIES; seed++) {
            Random random = new Random(seed);
            List<Entry> history = Histories.of(random, 10 + random.nextInt(60));
            Survey whole = FieldBook.fold("shed", history);
            try (Book a = copy(empty); Book b = copy(empty); Book c = copy(empty)) {
                List<Book> books = List.of(a, b, c);
                List<Entry> shuffled = new ArrayList<>(history);
                Collections.shuffle(shuffled, random);
                List<List<Entry>> parts = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
                for (Entry entry : shuffled) {
                    // To one book, or to more.
                    do parts.get(random.nextInt(3)).add(entry); while (random.nextInt(4) == 0);
                }
                for (int i = 0; i < 3; i++) books.get(i).append("shed", parts.get(i));
                List<int[]> ways = new ArrayList<>(List.of(new int[] {0, 1}, new int[] {1, 2}, new int[] {2, 0}, new int[] {1, 0}, new int[] {2, 1}, new int[] {0, 2}));
                Collections.shuffle(ways, random);
                ways.addAll(List.copyOf(ways));
                for (int[] way : ways) Merge.into(books.get(way[0]), books.get(way[1]));
                for (Book book : books) {
                    assertEquals(whole, book.read("shed").fold(), "seed " + seed);
                    assertEquals(SurveyFile.text("", new ArrayList<>(new LinkedHashSet<>(history))), SurveyFile.text("", book.read("shed").entries()), "seed " + seed);
                }
                for (int[] way : ways) assertEquals(0, Merge.into(books.get(way[0]), books.get(way[1])).kept().fresh(), "seed " + seed + ": again changes nothing");
            }
        }
    }

    private Book copy(Path empty) throws IOException { return Book.open(Files.copy(empty, Path.of(Store.SQLITE.fresh(folder))).toString()); }

    private Book book(Store store) { return Book.begin(store.fresh(folder)); }

    @ParameterizedTest
    @EnumSource
    void two_phones_that_sync_by_their_marks_come_to_the_same_fold(Store store) {
        for (long seed = 1; seed <= 5; seed++) {
            Random random = new Random(seed);
            List<Entry> history = Histories.of(random, 60);
            try (Book server = book(store); Book one = book(Store.SQLITE); Book two = book(Store.SQLITE)) {
                Map<Book, String> marks = new HashMap<>();
                for (Entry entry : history) {
                    Book phone = random.nextBoolean() ? one : two;
                    phone.append("shed", entry);
                    if (random.nextInt(5) == 0) sync(phone, server, marks, random);
                }
                for (Book phone : List.of(one, two, one)) sync(phone, server, marks, random);
                Survey whole = FieldBook.fold("shed", history);
                for (Book book : List.of(one, two, server)) assertEquals(whole, book.read("shed").fold(), "seed " + seed);
            }
        }
    }

    /// Sends and fetches, in pieces, sometimes twice.
    private static void sync(Book phone, Book server, Map<Book, String> marks, Random random) {
        for (Entry entry : phone.read("shed").entries())
            for (int times = random.nextInt(1, 3); times > 0; times--) server.append("shed", entry);
        Book.Since since;
        do {
            since = server.since("shed", marks.getOrDefault(phone, ""), 1 + random.nextInt(20));
            phone.append("shed", since.entries());
            // An answer that is lost on the way is fetched again.
            if (random.nextInt(4) > 0) marks.put(phone, since.mark());
            else since = new Book.Since(List.of(), List.of(), "", false, true);
        } while (since.more());
    }

    @ParameterizedTest
    @EnumSource
    void pictures_names_and_what_was_set_aside_go_along_once(Store store) {
        try (Book from = book(Store.SQLITE); Book into = book(store)) {
            from.take("shed", SurveyFile.read("shed", SurveyFileTest.SHED.replace("icicles", "icecles")));
            from.photos().keep("shed", "photos/1.jpg", PictureTest.jpeg(9, 9));
            from.photos().keep("shed", "photos/1.jpg", PictureTest.jpeg(9, 10));
            into.photos().keep("shed", "photos/1.jpg", PictureTest.jpeg(9, 10));
            from.append("barn", BookTest.shed());
            assertEquals(new Merge.Merged(new Kept(19, 0, List.of()), 1, 1, List.of()), Merge.into(into, from));
            assertEquals(new Merge.Merged(new Kept(0, 19, List.of()), 0, 0, List.of()), Merge.into(into, from));
            assertEquals(from.read("shed"), into.read("shed"));
            assertEquals(from.photos().of("shed"), into.photos().of("shed"));
            assertEquals(2, into.photos().of("shed").size());
            assertEquals(from.photos().get("shed", "photos/1.jpg").orElseThrow().sha256(), into.photos().get("shed", "photos/1.jpg").orElseThrow().sha256(),
                    "of two pictures under one name both books show the same");
            assertEquals(from.buildings(), into.buildings());
        }
    }

    @Test
    void a_line_that_is_no_longer_what_was_kept_is_not_spread() throws Exception {
        String where = Store.SQLITE.fresh(folder);
        try (Book from = Book.begin(where); Book into = book(Store.SQLITE)) {
            from.append("shed", BookTest.shed());
            from.photos().keep(PictureTest.jpeg(9, 9));
            DoctorTest.tamper(Store.SQLITE, where, "update entry set said = replace(said, '3/8 in', '1/8 in') where place = 4", "update photo set bytes = x'ffd8ffff'");
            var merged = Merge.into(into, from);
            assertEquals(2, merged.faults().size());
            assertEquals(9, merged.kept().fresh());
            assertEquals(1, merged.aside());
            assertEquals(0, merged.photos());
            assertTrue(into.read("shed").setAside().getFirst().contains("1/8 in"));
        }
    }
}
