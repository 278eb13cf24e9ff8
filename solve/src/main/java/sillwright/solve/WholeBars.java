package sillwright.solve;

import java.util.ArrayList;
import java.util.List;

import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

/// How often each pattern is sawn, in whole numbers, for a given cost: by constraint programming over every way a bar can
/// be filled.
final class WholeBars {
    private static final int MOST_PATTERNS = 3000;
    private static final long MOST_NODES = 60_000;

    private final Demand demand;
    private final List<int[]> patterns = new ArrayList<>();
    private boolean all = true;

    WholeBars(Demand demand) {
        this.demand = demand;
        for (int s = 0; s < demand.room().length && all; s++) fill(new int[demand.sorts()], 0, demand.room()[s], s);
    }

    /// Whether every full bar is among the patterns. Only then is a search worth starting: that it ends without an answer
    /// proves there is none.
    boolean complete() { return all; }

    /// What a search came to: a layout, the proof that there is none, or neither.
    sealed interface Found {
        record Layout(List<int[]> patterns) implements Found {}
        record None() implements Found {}
        record Stalled() implements Found {}
    }

    private void fill(int[] count, int sort, long room, int stock) {
        if (patterns.size() >= MOST_PATTERNS) { all = false; return; }
        if (sort == demand.sorts()) {
            for (int i = 0; i < count.length; i++) if (count[i] < demand.wanted()[i] && demand.size()[i] <= room) return;
            if (demand.carries(demand.filled(count)) == stock) patterns.add(count.clone());
            return;
        }
        for (int k = (int) Math.min(demand.wanted()[sort], room / demand.size()[sort]); k >= 0; k--) {
            count[sort] = k;
            fill(count, sort + 1, room - k * demand.size()[sort], stock);
        }
        count[sort] = 0;
    }

    /// Looks for a layout of exactly this cost.
    ///
    /// @param unit a length that every stock length is a multiple of
    Found at(long cost, long unit) {
        Model model = new Model();
        IntVar[] times = new IntVar[patterns.size()];
        int[] price = new int[times.length];
        for (int p = 0; p < times.length; p++) {
            price[p] = (int) (demand.cost()[demand.carries(demand.filled(patterns.get(p)))] / unit);
            int most = (int) (cost / unit / price[p]), useful = 0;
            for (int i = 0; i < demand.sorts(); i++)
                if (patterns.get(p)[i] > 0) useful = Math.max(useful, (demand.wanted()[i] + patterns.get(p)[i] - 1) / patterns.get(p)[i]);
            times[p] = model.intVar(0, Math.min(most, useful));
        }
        model.scalar(times, price, "=", (int) (cost / unit)).post();
        for (int i = 0; i < demand.sorts(); i++) {
            List<IntVar> with = new ArrayList<>();
            List<Integer> count = new ArrayList<>();
            for (int p = 0; p < times.length; p++)
                if (patterns.get(p)[i] > 0) { with.add(times[p]); count.add(patterns.get(p)[i]); }
            model.scalar(with.toArray(IntVar[]::new), count.stream().mapToInt(c -> c).toArray(), ">=", demand.wanted()[i]).post();
        }
        Solver solver = model.getSolver();
        solver.setSearch(Search.inputOrderUBSearch(fullestFirst(times)));
        solver.limitNode(MOST_NODES);
        if (solver.solve()) return new Found.Layout(chosen(times));
        return solver.isStopCriterionMet() ? new Found.Stalled() : new Found.None();
    }

    private IntVar[] fullestFirst(IntVar[] times) {
        return java.util.stream.IntStream.range(0, times.length).boxed()
                .sorted((a, b) -> Long.compare(waste(a), waste(b))).map(p -> times[p]).toArray(IntVar[]::new);
    }

    private long waste(int pattern) {
        long filled = demand.filled(patterns.get(pattern));
        return demand.room()[demand.carries(filled)] - filled;
    }

    private List<int[]> chosen(IntVar[] times) {
        List<int[]> chosen = new ArrayList<>();
        for (int p = 0; p < times.length; p++) for (int t = 0; t < times[p].getValue(); t++) chosen.add(patterns.get(p));
        return chosen;
    }
}
