package sillwright.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.work.Rule.Refusal;

/// Every treatment that could be thought of for one damage, with what refuses it.
///
/// Of those that nothing refuses, the one that loses the least original wood is taken. Every rule refuses more as the
/// damage grows, and every treatment loses more, so a worse damage never keeps more wood.
final class Weighing {
    private final Job job;
    private final Units units;
    private final List<Option> options = new ArrayList<>();

    /// @param lostMl   original wood that leaves the building
    /// @param refusals empty where it would hold
    record Option(Treatment treatment, double lostMl, List<Refusal> refusals) {
        Option { refusals = List.copyOf(refusals); }

        boolean holds() { return refusals.isEmpty(); }
    }

    private Weighing(Job job) {
        this.job = job;
        this.units = job.units();
    }

    /// From the least original wood lost to the most; where two lose alike, in the order the trade prefers them.
    static List<Option> of(Job job) {
        Weighing weighing = new Weighing(job);
        weighing.leave();
        weighing.recoat();
        weighing.consolidate();
        weighing.dutchman();
        weighing.ends();
        weighing.replace();
        weighing.options.sort(Comparator.comparingDouble(Option::lostMl));
        return List.copyOf(weighing.options);
    }

    private void add(Treatment treatment, List<Refusal> refusals) {
        List<Refusal> all = new ArrayList<>();
        if (!(treatment instanceof Treatment.Replace) && job.hollow() && job.bearsLoad() && job.bends())
            all.add(new Refusal(Rule.HOLLOW_IN_BENDING, "it is hollow and bends under load: nobody can say what is left in it"));
        all.addAll(refusals);
        options.add(new Option(treatment, Treatment.woodLostMl(treatment, job.member().sectionMm2(), job.member().lengthMm()), all));
    }

    private void leave() {
        List<Refusal> refusals = shallow();
        if (job.bearsLoad() && job.section().areaKept() < Limits.LEAVE_AREA)
            refusals.add(new Refusal(Rule.FILL_IS_NO_MEMBER, "it bears load and keeps only " + Words.percent(job.section().areaKept()) + " of its section"));
        if (job.member().coat() != Member.Coat.SOUND)
            refusals.add(new Refusal(Rule.COAT_DOES_NOT_SHED, switch (job.member().coat()) {
                case NONE -> "it stands bare";
                case FAILING -> "its paint is failing";
                case STAIN -> "a stain alone does not keep water out of softened wood";
                case NOT_KNOWN, SOUND -> "nobody noted that its paint is sound";
            }));
        add(new Treatment.Watch("the next round"), refusals);
    }

    private void recoat() { add(new Treatment.Recoat(job.damage().areaMm2()), shallow()); }

    private List<Refusal> shallow() {
        List<Refusal> refusals = new ArrayList<>();
        if (job.damage().deepestMm() > Limits.SHALLOW_MM)
            refusals.add(new Refusal(Rule.TOO_DEEP_TO_LEAVE, "soft to " + deep() + ", where " + Words.length(Limits.SHALLOW_MM, units) + " is shallow"));
        notKnown(refusals);
        ground(refusals);
        return refusals;
    }

    private void consolidate() {
        List<Refusal> refusals = new ArrayList<>();
        if (job.bearsLoad() && (job.section().areaKept() < Limits.FILL_AREA || job.modulusKept() < Limits.FILL_MODULUS))
            refusals.add(new Refusal(Rule.FILL_IS_NO_MEMBER, "it bears load and keeps " + kept() + "; filler is no structural member"));
        double most = Math.min(Limits.FILL_MM, Limits.FILL_SHARE * job.throughMm());
        if (job.damage().deepestMm() > most)
            refusals.add(new Refusal(Rule.FILL_TOO_DEEP, "soft to " + deep() + ", where a fill goes to " + Words.length(most, units)));
        double largest = job.seen() ? Limits.FILL_SEEN_ML : Limits.FILL_HIDDEN_ML, soft = job.damage().volumeMl().median();
        if (soft > largest)
            refusals.add(new Refusal(Rule.FILL_TOO_LARGE, Words.volume(soft, units) + " is soft, where a fill holds " + Words.volume(largest, units)));
        if (job.inTension())
            refusals.add(new Refusal(Rule.FILL_IN_TENSION, "the soft place is on the stretched underside, where filler is a poor choice"));
        notKnown(refusals);
        ground(refusals);
        add(new Treatment.Consolidate(Softness.consolidantMl(job), Softness.fillMl(job)), refusals);
    }

