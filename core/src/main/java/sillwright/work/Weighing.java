package sillwright.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.wood.strength.Combined;
import sillwright.work.Rule.Refusal;
import sillwright.work.joint.Joinery;

/// Every treatment that could be thought of for one damage, each with the limits it must clear and the number held against each.
///
/// Of those that clear all of theirs, the one that asks least of the building is taken: by degree, and among those that let new wood in by the wood they take. Every
/// bar is the harder to clear the greater the damage, so that a worse damage never has less done about it.
final class Weighing {
    private final Job job;
    private final Units units;
    private final Strengths strengths;
    private final List<Option> options = new ArrayList<>();

    /// @param lostMl original wood that leaves the building
    /// @param bars   what it must clear
    /// @param use    share of its capacity that its load uses afterwards, where that can be told
    record Option(Treatment treatment, double lostMl, List<Bar> bars, Optional<Double> use) {
        Option { bars = List.copyOf(bars); }

        boolean holds() { return bars.stream().allMatch(Bar::clears); }

        /// Empty where it would hold.
        List<Refusal> refusals() { return bars.stream().filter(bar -> !bar.clears()).map(bar -> new Refusal(bar.rule(), bar.words().get())).distinct().toList(); }
    }

    private Weighing(Job job) {
        this.job = job;
        this.units = job.units();
        this.strengths = new Strengths(job);
    }

    /// From what asks least to what asks most; where two ask alike, in the order the trade prefers them.
    static List<Option> of(Job job) {
        Weighing weighing = new Weighing(job);
        weighing.leave();
        weighing.recoat();
        weighing.reseat();
        weighing.resin();
        weighing.dutchman();
        weighing.ends();
        weighing.sister();
        weighing.part();
        weighing.replace();
        weighing.options.sort(Comparator.comparingInt((Option option) -> option.treatment().degree()).thenComparingDouble(Option::lostMl));
        return List.copyOf(weighing.options);
    }

    private void add(Treatment treatment, List<Bar> bars, Optional<Double> use) {
        List<Bar> all = new ArrayList<>();
        if (!(treatment instanceof Treatment.Replace || treatment instanceof Treatment.Sister))
            all.add(Bar.not(Rule.HOLLOW_IN_BENDING, Gauge.HOLLOW, job.hollow() && job.bearsLoad() && job.bends(), () -> "it is hollow and bends under load: nobody can say what is left in it"));
        all.addAll(bars);
        if (!(treatment instanceof Treatment.Replace))
            use.filter(_ -> strengths.may() < Double.POSITIVE_INFINITY).ifPresent(share -> all.add(new Bar(Rule.TOO_WEAK, Gauge.USE, share, true, strengths.may(), () -> share >= Combined.BEYOND ? "nothing sound would be left to bear its load" : "its load would use " + Words.significant(share, 2) + " times what it bears")));
        options.add(new Option(treatment, Treatment.woodLostMl(treatment, job.member().sectionMm2(), job.member().lengthMm()), all, use));
    }

    private void leave() {
        List<Bar> bars = shallow();
        if (job.onlyChecked()) bars.add(check(job.checksLookUp() ? 0 : sillwright.work.resin.Checks.DRAINS_MM));
        if (job.bearsLoad()) bars.add(keeps(Rule.FILL_IS_NO_MEMBER, Limits.LEAVE_AREA, () -> "it bears load and keeps only " + Words.percent(job.section().areaKept()) + " of its section"));
        bars.add(Bar.not(Rule.COAT_DOES_NOT_SHED, Gauge.COAT_POOR, job.member().coat() != Member.Coat.SOUND, () -> switch (job.member().coat()) {
            case NONE -> "it stands bare";
            case FAILING -> "its paint is failing";
            case STAIN -> "a stain alone does not keep water out of softened wood";
            case NOT_KNOWN, SOUND -> "nobody noted that its paint is sound";
        }));
        add(new Treatment.Watch("the next round"), bars, strengths.residual);
    }

    private void recoat() {
        List<Bar> bars = shallow();
        if (job.onlyChecked()) bars.add(check(job.checksLookUp() ? sillwright.work.resin.Checks.BRIDGED_MM : sillwright.work.resin.Checks.DRAINS_MM));
        if (job.board()) job.moisture().ifPresent(moisture -> bars.add(new Bar(Rule.WET_BEHIND, Gauge.MOISTURE, moisture, true, Limits.WET_BEHIND,
                () -> "it holds " + Words.percent(moisture) + ", where paint over a back wetter than " + Words.percent(Limits.WET_BEHIND) + " peels again")));
        add(new Treatment.Recoat(job.damage().areaMm2()), bars, strengths.residual);
    }

