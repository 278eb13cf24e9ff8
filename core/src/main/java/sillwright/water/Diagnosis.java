package sillwright.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;

import sillwright.measure.Units;
import sillwright.walk.Side;
import sillwright.walk.Sign;
import sillwright.water.net.Network;
import sillwright.water.net.Network.Finding;
import sillwright.water.net.Network.Link;
import sillwright.water.net.Network.Look;
import sillwright.water.net.Weighing;
import sillwright.water.WaterFindings.Evidence;
import sillwright.water.WaterFindings.NextLook;

/// The network of one side: its sources at their places, what was sighted there, and what still could be.
final class Diagnosis {
    /// Evidence that changes the odds by less than this is left unsaid, bits.
    private static final double HARDLY = 0.05;
    /// A sign that more sources than this could make is no look to send anyone for: it tells too little of which.
    private static final int MOST_SOURCES = 8;
    /// A look expected to tell less than this is not worth the walk, bits.
    private static final double LITTLE = 0.02;
    /// Where very much was seen on one side and weighing would take more steps than this, the weakest links are left out.
    private static final double MOST_STEPS = 20_000_000;

    private final Side side;
    private final Units units;
    private final List<Instance> instances;
    private final List<Sighted> sightings;
    private final List<Asked> asked;
    private final double least;
    private final Network network;
    private final List<Look> looks;
    private final Weighing weighing;
    private final List<Double> posterior;

    /// A look not yet taken: a sign at a place.
    private record Asked(Sign sign, String place, List<Instance> makers) {}

    private final ToDoubleBiFunction<Sign, Source> factor;

    private Diagnosis(Side side, List<Instance> instances, List<Sighted> sightings, Units units, ToDoubleBiFunction<Sign, Source> factor) {
        this.units = units;
        this.factor = factor;
        this.side = side;
        this.instances = instances;
        this.sightings = sightings.stream().filter(s -> Judgement.sign(s.sighting().sign()).isPresent()).toList();
        this.asked = ask();
        this.looks = new ArrayList<>();
        for (Sighted sighted : this.sightings) looks.add(sighted.sighting().seen() ? Look.SEEN : Look.NOT_SEEN);
        for (int a = 0; a < asked.size(); a++) looks.add(Look.NOT_LOOKED);
        double least = 0;
        Network tried = network(least);
        Weighing first = tried.weighing(looks);
        while (first.cost() > MOST_STEPS && least < 1) {
            least += 0.05;
            tried = network(least);
            first = tried.weighing(looks);
        }
        this.least = least;
        this.network = tried;
        this.weighing = first;
        this.posterior = odds(weighing);
    }

    /// The network of this side, without links weaker than a strength.
    private Network network(double least) {
        List<Finding> findings = new ArrayList<>();
        for (Sighted sighted : sightings)
            findings.add(sighted.told().isEmpty() ? finding(sighted.sighting().sign(), instances.stream().filter(instance -> instance.reaches(sighted)).toList(), least) : told(sighted));
        for (Asked one : asked) findings.add(finding(one.sign, one.makers, least));
        return Network.of(instances.stream().map(Instance::prior).toList(), findings);
    }

    /// Wood found wet or dry by the meter: every source that wets the member makes it wet, whatever its sort. Own choice.
    private static final double WETS = 0.7, WET_ANYWAY = 0.05;

