package sillwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import sillwright.measure.Basis;
import sillwright.measure.Quantity;
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
    /// Higher than this is not reached from the ground, mm.
    private static final double REACH_MM = 2000;

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
        double sheeting = 0;
        List<String> sheeted = new ArrayList<>();
        for (var entry : bySide.entrySet()) {
            List<Repair> here = entry.getValue();
            double toLine = survey.sides().containsKey(entry.getKey())
                    ? survey.sides().get(entry.getKey()).lotLine().map(Quantity::own).orElse(Double.POSITIVE_INFINITY) : Double.POSITIVE_INFINITY;
            double highest = here.stream().mapToDouble(repair -> highestMm(repair.damage().member())).max().orElse(0);
            LeadSafe.Plan plan = LeadSafe.plan(new LeadSafe.Job(survey.yearBuilt(), paint, true, windows, toLine, highest > REACH_MM ? highest : 0, 0));
            List<String> cautions = new ArrayList<>(plan.cautions());
            List<Basis> basis = new ArrayList<>(plan.basis());
            besides(here, cautions, basis);
            sides.add(new SafeSide(entry.getKey(), here.stream().mapToDouble(repair -> broken(repair, jobs)).sum(), plan.covered(), plan.coverMm(),
                    plan.barrier(), plan.duties(), cautions, basis));
            if (plan.covered()) {
                sheeting += plan.coverMm() * (extentMm(here) + 2 * plan.coverMm());
                here.forEach(repair -> sheeted.add(repair.id()));
            }
        }
        return new Safety(List.copyOf(sides), sheeting, List.copyOf(sheeted));
    }

    private static double broken(Repair repair, Map<String, Job> jobs) { return Amounts.paintBrokenMm2(jobs.get(repair.damage().id()), repair.treatment()); }

    private static double highestMm(Member member) {
        return member.above().own() + (member.run() == Member.Run.UPRIGHT ? member.lengthMm() : member.run() == Member.Run.OUTWARD ? member.depthMm() : member.widthMm());
    }

    private static double extentMm(List<Repair> repairs) {
        double left = Double.POSITIVE_INFINITY, right = Double.NEGATIVE_INFINITY;
        for (Repair repair : repairs) {
            Member member = repair.damage().member();
            boolean along = member.run() == Member.Run.LEVEL || member.run() == Member.Run.RAKING;
            left = Math.min(left, member.left().own());
            right = Math.max(right, member.left().own() + (along ? member.lengthMm() : member.widthMm()));
        }
        return right - left;
    }

    private static void besides(List<Repair> repairs, List<String> cautions, List<Basis> basis) {
        if (repairs.stream().anyMatch(repair -> repair.damage().member().bearsLoad())) {
            cautions.add("a loaded member is propped on a spread footing before it is cut, jacked a little at a time; a licensed engineer where it is urgent or in doubt");
            basis.add(Basis.practice("load path known and shored before a loaded post is cut"));
        }
        if (repairs.stream().anyMatch(repair -> repair.needs().stream().anyMatch(need -> need.material() == Material.CONSOLIDANT || need.material() == Material.ADHESIVE)))
            cautions.add("resins and solvents: gloves, eyes covered, moving air, no flame; rags laid flat outdoors to dry");
        cautions.add("no torch and no high heat on old walls: what lies inside them smoulders; circuits off before a wet wall is opened or drilled");
        basis.add(Basis.read("National Park Service, Preservation Brief 47", "no torch, flame or high heat"));
        if (repairs.stream().anyMatch(repair -> !repair.pieces().isEmpty()))
            cautions.add("droppings of birds and mice carry disease: damp them, masked; large deposits go to a licensed firm");
    }
}
