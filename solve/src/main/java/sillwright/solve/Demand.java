package sillwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import sillwright.work.CutSolver.Cut;
import sillwright.work.FirstFit;

/// A cut list with like pieces counted together.
///
/// A piece counts with one kerf and a bar with one more, so that a bar of `n` pieces loses `n - 1` kerfs.
///
/// @param size    of each sort of piece, kerf added, the longest first, thousandths of a millimetre
/// @param wanted  how many of each
/// @param indices which pieces they are
/// @param room    what each stock length carries, kerf added, the shortest first
/// @param cost    each stock length itself
record Demand(long[] size, int[] wanted, List<List<Integer>> indices, long[] room, long[] cost) {
    static Demand of(List<Double> lengthsMm, List<Double> stockMm, double kerfMm) {
        long kerf = FirstFit.micron(kerfMm);
        Map<Long, List<Integer>> sorts = new TreeMap<>(java.util.Comparator.reverseOrder());
        for (int i = 0; i < lengthsMm.size(); i++)
            sorts.computeIfAbsent(FirstFit.micron(lengthsMm.get(i)) + kerf, _ -> new ArrayList<>()).add(i);
        long[] cost = stockMm.stream().mapToLong(FirstFit::micron).distinct().sorted().toArray();
        long[] room = java.util.Arrays.stream(cost).map(length -> length + kerf).toArray();
        return new Demand(sorts.keySet().stream().mapToLong(size -> size).toArray(), sorts.values().stream().mapToInt(List::size).toArray(),
                List.copyOf(sorts.values()), room, cost);
    }

    int sorts() { return size.length; }

    /// The shortest stock that carries so much, or -1.
    int carries(long filled) {
        for (int s = 0; s < room.length; s++) if (room[s] >= filled) return s;
        return -1;
    }

    long filled(int[] count) {
        long filled = 0;
        for (int i = 0; i < count.length; i++) filled += size[i] * count[i];
        return filled;
    }

    /// The same list with only so many left of each sort; `from` then tells which sort each was.
    Demand left(int[] left, List<Integer> from) {
        for (int i = 0; i < sorts(); i++) if (left[i] > 0) from.add(i);
        return new Demand(from.stream().mapToLong(i -> size[i]).toArray(), from.stream().mapToInt(i -> left[i]).toArray(),
                from.stream().map(indices::get).toList(), room, cost);
    }

    long cost(List<int[]> patterns) {
        long sum = 0;
        for (int[] pattern : patterns) sum += cost[carries(filled(pattern))];
        return sum;
    }

    /// The pieces themselves in the patterns chosen; what a pattern holds beyond what is wanted is left out of it.
    List<Cut> cuts(List<int[]> patterns) {
        int[] given = new int[sorts()];
        List<Cut> cuts = new ArrayList<>();
        for (int[] pattern : patterns) {
            List<Integer> in = new ArrayList<>();
            long filled = 0;
            for (int i = 0; i < pattern.length; i++)
                for (int k = 0; k < pattern[i] && given[i] < wanted[i]; k++) {
                    in.add(indices.get(i).get(given[i]++));
                    filled += size[i];
                }
            if (!in.isEmpty()) cuts.add(new Cut(cost[carries(filled)] / 1000.0, in));
        }
        return cuts;
    }
}
