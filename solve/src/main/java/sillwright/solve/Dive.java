package sillwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/// Whole bars from fractions of bars: takes the whole ones, prices what is left anew, and goes on until nothing is left.
///
/// After each step the rest is also packed plainly, and the best of all is kept.
/// Source: rounding with residual problems, a standard of cutting stock texts (from memory).
final class Dive {
    /// So many last pieces are laid out by trying.
    private static final int FEW = 36;

    private final Demand demand;
    private final Set<Filling> pool;
    private final Effort effort;
    private final long goal;
    private List<Filling> best = List.of();
    private long bestCost = Long.MAX_VALUE;

    /// @param goal the cost at which to stop: nothing can be under it
    Dive(Demand demand, Set<Filling> pool, Effort effort, long goal) {
        this.demand = demand;
        this.pool = pool;
        this.effort = effort;
        this.goal = goal;
    }

    List<Filling> best() { return best; }

    long bestCost() { return bestCost; }

    /// @param turn the first goes by the greatest fraction, later ones by a draw among the great ones
    void go(Fractions start, int turn) {
        int[] left = demand.wanted().clone(), bars = demand.count().clone();
        SplittableRandom random = new SplittableRandom(turn);
        List<Filling> taken = new ArrayList<>();
        Fractions now = start;
        while (bestCost > goal && !effort.spent()) {
            boolean any = false;
            List<Fractions.Used> used = new ArrayList<>(now.used());
            if (turn > 0) for (int i = used.size() - 1; i > 0; i--) java.util.Collections.swap(used, i, random.nextInt(i + 1));
            used.sort((a, b) -> Double.compare(b.times(), a.times()));
            for (Fractions.Used one : used) {
                double share = one.times();
                for (int n = (int) Math.floor(share + 1e-6); n > 0; n--) any |= take(one.filling(), left, bars, taken);
            }
            if (!any) {
                used.removeIf(one -> one.times() < 1e-6);
                int from = 0, takes = Math.max(1, used.size() / (turn % 2 == 0 ? 40 : 15));
                double great = used.isEmpty() ? 0 : used.getFirst().times() - Math.floor(used.getFirst().times());
                for (Fractions.Used one : used) {
                    if (takes == 0) break;
                    if (turn > 0 && from++ > 0 && random.nextInt(3) == 0) continue;
                    if (any && one.times() < Math.max(0.6, great - 0.1)) break;
                    if (turn > 1 && !any && used.size() > 3 && random.nextInt(3) == 0) continue;
                    if (take(one.filling(), left, bars, taken)) {
                        any = true;
                        takes--;
                    }
                }
                if (!any) for (Fractions.Used one : used) if (take(one.filling(), left, bars, taken)) {
                    any = true;
                    break;
                }
            }
            keep(taken, left);
            boolean empty = true;
            for (int n : left) empty &= n == 0;
            if (empty || !any) return;
            if (demand.onlySold() && demand.cost(taken) >= bestCost) return;
            now = new Fractions(demand, left.clone(), bars.clone(), pool, effort, Long.MAX_VALUE);
            if (demand.cost(taken) + now.bound() > bestCost - 1) return;
            if (few(left) && finish(taken, left, bars, now)) return;
        }
    }

    private static boolean few(int[] left) {
        int pieces = 0;
        for (int n : left) pieces += n;
        return pieces <= FEW;
    }

    /// Looks for the best there can be of the last pieces.
    private boolean finish(List<Filling> taken, int[] left, int[] bars, Fractions now) {
        effort.spend(400_000);
        if (!(new WholeBars(demand, now.fair(), now.spare()).within(left, bars, goal - demand.cost(taken)) instanceof WholeBars.Found.Layout(var rest))) return false;
        best = new ArrayList<>(taken);
        best.addAll(rest);
        bestCost = demand.cost(best);
        return true;
    }

    private boolean take(Filling filling, int[] left, int[] bars, List<Filling> taken) {
        if (filling.bar() >= demand.sold() && bars[filling.bar()] == 0) return false;
        Filling fits = filling.within(left, demand);
        if (fits.isEmpty()) return false;
        for (int k = 0; k < fits.sort().length; k++) left[fits.sort()[k]] -= fits.count()[k];
        if (fits.bar() >= demand.sold()) bars[fits.bar()]--;
        taken.add(fits);
        return true;
    }

    private void keep(List<Filling> taken, int[] left) {
        List<Filling> all = new ArrayList<>(taken);
        for (int open = 0; open < demand.sold(); open++) {
            List<Filling> whole = new ArrayList<>(taken);
            whole.addAll(plain(left, open));
            long cost = demand.cost(whole);
            if (cost < bestCost) {
                bestCost = cost;
                best = whole;
            }
        }
    }

    /// Best fit of what is left into new bars of one length that is sold, each exchanged at the end for the cheapest that carries it.
    private List<Filling> plain(int[] left, int open) {
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
                    room.add(demand.room()[Math.max(open, demand.carries(demand.size()[i]))]);
                }
                bars.get(tightest)[i]++;
                room.set(tightest, room.get(tightest) - demand.size()[i]);
            }
        return bars.stream().map(pieces -> Filling.of(pieces, demand.carries(demand.filled(pieces)))).toList();
    }
}
