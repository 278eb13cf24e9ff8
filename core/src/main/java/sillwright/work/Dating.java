package sillwright.work;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import sillwright.measure.Memo;
import sillwright.measure.SplitMix;
import sillwright.walk.Survey;
import sillwright.walk.WorkDone;
import sillwright.wood.weather.Normals;
import sillwright.wood.weather.WeatherMaker;
import sillwright.work.OrderOfWork.Draft;
import sillwright.work.OrderOfWork.Ordered;
import sillwright.work.WorkFindings.Task;
import sillwright.work.WorkFindings.TaskKind;
import sillwright.work.schedule.Activity;
import sillwright.work.schedule.Activity.Before;
import sillwright.work.schedule.Activity.Fit;
import sillwright.work.schedule.Crew;
import sillwright.work.schedule.Planner;
import sillwright.work.schedule.Season;
import sillwright.work.schedule.Timetable;
import sillwright.work.schedule.Timetable.Slot;
import sillwright.work.schedule.Timetable.Stint;

/// Puts the order of work on the calendar: the weather that each task needs, the nights between, and the days that [Planner] finds. A step that the book has as done is left out.
final class Dating {
    /// The end holds in four years of five.
    static final double CONFIDENCE = 0.8;
    private static final int YEARS = 25, HORIZON = 1100;

    private final Survey survey;
    private final List<Draft> drafts;
    private final List<Draft> left = new ArrayList<>();
    private final int[] at;
    private final LocalDate start;
    private final Outfit outfit;
    private final long seed;
    private final Memo memo;
    private final Map<String, LocalDate> done = new HashMap<>();

    /// All that the fitness of days rests on.
    private record Sky(Optional<Normals> normals, LocalDate start, Crew crew, Set<LocalDate> rained, long seed) {}

    /// All that the days rest on.
    private record Question(List<Activity> activities, Sky sky) {}

    Dating(Survey survey, List<Draft> drafts, LocalDate start, Outfit outfit, long seed, Memo memo) {
        this.survey = survey;
        this.drafts = drafts;
        this.start = start;
        this.outfit = outfit;
        this.seed = seed;
        this.memo = memo;
        this.at = new int[drafts.size()];
        for (WorkDone work : survey.works().stream().map(noted -> noted.what()).toList()) work.step().ifPresent(step -> done.merge(key(step), work.on(), (a, b) -> a.isAfter(b) ? a : b));
        for (int i = 0; i < at.length; i++) {
            boolean finished = done.containsKey(key(drafts.get(i).title()));
            at[i] = finished ? -1 : left.size();
            if (!finished) left.add(drafts.get(i));
        }
    }

    private static String key(String title) { return title.strip().toLowerCase(Locale.ROOT); }

    Ordered ordered() {
        if (left.isEmpty()) return new Ordered(List.of(), Optional.empty());
        List<Activity> activities = new ArrayList<>();
        int[] opens = new int[left.size()], ends = new int[left.size()];
        for (int i = 0; i < left.size(); i++) {
            Draft draft = left.get(i);
            List<Before> before = new ArrayList<>();
            for (int b : draft.after()) if (at[b] >= 0) before.add(new Before(ends[at[b]], Math.max(nights(left.get(at[b]).kind()), draft.kind() == TaskKind.DRY ? 1 : 0)));
            opens[i] = activities.size();
            if (draft.kind() == TaskKind.DRY) activities.add(Activity.waits((int) Math.max(1, draft.amount() - dried(draft)), before));
            else if (draft.kind() == TaskKind.COAT) {
                activities.add(Activity.work(draft.amount() / 2, Fit.PAINT, before));
                activities.add(Activity.work(draft.amount() / 2, Fit.PAINT, List.of(new Before(opens[i], 1))));
            } else activities.add(Activity.work(draft.amount(), needs(draft.kind()), before));
            ends[i] = activities.size() - 1;
        }
        Sky sky = new Sky(survey.building().flatMap(Normals::of), start, outfit.crew(), outfit.rained(), seed);
        Timetable found = memo.of(new Question(activities, sky), () -> Planner.plan(activities, outfit.crew(), memo.of(sky, () -> season(sky)), CONFIDENCE, seed));
        return told(found, opens, ends);
    }

