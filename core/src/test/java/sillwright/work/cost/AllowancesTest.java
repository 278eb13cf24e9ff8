package sillwright.work.cost;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import sillwright.measure.Refused;
import sillwright.measure.Units;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class AllowancesTest {
    private static final String HEAD = "remedy,item,unit,each,per_m,low,high,pay_low,pay,pay_high\n";

    private static PriceBook book(String rows) { return PriceBook.read("book", "item,unit,price,low,high,date\n" + rows); }

    private static List<Line> lines(PriceBook book, String remedy, double metres, List<String> gaps) { return Allowances.usual().lines(book, remedy, metres, "W1", gaps); }

    /// By hand: 10 m of eave take 10.5 m of gutter and 5 m of downspout; a gutter at 4 a foot, a metre being 3.2808 ft.
    @Test
    void what_the_book_prices_is_priced_by_amount() {
        List<String> gaps = new ArrayList<>();
        List<Line> lines = lines(book("gutter,ft,4,,,\ndownspout,10ft,25,,,\n"), "hang-gutter", 10, gaps);
        assertEquals(List.of(), gaps);
        assertEquals(10.5 / 0.3048 * 4, lines.get(0).likely().orElseThrow(), 1e-6);
        assertEquals(5 / 3.048 * 25, lines.get(1).likely().orElseThrow(), 1e-6);
        assertTrue(lines.stream().noneMatch(Line::toil));
    }

    /// By hand: 10.5 m of gutter at 0.35 of an hour's pay of 50, whether the pay stands by the hour or by the day of eight hours.
    @ParameterizedTest
    @CsvSource({"h,50", "day,400"})
    void what_it_does_not_price_is_allowed_for_by_hours_of_pay(String unit, double wage) {
        List<String> gaps = new ArrayList<>();
        List<Line> lines = lines(book("labour," + unit + "," + wage + ",,,\n"), "hang-gutter", 10, gaps);
        assertEquals(10.5 * 0.35 * 50, lines.getFirst().likely().orElseThrow(), 1e-6);
        assertTrue(lines.getFirst().words().endsWith(Allowances.BY_PAY));
        assertEquals(0, lines.getFirst().hours(), 0, "an allowance is nobody's hours");
    }

    @Test
    void with_neither_it_is_left_out_and_told() {
        List<String> gaps = new ArrayList<>();
        assertTrue(lines(book("paint,qt,30,,,\n"), "hang-gutter", 10, gaps).stream().noneMatch(line -> line.likely().isPresent()));
        assertEquals(2, gaps.size());
        assertEquals(List.of(), lines(PriceBook.EMPTY, "clear-gutter", 10, gaps), "clearing a gutter uses up nothing");
    }

    @Test
    void a_longer_eave_takes_more_and_the_range_holds_the_likeliest() {
        for (String remedy : Allowances.usual().rows().keySet()) {
            double last = -1;
            for (double metres : new double[] {0, 3, 12}) {
                List<Line> lines = lines(book("labour,h,50,40,70,\n"), remedy, metres, new ArrayList<>());
                double likely = lines.stream().mapToDouble(line -> line.likely().orElseThrow()).sum();
                Range range = new Bill(lines, List.of()).money(1);
                assertTrue(likely >= last && range.low() <= range.middle() && range.middle() <= range.high(), remedy);
                assertEquals(range.exact(), range.mean(), 4.5 * range.spread() / Math.sqrt(Draws.COUNT) + 1e-9, remedy);
                last = likely;
            }
        }
    }

    @Test
    void a_users_rows_stand_in_for_all_of_a_remedys_own() {
        Allowances own = Allowances.read("mine.csv", HEAD + "hang-gutter,copper gutter,m,0,1,1,1,2,2,2\n");
        assertEquals(List.of("copper gutter"), own.rows().get("hang-gutter").stream().map(Allowances.Row::item).toList());
        assertEquals(Allowances.usual().rows().get("fit-cap"), own.rows().get("fit-cap"));
    }

    @Test
    void amounts_are_said_in_the_readers_units() {
        assertEquals("gutter 34 ft, downspout 16 ft", Allowances.usual().words("hang-gutter", 10, Units.US));
        assertEquals("gutter 10.5 m, downspout 5 m", Allowances.usual().words("hang-gutter", 10, Units.SI));
        assertEquals("gravel 0.92 yd³", Allowances.usual().words("gravel-under-drip", 10, Units.US));
        assertEquals("", Allowances.usual().words("clear-gutter", 10, Units.US));
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', value = {"hang-guter,gutter,m,0,1,1,1,1,1,1|did you mean hang-gutter", "hang-gutter,gutter,m,0,0,1,1,1,1,1|are no amount", "hang-gutter,gutter,m,1,1,2,3,1,1,1|do not lie about 1",
        "hang-gutter,gutter,m,1,1,1,1,3,2,1|does not lie between", "hang-gutter,gutter,furlong,1,1,1,1,1,1,1|is no unit", "hang-gutter,,m,1,1,1,1,1,1,1|name what is used up"})
    void a_bad_row_is_refused_with_its_line(String row, String said) {
        String message = assertThrows(Refused.class, () -> Allowances.read("mine.csv", HEAD + row + "\n")).getMessage();
        assertTrue(message.contains("line 2") && message.contains(said), message);
    }
}
