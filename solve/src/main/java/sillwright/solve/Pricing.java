package sillwright.solve;

/// The filling of one bar that is worth most at given prices: a bounded knapsack, by depth-first search with the
/// fractional bound.
///
/// Source: Gilmore and Gomory (1961) for its use; Martello and Toth, *Knapsack Problems* (1990), ch. 3 for the search
/// (both from memory).
final class Pricing {
    /// A search that takes more steps than this stops and leaves its bound, so that no list can hang the program.
    private static final int MOST_STEPS = 2_000_000;

    private final Demand demand;
    private final int[] most;
    private int[] order;
    private double[] price;
    private int[] count;
    private int[] best;
    private double bestValue;
    private double bound;
    private int steps;

    /// @param most how many of each sort a bar may hold
    Pricing(Demand demand, int[] most) {
        this.demand = demand;
        this.most = most;
    }

    /// @return the value of the best filling found
    double fill(double[] prices, long room) {
        price = prices;
        order = java.util.stream.IntStream.range(0, prices.length).filter(i -> prices[i] > 1e-12 && most[i] > 0).boxed()
                .sorted((a, b) -> Double.compare(prices[b] / demand.size()[b], prices[a] / demand.size()[a])).mapToInt(i -> i).toArray();
        count = new int[prices.length];
        best = new int[prices.length];
        bestValue = 0;
        steps = 0;
        search(0, room, 0);
        bound = steps > MOST_STEPS ? fractional(0, room) : bestValue;
        return bestValue;
    }

    int[] best() { return best; }

    /// No filling is worth more than this.
    double bound() { return bound; }

    private void search(int at, long room, double value) {
        if (value > bestValue + 1e-10) {
            bestValue = value;
            best = count.clone();
        }
        if (at == order.length || ++steps > MOST_STEPS || value + fractional(at, room) <= bestValue + 1e-10) return;
        int sort = order[at];
        int fits = (int) Math.min(most[sort], room / demand.size()[sort]);
        for (int k = fits; k >= 0; k--) {
            count[sort] = k;
            search(at + 1, room - k * demand.size()[sort], value + k * price[sort]);
        }
    }

    private double fractional(int at, long room) {
        double value = 0;
        for (int i = at; i < order.length && room > 0; i++) {
            long size = demand.size()[order[i]];
            if (most[order[i]] * size <= room) {
                value += most[order[i]] * price[order[i]];
                room -= most[order[i]] * size;
            } else return value + price[order[i]] * room / size;
        }
        return value;
    }
}
