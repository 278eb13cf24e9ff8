package sillwright.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.walk.Side;
import sillwright.walk.Sign;
import sillwright.water.Network.Finding;
import sillwright.water.Network.Link;
import sillwright.water.Network.Look;
import sillwright.water.WaterFindings.Evidence;
import sillwright.water.WaterFindings.NextLook;

/// The network of one side: its sources at their places, what was sighted there, and what still could be.
final class Diagnosis {
    /// Evidence that changes the odds by less than this is left unsaid, bits.
    private static final double HARDLY = 0.05;
    /// A sign that more sources than this could make is no look to send anyone for: it tells too little of which.
    private static final int MOST_SOURCES = 8;
    /// Where very much was seen on one side and weighing would take more steps than this, the weakest links are left out.
    private static final double MOST_STEPS = 10_000;

    private final Side side;
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

    private Diagnosis(Side side, List<Instance> instances, List<Sighted> sightings) {
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
        for (Sighted sighted : sightings) findings.add(finding(sighted.sighting().sign(), instances.stream().filter(instance -> instance.reaches(sighted)).toList(), least));
        for (Asked one : asked) findings.add(finding(one.sign, one.makers, least));
        return Network.of(instances.stream().map(Instance::prior).toList(), findings);
    }

    /// Links weaker than this were left out to weigh the side in time; 0 where none were.
    double least() { return least; }

    static Diagnosis of(Side side, List<Instance> instances, List<Sighted> sightings) { return new Diagnosis(side, instances, sightings); }

    private Finding finding(Sign sign, List<Instance> makers, double least) {
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < instances.size(); i++) {
            if (!makers.contains(instances.get(i))) continue;
            Optional<Double> strength = strength(sign, instances.get(i));
            if (strength.isPresent() && strength.get() >= least) links.add(new Link(i, strength.get()));
        }
        return new Finding(Judgement.sign(sign).orElseThrow().leak(), links);
    }

    private static Optional<Double> strength(Sign sign, Instance instance) {
        return Judgement.links(sign).stream().filter(link -> link.source() == instance.source()).map(Judgement.Link::strength).findFirst();
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
                all.get(i).add(new Evidence(sightings.get(s).words() + said(bits, direct), bits));
            }
        }
        for (List<Evidence> one : all) one.sort(Comparator.comparingDouble((Evidence e) -> -Math.abs(e.weight())));
        return weighed = all;
    }

    private List<Double> odds(Weighing weighing) {
        double all = weighing.weigh();
        List<Double> odds = new ArrayList<>();
        for (int i = 0; i < instances.size(); i++) odds.add(weighing.with(i) / all);
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
            if (instance.elsewhere()) continue;
            for (Sign sign : Sign.values()) {
                if (strength(sign, instance).isEmpty() || Judgement.sign(sign).orElseThrow().look().isEmpty() || looked(sign, instance)) continue;
                List<Instance> makers = instances.stream().filter(other -> !other.elsewhere() && strength(sign, other).isPresent() && other.sees().meets(spot(instance))).toList();
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

    /// The look expected to tell most for each minute, with that rate; empty where none tells anything.
    Optional<Rated> nextLook() {
        Optional<Rated> best = Optional.empty();
        for (int a = 0; a < asked.size(); a++) {
            Rated told = new Rated(a, network.bits(sightings.size() + a, weighing), minutes(a));
            if (told.bits > 1e-6 && (best.isEmpty() || told.rate() > best.get().rate() * (1 + 1e-9))) best = Optional.of(told);
        }
        return best;
    }

    /// @param asked its place in the list of looks
    record Rated(int asked, double bits, double minutes) {
        double rate() { return bits / minutes; }
    }

    private double minutes(int one) { return Judgement.sign(asked.get(one).sign).orElseThrow().minutes(); }

    NextLook said(Rated rated) {
        Asked one = asked.get(rated.asked);
        String place = side.id() + " side" + (one.place.isEmpty() ? "" : ", " + one.place);
        return new NextLook(side.id(), place + ": " + Judgement.sign(one.sign).orElseThrow().look(), rated.minutes, rated.bits);
    }
}
