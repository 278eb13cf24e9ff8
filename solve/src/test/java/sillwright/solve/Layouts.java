package sillwright.solve;

import module java.base;

import sillwright.work.CutSolver.Layout;

import static org.junit.jupiter.api.Assertions.*;

/// What every layout must be.
final class Layouts {
    private Layouts() {}

    static void check(Layout layout, List<Double> pieces, List<Double> stock, double kerfMm) {
        List<Integer> placed = layout.bars().stream().flatMap(bar -> bar.pieces().stream()).sorted().toList();
        assertEquals(IntStream.range(0, pieces.size()).boxed().toList(), placed, "every piece once");
        for (var bar : layout.bars()) {
            assertTrue(stock.contains(bar.stockMm()), () -> bar.stockMm() + " is sold");
            double filled = bar.pieces().stream().mapToDouble(pieces::get).sum() + (bar.pieces().size() - 1) * kerfMm;
            assertTrue(filled <= bar.stockMm() + 0.001 * bar.pieces().size(), () -> filled + " in " + bar.stockMm());
        }
        assertTrue(layout.boundMm() <= layout.usedMm() + 1e-6, () -> "bound " + layout.boundMm() + " over " + layout.usedMm());
    }

    /// The least stock, by trying every way to part the pieces among bars.
    static double best(List<Double> pieces, List<Double> stock, double kerfMm) { return best(pieces, stock, kerfMm, 0, new double[pieces.size()]); }

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
