package sillwright.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import sillwright.work.CutSolver.Cut;
import sillwright.work.CutSolver.Stock;
import sillwright.work.FirstFit;

/// A cut list with like pieces counted together, and the bars it may be sawn from.
///
/// A piece counts with one kerf and a bar with one more, so that a bar of `n` pieces loses `n - 1` kerfs. Bars that are sold stand first, the shortest first, and each
/// longer one costs more; bars of which there are only so many stand behind them.
///
/// @param size    of each sort of piece, kerf added, the longest first, thousandths of a millimetre
/// @param wanted  how many of each
/// @param indices which pieces they are
/// @param room    what each bar carries, kerf added
/// @param cost    of each bar, thousandths of its price
/// @param count   how many there are of each
/// @param stock   the bars themselves
/// @param sold    how many of the sorts of bar are sold in any number
record Demand(long[] size, int[] wanted, List<List<Integer>> indices, long[] room, long[] cost, int[] count, List<Stock> stock, int sold) {
    static Demand of(List<Double> lengthsMm, List<Stock> given, double kerfMm) {
        long kerf = FirstFit.micron(kerfMm);
        Map<Long, List<Integer>> sorts = new TreeMap<>(Comparator.reverseOrder());
        for (int i = 0; i < lengthsMm.size(); i++)
            sorts.computeIfAbsent(FirstFit.micron(lengthsMm.get(i)) + kerf, _ -> new ArrayList<>()).add(i);
        List<Stock> stock = new ArrayList<>(FirstFit.worthwhile(given));
        int sold = stock.size();
        given.stream().filter(one -> !one.any()).forEach(stock::add);
        return new Demand(sorts.keySet().stream().mapToLong(size -> size).toArray(), sorts.values().stream().mapToInt(List::size).toArray(),
                List.copyOf(sorts.values()), stock.stream().mapToLong(one -> FirstFit.micron(one.lengthMm()) + kerf).toArray(), stock.stream().mapToLong(one -> FirstFit.micron(one.price())).toArray(),
                stock.stream().mapToInt(Stock::count).toArray(), List.copyOf(stock), sold);
    }

    int sorts() { return size.length; }

    boolean onlySold() { return sold == stock.size(); }

    /// The cheapest bar that is sold and carries so much, or -1.
    int carries(long filled) {
        for (int s = 0; s < sold; s++) if (room[s] >= filled) return s;
        return -1;
    }

    long filled(int[] pieces) {
        long filled = 0;
        for (int i = 0; i < pieces.length; i++) filled += size[i] * pieces[i];
        return filled;
    }

    long cost(List<Filling> fillings) {
        long sum = 0;
        for (Filling filling : fillings) sum += cost[filling.bar()];
        return sum;
    }

    /// The least sum of prices that is not under this, thousandths.
    long up(double least) { return FirstFit.reachable(cost, (long) Math.ceil(least * (1 - 1e-9) - 1e-3)); }

    /// The pieces themselves in the fillings chosen; what a filling holds beyond what is wanted is left out of it.
    List<Cut> cuts(List<Filling> fillings) {
        int[] given = new int[sorts()];
        List<Cut> cuts = new ArrayList<>();
        for (Filling filling : fillings) {
            List<Integer> in = new ArrayList<>();
            long filled = 0;
            for (int k = 0; k < filling.sort().length; k++) {
                int i = filling.sort()[k];
                for (int n = 0; n < filling.count()[k] && given[i] < wanted[i]; n++) {
                    in.add(indices.get(i).get(given[i]++));
                    filled += size[i];
                }
            }
            if (in.isEmpty()) continue;
            Stock one = stock.get(filling.bar() < sold ? carries(filled) : filling.bar());
            cuts.add(new Cut(one.lengthMm(), one.price(), in));
        }
        return cuts;
    }
}
