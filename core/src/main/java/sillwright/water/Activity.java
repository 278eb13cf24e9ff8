package sillwright.water;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.walk.Sign;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings.AtIt;

/// Whether what lives in the wood is at it now: by the meter for a fungus, by what it has just left for an insect.
final class Activity {
    /// Signs that tell the wood is wet now.
    private static final Set<Sign> WET = EnumSet.of(Sign.WET_AFTER_RAIN, Sign.END_GRAIN_DARK, Sign.WET_IN_DRY_WEATHER);

    private final AtIt state;
    private final String words;

    /// @param sightings at the place
    Activity(Survey survey, Life life, LifeTable.Row row, Optional<Member> member, List<Sighted> sightings) {
        OptionalDouble wettest = member.stream().flatMap(m -> survey.moisturesOn(m.id()).stream()).mapToDouble(reading -> reading.reading().own()).max();
        boolean alive = seen(sightings, Sign.INSECTS_SEEN) && LifeTable.of(Sign.INSECTS_SEEN).containsKey(life), fresh = row.active().filter(sign -> seen(sightings, sign)).isPresent();
        boolean wet = member.isPresent() && survey.sightingsOn(member.get().side()).stream().anyMatch(s -> s.seen() && WET.contains(s.sign()) && s.member().equals(Optional.of(member.get().id())));
        if (alive) {
            state = AtIt.ACTIVE;
            words = "active: live ones were seen";
        } else if (fresh && life != Life.CARPENTER_ANTS) {
            state = AtIt.ACTIVE;
            words = "most likely active: what it threw out looks fresh; lay paper beneath for a month and see";
        } else if (!life.isFungus()) {
            state = AtIt.NOT_KNOWN;
            words = life == Life.SUBTERRANEAN_TERMITES ? "not known: break a tube and look again in days, whether it is built up" : life == Life.CARPENTER_ANTS ? "not known: follow them at dusk, and look for fresh frass"
                    : life == Life.WOODPECKERS || life == Life.CARPENTER_BEES ? "not known: watch in spring" : "not known: lay paper beneath for a month and look for fresh powder";
        } else if (wettest.isPresent()) {
            double at = wettest.getAsDouble();
            state = at >= row.from().orElse(1.0) ? AtIt.ACTIVE : at >= row.rest().orElse(0.0) ? AtIt.CAN_GO_ON : AtIt.AT_REST;
            String meter = "the meter showed " + Words.percent(at) + " at most";
            words = switch (state) {
                case ACTIVE -> "active, or about to be: " + meter;
                case CAN_GO_ON -> "can go on: " + meter;
                case AT_REST, NOT_KNOWN -> "at rest: " + meter + ", too dry for it; it wakes when the wood is wetted again";
            };
        } else {
            state = wet ? AtIt.CAN_GO_ON : AtIt.NOT_KNOWN;
            words = wet ? "can go on: the wood was seen wet; meter it" : "not known: meter the wood";
        }
    }

    private static boolean seen(List<Sighted> sightings, Sign sign) { return sightings.stream().anyMatch(s -> s.sighting().seen() && s.sighting().sign() == sign); }

    AtIt state() { return state; }

    String words() { return words; }
}
