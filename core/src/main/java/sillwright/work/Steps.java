package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Species;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.work.joint.Fixings;
import sillwright.work.joint.Joinery;
import sillwright.work.resin.Mixing;
import sillwright.work.resin.Resin;

/// How a repair is made, in order, in short lines with dimensions.
final class Steps {
    private final Job job;
    private final Units units;
    private final Treatment treatment;
    /// Whether it is opened before it dries.
    private final boolean first;
    private final List<String> lines = new ArrayList<>();

    private Steps(Job job, Treatment treatment) {
        this.job = job;
        this.units = job.units();
        this.treatment = treatment;
        this.first = DryingTime.opensFirst(job, treatment);
    }

    static List<String> of(Job job, Treatment treatment) {
        Steps steps = new Steps(job, treatment);
        steps.before();
        switch (treatment) {
            case Treatment.Watch(var until) -> steps.leave(until);
            case Treatment.Recoat _ -> steps.recoat();
            case Treatment.Reseat _ -> steps.reseat();
            case Treatment.Consolidate _, Treatment.Fill _ -> steps.resin();
            case Treatment.Sister sister -> steps.sister(sister);
            case Treatment.ReplacePart part -> steps.part(part);
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
        boolean cut = opened(job, treatment);
        if (cut && job.bearsLoad() && !Job.carries(job.member())) say("Rope it off: nobody steps or leans on it until it is made good.");
        else if (cut && job.bearsLoad() && job.urgent()) say("Prop the load on both sides of the work, on a spread footing, and have a licensed engineer look before anything is cut.");
        else if (cut && job.bearsLoad()) say("Prop the load on both sides of the work, on a spread footing, before anything is cut.");
        if (!job.water().isEmpty())
            say("Stop the water first: " + Words.list(job.water().stream().limit(3).map(RankedSource::words).toList()) + ".");
        if (first) say(openFirst() + " in about " + Words.count(DryingTime.days(job, treatment), "day") + ".");
        say("Meter beside the damage and go on at " + Words.percent(Limits.DRY_ENOUGH) + " or less"
                + job.moisture().map(moisture -> "; it held " + Words.percent(moisture)).orElse("; no reading was taken yet") + ".");
    }

    /// How it is opened, so that it dries bare.
    private String openFirst() {
        String sheet = "ang a sheet before it that keeps rain out and lets air by; it dries";
        if (treatment instanceof Treatment.Reseat) return "Take it off and scrape it first, as below: it dries flat on stickers under a roof";
        if (job.member().coat() == sillwright.walk.Member.Coat.NONE) return "H" + sheet;
        return "Open it first: scrape the paint off " + where() + ", " + about(2, 50) + " past the soft edge, damp, and h" + sheet + " bare";
    }

    /// Whether so much is taken out of it, or it is so weak already, that its load is propped first.
    static boolean opened(Job job, Treatment treatment) { return treatment.cuts() || treatment instanceof Treatment.Sister || Amounts.resin(treatment) && job.urgent(); }

    private void leave(String until) {
        say("Press with the thumb and push an awl at " + where() + ": note how deep.");
        say("Leave it, and probe the same spots again at " + until + ".");
        say("Once it is deeper than " + length(Limits.SHALLOW_MM) + ", take it in hand.");
    }

    private void recoat() {
        if (!first) say("Scrape loose paint from " + where() + " by hand, damp, to a firm edge.");
        say("Shave soft fibres to hard wood; stop at " + length(Limits.SHALLOW_MM) + ".");
        say("Sand damp with 120 grit, wipe, let dry.");
        paint();
    }

    private void reseat() {
        say("Score the paint at its edges, draw or cut its nails, and take " + job.member().title() + " off whole; number it on the back.");
        say("Scrape and wash it, shave soft fibres to hard wood, let it dry flat on stickers.");
        say("Prime the back once and every end twice; let it dry.");
        say("Fix it where it was with " + screws() + ", open behind so that it drains; lap flashings over it, not under.");
        paint();
    }

    private void sister(Treatment.Sister sister) {
        say("Scrape what is soft off " + where() + ", brush borate on, let it dry.");
        say("Cut the sister from dry " + wood() + ", " + length(sister.thickMm()) + " thick, as deep as the old one, " + length(sister.toMm() - sister.fromMm()) + " long, so that it bears where the old one does.");
        say("Prime it all round, its ends twice; lay a strip of felt between the two, so that no water stands there.");
        say("Set it hard up beneath the load, then bolt it to the old one with " + Words.count(Amounts.bolts(job, treatment), "bolt") + " of " + fixed().name() + " in pairs, into sound wood; the engineer settles them.");
        say("Cap the top of the two with flashing, so that no rain falls between them.");
        paint();
    }

    private void part(Treatment.ReplacePart part) {
        say("Square lines all round " + length(part.fromMm()) + " and " + length(part.toMm()) + " from the " + Place.start(job.member()) + ", each over a stud, joist or block.");
        say("Saw both, sloped 45° across the thickness so that the upper laps the lower and sheds water; take the stretch out.");
        proveSound("past both cuts");
        say("Cut the new stretch from dry " + wood() + ", " + section() + " × " + length(part.toMm() - part.fromMm()) + pluses());
        borate();
        say("Prime its back and ends, glue both joints (about " + adhesive() + "), fix with " + screws() + ", two each side of a joint.");
        paint();
    }

    private void resin() {
        if (!first) say("Scrape the paint off to " + about(2, 50) + " past the soft edge: " + where() + ".");
        say(job.onlyChecked() ? "Rake and blow the checks clean to their bottoms." : "Dig out what crumbles; leave what holds together.");
        for (Mixing mixing : Designing.of(job, treatment).mixings()) mixed(mixing);
        if (treatment instanceof Treatment.Fill) say("Rasp and sand to the old line, with a fall that sheds water.");
        paint();
    }

    private void mixed(Mixing mixing) {
        String batches = mixing.batches().count() == 1 ? "one batch" : mixing.batches().count() + " batches of " + Words.volume(mixing.batches().eachMl(), units);
        String laid = switch (mixing.resin()) {
            case CONSOLIDANT -> mixing.holes().map(holes -> "Drill " + holes.count() + " slanting " + about(0.125, 3) + " holes, rows " + about(1, 25) + " apart, " + about(2, 50) + " along, " + length(holes.deepMm())
                    + " deep; feed in").orElse(job.onlyChecked() ? "Run into the checks" : "Brush on until it drinks no more");
            case SKIM -> "Fill the checks to their bottoms with";
            case SHAPING -> "Build up with";
        };
        say(laid + " " + mixing.resin().words() + ", about " + Words.volume(mixing.likelyMl(), units) + ", in " + batches
                + (mixing.lifts() > 1 ? ", " + mixing.lifts() + " lifts" : "") + "; " + Words.number(mixing.workingS() / 60, 0) + " min to work it at " + Words.temperature(mixing.tempC(), units)
                + (mixing.resin() == Resin.CONSOLIDANT ? "; then wait " + Words.number(mixing.againH(), 0) + " h." : "; let it cure."));
    }

    private void dutchman(Treatment.Dutchman patch) {
        say("Mark an opening " + length(patch.lengthMm()) + " along the grain by " + length(patch.widthMm()) + ", "
                + length(Patch.marginMm(job)) + " past the soft wood.");
        say("Saw and chisel it " + length(patch.depthMm()) + " deep, flat in the bottom" + (patch.widthMm() < job.member().acrossMm(job.damage().worst()) - 0.5 ? ", lower edge sloped to shed water" : ", out at both edges of the face") + "; no edge of the patch thinner than " + length(Limits.PATCH_THIN_MM) + ".");
        proveSound("in the opening");
        say("Cut the patch from dry " + wood() + ", grain and rings as around it, " + about(1.0 / 16, 1.5) + " proud, " + (patch.widthMm() < job.member().acrossMm(job.damage().worst()) - 0.5 ? "its edges" : "its ends") + " back-cut " + length(Math.max(units == Units.US ? 25.4 / 16 : 1, patch.depthMm() / 12)) + " at the floor so that the line at the face closes.");
        borate();
        say("Glue all faces (about " + adhesive() + "), press in, " + screws() + (fixings().isPresent() ? ", heads " + length(Joints.COVER_MM) + " under the face and plugged, or from the hidden side" : "") + ".");
        say("Plane flush when cured.");
        paint();
    }

    private void buildUp(double heightMm) {
        say("Square a line across " + length(heightMm) + " up from the foot and saw, bevelled to drip outward.");
        proveSound("above the cut");
        say("Cut the base from dry " + wood() + ", " + section() + " × " + length(heightMm - Amounts.breakMm(units)) + pluses());
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
        hang(newMm);
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
        say("Glue (about " + adhesive() + ") and draw together with " + Words.count(Amounts.bolts(job, treatment), "bolt") + " of " + fixed().name() + ", " + length(fixed().places().getFirst().alongMm()) + " from each end of the lap, heads let in and plugged; the engineer settles bolts and props.");
        paint();
    }

    private void scarf(Treatment.ScarfSplice scarf) {
        line(scarf.newMm() - scarf.scarfMm());
        proveSound("past the line");
        double across = Math.min(job.member().widthMm(), job.member().depthMm());
        say("Saw the scarf from the line " + length(scarf.scarfMm()) + " on into sound wood, 1:" + scarf.slope() + " across the " + length(across)
                + (scarf.nibMm() > 0 ? ", each tip cut square at a nib of " + length(scarf.nibMm()) : "") + ", sloped to shed water.");
        newEnd(scarf.newMm());
        borate();
        if (Amounts.standsOnBreak(job, treatment)) capillary();
        say("Dry-fit, then glue (about " + adhesive() + ") and clamp; " + screws() + ", staggered"
                + (job.bearsLoad() ? "; bolts or pegs as the engineer sizes them" : "") + ".");
        hang(scarf.newMm());
        paint();
    }

    private void replace() {
        say("Take " + job.member().title() + " off whole; keep it as the pattern.");
        say("Make it again from dry " + wood() + ", " + section() + " × " + length(job.member().lengthMm()) + pluses());
        say("Prime the back once and every end twice before it goes up.");
        if (Amounts.standsOnBreak(job, treatment)) capillary();
        say((job.bearsLoad() ? "Fix it as it was, or as the engineer sizes it" : "Fix with " + screws() + ", heads plugged") + (job.member().role() == sillwright.walk.Member.Role.SHEDS_WATER ? "; lap flashings over it, not under." : "."));
        paint();
    }

    private void line(double newMm) {
        boolean start = CutLine.of(job.damage(), units).fromStart();
        say("Square a line all round " + length(newMm) + " from the " + (start ? Place.start(job.member()) : Place.farEnd(job.member())) + ".");
    }

    /// A new length of flat stock is fixed like the old one, not by its joint alone.
    private void hang(double newMm) {
        int screws = Amounts.hung(job, newMm);
        if (screws > 0) say("Prime its back and ends before it goes up; fix it to what the old length was fixed to with " + Words.count(screws, "stainless screw") + " " + Screws.words(job, treatment, java.util.Optional.empty()) + ", in pairs.");
    }

    private void proveSound(String where) {
        say("Prise a splinter " + where + ": sound wood tears long, decayed wood breaks short; if it breaks short go " + about(2, 50) + " further.");
    }

    private void newEnd(double newMm) {
        say("Cut the new end from dry " + wood() + ", " + section() + " × "
                + length(newMm - (Amounts.standsOnBreak(job, treatment) ? Amounts.breakMm(units) : 0)) + pluses());
    }

    private String pluses() { return "; saw " + about(0.125, 3) + " over and plane to fit."; }

    private void borate() {
        say("Brush borate on the cut old wood, twice; let it dry" + (Amounts.gluedMm2(job, treatment) > 0 ? ", and wipe what salt stands on the faces to be glued." : "."));
    }

    private void capillary() {
        say("Seal the lower end grain twice and stand it on a pad or feet that leave " + length(Amounts.breakMm(units)) + " clear, open to drain.");
    }

    private void paint() {
        say((switch (treatment) {
            case Treatment.Recoat _ -> "Prime bare wood";
            case Treatment.Reseat _, Treatment.Sister _, Treatment.ReplacePart _, Treatment.Fill _, Treatment.Watch _, Treatment.Consolidate _, Treatment.Dutchman _, Treatment.BuildUp _, Treatment.ButtSplice _, Treatment.HalfLap _,
                 Treatment.ScarfSplice _, Treatment.Replace _ -> "Prime";
        }) + " (" + painted() + "), then two coats within two weeks.");
    }

    /// Less than a square foot is said in square inches.
    private String painted() {
        double mm2 = Amounts.coatedMm2(job, treatment), inches = sillwright.measure.Unit.SQUARE_INCH.fromOwn(mm2);
        return units == Units.US && inches < 144 ? Words.number(inches, 0) + " in²" : Words.area(mm2, units);
    }

    private String wood() { return Species.said(Stocking.species(job, treatment)); }

    private String where() { return Place.of(job.damage(), units); }

    private String section() { return length(job.member().widthMm()) + " × " + length(job.member().depthMm()); }

    private String adhesive() { return Words.volume(Amounts.gluedMm2(job, treatment) * Amounts.JOINT_MM / 1000, units); }

    private String screws() {
        int screws = Amounts.screws(job, treatment);
        if (screws > 0) return Words.count(screws, "stainless screw") + " " + Screws.words(job, treatment);
        return fixings().map(fixed -> Words.count(fixed.count(), "dowel") + " " + fixed.name() + " × " + length(fixed.lengthMm()) + ", half in each").orElse("clamp, no screws");
    }

    private java.util.Optional<Fixings> fixings() { return Joints.of(job, treatment, Strengths.none(job)).flatMap(Joinery::fixings); }

    private Fixings fixed() { return fixings().orElseThrow(); }
}
