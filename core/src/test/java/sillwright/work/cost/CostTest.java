package sillwright.work.cost;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import sillwright.measure.Refused;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class CostTest {
    private static final String BOOK = """
            # currency: crowns
            item,unit,price,low,high,date
            labour,h,50,40,70,2026-01-05
            labour painter,day,360,,,
            paint,qt,30,24,42,
            wood,bdft,10,8,14,
            wood oak-white 8ft,each,31,28,35,
            """;

    static LongStream seeds() { return LongStream.range(0, 40); }

    /// Mean and variance of the triangle, textbook values: 0 to 0 to 1 has mean 1/3 and variance 1/18; 0 to 1/2 to 1 has mean 1/2 and variance 1/24.
    @Test
    void a_triangle_has_the_moments_of_the_textbook() {
        Spread leaning = new Spread(0, 0, 1), even = new Spread(0, 0.5, 1);
        assertEquals(1.0 / 3, leaning.mean(), 1e-12);
        assertEquals(1.0 / 18, leaning.variance(), 1e-12);
        assertEquals(1.0 / 24, even.variance(), 1e-12);
        assertEquals(0.5, even.over(0.5), 1e-12);
        assertEquals(0.125, even.over(0.75), 1e-12);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void draws_meet_the_closed_form_within_their_own_error(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Line> lines = new ArrayList<>();
        List<Price> prices = new ArrayList<>();
        for (int p = 0; p < 1 + random.nextInt(4); p++) prices.add(new Price("thing " + p, Sold.read("each"), spread(random, 40), Optional.empty(), p));
        for (int l = 0; l < 1 + random.nextInt(6); l++) {
            Spread amount = spread(random, 9);
            boolean packs = random.nextBoolean();
            lines.add(new Line("line " + l, false, amount, packs ? Spread.exactly(1) : spread(random, 3), packs ? (int) Math.ceil(amount.mid()) : 0,
                    Optional.of(prices.get(random.nextInt(prices.size()))), List.of()));
        }
        List<Price> of = lines.stream().map(line -> line.price().orElseThrow()).toList();
        double mean = 0, exact = 0, spread = 0;
        for (int run = 0; run < 8; run++) {
            Range range = Draws.of(lines, of, seed * 100 + run);
            mean += range.mean() / 8;
            exact = range.exact();
            spread = range.spread();
            assertTrue(range.low() <= range.middle() && range.middle() <= range.high());
        }
        assertEquals(exact, mean, 4.5 * spread / Math.sqrt(8 * Draws.COUNT), () -> "seed " + seed);
    }

    @Test
    void the_spread_of_the_draws_is_the_one_in_closed_form() {
        Bill bill = Bill.of(PriceBook.read("book", BOOK), Labour.usual(), List.of(paint(6 * 946.0)), List.of(Toil.of("prop", 3, "R1"), Toil.of("scarf", 2, "R2")));
        Range range = bill.money(7);
        double[] means = new double[60];
        for (int run = 0; run < means.length; run++) means[run] = bill.money(1000 + run).mean();
        double average = Arrays.stream(means).average().orElseThrow(), variance = Arrays.stream(means).map(mean -> (mean - average) * (mean - average)).sum() / (means.length - 1);
        assertEquals(range.spread(), Math.sqrt(variance * Draws.COUNT), 0.35 * range.spread(), "the scatter of the means tells the scatter of a draw");
        assertEquals(range, bill.money(7), "the same seed, the same digits");
    }

    @Test
    void one_uncertain_price_is_all_of_the_spread_and_a_shared_one_counts_once() {
        Price price = new Price("paint", Sold.read("qt"), new Spread(20, 30, 50), Optional.empty(), 1);
        Line two = new Line("a", false, Spread.exactly(2), Spread.exactly(1), 0, Optional.of(price), List.of()), three = new Line("b", false, Spread.exactly(3), Spread.exactly(1), 0, Optional.of(price), List.of());
        Range range = Draws.of(List.of(two, three), List.of(price, price), 1);
        assertEquals(1, range.drivers().getFirst().share(), 1e-12);
        assertEquals(5 * Math.sqrt(price.money().variance()), range.spread(), 1e-9);
    }

    private static Want paint(double mL) { return new Want("finish paint", List.of("paint"), Sold.By.VOLUME, Spread.exactly(mL), Map.of(), true, List.of("R1")); }

    @Test
    void paint_is_bought_by_the_whole_pack_that_the_book_has() {
        Bill bill = Bill.of(PriceBook.read("book", BOOK), Labour.usual(), List.of(paint(1000)), List.of());
        assertEquals(60, bill.lines().getFirst().likely().orElseThrow(), 1e-9);
        assertEquals(2 * 32.0, bill.money(1).exact(), 1e-9, "two quarts at the mean of 24, 30 and 42");
    }

    @Test
    void a_day_pays_eight_hours_and_a_trade_goes_before_labour_at_large() {
        Bill bill = Bill.of(PriceBook.read("book", BOOK), Labour.usual(), List.of(), List.of(Toil.of("coat", 40, "R1"), Toil.of("prop", 1, "R2")));
        assertEquals(8, bill.lines().getFirst().hours(), 1e-9);
        assertEquals(360, bill.lines().getFirst().likely().orElseThrow(), 1e-9);
        assertEquals(4 * 50, bill.lines().getLast().likely().orElseThrow(), 1e-9);
        assertEquals(12, bill.likelyHours(), 1e-9);
    }

    @Test
    void a_board_foot_is_144_cubic_inches() {
        Want wood = new Want("board", List.of("wood"), Sold.By.LENGTH, Spread.exactly(12 * 304.8), Map.of(Sold.By.VOLUME, 25.4 * 152.4 / 1000), false, List.of());
        assertEquals(60, Bill.of(PriceBook.read("book", BOOK), Labour.usual(), List.of(wood), List.of()).lines().getFirst().likely().orElseThrow(), 1e-6, "12 ft of 1 × 6 is 6 board feet");
    }

    @Test
    void what_has_no_price_is_said_and_not_in_the_sum() {
        Bill bill = Bill.of(PriceBook.read("book", "item,unit,price\npaint,qt,30\n"), Labour.usual(), List.of(paint(500), new Want("bolt", List.of("bolt"), Sold.By.COUNT, Spread.exactly(2), Map.of(), true, List.of())),
                List.of(Toil.of("prop", 1, "R1")));
        assertEquals(30, bill.money(1).exact(), 1e-9);
        assertEquals(2, bill.gaps().size());
        assertTrue(bill.gaps().getFirst().contains("bolt") && bill.gaps().getLast().contains("labour"), bill.gaps()::toString);
    }

    @Test
    void a_price_by_a_measure_that_does_not_fit_is_said() {
        Bill bill = Bill.of(PriceBook.read("book", "item,unit,price\npaint,ft,30\n"), Labour.usual(), List.of(paint(500)), List.of());
        assertTrue(bill.gaps().getFirst().contains("'paint' is for ft"), bill.gaps()::toString);
    }

    @Test
    void every_bad_row_is_told_at_once_and_nothing_is_taken() {
        Refused refused = assertThrows(Refused.class, () -> PriceBook.read("mine.csv", """
                item,unit,price,low,high,date
                paint,qt,thirty,,,
                filler,furlong,20,,,
                ,qt,20,,,
                screw,25 each,14,15,18,
                bolt,each,-1,,,
                borate,qt,30,,,May
                primer,qt,27,,,
                primer,qt,28,,,
                """));
        for (String told : List.of("7 rows", "line 2, price: 'thirty'", "line 3, unit: 'furlong'", "line 4, item", "line 5, price: 14", "line 6, price", "line 7, date: 'May'", "line 9, item: 'primer' is priced in line 8"))
            assertTrue(refused.getMessage().contains(told), () -> told + " in " + refused.getMessage());
        assertTrue(assertThrows(Refused.class, () -> PriceBook.read("mine.csv", "item,price\npaint,3\n")).getMessage().contains("no column unit"));
    }

    @Test
    void a_row_of_ones_own_hours_takes_the_place_of_the_usual_one() {
        Labour own = Labour.read("mine.csv", "task,low,likely,high\nscarf,2,3,4\n");
        assertEquals(new Spread(2, 3, 4), own.tasks().get("scarf").hours());
        assertEquals(Labour.usual().tasks().get("prop"), own.tasks().get("prop"));
        assertTrue(assertThrows(Refused.class, () -> Labour.read("mine.csv", "task,low,likely,high\nscraf,2,3,4\nprop,4,3,2\n")).getMessage().matches("(?s).*2 rows.*did you mean scarf.*"));
    }

    private static Spread spread(SplittableRandom random, double most) {
        double[] points = random.doubles(3, 0, most).sorted().toArray();
        return random.nextInt(4) == 0 ? Spread.exactly(points[1]) : new Spread(points[0], points[1], points[2]);
    }
}
