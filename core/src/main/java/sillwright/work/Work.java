package sillwright.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Memo;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Building;
import sillwright.walk.Member;
import sillwright.walk.OpenChecks;
import sillwright.walk.Species;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Loads;
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
        return find(survey, water, wood, start, units, stockMm, solver, Outfit.COMMON, 1);
    }

    /// @param outfit who does the work, and what things cost there
    /// @param seed   for every draw
    public static WorkFindings find(Survey survey, WaterFindings water, WoodFindings wood, LocalDate start, Units units, List<Double> stockMm,
                                    CutSolver solver, Outfit outfit, long seed) {
        return find(survey, water, wood, start, units, stockMm, solver, outfit, seed, Memo.NONE);
    }

    /// @param memo what was worked before
    public static WorkFindings find(Survey survey, WaterFindings water, WoodFindings wood, LocalDate start, Units units, List<Double> stockMm,
                                    CutSolver solver, Outfit outfit, long seed, Memo memo) {
        List<Job> jobs = jobs(survey, water, wood, start, units, outfit);
        Map<String, Job> byDamage = new LinkedHashMap<>();
        for (Job job : jobs) byDamage.put(job.damage().id(), job);
        List<Repair> repairs = Repairs.of(survey, water, wood, start, units, outfit, memo).all();
        CutList cuts = CutList.of(repairs, stockMm, solver, outfit.rack(), units);
        Safety safety = Safety.of(survey, repairs, byDamage);
        OrderOfWork.Ordered ordered = OrderOfWork.of(survey, water, repairs, byDamage, safety, start, outfit, seed, units, memo);
        List<Task> tasks = ordered.tasks();
        TakeOff order = TakeOff.of(repairs, cuts, safety.sheetingMm2(), safety.sheeted(), outfit.prices(), units);
        Costing cost = Costs.of(repairs, byDamage, order, safety, water, outfit, seed, units, memo);
        return new WorkFindings(repairs, order.lines(), cuts.plans(), tasks, safety.sides(), gaps(survey, jobs, repairs, cuts, stockMm, tasks, units), new Plan(cost, ordered.timetable(), Tools.of(repairs, byDamage, survey.building().map(Building::yearBuilt).orElse(0))));
    }

    /// The repairs as they would now be, and all that rests on them as it was: the order of work and the money take longer to work than a reader waits.
    public static WorkFindings soon(Survey survey, WaterFindings water, WoodFindings wood, LocalDate start, Units units, Outfit outfit, Memo memo, WorkFindings before) {
        return new WorkFindings(Repairs.of(survey, water, wood, start, units, outfit, memo).all(), before.order(), before.cuts(), before.tasks(), before.safety(), before.gaps(), before.plan());
    }

    /// Every damage with all that bears on it, the first to be done first.
    static List<Job> jobs(Survey survey, WaterFindings water, WoodFindings wood, LocalDate start, Units units, Outfit outfit) {
        List<Job> jobs = new ArrayList<>();
        for (Condition condition : wood.all()) jobs.addAll(jobs(survey, water, wood, condition, start, units, outfit));
        jobs.sort(FIRST);
        return jobs;
    }

    /// What is urgent, then what bears load, then what has lost most.
    static final Comparator<Job> FIRST = Comparator.comparing((Job job) -> !job.urgent()).thenComparing(job -> job.member().role(), Comparator.reverseOrder())
            .thenComparingDouble(job -> job.section().areaKept());

    /// Those of one member: its soft stretches, and its open checks that lie in none of them.
    static List<Job> jobs(Survey survey, WaterFindings water, WoodFindings wood, Condition condition, LocalDate start, Units units, Outfit outfit) {
        Member member = condition.member();
        List<OpenChecks> apart = new ArrayList<>(survey.checksOn(member.id()));
        if (condition.damages().isEmpty() && apart.isEmpty()) return List.of();
        List<Job> jobs = new ArrayList<>();
        for (Damage damage : condition.damages()) {
            List<OpenChecks> within = apart.stream().filter(group -> group.toMm() >= damage.fromMm() && group.spot().alongMm() <= damage.toMm()).toList();
            apart.removeAll(within);
            jobs.add(job(survey, water, wood, condition, damage, within, start, units, outfit));
        }
        if (!apart.isEmpty()) jobs.add(job(survey, water, wood, condition, Checked.of(member, apart), apart, start, units, outfit));
        return Decided.with(survey, member.id(), jobs);
    }

    private static Job job(Survey survey, WaterFindings water, WoodFindings wood, Condition condition, Damage damage, List<OpenChecks> checks, LocalDate start, Units units, Outfit outfit) {
        Member member = condition.member();
        Site site = new Site(Loads.demand(survey, member), checks, survey.profileOf(member.id()), survey.building().map(Building::months).orElse(List.of()), start, outfit, Optional.empty());
        return new Job(damage, condition, water.wetting(member.id()), wood.outlook(member.id()), wood.capacity(member.id()), site, units);
    }

    private static List<String> gaps(Survey survey, List<Job> jobs, List<Repair> repairs, CutList cuts, List<Double> stockMm, List<Task> tasks, Units units) {
        List<String> gaps = new ArrayList<>();
        if (stockMm.isEmpty() && !cuts.over().isEmpty()) gaps.add("No stock lengths are known, so new wood is not laid out: name the lengths that are sold.");
        else for (Repair.Piece piece : cuts.over())
            gaps.add(Words.sentence(piece.label()) + ", " + Words.length(piece.lengthMm(), units) + ", is longer than any stock length: it is ordered by itself.");
        for (String set : cuts.parted()) gaps.add("The pieces of " + set + " should be sawn beside each other, and no stock length carries them all: pick boards of like grain.");
        jobs.stream().map(Job::member).filter(member -> Species.find(member.species()).isEmpty()).map(member -> member.species()).distinct()
                .forEach(name -> gaps.add("'" + name + "' is not in the species table: consolidant for it is worked as for " + Species.orCareful(name).name() + "."));
        gaps.addAll(Decided.gaps(survey, jobs, repairs, units));
        weather(survey, tasks, gaps);
        return gaps;
    }

    private static void weather(Survey survey, List<Task> tasks, List<String> gaps) {
        List<Building.Month> months = survey.building().map(Building::months).orElse(List.of());
        List<Task> warm = tasks.stream().filter(task -> task.kind().compareTo(TaskKind.CONSOLIDATE) >= 0 && task.kind() != TaskKind.CLEAN_UP).toList();
        if (warm.isEmpty()) return;
        if (months.isEmpty()) {
            gaps.add("The building has no monthly normals, so the plan takes every day for dry and warm: give them with the building, and the days are found by its weather.");
            return;
        }
    }
}
