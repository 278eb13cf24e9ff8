package sillwright.walk;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Refused;
import sillwright.walk.WorkDone.Coating;
import sillwright.walk.WorkDone.Done;
import sillwright.walk.WorkDone.Film;

import static org.junit.jupiter.api.Assertions.*;
import static sillwright.walk.Bodies.*;

/// What the record of work does to the survey, on an invented shed.
@DisplayNameGeneration(ReplaceUnderscores.class)
class WorkDoneTest {
    private static final long DAY = 86_400_000L;

    static WorkDone done(Done done, String member, String from, String to, long day) {
        return new WorkDone(done, LocalDate.ofEpochDay(day), "south", member.isEmpty() ? Optional.empty() : Optional.of(member), from.isEmpty() ? Optional.empty() : Optional.of(mm(from)),
                to.isEmpty() ? Optional.empty() : Optional.of(mm(to)), done == Done.STOP_WATER ? Optional.of("gutter-clogged") : Optional.empty(), "", Optional.empty(),
                done == Done.RECOAT ? Optional.of(new Coating(Film.OIL_PAINT, 1, 2, true, true, Optional.empty(), Optional.empty(), Optional.empty())) : Optional.empty(),
                Optional.of(6.0), Optional.empty(), "");
    }

    @Test
    void wood_that_was_taken_out_is_no_longer_soft() {
        Survey survey = FieldBook.fold("", begunWith(entry("1", DAY, probe("post", "6 in", "2 in")), entry("2", DAY, probe("post", "40 in", "1 in")),
                entry("3", DAY, moisture("post", "6 in", "28%")), entry("4", 40 * DAY, done(Done.SCARF_SPLICE, "post", "0 in", "18 in", 39)),
                entry("5", 60 * DAY, probe("post", "7 in", "0 in"))));
        assertEquals(List.of(), survey.faults());
        assertEquals(3, survey.probes().size(), "nothing is lost");
        assertEquals(List.of(mm("40 in"), mm("7 in")), survey.probesOn("post", Member.Face.FRONT).stream().map(p -> p.spot().along()).toList());
        assertEquals(List.of(), survey.moisturesOn("post"));
    }

    @Test
    void a_coat_alone_leaves_the_readings_and_makes_the_member_coated() {
        Survey survey = FieldBook.fold("", begunWith(entry("1", DAY, probe("post", "6 in", "1/4 in")), entry("2", 40 * DAY, done(Done.RECOAT, "post", "", "", 39))));
        assertEquals(1, survey.probesOn("post", Member.Face.FRONT).size());
        assertEquals(Member.Coat.SOUND, survey.members().get("post").coat());
        assertEquals(Member.EndGrain.COATED, survey.members().get("post").startEnd());
        Survey again = FieldBook.fold("", begunWith(entry("2", 40 * DAY, done(Done.RECOAT, "post", "", "", 39)), entry("3", 400 * DAY, post("post", "south"))));
        assertEquals(Member.Coat.FAILING, again.members().get("post").coat(), "described anew, it is as described");
    }

    @Test
    void of_readings_at_one_place_the_last_walk_s_stand() {
        Survey survey = FieldBook.fold("", begunWith(entry("1", DAY, moisture("post", "6 in", "28%")), entry("2", DAY + 1000, moisture("post", "8 in", "26%")),
                entry("3", 200 * DAY, moisture("post", "7 in", "14%")), entry("4", DAY, moisture("post", "60 in", "11%"))));
        assertEquals(List.of("11%", "14%"), survey.moisturesOn("post").stream().map(m -> m.reading().text()).sorted().toList());
        assertEquals(4, survey.moistures().size());
    }

    @Test
    void work_is_refused_by_the_field_that_is_wrong() {
        assertEquals("member", assertThrows(Refused.class, () -> done(Done.DUTCHMAN, "", "", "", 3)).where());
        assertEquals("to", assertThrows(Refused.class, () -> done(Done.DUTCHMAN, "post", "6 in", "5 in", 3)).where());
        assertEquals("from", assertThrows(Refused.class, () -> done(Done.CLEAN, "", "6 in", "", 3)).where());
        assertEquals("coats", assertThrows(Refused.class, () -> new Coating(Film.STAIN, 0, 0, false, false, Optional.empty(), Optional.empty(), Optional.empty())).where());
        assertEquals("against", assertThrows(Refused.class, () -> new WorkDone(Done.STOP_WATER, LocalDate.EPOCH, "south", Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), "", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "")).where());
        for (var wrong : Map.of(done(Done.DUTCHMAN, "post", "6 in", "90 in", 39), "to", done(Done.DUTCHMAN, "post", "", "", 50), "on", done(Done.DUTCHMAN, "pst", "", "", 39), "member").entrySet()) {
            Survey survey = FieldBook.fold("", begunWith(entry("4", 40 * DAY, wrong.getKey())));
            assertEquals(List.of(wrong.getValue()), survey.faults().stream().map(Fault::field).toList());
            assertTrue(survey.faults().getFirst().grave() && survey.works().isEmpty());
        }
    }
}
