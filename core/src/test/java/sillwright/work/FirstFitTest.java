package sillwright.work;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import sillwright.measure.Refused;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FirstFitTest {
    private static final double FT = 304.8, IN = 25.4;

    static LongStream seeds() { return LongStream.range(0, 60); }

    @Test
    void four_two_foot_pieces_come_out_of_an_eight_foot_board_only_without_a_kerf() {
        List<Double> four = Collections.nCopies(4, 2 * FT);
        assertEquals(1, new FirstFit().lay(four, List.of(8 * FT), 0).bars().size());
        assertEquals(2, new FirstFit().lay(four, List.of(8 * FT), IN / 8).bars().size());
    }

    @Test
    void the_shortest_board_that_serves_is_taken() {
        CutSolver.Layout layout = new FirstFit().lay(List.of(7 * FT), List.of(16 * FT, 8 * FT, 12 * FT), IN / 8);
        assertEquals(8 * FT, layout.usedMm(), 1e-9);
        assertEquals(layout.usedMm(), layout.boundMm(), 1e-9, "one board, and it is proven");
    }

    @Test
    void pieces_over_half_a_board_long_each_want_a_board_and_the_bound_knows_it() {
        CutSolver.Layout layout = new FirstFit().lay(Collections.nCopies(5, 5 * FT), List.of(8 * FT), IN / 8);
        assertEquals(5 * 8 * FT, layout.boundMm(), 1e-9);
    }

    @Test
    void a_piece_longer_than_every_board_is_refused_by_its_length() {
        Refused refused = assertThrows(Refused.class, () -> new FirstFit().lay(List.of(9 * FT), List.of(8 * FT), 0));
        assertTrue(refused.getMessage().contains("9 ft"), refused.getMessage());
        assertThrows(Refused.class, () -> new FirstFit().lay(List.of(FT), List.of(), 0));
    }

    @Test
    void nothing_to_cut_wants_no_board() { assertEquals(0, new FirstFit().lay(List.of(), List.of(8 * FT), 3).usedMm()); }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void every_piece_lies_in_one_bar_that_holds_it_and_the_bound_is_never_over_the_best_there_is(long seed) {
        Random random = new Random(seed);
        List<Double> stock = random.nextBoolean() ? List.of(2400.0) : List.of(1800.0, 2400.0, 3600.0);
        double longest = Collections.max(stock), kerf = random.nextInt(3) * 3.175;
        List<Double> pieces = new ArrayList<>();
        for (int i = 0; i < 2 + random.nextInt(6); i++) pieces.add(200 + (double) random.nextInt((int) longest - 200));
        CutSolver.Layout layout = new FirstFit().lay(pieces, stock, kerf);
        List<Integer> placed = layout.bars().stream().flatMap(bar -> bar.pieces().stream()).sorted().toList();
        assertEquals(IntStream.range(0, pieces.size()).boxed().toList(), placed);
        for (CutSolver.Cut bar : layout.bars())
            assertTrue(bar.pieces().stream().mapToDouble(pieces::get).sum() + (bar.pieces().size() - 1) * kerf <= bar.stockMm() + 0.01);
        double best = best(pieces, stock, kerf, 0, new double[pieces.size()]);
        assertTrue(layout.boundMm() <= best + 1e-6, () -> pieces + " bound " + layout.boundMm() + ", best " + best);
        assertTrue(layout.usedMm() >= best - 1e-6);
    }

    /// Every way to part the pieces among bars, tried.
    private static double best(List<Double> pieces, List<Double> stock, double kerf, int at, double[] filled) {
        if (at == pieces.size()) {
            double used = 0;
            for (double bar : filled) if (bar > 0) used += stock.stream().filter(length -> length >= bar - kerf - 1e-6).min(Double::compare).orElse(Double.POSITIVE_INFINITY);
            return used;
        }
        double best = Double.POSITIVE_INFINITY;
        for (int bar = 0; bar < filled.length; bar++) {
            boolean opened = filled[bar] > 0;
            filled[bar] += pieces.get(at) + kerf;
            if (filled[bar] - kerf <= Collections.max(stock) + 1e-6) best = Math.min(best, best(pieces, stock, kerf, at + 1, filled));
            filled[bar] -= pieces.get(at) + kerf;
            if (!opened) break;
        }
        return best;
    }
}