    /// A board alone can be taken off whole; what is masonry's or the ground's neighbour below stays wet whatever its back.
    private void reseat() {
        if (!job.board() || job.onlyChecked() || job.member().kind() == MemberKind.SASH || job.member().kind() == MemberKind.DOOR) return;
        add(new Treatment.Reseat(job.wideMm() * job.member().lengthMm()), shallow(), strengths.residual);
    }

    private Bar check(double mostMm) {
        double widest = job.widestCheckMm();
        return new Bar(Rule.CHECKS_HOLD_WATER, Gauge.CHECK_WIDTH, widest, true, mostMm, () -> "its checks are " + Words.length(widest, units) + " wide"
                + (job.checksLookUp() ? " and lie open to the sky" : "") + (mostMm > 0 ? ", where " + Words.length(mostMm, units) + " is left or painted over" : ", and would hold water"));
    }

    private List<Bar> shallow() {
        List<Bar> bars = new ArrayList<>();
        if (!job.onlyChecked())
            bars.add(depth(Rule.TOO_DEEP_TO_LEAVE, Limits.SHALLOW_MM, () -> "soft to " + deep() + ", where " + Words.length(Limits.SHALLOW_MM, units) + " is shallow"));
        known(bars);
        ground(bars);
        return bars;
    }

    private Bar depth(Rule rule, double mostMm, java.util.function.Supplier<String> words) { return new Bar(rule, Gauge.DEPTH, job.damage().deepestMm(), true, mostMm, words); }

    private Bar keeps(Rule rule, double least, java.util.function.Supplier<String> words) { return new Bar(rule, Gauge.AREA_KEPT, job.section().areaKept(), false, least, words); }

    private Bar bends(Rule rule, double least, java.util.function.Supplier<String> words) { return new Bar(rule, Gauge.MODULUS_KEPT, job.modulusKept(), false, least, words); }

    private void resin() {
        List<Bar> bars = new ArrayList<>();
        if (job.bearsLoad()) {
            bars.add(keeps(Rule.FILL_IS_NO_MEMBER, Limits.FILL_AREA, () -> "it bears load and keeps " + kept() + "; filler is no structural member"));
            if (!job.pressed()) bars.add(bends(Rule.FILL_IS_NO_MEMBER, Limits.FILL_MODULUS, () -> "it bears load and keeps " + kept() + "; filler is no structural member"));
        }
        double most = Math.min(Limits.FILL_MM, Limits.FILL_SHARE * job.throughMm());
        if (!job.onlyChecked()) bars.add(depth(Rule.FILL_TOO_DEEP, most, () -> "soft to " + deep() + ", where a fill goes to " + Words.length(most, units)));
        double largest = job.seen() ? Limits.FILL_SEEN_ML : Limits.FILL_HIDDEN_ML, soft = job.damage().volumeMl().median();
        bars.add(new Bar(Rule.FILL_TOO_LARGE, Gauge.SOFT_VOLUME, soft, true, largest, () -> Words.wood(soft, units) + " is soft, where a fill holds " + Words.wood(largest, units)));
        bars.add(Bar.not(Rule.FILL_IN_TENSION, Gauge.STRETCHED, job.inTension(), () -> "the soft place is on the stretched underside, where filler is a poor choice"));
        boolean lost = job.moisture().filter(moisture -> moisture > Limits.DRY_ENOUGH).isPresent() && job.water().isEmpty();
        bars.add(Bar.not(Rule.SEALS_WATER_IN, Gauge.WATER_UNKNOWN, lost, () -> "it holds " + Words.percent(job.moisture().orElse(0.0)) + " and nobody found its water: resin would seal it in"));
        job.outlook().filter(_ -> job.tooWet()).ifPresent(outlook -> bars.add(new Bar(Rule.DOES_NOT_DRY, Gauge.DRIES, outlook.openedInAYear(), false, Limits.DRIES,
                () -> "it is " + Words.percent(outlook.openedInAYear()) + " likely to dry within a year once its water is stopped and it is opened, where resin wants dry wood")));
        Season season = season();
        bars.add(new Bar(Rule.TOO_COLD, Gauge.WARMEST, season.warmest(), false, sillwright.work.resin.Resin.LEAST_C, () -> "the warmest month there has " + Words.temperature(season.warmest(), units)
                + ", where resin wants " + Words.temperature(sillwright.work.resin.Resin.LEAST_C, units)));
        known(bars);
        ground(bars);
        beneath(bars);
        double fillMl = Softness.fillMl(job), drink = Softness.consolidantMl(job);
        List<Bar> alone = new ArrayList<>(bars), filled = new ArrayList<>(bars);
        boolean checks = job.onlyChecked();
        alone.add(new Bar(Rule.WOOD_IS_GONE, Gauge.LOST_VOLUME, checks ? 1 : fillMl, true, 0, () -> (checks ? "its checks" : Words.wood(fillMl, units) + " of it")
                + (checks ? " must be filled" : " is gone or will crumble, and must be built up")));
        add(new Treatment.Consolidate(drink), alone, strengths.residual);
        if (fillMl <= 0) return;
        filled.add(Bar.not(Rule.FILL_IN_BENDING, Gauge.BENDING, job.bearsLoad() && job.bends(), () -> "its load bends it, and a fill takes no part in that"));
        add(new Treatment.Fill(drink, fillMl), filled, strengths.residual);
    }

