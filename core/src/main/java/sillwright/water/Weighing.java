package sillwright.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import sillwright.water.Network.Finding;
import sillwright.water.Network.Link;
import sillwright.water.Network.Look;

/// Sums a noisy-OR network over every set of sources that explains the findings, without listing the sets.
///
/// A finding that was looked for and not seen only thins the weight of its sources (Heckerman 1989). Sources and seen
/// findings are then taken out one after another, in the order of a [Plan], by [Table]s that hold the weight for every
/// state of the sources still in and every set of findings that the sources already out have explained. A source that
/// goes out leaves a mark on each finding it may have brought about; a finding that goes out wants a mark, its leak, or a
/// source still in. Quickscore adds and subtracts 2^seen terms; here nothing is ever subtracted, so many findings cost no
/// digits, and the tables grow with how closely the findings hang together, not with their number. Exact always.
///
/// The weight of each source at work is the slope of the whole weight over its prior weight, found for all sources in one
/// walk back over the tables.
/// Source: variable elimination and its reverse sweep, a standard of texts on graphical models (from memory).
final class Weighing {
    private final List<Double> priors;
    private final List<Finding> findings;
    private final List<Integer> seen;
    private final Plan plan;
    private final double[] on;
    private final double[] off;
    private final double[] leak;
    private final double factor;
    private final double[] with;

    private Weighing(List<Double> priors, List<Finding> findings, List<Integer> seen, Plan plan, List<Look> looks) {
        this.priors = priors;
        this.findings = findings;
        this.seen = seen;
        this.plan = plan;
        on = priors.stream().mapToDouble(p -> p).toArray();
        off = priors.stream().mapToDouble(p -> 1 - p).toArray();
        with = new double[on.length];
        leak = new double[seen.size()];
        for (int f = 0; f < leak.length; f++) leak[f] = looks.get(seen.get(f)) == Look.SEEN ? findings.get(seen.get(f)).leak() : 1;
        double absent = 1;
        for (int f = 0; f < looks.size(); f++) {
            if (looks.get(f) != Look.NOT_SEEN) continue;
            absent *= 1 - findings.get(f).leak();
            for (Link link : findings.get(f).links()) on[link.source()] *= 1 - link.strength();
        }
        factor = absent;
    }

    static Weighing of(List<Double> priors, List<Finding> findings, List<Look> looks) {
        List<Integer> seen = new ArrayList<>();
        for (int f = 0; f < looks.size(); f++) if (looks.get(f) == Look.SEEN) seen.add(f);
        return new Weighing(priors, findings, seen, plan(priors.size(), findings, seen, Set.of()), looks);
    }

    private static Plan plan(int sources, List<Finding> findings, List<Integer> seen, Set<Integer> kept) {
        boolean[][] linked = new boolean[seen.size()][sources];
        for (int f = 0; f < linked.length; f++) for (Link link : findings.get(seen.get(f)).links()) linked[f][link.source()] = link.strength() > 0;
        return Plan.of(sources, linked, kept);
    }

    /// The same network with other looks, by the same plan: what was seen may be left out, and nothing else may be seen.
    Weighing again(List<Look> looks) { return new Weighing(priors, findings, seen, plan, looks); }

    /// Steps that one weighing takes, roughly.
    double cost() { return plan.cost(); }

    /// Probability of the findings; afterwards [#with(int)] tells it for each source at work.
    double weigh() {
        List<Table> tape = new ArrayList<>();
        double sum = forward(plan, tape).total();
        for (int t = tape.size() - 1; t >= 0; t--) tape.get(t).back();
        for (int i = 0; i < with.length; i++) with[i] = on[i] * tape.get(i).slope(1);
        return factor * sum;
    }

    /// Probability of the findings and of this source at work, after [#weigh()].
    double with(int source) { return factor * with[source]; }

    /// Probability of the findings with each state of some sources; bit `b` of a state tells whether the `b`-th is at work.
    ///
    /// @param kept sources in rising order
    double[] states(List<Integer> kept) {
        double[] states = forward(plan(on.length, findings, seen, Set.copyOf(kept)), new ArrayList<>()).weights();
        for (int state = 0; state < states.length; state++) states[state] *= factor;
        return states;
    }

    /// Takes out all that the plan says; the tables made on the way, the priors first, are laid on the tape.
    private Table forward(Plan plan, List<Table> tape) {
        int n = on.length;
        List<Table> in = new ArrayList<>();
        for (int i = 0; i < n; i++) in.add(Table.source(i, off[i], on[i]));
        tape.addAll(in);
        boolean[] out = new boolean[n + seen.size()];
        for (int node : plan.order()) {
            List<Table> holding = in.stream().filter(table -> table.holds(node)).toList();
            in.removeAll(holding);
            Table joined = holding.isEmpty() ? lay(tape, Table.one()) : holding.getFirst();
            for (Table table : holding.subList(Math.min(1, holding.size()), holding.size())) joined = lay(tape, joined.join(table, n));
            out[node] = true;
            if (node >= n) in.add(lay(tape, joined.withoutFinding(node, leak[node - n], makers(node, out))));
            else {
                List<Link> marks = marks(node, out);
                for (Table table : List.copyOf(in)) {
                    if (!joined.touches(table, marks, n, plan.width())) continue;
                    in.remove(table);
                    joined = lay(tape, joined.join(table, n));
                }
                in.add(lay(tape, joined.withoutSource(node, marks)));
            }
        }
        Table all = Table.one();
        for (Table table : in) all = lay(tape, all.join(table, n));
        return all;
    }

    private static Table lay(List<Table> tape, Table table) {
        tape.add(table);
        return table;
    }

    /// The findings still in that a source may bring about, by node, with its strength.
    private List<Link> marks(int source, boolean[] out) {
        List<Link> marks = new ArrayList<>();
        for (int f = 0; f < seen.size(); f++) {
            if (out[on.length + f]) continue;
            for (Link link : findings.get(seen.get(f)).links())
                if (link.source() == source && link.strength() > 0) marks.add(new Link(on.length + f, link.strength()));
        }
        return marks;
    }

    /// The sources still in that may bring a finding about.
    private List<Link> makers(int node, boolean[] out) {
        return findings.get(seen.get(node - on.length)).links().stream().filter(link -> !out[link.source()] && link.strength() > 0).toList();
    }
}
