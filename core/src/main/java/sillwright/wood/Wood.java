package sillwright.wood;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;

import sillwright.measure.Basis;
import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.ProbeReading;
import sillwright.walk.Sighting;
import sillwright.walk.Sign;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings;
import sillwright.wood.weather.Normals;
import sillwright.wood.moisture.Moisture;

/// The stage: the condition of every member.
public final class Wood {
    /// Soft stretches nearer to each other than this are one damage, mm.
    private static final double ONE_DAMAGE_MM = 100;

    /// Wetter than rain on its face alone would leave it: something that nobody found yet wets it. Own choice: the limit above which wood
    /// counts as at risk.
    private static final double UNEXPLAINED_AT = 0.20;

    private Wood() {}

    /// The moisture that wood is dried to before it is treated, a fraction.
    public static final double TREATED_AT = 0.16;

    /// @param water    whose likely sources wet the members
    /// @param startDay the day of the year on which the water may be stopped, 0 to 364
    /// @param seed     for the draws; each member draws for itself, so that one more member changes no other
    /// @param progress told each member's name as it begins
    public static WoodFindings find(Survey survey, WaterFindings water, int startDay, long seed, Consumer<String> progress) {
        Map<String, Condition> all = new LinkedHashMap<>();
        List<String> gaps = new ArrayList<>();
        if (survey.probes().isEmpty()) gaps.add("No probe reading was taken: how deep the wood has gone is not known. Probe where it is dark, wet or soft, and at every foot and end.");
        if (survey.moistures().isEmpty()) gaps.add("No moisture reading was taken: whether wood is dry enough to mend is not known. Meter each damaged piece 6 in from the damage.");
        for (Member member : survey.members().values()) {
            progress.accept(member.title().isEmpty() ? member.id() : member.title());
            all.put(member.id(), condition(survey, member, new SplitMix(seed ^ member.id().hashCode() * 0x9E3779B97F4A7C15L)));
        }
        List<String> bearing = all.values().stream().filter(c -> c.member().bearsLoad() && c.state() == Condition.State.NOT_PROBED).map(c -> c.member().title()).toList();
        if (!bearing.isEmpty() && !survey.probes().isEmpty()) gaps.add("Not probed, and they bear load: " + Words.list(bearing) + ".");
        Map<String, Capacity> capacities = new LinkedHashMap<>();
        for (Condition condition : all.values()) Loads.capacity(survey, condition).ifPresent(capacity -> capacities.put(condition.member().id(), capacity));
        return new WoodFindings(all, outlooks(survey, water, all, startDay, seed, gaps, progress), capacities, gaps);
    }

    private static Map<String, Outlook> outlooks(Survey survey, WaterFindings water, Map<String, Condition> conditions, int startDay, long seed, List<String> gaps,
                                                 Consumer<String> progress) {
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
        progress.accept("the weather of the years to come, on " + Words.count(wettings.size(), "member"));
        Map<String, Outlook> outlooks = new LinkedHashMap<>();
        for (Outlook outlook : Outlooks.of(wettings, normals.get(), startDay, TREATED_AT, new SplitMix(seed))) outlooks.put(outlook.member(), outlook);
        return outlooks;
    }

    private static Condition condition(Survey survey, Member member, RandomGenerator random) {
        List<FaceStudy> studies = new ArrayList<>();
        int readings = 0;
        for (Member.Face face : member.faces()) {
            List<ProbeReading> probes = survey.probesOn(member.id(), face);
            readings += probes.size();
            if (!probes.isEmpty()) studies.add(FaceStudy.of(member, face, probes, random));
        }
        List<Condition.Corrected> moisture = new ArrayList<>();
        for (MoistureReading reading : survey.moisturesOn(member.id())) moisture.add(corrected(reading));
        Optional<Double> wettest = moisture.stream().map(Condition.Corrected::moisture).max(Double::compare);
        List<Damage> damages = damages(member, studies);
        Condition.State state = state(survey, member, studies, damages, readings);
        List<DepthMap> maps = studies.stream().map(study -> study.map).toList();
        List<Basis> basis = damages.isEmpty() ? List.of(Decay.TOLERANCE) : List.of(Decay.TOLERANCE, Decay.FIELD, Decay.MARGIN);
        return new Condition(member, state, maps, damages, wettest, moisture, readings, words(state, damages, readings), basis);
    }

    private static Condition.Corrected corrected(MoistureReading reading) {
        double shown = reading.reading().own();
        double moisture = reading.wood().map(temp -> Moisture.fromMeter(shown, temp.own())).orElse(shown);
        return new Condition.Corrected(reading.spot().alongMm(), shown, moisture, Moisture.withinMeter(moisture));
    }

