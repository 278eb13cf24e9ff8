package sillwright.water.net;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

import sillwright.measure.SplitMix;

/// In which order the sources and the seen findings of a network go out of it, so that the table carried along stays small.
///
/// Sources and findings are the nodes of a graph, joined where they are linked; each part of it that hangs together goes by itself.
/// The nodes that have a neighbour already out stand at the front; a node that goes out brings its neighbours there. The order is
/// built from several first nodes, always with the node that leaves the front shortest, and the cheapest is kept: the shortest front of
/// all is a hard problem of its own (vertex separation), and a near one serves.
/// Source: frontier orders for vertex separation, a standard of texts on graphs (from memory).
///
/// @param parts orders, one for each part that hangs together; sources by their number, findings by theirs after all sources
/// @param width the longest front
/// @param cost  steps of one weighing, roughly
record Plan(List<int[]> parts, int width, double cost) {
    /// First nodes tried for one part, at most.
    private static final int TRIES = 48;
    /// An order that costs more than so many steps is worth searching on, so many moves, most of them no further than so many places.
    private static final double DEAR = 1_000_000;
    private static final int MOVES = 6_000, REACH = 16;
    /// Above this many nodes at the front no table is tried.
    static final int WIDEST = 24;

    /// @param linked for each seen finding the sources linked to it
    /// @param kept   for each source whether it never goes out
    static Plan of(int sources, List<int[]> linked, boolean[] kept) {
        int nodes = sources + linked.size();
        Bits[] near = new Bits[nodes];
        for (int v = 0; v < nodes; v++) near[v] = new Bits(nodes);
        for (int f = 0; f < linked.size(); f++)
            for (int source : linked.get(f)) {
                near[source].set(sources + f);
                near[sources + f].set(source);
            }
        List<int[]> parts = new ArrayList<>();
        int width = 0;
        double cost = 0;
        for (List<Integer> part : apart(near, sources)) {
            List<Integer> out = part.stream().filter(v -> v >= sources || !kept[v]).toList();
            Order best = null;
            int tries = Math.min(TRIES, out.size());
            for (int t = 0; t < tries; t++) {
                Order order = Order.from(out.get(t * out.size() / tries), out, near, best == null ? Double.MAX_VALUE : best.cost);
                if (order != null) best = order;
            }
            if (best != null && best.cost > DEAR) best = best.shuffled(near);
            parts.add(best == null ? new int[0] : best.nodes);
            width = Math.max(width, best == null ? 0 : best.width);
            cost += best == null ? 0 : best.cost;
        }
        return new Plan(parts, width, cost);
    }

    /// The nodes that hang together, each part in rising order; a source linked to nothing seen is in none.
    private static List<List<Integer>> apart(Bits[] near, int sources) {
        boolean[] met = new boolean[near.length];
        List<List<Integer>> parts = new ArrayList<>();
        for (int first = sources; first < near.length; first++) {
            if (met[first]) continue;
            List<Integer> part = new ArrayList<>(List.of(first));
            met[first] = true;
            for (int i = 0; i < part.size(); i++)
                for (int u = near[part.get(i)].next(0); u >= 0; u = near[part.get(i)].next(u + 1))
                    if (!met[u]) {
                        met[u] = true;
                        part.add(u);
                    }
            parts.add(part.stream().sorted().toList());
        }
        return parts;
    }

    private record Order(int[] nodes, int width, double cost) {

        /// The order that begins with a node, or null once it costs as much as another.
        static Order from(int first, List<Integer> out, Bits[] near, double most) {
            Bits front = new Bits(near.length), gone = new Bits(near.length);
            int[] left = out.stream().mapToInt(v -> v).toArray(), order = new int[left.length];
            int width = 0, many = left.length;
            double cost = 0;
            for (int step = 0; step < order.length; step++) {
                int at = -1, least = Integer.MAX_VALUE, fewest = Integer.MAX_VALUE;
                for (int i = 0; i < many; i++) {
                    int v = left[i];
                    if (step == 0 && v != first) continue;
                    int grows = near[v].countWithout(front, gone) - (front.has(v) ? 1 : 0), links = near[v].countWithout(gone, gone);
                    if (grows < least || grows == least && links < fewest) {
                        least = grows;
                        fewest = links;
                        at = i;
                    }
                }
                int v = left[at];
                left[at] = left[--many];
                int wide = front.count() + near[v].countWithout(front, gone) + (front.has(v) ? 0 : 1);
                width = Math.max(width, wide);
                cost += (1 + fewest) * Math.pow(2, wide);
                if (cost >= most) return null;
                gone.set(v);
                front.clear(v);
                front.addWithout(near[v], gone);
                order[step] = v;
            }
            return new Order(order, width, cost);
        }