    private void dutchman() {
        Patch patch = Patch.of(job);
        List<Refusal> refusals = new ArrayList<>();
        boolean weak = job.liesOnMasonry() ? job.section().areaKept() < Limits.PATCH_KEPT_PRESSED
                : job.section().areaKept() < Limits.PATCH_KEPT || job.modulusKept() < Limits.PATCH_KEPT;
        if (job.bearsLoad() && weak)
            refusals.add(new Refusal(Rule.PATCH_IS_NO_MEMBER, "it bears load and keeps " + kept()));
        if (patch.depthMm() > Limits.PATCH_SHARE * job.throughMm() + 1e-9)
            refusals.add(new Refusal(Rule.PATCH_TOO_DEEP, "it would go " + Words.length(patch.depthMm(), units) + " into " + Words.length(job.throughMm(), units)
                    + ", more than half way through"));
        if (!job.liesOnMasonry() && patch.lengthMm() > Limits.PATCH_LENGTH * job.member().lengthMm())
            refusals.add(new Refusal(Rule.PATCH_TOO_LONG, "it would be " + Words.length(patch.lengthMm(), units) + " long in a piece of "
                    + Words.length(job.member().lengthMm(), units)));
        if (job.facesLost() > 2)
            refusals.add(new Refusal(Rule.PATCH_HAS_NO_SHOULDERS, "soft on " + job.facesLost() + " faces: no sound wood around it to let a patch into"));
        notKnown(refusals);
        ground(refusals);
        add(new Treatment.Dutchman(patch.lengthMm(), patch.widthMm(), patch.depthMm()), refusals);
    }

    private void ends() {
        CutLine line = CutLine.of(job.damage(), units);
        boolean standing = job.upright() && line.fromStart() && job.member().contact() != Member.Contact.NONE;
        if (standing) {
            List<Refusal> refusals = tooMuch(line.newMm());
            if (job.bearsLoad()) refusals.add(new Refusal(Rule.BUILD_UP_BEARS_LOAD, "it bears load"));
            if (line.newMm() > Limits.BUILD_UP_MM)
                refusals.add(new Refusal(Rule.BUILD_UP_TOO_TALL, "the base would be " + Words.length(line.newMm(), units) + " high, where "
                        + Words.length(Limits.BUILD_UP_MM, units) + " is the most"));
            add(new Treatment.BuildUp(line.newMm()), refusals);
        }
        List<Refusal> butt = tooMuch(line.newMm());
        if (job.bearsLoad() && !job.carriedBeneath() || job.member().run() == Member.Run.RAKING)
            butt.add(new Refusal(Rule.BUTT_IN_BENDING, (job.bearsLoad() ? "it bears load" : "it runs at an angle") + ", and a square glued end holds a quarter of the wood's strength at most"));
        if (job.member().role() == Member.Role.SHEDS_WATER && job.member().run() != Member.Run.UPRIGHT)
            butt.add(new Refusal(Rule.BUTT_TAKES_IN_WATER, "it lies " + sillwright.walk.Choice.said(job.member().run()) + " and sheds water: a square joint would stand open to it"));
        add(new Treatment.ButtSplice(line.newMm()), butt);

        double lap = CutLine.up(HalfLapping.lengthMm(job.member()), units), lapped = Math.min(job.member().lengthMm(), line.newMm() + lap);
        List<Refusal> half = tooMuch(line.newMm() + lap);
        if (!job.bearsLoad()) half.add(new Refusal(Rule.LAP_WITHOUT_NEED, "it bears no load, and a half lap takes more of it than a butt"));
        else if (job.bends()) half.add(new Refusal(Rule.LAP_IN_BENDING, "it bends under its load, and a lapped joint keeps a quarter of the bending strength or so"));
        add(new Treatment.HalfLap(lapped, Math.min(lap, lapped)), half);

        Scarfing scarf = Scarfing.of(job);
        double whole = Math.min(job.member().lengthMm(), line.newMm() + scarf.lengthMm());
        List<Refusal> refusals = tooMuch(line.newMm() + scarf.lengthMm());
        if (job.bearsLoad() && job.bends() && line.newMm() + scarf.lengthMm() > Limits.JOINT_SHARE * job.member().lengthMm())
            refusals.add(new Refusal(Rule.JOINT_AT_GREATEST_BENDING, "the joint would reach " + Words.length(line.newMm() + scarf.lengthMm(), units)
                    + " in, past a quarter of the span"));
        add(new Treatment.ScarfSplice(whole, scarf.slope(), Math.min(scarf.lengthMm(), whole)), refusals);
    }

    private List<Refusal> tooMuch(double newMm) {
        List<Refusal> refusals = new ArrayList<>();
        double length = job.member().lengthMm();
        if (newMm > Limits.SPLICE_SHARE * length)
            refusals.add(new Refusal(Rule.SPLICE_LEAVES_TOO_LITTLE, "it would renew " + Words.length(Math.min(length, newMm), units) + " of "
                    + Words.length(length, units)));
        return refusals;
    }

    private void replace() {
        add(new Treatment.Replace(job.hollow() && job.bearsLoad() && job.bends() ? "hollow, and it bends under load"
                : "soft over " + Words.length(job.damage().lengthMm(), units) + " of " + Words.length(job.member().lengthMm(), units)
                + ", " + kept() + " left at the worst"), List.of());
    }

    private void notKnown(List<Refusal> refusals) {
        if (job.damage().ranOut())
            refusals.add(new Refusal(Rule.DEPTH_NOT_KNOWN, "a probe ran out at its limit here: it may be soft further in than " + deep()));
    }

    private void ground(List<Refusal> refusals) {
        if (job.inTheGround()) refusals.add(new Refusal(Rule.STANDS_WET, "it is in the ground and would stay wet"));
    }

    private String deep() { return Words.length(job.damage().deepestMm(), units); }

    private String kept() {
        return Words.percent(job.section().areaKept()) + " of its area and " + Words.percent(job.modulusKept()) + " of its bending modulus";
    }
}