    private static List<Damage> damages(Member member, List<FaceStudy> studies) {
        List<double[]> stretches = new ArrayList<>();
        for (FaceStudy study : studies) for (double[] one : study.stretches) FaceStudy.merge(stretches, one[0], one[1], ONE_DAMAGE_MM);
        double margin = member.bearsLoad() ? Decay.LOAD_MARGIN_MM : Decay.TRIM_MARGIN_MM;
        List<double[]> widened = new ArrayList<>();
        for (double[] one : stretches) FaceStudy.merge(widened, snapStart(one[0] - margin, margin), snapEnd(one[1] + margin, margin, member.lengthMm()), 0);
        List<Damage> all = new ArrayList<>();
        for (double[] one : widened) all.add(damage(member, studies, one[0], one[1], all.size() + 1));
        return all;
    }

    /// Sound wood too short to keep at an end counts with the damage.
    private static double snapStart(double fromMm, double margin) { return fromMm < margin ? 0 : fromMm; }

    private static double snapEnd(double toMm, double margin, double lengthMm) { return toMm > lengthMm - margin ? lengthMm : toMm; }

    private static Damage damage(Member member, List<FaceStudy> studies, double fromMm, double toMm, int count) {
        FaceStudy worst = studies.getFirst();
        double deepest = -1, area = 0;
        boolean ranOut = false;
        double[] volumes = new double[FaceStudy.draws()];
        double whole = member.sectionMm2() * (toMm - fromMm) / 1000;
        for (FaceStudy study : studies) {
            double here = study.deepestMm(fromMm, toMm);
            if (here > deepest) {
                deepest = here;
                worst = study;
            }
            area += study.softMm2(fromMm, toMm);
            for (ProbeReading probe : study.map.probes())
                ranOut |= probe.ranOut() && probe.spot().alongMm() >= fromMm && probe.spot().alongMm() <= toMm;
            if (!study.stretches.isEmpty()) for (int d = 0; d < volumes.length; d++) volumes[d] = Math.min(whole, volumes[d] + study.volumeMl(d, fromMm, toMm));
        }
        return new Damage(member.id() + "/" + count, member, worst.map.face(), fromMm, toMm, deepest, FaceStudy.interval(volumes), area,
                worstSection(member, studies, fromMm, toMm), ranOut);
    }

    /// The station between two where least of the section is left.
    private static SectionLeft worstSection(Member member, List<FaceStudy> studies, double fromMm, double toMm) {
        SectionLeft worst = SectionLeft.whole((fromMm + toMm) / 2);
        for (FaceStudy study : studies)
            for (double station : study.stations()) {
                if (station < fromMm || station > toMm) continue;
                SectionLeft left = section(member, studies, station);
                if (left.areaKept() < worst.areaKept()) worst = left;
            }
        return worst;
    }

    private static SectionLeft section(Member member, List<FaceStudy> studies, double stationMm) {
        double[] likely = losses(member, studies, stationMm, false), high = losses(member, studies, stationMm, true);
        Section.Kept left = Section.left(member.widthMm(), member.depthMm(), likely[0], likely[1], likely[2], likely[3]);
        Section.Kept low = Section.left(member.widthMm(), member.depthMm(), high[0], high[1], high[2], high[3]);
        return new SectionLeft(stationMm, likely[0], likely[1], likely[2], likely[3], left.area(), left.sx(), left.sy(), left.shiftXMm(), left.shiftYMm(),
                low.area());
    }

    /// Losses from front, back, left and right; two that would meet leave a hair between them, where nothing is left.
    private static double[] losses(Member member, List<FaceStudy> studies, double stationMm, boolean high) {
        double[] losses = new double[4];
        for (FaceStudy study : studies) losses[member.sectionSide(study.map.face()).ordinal()] = study.lossMm(stationMm, high);
        keepApart(losses, 0, 1, member.depthMm());
        keepApart(losses, 2, 3, member.widthMm());
        return losses;
    }

    private static void keepApart(double[] losses, int one, int other, double sizeMm) {
        double most = 0.99 * sizeMm, sum = losses[one] + losses[other];
        if (sum <= most) return;
        losses[one] *= most / sum;
        losses[other] *= most / sum;
    }

    private static Condition.State state(Survey survey, Member member, List<FaceStudy> studies, List<Damage> damages, int readings) {
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

    /// A small generator of its own, the same on every machine and in a browser.
    ///
    /// Source: Steele, Lea and Flood, Fast splittable pseudorandom number generators (2014) (from memory).
    private static final class SplitMix implements RandomGenerator {
        private long state;

        SplitMix(long seed) { state = seed; }

        @Override
        public long nextLong() {
            long z = state += 0x9E3779B97F4A7C15L;
            z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
            z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
            return z ^ (z >>> 31);
        }
    }
}
