package sillwright.work;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import sillwright.measure.Basis;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.work.Rule.Refusal;
import sillwright.work.Weighing.Option;

/// Makes a repair of a damage and the treatment taken for it: the reasons, the others weighed, how it is made, and what to
/// beware of.
final class Making {
    private Making() {}

    static Repair repair(String id, Settling.Settled settled, int yearBuilt) {
        Job job = settled.weighed().job();
        List<Option> options = settled.weighed().options();
        Decided.Chosen chosen = settled.weighed().chosen();
        Option taken = chosen.taken();
        Treatment treatment = taken.treatment();
        Job gravest = job.urgent() ? job : settled.also().stream().filter(Job::urgent).findFirst().orElse(job);
        Set<Basis> basis = new LinkedHashSet<>(job.condition().basis());
        for (Option option : options) for (Refusal refusal : option.refusals()) basis.addAll(refusal.rule().basis());
        basis.addAll(Rule.LOSES_MORE_WOOD.basis());
        basis.addAll(basis(job, treatment));
        Comparison comparison = Comparing.of(job, options, chosen);
        Design design = Designing.of(job, treatment);
        design.joint().ifPresent(joint -> basis.addAll(joint.basis()));
        design.stock().ifPresent(stock -> basis.addAll(stock.basis()));
        if (!design.mixings().isEmpty()) basis.addAll(sillwright.work.resin.Mixing.BASIS);
        if (!design.checks().isEmpty()) basis.addAll(List.of(sillwright.work.resin.Checks.BASIS));
        basis.addAll(List.of(Lasting.BASIS));
        return new Repair(id, job.damage(), treatment, reasons(job, chosen, settled.also(), comparison), others(job, chosen, options), gravest.urgent(),
                job.water().stream().map(RankedSource::id).toList(), Steps.of(job, treatment), Amounts.pieces(id, job, treatment),
                Amounts.of(job, treatment), cautions(job, gravest, treatment, design, yearBuilt, chosen), List.copyOf(basis), comparison, design, chosen.ruling());
    }

    private static List<Basis> basis(Job job, Treatment treatment) {
        List<Basis> basis = new ArrayList<>();
        if (job.tooWet()) basis.add(Basis.practice("wood is filled, glued and painted at or below 15 to 18 %; the drier end is taken here"));
        if (DryingTime.days(job, treatment) > 0) basis.add(DryingTime.BASIS);
        if (treatment instanceof Treatment.Dutchman) basis.addAll(Patch.BASIS);
        if (treatment instanceof Treatment.HalfLap) basis.addAll(HalfLapping.BASIS);
        if (treatment instanceof Treatment.ScarfSplice) basis.addAll(Scarfing.BASIS);
        if (!(treatment instanceof Treatment.Watch)) basis.addAll(List.of(Amounts.BASIS, TakeOff.BASIS));
        return basis;
    }

    private static List<String> reasons(Job job, Decided.Chosen chosen, List<Job> also, Comparison comparison) {
        List<String> reasons = new ArrayList<>();
        chosen.ruling().ifPresent(ruling -> reasons.add(Words.sentence(ruling.words()) + (ruling.words().endsWith(".") ? "" : ".")));
        reasons.add((chosen.taken() == chosen.recommended() ? "" : "Recommended was: ") + comparison.words());
        if (!job.water().isEmpty())
            reasons.add("Wait until the water is stopped: " + Words.list(job.water().stream().limit(3).map(source -> source.words() + " ("
                    + Words.chance(source.probability()) + ")").toList()) + ".");
        job.moisture().ifPresent(moisture -> {
            if (moisture > Limits.DRY_ENOUGH) reasons.add("Wait until it is dry: it holds " + Words.percent(moisture) + ", and "
                    + Words.percent(Limits.DRY_ENOUGH) + " is dry enough to glue, fill and paint.");
        });
        for (Job other : also) reasons.add("It takes " + Place.of(other.damage(), job.units()) + " with it (" + other.damage().id() + ").");
        return reasons;
    }

