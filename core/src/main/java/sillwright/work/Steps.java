package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.water.WaterFindings.RankedSource;

/// How a repair is made, in order, in short lines with dimensions.
final class Steps {
    private final Job job;
    private final Units units;
    private final Treatment treatment;
    private final List<String> lines = new ArrayList<>();

    /// The thickest that is filled at once, half an inch: from memory, and only where the maker does not say another.
    private static final double LIFT_MM = 12.7;

    private Steps(Job job, Treatment treatment) {
        this.job = job;
        this.units = job.units();
        this.treatment = treatment;
    }

    static List<String> of(Job job, Treatment treatment) {
        Steps steps = new Steps(job, treatment);
        steps.before();
        switch (treatment) {
            case Treatment.Watch(var until) -> steps.leave(until);
            case Treatment.Recoat _ -> steps.recoat();
            case Treatment.Consolidate(var consolidant, var fill) -> steps.consolidate(consolidant, fill);
            case Treatment.Dutchman patch -> steps.dutchman(patch);
            case Treatment.BuildUp(var height) -> steps.buildUp(height);
            case Treatment.ButtSplice(var newMm) -> steps.butt(newMm);
            case Treatment.HalfLap lap -> steps.halfLap(lap);
            case Treatment.ScarfSplice scarf -> steps.scarf(scarf);
            case Treatment.Replace _ -> steps.replace();
        }
        return List.copyOf(steps.lines);
    }

    private void say(String line) { lines.add(line); }

    private String length(double mm) { return Words.length(mm, units); }

    /// A round size in either system.
    private String about(double inches, double mm) { return length(units == Units.US ? inches * 25.4 : mm); }

    private void before() {
        boolean cut = !(treatment instanceof Treatment.Watch || treatment instanceof Treatment.Recoat);
        if (cut && job.bearsLoad() && job.urgent()) say("Prop the load on both sides of the work, on a spread footing, and have a licensed engineer look before anything is cut.");
        else if (cut && job.bearsLoad()) say("Prop the load on both sides of the work, on a spread footing, before anything is cut.");
        if (!job.water().isEmpty())
            say("Stop the water first: " + Words.list(job.water().stream().limit(3).map(RankedSource::words).toList()) + ".");
        say("Meter beside the damage and go on at " + Words.percent(Limits.DRY_ENOUGH) + " or less"
                + job.moisture().map(moisture -> "; it held " + Words.percent(moisture)).orElse("; no reading was taken yet") + ".");
    }

    private void leave(String until) {
        say("Press with the thumb and push an awl at " + where() + ": note how deep.");
        say("Leave it, and probe the same spots again at " + until + ".");
        say("Once it is deeper than " + length(Limits.SHALLOW_MM) + ", take it in hand.");
    }

    private void recoat() {
        say("Scrape loose paint from " + where() + " by hand, damp, to a firm edge.");
        say("Shave soft fibres to hard wood; stop at " + length(Limits.SHALLOW_MM) + ".");
        say("Sand damp with 120 grit, wipe, let dry.");
        paint();
    }

    private void consolidate(double consolidantMl, double fillMl) {
        say("Scrape the paint off to " + about(2, 50) + " past the soft edge: " + where() + ".");
        say("Dig out what crumbles; leave what holds together.");
        say("Drill slanting " + about(0.125, 3) + " holes every " + about(1, 25) + ", to " + length(job.damage().deepestMm()) + " deep and not through.");
        say("Feed in consolidant until it takes no more, about " + Words.volume(consolidantMl, units) + "; wipe it off sound wood and let it cure.");
        if (fillMl > 0) {
            int lifts = Mix.lifts(job.damage().deepestMm(), LIFT_MM);
            say("Fill with about " + Words.volume(fillMl, units) + (lifts > 1 ? ", in " + lifts + " lifts of " + about(0.5, 12) + " at most" : "") + ", a little proud; let it cure" + (lifts > 1 ? " between" : "") + ".");
            say("Rasp and sand to the old line, with a fall that sheds water.");
        }
        paint();
    }

    private void dutchman(Treatment.Dutchman patch) {
        say("Mark an opening " + length(patch.lengthMm()) + " along the grain by " + length(patch.widthMm()) + ", "
                + length(Patch.marginMm(job)) + " past the soft wood.");
        say("Saw and chisel it " + length(patch.depthMm()) + " deep, flat in the bottom, edges undercut a little, ends sloped to shed water.");
        proveSound("in the opening");
        say("Cut the patch from dry " + job.member().species() + ", grain and rings as around it, " + about(1.0 / 16, 1.5) + " proud.");
        borate();
        say("Glue all faces (about " + adhesive() + "), press in, " + screws() + " from the hidden side or plugged.");
        say("Plane flush when cured.");
        paint();
    }

