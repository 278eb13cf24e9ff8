package sillwright.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Survey;
import sillwright.walk.WorkDone;
import sillwright.water.Instance.Reason;
import sillwright.water.Instance.Span;

/// Sources that were seen to. Each stands twice: as it was, which explains what was sighted before, and as it is now, at work
/// only if the remedy failed, which explains what is seen since.
final class Remedied {
    static final Basis BASIS = Basis.own("a source that was seen to is taken to be at work still in one case of six, until sightings and meter tell otherwise");
    /// How often a remedy does not stop its source. Own choice.
    private static final double STILL = 1.0 / 6;

    private Remedied() {}

    /// The sources with those that were seen to split in two.
    static List<Instance> split(List<Instance> instances, Survey survey) {
        List<Instance> all = new ArrayList<>();
        for (Instance one : instances) {
            Optional<Survey.Noted<WorkDone>> last = last(one, survey);
            if (last.isEmpty()) {
                all.add(one);
                continue;
            }
            long done = last.get().dayMs();
            all.add(spanned(one, one.prior(), one.reasons(), new Span(Long.MIN_VALUE, done)));
            Reason seenTo = new Reason(last.get().what().said() + " on " + Words.day(last.get().what().on()), logOdds(STILL) - logOdds(one.prior()), Optional.empty());
            all.add(spanned(one, STILL, List.of(seenTo), new Span(done, Long.MAX_VALUE)));
        }
        return all;
    }

    private static Optional<Survey.Noted<WorkDone>> last(Instance one, Survey survey) {
        return survey.works().stream().filter(noted -> against(noted.what(), one, survey)).max((a, b) -> Long.compare(a.dayMs(), b.dayMs()));
    }

    private static boolean against(WorkDone work, Instance one, Survey survey) {
        if (!work.side().equals(one.side().id()) || work.against().filter(Choice.word(one.source())::equals).isEmpty()) return false;
        if (!work.place().isEmpty()) return work.place().equals(one.place());
        return work.member().isEmpty() || one.members(survey.membersOn(one.side().id())).contains(work.member().get());
    }

    private static Instance spanned(Instance i, double prior, List<Reason> reasons, Span span) {
        return new Instance(i.source(), i.side(), i.place(), i.sees(), i.wets(), i.takes(), i.elsewhere(), i.edge(), i.leftMm(), i.aboveMm(), prior, reasons, span);
    }

    private static double logOdds(double p) { return Math.log(p / (1 - p)) / Math.log(2); }

    /// The end of a day, as work counts as done.
    static long endMs(LocalDate day) { return (day.toEpochDay() + 1) * 86_400_000L - 1; }
}
