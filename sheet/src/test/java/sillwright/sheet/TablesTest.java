package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.Assessment;
import sillwright.measure.Csv;
import sillwright.measure.Units;

@DisplayNameGeneration(ReplaceUnderscores.class)
class TablesTest {
    @Test
    void the_order_reads_back_with_every_line_and_its_commas() {
        Assessment porch = Porch.assessment(Units.US);
        Csv read = Csv.read(OrderSheet.csv(porch));
        assertEquals(OrderSheet.HEADER, read.header());
        assertEquals(porch.work().order().size(), read.rows().size());
        Csv.Row adhesive = read.rows().get(2);
        assertEquals("structural gap-filling adhesive, two parts", adhesive.get("item"));
        assertEquals(440, adhesive.number("need") * 29.5735, 0.05);
        assertEquals("floz", adhesive.get("unit"));
        assertEquals("R1 R2 R4", adhesive.get("repairs"));
        assertEquals(8, read.rows().getFirst().number("buy"), 1e-9);
    }

    @Test
    void the_cut_list_reads_back_and_every_bar_is_used_up_by_its_pieces_its_cuts_and_what_is_left() {
        Assessment porch = Porch.assessment(Units.SI);
        Csv read = Csv.read(CutSheet.csv(porch));
        assertEquals(4, read.rows().size());
        double pieces = read.rows().stream().filter(row -> row.get("bar").equals("1")).mapToDouble(row -> row.number("piece_length")).sum();
        assertEquals(read.rows().getFirst().number("stock_length"), pieces + read.rows().getFirst().number("left_over"), 10);
    }

    @Test
    void lines_end_as_the_standard_has_it() {
        assertTrue(OrderSheet.csv(Porch.assessment(Units.US)).lines().count() == 6 && OrderSheet.csv(Porch.assessment(Units.US)).endsWith("\r\n"));
    }

    @Test
    void nothing_to_buy_is_a_header_alone() { assertEquals(0, Csv.read(OrderSheet.csv(Porch.empty())).rows().size()
            + Csv.read(CutSheet.csv(Porch.empty())).rows().size()); }
}
