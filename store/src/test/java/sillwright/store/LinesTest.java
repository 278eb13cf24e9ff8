package sillwright.store;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class LinesTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource
    void entries_passed_on_as_they_are_kept_say_what_entries_read_and_written_again_say(Store store) {
        for (long seed = 1; seed <= 5; seed++) {
            try (Book book = Book.begin(store.fresh(folder))) {
                book.append("shed", Histories.of(new Random(seed), 80));
                String mark = "", plain = "";
                boolean more = true;
                while (more) {
                    Book.Lines lines = book.linesSince("shed", mark, 17);
                    Book.Since since = book.since("shed", plain, 17);
                    List<String> said = since.entries().stream().map(entry -> Line.of("shed", entry).said()).toList();
                    assertEquals(said, lines.entries(), "seed " + seed);
                    assertEquals(since.mark(), lines.mark());
                    assertEquals(since.again(), lines.again());
                    mark = lines.mark();
                    plain = since.mark();
                    more = lines.more();
                    assertEquals(since.more(), more);
                }
                assertEquals(List.of(), book.linesSince("shed", mark, 17).entries());
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_line_that_can_no_longer_be_read_is_named_and_not_given(Store store) throws Exception {
        String where = store.fresh(folder);
        try (Book book = Book.begin(where)) {
            book.append("shed", BookTest.shed());
            DoctorTest.tamper(store, where, "update entry set said = 'torn' where place = 4");
            Book.Lines lines = book.linesSince("shed", "", 100);
            assertEquals(BookTest.shed().size() - 1, lines.entries().size());
            assertFalse(lines.faults().isEmpty());
            assertEquals(BookTest.shed().get(3).id(), lines.faults().getFirst().entry());
        }
    }
}
