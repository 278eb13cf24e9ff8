package sillwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/// The cut list with bars allowed in fractions: fillings are made as they are needed, each the best at the prices that the fillings so far put on the pieces.
///
/// Its answer can be no more than that of any whole layout. The bound kept is the prices' own, scaled down until no filling of any bar is worth more than the bar, so
/// that it holds even where the search is stopped early. Prices are steadied toward those of the best bound, since raw ones swing.
/// Source: Gilmore and Gomory (1961), column generation; Farley (1990), the bound; Wentges (1997), the steadying (all from memory).
final class Fractions {
    private static final int MOST_ROUNDS = 20_000;
    private static final double STEADY = 0.75, EPS = 1e-9;

    private final Demand demand;
    private final Effort effort;
    private final int[] left;
    private final int[] barsLeft;
    private final int[] rowSort;
    private final int[] rowBar;
    private final int rows;
    private final Filling[] basis;
    private final double[] cost;
    private final double[][] inverse;
    private final double[] times;
    private final double[] dual;
    private final double unit;
    private final double[] centre;
    private double bound;
    private double[] fair;
    private final double[] spare;

    /// @param left     how many of each sort are still wanted
    /// @param barsLeft how many of each bar there still are
    /// @param pool     fillings known from before; what is made here is added
    /// @param enough   thousandths of the price at which the bound need not be raised further
    Fractions(Demand demand, int[] left, int[] barsLeft, Set<Filling> pool, Effort effort, long enough) {
        this.demand = demand;
        this.effort = effort;
        this.left = left;
        this.barsLeft = barsLeft;
        this.rowSort = java.util.stream.IntStream.range(0, left.length).filter(i -> left[i] > 0).toArray();
        this.rowBar = java.util.stream.IntStream.range(demand.sold(), demand.room().length).filter(s -> barsLeft[s] > 0).toArray();
        this.rows = rowSort.length + rowBar.length;
        this.unit = Math.max(1, Arrays.stream(demand.cost()).max().orElse(1));
        this.basis = new Filling[rows];
        this.cost = new double[rows];
        this.inverse = new double[rows][rows];
        this.times = new double[rows];
        this.dual = new double[demand.sorts() + demand.room().length];
        this.centre = new double[dual.length];
        this.fair = new double[demand.sorts()];
        this.spare = new double[demand.room().length];
        for (int r = 0; r < rows; r++) {
            if (r < rowSort.length) {
                int i = rowSort[r], bar = demand.carries(demand.size()[i]);
                int n = (int) Math.min(left[i], demand.room()[bar] / demand.size()[i]);
                int[] pieces = new int[left.length];
                pieces[i] = n;
                basis[r] = Filling.of(pieces, demand.carries(demand.size()[i] * n));
                cost[r] = demand.cost()[basis[r].bar()] / unit;
                inverse[r][r] = 1.0 / n;
                times[r] = left[i] * inverse[r][r];
            } else {
                inverse[r][r] = 1;
                times[r] = barsLeft[rowBar[r - rowSort.length]];
            }
        }
        solve(pool, enough);
    }

    /// No layout costs less than this, thousandths.
    double bound() { return bound * unit; }

    /// The prices of the bound: no filling of any bar that is sold is worth more than the bar.
    double[] fair() { return fair.clone(); }

    /// How much more, at those prices, a filling of each bar may be worth than it costs: nothing for what is sold.
    double[] spare() { return spare.clone(); }

    /// The fillings in use, and how often, fractions and all.
    List<Used> used() {
        List<Used> used = new ArrayList<>();
        for (int r = 0; r < rows; r++) if (basis[r] != null && times[r] > 1e-7) used.add(new Used(basis[r], times[r]));
        return used;
    }

    record Used(Filling filling, double times) {}

    private void solve(Set<Filling> pool, long enough) {
        List<Filling> known = new ArrayList<>();
        Set<Filling> seen = new LinkedHashSet<>();
        for (Filling filling : pool) {
            Filling fits = filling.within(left, demand);
            if (!fits.isEmpty() && (fits.bar() < demand.sold() || barsLeft[fits.bar()] > 0) && seen.add(fits)) known.add(fits);
        }
        Pricing pricing = new Pricing(demand, left, effort);
        double[] asked = new double[demand.sorts()];
        for (int round = 0; round < MOST_ROUNDS && !effort.spent(); round++) {
            if (round % 200 == 0) duals();
            if (slack()) continue;
            Filling best = cheapest(known);
            if (best != null) {
                enter(best);
                continue;
            }
            double value = 0;
            for (int r = 0; r < rows; r++) value += cost[r] * times[r];
            if (demand.up(bound * unit) >= Math.min(enough, demand.up(value * unit))) return;
            boolean entered = false;
            for (double steady = bound > 0 ? STEADY : 0; !entered; steady = 0) {
                Pricing.Best[] all = priced(pricing, asked, steady);
                entered = take(all, pricing, known, seen, pool);
                if (steady == 0) break;
            }
            if (!entered) return;
        }
    }