    private void buildUp(double heightMm) {
        say("Square a line across " + length(heightMm) + " up from the foot and saw, bevelled to drip outward.");
        proveSound("above the cut");
        say("Cut the base from dry " + job.member().species() + ", " + section() + " × " + length(heightMm - Amounts.breakMm(units)) + pluses());
        capillary();
        borate();
        say("Glue the joint (about " + adhesive() + "), set the base, " + screws() + ".");
        paint();
    }

    private void butt(double newMm) {
        line(newMm);
        say(job.carriedBeneath() ? "Go on to the middle of the next joist and saw square there, so that both ends have bearing."
                : "Saw square" + (job.upright() ? ", bevelled to drip outward" : "") + ".");
        proveSound("at the cut");
        newEnd(newMm);
        borate();
        if (Amounts.standsOnBreak(job, treatment)) capillary();
        say("Glue the joint (about " + adhesive() + "), back it with a strip where there is room, " + screws() + ".");
        paint();
    }

    private void halfLap(Treatment.HalfLap lap) {
        double half = Math.min(job.member().widthMm(), job.member().depthMm()) / 2;
        line(lap.newMm() - lap.lapMm());
        proveSound("past the line");
        say("From the line on, cut the old end half through, " + length(half) + " deep for " + length(lap.lapMm()) + "; undercut its shoulder 1:6, so that the ends lock.");
        newEnd(lap.newMm());
        say("Halve the new end to match; bed it dry, bearing full on both shoulders, before anything else.");
        borate();
        if (Amounts.standsOnBreak(job, treatment)) capillary();
        say("Glue (about " + adhesive() + ") and draw together with " + HalfLapping.BOLTS + " bolts through the lap, a quarter of its length from each end, heads let in and plugged; their size and the propping are the engineer's.");
        paint();
    }

    private void scarf(Treatment.ScarfSplice scarf) {
        line(scarf.newMm() - scarf.scarfMm());
        proveSound("past the line");
        double across = Math.min(job.member().widthMm(), job.member().depthMm());
        say("Saw the scarf from the line " + length(scarf.scarfMm()) + " on into sound wood, 1:" + scarf.slope() + " across the " + length(across)
                + ", sloped to shed water.");
        newEnd(scarf.newMm());
        borate();
        if (Amounts.standsOnBreak(job, treatment)) capillary();
        say("Dry-fit, then glue (about " + adhesive() + ") and clamp; " + screws() + ", staggered"
                + (job.bearsLoad() ? "; bolts or pegs as the engineer sizes them" : "") + ".");
        paint();
    }

    private void replace() {
        say("Take " + job.member().title() + " off whole; keep it as the pattern.");
        say("Make it again from dry " + job.member().species() + ", " + section() + " × " + length(job.member().lengthMm()) + pluses());
        say("Prime the back once and every end twice before it goes up.");
        if (Amounts.standsOnBreak(job, treatment)) capillary();
        say((job.bearsLoad() ? "Fix it as it was, or as the engineer sizes it" : "Fix with " + screws() + ", heads plugged") + "; lap flashings over it, not under.");
        paint();
    }

    private void line(double newMm) {
        boolean start = CutLine.of(job.damage(), units).fromStart();
        say("Square a line all round " + length(newMm) + " from the " + (start ? Place.start(job.member()) : Place.farEnd(job.member())) + ".");
    }

    private void proveSound(String where) {
        say("Prise a splinter " + where + ": sound wood tears long, decayed wood breaks short; if it breaks short go " + about(2, 50) + " further.");
    }

    private void newEnd(double newMm) {
        say("Cut the new end from dry " + job.member().species() + ", " + section() + " × "
                + length(newMm - (Amounts.standsOnBreak(job, treatment) ? Amounts.breakMm(units) : 0)) + pluses());
    }

    private String pluses() { return "; saw " + about(0.125, 3) + " over and plane to fit."; }

    private void borate() { say("Brush borate on the cut old wood, twice; let it dry."); }

    private void capillary() {
        say("Seal the lower end grain twice and stand it on a pad or feet that leave " + length(Amounts.breakMm(units)) + " clear, open to drain.");
    }

    private void paint() {
        say((switch (treatment) {
            case Treatment.Recoat _ -> "Prime bare wood";
            case Treatment.Watch _, Treatment.Consolidate _, Treatment.Dutchman _, Treatment.BuildUp _, Treatment.ButtSplice _, Treatment.HalfLap _,
                 Treatment.ScarfSplice _, Treatment.Replace _ -> "Prime";
        }) + " (" + Words.area(Amounts.coatedMm2(job, treatment), units) + "), then two coats within two weeks.");
    }

    private String where() { return Place.of(job.damage(), units); }

    private String section() { return length(job.member().widthMm()) + " × " + length(job.member().depthMm()); }

    private String adhesive() { return Words.volume(Amounts.gluedMm2(job, treatment) * Amounts.JOINT_MM / 1000, units); }

    private String screws() { return Words.count(Amounts.screws(job, treatment), "stainless screw") + " " + Screws.words(job, treatment); }
}
