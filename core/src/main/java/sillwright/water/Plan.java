package sillwright.water;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;

/// In which order the sources and the seen findings of a network are taken out of it, so that the tables stay small.
///
/// Sources and findings are the nodes of a graph, joined where they are linked; taking a node out joins its neighbours.
/// The node that joins fewest new pairs goes first, or the one with fewest neighbours: the cheaper of the two orders.
/// Source: greedy elimination orders, a standard of texts on graphical models (from memory).
///
/// @param order sources by their number, findings by theirs after all sources
/// @param width the most neighbours that a node has when it goes
/// @param cost  numbers in all tables together, roughly the steps that one weighing takes
record Plan(int[] order, int width, double cost) {

    /// @param linked for each seen finding whether each source is linked to it
    /// @param kept   sources that are never taken out
    static Plan of(int sources, boolean[][] linked, Set<Integer> kept) {
        Plan fill = greedy(sources, linked, kept, true), degree = greedy(sources, linked, kept, false);
        return fill.cost <= degree.cost ? fill : degree;
    }

    private static Plan greedy(int sources, boolean[][] linked, Set<Integer> kept, boolean byFill) {
        int nodes = sources + linked.length;
        BitSet[] near = new BitSet[nodes];
        for (int v = 0; v < nodes; v++) near[v] = new BitSet(nodes);
        for (int f = 0; f < linked.length; f++)
            for (int i = 0; i < sources; i++)
                if (linked[f][i]) {
                    near[i].set(sources + f);
                    near[sources + f].set(i);
                }
        List<Integer> left = new ArrayList<>();
        for (int v = 0; v < nodes; v++) if (!kept.contains(v)) left.add(v);
        int[] order = new int[left.size()];
        double cost = 0;
        int width = 0;
        for (int step = 0; step < order.length; step++) {
            int best = -1;
            long least = Long.MAX_VALUE;
            for (int v : left) {
                long joins = byFill ? fill(near, v) : near[v].cardinality();
                if (joins < least) {
                    least = joins;
                    best = v;
                }
            }
            BitSet around = near[best];
            width = Math.max(width, around.cardinality());
            cost += Math.pow(2, around.cardinality() + 1);
            for (int v = around.nextSetBit(0); v >= 0; v = around.nextSetBit(v + 1)) {
                near[v].or(around);
                near[v].clear(v);
                near[v].clear(best);
            }
            left.remove((Integer) best);
            order[step] = best;
        }
        return new Plan(order, Math.max(width, kept.size()), cost + Math.pow(2, kept.size()));
    }

    /// Pairs of neighbours that are not joined yet, counted twice.
    private static long fill(BitSet[] near, int v) {
        long missing = 0;
        for (int u = near[v].nextSetBit(0); u >= 0; u = near[v].nextSetBit(u + 1)) {
            BitSet apart = (BitSet) near[v].clone();
            apart.andNot(near[u]);
            missing += apart.cardinality() - 1;
        }
        return missing;
    }
}
