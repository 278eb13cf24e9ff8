package sillwright.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Sign;
import sillwright.walk.Survey;
import sillwright.water.net.Network;
import sillwright.water.net.Network.Finding;
import sillwright.water.net.Network.Link;
import sillwright.water.net.Network.Look;
import sillwright.water.WaterFindings.InTheWood;
import sillwright.water.WaterFindings.RankedSource;

/// Names what lives in the wood at each place where a sign of it was seen, and what that asks for.
///
/// A small network of its own for each place, weighed like the sources of water: what lives there makes signs, and a sign that was
/// looked for and is not there counts. Softwood and hardwood shift the odds of the beetles that live in one of them only.
final class Lives {
    /// Lives less likely than this are not named.
    private static final double WORTH_NAMING = 0.30;
    /// An odds factor for a beetle in wood that it hardly lives in; this program's own choice.
    private static final double WRONG_WOOD = 0.1;

    private final Survey survey;
    private final List<RankedSource> sources;

    Lives(Survey survey, List<RankedSource> sources) {
        this.survey = survey;
        this.sources = sources;
    }

    List<InTheWood> all() {
        List<InTheWood> all = new ArrayList<>();
        for (Side side : survey.sides().values()) {
            Map<String, List<Sighted>> places = new LinkedHashMap<>();
            for (Sighted sighted : Sighted.on(survey, side))
                if (!LifeTable.of(sighted.sighting().sign()).isEmpty()) places.computeIfAbsent(sighted.sighting().member().orElse(""), _ -> new ArrayList<>()).add(sighted);
            places.forEach((member, seen) -> all.addAll(at(side, member, seen)));
        }
        return all;
    }

    private List<InTheWood> at(Side side, String memberId, List<Sighted> sightings) {
        if (sightings.stream().noneMatch(s -> s.sighting().seen() && s.sighting().sign() != Sign.HOLLOW_SOUND && s.sighting().sign() != Sign.MILDEW_LOW)) return List.of();
        Optional<Member> member = Optional.ofNullable(survey.members().get(memberId));
        List<Double> priors = new ArrayList<>();
        for (Life life : Life.values()) priors.add(prior(life, member));
        List<Finding> findings = new ArrayList<>();
        List<Look> looks = new ArrayList<>();
        for (Sighted sighted : sightings) {
            List<Link> links = new ArrayList<>();
            LifeTable.of(sighted.sighting().sign()).forEach((life, strength) -> links.add(new Link(life.ordinal(), strength)));
            findings.add(new Finding(LifeTable.LEAK, links));
            looks.add(sighted.sighting().seen() ? Look.SEEN : Look.NOT_SEEN);
        }
        List<Double> odds = Network.of(priors, findings).given(looks).sources();
        List<InTheWood> found = new ArrayList<>();
        for (Life life : Life.values()) if (odds.get(life.ordinal()) >= WORTH_NAMING && told(life, sightings)) found.add(say(life, odds.get(life.ordinal()), side, member, sightings));
        found.sort(Comparator.comparingDouble(one -> -one.probability()));
        return found;
    }

    private static boolean told(Life life, List<Sighted> sightings) {
        return sightings.stream().anyMatch(s -> s.sighting().seen() && LifeTable.of(s.sighting().sign()).getOrDefault(life, 0.0) >= 0.2);
    }

    private static double prior(Life life, Optional<Member> member) {
        double prior = LifeTable.row(life).prior();
        Optional<Boolean> hard = member.map(Member::species).flatMap(Lives::hardwood);
        boolean wrong = life == Life.POWDERPOST_BEETLES && hard.filter(yes -> !yes).isPresent() || life == Life.OLD_HOUSE_BORER && hard.filter(yes -> yes).isPresent();
        double odds = prior / (1 - prior) * (wrong ? WRONG_WOOD : 1);
        return odds / (1 + odds);
    }

    private static final Set<String> SOFTWOODS = Set.of("pine", "fir", "douglas", "spruce", "hemlock", "larch", "cedar", "redwood", "cypress", "baldcypress", "tamarack", "juniper", "yew");
    private static final Set<String> HARDWOODS = Set.of("oak", "ash", "maple", "chestnut", "beech", "birch", "elm", "hickory", "walnut", "cherry", "locust", "poplar", "yellow", "mahogany", "sapele", "sweetgum", "basswood");

    /// By the first word of the name; empty where it tells neither.
    private static Optional<Boolean> hardwood(String species) {
        String first = species.split("-")[0];
        return HARDWOODS.contains(first) ? Optional.of(true) : SOFTWOODS.contains(first) ? Optional.of(false) : Optional.empty();
    }

    /// An engineer is called only where something is borne.
    private static String call(LifeTable.Row row, Optional<Member> member) {
        boolean light = row.call().equals(BEARS) && member.filter(m -> !m.bearsLoad()).isPresent();
        return light ? "" : Words.sentence(row.call());
    }

    private static final String BEARS = "an engineer where the member bears load";

    private InTheWood say(Life life, double probability, Side side, Optional<Member> member, List<Sighted> sightings) {
        LifeTable.Row row = LifeTable.row(life);
        Set<String> signs = new TreeSet<>();
        for (Sighted s : sightings) if (LifeTable.of(s.sighting().sign()).containsKey(life)) signs.add((s.sighting().seen() ? "" : "not there: ") + s.sighting().sign().words());
        List<String> water = sources.stream().filter(source -> source.probability() >= WaterFindings.LIKELY && source.side().equals(side.id())
                && (member.isEmpty() || source.members().contains(member.get().id()))).map(RankedSource::id).toList();
        return new InTheWood(life, side.id(), member.map(Member::id).orElse(""), probability, new Activity(survey, life, row, member, sightings).state(), new Activity(survey, life, row, member, sightings).words(),
                List.copyOf(signs), Words.sentence(row.needs()), call(row, member), Words.sentence(row.water()), water, row.basis());
    }
}
