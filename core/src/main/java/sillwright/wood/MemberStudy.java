package sillwright.wood;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;

import sillwright.walk.Member;
import sillwright.walk.ProbeReading;

/// The probed faces of one member together: decay of two faces that meets at a corner counts once, and what one face says of its opposite is heard.
final class MemberStudy {

    final Member member;
    private final Map<Member.Face, List<ProbeReading>> probes = new EnumMap<>(Member.Face.class);
    /// Of the faces where something soft was read.
    private final Map<Member.Face, FaceStudy> soft = new EnumMap<>(Member.Face.class);
    /// Of the faces where every reading was sound: they count as sound in every section and volume, and [#hiddenShare] tells what may lie between their readings.
    private final List<FaceStudy> hidden = new ArrayList<>();
    private final List<Double> overlaps = new ArrayList<>();
    private final List<DepthMap> maps = new ArrayList<>();

    /// @param probesOn the readings of each face
    MemberStudy(Member member, Map<Member.Face, List<ProbeReading>> probesOn, RandomGenerator random) {
        this.member = member;
        for (Member.Face face : member.faces()) {
            List<ProbeReading> here = probesOn.getOrDefault(face, List.of());
            if (here.isEmpty()) continue;
            probes.put(face, here);
            Slab slab = Slab.of(member, face);
            List<ProbeReading> opposite = probesOn.getOrDefault(Member.opposite(face), List.of());
            if (here.stream().noneMatch(MemberStudy::soft) && opposite.stream().noneMatch(probe -> Readings.wentThrough(probe, slab.throughMm()))) {
                FaceStudy study = FaceStudy.ofSound(slab, Readings.of(here), random);
                hidden.add(study);
                maps.add(DepthMap.ofSound(face, study, here));
                continue;
            }
            if (face.ordinal() < Member.opposite(face).ordinal()) overlaps.addAll(Readings.overlaps(here, opposite, slab.throughMm()));
            Readings own = Readings.of(here), all = Readings.between(here, opposite, slab.throughMm());
            FaceStudy study = FaceStudy.of(slab, own, all, Decay.TOLERANCE_MM, FaceStudy.DRAWS, random);
            soft.put(face, study);
            maps.add(DepthMap.of(face, study, here));
        }
    }

    /// Where to probe next on a face that is soft somewhere; empty where none is.
    Optional<NextProbe> next() { return NextProbe.of(member, probes, soft); }

    static boolean soft(ProbeReading probe) { return probe.ranOut() || probe.depthMm() > Decay.TOLERANCE_MM; }

    List<DepthMap> maps() { return maps; }

    /// The share of the faces with sound readings only that may still be soft between them; empty where there is no such face.
    Optional<Interval> hiddenShare() {
        if (hidden.isEmpty()) return Optional.empty();
        double[] shares = new double[hidden.getFirst().draws.count];
        double skin = 0;
        for (FaceStudy face : hidden) {
            double here = face.slab.lengthMm() * face.slab.acrossMm();
            skin += here;
            for (int d = 0; d < shares.length; d++) shares[d] += here * face.draws.softShare(d, 0, face.slab.lengthMm());
        }
        for (int d = 0; d < shares.length; d++) shares[d] /= skin;
        return Optional.of(Interval.of(shares));
    }

    /// Stations where readings from opposite faces went further in than there is wood, mm, each once.
    List<Double> overlaps() { return overlaps.stream().distinct().sorted().toList(); }

    Map<Member.Face, FaceStudy> soft() { return soft; }

    /// The recess to cut from a face; sound wood is cut back into across it as trim is, since its edges are glued.
    Damage.CutOut cutOut(Member.Face face, double fromMm, double toMm) {
        return maps.stream().filter(map -> map.face() == face).findFirst().orElseThrow().cutOut(fromMm, toMm, Decay.TRIM_MARGIN_MM);
    }

    /// The soft stretches of all faces, each from one sound-wood line to the other, without the margin.
    List<double[]> stretches(double oneDamageMm) {
        List<double[]> all = new ArrayList<>();
        for (FaceStudy study : soft.values()) for (double[] one : study.stretches) SoundLines.merge(all, one[0], one[1], oneDamageMm);
        return all;
    }

    /// Softened and decayed wood between two stations.
    Interval volumeMl(double fromMm, double toMm) {
        double[] volumes = new double[FaceStudy.DRAWS];
        int steps = columns();
        double step = member.lengthMm() / steps;
        for (int c = 0; c < steps; c++) {
            double share = Math.max(0, Math.min((c + 1) * step, toMm) - Math.max(c * step, fromMm));
            if (share > 0) for (int d = 0; d < volumes.length; d++) volumes[d] += (member.sectionMm2() - keptMm2(d, (c + 0.5) * step)) * share / 1000;
        }
        return Interval.of(volumes);
    }