    /// Fills every bar at prices between those of the best bound and the present ones, and keeps the bound that this gives.
    private Pricing.Best[] priced(Pricing pricing, double[] asked, double steady) {
        double[] at = new double[dual.length];
        for (int i = 0; i < at.length; i++) at[i] = steady * centre[i] + (1 - steady) * dual[i];
        for (int i = 0; i < asked.length; i++) asked[i] = Math.max(0, at[i]);
        Pricing.Best[] all = pricing.fill(asked);
        double over = 1, worth = 0;
        for (int s = 0; s < all.length; s++) {
            if (s >= demand.sold() && barsLeft[s] == 0) continue;
            double price = demand.cost()[s] / unit;
            if (s < demand.sold() && all[s].bound() > price + EPS) over = price > EPS ? Math.max(over, all[s].bound() / price) : Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < asked.length; i++) worth += asked[i] * left[i] / over;
        for (int s = demand.sold(); s < all.length; s++) worth -= saves(all[s], s, over) * barsLeft[s];
        if (worth > bound) {
            bound = worth;
            for (int i = 0; i < asked.length; i++) fair[i] = asked[i] * unit / over;
            for (int i = 0; i < asked.length; i++) centre[i] = at[i] / over;
            for (int s = 0; s < all.length; s++) {
                centre[demand.sorts() + s] = s < demand.sold() ? at[demand.sorts() + s] / over : -saves(all[s], s, over);
                spare[s] = s < demand.sold() ? 0 : unit * saves(all[s], s, over);
            }
        }
        return all;
    }

    /// What one bar of which there are only so many is worth above its price, at prices that the bars that are sold allow.
    private double saves(Pricing.Best best, int s, double over) { return Math.max(0, best.bound() / over - demand.cost()[s] / unit); }

    /// Adds what was found to the fillings known, and brings in the best of it.
    private boolean take(Pricing.Best[] all, Pricing pricing, List<Filling> known, Set<Filling> seen, Set<Filling> pool) {
        Filling best = null;
        double gain = EPS;
        for (int s = 0; s < all.length; s++) {
            if (s >= demand.sold() && barsLeft[s] == 0) continue;
            int[] pieces = all[s].best();
            long filled = demand.filled(pieces);
            if (filled == 0) continue;
            Filling filling = Filling.of(pieces, s < demand.sold() ? demand.carries(filled) : s);
            double worth = -reduced(filling);
            if (worth > gain) {
                gain = worth;
                best = filling;
            }
            if (worth > EPS && seen.add(filling)) {
                known.add(filling);
                pool.add(filling);
            }
        }
        for (int[] pieces : pricing.found()) {
            int bar = demand.carries(demand.filled(pieces));
            if (bar < 0) continue;
            Filling filling = Filling.of(pieces, bar);
            if (seen.add(filling)) {
                known.add(filling);
                pool.add(filling);
            }
        }
        if (best != null) enter(best);
        return best != null;
    }

    private double reduced(Filling filling) {
        double reduced = demand.cost()[filling.bar()] / unit - dual[demand.sorts() + filling.bar()];
        for (int k = 0; k < filling.sort().length; k++) reduced -= dual[filling.sort()[k]] * filling.count()[k];
        return reduced;
    }

    private Filling cheapest(List<Filling> known) {
        Filling best = null;
        double least = -EPS;
        for (Filling filling : known) {
            double reduced = reduced(filling);
            if (reduced < least) {
                least = reduced;
                best = filling;
            }
        }
        effort.spend(4L * known.size());
        return best;
    }

    /// From the basis; between, each exchange moves them.
    private void duals() {
        Arrays.fill(dual, 0);
        for (int r = 0; r < rows; r++) if (cost[r] != 0)
            for (int c = 0; c < rows; c++) dual[row(c)] += cost[r] * inverse[r][c];
        effort.spend((long) rows * rows);
    }

    private int row(int r) { return r < rowSort.length ? rowSort[r] : demand.sorts() + rowBar[r - rowSort.length]; }

    /// Brings in what takes up too many pieces, or leaves a bar in the rack, where that pays.
    private boolean slack() {
        int worst = -1;
        double least = -EPS;
        for (int r = 0; r < rows; r++) {
            double reduced = r < rowSort.length ? dual[row(r)] : -dual[row(r)];
            if (reduced < least) {
                least = reduced;
                worst = r;
            }
        }
        if (worst < 0) return false;
        double[] column = new double[rows];
        double sign = worst < rowSort.length ? -1 : 1;
        for (int r = 0; r < rows; r++) column[r] = sign * inverse[r][worst];
        return pivot(column, null, 0, least);
    }

    private void enter(Filling filling) {
        double[] column = new double[rows];
        for (int k = 0; k < filling.sort().length; k++) {
            int at = Arrays.binarySearch(rowSort, filling.sort()[k]);
            for (int r = 0; r < rows; r++) column[r] += inverse[r][at] * filling.count()[k];
        }
        if (filling.bar() >= demand.sold()) {
            int at = rowSort.length + Arrays.binarySearch(rowBar, filling.bar());
            for (int r = 0; r < rows; r++) column[r] += inverse[r][at];
        }
        pivot(column, filling, demand.cost()[filling.bar()] / unit, reduced(filling));
    }

    /// Brings a filling, or for `null` a slack, into use in place of the one it drives out first.
    private boolean pivot(double[] column, Filling filling, double price, double reduced) {
        int out = -1;
        for (int r = 0; r < rows; r++)
            if (column[r] > 1e-9 && (out < 0 || times[r] / column[r] < times[out] / column[out] - 1e-12
                    || times[r] / column[r] <= times[out] / column[out] + 1e-12 && column[r] > column[out])) out = r;
        if (out < 0) return false;
        double step = Math.max(0, times[out]) / column[out];
        double[] gone = inverse[out];
        for (int c = 0; c < rows; c++) {
            gone[c] /= column[out];
            dual[row(c)] += reduced * gone[c];
        }
        for (int r = 0; r < rows; r++) {
            if (r == out || column[r] == 0) continue;
            times[r] = Math.max(0, times[r] - step * column[r]);
            double by = column[r];
            double[] one = inverse[r];
            for (int c = 0; c < rows; c++) one[c] -= by * gone[c];
        }
        effort.spend((long) rows * rows);
        times[out] = step;
        basis[out] = filling;
        cost[out] = price;
        return true;
    }
}