    private Season season() { return Season.of(job.site().months(), job.site().start(), 0); }

    private void dutchman() {
        Patch patch = Patch.of(job);
        List<Bar> bars = new ArrayList<>();
        if (job.bearsLoad()) {
            bars.add(keeps(Rule.PATCH_IS_NO_MEMBER, job.onMasonry() ? Limits.PATCH_KEPT_PRESSED : Limits.PATCH_KEPT, () -> "it bears load and keeps " + kept()));
            if (!job.pressed()) bars.add(bends(Rule.PATCH_IS_NO_MEMBER, Limits.PATCH_KEPT, () -> "it bears load and keeps " + kept()));
        }
        bars.add(new Bar(Rule.PATCH_TOO_DEEP, Gauge.OPENING_DEPTH, patch.depthMm() / job.throughMm(), true, Limits.PATCH_SHARE, () -> "it would go " + Words.length(patch.depthMm(), units) + " into "
                + Words.length(job.throughMm(), units) + ", more than half way through"));
        if (!job.pressed())
            bars.add(new Bar(Rule.PATCH_TOO_LONG, Gauge.OPENING_LENGTH, patch.lengthMm() / job.member().lengthMm(), true, Limits.PATCH_LENGTH, () -> "it would be " + Words.length(patch.lengthMm(), units)
                    + " long in a piece of " + Words.length(job.member().lengthMm(), units)));
        bars.add(new Bar(Rule.PATCH_HAS_NO_SHOULDERS, Gauge.FACES_SOFT, job.facesLost(), true, 2, () -> "soft on " + job.facesLost() + " faces: no sound wood around it to let a patch into"));
        known(bars);
        ground(bars);
        if (!job.pressed()) beneath(bars);
        add(new Treatment.Dutchman(patch.lengthMm(), patch.widthMm(), patch.depthMm()), bars, strengths.opened(patch));
    }

    private void ends() {
        CutLine line = CutLine.of(job.damage(), units);
        if (job.upright() && line.fromStart() && job.member().contact() != Member.Contact.NONE) {
            List<Bar> bars = new ArrayList<>(List.of(renews(line.newMm())));
            bars.add(Bar.not(Rule.BUILD_UP_BEARS_LOAD, Gauge.BEARS_LOAD, job.bearsLoad(), () -> "it bears load"));
            bars.add(new Bar(Rule.BUILD_UP_TOO_TALL, Gauge.HEIGHT, line.newMm(), true, Limits.BUILD_UP_MM, () -> "the base would be " + Words.length(line.newMm(), units) + " high, where "
                    + Words.length(Limits.BUILD_UP_MM, units) + " is the most"));
            pushed(bars, Leaning.SQUARE_KEEPS);
            add(new Treatment.BuildUp(line.newMm()), bars, Optional.empty());
        }
        butt(line);
        halfLap(line);
        scarfs(line);
    }