    /// How many stations the finest of the faces is worked at.
    private int columns() { return soft.values().stream().mapToInt(study -> study.draws.grid.columns()).max().orElse(1); }

    private List<Double> stations(double fromMm, double toMm) {
        List<Double> all = new ArrayList<>();
        double step = member.lengthMm() / columns();
        for (int c = 0; c < columns(); c++) if ((c + 0.5) * step >= fromMm && (c + 0.5) * step <= toMm) all.add((c + 0.5) * step);
        if (all.isEmpty()) all.add((fromMm + toMm) / 2);
        return all;
    }

    /// The station where a load uses up most of what the draws leave, in the damages; elsewhere the member counts as whole.
    Governing governing(Stations use, List<Damage> damages) {
        double[] stations = damages.stream().flatMap(damage -> stations(damage.fromMm(), damage.toMm()).stream()).mapToDouble(Double::doubleValue).toArray();
        return Governing.of(use, stations, d -> {
            Section[] left = new Section[stations.length];
            for (int s = 0; s < left.length; s++) left[s] = strips(d, stations[s]).largest();
            return left;
        }, FaceStudy.DRAWS, station -> section(station, station));
    }

    private Strips strips(int draw, double stationMm) {
        return new Strips(member.widthMm(), member.depthMm(), strips(draw, stationMm, Member.SectionSide.FRONT), strips(draw, stationMm, Member.SectionSide.BACK),
                strips(draw, stationMm, Member.SectionSide.LEFT), strips(draw, stationMm, Member.SectionSide.RIGHT));
    }

    /// The area that one draw leaves at a station.
    private double keptMm2(int draw, double stationMm) { return strips(draw, stationMm).areaMm2(); }

    private static final double[] NONE = {0};

    /// The depths of one draw across a side of the section; opposite faces have as many.
    private double[] strips(int draw, double stationMm, Member.SectionSide side) {
        for (Map.Entry<Member.Face, FaceStudy> one : soft.entrySet()) {
            if (member.sectionSide(one.getKey()) != side) continue;
            FaceDraws draws = one.getValue().draws;
            double[] depths = new double[draws.grid.rows()];
            int column = draws.grid.columnAt(stationMm);
            for (int r = 0; r < depths.length; r++) depths[r] = draws.depthMm(draw, column, r);
            return depths;
        }
        return NONE;
    }

    /// What is left where least is, between two stations.
    SectionLeft section(double fromMm, double toMm) {
        if (soft.isEmpty()) return SectionLeft.whole((fromMm + toMm) / 2);
        List<Double> stations = stations(fromMm, toMm);
        double worst = stations.getFirst(), least = Double.MAX_VALUE;
        for (double station : stations) {
            double here = SoundSection.at(member, maps, station, false).areaKept();
            if (here < least) {
                least = here;
                worst = station;
            }
        }
        double[] kept = new double[FaceStudy.DRAWS], at = new double[kept.length];
        for (int d = 0; d < kept.length; d++) {
            kept[d] = Double.MAX_VALUE;
            for (double station : stations) {
                double here = keptMm2(d, station) / member.sectionMm2();
                if (here >= kept[d]) continue;
                kept[d] = here;
                at[d] = station;
            }
        }
        Interval spread = Interval.of(kept);
        return SectionLeft.of(member, worst, new SectionLeft.Shapes(spread, SoundSection.outline(member, maps, worst, false), drawn(kept, at, spread.low()), drawn(kept, at, spread.high())));
    }

    /// The section of the draw that keeps nearest to a share, at its own worst station.
    private SectionLeft.Outline drawn(double[] kept, double[] at, double share) {
        int nearest = 0;
        for (int d = 1; d < kept.length; d++) if (Math.abs(kept[d] - share) < Math.abs(kept[nearest] - share)) nearest = d;
        FaceProfile[] sides = new FaceProfile[4];
        for (Member.SectionSide side : Member.SectionSide.values()) {
            double across = side.ordinal() < 2 ? member.widthMm() : member.depthMm();
            double[] depths = strips(nearest, at[nearest], side);
            sides[side.ordinal()] = FaceProfile.sloping(across, java.util.Arrays.stream(depths).boxed().toList());
        }
        return new SectionLeft.Outline(sides[0], sides[1], sides[2], sides[3]);
    }
}
