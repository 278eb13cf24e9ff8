package sillwright.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Building;
import sillwright.walk.Species;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.WoodFindings;
import sillwright.work.WorkFindings.Task;
import sillwright.work.WorkFindings.TaskKind;

/// The work stage: from what is wet and what is soft to what is done about it.
public final class Work {
    private Work() {}

    /// @param start   the first day that work may begin
    /// @param units   that the reader measures in: cut lines fall on the marks of that tape
    /// @param stockMm the lengths that boards are sold in; empty where they are not known
    /// @param solver  lays new wood out on them: [FirstFit], or one that proves its answer
    public static WorkFindings find(Survey survey, WaterFindings water, WoodFindings wood, LocalDate start, Units units, List<Double> stockMm,
                                    CutSolver solver) {
        List<Job> jobs = new ArrayList<>();
        for (Condition condition : wood.all())
            for (Damage damage : condition.damages()) jobs.add(new Job(damage, condition, water.wetting(damage.member().id()), wood.outlook(damage.member().id()), wood.capacity(damage.member().id()), units));
        jobs.sort(Comparator.comparing((Job job) -> !job.urgent()).thenComparing(job -> job.member().role(), Comparator.reverseOrder())
                .thenComparingDouble(job -> job.section().areaKept()));
        Map<String, Job> byDamage = new LinkedHashMap<>();
        for (Job job : jobs) byDamage.put(job.damage().id(), job);
        List<Repair> repairs = repairs(jobs, survey.yearBuilt());
        CutList cuts = CutList.of(repairs, stockMm, solver);
        Safety safety = Safety.of(survey, repairs, byDamage);
        List<Task> tasks = OrderOfWork.of(survey, water, repairs, byDamage, start, units);
        return new WorkFindings(repairs, TakeOff.of(repairs, cuts, safety.sheetingMm2(), safety.sheeted(), units), cuts.plans(), tasks, safety.sides(),
                gaps(survey, jobs, cuts, stockMm, tasks, units));
    }

    /// One for each damage, save those that the new wood of another takes with it.
    private static List<Repair> repairs(List<Job> jobs, int yearBuilt) {
        List<Repair> repairs = new ArrayList<>();
        for (Settling.Settled settled : Settling.of(jobs)) repairs.add(Making.repair("R" + (repairs.size() + 1), settled, yearBuilt));
        return repairs;
    }

    private static List<String> gaps(Survey survey, List<Job> jobs, CutList cuts, List<Double> stockMm, List<Task> tasks, Units units) {
        List<String> gaps = new ArrayList<>();
        if (stockMm.isEmpty() && !cuts.over().isEmpty()) gaps.add("No stock lengths are known, so new wood is not laid out: name the lengths that are sold.");
        else for (Repair.Piece piece : cuts.over())
            gaps.add(Words.sentence(piece.label()) + ", " + Words.length(piece.lengthMm(), units) + ", is longer than any stock length: it is ordered by itself.");
        jobs.stream().map(Job::member).filter(member -> Species.find(member.species()).isEmpty()).map(member -> member.species()).distinct()
                .forEach(name -> gaps.add("'" + name + "' is not in the species table: consolidant for it is worked as for " + Species.orCareful(name).name() + "."));
        cold(survey, tasks, units, gaps);
        return gaps;
    }

    private static void cold(Survey survey, List<Task> tasks, Units units, List<String> gaps) {
        List<Building.Month> months = survey.building().map(Building::months).orElse(List.of());
        List<Task> warm = tasks.stream().filter(task -> task.kind().compareTo(TaskKind.CONSOLIDATE) >= 0 && task.kind() != TaskKind.CLEAN_UP).toList();
        if (warm.isEmpty()) return;
        if (months.isEmpty()) {
            gaps.add("The building has no monthly normals, so nothing here looks at whether the days are warm enough to glue, fill and paint: give them with the building.");
            return;
        }
        List<String> cold = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            int m = month;
            double mean = months.get(month - 1).meanC();
            if (mean < PaintWindow.LEAST_C && warm.stream().anyMatch(task -> touches(task, m)))
                cold.add(MONTHS.get(month - 1) + " (" + Words.temperature(mean, units) + ")");
        }
        if (!cold.isEmpty())
            gaps.add("Gluing, filling or painting falls in " + Words.list(cold) + " by the monthly means, where " + Words.temperature(PaintWindow.LEAST_C, units)
                    + " is wanted: begin later, or do that part in the shop or under cover; the dates are not shifted for weather.");
    }

    private static boolean touches(Task task, int month) {
        for (LocalDate day = task.start(); !day.isAfter(task.end()); day = day.plusDays(1)) if (day.getMonthValue() == month) return true;
        return false;
    }

    private static final List<String> MONTHS = List.of("January", "February", "March", "April", "May", "June", "July", "August", "September", "October",
            "November", "December");
}
