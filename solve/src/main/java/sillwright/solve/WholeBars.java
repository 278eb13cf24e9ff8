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
    /// A search that looks at sorts of pieces more often than this stops, so that no list can hang the program.
    private static final long MOST_STEPS = 400_000_000, FEW_STEPS = 4_000_000;
    private static final int MOST_KEPT = 400_000;
    private static final double SLACK = 1e-3;

    private final Demand demand;
    private final double[] price;
    private final double[] spare;
    private final Map<Left, Long> failed = new HashMap<>();
    private final List<Full> bars = new ArrayList<>();
    private long steps, limit;

    /// What a search came to: a layout, the proof that there is none, or neither.
    sealed interface Found {
        record Layout(List<Filling> fillings) implements Found {}
        record None() implements Found {}
        record Stalled() implements Found {}
    }

    private record Left(int[] count, int[] few) {
        @Override
        public boolean equals(Object other) { return other instanceof Left(var counts, var bars) && Arrays.equals(count, counts) && Arrays.equals(few, bars); }

        @Override
        public int hashCode() { return 31 * Arrays.hashCode(count) + Arrays.hashCode(few); }
    }

    /// One way to fill a bar, and what it costs above the prices of its pieces.
    private record Full(int[] count, int bar, double over) {}

    /// @param price of each sort, such that no filling of any bar that is sold is worth more than the bar
    /// @param spare how much more than its price a filling of each bar may be worth; nothing for what is sold
    WholeBars(Demand demand, double[] price, double[] spare) {
        this.demand = demand;
        this.price = price;
        this.spare = spare;
    }

    /// Looks for a layout that costs no more than this.
    Found within(long cost) { return within(demand.wanted(), demand.count(), cost, MOST_STEPS); }

    /// The same for what is left of the list, with a short search.
    Found within(int[] left, int[] barsLeft, long cost) { return within(left, barsLeft, cost, FEW_STEPS); }

    private Found within(int[] left, int[] barsLeft, long cost, long limit) {
        this.limit = limit;
        bars.clear();
        steps = 0;
        if (search(left.clone(), Arrays.copyOfRange(barsLeft, demand.sold(), barsLeft.length), cost)) return new Found.Layout(bars.stream().map(full -> Filling.of(full.count, full.bar)).toList());
        return steps > limit ? new Found.Stalled() : new Found.None();
    }

    /// @param few how many there still are of each bar behind those that are sold
    private boolean search(int[] left, int[] few, long budget) {
        double need = 0;
        steps += left.length;
        int first = -1;
        for (int i = left.length - 1; i >= 0; i--) {
            if (left[i] > 0) first = i;
            need += price[i] * left[i];
        }
        if (first < 0) return true;
        for (int f = 0; f < few.length; f++) need -= spare[demand.sold() + f] * few[f];
        Left state = new Left(left, few);
        if (need > budget + SLACK || failed.getOrDefault(state, -1L) >= budget) return false;
        List<Full> fillings = new ArrayList<>();
        for (int s = 0; s < demand.room().length; s++)
            if (demand.cost()[s] <= budget && demand.size()[first] <= demand.room()[s] && (s < demand.sold() || few[s - demand.sold()] > 0)) {
                int[] count = new int[left.length];
                count[first] = 1;
                fill(left, count, first, demand.room()[s] - demand.size()[first], demand.cost()[s] + spare[s] - price[first], budget - need + SLACK, s, fillings);
            }
        fillings.sort(Comparator.comparingDouble(Full::over));
        for (Full filling : fillings) {
            steps += left.length;
            int[] rest = left.clone();
            for (int i = 0; i < rest.length; i++) rest[i] -= filling.count[i];
            int[] fewer = few;
            if (filling.bar >= demand.sold()) {
                fewer = few.clone();
                fewer[filling.bar - demand.sold()]--;
            }
            bars.add(filling);
            if (search(rest, fewer, budget - demand.cost()[filling.bar])) return true;
            bars.removeLast();
            if (steps > limit) return false;
        }
        if (failed.size() < MOST_KEPT) failed.merge(state, budget, Math::max);
        return false;
    }

    /// Every filling that leaves no room for a piece still there, from sort `from` on.
    ///
    /// @param over  what the bar costs above the prices of what is in it so far
    /// @param allow the most it may cost above them when full
    private void fill(int[] left, int[] count, int from, long room, double over, double allow, int stock, List<Full> fillings) {
        if (++steps > limit) return;
        int sort = from;
        while (sort < left.length && (left[sort] == count[sort] || demand.size()[sort] > room)) sort++;
        if (sort == left.length) {
            steps += left.length;
            for (int i = 0; i < left.length; i++) if (count[i] < left[i] && demand.size()[i] <= room) return;
            if (over <= allow && (stock >= demand.sold() || demand.carries(demand.filled(count)) == stock)) fillings.add(new Full(count.clone(), stock, over));
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
        steps += left.length - from;
        for (int i = from; i < left.length; i++)
            if (left[i] > count[i] && demand.size()[i] <= room) best = Math.max(best, price[i] / demand.size()[i]);
        return best * room;
    }
}
