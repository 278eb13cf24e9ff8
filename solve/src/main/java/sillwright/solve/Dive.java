package sillwright.solve;

import java.util.ArrayList;
import java.util.List;

/// Whole bars from fractions of bars: takes the whole ones, prices what is left anew, and goes on until nothing is left.
///
/// After each step the rest is also packed plainly, and the best of all is kept.
/// Source: rounding with residual problems, a standard of cutting stock texts (from memory).
final class Dive {
    private final Demand demand;
    private final long goal;
    private List<int[]> best = List.of();
    private long bestCost = Long.MAX_VALUE;

    /// @param goal the cost at which to stop: nothing can be under it
    Dive(Demand demand, long goal) {
        this.demand = demand;
        this.goal = goal;
    }

    List<int[]> best() { return best; }

    long bestCost() { return bestCost; }

    /// @param first which of the fractional bars is taken first where there is no whole one: 0 the fullest used, 1 the next, ...
    void go(PatternPrices start, int first) {
        int[] left = demand.wanted().clone();
        List<int[]> taken = new ArrayList<>();
        PatternPrices prices = start;
        List<Integer> from = new ArrayList<>();
        demand.left(left, from);
        int skip = first;
        while (bestCost > goal) {
            boolean whole = take(prices, from, left, taken, 1, 0);
            if (!whole) {
                take(prices, from, left, taken, 0, skip);
                skip = 0;
            }
            keep(taken, left);
            from = new ArrayList<>();
            Demand rest = demand.left(left, from);
            if (rest.sorts() == 0) return;
            prices = new PatternPrices(rest);
        }
    }

    /// Takes every pattern used at least once, or with `least` 0 the one used most but for `skip` others.
    private boolean take(PatternPrices prices, List<Integer> from, int[] left, List<int[]> taken, int least, int skip) {
        List<Integer> order = new ArrayList<>();
        for (int r = 0; r < prices.times().length; r++)
            if (prices.times()[r] > 1e-7 && demand.filled(wide(prices.patterns().get(r), from)) > 0) order.add(r);
        order.sort((a, b) -> Double.compare(prices.times()[b], prices.times()[a]));
        if (least == 0) order = order.subList(Math.min(skip, order.size() - 1), Math.min(skip, order.size() - 1) + 1);
        boolean any = false;
        for (int r : order) {
            int times = least == 0 ? 1 : (int) Math.floor(prices.times()[r] + 1e-7);
            for (int t = 0; t < times; t++) {
                int[] pattern = wide(prices.patterns().get(r), from);
                boolean holds = false;
                for (int i = 0; i < pattern.length; i++) {
                    pattern[i] = Math.min(pattern[i], left[i]);
                    holds |= pattern[i] > 0;
                }
                if (!holds) break;
                for (int i = 0; i < pattern.length; i++) left[i] -= pattern[i];
                taken.add(pattern);
                any = true;
            }
        }
        return any;
    }

    private int[] wide(int[] pattern, List<Integer> from) {
        int[] wide = new int[demand.sorts()];
        for (int i = 0; i < pattern.length; i++) wide[from.get(i)] = pattern[i];
        return wide;
    }

    private void keep(List<int[]> taken, int[] left) {
        List<int[]> all = new ArrayList<>(taken);
        all.addAll(plain(left));
        long cost = demand.cost(all);
        if (cost < bestCost) {
            bestCost = cost;
            best = all;
        }
    }

    /// Best fit of what is left into new bars of the longest stock.
    private List<int[]> plain(int[] left) {
        List<int[]> bars = new ArrayList<>();
        List<Long> room = new ArrayList<>();
        for (int i = 0; i < left.length; i++)
            for (int k = 0; k < left[i]; k++) {
                int tightest = -1;
                for (int b = 0; b < bars.size(); b++)
                    if (room.get(b) >= demand.size()[i] && (tightest < 0 || room.get(b) < room.get(tightest))) tightest = b;
                if (tightest < 0) {
                    tightest = bars.size();
                    bars.add(new int[left.length]);
                    room.add(demand.room()[demand.room().length - 1]);
                }
                bars.get(tightest)[i]++;
                room.set(tightest, room.get(tightest) - demand.size()[i]);
            }
        return bars;
    }
}
