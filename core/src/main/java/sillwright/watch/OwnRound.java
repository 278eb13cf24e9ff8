package sillwright.watch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.water.WaterFindings;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.watch.WatchFindings.Check;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.WoodFindings;
import sillwright.work.Place;
import sillwright.work.Repair;
import sillwright.work.Treatment;
import sillwright.work.WorkFindings;

/// What is looked at on this building alone: its repairs, the water that was stopped, what was wet.
final class OwnRound {
    /// Wood outdoors and in good order is drier than this; decay wants more than 20 %.
    /// Source: lumber in sound buildings 8 to 15 %, decay stops at 20 % or less (read, Forest Products Laboratory's notes).
    static final double DRY = 0.15, WET = 0.18;
    /// A source less likely than that is not watched by name.
    private static final double WORTH_WATCHING = 0.25;
    /// Where a foot is metered that nobody metered before: 6 in from its end.
    private static final double FROM_END_MM = 152.4;

    private final Units units;
    private final List<Draft> drafts = new ArrayList<>();

    private OwnRound(Units units) { this.units = units; }

    static List<Draft> of(WaterFindings water, WoodFindings wood, WorkFindings work, Units units) {
        OwnRound round = new OwnRound(units);
        Set<String> repaired = new HashSet<>();
        for (Repair repair : work.repairs()) {
            repaired.add(repair.damage().member().id());
            round.repair(repair, wood.of(repair.damage().member().id()));
        }
        for (RankedSource source : water.sources()) if (source.probability() >= WORTH_WATCHING) round.source(source);
        for (Condition condition : wood.all()) if (!repaired.contains(condition.member().id())) round.wet(condition);
        return List.copyOf(round.drafts);
    }

    private void repair(Repair repair, Condition condition) {
        Damage damage = repair.damage();
        Member member = damage.member();
        if (repair.urgent())
            add(member, damage.fromMm(), "look first at " + Place.of(damage, units) + ": props tight, nobody beneath, engineer called", "repair not yet made",
                    "stands on its props until it is mended, then as the engineer left it", repair.id(), Draft.DANGER);
        Optional<Condition.Corrected> reading = nearest(condition, damage);
        double at = reading.map(Condition.Corrected::alongMm).orElse(damage.atFarEnd() && !damage.atStart() ? member.lengthMm() - Math.min(FROM_END_MM, member.lengthMm() / 2)
                : Math.min(damage.fromMm() + FROM_END_MM, member.lengthMm() / 2));
        add(member, at, "meter " + spot(member, damage, at), reading.map(last -> Words.percent(last.moisture())).orElse("not metered"),
                Words.percent(DRY) + " or less", repair.id(), Draft.REPAIR);
        probe(repair, member, damage);
        switch (repair.treatment()) {
            case Treatment.Watch _, Treatment.Recoat _ -> {}
            case Treatment.Consolidate _ -> firstYear(repair, "press the fill's edges and look for a crack round it", "no crack, no give");
            case Treatment.Dutchman _, Treatment.BuildUp _, Treatment.ButtSplice _, Treatment.HalfLap _,
                 Treatment.ScarfSplice _ ->
                    firstYear(repair, "look along the joint for a crack in the paint, and tap the new wood", "no crack, no hollow sound");
            case Treatment.Replace _ -> firstYear(repair, "look at its joints and ends for a crack in the paint", "no crack, ends painted");
        }
    }

    private void probe(Repair repair, Member member, Damage damage) {
        String last = "soft to " + Words.length(damage.deepestMm(), units) + (damage.ranOut() ? " at least" : "");
        switch (repair.treatment()) {
            case Treatment.Watch _ -> add(member, damage.fromMm(), "probe " + Place.of(damage, units) + ", " + Choice.said(damage.worst()) + " face, at the same spots", last,
                    "no deeper than " + Words.length(damage.deepestMm(), units), repair.id(), Draft.REPAIR - 1);
            case Treatment.Recoat _, Treatment.Consolidate _, Treatment.Dutchman _, Treatment.BuildUp _, Treatment.ButtSplice _, Treatment.HalfLap _,
                 Treatment.ScarfSplice _ ->
                    add(member, damage.toMm(), "push an awl into the old wood beside the repair at " + Place.of(damage, units), last + " before the repair", "hard all round",
                            repair.id(), Draft.REPAIR - 1);
            case Treatment.Replace _ -> {}
        }
    }

    private void firstYear(Repair repair, String words, String expected) {
        Damage damage = repair.damage();
        add(damage.member(), damage.fromMm(), "in the first year after " + repair.id() + " (" + repair.treatment().words() + "), " + Place.of(damage, units) + ": " + words, "new", expected,
                repair.id(), Draft.FIRST_YEAR);
    }

    private void source(RankedSource source) {
        boolean stopped = source.probability() >= WaterFindings.LIKELY;
        String words = stopped && !source.remedies().isEmpty()
                ? "against " + source.source().words() + (source.place().isEmpty() ? "" : " (" + source.place() + ")") + ", see that this still does its work: " + source.remedies().getFirst().words()
                : "watch in rain for " + source.source().words() + (source.place().isEmpty() ? "" : ", " + source.place());
        drafts.add(new Draft(new Check(source.side(), Optional.empty(), words, Words.percent(source.probability()) + " likely at the walk", "no water from it in hard rain", source.id()),
                source.aboveMm(), (stopped ? Draft.SOURCE : Draft.SMALL) + source.probability(), Draft.BOTH));
    }

    private void wet(Condition condition) {
        condition.moisture().stream().filter(reading -> reading.moisture() > WET).max(Comparator.comparingDouble(Condition.Corrected::moisture)).ifPresent(reading ->
                add(condition.member(), reading.alongMm(), "meter " + condition.member().title() + ", " + Place.at(condition.member(), reading.alongMm(), units),
                        Words.percent(reading.moisture()), Words.percent(DRY) + " or less", "", Draft.WET + reading.moisture()));
    }

    /// The wettest reading in or near the damage.
    private static Optional<Condition.Corrected> nearest(Condition condition, Damage damage) {
        return condition.moisture().stream().filter(reading -> reading.alongMm() >= damage.fromMm() - FROM_END_MM && reading.alongMm() <= damage.toMm() + FROM_END_MM)
                .max(Comparator.comparingDouble(Condition.Corrected::moisture));
    }

    /// `the foot of porch post 3, 6 in up`
    private String spot(Member member, Damage damage, double alongMm) {
        return damage.atAnEnd() ? "the " + Place.of(damage, units) + ", " + Place.at(member, alongMm, units) : member.title() + ", " + Place.at(member, alongMm, units);
    }

    private void add(Member member, double alongMm, String words, String last, String expected, String because, double weight) {
        double above = member.above().own() + (member.run() == Member.Run.UPRIGHT ? alongMm : 0);
        drafts.add(new Draft(new Check(member.side(), Optional.of(member.id()), words, last, expected, because), above, weight, Draft.BOTH));
    }
}
