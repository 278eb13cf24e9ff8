package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.Assessment;
import sillwright.Settings;
import sillwright.measure.Kind;
import sillwright.measure.Memo;
import sillwright.measure.Quantity;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.store.FindingsFile;
import sillwright.store.SurveyFile;
import sillwright.walk.Body;
import sillwright.walk.Entry;
import sillwright.walk.FieldBook;
import sillwright.walk.ProbeReading;
import sillwright.walk.Survey;
import sillwright.work.FirstFit;

/// The road with a memory comes to the same as the road without one, whatever was changed before.
@DisplayNameGeneration(ReplaceUnderscores.class)
class RememberedTest {
    private static final long SEED = 20261125;

    private static Settings settings() { return new Settings(LocalDate.of(2026, 6, 1), Units.US, 1, new FirstFit(), Settings.COMMON_STOCK_MM); }

    private static Assessment road(List<Entry> entries, Memo memo) { return Assessment.of(FieldBook.fold("", entries), settings(), step -> {}, memo); }

    @Test
    void after_any_changes_the_findings_are_those_of_a_fresh_start() {
        List<Entry> entries = new ArrayList<>(SurveyFile.read(Path.of("..", "examples", "porch-alone.survey.json")).entries());
        List<Entry> probes = entries.stream().filter(entry -> entry.body() instanceof ProbeReading).toList();
        Remembered memory = new Remembered();
        Random random = new Random(SEED);
        for (int round = 0; round < 6; round++) {
            Entry one = probes.get(random.nextInt(probes.size()));
            ProbeReading probe = (ProbeReading) one.body();
            Quantity depth = Quantity.read(Words.number(probe.reach().own() * 0.5 * random.nextDouble(), 1) + " mm", Kind.LENGTH);
            if (round > 0) entries.add(new Entry("later-" + round, new Entry.Stamp(1_900_000_000_000L + round, 0), "desk", "", new Body.Amended(one.id(), new ProbeReading(probe.spot(), depth, probe.reach(), false))));
            memory.round();
            assertEquals(FindingsFile.text(road(entries, Memo.NONE)), FindingsFile.text(road(entries, memory)), "seed " + SEED + ", round " + round);
        }
    }

    @Test
    void what_nobody_asked_for_in_the_last_rounds_is_forgotten() {
        Remembered memory = new Remembered();
        for (int round = 0; round < 50; round++) {
            memory.round();
            memory.of("always", () -> 1);
            memory.of(round, () -> 1);
        }
        assertTrue(memory.size() <= 8, "remembers " + memory.size());
        assertTrue(memory.known("always").isPresent());
    }

    @Test
    void an_answer_that_takes_much_room_is_worked_once_while_there_is_room_and_the_ones_longest_not_asked_for_go_first() {
        Remembered memory = new Remembered();
        int[] worked = {0};
        for (int k = 0; k < 1000; k++) {
            memory.roomy(k, () -> ++worked[0]);
            memory.roomy(0, () -> ++worked[0]);
        }
        assertEquals(1000, worked[0], "the one that is asked for all the time is worked once");
        memory.roomy(1, () -> ++worked[0]);
        assertEquals(1001, worked[0], "one that nobody asked for is forgotten");
    }

    @Test
    void a_members_part_of_the_survey_holds_nothing_of_another() {
        Survey survey = SurveyFile.read(Path.of("..", "examples", "porch-alone.survey.json")).fold();
        survey.members().values().forEach(member -> {
            Survey part = survey.about(member);
            assertEquals(List.of(member), List.copyOf(part.members().values()));
            for (var face : member.faces()) assertEquals(survey.probesOn(member.id(), face), part.probesOn(member.id(), face));
            assertEquals(survey.moisturesOn(member.id()), part.moisturesOn(member.id()));
        });
    }
}
