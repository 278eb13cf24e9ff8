package sillwright.measure;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class CsvTest {
    @Test
    void notes_header_and_rows_are_told_apart() {
        Csv csv = Csv.read("\uFEFF# source: an invented table\n#where: nowhere\n\nname, depth\npost, 3\r\n\"sill, south\",4\n");
        assertEquals(List.of("source: an invented table", "where: nowhere"), csv.notes());
        assertEquals(List.of("name", "depth"), csv.header());
        assertEquals("sill, south", csv.rows().get(1).get("name"));
        assertEquals(4, csv.rows().get(1).number("depth"));
        assertEquals(6, csv.rows().get(1).line());
    }

    @Test
    void a_short_row_is_filled_with_nothing_and_a_long_one_is_refused_by_its_line() {
        assertEquals("", Csv.read("a,b,c\n1,2\n").rows().getFirst().get("c"));
        assertEquals("", Csv.read("a,b\n1,").rows().getFirst().get("b"));
        assertTrue(assertThrows(Refused.class, () -> Csv.read("a,b\n1,2\n1,2,3\n")).getMessage().startsWith("line 3: "));
    }

    @Test
    void a_quote_never_closed_is_refused() {
        assertTrue(assertThrows(Refused.class, () -> Csv.read("a,b\n1,\"2\n3,4\n")).getMessage().startsWith("line 2: "));
    }

    @Test
    void a_line_break_inside_quotes_is_part_of_the_cell_and_counted() {
        Csv csv = Csv.read("a,b\n\"one\ntwo\",2\n3,4\n");
        assertEquals("one\ntwo", csv.rows().getFirst().get("a"));
        assertEquals(4, csv.rows().get(1).line());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "12d", "NaN", "0x1p3", "1,5", "twelve", "Infinity", "1e", "--1"})
    void what_is_no_plain_number_is_refused(String cell) {
        Csv csv = Csv.read("a,b\n\"" + cell + "\",x\n");
        assertTrue(assertThrows(Refused.class, () -> csv.rows().getFirst().number("a")).getMessage().contains("line 2, column a"));
    }

    @Test
    void a_column_that_is_not_there_is_refused() {
        assertThrows(Refused.class, () -> Csv.read("a\n1\n").rows().getFirst().get("b"));
    }

    @Test
    void whatever_is_written_is_read_back_the_same() {
        long seed = 99;
        var random = new Random(seed);
        String marks = "ab ,\"\n\r#\t½";
        for (int trial = 0; trial < 5_000; trial++) {
            int columns = 1 + random.nextInt(3);
            List<String> header = List.of("x", "y", "z").subList(0, columns);
            var written = new StringBuilder(Csv.line(header));
            List<List<String>> cells = new ArrayList<>();
            for (int row = 0; row < 3; row++) {
                List<String> one = new ArrayList<>();
                for (int c = 0; c < columns; c++) {
                    var cell = new StringBuilder();
                    for (int n = random.nextInt(5); n > 0; n--) cell.append(marks.charAt(random.nextInt(marks.length())));
                    one.add(cell.toString());
                }
                cells.add(one);
                written.append(Csv.line(one));
            }
            List<List<String>> read = Csv.read(written.toString()).rows().stream().map(row -> List.copyOf(row.cells().values())).toList();
            assertEquals(cells, read, "seed " + seed + ", trial " + trial);
        }
    }
}
