package sillwright.watch;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Units;
import sillwright.walk.Survey;
import sillwright.water.Water;
import sillwright.water.WaterFindings;
import sillwright.watch.Histories.History;
import sillwright.watch.Histories.Truth;
import sillwright.watch.Verdict.State;

import static org.junit.jupiter.api.Assertions.*;

/// What a verdict does to the diagnosis.
@DisplayNameGeneration(ReplaceUnderscores.class)
class VerdictsWholeTest {
    @Test
    void wood_that_stays_wet_makes_other_water_likelier_and_wood_that_dried_makes_it_less() {
        RandomGenerator random = new SplittableRandom(5);
        History never = Histories.of(Truth.NEVER, random), works = Histories.of(Truth.WORKS, random);
        assertTrue(change(never.survey()) > 0, "still wet");
        assertTrue(change(works.survey()) <= 0, "dried");
    }

    /// How the summed odds of all sources change once the verdicts are weighed in.
    private static double change(Survey survey) {
        WaterFindings before = Water.find(survey);
        List<Verdict> verdicts = Verdicts.of(survey, before, LocalDate.of(2027, 1, 1), Units.US);
        WaterFindings after = Water.find(survey, Verdicts.told(verdicts));
        return sum(after) - sum(before);
    }

    private static double sum(WaterFindings water) { return water.sources().stream().mapToDouble(WaterFindings.RankedSource::probability).sum(); }

    @Test
    void before_anything_was_read_it_is_too_early_and_the_round_that_will_tell_is_named() {
        History works = Histories.of(Truth.WORKS, new SplittableRandom(6));
        List<Verdict> verdicts = Verdicts.of(works.until(works.doneMs() + 1), Water.find(works.survey()), Series.dayOf(works.doneMs()), Units.US);
        for (Verdict verdict : verdicts) {
            assertEquals(State.TOO_EARLY, verdict.state());
            assertTrue(verdict.told().orElseThrow().isAfter(Series.dayOf(works.doneMs())), verdict::toString);
            assertEquals(Holding.AT_ONCE, verdict.failing(), 1e-9);
        }
        assertFalse(verdicts.isEmpty());
    }
}
