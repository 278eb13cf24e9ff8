package sillwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// Whole bars within a given cost, or the proof that there are none.
///
/// Bar after bar is filled, each with the longest piece still left in it. Prices that no filling of any bar beats tell what
/// the rest must cost at least, so a bar may waste no more than the given cost leaves over; what was left once without an
/// answer is not tried again with less.
/// Source: branch and bound by reduced costs over bin completions, a standard of packing texts (from memory).
final class WholeBars {
    /// A search that takes more steps than this stops, so that no list can hang the program.
    private static final long MOST_STEPS = 6_000_000;
    private static final int MOST_KEPT = 400_000;
    private static final double SLACK = 1e-3;

    private final Demand demand;
    private final double[] price;
    private final Map<Left, Long> failed = new HashMap<>();
    private final List<int[]> bars = new ArrayList<>();
    private long steps;

    /// What a search came to: a layout, the proof that there is none, or neither.
    sealed interface Found {
        record Layout(List<int[]> patterns) implements Found {}
        record None() implements Found {}
        record Stalled() implements Found {}
    }

    private record Left(int[] count) {
        @Override
        public boolean equals(Object other) { return other instanceof Left(var counts) && Arrays.equals(count, counts); }

        @Override
        public int hashCode() { return Arrays.hashCode(count); }
    }

    /// One way to fill a bar, and what it costs above the prices of its pieces.
    private record Filling(int[] count, long cost, double over) {}

    /// @param price of each sort, such that no filling of any bar is worth more than the bar
    WholeBars(Demand demand, double[] price) {
        this.demand = demand;
        this.price = price;
    }

    /// Looks for a layout that costs no more than this.
    Found within(long cost) {
        bars.clear();
        steps = 0;
        if (search(demand.wanted().clone(), cost)) return new Found.Layout(List.copyOf(bars));
        return steps > MOST_STEPS ? new Found.Stalled() : new Found.None();
    }

    private boolean search(int[] left, long budget) {
        double need = 0;
        int first = -1;
        for (int i = left.length - 1; i >= 0; i--) {
            if (left[i] > 0) first = i;
            need += price[i] * left[i];
        }
        if (first < 0) return true;
        if (need > budget + SLACK || failed.getOrDefault(new Left(left), -1L) >= budget) return false;
        List<Filling> fillings = new ArrayList<>();
        for (int s = 0; s < demand.room().length; s++)
            if (demand.cost()[s] <= budget && demand.size()[first] <= demand.room()[s]) {
                int[] count = new int[left.length];
                count[first] = 1;
                fill(left, count, first, demand.room()[s] - demand.size()[first], demand.cost()[s] - price[first], budget - need + SLACK, s, fillings);
            }
        fillings.sort(Comparator.comparingDouble(Filling::over));
        for (Filling filling : fillings) {
            int[] rest = left.clone();
            for (int i = 0; i < rest.length; i++) rest[i] -= filling.count[i];
            bars.add(filling.count);
            if (search(rest, budget - filling.cost)) return true;
            bars.removeLast();
            if (steps > MOST_STEPS) return false;
        }
        if (failed.size() < MOST_KEPT) failed.merge(new Left(left), budget, Math::max);
        return false;
    }

    /// Every filling that leaves no room for a piece still there, from sort `from` on.
    ///
    /// @param over  what the bar costs above the prices of what is in it so far
    /// @param allow the most it may cost above them when full
    private void fill(int[] left, int[] count, int from, long room, double over, double allow, int stock, List<Filling> fillings) {
        if (++steps > MOST_STEPS) return;
        int sort = from;
        while (sort < left.length && (left[sort] == count[sort] || demand.size()[sort] > room)) sort++;
        if (sort == left.length) {
            for (int i = 0; i < left.length; i++) if (count[i] < left[i] && demand.size()[i] <= room) return;
            if (over <= allow && demand.carries(demand.filled(count)) == stock) fillings.add(new Filling(count.clone(), demand.cost()[stock], over));
            return;
        }
        if (over - most(left, count, sort, room) > allow) return;
        int before = count[sort], fits = (int) Math.min(left[sort] - before, room / demand.size()[sort]);
        for (int k = fits; k >= 0; k--) {
            count[sort] = before + k;
            fill(left, count, sort + 1, room - k * demand.size()[sort], over - k * price[sort], allow, stock, fillings);
        }
        count[sort] = before;
    }

    /// No more than this is the worth of what can still go in: the room at the best price for its length.
    private double most(int[] left, int[] count, int from, long room) {
        double best = 0;
        for (int i = from; i < left.length; i++)
            if (left[i] > count[i] && demand.size()[i] <= room) best = Math.max(best, price[i] / demand.size()[i]);
        return best * room;
    }
}
