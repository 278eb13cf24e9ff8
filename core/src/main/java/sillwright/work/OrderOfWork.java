package sillwright.work;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.work.WorkFindings.Task;
import sillwright.work.WorkFindings.TaskKind;

/// The order of work on the calendar: one pair of hands, weekends free; only drying goes on by itself.
///
/// Props and water come first. Each side then waits until its wood is dry, and while one waits another is worked on.
final class OrderOfWork {
    /// Hours of work in a day: this program's own choice.
    private static final double DAY_HOURS = 6;

    private final Survey survey;
    private final Units units;
    private final List<Draft> drafts = new ArrayList<>();

    /// A task before it has its dates.
    ///
    /// @param after places in the list of those that come before it
    private record Draft(TaskKind kind, String title, String words, int days, List<Integer> after, List<String> refs) {
        boolean byItself() { return kind == TaskKind.DRY; }
    }

    private OrderOfWork(Survey survey, Units units) {
        this.survey = survey;
        this.units = units;
    }

    static List<Task> of(Survey survey, WaterFindings water, List<Repair> repairs, Map<String, Job> jobs, LocalDate start, Units units) {
        if (repairs.isEmpty() && water.toStop().isEmpty()) return List.of();
        OrderOfWork order = new OrderOfWork(survey, units);
        order.draft(water, repairs, jobs);
        return order.dated(start);
    }

    private int add(TaskKind kind, String title, String words, int days, List<Integer> after, List<String> refs) {
        drafts.add(new Draft(kind, title, words, days, List.copyOf(after), List.copyOf(refs)));
        return drafts.size() - 1;
    }

    private void draft(WaterFindings water, List<Repair> repairs, Map<String, Job> jobs) {
        int setUp = add(TaskKind.SET_UP, "Set up", "Order what is wanted, mark the work on every member, get ladder, sheeting and meter to the place"
                + (repairs.stream().anyMatch(repair -> Lead.mayBe(survey.yearBuilt(), repair.damage().member())) ? "; give out the lead pamphlet and post the signs" : "")
                + ".", 1, List.of(), List.of());
        Map<String, List<Repair>> sides = bySide(repairs);
        Map<String, Integer> shores = new HashMap<>();
        for (var side : sides.entrySet()) {
            List<Repair> propped = side.getValue().stream().filter(OrderOfWork::wantsProps).toList();
            if (!propped.isEmpty())
                shores.put(side.getKey(), add(TaskKind.SHORE, "Prop, " + title(side.getKey()), "Prop " + members(propped)
                        + " on spread footings before anything is cut; a licensed engineer says how where it is urgent or in doubt.", 1, List.of(setUp), ids(propped)));
        }
        Map<String, Integer> stops = new LinkedHashMap<>();
        for (RankedSource source : water.toStop()) {
            double hours = source.remedies().isEmpty() ? DAY_HOURS / 2 : source.remedies().getFirst().hours();
            stops.put(source.id(), add(TaskKind.STOP_WATER, "Stop " + source.words(),
                    source.remedies().isEmpty() ? "Find how, and stop it." : Words.sentence(source.remedies().getFirst().words()) + (source.remedies().getFirst().words().endsWith(".") ? "" : "."),
                    (int) Math.max(1, Math.ceil(hours / DAY_HOURS)), List.of(setUp), List.of(source.id())));
        }
        for (var side : sides.entrySet()) side(side.getKey(), side.getValue(), jobs, setUp, shores, stops);
    }

