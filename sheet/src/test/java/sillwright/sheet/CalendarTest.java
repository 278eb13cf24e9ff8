package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.TimeZone;

import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Trigger;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.work.WorkFindings.Task;

/// The calendars as another program reads them.
@DisplayNameGeneration(ReplaceUnderscores.class)
class CalendarTest {
    private static final Assessment PORCH = Porch.assessment(Units.US);

    private static List<VEvent> events(String ics) throws Exception {
        net.fortuna.ical4j.model.Calendar calendar = new CalendarBuilder().build(new StringReader(ics));
        assertFalse(calendar.validate().hasErrors(), calendar.validate().toString());
        return calendar.getComponents("VEVENT");
    }

    private static String value(VEvent event, String property) { return event.getRequiredProperty(property).getValue(); }

    @Test
    void every_task_stands_on_its_days() throws Exception {
        List<VEvent> events = events(Calendar.work(PORCH));
        assertEquals(PORCH.work().tasks().size(), events.size());
        for (int i = 0; i < events.size(); i++) {
            Task task = PORCH.work().tasks().get(i);
            DtStart<?> start = events.get(i).getRequiredProperty(Property.DTSTART);
            DtEnd<?> end = events.get(i).getRequiredProperty(Property.DTEND);
            assertEquals(task.start(), LocalDate.from(start.getDate()));
            assertEquals(task.end().plusDays(1), LocalDate.from(end.getDate()));
            assertTrue(value(events.get(i), Property.SUMMARY).endsWith(task.title()));
            assertTrue(value(events.get(i), Property.DESCRIPTION).contains(task.words()));
        }
    }

    @Test
    void rounds_come_again_every_year_as_another_reader_expands_them() throws Exception {
        List<VEvent> events = events(Calendar.watch(PORCH));
        List<sillwright.watch.WatchFindings.Round> rounds = PORCH.watch().rounds().stream().filter(round -> round.first().isPresent()).toList();
        assertEquals(rounds.size(), events.size());
        for (int i = 0; i < events.size(); i++) {
            VEvent event = events.get(i);
            LocalDate first = rounds.get(i).first().orElseThrow();
            net.fortuna.ical4j.model.property.RRule<LocalDate> rule = event.getRequiredProperty(Property.RRULE);
            List<LocalDate> days = rule.getRecur().getDates(first, first, first.plusYears(10).minusDays(1));
            assertEquals(java.util.stream.IntStream.range(0, 10).mapToObj(first::plusYears).toList(), days);
            DtStart<?> start = event.getRequiredProperty(Property.DTSTART);
            assertEquals(first, LocalDate.from(start.getDate()));
            List<String> triggers = event.getAlarms().stream().map(alarm -> alarm.getRequiredProperty(Property.TRIGGER).getValue()).toList();
            assertEquals(2, triggers.size());
            assertTrue(triggers.getFirst().equals("-P1W") || triggers.getFirst().equals("-P7D"), triggers::toString);
            assertEquals("-PT16H", triggers.getLast());
        }
        assertTrue(value(events.getFirst(), Property.DESCRIPTION).contains("Meter the foot of porch post 3"));
    }

    @Test
    void written_again_the_events_keep_their_names() throws Exception {
        List<String> once = events(Calendar.watch(PORCH)).stream().map(event -> value(event, Property.UID)).toList();
        Assessment later = Porch.assessment(Units.SI);
        assertEquals(once, events(Calendar.watch(later)).stream().map(event -> value(event, Property.UID)).toList());
        assertEquals(once.size(), new java.util.HashSet<>(once).size());
    }

    @Test
    void events_are_named_after_the_building_and_the_task_so_that_a_later_calendar_replaces_an_earlier_one() throws Exception {
        assertEquals("work-T1@pond-lane-house.sillwright", value(events(Calendar.work(PORCH)).getFirst(), Property.UID));
        assertEquals("watch-spring@pond-lane-house.sillwright", value(events(Calendar.watch(PORCH)).getFirst(), Property.UID));
    }

    @Test
    void the_same_assessment_gives_the_same_bytes_in_every_time_zone() {
        TimeZone home = TimeZone.getDefault();
        String work = Calendar.work(PORCH), watch = Calendar.watch(PORCH);
        assertTrue(work.contains("DTSTAMP:20260414T000000Z"), work);
        try {
            for (String zone : List.of("Pacific/Auckland", "America/Los_Angeles", "UTC")) {
                TimeZone.setDefault(TimeZone.getTimeZone(zone));
                assertEquals(work, Calendar.work(Porch.assessment(Units.US)), zone);
                assertEquals(watch, Calendar.watch(Porch.assessment(Units.US)), zone);
            }
        } finally {
            TimeZone.setDefault(home);
        }
    }

    @Test
    void a_book_without_work_gives_a_calendar_without_events() {
        assertTrue(Calendar.work(Porch.empty()).contains("BEGIN:VCALENDAR"));
        assertFalse(Calendar.watch(Porch.empty()).contains("VEVENT"));
    }
}
