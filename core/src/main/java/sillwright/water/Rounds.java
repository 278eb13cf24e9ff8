package sillwright.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.water.WaterFindings.Round;
import sillwright.water.WaterFindings.Step;
import sillwright.water.WaterFindings.When;

/// Walks round the building that settle what is open: one on a dry day, one in steady rain, one in a cold spell.
///
/// Side after side in the order of the survey, always the same way round. On each side looks are taken while its leading source that is open
/// stands under [WaterFindings#SETTLED], each time the one with the most expected bits per minute, the looks before it taken as coming out the likelier way.
final class Rounds {
    /// Looks on one side in one round, at most; own choice: what one person remembers.
    private static final int MOST_ON_A_SIDE = 4;

    private final List<Diagnosis> diagnoses;
    private final Units units;

    Rounds(List<Diagnosis> diagnoses, Units units) {
        this.diagnoses = diagnoses;
        this.units = units;
    }

    List<Round> all() {
        List<Round> rounds = new ArrayList<>();
        for (When when : When.values()) round(when).ifPresent(rounds::add);
        return rounds;
    }

    private Optional<Round> round(When when) {
        List<Step> steps = new ArrayList<>();
        List<String> outcomes = new ArrayList<>();
        double minutes = 0;
        for (Diagnosis diagnosis : diagnoses) {
            Diagnosis.Course course = diagnosis.course(when, MOST_ON_A_SIDE);
            if (course.taken().isEmpty()) continue;
            List<Step> here = course.taken().stream().map(taken -> step(diagnosis, taken, when)).toList();
            if (when == When.RAIN) here = here.stream().sorted(Comparator.comparingDouble(Step::leftMm)).toList();
            steps.addAll(here);
            minutes += when == When.RAIN ? here.stream().mapToDouble(Step::minutes).max().orElse(0) : here.stream().mapToDouble(Step::minutes).sum();
            outcomes.add(diagnosis.side().id() + " side, " + course.leader().orElseThrow().source().words() + ": " + Words.chance(course.before()) + " now, " + Words.chance(course.after()) + " then"
                    + (course.after() >= WaterFindings.SETTLED ? "" : course.after() < WaterFindings.LIKELY ? ", no longer likely" : ", still open"));
        }
        if (steps.isEmpty()) return Optional.empty();
        return Optional.of(new Round(when, steps, minutes, "Should each look come out as is likelier: " + String.join("; ", outcomes) + "."));
    }

    private Step step(Diagnosis diagnosis, Diagnosis.Taken taken, When when) {
        String stand = when == When.RAIN ? "Stand off the " + diagnosis.side().id() + " side, " + Words.length(taken.leftMm(), units) + " from its left end, where eave and foot of the wall are both in sight: " : "";
        String look = stand.isEmpty() ? Words.sentence(taken.look()) : stand + taken.look();
        return new Step(diagnosis.side().id(), taken.place(), taken.leftMm(), look, taken.minutes(), taken.bits(), taken.seen());
    }
}
