package sillwright.sheet;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Locale;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.parameter.Related;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.Status;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import biweekly.util.Frequency;
import biweekly.util.ICalDate;
import biweekly.util.Recurrence;

import sillwright.Assessment;
import sillwright.walk.Building;
import sillwright.watch.WatchFindings.Check;
import sillwright.watch.WatchFindings.Round;
import sillwright.work.WorkFindings.Task;

/// The order of work and the rounds of the year as calendars, RFC 5545. The same assessment gives the same bytes: every
/// event is stamped with the day of the walk and named after the building and its task or round, so that a later
/// calendar replaces an earlier one.
public final class Calendar {
    private Calendar() {}

    /// Every task over its days.
    public static String work(Assessment assessment) {
        ICalendar calendar = calendar(assessment, "Work");
        for (Task task : assessment.work().tasks()) {
            VEvent event = event(assessment, "work-" + task.id(), task.id() + " " + task.title(), task.start(), task.end());
            String after = task.after().isEmpty() ? "" : "\nAfter " + String.join(", ", task.after()) + ".", serves = task.refs().isEmpty() ? ""
                    : "\nFor " + String.join(", ", task.refs()) + ".";
            event.setDescription(task.words() + after + serves);
            event.addCategories(task.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            calendar.addEvent(event);
        }
        return Biweekly.write(calendar).go();
    }

    /// Every round that has a day, each year again, with a reminder a week before and one at eight in the morning of the day before.
    public static String watch(Assessment assessment) {
        ICalendar calendar = calendar(assessment, "Watch");
        for (Round round : assessment.watch().rounds()) round.first().ifPresent(first -> {
            VEvent event = event(assessment, "watch-" + round.id(), round.title() + ", " + assessment.survey().name(), first, first);
            event.setRecurrenceRule(new Recurrence.Builder(Frequency.YEARLY).build());
            event.setDescription(list(assessment, round));
            event.addAlarm(alarm(-Duration.ofDays(7).toHours(), round.title() + " in a week: look out ladder, meter, probe, binoculars"));
            event.addAlarm(alarm(-16, round.title() + " tomorrow"));
            calendar.addEvent(event);
        });
        return Biweekly.write(calendar).go();
    }

    private static VAlarm alarm(long hours, String words) {
        return VAlarm.display(new Trigger(biweekly.util.Duration.fromMillis(Duration.ofHours(hours).toMillis()), Related.START), words);
    }

    private static String list(Assessment assessment, Round round) {
        StringBuilder lines = new StringBuilder(round.why());
        for (Check check : round.checks())
            lines.append("\n- ").append(Said.sideTitle(assessment.survey(), check.side())).append(": ").append(check.words()).append('.')
                    .append(check.last().isEmpty() ? "" : " Last time: " + check.last() + ".").append(check.expected().isEmpty() ? "" : " Should be: "
                            + check.expected() + ".");
        return lines.toString();
    }

    private static ICalendar calendar(Assessment assessment, String what) {
        ICalendar calendar = new ICalendar();
        calendar.setVersion(ICalVersion.V2_0);
        calendar.setProductId("-//Sillwright//Sillwright//EN");
        calendar.setName(what + ", " + assessment.survey().name());
        return calendar;
    }

    /// An event of whole days; its end is the day after its last, as RFC 5545 counts.
    private static VEvent event(Assessment assessment, String id, String summary, LocalDate first, LocalDate last) {
        VEvent event = new VEvent();
        event.setUid(id + "@" + assessment.survey().building().map(Building::id).orElse("building-not-described") + ".sillwright");
        event.setDateTimeStamp(Date.from(Said.walked(assessment.survey()).atStartOfDay(ZoneOffset.UTC).toInstant()));
        event.setSummary(summary);
        event.setDateStart(new DateStart(day(first)));
        event.setDateEnd(new DateEnd(day(last.plusDays(1))));
        event.setTransparency(true);
        event.setStatus(Status.confirmed());
        return event;
    }

    /// A date that is the same in every time zone of the machine.
    private static ICalDate day(LocalDate day) {
        return new ICalDate(new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
    }

}