    private void side(String side, List<Repair> repairs, Map<String, Job> jobs, int setUp, Map<String, Integer> shores, Map<String, Integer> stops) {
        List<Integer> before = new ArrayList<>(List.of(setUp));
        if (shores.containsKey(side)) before.add(shores.get(side));
        for (Repair repair : repairs) for (String id : repair.waterFirst()) if (stops.containsKey(id) && !before.contains(stops.get(id))) before.add(stops.get(id));
        int days = 0;
        List<Repair> wet = new ArrayList<>();
        for (Repair repair : repairs) {
            int its = DryingTime.days(jobs.get(repair.damage().id()), repair.treatment());
            if (its > 0) wet.add(repair);
            days = Math.max(days, its);
        }
        int last = -1;
        if (days > 0)
            last = add(TaskKind.DRY, "Let dry, " + title(side), "Leave " + members(wet) + " open to the air and out of the rain, then meter: go on at "
                    + Words.percent(Limits.DRY_ENOUGH) + " or less. The days are an estimate by thickness and moisture.", days, before, ids(wet));
        record Step(TaskKind kind, String title, Predicate<Repair> does, double each, String words) {}
        for (Step step : List.of(
                new Step(TaskKind.OPEN_AND_CUT, "Open and cut", repair -> !(repair.treatment() instanceof Treatment.Watch), 0.5,
                        "Lay the sheeting, take the paint off damp, open up and cut to sound wood"),
                new Step(TaskKind.CONSOLIDATE, "Consolidate", repair -> repair.treatment() instanceof Treatment.Consolidate, 0.5, "Drill and feed in consolidant; let it cure"),
                new Step(TaskKind.JOIN, "Join new wood", repair -> !repair.pieces().isEmpty(), 1, "Fit, glue and fix the new wood"),
                new Step(TaskKind.FILL, "Fill", repair -> repair.treatment() instanceof Treatment.Consolidate(_, var fill) && fill > 0, 0.5, "Fill in lifts, rasp and sand to the old line"),
                new Step(TaskKind.PRIME, "Prime", repair -> !repair.needs().isEmpty(), 0.25, "Prime every bare face, end grain twice"),
                new Step(TaskKind.COAT, "Coat", repair -> !repair.needs().isEmpty(), 0.5, "Two coats, each in the shade and dry two hours before dew"))) {
            List<Repair> these = repairs.stream().filter(step.does()).toList();
            if (these.isEmpty()) continue;
            last = add(step.kind(), step.title() + ", " + title(side), step.words() + ": " + members(these) + ".",
                    (int) Math.max(step.kind() == TaskKind.COAT ? 2 : 1, Math.ceil(step.each() * these.size())), last < 0 ? before : List.of(last), ids(these));
        }
        if (last >= 0 && repairs.stream().anyMatch(repair -> !repair.needs().isEmpty()))
            add(TaskKind.CLEAN_UP, "Clean up, " + title(side), "Take up the sheeting dirty side in, pick up every chip, look until none is seen; note what was done.", 1,
                    List.of(last), ids(repairs));
    }

    private static boolean wantsProps(Repair repair) { return repair.damage().member().bearsLoad() && (repair.urgent() || !repair.pieces().isEmpty()); }

    private Map<String, List<Repair>> bySide(List<Repair> repairs) {
        Map<String, List<Repair>> sides = new LinkedHashMap<>();
        for (Repair repair : repairs) sides.computeIfAbsent(repair.damage().member().side(), _ -> new ArrayList<>()).add(repair);
        return sides;
    }

    private String title(String side) { return survey.sides().containsKey(side) ? survey.sides().get(side).title() : side; }

    private String members(List<Repair> repairs) { return Words.list(repairs.stream().map(repair -> Place.of(repair.damage(), units)).distinct().toList()); }

    private static List<String> ids(List<Repair> repairs) { return repairs.stream().map(Repair::id).toList(); }

    /// Gives the hands the task that can begin first, again and again; where two can, the one drafted first.
    private List<Task> dated(LocalDate start) {
        LocalDate[] from = new LocalDate[drafts.size()], to = new LocalDate[drafts.size()];
        LocalDate free = start;
        for (int done = 0; done < drafts.size(); done++) {
            int next = -1;
            LocalDate when = LocalDate.MAX;
            for (int i = 0; i < from.length; i++) {
                if (from[i] != null || drafts.get(i).after().stream().anyMatch(before -> from[before] == null)) continue;
                LocalDate earliest = drafts.get(i).byItself() ? start : free;
                for (int before : drafts.get(i).after()) if (!earliest.isAfter(to[before])) earliest = to[before].plusDays(1);
                if (!drafts.get(i).byItself()) earliest = workday(earliest);
                if (earliest.isBefore(when)) {
                    when = earliest;
                    next = i;
                }
            }
            from[next] = when;
            to[next] = drafts.get(next).byItself() ? when.plusDays(drafts.get(next).days() - 1) : lastDay(when, drafts.get(next).days());
            if (!drafts.get(next).byItself()) free = to[next].plusDays(1);
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < from.length; i++) order.add(i);
        order.sort(Comparator.comparing((Integer i) -> from[i]).thenComparing(i -> i));
        List<Task> tasks = new ArrayList<>();
        for (int i : order) {
            Draft draft = drafts.get(i);
            tasks.add(new Task("T" + (order.indexOf(i) + 1), draft.kind(), draft.title(), draft.words(), from[i], to[i],
                    draft.after().stream().map(before -> "T" + (order.indexOf(before) + 1)).toList(), draft.refs()));
        }
        return tasks;
    }

    private static LocalDate workday(LocalDate day) {
        while (day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY) day = day.plusDays(1);
        return day;
    }

    private static LocalDate lastDay(LocalDate first, int days) {
        LocalDate day = first;
        for (int d = 1; d < days; d++) day = workday(day.plusDays(1));
        return day;
    }
}
