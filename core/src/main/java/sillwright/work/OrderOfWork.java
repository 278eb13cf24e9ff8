package sillwright.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import sillwright.measure.Memo;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.work.WorkFindings.SafeSide;
import sillwright.work.WorkFindings.Task;
import sillwright.work.WorkFindings.TaskKind;
import sillwright.work.cost.Labour;
import sillwright.work.schedule.Timetable;

/// The order of work: what is done, how long it takes, and what comes before what; the days are found by [Dating].
///
/// Urgent props come first, then water. Each [Lot] of a side is then opened where the work takes its coat off anyway, and waits until its wood is dry, and while one waits another is worked on.
final class OrderOfWork {
    /// @param timetable empty where nothing is planned; its slots in the order of the tasks, its stints by their places
    record Ordered(List<Task> tasks, Optional<Timetable> timetable) {}

    /// A task before it has its dates.
    ///
    /// @param amount minutes of work; days of a wait
    /// @param after  places in the list of those that come before it
    record Draft(TaskKind kind, String title, String words, int amount, List<Integer> after, List<String> refs, String lot, String side) {}

    /// Work is planned in quarters of an hour.
    private static final int QUARTER = 15;

    private final Survey survey;
    private final Units units;
    private final Labour labour;
    private final List<Draft> drafts = new ArrayList<>();
    private final List<Integer> urgent = new ArrayList<>();
    private final Map<String, Integer> stops = new LinkedHashMap<>();

    private OrderOfWork(Survey survey, Units units, Labour labour) {
        this.survey = survey;
        this.units = units;
        this.labour = labour;
    }

    static Ordered of(Survey survey, WaterFindings water, List<Repair> repairs, Map<String, Job> jobs, Safety safety, LocalDate start, Outfit outfit, long seed, Units units, Memo memo) {
        if (repairs.isEmpty() && water.toStop().isEmpty()) return new Ordered(List.of(), Optional.empty());
        OrderOfWork order = new OrderOfWork(survey, units, outfit.labour());
        order.draft(water, repairs, jobs, safety);
        return new Dating(survey, order.drafts, start, outfit, seed, memo).ordered();
    }

    private int add(TaskKind kind, String title, String words, double minutes, List<Integer> after, List<String> refs, Optional<Lot> lot) {
        // Two coats want a quarter of an hour each.
        int step = kind == TaskKind.COAT ? 2 * QUARTER : QUARTER, amount = kind == TaskKind.DRY ? (int) minutes : (int) Math.max(1, Math.ceil(minutes / step - 1e-9)) * step;
        drafts.add(new Draft(kind, title, words, amount, List.copyOf(after), List.copyOf(refs), lot.map(Lot::title).orElse(""), lot.map(Lot::side).orElse("")));
        return drafts.size() - 1;
    }

    private void draft(WaterFindings water, List<Repair> repairs, Map<String, Job> jobs, Safety safety) {
        int setUp = add(TaskKind.SET_UP, "Set up", "Order what is wanted and fetch it, mark the work on every member, get ladder, sheeting and meter to the place"
                + (repairs.stream().anyMatch(repair -> Lead.mayBe(survey.yearBuilt(), repair.damage().member())) ? "; give out the lead pamphlet and post the signs" : "")
                + ".", Shift.minutes(labour, "order-and-fetch", 1), List.of(), List.of(), Optional.empty());
        List<Lot> lots = Lot.of(repairs, jobs, this::title);
        Map<Lot, Integer> shores = new LinkedHashMap<>();
        for (boolean now : new boolean[] {true, false}) for (Lot lot : lots) if (lot.repairs().stream().anyMatch(repair -> wantsProps(repair) && repair.urgent()) == now) shore(lot, jobs, setUp, shores);
        List<Integer> first = new ArrayList<>(List.of(setUp));
        first.addAll(urgent);
        for (RankedSource source : water.toStop()) {
            double hours = source.remedies().isEmpty() ? 3 : source.remedies().getFirst().hours();
            stops.put(source.id(), add(TaskKind.STOP_WATER, "Stop " + source.words(),
                    source.remedies().isEmpty() ? "Find how, and stop it." : Words.sentence(source.remedies().getFirst().words()) + (source.remedies().getFirst().words().endsWith(".") ? "" : "."),
                    Shift.minutes(labour, "water-remedy", hours), first, List.of(source.id()), Optional.empty()));
        }
        for (Lot lot : lots) lot(lot, jobs, safety, first, Optional.ofNullable(shores.get(lot)));
    }

    private void shore(Lot lot, Map<String, Job> jobs, int setUp, Map<Lot, Integer> shores) {
        List<Repair> propped = having(lot.repairs(), TaskKind.SHORE, jobs);
        if (propped.isEmpty()) return;
        int task = add(TaskKind.SHORE, "Prop, " + lot.title(), "Prop " + members(propped) + " on spread footings before anything is cut; a licensed engineer says how where it is urgent or in doubt.",
                minutes(propped, TaskKind.SHORE, jobs), List.of(setUp), ids(propped), Optional.of(lot));
        shores.put(lot, task);
        if (propped.stream().anyMatch(Repair::urgent)) urgent.add(task);
    }

