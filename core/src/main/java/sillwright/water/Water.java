package sillwright.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;

import sillwright.measure.Basis;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Building;
import sillwright.walk.Building.Month;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Sign;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings.GutterCheck;
import sillwright.water.WaterFindings.NextLook;
import sillwright.water.WaterFindings.RainCheck;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.water.WaterFindings.SplashCheck;
import sillwright.water.net.Network;

/// The water stage: from a survey to the sources of water, ranked, with what stops them.
public final class Water {
    /// A source less likely than this is left out of the list.
    static final double NEGLIGIBLE = 0.05;

    private final Survey survey;
    private final Units units;
    private final Map<String, List<EdgeWater>> edges = new LinkedHashMap<>();
    private final List<Diagnosis> diagnoses = new ArrayList<>();

    private Water(Survey survey, Units units, List<Tested> tested, ToDoubleBiFunction<Sign, Source> factor) {
        this.survey = survey;
        this.units = units;
        for (Side side : survey.sides().values()) {
            List<EdgeWater> waters = side.edges().stream().map(edge -> EdgeWater.of(side, edge, survey.building())).toList();
            edges.put(side.id(), waters);
            List<Sighted> sightings = Sighted.on(survey, side);
            List<Instance> instances = Remedied.split(Instances.on(survey, side, sightings, waters, units), survey);
            diagnoses.add(Diagnosis.of(side, instances, Sighted.with(sightings, tested, survey, side), units, factor));
        }
    }

    /// What the water stage finds, said in the units that the survey's sides are measured in.
    public static WaterFindings find(Survey survey) { return find(survey, written(survey)); }

    /// What the water stage finds.
    ///
    /// @param units that lengths, flows and rain are said in
    public static WaterFindings find(Survey survey, Units units) { return new Water(survey, units, List.of(), (_, _) -> 1).findings(); }

    /// The same with what verdicts on remedies tell weighed in.
    public static WaterFindings find(Survey survey, List<Tested> tested) { return find(survey, tested, written(survey)); }

    /// What verdicts tell weighed in, said in the reader's units.
    public static WaterFindings find(Survey survey, List<Tested> tested, Units units) { return new Water(survey, units, tested, (_, _) -> 1).findings(); }

    /// The same findings with what lives in the wood told by this survey's readings, where they were found without any.
    public static WaterFindings lived(Survey survey, WaterFindings found) {
        return new WaterFindings(found.gutters(), found.splashes(), found.sources(), found.nextLook(), found.rounds(), new Lives(survey, found.sources()).all(), found.rains(), found.gaps(), found.seenTo(), found.cold());
    }

    /// The sources in the order of their odds, with every link's strength multiplied by a factor: how far the ranking rests on judgement.
    static List<Instance> ranking(Survey survey, ToDoubleBiFunction<Sign, Source> factor) {
        return new Water(survey, written(survey), List.of(), factor).found().stream().map(Found::instance).toList();
    }

    /// What the diagnosis rests on, besides the checks' own sources.
    public static List<Basis> basis() { return List.of(Network.NOISY_OR, Network.TWO_LAYERS, Judgement.STRENGTHS); }

    /// The words of the remedies of a source, the simplest first.
    public static List<String> remedies(Source source) { return Remedies.words(source); }

    private static Units written(Survey survey) {
        Set<Unit> metric = Set.of(Unit.MILLIMETRE, Unit.CENTIMETRE, Unit.METRE);
        return survey.sides().values().stream().findFirst().filter(side -> metric.contains(side.length().unit())).map(_ -> Units.SI).orElse(Units.US);
    }

    private WaterFindings findings() {
        List<GutterCheck> gutters = edges.values().stream().flatMap(List::stream).flatMap(water -> water.check(units).stream()).toList();
        List<SplashCheck> splashes = survey.sides().values().stream().flatMap(side -> splash(side).stream()).toList();
        List<RankedSource> ranked = ranked();
        List<Month> months = survey.building().map(Building::months).orElse(List.of());
        List<RainCheck> rains = months.isEmpty() ? List.of() : survey.sides().values().stream().map(side -> SideRain.of(side, months, units)).toList();
        return new WaterFindings(gutters, splashes, ranked, nextLook(), new Rounds(diagnoses, units).all(), new Lives(survey, ranked).all(), rains, gaps(ranked), seenTo(),
                months.isEmpty() ? Optional.empty() : Optional.of(ColdWall.check(months)));
    }

    private Optional<SplashCheck> splash(Side side) {
        return Circumstances.clearanceMm(survey, side).map(clearance -> {
            double clear = Math.max(0, clearance), out = side.edges().isEmpty() ? 0 : side.edges().getFirst().overhang().own();
            var ground = side.ground().surface();
            double reach = Splash.reachMm(ground, out), share = Splash.share(clear, ground, out);
            String words = "The lowest wood stands " + Words.length(clear, units) + " above the " + Choice.said(ground)
                    + (side.ground().clearance().isEmpty() ? " (taken from the lowest member listed)" : "") + ", splash that matters comes to " + Words.length(reach, units)
                    + ", and " + Words.percent(share) + " of it as high as the wood: " + Splash.advice(clear, ground) + ".";
            return new SplashCheck(side.id(), clear, reach, share, words, List.of(Splash.MODEL, Splash.CODE, Splash.STANDARD, Splash.FAR_LINE));
        });
    }

