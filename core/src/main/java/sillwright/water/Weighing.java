package sillwright.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import sillwright.water.Network.Finding;
import sillwright.water.Network.Link;
import sillwright.water.Network.Look;

/// Sums a noisy-OR network over every set of sources that explains the findings, without listing the sets.
///
/// A finding that was looked for and not seen only thins the weight of its sources: linear time (Heckerman 1989). One
/// that was seen and has a single source left is linear too. The rest of what was seen is gathered in knots that share no
/// source. In a knot the sources are taken one after another, and the weight is kept for each set of findings explained
/// so far: 2^seen numbers, where Quickscore has as many terms; but nothing is ever subtracted, so many findings cost no
/// digits. A knot with more seen findings than [#MOST] is first split on the source with most links, at work or not.
/// Exact always; the time grows with the largest knot.
final class Weighing {
    /// Seen findings that one knot may hold before it is split on a source.
    static final int MOST = 16;

    private final Odds odds;
    private final double[] with;
    private final List<Seen> seen;
    private final double factor;

    /// A seen finding with the sources that may still explain it.
    private record Seen(double leak, int[] sources, double[] strengths) {
        boolean has(int source) { return place(source) >= 0; }

        private int place(int source) {
            for (int i = 0; i < sources.length; i++) if (sources[i] == source) return i;
            return -1;
        }

        double strength(int source) { return has(source) ? strengths[place(source)] : 0; }

        /// The same with one source settled: gone where it is not at work, else part of the leak.
        Seen settled(int source, boolean atWork) {
            int at = place(source);
            if (at < 0) return this;
            int[] rest = new int[sources.length - 1];
            double[] restStrengths = new double[rest.length];
            for (int i = 0, to = 0; i < sources.length; i++) {
                if (i == at) continue;
                rest[to] = sources[i];
                restStrengths[to++] = strengths[i];
            }
            return new Seen(atWork ? 1 - (1 - leak) * (1 - strengths[at]) : leak, rest, restStrengths);
        }
    }

    /// The weight of each source at work and not at work, findings absorbed.
    private record Odds(double[] on, double[] off) {
        Odds copy() { return new Odds(on.clone(), off.clone()); }
    }

    private Weighing(Odds odds, List<Seen> seen, double factor) {
        this.odds = odds;
        this.with = new double[odds.on.length];
        this.seen = seen;
        this.factor = factor;
    }

    static Weighing of(List<Double> priors, List<Finding> findings, List<Look> looks) {
        double[] on = new double[priors.size()], off = new double[priors.size()];
        for (int i = 0; i < on.length; i++) {
            on[i] = priors.get(i);
            off[i] = 1 - on[i];
        }
        double factor = 1;
        List<Seen> seen = new ArrayList<>();
        for (int f = 0; f < findings.size(); f++) {
            Finding finding = findings.get(f);
            switch (looks.get(f)) {
                case NOT_LOOKED -> {}
                case NOT_SEEN -> {
                    factor *= 1 - finding.leak();
                    for (Link link : finding.links()) on[link.source()] *= 1 - link.strength();
                }
                case SEEN -> seen.add(new Seen(finding.leak(), finding.links().stream().mapToInt(Link::source).toArray(),
                        finding.links().stream().mapToDouble(Link::strength).toArray()));
            }
        }
        return new Weighing(new Odds(on, off), seen, factor);
    }

    /// The same with a source known not to be at work.
    Weighing without(int source) { return settled(source, false); }

    /// The same with a source known to be at work.
    Weighing having(int source) { return settled(source, true); }

    private Weighing settled(int source, boolean atWork) {
        Odds then = odds.copy();
        (atWork ? then.off : then.on)[source] = 0;
        return new Weighing(then, seen.stream().map(finding -> finding.settled(source, atWork)).toList(), factor);
    }

    /// Probability of the findings; afterwards [#with(int)] tells it for each source at work.
    double weigh() {
        int[] all = new int[with.length];
        for (int i = 0; i < all.length; i++) all[i] = i;
        return factor * knots(all, odds, seen, with);
    }

    /// Probability of the findings and of this source at work, after [#weigh()].
    double with(int source) { return factor * with[source]; }

    /// Weighs sources and findings that may fall apart into knots; `into` gets the weight with each source at work.
    private static double knots(int[] sources, Odds before, List<Seen> all, double[] into) {
        double free = 1;
        Odds odds = before.copy();
        List<Seen> seen = new ArrayList<>();
        for (Seen finding : all) {
            switch (finding.sources.length) {
                case 0 -> free *= finding.leak;
                case 1 -> {
                    odds.off[finding.sources[0]] *= finding.leak;
                    odds.on[finding.sources[0]] *= 1 - (1 - finding.leak) * (1 - finding.strengths[0]);
                }
                default -> seen.add(finding);
            }
        }
        boolean[] placed = new boolean[seen.size()], taken = new boolean[into.length];
        List<int[]> groups = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        for (int f = 0; f < seen.size(); f++) {
            if (placed[f]) continue;
            List<Seen> knot = new ArrayList<>();
            int[] members = grow(f, seen, placed, knot);
            for (int source : members) taken[source] = true;
            groups.add(members);
            weights.add(knot.size() <= MOST ? explained(members, odds, knot, into) : split(members, odds, knot, into));
        }
        for (int source : sources) {
            if (taken[source]) continue;
            into[source] = odds.on[source];
            groups.add(new int[] {source});
            weights.add(odds.on[source] + odds.off[source]);
        }
        return join(groups, weights, free, into);
    }

