package sillwright.watch.budget;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Refused;

/// Chooses among things so that their worth is greatest within a budget, where some need others first: exactly.
///
/// Things that need each other hang together in clusters. In a cluster every set of the needed things that stands by itself is tried, and the rest joined one by one to a list of choices none of
/// which costs as much as another that is worth more; the clusters' lists are then joined likewise. Nothing that could be in a best choice is ever dropped.
/// Source: Nemhauser and Ullmann (1969), lists of undominated choices for the knapsack problem (from memory).
public final class Choices {
    public static final Basis BASIS = Basis.memory("Nemhauser and Ullmann (1969)", "dynamic programming over undominated choices; needs by enumeration of what is needed");
    /// In one cluster no more things may be needed by others.
    public static final int MOST_NEEDED = 18;

    private Choices() {}

    /// @param cost  in any one measure, not less than nothing
    /// @param worth in any one measure, not less than nothing
    /// @param needs places in the list of what must be chosen with it
    public record Thing(String id, double cost, double worth, List<Integer> needs) {
        public Thing {
            needs = List.copyOf(needs);
            if (!(cost >= 0 && Double.isFinite(cost))) throw new Refused(id, "a cost of {} cannot be budgeted", "give what it costs", cost);
            if (!(worth >= 0 && Double.isFinite(worth))) throw new Refused(id, "a worth of {} cannot be weighed", "give what it is worth", worth);
        }
    }

    /// @param chosen places in the list, rising
    public record Best(List<Integer> chosen, double cost, double worth) {
        public Best { chosen = List.copyOf(chosen); }
    }

    private record Choice(double cost, double worth, BitSet things) {}

    /// @throws Refused where one cluster has more things needed by others than can be tried, or things need each other in a ring
    public static Best best(List<Thing> things, double budget) {
        List<BitSet> closed = new ArrayList<>();
        for (int i = 0; i < things.size(); i++) closed.add(closure(things, i, new BitSet()));
        List<Choice> all = List.of(new Choice(0, 0, new BitSet()));
        for (BitSet cluster : clusters(things)) all = joined(all, options(things, closed, cluster, budget), budget);
        Choice best = all.getLast();
        return new Best(best.things.stream().boxed().toList(), best.cost, best.worth);
    }

    private static BitSet closure(List<Thing> things, int of, BitSet above) {
        if (above.get(of)) throw new Refused(things.get(of).id, "needs itself, by way of what it needs", "take one of the needs out");
        above.set(of);
        BitSet all = new BitSet();
        for (int need : things.get(of).needs) {
            if (need < 0 || need >= things.size()) throw new Refused(things.get(of).id, "needs thing {}, which is not in the list", "name one that is", need);
            all.set(need);
            all.or(closure(things, need, above));
        }
        above.clear(of);
        return all;
    }

    private static List<BitSet> clusters(List<Thing> things) {
        List<BitSet> clusters = new ArrayList<>();
        for (int i = 0; i < things.size(); i++) {
            BitSet here = new BitSet();
            here.set(i);
            for (int need : things.get(i).needs) here.set(need);
            for (BitSet other : List.copyOf(clusters)) if (other.intersects(here)) {
                here.or(other);
                clusters.remove(other);
            }
            clusters.add(here);
        }
        return clusters;
    }

    /// Every undominated choice within one cluster.
    private static List<Choice> options(List<Thing> things, List<BitSet> closed, BitSet cluster, double budget) {
        BitSet needed = new BitSet();
        cluster.stream().forEach(i -> needed.or(closed.get(i)));
        int[] base = needed.stream().toArray();
        if (base.length > MOST_NEEDED) throw new Refused("budget", "{} things that others need hang together, more than can be tried", "rank fewer buildings or sources at once", base.length);
        List<Choice> all = new ArrayList<>();
        for (int mask = 0; mask < 1 << base.length; mask++) {
            BitSet taken = new BitSet();
            double cost = 0, worth = 0;
            for (int b = 0; b < base.length; b++) if ((mask >> b & 1) == 1) {
                taken.set(base[b]);
                cost += things.get(base[b]).cost;
                worth += things.get(base[b]).worth;
            }
            if (cost > budget || !stands(taken, closed)) continue;
            List<Choice> here = List.of(new Choice(cost, worth, taken));
            for (int i = cluster.nextSetBit(0); i >= 0; i = cluster.nextSetBit(i + 1)) {
                if (needed.get(i) || !within(closed.get(i), taken)) continue;
                BitSet one = new BitSet();
                one.set(i);
                here = joined(here, List.of(new Choice(0, 0, new BitSet()), new Choice(things.get(i).cost, things.get(i).worth, one)), budget);
            }
            all.addAll(here);
        }
        return undominated(all);
    }

    private static boolean stands(BitSet taken, List<BitSet> closed) { return taken.stream().allMatch(i -> within(closed.get(i), taken)); }

    private static boolean within(BitSet part, BitSet whole) {
        BitSet rest = (BitSet) part.clone();
        rest.andNot(whole);
        return rest.isEmpty();
    }

    private static List<Choice> joined(List<Choice> some, List<Choice> others, double budget) {
        List<Choice> all = new ArrayList<>();
        for (Choice a : some) for (Choice b : others) {
            if (a.cost + b.cost > budget * (1 + 1e-12)) continue;
            BitSet both = (BitSet) a.things.clone();
            both.or(b.things);
            all.add(new Choice(a.cost + b.cost, a.worth + b.worth, both));
        }
        return undominated(all);
    }

    /// By rising cost, each worth more than all that cost less.
    private static List<Choice> undominated(List<Choice> all) {
        all.sort(Comparator.comparingDouble(Choice::cost).thenComparing(choice -> -choice.worth));
        List<Choice> kept = new ArrayList<>();
        for (Choice choice : all) if (kept.isEmpty() || choice.worth > kept.getLast().worth) kept.add(choice);
        return kept;
    }
}