    private void butt(CutLine line) {
        List<Bar> bars = new ArrayList<>(List.of(renews(line.newMm())));
        bars.add(Bar.not(Rule.BUTT_IN_BENDING, Gauge.BEARS_LOAD, job.bearsLoad() && !job.carriedBeneath(), () -> "it bears load, and a square glued end holds a quarter of the wood's strength at most"));
        bars.add(Bar.not(Rule.BUTT_IN_BENDING, Gauge.ANGLED, job.member().run() == Member.Run.RAKING, () -> "it runs at an angle, and a square glued end holds a quarter of the wood's strength at most"));
        bars.add(Bar.not(Rule.BUTT_TAKES_IN_WATER, Gauge.LIES_WET, job.member().role() == Member.Role.SHEDS_WATER && job.member().run() != Member.Run.UPRIGHT,
                () -> "it lies " + Choice.said(job.member().run()) + " and sheds water: a square joint would stand open to it"));
        pushed(bars, Leaning.SQUARE_KEEPS);
        add(new Treatment.ButtSplice(line.newMm()), bars, Optional.empty());
    }

    private void halfLap(CutLine line) {
        double lap = CutLine.up(HalfLapping.lengthMm(job.member()), units), lapped = Math.min(job.member().lengthMm(), line.newMm() + lap);
        List<Bar> bars = new ArrayList<>(List.of(renews(line.newMm() + lap)));
        bars.add(new Bar(Rule.LAP_WITHOUT_NEED, Gauge.BEARS_LOAD, job.bearsLoad() ? 1 : 0, false, 1, () -> "it bears no load, and a half lap takes more of it than a butt"));
        bars.add(Bar.not(Rule.LAP_IN_BENDING, Gauge.BENDING, job.bearsLoad() && job.bends(), () -> "it bends under its load, and a lapped joint keeps a quarter of the bending strength or so"));
        pushed(bars, Leaning.SQUARE_KEEPS);
        add(new Treatment.HalfLap(lapped, Math.min(lap, lapped)), bars, Joints.halfLap(job, Math.min(lap, lapped), strengths.at(lapped)).strength().map(Joinery.Strength::use));
    }

    private void scarfs(CutLine line) {
        for (Scarfing scarf : Scarfing.of(job, line, strengths)) {
            double reach = line.newMm() + scarf.lengthMm(), whole = Math.min(job.member().lengthMm(), reach);
            List<Bar> bars = new ArrayList<>(List.of(renews(reach)));
            if (job.bearsLoad() && job.bends())
                bars.add(new Bar(Rule.JOINT_AT_GREATEST_BENDING, Gauge.REACH, reach / job.member().lengthMm(), true, Limits.JOINT_SHARE,
                        () -> "the joint would reach " + Words.length(reach, units) + " in, past a quarter of the span"));
            if (scarf.nibMm() > 0) bars.add(new Bar(Rule.NO_ROOM_FOR_NIBS, Gauge.THICKNESS, job.thinMm(), false, Limits.NIB_FROM_MM, () -> "it is " + Words.length(job.thinMm(), units)
                    + " thick, where nibs want " + Words.length(Limits.NIB_FROM_MM, units)));
            pushed(bars, Joinery.scarfKeeps(job.thinMm(), scarf.slope(), scarf.nibMm(), false));
            add(new Treatment.ScarfSplice(whole, scarf.slope(), Math.min(scarf.lengthMm(), whole), scarf.nibMm()), bars, scarf.use());
        }
    }

    private void sister() {
        boolean kind = switch (job.member().kind()) {
            case BEAM, JOIST, STRINGER -> true;
            default -> false;
        };
        if (!kind || !job.bearsLoad() || !job.bends()) return;
        double thin = job.member().run() == Member.Run.OUTWARD ? job.member().widthMm() : job.member().depthMm();
        double wanted = strengths.whole.map(whole -> thin * whole).orElse(thin), thick = CutLine.up(Math.max(Limits.SISTER_THIN_MM, wanted), units);
        List<Bar> bars = new ArrayList<>();
        bars.add(keeps(Rule.SISTER_HAS_NO_HOLD, Limits.SISTER_KEPT, () -> "it keeps " + Words.percent(job.section().areaKept()) + " of its section: too little sound wood for the bolts"));
        bars.add(Bar.not(Rule.SISTER_HAS_NO_HOLD, Gauge.HOLLOW, job.hollow(), () -> "it is hollow: nobody can say what the bolts would hold in"));
        bars.add(new Bar(Rule.SISTER_TOO_THICK, Gauge.SISTER_THICKNESS, thick / thin, true, Limits.SISTER_THICK, () -> "a sister that bears the whole load would be " + Words.length(thick, units)
                + " thick beside " + Words.length(thin, units)));
        bars.add(Bar.not(Rule.SISTER_IN_SIGHT, Gauge.ORNAMENT_SEEN, Worth.of(job.member()) == Worth.ORNAMENT, () -> "it is ornament in plain view, and a sister would stand beside it"));
        ground(bars);
        add(new Treatment.Sister(0, job.member().lengthMm(), thick), bars, strengths.whole.map(whole -> whole * thin / thick));
    }

