package sillwright.watch;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Units;
import sillwright.water.Water;
import sillwright.watch.Histories.History;
import sillwright.watch.Histories.Truth;
import sillwright.watch.Verdict.State;

import static org.junit.jupiter.api.Assertions.*;

/// Verdicts on histories whose truth is known. The long form: -Dwatch.histories=4000.
@DisplayNameGeneration(ReplaceUnderscores.class)
class VerdictTest {
    private static final int DRAWS = Integer.getInteger("watch.histories", 60);
    private static final long SEED = Long.getLong("watch.seed", 20261125L);

    private static boolean failed(State state) { return state == State.NOT_DRYING || state == State.WET_AGAIN; }

    private static List<Verdict> judged(History history, long untilMs) {
        var survey = history.until(untilMs);
        return Verdicts.of(survey, Water.find(survey), Series.dayOf(untilMs).plusDays(1), Units.US);
    }

    /// Of every remedy of a kind, whether either of the first two rounds after it failed says so; a later failure is given two months to wet the wood again.
    private static int[] caught(Truth truth, int draws, StringBuilder told) {
        RandomGenerator random = new SplittableRandom(SEED + truth.ordinal());
        int caught = 0, all = 0;
        for (int d = 0; d < draws; d++) {
            History history = Histories.of(truth, random);
            List<Long> since = history.walks().stream().filter(walk -> walk > history.failsMs() + (truth == Truth.LATER ? 60 * 86_400_000L : 0)).limit(2).toList();
            Set<String> seen = new HashSet<>(), works = new HashSet<>();
            for (long walk : since) for (Verdict verdict : judged(history, walk)) {
                works.add(verdict.id());
                if (failed(verdict.state())) seen.add(verdict.id());
            }
            all += works.size();
            caught += seen.size();
            if (seen.size() < works.size()) told.append(' ').append(d);
        }
        told.append(": ").append(caught).append(" of ").append(all).append("; ");
        return new int[] {caught, all};
    }

    @Test
    void of_remedies_that_failed_nineteen_in_twenty_are_caught_within_two_rounds() {
        int caught = 0, all = 0;
        StringBuilder told = new StringBuilder();
        for (Truth truth : List.of(Truth.NEVER, Truth.PARTLY, Truth.LATER)) {
            int[] one = caught(truth, DRAWS, told.append(truth));
            caught += one[0];
            all += one[1];
        }
        System.out.println("caught " + told);
        assertTrue(caught >= 0.95 * all, "seed " + SEED + ", missed " + told);
    }

    @Test
    void of_remedies_that_work_fewer_than_one_in_twenty_is_ever_called_failed_in_five_years() {
        RandomGenerator random = new SplittableRandom(SEED);
        int alarms = 0, dry = 0;
        StringBuilder told = new StringBuilder();
        for (int d = 0; d < 2 * DRAWS; d++) {
            History history = Histories.of(Truth.WORKS, random);
            boolean alarm = false;
            for (long walk : history.walks()) alarm |= walk > history.doneMs() && judged(history, walk).stream().anyMatch(verdict -> failed(verdict.state()));
            if (alarm) {
                alarms++;
                told.append(' ').append(d);
            }
            State last = judged(history, history.walks().getLast()).getFirst().state();
            if (last == State.DRY || last == State.DRYING) dry++;
        }
        System.out.println("false alarms " + alarms + " of " + 2 * DRAWS + ", said dry or drying at the end " + dry);
        assertTrue(alarms < 0.05 * 2 * DRAWS, "seed " + SEED + ", alarms " + alarms + " of " + 2 * DRAWS + ":" + told);
        assertTrue(dry > 0.9 * 2 * DRAWS, "seed " + SEED + ", dry " + dry + " of " + 2 * DRAWS);
    }
}
