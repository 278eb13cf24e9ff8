package sillwright.water;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import sillwright.water.Network.Link;

/// Weights for every state of some sources still in a network and every set of findings already explained, with the way
/// each was worked, so that slopes can be carried back.
///
/// A node below the number of sources is a source, at work or not; one above is a mark that a finding is explained. Bit `b`
/// of an index tells of `nodes[b]`; nodes are in rising order, sources first.
final class Table {
    private final int[] nodes;
    private final double[] weights;
    private final double[] slopes;
    private final Runnable back;

    private Table(int[] nodes, double[] weights, double[] slopes, Runnable back) {
        this.nodes = nodes;
        this.weights = weights;
        this.slopes = slopes;
        this.back = back;
    }

    /// The table of nothing, which has weight one.
    static Table one() { return new Table(new int[0], new double[] {1}, new double[1], () -> {}); }

    /// A source by itself.
    static Table source(int node, double off, double on) { return new Table(new int[] {node}, new double[] {off, on}, new double[2], () -> {}); }

    boolean holds(int node) { return Arrays.binarySearch(nodes, node) >= 0; }

    /// Whether it is cheaper to put a table in before a source goes out: it marks a finding that this one or the source may
    /// mark too, and the two together are no wider than the plan allows.
    boolean touches(Table other, List<Link> marks, int sources, int width) {
        int[] mine = IntStream.concat(IntStream.of(nodes), marks.stream().mapToInt(Link::source)).distinct().toArray();
        boolean shared = IntStream.of(mine).anyMatch(node -> node >= sources && other.holds(node));
        return shared && IntStream.concat(IntStream.of(mine), IntStream.of(other.nodes)).distinct().count() <= width + 1;
    }

    /// The weight of the last table of all, which nothing is left in; its slope is one.
    double total() {
        slopes[0] = 1;
        return weights[0];
    }

    double[] weights() { return weights.clone(); }

    /// How the whole weight changes with the weight of one state, after the walk back.
    double slope(int state) { return slopes[state]; }

    /// Carries the slopes of this table back to those it was worked from.
    void back() { back.run(); }

    /// Both tables together; see [Join].
    ///
    /// @param sources how many nodes are sources
    Table join(Table other, int sources) {
        Join join = new Join(nodes, weights, other.nodes, other.weights, sources);
        double[] joinedSlopes = new double[join.weights.length];
        return new Table(join.nodes, join.weights, joinedSlopes, () -> join.back(joinedSlopes, slopes, other.slopes));
    }

    /// The same once a source is out: summed over its two states, with the marks it may have left.
    ///
    /// @param marks the findings it may bring about, by node, each with the strength
    Table withoutSource(int source, List<Link> marks) {
        int[] rest = IntStream.concat(IntStream.of(nodes).filter(node -> node != source), marks.stream().mapToInt(Link::source)).sorted().distinct().toArray();
        int[] place = Join.places(nodes, rest);
        int bit = 1 << Arrays.binarySearch(nodes, source);
        double[] idle = new double[1 << rest.length], busy = new double[idle.length], restSlopes = new double[idle.length];
        for (int a = 0; a < weights.length; a++) ((a & bit) == 0 ? idle : busy)[place[a]] += weights[a];
        for (Link mark : marks) mark(busy, 1 << Arrays.binarySearch(rest, mark.source()), mark.strength());
        for (int state = 0; state < idle.length; state++) idle[state] += busy[state];
        return new Table(rest, idle, restSlopes, () -> {
            double[] after = restSlopes.clone();
            for (Link mark : marks) expect(after, 1 << Arrays.binarySearch(rest, mark.source()), mark.strength());
            for (int a = 0; a < weights.length; a++) slopes[a] += ((a & bit) == 0 ? restSlopes : after)[place[a]];
        });
    }

    /// The same once a seen finding is out: it is marked, or its leak or a source still in brings it about.
    ///
    /// @param makers the sources still in that may bring it about
    Table withoutFinding(int finding, double leak, List<Link> makers) {
        int[] rest = IntStream.concat(IntStream.of(nodes).filter(node -> node != finding), makers.stream().mapToInt(Link::source)).sorted().distinct().toArray();
        int[] back = Join.places(rest, nodes);
        int bit = holds(finding) ? 1 << Arrays.binarySearch(nodes, finding) : 0;
        double[] summed = new double[1 << rest.length], restSlopes = new double[summed.length], explained = new double[summed.length];
        for (int state = 0; state < summed.length; state++) {
            double absent = 1 - leak;
            for (Link maker : makers) if ((state >> Arrays.binarySearch(rest, maker.source()) & 1) == 1) absent *= 1 - maker.strength();
            explained[state] = 1 - absent;
            summed[state] = weights[back[state]] * explained[state] + (bit == 0 ? 0 : weights[back[state] | bit]);
        }
        return new Table(rest, summed, restSlopes, () -> {
            for (int state = 0; state < summed.length; state++) {
                slopes[back[state]] += restSlopes[state] * explained[state];
                if (bit != 0) slopes[back[state] | bit] += restSlopes[state];
            }
        });
    }

    /// Moves to the sets that hold a finding the share that a strength brings there.
    private static void mark(double[] weight, int finding, double strength) {
        for (int block = 0; block < weight.length; block += 2 * finding)
            for (int set = block; set < block + finding; set++) {
                double moved = weight[set] * strength;
                weight[set + finding] += moved;
                weight[set] -= moved;
            }
    }

    /// The expected slope, before a strength has moved anything.
    private static void expect(double[] slope, int finding, double strength) {
        for (int block = 0; block < slope.length; block += 2 * finding)
            for (int set = block; set < block + finding; set++) slope[set] = (1 - strength) * slope[set] + strength * slope[set + finding];
    }
}
