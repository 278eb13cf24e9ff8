package sillwright.wood;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import sillwright.measure.Basis;
import sillwright.measure.Memo;
import sillwright.measure.SplitMix;
import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.ProbeReading;
import sillwright.walk.Sighting;
import sillwright.walk.Sign;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings;
import sillwright.wood.drying.Transport;
import sillwright.wood.weather.Normals;
import sillwright.wood.moisture.Moisture;

/// The stage: the condition of every member.
public final class Wood {
    /// Wetter than rain on its face alone would leave it: something that nobody found yet wets it. Own choice: the limit above which wood
    /// counts as at risk.
    private static final double UNEXPLAINED_AT = 0.20;

    /// A smaller share than this is not worth a word.
    private static final double LEAST_HIDDEN = 0.01;

    private Wood() {}

    /// The moisture that wood is dried to before it is treated, a fraction.
    public static final double TREATED_AT = 0.16;

    /// @param water    whose likely sources wet the members
    /// @param startDay the day of the year on which the water may be stopped, 0 to 364
    /// @param seed     for the draws; each member draws for itself, so that one more member changes no other
    /// @param progress told each member's name as it begins
    public static WoodFindings find(Survey survey, WaterFindings water, int startDay, long seed, Consumer<String> progress) {
        return find(survey, water, startDay, seed, progress, Memo.NONE, Transport.PLAIN);
    }

    /// @param memo      what was worked before
    /// @param transport moves the moisture
    public static WoodFindings find(Survey survey, WaterFindings water, int startDay, long seed, Consumer<String> progress, Memo memo, Transport transport) {
        List<String> gaps = new ArrayList<>();
        WoodFindings probed = probed(survey, seed, gaps, progress, memo);
        Map<String, Outlook> outlooks = outlooks(survey, water, probed.conditions(), startDay, seed, gaps, progress, memo, transport);
        return new WoodFindings(probed.conditions(), outlooks, probed.capacities(), alone(survey, water, probed.conditions(), outlooks, seed, memo, transport), gaps);
    }

    /// The conditions and what they bear as they would now be, and the outlook as it was: the weather of many years takes longer to work than a reader waits.
    public static WoodFindings soon(Survey survey, long seed, Memo memo, WoodFindings before) {
        WoodFindings probed = probed(survey, seed, new ArrayList<>(), member -> {}, memo);
        return new WoodFindings(probed.conditions(), before.outlooks(), probed.capacities(), before.alone(), before.gaps());
    }

    private static WoodFindings probed(Survey survey, long seed, List<String> gaps, Consumer<String> progress, Memo memo) {
        Map<String, Condition> all = new LinkedHashMap<>();
        if (survey.probes().isEmpty()) gaps.add("No probe reading was taken: how deep the wood has gone is not known. Probe where it is dark, wet or soft, and at every foot and end.");
        if (survey.moistures().isEmpty()) gaps.add("No moisture reading was taken: whether wood is dry enough to mend is not known. Meter each damaged piece 6 in from the damage.");
        List<Studied> studied = new ArrayList<>(), fresh = new ArrayList<>();
        for (Member member : survey.members().values()) studied.add(new Studied(survey.about(member), member, Loads.demand(survey, member), seed));
        for (Studied one : studied) {
            if (memo.known(one).isPresent()) continue;
            progress.accept(one.member.title().isEmpty() ? one.member.id() : one.member.title());
            fresh.add(one);
        }
        Map<Studied, Condition> worked = new IdentityHashMap<>();
        List<Condition> conditions = memo.sideBySide(fresh.size(), i -> condition(fresh.get(i), seed ^ fresh.get(i).member.id().hashCode() * 0x9E3779B97F4A7C15L, memo));
        for (int i = 0; i < fresh.size(); i++) worked.put(fresh.get(i), conditions.get(i));
        for (Studied one : studied) all.put(one.member.id(), memo.of(one, () -> worked.get(one)));
        List<String> bearing = all.values().stream().filter(c -> c.member().bearsLoad() && c.state() == Condition.State.NOT_PROBED).map(c -> c.member().title()).toList();
        if (!bearing.isEmpty() && !survey.probes().isEmpty()) gaps.add("Not probed, and they bear load: " + Words.list(bearing) + ".");
        Map<String, Capacity> capacities = new LinkedHashMap<>();
        for (Condition condition : all.values()) Loads.capacity(survey, condition).ifPresent(capacity -> capacities.put(condition.member().id(), capacity));
        return new WoodFindings(all, Map.of(), capacities, gaps);
    }