    private static List<Repair.Alternative> others(Job job, Decided.Chosen chosen, List<Option> options) {
        Option taken = chosen.taken();
        List<Repair.Alternative> others = new ArrayList<>();
        for (Option option : options) {
            if (option == taken) continue;
            String against = option == chosen.recommended() ? "is recommended, and was not taken: see why this one" : option.holds()
                    ? option.lostMl() > taken.lostMl()
                            ? "takes " + share(job, option) + " of the piece, where " + (taken.lostMl() > 0 ? share(job, taken) : "none") + " will do"
                            : "would hold, and asks more of the building"
                    : String.join("; ", option.refusals().stream().map(Refusal::words).limit(2).toList());
            others.add(new Repair.Alternative(option.treatment(), option.lostMl(), against));
        }
        return others;
    }

    /// Original wood lost, as a share of the piece.
    private static String share(Job job, Option option) { return Words.percent(option.lostMl() * 1000 / (job.member().sectionMm2() * job.member().lengthMm())); }

    private static List<String> cautions(Job job, Job gravest, Treatment treatment, Design design, int yearBuilt, Decided.Chosen chosen) {
        List<String> cautions = new ArrayList<>(chosen.ruling().map(Ruling::cautions).orElse(List.of()));
        Member member = job.member();
        boolean cuts = treatment.cuts();
        if (gravest.urgent() && job.bearsLoad() && !Job.carries(member))
            cautions.add("Rope it off now: it keeps " + Words.percent(gravest.section().areaKept()) + " of its section, and a foot may go through.");
        else if (gravest.urgent() && job.bearsLoad())
            cautions.add("Stop here first: it bears load and " + (gravest.hollow() ? "is hollow" : "keeps " + Words.percent(gravest.section().areaKept()) + " of its section")
                    + ". Keep people from under it, prop the load on a spread footing, and call a licensed engineer before anything is cut. These figures screen; they do not design.");
        else if (gravest.urgent())
            cautions.add("It is hollow and over people's heads: keep them from under it, and tie it back or take it down.");
        else if (cuts && Job.carries(member))
            cautions.add("It bears load: know what comes down on it, prop that on a spread footing a little at a time, and ask a licensed engineer where in doubt.");
        if (!(treatment instanceof Treatment.Watch) && Lead.mayBe(yearBuilt, member))
            cautions.add("Take the old paint for leaded: scrape damp, sheet the ground, no open flame, no dry sanding; the lead rule may bind the work.");
        if (Amounts.resin(treatment) || Amounts.gluedMm2(job, treatment) > 0)
            cautions.add("Two-part resins and preservatives: gloves, eyes covered, moving air; read the maker's sheet.");
        if (member.above().own() + (job.upright() ? job.damage().toMm() : 0) > Limits.OVERHEAD_MM)
            cautions.add("Work at height: ladder one out for four up, standing off the gutter; a scaffold for more than a short job.");
        if (new Strengths(job).whole.filter(whole -> whole > 1).isPresent())
            cautions.add("By the load assumed even a whole new one would be overloaded: the load is in doubt, and a licensed engineer settles it before strength can decide anything.");
        design.joint().flatMap(joint -> joint.strength()).ifPresent(strength -> cautions.add("The joint's figures screen, for dry wood of a grade nobody stamped: a licensed engineer settles a joint that bears load."));
        if (job.damage().ranOut())
            cautions.add("A probe ran out here: open it up before the wood is ordered, the soft part may go on.");
        if (job.tooWet() && job.water().isEmpty())
            cautions.add("It is wet and no source of the water is known yet: find it first, or the repair will not last.");
        if (job.moisture().isEmpty()) cautions.add("No meter was put to it: meter " + Choice.said(job.damage().worst()) + " face before anything is glued or filled.");
        return cautions;
    }
}