    /// A step of a lot.
    private record Step(TaskKind kind, String title, String words) {}

    private static final List<Step> STEPS = List.of(
            new Step(TaskKind.OPEN_AND_CUT, "Open and cut", "Lay the sheeting, take the paint off damp, open up and cut to sound wood"),
            new Step(TaskKind.CONSOLIDATE, "Consolidate", "Drill and feed in consolidant; let it cure"),
            new Step(TaskKind.JOIN, "Join new wood", "Fit, glue and fix the new wood, or put back what came off"),
            new Step(TaskKind.FILL, "Fill", "Fill in lifts, rasp and sand to the old line"),
            new Step(TaskKind.PRIME, "Prime", "Sand damp; prime every bare face, end grain twice"),
            new Step(TaskKind.COAT, "Coat", "Two coats on two days, each in the shade and dry two hours before dew"));

    private void lot(Lot lot, Map<String, Job> jobs, Safety safety, List<Integer> first, Optional<Integer> shore) {
        Set<Integer> before = new LinkedHashSet<>(first);
        for (Repair repair : lot.repairs()) for (String id : repair.waterFirst()) if (stops.containsKey(id)) before.add(stops.get(id));
        double sheets = safety.sides().stream().filter(side -> side.side().equals(lot.side())).mapToDouble(SafeSide::sheetingMm2).sum() / 1e6;
        double around = Shift.minutes(labour, "sheeting", sheets) / 2, set = Shift.minutes(labour, "set-up", 1) + around;
        Map<String, Integer> last = new LinkedHashMap<>();
        List<Repair> opened = having(lot.repairs(), TaskKind.OPEN_TO_DRY, jobs);
        if (!opened.isEmpty()) {
            Set<Integer> after = new LinkedHashSet<>(before);
            shore.ifPresent(after::add);
            before = new LinkedHashSet<>(List.of(add(TaskKind.OPEN_TO_DRY, "Open to dry, " + lot.title(), "Lay the sheeting, take the paint off damp and open up " + members(opened)
                    + ", so that it dries bare; hang a sheet before it that keeps rain out and lets air by.", minutes(opened, TaskKind.OPEN_TO_DRY, jobs) + set, List.copyOf(after), ids(opened), Optional.of(lot))));
            set = 0;
        }
        int dry = lot.dryDays() == 0 ? -1 : add(TaskKind.DRY, "Let dry, " + lot.title(), "Leave " + members(lot.waits()) + " open to the air and out of the rain, then meter: go on at "
                + Words.percent(Limits.DRY_ENOUGH) + " or less. The days are an estimate by thickness and moisture.", lot.dryDays(), List.copyOf(before), ids(lot.waits()), Optional.of(lot));
        if (dry >= 0) before = new LinkedHashSet<>(List.of(dry));
        shore.ifPresent(before::add);
        for (Step step : STEPS) {
            List<Repair> these = having(lot.repairs(), step.kind(), jobs);
            if (these.isEmpty()) continue;
            Set<Integer> after = new LinkedHashSet<>();
            for (Repair repair : these) if (last.containsKey(repair.id())) after.add(last.get(repair.id()));
            if (after.size() < 1 || these.stream().anyMatch(repair -> !last.containsKey(repair.id()))) after.addAll(before);
            int task = add(step.kind(), step.title() + ", " + lot.title(), step.words() + ": " + members(these) + ".", minutes(these, step.kind(), jobs) + set, List.copyOf(after), ids(these), Optional.of(lot));
            set = 0;
            these.forEach(repair -> last.put(repair.id(), task));
        }
        if (!last.isEmpty()) add(TaskKind.CLEAN_UP, "Clean up, " + lot.title(), "Take up the sheeting dirty side in, pick up every chip, look until none is seen; note what was done.",
                Shift.minutes(labour, "clean-up", 1) + around, List.copyOf(new LinkedHashSet<>(last.values())), ids(lot.repairs()), Optional.of(lot));
    }

    private List<Repair> having(List<Repair> repairs, TaskKind kind, Map<String, Job> jobs) { return repairs.stream().filter(repair -> minutes(repair, jobs).containsKey(kind)).toList(); }

    private double minutes(List<Repair> repairs, TaskKind kind, Map<String, Job> jobs) { return repairs.stream().mapToDouble(repair -> minutes(repair, jobs).get(kind)).sum(); }

    private Map<TaskKind, Double> minutes(Repair repair, Map<String, Job> jobs) { return Shift.of(jobs.get(repair.damage().id()), repair, labour); }

    static boolean wantsProps(Repair repair) { return Job.carries(repair.damage().member()) && (repair.urgent() || !repair.pieces().isEmpty()); }

    private String title(String side) { return survey.sides().containsKey(side) ? survey.sides().get(side).title() : side; }

    private String members(List<Repair> repairs) { return Words.list(repairs.stream().map(repair -> Place.of(repair.damage(), units)).distinct().toList()); }

    private static List<String> ids(List<Repair> repairs) { return repairs.stream().map(Repair::id).toList(); }
}