    private void part() {
        if (!job.board() && !job.carriedBeneath() || job.damage().atAnEnd() || job.onlyChecked()) return;
        double length = job.member().lengthMm(), from = Math.max(0, CutLine.down(job.damage().fromMm() - Limits.PART_PAST_MM, units)), to = Math.min(length, CutLine.up(job.damage().toMm() + Limits.PART_PAST_MM, units));
        List<Bar> bars = new ArrayList<>();
        bars.add(new Bar(Rule.PART_IS_MOST_OF_IT, Gauge.RENEWED, (to - from) / length, true, Limits.PART_SHARE, () -> "it would renew " + Words.length(to - from, units) + " of " + Words.length(length, units)));
        double stub = Math.min(from, length - to);
        bars.add(new Bar(Rule.PART_LEAVES_A_STUB, Gauge.STUB, stub, false, Limits.STUB_MM, () -> "it would leave a stub of " + Words.length(stub, units) + " at the end, where " + Words.length(Limits.STUB_MM, units) + " can still be fixed"));
        add(new Treatment.ReplacePart(from, to), bars, Optional.empty());
    }

    /// New wood from an end may be so much of a piece, more where the piece is ornament.
    private Bar renews(double newMm) {
        double length = job.member().lengthMm();
        return new Bar(Rule.SPLICE_LEAVES_TOO_LITTLE, Gauge.RENEWED, Math.min(1, newMm / length), true, Worth.of(job.member()).renew(), () -> "it would renew " + Words.length(Math.min(length, newMm), units) + " of "
                + Words.length(length, units));
    }

    private void replace() {
        add(new Treatment.Replace(job.hollow() && job.bearsLoad() && job.bends() ? "hollow, and it bends under load"
                : "soft over " + Words.length(job.damage().lengthMm(), units) + " of " + Words.length(job.member().lengthMm(), units)
                + ", " + kept() + " left at the worst"), List.of(), strengths.whole);
    }

    private void known(List<Bar> bars) {
        bars.add(Bar.not(Rule.DEPTH_NOT_KNOWN, Gauge.DEPTH_UNKNOWN, job.damage().ranOut(), () -> "a probe ran out at its limit here: it may be soft further in than " + deep()));
    }

    private void ground(List<Bar> bars) { bars.add(Bar.not(Rule.STANDS_WET, Gauge.IN_GROUND, job.inTheGround(), () -> "it is in the ground and would stay wet")); }

    /// What is soft on its underside can be reached only where there is room below it.
    private void beneath(List<Bar> bars) {
        boolean soft = job.softBeneath();
        double room = job.member().contact() != Member.Contact.NONE && job.member().run() != Member.Run.UPRIGHT ? 0 : job.member().above().own();
        bars.add(new Bar(Rule.NO_ROOM_BENEATH, Gauge.CLEARANCE, soft ? room : Limits.BENEATH_MM, false, Limits.BENEATH_MM, () -> room > 0 ? "its underside is soft, and " + Words.length(room, units) + " of room beneath it is too little to work in, where "
                + Words.length(Limits.BENEATH_MM, units) + " is wanted" : "its underside is soft, and it lies on something all along: there is no room beneath it to work in"));
    }

    /// Whoever leans on it bends the joint.
    private void pushed(List<Bar> bars, double keeps) {
        Leaning leaning = Leaning.on(job.member());
        if (leaning.pushN() == 0) return;
        bars.add(new Bar(Rule.PUSHED_SIDEWAYS, Gauge.PUSH, leaning.use(keeps), true, leaning.may(), () -> "a push of " + Words.force(leaning.pushN(), units) + " from somebody who leans on it would use "
                + Words.significant(leaning.use(keeps), 2) + " times what such a joint bears"));
    }

    private String deep() { return Words.length(job.damage().deepestMm(), units); }

    private String kept() {
        return Words.percent(job.section().areaKept()) + " of its area and " + Words.percent(job.modulusKept()) + " of its bending modulus";
    }
}
