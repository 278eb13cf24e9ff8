package sillwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/// The filling of one bar that is worth most at given prices: a bounded knapsack, searched depth first.
///
/// What the rest can be worth at most is looked up: the same question with lengths in coarse steps, each piece rounded down, worked up beforehand from the last piece to the first. Where
/// the coarse steps are the true ones, the search walks straight to the answer.
/// Source: Gilmore and Gomory (1961) for its use; Martello and Toth, *Knapsack Problems* (1990), ch. 2 and 3 for search and recursion (both from memory).
final class Pricing {
    private static final int COARSE = 2000, MOST_STEPS = 400_000;
    /// What a step of the search costs beside one of working the coarse lengths up, which runs straight through an array. Measured.
    private static final long DEAR = 25;

    private final Demand demand;
    private final Effort effort;
    private final int[] most;
    private final long step;
    private final int[] coarse;
    private final int longest;
    private double[][] rest = new double[0][];
    private int[] order;
    private double[] price;
    private int[] count;
    private int[] best;
    private double bestValue;
    private int steps;
    private final List<int[]> found = new ArrayList<>();

    /// What one bar can be filled with at most.
    ///
    /// @param value of the best filling found
    /// @param bound no filling is worth more
    /// @param best  how many of every sort
    record Best(double value, double bound, int[] best) {}

    /// @param most how many of each sort a bar may hold
    Pricing(Demand demand, int[] most, Effort effort) {
        this.demand = demand;
        this.most = most;
        this.effort = effort;
        long common = 0, room = 0;
        for (int i = 0; i < most.length; i++) if (most[i] > 0) common = gcd(common, demand.size()[i]);
        for (long one : demand.room()) room = Math.max(room, one);
        common = Math.max(1, common);
        this.step = common * Math.max(1, (room / common + COARSE - 1) / COARSE);
        this.longest = (int) (room / step);
        this.coarse = new int[most.length];
        for (int i = 0; i < most.length; i++) coarse[i] = (int) (demand.size()[i] / step);
    }

    private static long gcd(long a, long b) { return b == 0 ? a : gcd(b, a % b); }

    /// The best for every sort of bar.
    ///
    /// @param prices of each sort; what is worth nothing is left out
    Best[] fill(double[] prices) {
        price = prices;
        found.clear();
        order = IntStream.range(0, prices.length).filter(i -> prices[i] > 1e-12 && most[i] > 0).boxed()
                .sorted(Comparator.comparingDouble(i -> -prices[i] / demand.size()[i])).mapToInt(i -> i).toArray();
        ahead();
        Best[] all = new Best[demand.room().length];
        for (int s = 0; s < all.length; s++) {
            count = new int[price.length];
            best = new int[price.length];
            bestValue = 0;
            steps = 0;
            search(0, demand.room()[s], 0);
            effort.spend(DEAR * steps);
            all[s] = new Best(bestValue, steps > MOST_STEPS ? Math.max(bestValue, rest[0][(int) (demand.room()[s] / step)]) : bestValue, best);
        }
        return all;
    }

    /// Other good fillings met on the way.
    List<int[]> found() { return found; }

    /// What the pieces from each place in the order on are worth at most in every coarse length.
    private void ahead() {
        if (rest.length < order.length + 1) rest = new double[order.length + 1][longest + 1];
        Arrays.fill(rest[order.length], 0);
        for (int at = order.length - 1; at >= 0; at--) {
            int sort = order[at], size = coarse[sort];
            double worth = price[sort];
            double[] with = rest[at], without = rest[at + 1];
            if (size == 0) {
                for (int room = 0; room <= longest; room++) with[room] = without[room] + worth * most[sort];
                continue;
            }
            int fits = Math.min(most[sort], longest / size);
            System.arraycopy(without, 0, with, 0, longest + 1);
            if (fits > 4) {
                // Any number of it: a little too much, and quick.
                for (int room = size; room <= longest; room++) with[room] = Math.max(with[room], with[room - size] + worth);
                effort.spend(longest);
            } else for (int n = 1; n <= fits; n++) {
                double all = n * worth;
                for (int room = n * size; room <= longest; room++) with[room] = Math.max(with[room], without[room - n * size] + all);
                effort.spend(longest);
            }
        }
    }

    private void search(int at, long room, double value) {
        if (value > bestValue + 1e-10) {
            bestValue = value;
            best = count.clone();
            if (value > 1 && found.size() < 60) found.add(best);
        }
        while (at < order.length && demand.size()[order[at]] > room) at++;
        if (at == order.length || ++steps > MOST_STEPS || value + rest[at][(int) (room / step)] <= bestValue + 1e-10) return;
        int sort = order[at];
        long size = demand.size()[sort];
        for (int k = (int) Math.min(most[sort], room / size); k >= 0 && steps <= MOST_STEPS; k--) {
            long left = room - k * size;
            if (value + k * price[sort] + rest[at + 1][(int) (left / step)] <= bestValue + 1e-10) continue;
            count[sort] = k;
            search(at + 1, left, value + k * price[sort]);
        }
        count[sort] = 0;
    }
}