    /// What each of several sources of one member brings, followed in the same weather.
    private static List<Alone> alone(Survey survey, WaterFindings water, Map<String, Condition> conditions, Map<String, Outlook> outlooks, long seed, Memo memo, Transport transport) {
        List<String> sources = new ArrayList<>();
        List<Wetting> wettings = new ArrayList<>();
        for (String member : outlooks.keySet()) {
            List<WaterFindings.RankedSource> wets = water.wetting(member);
            if (wets.size() < 2) continue;
            for (WaterFindings.RankedSource source : wets) {
                sources.add(source.id());
                wettings.add(Exposures.without(conditions.get(member), wets, source));
            }
        }
        if (wettings.isEmpty()) return List.of();
        Normals normals = survey.building().flatMap(Normals::of).orElseThrow();
        List<Outlooks.Left> left = memo.of(new Followed(wettings, normals, seed), () -> Outlooks.left(wettings, normals, new SplitMix(seed), transport));
        List<Alone> all = new ArrayList<>();
        for (int i = 0; i < left.size(); i++)
            all.add(new Alone(sources.get(i), wettings.get(i).member().id(), left.get(i).hours(), left.get(i).moisture(), left.get(i).forecast().yearsToNext().map(Interval::median)));
        return List.copyOf(all);
    }

    private record Followed(List<Wetting> wettings, Normals normals, long seed) {}

    private static Map<String, Outlook> outlooks(Survey survey, WaterFindings water, Map<String, Condition> conditions, int startDay, long seed, List<String> gaps,
                                                 Consumer<String> progress, Memo memo, Transport transport) {
        Optional<Normals> normals = survey.building().flatMap(Normals::of);
        if (normals.isEmpty()) {
            gaps.add("Without monthly normals of the weather, how long the wood takes to dry and how decay would go on are not worked: give them with the building.");
            return Map.of();
        }
        List<Wetting> wettings = new ArrayList<>();
        for (Condition condition : conditions.values()) {
            List<WaterFindings.RankedSource> sources = water.wetting(condition.member().id());
            boolean unexplained = sources.isEmpty() && condition.wettest().filter(wettest -> wettest > UNEXPLAINED_AT).isPresent();
            if (!unexplained) wettings.add(Exposures.of(condition, sources));
        }
        Map<String, Outlook> known = new LinkedHashMap<>(), outlooks = new LinkedHashMap<>();
        List<Wetting> fresh = new ArrayList<>();
        for (Wetting wetting : wettings)
            memo.<Outlook>known(new Foreseen(wetting, normals.get(), startDay, seed)).ifPresentOrElse(outlook -> known.put(outlook.member(), outlook), () -> fresh.add(wetting));
        progress.accept("the weather of the years to come, on " + Words.count(fresh.size(), "member"));
        List<Outlook> worked = Outlooks.of(fresh, normals.get(), startDay, TREATED_AT, new SplitMix(seed), transport, memo);
        for (int i = 0; i < worked.size(); i++) {
            Outlook outlook = worked.get(i);
            known.put(outlook.member(), memo.of(new Foreseen(fresh.get(i), normals.get(), startDay, seed), () -> outlook));
        }
        for (Wetting wetting : wettings) outlooks.put(wetting.member().id(), known.get(wetting.member().id()));
        return outlooks;
    }

    /// All that a member's condition rests on.
    private record Studied(Survey survey, Member member, Optional<Demand> demand, long seed) {}