    private Finding told(Sighted sighted) {
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < instances.size(); i++)
            if (instances.get(i).span().holds(sighted.wallMs()) && !instances.get(i).members(sighted.member().stream().toList()).isEmpty()) links.add(new Link(i, WETS));
        return new Finding(WET_ANYWAY, links);
    }

    /// Links weaker than this were left out to weigh the side in time; 0 where none were.
    double least() { return least; }

    static Diagnosis of(Side side, List<Instance> instances, List<Sighted> sightings) { return of(side, instances, sightings, Units.US, (_, _) -> 1); }

    /// @param factor on the strength of each link, to see how far the diagnosis rests on its judgement; at most 0.98 comes of it
    static Diagnosis of(Side side, List<Instance> instances, List<Sighted> sightings, Units units, ToDoubleBiFunction<Sign, Source> factor) {
        return new Diagnosis(side, instances, sightings, units, factor);
    }

    private Finding finding(Sign sign, List<Instance> makers, double least) {
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < instances.size(); i++) {
            if (!makers.contains(instances.get(i))) continue;
            Optional<Double> strength = strength(sign, instances.get(i));
            if (strength.isPresent() && strength.get() >= least) links.add(new Link(i, strength.get()));
        }
        return new Finding(Judgement.sign(sign).orElseThrow().leak(), links);
    }

    private Optional<Double> strength(Sign sign, Instance instance) {
        return Judgement.strength(sign, instance.source()).map(strength -> Math.min(Math.max(strength, 0.98), strength * factor.applyAsDouble(sign, instance.source())));
    }

    Side side() { return side; }

    List<Instance> instances() { return instances; }

    double probability(int instance) { return posterior.get(instance); }

    /// What speaks for and against a source, the weightiest first: each sighting by what leaving it out would change.
    ///
    /// A circumstance multiplies the odds, so leaving it out changes them by exactly its own bits.
    List<Evidence> evidence(int instance) { return evidence().get(instance); }

    private List<List<Evidence>> weighed;

    private List<List<Evidence>> evidence() {
        if (weighed != null) return weighed;
        List<List<Evidence>> all = new ArrayList<>();
        for (Instance instance : instances) {
            List<Evidence> circumstances = new ArrayList<>();
            for (var reason : instance.reasons()) circumstances.add(new Evidence(reason.words() + said(reason.bits(), true), reason.bits()));
            all.add(circumstances);
        }
        for (int s = 0; s < sightings.size(); s++) {
            List<Double> then = odds(weighing.again(Network.with(s, Look.NOT_LOOKED, looks)));
            for (int i = 0; i < instances.size(); i++) {
                double bits = logOdds(posterior.get(i)) - logOdds(then.get(i));
                if (Math.abs(bits) < HARDLY) continue;
                boolean direct = instances.get(i).reaches(sightings.get(s)) && strength(sightings.get(s).sighting().sign(), instances.get(i)).isPresent();
                all.get(i).add(new Evidence(sightings.get(s).words(units) + said(bits, direct), bits));
            }
        }
        for (List<Evidence> one : all) one.sort(Comparator.comparingDouble((Evidence e) -> -Math.abs(e.weight())));
        return weighed = all;
    }

    private List<Double> odds(Weighing weighing) {
        List<Double> odds = new ArrayList<>();
        for (int i = 0; i < instances.size(); i++) odds.add(weighing.probability(i));
        return odds;
    }

    private static String said(double bits, boolean direct) {
        return (bits > 0 ? ": speaks for it" : ": speaks against it") + (direct ? "" : ", by way of another source");
    }

    private static double logOdds(double p) { return Math.log(p / (1 - p)) / Math.log(2); }

    /// Every sign not yet looked for, nor measured, at a place where a source could make it.
    private List<Asked> ask() {
        Map<String, Asked> all = new LinkedHashMap<>();
        for (Instance instance : instances) {
            if (instance.elsewhere() || instance.over()) continue;
            for (Sign sign : Sign.values()) {
                if (strength(sign, instance).isEmpty() || Judgement.sign(sign).orElseThrow().look().isEmpty() || looked(sign, instance)) continue;
                List<Instance> makers = instances.stream().filter(other -> !other.elsewhere() && !other.over() && strength(sign, other).isPresent() && other.sees().meets(spot(instance))).toList();
                if (makers.size() <= MOST_SOURCES) all.putIfAbsent(sign + "|" + instance.place(), new Asked(sign, instance.place(), makers));
            }
        }
        return List.copyOf(all.values());
    }

    /// Where one would look for a source: at its place, or over the side where it has none.
    private Box spot(Instance instance) {
        if (instance.place().isEmpty()) return instance.sees();
        Box sees = instance.sees();
        return new Box(Math.max(sees.fromMm(), instance.leftMm() - 300), Math.min(sees.toMm(), instance.leftMm() + 300), Math.max(sees.lowMm(), instance.aboveMm() - 300),
                Math.min(sees.highMm(), instance.aboveMm() + 300));
    }

    private boolean looked(Sign sign, Instance instance) {
        boolean measured = instance.reasons().stream().anyMatch(reason -> reason.sign().filter(sign::equals).isPresent());
        return measured || sightings.stream().anyMatch(s -> s.sighting().sign() == sign && (!s.placed() || s.box().meets(instance.sees())));
    }

    private List<Rated> rated;

    /// Every look not yet taken, with what it is expected to tell.
    List<Rated> rated() { return rated == null ? rated = rate(weighing) : rated; }

    /// Looks with the same makers share one weighing of their states.
    private List<Rated> rate(Weighing given) {
        Map<List<Integer>, double[]> states = new HashMap<>();
        List<Rated> all = new ArrayList<>();
        for (int a = 0; a < asked.size(); a++) {
            int finding = sightings.size() + a;
            double[] of = states.computeIfAbsent(network.makers(finding), makers -> given.states(makers.stream().mapToInt(m -> m).toArray()));
            all.add(new Rated(a, network.bits(finding, of), minutes(a), network.seen(finding, of)));
        }
        return List.copyOf(all);
    }

    /// The look expected to tell most for each minute, with that rate; empty where none tells anything.
    Optional<Rated> nextLook() {
        Optional<Rated> best = Optional.empty();
        for (Rated told : rated()) {
            if (told.bits > 1e-6 && (best.isEmpty() || told.rate() > best.get().rate() * (1 + 1e-9))) best = Optional.of(told);
        }
        return best;
    }

    /// @param asked its place in the list of looks
    /// @param seen  the chance that it comes out seen
    record Rated(int asked, double bits, double minutes, double seen) {
        double rate() { return bits / minutes; }
    }

    /// A look taken in the mind: where, what, and what it is expected to tell.
    ///
    /// @param seen the chance that it comes out seen
    record Taken(String place, double leftMm, String look, double minutes, double bits, double seen) {}

    /// @param leader the leading source that is open, with its odds before the looks and after
    record Course(List<Taken> taken, Optional<Instance> leader, double before, double after) {}

    /// The looks that may be taken at a time, one after the other, until the leading source that is open is settled or falls back under
    /// likely; each comes out the likelier way.
    Course course(WaterFindings.When when, int most) {
        int leader = open();
        List<Taken> taken = new ArrayList<>();
        if (leader < 0) return new Course(taken, Optional.empty(), 1, 1);
        double before = posterior.get(leader), after = before;
        boolean likely = before >= WaterFindings.LIKELY;
        List<Look> then = new ArrayList<>(looks);
        Weighing now = weighing;
        while (taken.size() < most && after < WaterFindings.SETTLED && (!likely || after >= WaterFindings.LIKELY)) {
            Optional<Rated> next = best(now, then, when);
            if (next.isEmpty()) break;
            Asked one = asked.get(next.get().asked);
            taken.add(new Taken(one.place, one.makers.getFirst().leftMm(), Judgement.sign(one.sign).orElseThrow().look(), next.get().minutes, next.get().bits, next.get().seen));
            then.set(sightings.size() + next.get().asked, next.get().seen >= 0.5 ? Look.SEEN : Look.NOT_SEEN);
            now = network.weighing(then);
            if (now.cost() > MOST_STEPS) break;
            after = now.probability(leader);
        }
        return new Course(taken, Optional.of(instances.get(leader)), before, after);
    }

    /// The most likely source that is likely and not settled; where none is settled, the most likely at all. -1 where nothing was seen, or nothing is open.
    private int open() {
        int leader = -1, open = -1;
        if (sightings.stream().noneMatch(s -> s.sighting().seen())) return -1;
        for (int i = 0; i < instances.size(); i++) {
            double p = posterior.get(i);
            if (instances.get(i).over()) continue;
            if (leader < 0 || p > posterior.get(leader)) leader = i;
            if (p < WaterFindings.SETTLED && p >= WaterFindings.LIKELY && (open < 0 || p > posterior.get(open))) open = i;
        }
        return open >= 0 ? open : leader >= 0 && posterior.get(leader) < WaterFindings.SETTLED ? leader : -1;
    }

    private Optional<Rated> best(Weighing now, List<Look> then, WaterFindings.When when) {
        Optional<Rated> best = Optional.empty();
        for (Rated rated : now == weighing ? rated() : rate(now)) {
            boolean may = then.get(sightings.size() + rated.asked) == Look.NOT_LOOKED && Judgement.sign(asked.get(rated.asked).sign).orElseThrow().when() == when;
            if (may && rated.bits > LITTLE && (best.isEmpty() || rated.rate() > best.get().rate() * (1 + 1e-9))) best = Optional.of(rated);
        }
        return best;
    }

    private double minutes(int one) { return Judgement.sign(asked.get(one).sign).orElseThrow().minutes(); }

    NextLook said(Rated rated) {
        Asked one = asked.get(rated.asked);
        String place = side.id() + " side" + (one.place.isEmpty() ? "" : ", " + one.place);
        return new NextLook(side.id(), place + ": " + Judgement.sign(one.sign).orElseThrow().look(), rated.minutes, rated.bits);
    }
}