    /// Multiplies the groups together; each source's weight takes those of all groups but its own.
    private static double join(List<int[]> groups, List<Double> weights, double free, double[] into) {
        double before = free;
        double[] after = new double[groups.size() + 1];
        after[groups.size()] = 1;
        for (int g = groups.size() - 1; g >= 0; g--) after[g] = after[g + 1] * weights.get(g);
        for (int g = 0; g < groups.size(); g++) {
            for (int source : groups.get(g)) into[source] *= before * after[g + 1];
            before *= weights.get(g);
        }
        return before;
    }

    private static int[] grow(int first, List<Seen> seen, boolean[] placed, List<Seen> knot) {
        List<Integer> members = new ArrayList<>();
        List<Integer> open = new ArrayList<>(List.of(first));
        placed[first] = true;
        while (!open.isEmpty()) {
            Seen finding = seen.get(open.removeLast());
            knot.add(finding);
            for (int source : finding.sources) {
                if (members.contains(source)) continue;
                members.add(source);
                for (int f = 0; f < seen.size(); f++)
                    if (!placed[f] && seen.get(f).has(source)) {
                        placed[f] = true;
                        open.add(f);
                    }
            }
        }
        return members.stream().mapToInt(Integer::intValue).toArray();
    }

    private static double split(int[] sources, Odds odds, List<Seen> seen, double[] into) {
        int most = sources[0];
        long links = -1;
        for (int source : sources) {
            long count = seen.stream().filter(finding -> finding.has(source)).count();
            if (count > links) {
                links = count;
                most = source;
            }
        }
        int chosen = most;
        int[] rest = Arrays.stream(sources).filter(source -> source != chosen).toArray();
        double idle = odds.off[chosen], busy = odds.on[chosen];
        double[] withIdle = new double[into.length], withBusy = new double[into.length];
        if (idle > 0) idle *= knots(rest, odds, seen.stream().map(finding -> finding.settled(chosen, false)).toList(), withIdle);
        if (busy > 0) busy *= knots(rest, odds, seen.stream().map(finding -> finding.settled(chosen, true)).toList(), withBusy);
        for (int source : rest) into[source] = odds.off[chosen] * withIdle[source] + odds.on[chosen] * withBusy[source];
        into[chosen] = busy;
        return idle + busy;
    }

    /// Takes the sources one after another, keeping the weight for every set of findings explained so far.
    private static double explained(int[] sources, Odds odds, List<Seen> seen, double[] into) {
        double[] on = odds.on, off = odds.off;
        int sets = 1 << seen.size();
        double[][] forward = new double[sources.length + 1][];
        double[] first = new double[sets];
        first[0] = 1;
        for (int f = 0; f < seen.size(); f++) trigger(first, 1 << f, seen.get(f).leak);
        forward[0] = first;
        for (int i = 0; i < sources.length; i++) {
            double[] idle = forward[i], busy = idle.clone();
            for (int f = 0; f < seen.size(); f++) trigger(busy, 1 << f, seen.get(f).strength(sources[i]));
            for (int set = 0; set < sets; set++) busy[set] = off[sources[i]] * idle[set] + on[sources[i]] * busy[set];
            forward[i + 1] = busy;
        }
        double[] backward = new double[sets];
        backward[sets - 1] = 1;
        for (int i = sources.length - 1; i >= 0; i--) {
            double[] busy = backward.clone();
            for (int f = 0; f < seen.size(); f++) expect(busy, 1 << f, seen.get(f).strength(sources[i]));
            double having = 0;
            for (int set = 0; set < sets; set++) {
                having += forward[i][set] * busy[set];
                backward[set] = off[sources[i]] * backward[set] + on[sources[i]] * busy[set];
            }
            into[sources[i]] = on[sources[i]] * having;
        }
        return forward[sources.length][sets - 1];
    }

    /// Moves to the sets that hold a finding the share that a strength brings there.
    private static void trigger(double[] weight, int finding, double strength) {
        if (strength == 0) return;
        for (int set = 0; set < weight.length; set++) {
            if ((set & finding) != 0) continue;
            double moved = weight[set] * strength;
            weight[set | finding] += moved;
            weight[set] -= moved;
        }
    }

    /// The expected weight further on, before a strength has moved anything.
    private static void expect(double[] weight, int finding, double strength) {
        if (strength == 0) return;
        for (int set = 0; set < weight.length; set++)
            if ((set & finding) == 0) weight[set] = (1 - strength) * weight[set] + strength * weight[set | finding];
    }
}
