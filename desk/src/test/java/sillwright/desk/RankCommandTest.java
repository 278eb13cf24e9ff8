package sillwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillwright.measure.Csv;

@DisplayNameGeneration(ReplaceUnderscores.class)
class RankCommandTest {
    private static final String SILL = file("one-sill.survey.json"), FASCIA = file("fascia-under-gutter.survey.json"), PORCH = file("porch-alone.survey.json"), PRICES = file("prices.csv");

    private static String file(String name) { return ExamplesTest.FOLDER.resolve(name).toString(); }

    /// The table of buildings and the table of what is bought, which an empty line parts.
    private static List<Csv> tables(Path csv) throws Exception { return List.of(Files.readString(csv).split("\n\n")).stream().map(Csv::read).toList(); }

    @Test
    void what_cannot_wait_stands_first_and_the_table_says_the_same(@TempDir Path out) throws Exception {
        Path csv = out.resolve("ranked.csv");
        Said said = Said.by("rank", "--start", "2026-06-01", "--csv", csv.toString(), SILL, PORCH, FASCIA);
        assertEquals(0, said.code(), said.err());
        List<Csv.Row> rows = tables(csv).getFirst().rows();
        assertEquals(List.of("porch-alone", "fascia-under-gutter", "one-sill").size(), rows.size());
        assertTrue(rows.getFirst().number("cannot_wait") > 0 && rows.getLast().number("cannot_wait") == 0);
        for (int i = 0; i < rows.size(); i++) {
            assertEquals(i + 1, rows.get(i).number("rank"), 0);
            assertTrue(said.out().contains((i + 1) + ".  " + rows.get(i).get("name")), rows.get(i).get("name"));
            assertTrue(rows.get(i).number("hours_low") <= rows.get(i).number("hours") && rows.get(i).number("hours") <= rows.get(i).number("hours_high"));
        }
        assertEquals(1, tables(csv).size(), "nothing is bought without a budget");
    }

    @Test
    void a_budget_of_money_is_kept_and_each_thing_comes_with_what_it_needs(@TempDir Path out) throws Exception {
        Path csv = out.resolve("ranked.csv");
        Said said = Said.by("rank", "--start", "2026-06-01", "--prices", PRICES, "--budget", "1500", "--csv", csv.toString(), SILL, FASCIA);
        assertEquals(0, said.code(), said.err());
        assertTrue(said.out().contains("of 1,500 dollars buy most, proven"), said.out());
        List<Csv.Row> bought = tables(csv).getLast().rows();
        assertTrue(!bought.isEmpty() && bought.stream().mapToDouble(row -> row.number("money")).sum() <= 1500 + bought.size());
        for (Csv.Row row : bought) for (String need : row.get("needs").split(" "))
            if (!need.isEmpty()) assertTrue(bought.stream().anyMatch(other -> other.get("building").equals(row.get("building")) && other.get("ref").equals(need)), row + " wants " + need);
        assertTrue(tables(csv).getFirst().rows().getFirst().number("money_low") > 0);
    }

    @Test
    void the_map_holds_every_building_and_a_place_only_where_one_was_given(@TempDir Path out) throws Exception {
        Path map = out.resolve("group.geojson");
        Said said = Said.by("rank", "--start", "2026-06-01", "--map", map.toString(), "--at", "one-sill=44.26,-72.58", SILL, FASCIA);
        assertEquals(0, said.code(), said.err());
        var features = new tools.jackson.databind.json.JsonMapper().readTree(Files.readString(map)).get("features");
        assertEquals(2, features.size());
        assertEquals("[-72.58,44.26]", features.get(0).get("geometry").get("coordinates").toString());
        assertTrue(features.get(1).get("geometry").isNull());
        assertEquals(2, Said.by("rank", "--map", map.toString(), "--at", "one-sill=north", SILL).code());
        Said elsewhere = Said.by("rank", "--map", map.toString(), "--at", "two-sills=44.26,-72.58", SILL);
        assertTrue(elsewhere.code() == 1 && elsewhere.err().contains("'two-sills'; use one of one-sill"), elsewhere.err());
    }

    @Test
    void without_prices_the_budget_is_hours_and_a_bad_one_is_refused() {
        Said said = Said.by("rank", "--start", "2026-06-01", "--budget", "12", SILL, FASCIA);
        assertTrue(said.code() == 0 && said.out().contains("of 12 h buy most, proven"), said.out() + said.err());
        Said bad = Said.by("rank", "--budget", "-3", SILL);
        assertTrue(bad.code() == 2 && bad.err().contains("is no budget"), bad.err());
        assertEquals(2, Said.by("rank", "--budget", "3", file("no-such.survey.json")).code());
    }

    @Test
    void a_survey_that_cannot_be_read_is_left_out_and_named(@TempDir Path out) throws Exception {
        Path bad = Files.writeString(out.resolve("bad.survey.json"), "{");
        Said said = Said.by("rank", "--start", "2026-06-01", bad.toString(), SILL);
        assertEquals(1, said.code());
        assertTrue(said.err().contains("left out") && said.out().contains("One window sill"), said.err() + said.out());
    }
}
