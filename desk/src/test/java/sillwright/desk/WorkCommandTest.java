package sillwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillwright.Assessment;
import sillwright.Settings;
import sillwright.solve.ProvenCuts;
import sillwright.store.SurveyFile;
import sillwright.work.WorkFindings.SafeSide;

/// `work` as it is typed: what the stage found, in words on a terminal.
@DisplayNameGeneration(ReplaceUnderscores.class)
class WorkCommandTest {
    private static final LocalDate START = LocalDate.of(2026, 5, 4);

    private static String flat(String words) { return words.replaceAll("\\s+", " "); }

    @ParameterizedTest
    @ValueSource(strings = {"porch-alone", "fascia-under-gutter", "one-sill"})
    void every_duty_and_caution_of_every_side_is_told(String name) {
        String file = ExamplesTest.FOLDER.resolve(name + ".survey.json").toString();
        Said said = Said.by("work", "--start", START.toString(), file);
        assertEquals(0, said.code(), said.err());
        var survey = SurveyFile.read(ExamplesTest.FOLDER.resolve(name + ".survey.json")).fold();
        Assessment all = Assessment.of(survey, new Settings(START, Settings.written(survey), 1, new ProvenCuts(), Settings.commonStock(Settings.written(survey))));
        assertFalse(all.work().safety().isEmpty());
        String told = flat(said.out());
        for (SafeSide side : all.work().safety()) Stream.concat(side.duties().stream(), side.cautions().stream()).forEach(line -> assertTrue(told.contains("- " + flat(line)), line));
    }

    @Test
    void the_meter_of_the_book_tells_whether_what_lives_in_the_wood_is_at_it() {
        Said said = Said.by("water", "--start", START.toString(), ExamplesTest.FOLDER.resolve("fallow-brook-house.survey.json").toString());
        assertEquals(0, said.code(), said.err());
        assertTrue(flat(said.out()).contains("Active, or about to be: the meter showed"), said.out());
    }

    @Test
    void days_lost_to_rain_put_the_end_off_and_a_plan_from_today_begins_today() {
        String file = ExamplesTest.FOLDER.resolve("one-sill.survey.json").toString();
        Said dry = Said.by("work", "--start", START.toString(), file), wet = Said.by("work", "--start", START.toString(), "--rained", "2026-05-04,2026-05-05,2026-05-06,2026-05-07,2026-05-08", file);
        assertTrue(dry.out().contains("T1   " + START), dry.out());
        assertTrue(end(wet).isAfter(end(dry)), end(dry) + " and " + end(wet));
        LocalDate today = LocalDate.of(2026, 6, 10);
        assertTrue(Said.by("work", "--start", START.toString(), "--today", today.toString(), file).out().contains("T1   " + today));
    }

    /// The last day of the last step.
    private static LocalDate end(Said said) {
        return said.out().lines().filter(line -> line.matches("T\\d+ .*")).map(line -> LocalDate.parse(line.replaceAll("^T\\d+ +\\S+ to (\\S+) .*$", "$1"))).max(LocalDate::compareTo).orElseThrow();
    }
}
