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
}