    /// Days that a wood has dried already: since the last of what it waited for was done, and since its side was last metered, which the wait is reckoned from.
    ///
    /// @return 0 while anything before it is still to be done
    private long dried(Draft drying) {
        if (drying.after().isEmpty() || drying.after().stream().anyMatch(before -> at[before] >= 0)) return 0;
        LocalDate metered = survey.moistures().stream().filter(reading -> survey.members().get(reading.what().spot().member()).side().equals(drying.side()))
                .map(reading -> LocalDate.ofEpochDay(Math.floorDiv(reading.wallMs(), Survey.DAY_MS))).max(Comparator.naturalOrder()).orElse(LocalDate.MIN);
        LocalDate begun = drying.after().stream().map(before -> done.get(key(drafts.get(before).title()))).max(Comparator.naturalOrder()).orElseThrow();
        return Math.max(0, ChronoUnit.DAYS.between(begun.isBefore(metered) ? metered : begun, start));
    }

    private static Season season(Sky sky) {
        return sky.normals().map(normals -> Season.of(sky.start, sky.crew, WeatherMaker.years(normals, YEARS + 4, new SplitMix(sky.seed)), YEARS, HORIZON, sky.rained))
                .orElseGet(() -> Season.fair(sky.start, sky.crew, HORIZON, sky.rained));
    }

    private Ordered told(Timetable found, int[] opens, int[] ends) {
        List<Integer> order = new ArrayList<>();
        List<Slot> slots = new ArrayList<>();
        for (int i = 0; i < left.size(); i++) {
            order.add(i);
            slots.add(new Slot(found.slots().get(opens[i]).first(), found.slots().get(ends[i]).last(), found.slots().get(ends[i]).floatDays()));
        }
        order.sort(Comparator.comparing((Integer i) -> slots.get(i).first()).thenComparing(i -> slots.get(i).last()).thenComparing(i -> i));
        int[] number = new int[left.size()], task = new int[found.slots().size()];
        for (int k = 0; k < order.size(); k++) {
            number[order.get(k)] = k;
            for (int a = opens[order.get(k)]; a <= ends[order.get(k)]; a++) task[a] = k;
        }
        List<Task> tasks = new ArrayList<>();
        for (int i : order) {
            Draft draft = left.get(i);
            tasks.add(new Task("T" + (number[i] + 1), draft.kind(), draft.title(), draft.words(), slots.get(i).first(), slots.get(i).last(),
                    draft.after().stream().filter(before -> at[before] >= 0).map(before -> "T" + (number[at[before]] + 1)).toList(), draft.refs(), draft.kind() == TaskKind.DRY ? 0 : draft.amount() / 60.0, draft.lot()));
        }
        return new Ordered(tasks, Optional.of(new Timetable(order.stream().map(slots::get).toList(), found.stints().stream().map(stint -> new Stint(stint.day(), stint.crew(), task[stint.activity()], stint.minutes())).toList(),
                found.confidence(), found.finish(), found.middle(), found.bound(), found.years(), found.wetMonth())));
    }

    /// Nights between the end of one and the start of what comes after it, a day of cure being two: the program's own choice, and the maker's sheet goes before it.
    static int nights(TaskKind before) {
        return switch (before) {
            case CONSOLIDATE -> 3;
            case JOIN, FILL -> 2;
            case PRIME, COAT, DRY -> 1;
            case SET_UP, SHORE, STOP_WATER, OPEN_TO_DRY, OPEN_AND_CUT, CLEAN_UP -> 0;
        };
    }

    static Fit needs(TaskKind kind) {
        return switch (kind) {
            case SET_UP -> Fit.ANY;
            case SHORE, STOP_WATER, DRY, CLEAN_UP -> Fit.OUTDOORS;
            // Wood is opened when paint can follow, not before a winter.
            case OPEN_TO_DRY, OPEN_AND_CUT -> Fit.OPENING;
            case CONSOLIDATE, JOIN, FILL -> Fit.WARM;
            case PRIME, COAT -> Fit.PAINT;
        };
    }
}