    /// A source on a side before it is numbered.
    private record Found(Diagnosis diagnosis, int at) {
        Instance instance() { return diagnosis.instances().get(at); }

        double probability() { return diagnosis.probability(at); }
    }

    private List<Found> found() {
        List<Found> found = new ArrayList<>();
        for (Diagnosis diagnosis : diagnoses)
            for (int i = 0; i < diagnosis.instances().size(); i++)
                if (!diagnosis.instances().get(i).over() && diagnosis.probability(i) >= NEGLIGIBLE) found.add(new Found(diagnosis, i));
        found.sort(Comparator.comparingDouble((Found one) -> -one.probability()));
        return found;
    }

    private List<RankedSource> ranked() {
        List<RankedSource> ranked = new ArrayList<>();
        for (Found one : found()) {
            if (one.diagnosis().evidence(one.at()).isEmpty()) continue;
            Instance instance = one.instance();
            List<String> members = instance.members(survey.membersOn(instance.side().id()));
            List<Member> wetted = members.stream().map(id -> survey.members().get(id)).toList();
            Decided decided = Decided.of(survey, instance, new Remedies(survey, units).of(instance, water(instance), wetted));
            ranked.add(new RankedSource("W" + (ranked.size() + 1), instance.source(), instance.side().id(), instance.place(), instance.leftMm(), instance.aboveMm(),
                    one.probability(), instance.prior(), one.diagnosis().evidence(one.at()), decided.remedies(), members, decided.ruling()));
        }
        return ranked;
    }

    private List<WaterFindings.SeenTo> seenTo() {
        return diagnoses.stream().flatMap(diagnosis -> diagnosis.instances().stream()).filter(Instance::over)
                .map(one -> new WaterFindings.SeenTo(one.source(), one.side().id(), one.place(), one.members(survey.membersOn(one.side().id())))).toList();
    }

    private Optional<EdgeWater> water(Instance instance) {
        return instance.edge().flatMap(edge -> edges.get(instance.side().id()).stream().filter(water -> water.edge() == edge).findFirst());
    }

    private Optional<NextLook> nextLook() {
        Optional<NextLook> best = Optional.empty();
        double rate = 0;
        for (Diagnosis diagnosis : diagnoses) {
            Optional<Diagnosis.Rated> rated = diagnosis.nextLook();
            if (rated.isPresent() && rated.get().rate() > rate) {
                rate = rated.get().rate();
                best = Optional.of(diagnosis.said(rated.get()));
            }
        }
        return best;
    }

    private List<String> gaps(List<RankedSource> ranked) {
        Set<String> gaps = new LinkedHashSet<>();
        if (survey.sides().isEmpty()) gaps.add("No side is described: describe one, and its sources of water can be weighed.");
        if (survey.building().flatMap(Building::designRain).isEmpty())
            gaps.add("No design rain is given for the building: take it from the local plumbing code, and gutters can be checked against their roofs.");
        if (survey.building().map(Building::months).orElse(List.of()).isEmpty())
            gaps.add("No monthly weather is given: with it ice at the eaves and wind-driven rain can be weighed by the place.");
        for (Side side : survey.sides().values()) gaps(side, gaps);
        gaps.addAll(Decided.gaps(survey, ranked));
        return List.copyOf(gaps);
    }

    private void gaps(Side side, Set<String> gaps) {
        String here = Words.sentence(side.id()) + " side: ";
        if (side.edges().isEmpty()) gaps.add(here + "no roof edge is described; with one, roof drip, gutters and ice can be placed and weighed.");
        for (EdgeWater water : edges.get(side.id())) {
            var edge = water.edge();
            if (water.shedsHere() && edge.planDepth().isEmpty()) gaps.add(here + "measure how deep on plan the roof is above the " + water.place() + ", and what it sends can be worked.");
            if (edge.gutter().filter(gutter -> gutter.fall().isEmpty()).isPresent()) gaps.add(here + "the fall of the gutter on the " + water.place() + " was not measured: it is counted as level.");
            if (edge.gutter().filter(gutter -> gutter.downspouts().isEmpty()).isPresent()) gaps.add(here + "no downspout is recorded on the " + water.place() + ": its gutter is counted as one run with a free outlet.");
        }
        if (side.ground().clearance().isEmpty())
            gaps.add(here + (Circumstances.clearanceMm(survey, side).isPresent() ? "the clearance from ground to wood was not measured; the lowest member listed stands in."
                    : "measure from the ground to the lowest wood, and splash can be worked."));
        if (side.ground().fall().isEmpty()) gaps.add(here + "lay a level from the wall: the fall of the ground was not measured.");
        if (survey.sightingsOn(side.id()).isEmpty()) gaps.add(here + "nothing was looked for; its sources rest on measures alone.");
        diagnoses.stream().filter(d -> d.side() == side && d.least() > 0).forEach(d -> gaps.add(here + "so much was seen here that links of a strength under "
                + Words.number(d.least(), 2) + " were left out to weigh it; name the member or the place with a sighting, and it is weighed more sharply."));
        boolean gutterSeen = diagnoses.stream().flatMap(d -> d.instances().stream()).anyMatch(i -> i.side() == side && i.source() == Source.GUTTER_CLOGGED && i.edge().isEmpty());
        if (gutterSeen) gaps.add(here + "a gutter was sighted but none is described on its roof edges; describe it, and it can be checked.");
    }
}
