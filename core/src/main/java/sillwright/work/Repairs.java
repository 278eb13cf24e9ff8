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
import sillwright.walk.Building;
import sillwright.walk.Decision;
import sillwright.walk.OpenChecks;
import sillwright.walk.Profile;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings;
import sillwright.wood.Capacity;
import sillwright.wood.Condition;
import sillwright.wood.Demand;
import sillwright.wood.Loads;
import sillwright.wood.Outlook;
import sillwright.wood.WoodFindings;

/// The choice and the design of every repair of a building, member by member, so that a change of one member's readings works that member again and no other.
///
/// Damages of one member settle with each other; members know nothing of each other's repairs but their order.
public final class Repairs {
    private final Map<String, List<Made>> members;
    private final List<Repair> all;

    /// A repair of one member, made but not yet numbered, and what puts it in order: as [Work#FIRST] does.
    private record Made(boolean urgent, int role, double areaKept, Repair repair) {}

    private static final Comparator<Made> FIRST = Comparator.comparing((Made made) -> !made.urgent).thenComparing(Made::role, Comparator.reverseOrder()).thenComparingDouble(Made::areaKept);

    private Repairs(Map<String, List<Made>> members) {
        this.members = members;
        List<Made> sorted = new ArrayList<>();
        members.values().forEach(sorted::addAll);
        sorted.sort(FIRST);
        List<Repair> numbered = new ArrayList<>();
        for (Made made : sorted) numbered.add(made.repair.numbered("R" + (numbered.size() + 1)));
        all = List.copyOf(numbered);
    }

    /// All that the repairs of one member rest on.
    private record Rests(Condition condition, List<WaterFindings.RankedSource> water, Optional<Outlook> outlook, Optional<Capacity> capacity, Optional<Demand> demand, List<OpenChecks> checks,
                         Optional<Profile> profile, List<Decision> decisions, List<Building.Month> months, int yearBuilt, LocalDate start, Units units, Outfit outfit) {}

    private static Rests rests(Survey survey, WaterFindings water, WoodFindings wood, Condition condition, LocalDate start, Units units, Outfit outfit) {
        String member = condition.member().id();
        return new Rests(condition, water.wetting(member), wood.outlook(member), wood.capacity(member), Loads.demand(survey, condition.member()), survey.checksOn(member), survey.profileOf(member),
                survey.decisions().stream().map(Survey.Noted::what).filter(made -> made.about() instanceof Decision.About.Wood(var its, _) && its.equals(member)).toList(),
                survey.building().map(Building::months).orElse(List.of()), survey.yearBuilt(), start, units, outfit);
    }

    /// All of a building.
    public static Repairs of(Survey survey, WaterFindings water, WoodFindings wood, LocalDate start, Units units, Outfit outfit) { return of(survey, water, wood, start, units, outfit, Memo.NONE); }

    /// @param memo what was worked before: a member of which nothing changed is not worked again
    public static Repairs of(Survey survey, WaterFindings water, WoodFindings wood, LocalDate start, Units units, Outfit outfit, Memo memo) {
        Map<String, List<Made>> members = new LinkedHashMap<>();
        for (Condition condition : wood.all()) {
            List<Made> made = memo.of(rests(survey, water, wood, condition, start, units, outfit), () -> made(survey, water, wood, condition, start, units, outfit));
            if (!made.isEmpty()) members.put(condition.member().id(), made);
        }
        return new Repairs(members);
    }

    /// The same with one member's condition changed; the others stand as they were made.
    public Repairs with(Survey survey, WaterFindings water, WoodFindings wood, String member, LocalDate start, Units units, Outfit outfit) {
        Map<String, List<Made>> changed = new LinkedHashMap<>(members);
        List<Made> made = made(survey, water, wood, wood.of(member), start, units, outfit);
        if (made.isEmpty()) changed.remove(member);
        else changed.put(member, made);
        return new Repairs(changed);
    }

    private static List<Made> made(Survey survey, WaterFindings water, WoodFindings wood, Condition condition, LocalDate start, Units units, Outfit outfit) {
        List<Job> jobs = new ArrayList<>(Work.jobs(survey, water, wood, condition, start, units, outfit));
        jobs.sort(Work.FIRST);
        List<Made> made = new ArrayList<>();
        for (Settling.Settled settled : Settling.of(jobs)) {
            Job job = settled.weighed().job();
            made.add(new Made(job.urgent(), job.member().role().ordinal(), job.section().areaKept(), Making.repair("", settled, survey.yearBuilt())));
        }
        return made;
    }

    /// Numbered in the order they are to be done.
    public List<Repair> all() { return all; }
}
