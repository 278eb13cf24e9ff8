package sillwright.store;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sillwright.walk.Body;
import sillwright.walk.Building;
import sillwright.walk.Entry;

/// What is remembered between requests says the same as the database.
@DisplayNameGeneration(ReplaceUnderscores.class)
class RecentTest {
    @TempDir
    Path folder;

    private static List<Entry> probes(int count, int from) {
        Random random = new Random(from);
        return IntStream.range(from, from + count)
                .mapToObj(i -> new Entry(EntryIds.at(1_776_502_800_000L + i, random), new Entry.Stamp(1_776_502_800_000L + i, 0), "phone", "A", BookTest.shed().get(3 + i % 5).body())).toList();
    }

    @ParameterizedTest
    @EnumSource
    void readers_at_any_mark_get_what_the_database_holds_behind_it_while_others_write(Store store) {
        Random random = new Random(7);
        String where = store.fresh(folder);
        try (Book book = Book.begin(where); Book other = Book.open(where)) {
            List<String> marks = new ArrayList<>(List.of(""));
            int written = 0;
            for (int i = 0; i < 120; i++) {
                int more = random.nextInt(4);
                if (more > 0) (random.nextBoolean() ? book : other).append(random.nextInt(3) == 0 ? "barn" : "shed", probes(more, written));
                written += more;
                String mark = marks.get(random.nextInt(marks.size()));
                int most = 1 + random.nextInt(30);
                Book.Lines lines = book.linesSince("shed", mark, most);
                Book.Since since = other.since("shed", mark, most);
                assertEquals(since.entries().stream().map(entry -> Line.of("shed", entry).said()).toList(), lines.entries());
                assertEquals(List.of(since.mark(), since.more(), since.again()), List.of(lines.mark(), lines.more(), lines.again()));
                marks.add(lines.mark());
            }
            assertTrue(written > 100);
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_name_and_a_count_follow_what_arrives(Store store) {
        String where = store.fresh(folder);
        try (Book book = Book.begin(where); Book other = Book.open(where)) {
            assertEquals(Optional.empty(), book.title("shed"));
            other.append("shed", BookTest.shed());
            Entry first = BookTest.shed().stream().filter(entry -> entry.body() instanceof Building).findFirst().orElseThrow();
            Building was = (Building) first.body();
            assertEquals(Optional.of(was.name()), book.title("shed"));
            assertEquals(10, book.buildings().getFirst().entries());
            Building named = new Building(was.id(), "The old shed", was.note(), was.yearBuilt(), was.designRain(), was.groundSnow(), was.months());
            Pen pen = other.pen("desk", "A");
            Entry amended = pen.amend("shed", first, named);
            assertEquals(Optional.of("The old shed"), book.title("shed"));
            other.append("shed", probes(3, 500));
            assertEquals(Optional.of("The old shed"), book.title("shed"));
            pen.strike("shed", amended, "by mistake");
            assertEquals(Optional.of(was.name()), book.title("shed"));
            assertEquals(other.read("shed").fold().building().map(Building::name), book.title("shed"));
            assertEquals(15, book.buildings().getFirst().entries());
            assertTrue(book.read("shed").entries().stream().anyMatch(entry -> entry.body() instanceof Body.Struck));
        }
    }
}
