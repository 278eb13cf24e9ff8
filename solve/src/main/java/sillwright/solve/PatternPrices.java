package sillwright.solve;

import java.util.ArrayList;
import java.util.List;

/// The cut list with bars allowed in fractions: patterns are made as they are needed, each the best filling at the prices
/// that the patterns so far put on the pieces.
///
/// Its answer can be no more than that of any whole layout. The bound kept is the prices' own, scaled down until no
/// filling of any bar is worth more than the bar, so that it holds even where the search is stopped early.
/// Source: Gilmore and Gomory (1961), column generation; Farley (1990), the bound (both from memory).
final class PatternPrices {
    private static final int MOST_ROUNDS = 4000;

    private final Demand demand;
    private final int[] wanted;
    private final int sorts;
    private final List<int[]> basis = new ArrayList<>();
    private final double[] cost;
    private final double[][] inverse;
    private final double[] times;
    private final double unit;
    private final double[] fair;
    private double bound;

    PatternPrices(Demand demand) {
        this.demand = demand;
        this.wanted = demand.wanted();
        this.sorts = demand.sorts();
        this.unit = demand.cost()[demand.cost().length - 1];
        this.cost = new double[sorts];
        this.inverse = new double[sorts][sorts];
        this.times = new double[sorts];
        this.fair = new double[sorts];
        for (int i = 0; i < sorts; i++) {
            int[] only = new int[sorts];
            int stock = demand.carries(demand.size()[i]);
            only[i] = (int) Math.min(wanted[i], demand.room()[stock] / demand.size()[i]);
            basis.add(only);
            cost[i] = demand.cost()[stock] / unit;
            inverse[i][i] = 1.0 / only[i];
            times[i] = wanted[i] * inverse[i][i];
        }
        solve();
    }

    /// No layout uses less stock than this, thousandths of a millimetre.
    double bound() { return bound * unit; }

    /// The prices of the bound: no filling of any bar is worth more than the bar.
    double[] fair() { return fair.clone(); }

    /// The patterns in use; one that only takes up what is left over has no pieces.
    List<int[]> patterns() { return basis; }

    /// How often each pattern is used, fractions and all.
    double[] times() { return times; }

    private void solve() {
        Pricing pricing = new Pricing(demand, wanted);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] prices = prices();
            int surplus = 0;
            for (int i = 1; i < sorts; i++) if (prices[i] < prices[surplus]) surplus = i;
            if (prices[surplus] < -1e-9) {
                if (!enter(null, surplus, 0)) return;
                continue;
            }
            int stock = -1;
            double gain = 1e-9, over = 1;
            int[] best = null;
            for (int s = 0; s < demand.room().length; s++) {
                double value = pricing.fill(prices, demand.room()[s]);
                over = Math.max(over, pricing.bound() * unit / demand.cost()[s]);
                double relative = value * unit / demand.cost()[s] - 1;
                if (relative > gain) {
                    gain = relative;
                    stock = s;
                    best = pricing.best();
                }
            }
            double worth = 0;
            for (int i = 0; i < sorts; i++) worth += Math.max(0, prices[i]) * wanted[i];
            if (worth / over > bound) {
                bound = worth / over;
                for (int i = 0; i < sorts; i++) fair[i] = Math.max(0, prices[i]) * unit / over;
            }
            if (best == null || !enter(best, -1, demand.cost()[stock] / unit)) return;
        }
    }

    private double[] prices() {
        double[] prices = new double[sorts];
        for (int r = 0; r < sorts; r++) if (cost[r] != 0) for (int i = 0; i < sorts; i++) prices[i] += cost[r] * inverse[r][i];
        return prices;
    }

    /// Brings a pattern, or for `null` the surplus of one sort, into use in place of the one it drives out first.
    private boolean enter(int[] pattern, int surplus, double price) {
        double[] column = new double[sorts];
        for (int r = 0; r < sorts; r++) {
            if (pattern == null) column[r] = -inverse[r][surplus];
            else for (int i = 0; i < sorts; i++) if (pattern[i] != 0) column[r] += inverse[r][i] * pattern[i];
        }
        int out = -1;
        for (int r = 0; r < sorts; r++)
            if (column[r] > 1e-9 && (out < 0 || times[r] / column[r] < times[out] / column[out] - 1e-12
                    || times[r] / column[r] <= times[out] / column[out] + 1e-12 && column[r] > column[out])) out = r;
        if (out < 0) return false;
        double step = Math.max(0, times[out]) / column[out];
        for (int i = 0; i < sorts; i++) inverse[out][i] /= column[out];
        for (int r = 0; r < sorts; r++) {
            if (r == out) continue;
            times[r] = Math.max(0, times[r] - step * column[r]);
            if (column[r] != 0) for (int i = 0; i < sorts; i++) inverse[r][i] -= column[r] * inverse[out][i];
        }
        times[out] = step;
        basis.set(out, pattern == null ? new int[sorts] : pattern);
        cost[out] = price;
        return true;
    }
}