        /// The same, bettered by moving one node at a time to another place while that costs no more; the draws are always the same.
        ///
        /// What is out and at the front before and after the stretch between two places does not change with the order within it, so a move is weighed by that stretch alone.
        Order shuffled(Bits[] near) {
            RandomGenerator random = new SplitMix(1);
            int n = nodes.length;
            int[] order = nodes.clone(), stretch = new int[n];
            Bits[] gone = new Bits[n + 1], front = new Bits[n + 1];
            double[] costs = new double[n], then = new double[n];
            for (int i = 0; i <= n; i++) {
                gone[i] = new Bits(near.length);
                front[i] = new Bits(near.length);
            }
            Bits outNow = new Bits(near.length), frontNow = new Bits(near.length);
            walk(order, 0, n, near, gone, front, costs);
            for (int move = 0; move < MOVES; move++) {
                int from = random.nextInt(n), reach = move % 8 == 0 ? n : REACH, to = Math.clamp(from + random.nextInt(2 * reach + 1) - reach, 0, n - 1);
                if (from == to) continue;
                int low = Math.min(from, to), high = Math.max(from, to);
                System.arraycopy(order, low, stretch, low, high - low + 1);
                int node = order[from];
                if (from < to) System.arraycopy(order, from + 1, stretch, from, to - from);
                else System.arraycopy(order, to, stretch, to + 1, from - to);
                stretch[to] = node;
                double before = 0, after = 0;
                for (int i = low; i <= high; i++) before += costs[i];
                outNow.set(gone[low]);
                frontNow.set(front[low]);
                for (int i = low; i <= high && after <= before * (1 + 1e-9); i++) after += then[i] = step(stretch[i], near, outNow, frontNow);
                if (after > before * (1 + 1e-9)) continue;
                System.arraycopy(stretch, low, order, low, high - low + 1);
                walk(order, low, high + 1, near, gone, front, costs);
            }
            double cost = 0;
            for (double one : costs) cost += one;
            return cost < this.cost ? new Order(order, widest(order, near), cost) : this;
        }

        private static void walk(int[] order, int from, int to, Bits[] near, Bits[] gone, Bits[] front, double[] costs) {
            for (int i = from; i < to; i++) {
                gone[i + 1].set(gone[i]);
                front[i + 1].set(front[i]);
                costs[i] = step(order[i], near, gone[i + 1], front[i + 1]);
            }
        }

        /// Takes a node out, and tells what that costs.
        private static double step(int v, Bits[] near, Bits gone, Bits front) {
            int wide = front.count() + near[v].countWithout(front, gone) + (front.has(v) ? 0 : 1);
            double cost = (1 + near[v].countWithout(gone, gone)) * Math.scalb(1.0, wide);
            gone.set(v);
            front.clear(v);
            front.addWithout(near[v], gone);
            return cost;
        }

        private static int widest(int[] order, Bits[] near) {
            Bits gone = new Bits(near.length), front = new Bits(near.length);
            int width = 0;
            for (int v : order) {
                width = Math.max(width, front.count() + near[v].countWithout(front, gone) + (front.has(v) ? 0 : 1));
                step(v, near, gone, front);
            }
            return width;
        }
    }

    /// A set of small numbers, held as the bits of long words.
    private static final class Bits {
        private final long[] words;

        Bits(int size) { words = new long[(size + 63) / 64]; }

        void set(int i) { words[i >> 6] |= 1L << i; }

        void set(Bits other) { System.arraycopy(other.words, 0, words, 0, words.length); }

        void clear(int i) { words[i >> 6] &= ~(1L << i); }

        boolean has(int i) { return (words[i >> 6] >>> i & 1) == 1; }

        int count() {
            int count = 0;
            for (long word : words) count += Long.bitCount(word);
            return count;
        }

        int countWithout(Bits one, Bits other) {
            int count = 0;
            for (int w = 0; w < words.length; w++) count += Long.bitCount(words[w] & ~one.words[w] & ~other.words[w]);
            return count;
        }

        void addWithout(Bits more, Bits not) { for (int w = 0; w < words.length; w++) words[w] |= more.words[w] & ~not.words[w]; }

        int next(int from) {
            for (int w = from >> 6; w < words.length; w++) {
                long word = w == from >> 6 ? words[w] & -1L << from : words[w];
                if (word != 0) return 64 * w + Long.numberOfTrailingZeros(word);
            }
            return -1;
        }
    }
}
