package sillwright.work;

import java.util.List;

/// Lays pieces out on stock lengths. The core has a plain one, [FirstFit]; a solver may prove its answer.
@FunctionalInterface
public interface CutSolver {
    /// @param lengthsMm the pieces, net
    /// @param stockMm   the lengths that are sold, any number of each
    /// @param kerfMm    taken by each cut between two pieces
    /// @return for each bar the indices of the pieces in it
    Layout lay(List<Double> lengthsMm, List<Double> stockMm, double kerfMm);

    /// @param bars    for each bar: its stock length and the indices of its pieces
    /// @param boundMm no layout can use less stock than this
    record Layout(List<Cut> bars, double boundMm) {
        public Layout { bars = List.copyOf(bars); }

        public double usedMm() { return bars.stream().mapToDouble(Cut::stockMm).sum(); }
    }

    record Cut(double stockMm, List<Integer> pieces) {
        public Cut { pieces = List.copyOf(pieces); }
    }
}
