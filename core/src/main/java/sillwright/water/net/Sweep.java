package sillwright.water.net;

import java.util.ArrayList;
import java.util.List;

/// One part of a network that hangs together, swept by an order of a [Plan]: its nodes go out one after another, and one table is
/// carried along, with a weight for every state of the nodes at the front.
///
/// A source at the front is at work or not; a finding at the front is marked by one of the sources already out, or not yet. A
/// source that goes out is summed over its two states and leaves its marks; a finding that goes out wants a mark, its leak, or a source
/// still at the front. So each noisy-OR is taken apart into its causes and put together one cause at a time, nothing is ever subtracted
/// from anything but 1, and a long list of findings costs no digits. The way back over the tables gives the weight of every source at
/// work. Tables are scaled by powers of two, so that no number of findings makes them vanish.
/// Source: causes of a noisy-OR taken one at a time, Heckerman 1993; elimination with such parts, Zhang and Poole 1996 (from memory).
final class Sweep {
    private final int sources;
    private final List<int[]> links;
    private final double[][] strengths;
    private final double[] on;
    private final double[] off;
    private final double[] leaks;
    private final double[] shares;

    /// The table before a step, and what that step did.
    private record Step(int node, int[] front, double[] table, int[] after, double scale) {}

    private final List<Step> tape = new ArrayList<>();
    private int[] front = {};
    private double[] table = {1};
    private double logScale;

    /// @param links     for each node the nodes it is linked to, and `strengths` the strength of each link
    /// @param on        weight of each source at work, `off` of its rest
    /// @param leaks     of each finding
    /// @param shares    filled on the way back: weight of each source at work, a part of [#total()]
    Sweep(int sources, List<int[]> links, double[][] strengths, double[] on, double[] off, double[] leaks, double[] shares) {
        this.sources = sources;
        this.links = links;
        this.strengths = strengths;
        this.on = on;
        this.off = off;
        this.leaks = leaks;
        this.shares = shares;
    }

    /// @param back whether the way back will be gone, so that the tables are kept
    void forward(int[] order, boolean back) {
        boolean[] out = new boolean[links.size()];
        for (int node : order) {
            out[node] = true;
            int[] all = front;
            for (int other : links.get(node)) if (!out[other] && at(all, other) < 0) all = with(all, other);
            int[] after = without(all, node);
            double[] next = node < sources ? source(node, all, after, out) : finding(node, all, after, out);
            double scale = scale(next);
            if (back) tape.add(new Step(node, front, table, after, scale));
            front = after;
            table = next;
        }
    }

    /// Weight of all that was seen, scaled by `exp(logScale)`: the last table, when nothing is left at the front.
    double total() { return table[0]; }

    double logScale() { return logScale; }

    /// What is left at the front: sources that were kept.
    int[] front() { return front; }

    double[] table() { return table; }

    private double scale(double[] next) {
        double most = 0;
        for (double weight : next) most = Math.max(most, weight);
        if (!(most > 0) || most > 1e-30) return 1;
        int power = -Math.getExponent(most);
        double scale = Math.scalb(1.0, Math.min(power, 1000));
        for (int i = 0; i < next.length; i++) next[i] *= scale;
        logScale -= Math.log(scale);
        return scale;
    }

    /// Sums a source out: idle, or at work with the marks it leaves.
    private double[] source(int node, int[] all, int[] after, boolean[] out) {
        int own = at(front, node);
        double[] idle = new double[1 << after.length], busy = new double[idle.length];
        for (int i = 0; i < table.length; i++) {
            int to = own < 0 ? i : drop(i, own);
            if (own < 0 || (i >> own & 1) == 0) idle[to] += off[node] * table[i];
            if (own < 0 || (i >> own & 1) == 1) busy[to] += on[node] * table[i];
        }
        int[] linked = links.get(node);
        for (int l = 0; l < linked.length; l++) if (!out[linked[l]]) mark(busy, 1 << at(after, linked[l]), strengths[node][l]);
        for (int i = 0; i < idle.length; i++) idle[i] += busy[i];
        return idle;
    }

    /// Takes a finding out: it is marked, or explained by its leak or a source at the front.
    private double[] finding(int node, int[] all, int[] after, boolean[] out) {
        int own = at(front, node), low = (1 << front.length) - 1, kept = own < 0 ? low : (1 << front.length - 1) - 1;
        double[] next = explained(node, after, out);
        for (int i = 0; i < next.length; i++) {
            int from = own < 0 ? i & low : spread(i & kept, own);
            next[i] = next[i] * table[from] + (own < 0 ? 0 : table[from | 1 << own]);
        }
        return next;
    }