    /// All that a member's outlook rests on.
    private record Foreseen(Wetting wetting, Normals normals, int startDay, long seed) {}

    private static Condition condition(Studied studied, long seed, Memo memo) {
        Survey survey = studied.survey;
        Member member = studied.member;
        Map<Member.Face, List<ProbeReading>> probes = new EnumMap<>(Member.Face.class);
        int readings = 0;
        for (Member.Face face : member.faces()) {
            probes.put(face, survey.probesOn(member.id(), face));
            readings += probes.get(face).size();
        }
        MemberStudy study = new MemberStudy(member, probes, seed, memo);
        List<Condition.Corrected> moisture = new ArrayList<>();
        for (MoistureReading reading : survey.moisturesOn(member.id())) moisture.add(corrected(reading));
        Optional<Double> wettest = moisture.stream().map(Condition.Corrected::moisture).max(Double::compare);
        List<Damage> damages = Damages.of(study);
        Condition.State state = state(survey, member, damages, readings);
        List<Basis> basis = damages.isEmpty() ? List.of(Decay.TOLERANCE) : List.of(Decay.TOLERANCE, Decay.FIELD, Decay.MARGIN);
        Optional<Governing> governing = studied.demand.filter(_ -> !damages.isEmpty()).flatMap(demand -> Capacity.stations(member, demand)).map(use -> study.governing(use, damages));
        return new Condition(member, state, study.maps(), damages, wettest, moisture, readings, words(state, damages, readings, study), basis, study.next(), governing, study.hiddenShare());
    }

    private static Condition.Corrected corrected(MoistureReading reading) {
        double shown = reading.reading().own();
        double moisture = reading.wood().map(temp -> Moisture.fromMeter(shown, temp.own())).orElse(shown);
        return new Condition.Corrected(reading.spot().alongMm(), shown, moisture, Moisture.withinMeter(moisture));
    }

    private static Condition.State state(Survey survey, Member member, List<Damage> damages, int readings) {
        boolean soundsHollow = false;
        for (Survey.Noted<Sighting> noted : survey.sightings()) {
            Sighting sighting = noted.what();
            soundsHollow |= sighting.seen() && sighting.sign() == Sign.HOLLOW_SOUND && sighting.member().filter(member.id()::equals).isPresent();
        }
        boolean ranOut = damages.stream().anyMatch(Damage::ranOut);
        if (soundsHollow && (ranOut || readings == 0)) return Condition.State.HOLLOW;
        if (readings == 0) return Condition.State.NOT_PROBED;
        if (damages.isEmpty()) return Condition.State.SOUND;
        boolean deep = damages.stream().anyMatch(damage -> damage.ranOut() || damage.deepestMm() > 12 || damage.section().areaKept() < 0.8);
        return deep ? Condition.State.DECAYED : Condition.State.SOFTENED;
    }

    private static String words(Condition.State state, List<Damage> damages, int readings, MemberStudy study) {
        return words(state, damages, readings) + study.hiddenShare().filter(share -> share.high() >= LEAST_HIDDEN).map(share -> " Between readings that were sound up to "
                + Words.percent(share.high()) + " of the skin of those faces may still be soft, one time in twenty.").orElse("")
                + (study.overlaps().isEmpty() ? "" : " Readings from opposite faces went in further than there is wood, " + Words.count(study.overlaps().size(), "time")
                + ": if it is not soft right through there, one of them is wrong; push again.");
    }

    private static String words(Condition.State state, List<Damage> damages, int readings) {
        String at = Words.count(damages.size(), "soft stretch").replace("stretchs", "stretches");
        return switch (state) {
            case NOT_PROBED -> "Not probed: its condition is not known.";
            case SOUND -> "Sound at " + Words.count(readings, "reading") + ".";
            case SOFTENED -> "Softened: " + at + ", shallow.";
            case DECAYED -> "Decayed: " + at + ".";
            case HOLLOW -> damages.isEmpty() ? "Sounds hollow, and was not probed." : "Hollow: a probe ran out where it sounds hollow.";
        };
    }
}
