package sillwright.water.net;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import sillwright.measure.Refused;
import sillwright.water.net.Network.Finding;
import sillwright.water.net.Network.Link;
import sillwright.water.net.Network.Look;

/// Sums a noisy-OR network over every set of sources that explains the findings, without listing the sets. Exact always.
///
/// A finding that was looked for and not seen only thins the weight of its sources (Heckerman 1989). The findings that were seen
/// tie their sources together; each part that hangs together is swept by itself, see [Sweep]. Quickscore adds and subtracts
/// 2^seen terms; here the work grows with how closely the findings hang together, not with their number.
public final class Weighing {
    private final List<Double> priors;
    private final List<Finding> findings;
    private final List<Integer> seen;
    private final List<int[]> links;
    private final double[][] strengths;
    private final Plan plan;
    private final double[] on;
    private final double[] off;
    private final double[] leaks;
    private final double logAbsent;
    private double[] shares;
    private double logEvidence = Double.NaN;

    private Weighing(List<Double> priors, List<Finding> findings, List<Integer> seen, List<int[]> links, double[][] strengths, Plan plan, List<Look> looks) {
        this.priors = priors;
        this.findings = findings;
        this.seen = seen;
        this.links = links;
        this.strengths = strengths;
        this.plan = plan;
        on = priors.stream().mapToDouble(p -> p).toArray();
        off = priors.stream().mapToDouble(p -> 1 - p).toArray();
        leaks = new double[seen.size()];
        for (int f = 0; f < leaks.length; f++) leaks[f] = looks.get(seen.get(f)) == Look.SEEN ? findings.get(seen.get(f)).leak() : 1;
        double absent = 0;
        for (int f = 0; f < looks.size(); f++) {
            if (looks.get(f) != Look.NOT_SEEN) continue;
            absent += Math.log1p(-findings.get(f).leak());
            for (Link link : findings.get(f).links()) on[link.source()] *= 1 - link.strength();
        }
        logAbsent = absent;
    }

    static Weighing of(List<Double> priors, List<Finding> findings, List<Look> looks) {
        int n = priors.size();
        List<Integer> seen = new ArrayList<>();
        for (int f = 0; f < looks.size(); f++) if (looks.get(f) == Look.SEEN) seen.add(f);
        List<List<Link>> near = new ArrayList<>();
        for (int i = 0; i < n; i++) near.add(new ArrayList<>());
        for (int f = 0; f < seen.size(); f++) {
            List<Link> own = findings.get(seen.get(f)).links().stream().filter(link -> link.strength() > 0).toList();
            near.add(own);
            for (Link link : own) near.get(link.source()).add(new Link(n + f, link.strength()));
        }
        List<int[]> links = near.stream().map(of -> of.stream().mapToInt(Link::source).toArray()).toList();
        double[][] strengths = near.stream().map(of -> of.stream().mapToDouble(Link::strength).toArray()).toArray(double[][]::new);
        return new Weighing(priors, findings, seen, links, strengths, Plan.of(n, links.subList(n, links.size()), new boolean[n]), looks);
    }

    /// The same network with other looks, by the same plan: what was seen may be left out, and nothing else may be seen.
    public Weighing again(List<Look> looks) { return new Weighing(priors, findings, seen, links, strengths, plan, looks); }

    /// Steps that one weighing takes, roughly.
    public double cost() { return plan.cost(); }

    /// The longest front.
    public int width() { return plan.width(); }

    /// Whether the front stays short enough for a table.
    boolean fits() { return plan.width() <= Plan.WIDEST; }

    /// Log of the probability of the findings; minus infinity where nothing can bring them about together.
    public double logEvidence() {
        if (Double.isNaN(logEvidence)) weigh();
        return logEvidence;
    }

    /// Probability that a source is at work, given the findings.
    public double probability(int source) {
        if (Double.isNaN(logEvidence)) weigh();
        return shares[source];
    }

    private void weigh() {
        double log = logAbsent;
        double[] shares = new double[on.length];
        boolean[] tied = new boolean[on.length];
        for (int[] order : plan.parts()) {
            Sweep sweep = sweep(shares);
            sweep.forward(order, true);
            sweep.back();
            log += Math.log(sweep.total()) + sweep.logScale();
            for (int node : order)
                if (node < on.length) {
                    tied[node] = true;
                    shares[node] = Math.min(1, shares[node] / sweep.total());
                }
        }
        for (int i = 0; i < on.length; i++) {
            if (tied[i]) continue;
            log += Math.log(on[i] + off[i]);
            shares[i] = on[i] / (on[i] + off[i]);
        }
        this.shares = shares;
        logEvidence = Double.isNaN(log) ? Double.NEGATIVE_INFINITY : log;
    }

    private Sweep sweep(double[] shares) {
        if (!fits()) throw new Refused("network", "its sightings tie the sources together too closely to be weighed exactly: a table of 2^{} numbers would be needed, 2^{} are tried",
                "weigh fewer sightings at once, or leave out links that hardly matter", plan.width(), Plan.WIDEST);
        return new Sweep(on.length, links, strengths, on, off, leaks, shares);
    }

    /// Probability of each state of some sources, given the findings; bit `b` of a state tells whether the `b`-th is at work.
    ///
    /// @param kept sources, each once
    public double[] states(int[] kept) {
        boolean[] stays = new boolean[on.length];
        for (int source : kept) stays[source] = true;
        Plan keeping = Plan.of(on.length, links.subList(on.length, links.size()), stays);
        double[] states = new double[1 << kept.length];
        Arrays.fill(states, 1);
        boolean[] met = new boolean[on.length];
        for (int[] order : keeping.parts()) {
            Sweep sweep = sweep(new double[on.length]);
            sweep.forward(order, false);
            int[] front = sweep.front(), bits = new int[front.length];
            for (int b = 0; b < front.length; b++) {
                met[front[b]] = true;
                for (int k = 0; k < kept.length; k++) if (kept[k] == front[b]) bits[b] = k;
            }
            for (int state = 0; state < states.length; state++) {
                int at = 0;
                for (int b = 0; b < bits.length; b++) at |= (state >> bits[b] & 1) << b;
                states[state] *= sweep.table()[at];
            }
        }
        double all = 0;
        for (int state = 0; state < states.length; state++) {
            for (int k = 0; k < kept.length; k++) states[state] *= (state >> k & 1) == 1 ? on[kept[k]] : off[kept[k]];
            all += states[state];
        }
        for (int state = 0; state < states.length; state++) states[state] /= all;
        return states;
    }
}
