package sillwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.Survey;
import sillwright.work.WorkFindings.SafeSide;

/// How to work safely, side by side.
///
/// Whether the lead rule binds is settled by the paint broken on the whole outside, since the rule counts the job and not
/// the side. Source: EPA's answer on the exterior total (read).
///
/// @param sides       a plan for each side with work
/// @param sheetingMm2 ground to be covered where the rule binds, all sides together
/// @param sheeted     ids of the repairs there
record Safety(List<SafeSide> sides, double sheetingMm2, List<String> sheeted) {
    static Safety of(Survey survey, List<Repair> repairs, Map<String, Job> jobs) {
        Map<String, List<Repair>> bySide = new LinkedHashMap<>();
        double paint = 0;
        int windows = 0;
        for (Repair repair : repairs) {
            if (repair.treatment() instanceof Treatment.Watch) continue;
            Member member = repair.damage().member();
            bySide.computeIfAbsent(member.side(), _ -> new ArrayList<>()).add(repair);
            paint += broken(repair, jobs);
            if (member.kind() == MemberKind.SASH && repair.treatment() instanceof Treatment.Replace) windows++;
        }
        List<SafeSide> sides = new ArrayList<>();
        List<String> sheeted = new ArrayList<>();
        for (var entry : bySide.entrySet()) {
            SafeSide side = side(survey, entry.getKey(), entry.getValue(), paint, windows, jobs);
            sides.add(side);
            if (side.leadApplies()) entry.getValue().forEach(repair -> sheeted.add(repair.id()));
        }
        return new Safety(List.copyOf(sides), sides.stream().mapToDouble(SafeSide::sheetingMm2).sum(), List.copyOf(sheeted));
    }

    private static SafeSide side(Survey survey, String id, List<Repair> here, double paint, int windows, Map<String, Job> jobs) {
        SafeLayout layout = new SafeLayout(Optional.ofNullable(survey.sides().get(id)), here);
        double highest = here.stream().mapToDouble(repair -> SafeLayout.highestMm(repair.damage().member())).max().orElse(0), own = here.stream().mapToDouble(repair -> broken(repair, jobs)).sum();
        LeadSafe.Plan rule = LeadSafe.plan(new LeadSafe.Job(survey.yearBuilt(), paint, true, windows, layout.toLine(), 0, 0));
        boolean lead = here.stream().anyMatch(repair -> Lead.mayBe(survey.yearBuilt(), repair.damage().member()));
        List<SafePlan.Line> lines = SafeLines.of(survey, id, here, lead, highest, layout.plan(rule, List.of()));
        SafePlan plan = layout.plan(rule, lines);
        List<String> cautions = new ArrayList<>(rule.cautions());
        List<Basis> basis = new ArrayList<>(rule.basis());
        for (SafePlan.Line line : lines) {
            cautions.add(line.said());
            if (!basis.contains(line.basis())) basis.add(line.basis());
        }
        return new SafeSide(id, own, rule.covered(), rule.coverMm(), plan.sheet().mm2(), rule.barrier(), rule.duties(), cautions, basis, plan);
    }

    private static double broken(Repair repair, Map<String, Job> jobs) { return Amounts.paintBrokenMm2(jobs.get(repair.damage().id()), repair.treatment()); }
}
