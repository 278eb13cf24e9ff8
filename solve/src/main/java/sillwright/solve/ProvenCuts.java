package sillwright.solve;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import sillwright.work.CutSolver;
import sillwright.work.FirstFit;

/// A cut list that costs the least there is, or comes with the most that a better one could save.
///
/// It begins with the plain layout, so it is never worse. The bound is that of the list with bars in fractions, rounded up
/// to a sum of prices; whole layouts are found by rounding, and where that leaves a gap, by a search over
/// every way to fill a bar that either closes it or stops at a fixed number of steps. The same list gives the same layout on
/// every machine: nothing here looks at a clock.
public final class ProvenCuts implements CutSolver {
    private static final int DIVES = 400, ROUNDS = 12;
    /// Elementary steps: some seconds.
    private static final long STEPS = 12_000_000_000L;

    @Override
    public Layout layOn(List<Double> lengthsMm, List<Stock> stock, double kerfMm) {
        Layout plain = new FirstFit().layOn(lengthsMm, stock, kerfMm);
        long used = FirstFit.micron(plain.cost()), bound = FirstFit.micron(plain.bound());
        if (used <= bound) return plain;
        Demand demand = Demand.of(lengthsMm, stock, kerfMm);
        Effort effort = new Effort(STEPS);
        Set<Filling> pool = new LinkedHashSet<>();
        Fractions fractions = new Fractions(demand, demand.wanted(), demand.count(), pool, effort, used);
        bound = Math.max(bound, demand.up(fractions.bound()));
        List<Filling> best = null;
        BarByBar barByBar = new BarByBar(demand, fractions.fair(), effort);
        Dive dive = new Dive(demand, pool, effort, bound);
        for (int turn = 0; turn < DIVES && Math.min(used, dive.bestCost()) > bound && !effort.spent(); turn++) {
            for (int n = 0; n < ROUNDS && used > bound; n++) {
                List<Filling> laid = barByBar.lay();
                if (!laid.isEmpty() && demand.cost(laid) < used) {
                    used = demand.cost(laid);
                    best = laid;
                }
            }
            if (used > bound) dive.go(fractions, turn);
        }
        if (dive.bestCost() < used) {
            used = dive.bestCost();
            best = dive.best();
        }
        if (used > bound) {
            WholeBars whole = new WholeBars(demand, fractions.fair(), fractions.spare());
            for (long goal = bound; goal < used; goal = demand.up(goal + 1)) {
                WholeBars.Found found = whole.within(goal);
                if (found instanceof WholeBars.Found.Layout(var fillings)) {
                    best = fillings;
                    used = goal;
                } else if (found instanceof WholeBars.Found.None) bound = demand.up(goal + 1);
                else break;
            }
        }
        return new Layout(best == null ? plain.bars() : demand.cuts(best), Math.min(bound, used) / 1000.0);
    }
}
