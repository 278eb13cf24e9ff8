package sillwright.watch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.Spot;
import sillwright.walk.Survey;
import sillwright.walk.WorkDone;
import sillwright.water.Source;
import sillwright.water.WaterFindings;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.watch.Draft.When;
import sillwright.watch.WatchFindings.Ask;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.WoodFindings;
import sillwright.work.Place;
import sillwright.work.Repair;
import sillwright.work.Treatment;
import sillwright.work.WorkFindings;

/// What is looked at on this building alone: its repairs, made or to be made, the water that was stopped, what was wet.
final class OwnRound {
    /// Wood outdoors and in good order is drier than this; decay wants more than 20 %.
    /// Source: lumber in sound buildings 8 to 15 %, decay stops at 20 % or less (read, Forest Products Laboratory's notes).
    static final double DRY = 0.15, WET = 0.18;
    /// A source less likely than that is not watched by name.
    private static final double WORTH_WATCHING = 0.25;
    /// Where a foot is metered that nobody metered before: 6 in from its end.
    private static final double FROM_END_MM = 152.4;

    private final Survey survey;
    private final Units units;
    private final List<Draft> drafts = new ArrayList<>();

    private OwnRound(Survey survey, Units units) {
        this.survey = survey;
        this.units = units;
    }

    static List<Draft> of(Survey survey, WaterFindings water, WoodFindings wood, WorkFindings work, Units units) {
        OwnRound round = new OwnRound(survey, units);
        Set<String> told = new HashSet<>();
        for (Repair repair : work.repairs()) {
            told.add(repair.damage().member().id());
            round.repair(repair, wood.of(repair.damage().member().id()));
        }
        for (Survey.Noted<WorkDone> noted : survey.works()) round.made(noted.what(), told);
        for (RankedSource source : water.sources()) if (source.probability() >= WORTH_WATCHING) round.source(source);
        for (Condition condition : wood.all()) if (!told.contains(condition.member().id())) round.wet(condition);
        return List.copyOf(round.drafts);
    }

    private void repair(Repair repair, Condition condition) {
        Damage damage = repair.damage();
        Member member = damage.member();
        String title = Place.of(damage, units);
        if (repair.urgent())
            add(member, damage.fromMm(), title, Draft.look("look before you go near: props tight, nobody beneath, engineer called", "not yet mended", "stands on its props until mended, then as the engineer left it"),
                    repair.id(), Draft.DANGER, 3, Draft.WATER);
        Optional<Condition.Corrected> reading = nearest(condition, damage);
        double at = reading.map(Condition.Corrected::alongMm).orElse(damage.atFarEnd() && !damage.atStart() ? member.lengthMm() - Math.min(FROM_END_MM, member.lengthMm() / 2)
                : Math.min(damage.fromMm() + FROM_END_MM, member.lengthMm() / 2));
        add(member, at, title, Draft.meter("meter, " + Place.at(member, at, units), reading.map(last -> Words.percent(last.moisture())).orElse("not metered"), Words.percent(DRY) + " or less",
                spot(member, damage.worst(), at)), repair.id(), Draft.REPAIR, 2, Draft.BOTH);
        String soft = "soft to " + Words.length(damage.deepestMm(), units) + (damage.ranOut() ? " at least" : "");
        boolean left = repair.treatment() instanceof Treatment.Watch;
        Optional<Spot> deepest = survey.probesOn(member.id(), damage.worst()).stream().filter(probe -> probe.spot().alongMm() >= damage.fromMm() && probe.spot().alongMm() <= damage.toMm())
                .max(Comparator.comparingDouble(probe -> probe.depthMm())).map(probe -> probe.spot());
        add(member, damage.fromMm(), title, left
                ? Draft.probe("probe the " + Choice.said(damage.worst()) + " face again at the same spots", soft, "no deeper than " + Words.length(damage.deepestMm(), units), deepest)
                : Draft.probe("push an awl in beside the repair; while it waits, at the same spots", soft, "hard once mended; no deeper until then", deepest), repair.id(), Draft.REPAIR - 1, 2, Draft.BOTH);
    }

    /// What was made is looked at by its joints and its coat, closely in the first two years.
    private void made(WorkDone work, Set<String> told) {
        Optional<Member> member = work.member().map(id -> survey.members().get(id));
        if (member.isEmpty() || !work.done().onWood()) return;
        double from = work.from().map(Quantity::own).orElse(0.0), to = work.to().map(Quantity::own).orElse(member.get().lengthMm());
        String title = from <= 0 && to < member.get().lengthMm() ? Place.start(member.get()) + " of " + member.get().title()
                : to >= member.get().lengthMm() - 1 && from > 0 ? Place.farEnd(member.get()) + " of " + member.get().title() : member.get().title();
        String since = work.said() + " " + work.on();
        add(member.get(), from, title, Draft.look(switch (work.done()) {
            case RECOAT -> "look at the coat, end grain first";
            case FILL, CONSOLIDATE -> "press the fill's edges and look for a crack round it";
            case REPLACE -> "look at its joints and ends for a crack in the paint";
            case DUTCHMAN, BUILD_UP, BUTT_SPLICE, HALF_LAP, SCARF_SPLICE -> "look along the joint for a crack in the paint, and tap the new wood";
            case SHORE, STOP_WATER, CLEAN, DRY, OTHER -> "look at it";
        }, since, work.done() == WorkDone.Done.RECOAT ? "whole, ends sealed" : "no crack, no hollow sound"), since, Draft.FIRST_YEAR, 2, Draft.BOTH);
        if (!told.add(member.get().id())) return;
        double at = Math.min(Math.max(from, 0) + FROM_END_MM, member.get().lengthMm() / 2);
        meter(member.get(), at, title, since, Draft.REPAIR);
    }

