package sillwright.solve;

import java.util.List;

import sillwright.work.CutSolver;
import sillwright.work.FirstFit;

/// A cut list that uses the least stock there is, or comes with the most that a better one could save.
///
/// It begins with the plain layout, so it is never worse. The bound is that of the list with bars in fractions, rounded up
/// to a sum of lengths that are sold; whole layouts are found by rounding, and where that leaves a gap, by a search over
/// every way to fill a bar that either closes it or stops at a fixed number of steps. The same list gives the same layout on
/// every machine: nothing here looks at a clock.
public final class ProvenCuts implements CutSolver {
    private static final int DIVES = 12;

    @Override
    public Layout lay(List<Double> lengthsMm, List<Double> stockMm, double kerfMm) {
        Layout plain = new FirstFit().lay(lengthsMm, stockMm, kerfMm);
        long used = FirstFit.micron(plain.usedMm()), bound = FirstFit.micron(plain.boundMm());
        if (used <= bound) return plain;
        Demand demand = Demand.of(lengthsMm, stockMm, kerfMm);
        PatternPrices prices = new PatternPrices(demand);
        bound = Math.max(bound, FirstFit.reachable(demand.cost(), (long) Math.ceil(prices.bound() * (1 - 1e-9) - 1e-3)));
        Dive dive = new Dive(demand, bound);
        for (int first = 0; first < DIVES && dive.bestCost() > bound && used > bound; first++) dive.go(prices, first);
        List<int[]> best = null;
        if (dive.bestCost() < used) {
            used = dive.bestCost();
            best = dive.best();
        }
        if (used > bound) {
            WholeBars whole = new WholeBars(demand, prices.fair());
            for (long goal = bound; goal < used; goal = FirstFit.reachable(demand.cost(), goal + 1)) {
                WholeBars.Found found = whole.within(goal);
                if (found instanceof WholeBars.Found.Layout(var patterns)) {
                    best = patterns;
                    used = goal;
                } else if (found instanceof WholeBars.Found.None) bound = FirstFit.reachable(demand.cost(), goal + 1);
                else break;
            }
        }
        return new Layout(best == null ? plain.bars() : demand.cuts(best), bound / 1000.0);
    }
}
