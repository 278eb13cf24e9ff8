package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.store.Book;
import sillwright.store.FindingsFile;
import sillwright.store.Import;
import sillwright.walk.Body;
import sillwright.walk.Entry;
import sillwright.walk.ProbeReading;

/// What a change touches is told at once, and comes to the same as the whole road walked anew.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DeskTest {
    private static final String HOUSE = "porch-alone";

    private static List<String> states(Desk.Opened open) { return open.assessment().wood().all().stream().map(c -> c.member().id() + " " + c.state() + " " + c.damages().stream().map(d -> d.fromMm() + ".." + d.toMm() + " " + d.deepestMm()).toList()).toList(); }

    @Test
    void a_change_is_told_at_once_and_the_whole_follows_and_comes_to_what_a_fresh_desk_finds(@TempDir Path folder) {
        try (Book book = Book.begin(folder.resolve("a.book").toString())) {
            Import.from(book, Path.of("../examples/porch-alone.survey.json"), Optional.empty());
            Desk desk = new Desk(book, HOUSE, Server::usual, new java.util.concurrent.Semaphore(1));
            Desk.Opened before = desk.open();
            assertTrue(before.whole());
            Entry deep = before.entries().stream().filter(entry -> entry.body() instanceof ProbeReading probe && probe.depthMm() > 5).findFirst().orElseThrow();
            ProbeReading probe = (ProbeReading) deep.body();
            book.append(HOUSE, book.pen("desk", "").after(deep, new Body.Amended(deep.id(), new ProbeReading(probe.spot(), Quantity.read("1/8 in", Kind.LENGTH), probe.reach(), false))));
            Desk.Opened soon = desk.soon();
            assertFalse(soon.whole());
            assertNotEquals(states(before), states(soon));
            assertEquals(before.assessment().work().tasks(), soon.assessment().work().tasks(), "the order of work follows");
            Desk.Opened whole = desk.open();
            assertTrue(whole.whole());
            assertEquals(soon.version(), whole.version());
            assertEquals(states(soon), states(whole));
            assertEquals(FindingsFile.text(new Desk(book, HOUSE, Server::usual, new java.util.concurrent.Semaphore(1)).open().assessment()), FindingsFile.text(whole.assessment()), "what was remembered comes to the same");
            assertEquals(before.version(), desk.whole(before.version()).orElseThrow().version(), "what was before is known, to compare with");
        }
    }

    @Test
    void nothing_new_is_not_worked_again(@TempDir Path folder) {
        try (Book book = Book.begin(folder.resolve("a.book").toString())) {
            Import.from(book, Path.of("../examples/one-sill.survey.json"), Optional.empty());
            Desk desk = new Desk(book, "one-sill", Server::usual, new java.util.concurrent.Semaphore(1));
            Desk.Opened first = desk.open();
            assertTrue(first == desk.open() && first == desk.soon());
            assertTrue(desk.last().ready());
        }
    }
}