    /// The place metered last near a point, or the point itself.
    private void meter(Member member, double alongMm, String title, String because, double weight) {
        Optional<MoistureReading> last = survey.moisturesOn(member.id()).stream().min(Comparator.comparingDouble(reading -> Math.abs(reading.spot().alongMm() - alongMm)));
        double at = last.map(reading -> reading.spot().alongMm()).orElse(alongMm);
        add(member, at, title, Draft.meter("meter, " + Place.at(member, at, units), last.map(reading -> Words.percent(reading.reading().own())).orElse("not metered"), Words.percent(DRY) + " or less",
                last.map(MoistureReading::spot).orElse(spot(member, member.faces().getFirst(), at))), because, weight, 2, Draft.BOTH);
    }

    /// What stops a source is seen to at the place of the source; several sources of one gutter are one stop.
    private void source(RankedSource source) {
        boolean stopped = source.probability() >= WaterFindings.LIKELY;
        Optional<String> edge = survey.sides().containsKey(source.side()) ? survey.sides().get(source.side()).edges().stream().map(one -> one.id()).filter(id -> source.place().contains(id)).findFirst()
                : Optional.empty();
        boolean ofGutter = edge.isPresent() && switch (source.source()) {
            case GUTTER_CLOGGED, GUTTER_TOO_SMALL, GUTTER_HUNG_BADLY, GUTTER_JOINT_LEAKS, ROOF_EDGE_DRIPS_BEHIND, DOWNSPOUT_AT_WALL -> true;
            default -> false;
        };
        String stop = ofGutter ? CommonRound.edge(source.side(), edge.get()) : "source " + source.side() + "/" + source.place();
        String title = ofGutter ? "gutter of the " + edge.get() + " edge" : source.place().isEmpty() ? "along the wall" : source.place();
        String words = stopped && !source.remedies().isEmpty() ? "is this done, and does it do its work: " + brief(source.remedies().getFirst().words()) : "watch in rain for " + source.source().words();
        drafts.add(new Draft(stop, title, source.side(), Optional.empty(), ofGutter, source.leftMm(), source.aboveMm(),
                Draft.look(words, source.source().words() + ", " + Words.chance(source.probability()) + " likely", "no water from it"), source.id(),
                (stopped ? Draft.SOURCE : Draft.SMALL) + source.probability(), 3, stopped ? Draft.WATER : List.of(When.STORM)));
    }

    /// The first clause of a remedy, without its dimensions' tail and cautions.
    private static String brief(String words) {
        int end = words.indexOf(';');
        return end < 0 ? words : words.substring(0, end);
    }

    private void wet(Condition condition) {
        condition.moisture().stream().filter(reading -> reading.moisture() > WET).max(Comparator.comparingDouble(Condition.Corrected::moisture)).ifPresent(reading ->
                add(condition.member(), reading.alongMm(), condition.member().title(), Draft.meter("meter, " + Place.at(condition.member(), reading.alongMm(), units),
                        Words.percent(reading.moisture()), Words.percent(DRY) + " or less", spot(condition.member(), condition.member().faces().getFirst(), reading.alongMm())), "",
                        Draft.WET + reading.moisture(), 2, Draft.BOTH));
    }

    /// The wettest reading in or near the damage.
    private static Optional<Condition.Corrected> nearest(Condition condition, Damage damage) {
        return condition.moisture().stream().filter(reading -> reading.alongMm() >= damage.fromMm() - FROM_END_MM && reading.alongMm() <= damage.toMm() + FROM_END_MM)
                .max(Comparator.comparingDouble(Condition.Corrected::moisture));
    }

    /// Where the meter was put before on that stretch, else the middle of the face.
    private Spot spot(Member member, Member.Face face, double alongMm) {
        return survey.moisturesOn(member.id()).stream().map(MoistureReading::spot).filter(spot -> Math.abs(spot.alongMm() - alongMm) < 1).findFirst()
                .orElseGet(() -> new Spot(member.id(), face, mm(alongMm), mm(member.acrossMm(face) / 2)));
    }

    private static Quantity mm(double value) { return new Quantity(Math.round(value), Unit.MILLIMETRE, Math.round(value) + " mm"); }

    private void add(Member member, double alongMm, String title, Ask ask, String because, double weight, double minutes, List<When> when) {
        boolean upright = member.run() == Member.Run.UPRIGHT;
        drafts.add(new Draft("member " + member.id() + " " + title, title, member.side(), Optional.of(member.id()), false, member.left().own() + (upright ? 0 : alongMm),
                member.above().own() + (upright ? alongMm : 0), ask, because, weight, minutes, when));
    }
}