    /// For every state of the front the chance that the leak or a source there brings the finding about.
    private double[] explained(int node, int[] after, boolean[] out) {
        double[] absent = new double[1 << after.length], keeps = new double[after.length];
        int mask = 0;
        int[] linked = links.get(node);
        for (int l = 0; l < linked.length; l++) {
            if (out[linked[l]]) continue;
            int bit = at(after, linked[l]);
            mask |= 1 << bit;
            keeps[bit] = 1 - strengths[node][l];
        }
        for (int i = 0; i < absent.length; i++) {
            int of = i & mask;
            absent[i] = of == 0 ? 1 - leaks[node - sources] : absent[of & of - 1] * keeps[Integer.numberOfTrailingZeros(of)];
        }
        for (int i = 0; i < absent.length; i++) absent[i] = 1 - absent[i];
        return absent;
    }

    /// Goes the way back, with nothing left at the front, and fills the shares of the sources.
    void back() {
        boolean[] out = new boolean[links.size()];
        for (Step step : tape) out[step.node] = true;
        double[] slopes = {1};
        for (int s = tape.size() - 1; s >= 0; s--) {
            Step step = tape.get(s);
            if (step.scale != 1) for (int i = 0; i < slopes.length; i++) slopes[i] *= step.scale;
            slopes = step.node < sources ? backSource(step, slopes, out) : backFinding(step, slopes, out);
            out[step.node] = false;
        }
    }

    private double[] backSource(Step step, double[] slopes, boolean[] out) {
        int node = step.node, own = at(step.front, node);
        double[] busy = slopes.clone(), before = new double[step.table.length];
        int[] linked = links.get(node);
        for (int l = 0; l < linked.length; l++) if (!out[linked[l]]) expect(busy, 1 << at(step.after, linked[l]), strengths[node][l]);
        double share = 0;
        for (int i = 0; i < before.length; i++) {
            int to = own < 0 ? i : drop(i, own);
            if (own < 0 || (i >> own & 1) == 0) before[i] += off[node] * slopes[to];
            if (own < 0 || (i >> own & 1) == 1) {
                before[i] += on[node] * busy[to];
                share += on[node] * busy[to] * step.table[i];
            }
        }
        shares[node] = share;
        return before;
    }

    private double[] backFinding(Step step, double[] slopes, boolean[] out) {
        int own = at(step.front, step.node), low = (1 << step.front.length) - 1, kept = own < 0 ? low : (1 << step.front.length - 1) - 1;
        double[] explained = explained(step.node, step.after, out), before = new double[step.table.length];
        for (int i = 0; i < slopes.length; i++) {
            int from = own < 0 ? i & low : spread(i & kept, own);
            before[from] += slopes[i] * explained[i];
            if (own >= 0) before[from | 1 << own] += slopes[i];
        }
        return before;
    }

    /// Moves to the states where a finding is marked the share that a strength brings there.
    private static void mark(double[] weight, int finding, double strength) {
        for (int block = 0; block < weight.length; block += 2 * finding)
            for (int i = block; i < block + finding; i++) {
                double moved = weight[i] * strength;
                weight[i + finding] += moved;
                weight[i] -= moved;
            }
    }

    /// The expected slope, before a strength has moved anything.
    private static void expect(double[] slope, int finding, double strength) {
        for (int block = 0; block < slope.length; block += 2 * finding)
            for (int i = block; i < block + finding; i++) slope[i] = (1 - strength) * slope[i] + strength * slope[i + finding];
    }

    private static int at(int[] front, int node) {
        for (int i = 0; i < front.length; i++) if (front[i] == node) return i;
        return -1;
    }

    private static int[] with(int[] front, int node) {
        int[] more = java.util.Arrays.copyOf(front, front.length + 1);
        more[front.length] = node;
        return more;
    }

    private static int[] without(int[] front, int node) {
        int at = at(front, node);
        if (at < 0) return front;
        int[] less = new int[front.length - 1];
        System.arraycopy(front, 0, less, 0, at);
        System.arraycopy(front, at + 1, less, at, less.length - at);
        return less;
    }

    /// The index without one of its bits.
    private static int drop(int index, int bit) { return index >> bit + 1 << bit | index & (1 << bit) - 1; }

    /// The index with a bit put in, not set.
    private static int spread(int index, int bit) { return index >> bit << bit + 1 | index & (1 << bit) - 1; }
}
