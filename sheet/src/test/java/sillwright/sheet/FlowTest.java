package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

import static sillwright.sheet.Text.*;

/// Entries of any length in two columns, and in bands.
@DisplayNameGeneration(ReplaceUnderscores.class)
class FlowTest {
    private static final double ROOM = 250;

    private static String words(SplittableRandom random, int most) {
        StringBuilder words = new StringBuilder("Saw");
        for (int i = random.nextInt(2, most); i > 0; i--) words.append(" a board");
        return words + ".";
    }

    private static List<Flow.Entry> drawn(SplittableRandom random) {
        List<Flow.Entry> all = new ArrayList<>();
        for (int i = random.nextInt(1, 40); i > 0; i--) {
            List<String> steps = new ArrayList<>();
            for (int k = random.nextInt(0, 12); k > 0; k--) steps.add(words(random, 12));
            Markup drawing = Markup.of("svg").with("height", random.nextInt(20, 90) + "mm");
            all.add(new Flow.Entry(div("atom", h3("e" + all.size(), "Entry " + all.size()), drawing), steps, random.nextBoolean() ? List.of(notes(words(random, 40))) : List.of()));
        }
        return all;
    }

    private static List<Markup> columns(Markup flow) { return flow.all("td"); }

    @RepeatedTest(60)
    void nothing_is_lost_all_stays_in_order_and_no_column_is_overfull(RepetitionInfo run) {
        long seed = 900 + run.getCurrentRepetition();
        List<Flow.Entry> entries = drawn(new SplittableRandom(seed));
        Markup flow = Flow.of(entries, ROOM);
        StringBuilder wanted = new StringBuilder();
        for (Flow.Entry entry : entries) {
            wanted.append(entry.head().text());
            for (int i = 0; i < entry.steps().size(); i++) wanted.append(i + 1).append(' ').append(entry.steps().get(i)).append(' ');
            for (Markup part : entry.behind()) wanted.append(part.text());
        }
        assertEquals(wanted.toString(), flow.text(), "seed " + seed);
        List<Markup> columns = columns(flow);
        for (int i = 0; i < columns.size(); i++) assertTrue(Extent.of(columns.get(i)) <= ROOM, "seed " + seed + ": column " + i + " takes " + Extent.of(columns.get(i)));
    }

    @Test
    void the_columns_of_the_last_page_end_nearly_level() {
        List<Flow.Entry> entries = new ArrayList<>();
        for (int i = 0; i < 6; i++) entries.add(new Flow.Entry(div("atom", h3("e" + i, "Entry " + i), Markup.of("svg").with("height", "45mm")), List.of(), List.of()));
        List<Markup> columns = columns(Flow.of(entries, ROOM));
        assertEquals(2, columns.size());
        assertEquals(Extent.of(columns.getFirst()), Extent.of(columns.getLast()), 1e-9);
    }

    @RepeatedTest(40)
    void bands_hold_every_entry_once_and_are_nearly_level(RepetitionInfo run) {
        long seed = 300 + run.getCurrentRepetition();
        SplittableRandom random = new SplittableRandom(seed);
        List<Markup> entries = new ArrayList<>();
        for (int i = random.nextInt(1, 30); i > 0; i--) entries.add(p("Entry " + entries.size() + " " + words(random, 60)));
        int at = 0;
        for (Band band : Band.of(entries)) {
            assertEquals(at, band.from(), "seed " + seed);
            assertTrue(band.from() < band.middle() && band.middle() <= band.to() && band.to() - band.from() <= 6, "seed " + seed + " " + band);
            at = band.to();
        }
        assertEquals(entries.size(), at);
    }
}
