package sillwright.wood;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

import sillwright.measure.Memo;
import sillwright.measure.SplitMix;
import sillwright.walk.Member;
import sillwright.walk.ProbeReading;

/// The probed faces of one member together: decay of two faces that meets at a corner counts once, and what one face says of its opposite is heard.
final class MemberStudy {
    private static final double[] NONE = {0};

    final Member member;
    private final Memo hands;
    private final Map<Member.Face, List<ProbeReading>> probes = new EnumMap<>(Member.Face.class);
    /// Of the faces where something soft was read.
    private final Map<Member.Face, FaceStudy> soft = new EnumMap<>(Member.Face.class);
    /// Of the faces where every reading was sound: they count as sound in every section and volume, and [#hiddenShare] tells what may lie between their readings.
    private final List<FaceStudy> hidden = new ArrayList<>();
    /// Of the soft faces, by the side of the section; nothing where a side is sound.
    private final FaceDraws[] bySide = new FaceDraws[4];
    private final List<Double> overlaps = new ArrayList<>();
    private final List<DepthMap> maps = new ArrayList<>();
    /// The area that each draw leaves at a column of the finest face; empty where it was not asked for yet.
    private double[][] keptMm2;
    /// How many stations the finest of the soft faces is worked at.
    private final int columns;

    /// @param probesOn the readings of each face
    /// @param seed     for the draws; each face draws for itself, so that a reading on one face changes nothing of its neighbours
    /// @param memo     has what was worked of other readings; faces may be worked side by side
    MemberStudy(Member member, Map<Member.Face, List<ProbeReading>> probesOn, long seed, Memo memo) {
        this.member = member;
        hands = memo;
        List<Looked> faces = new ArrayList<>();
        for (Member.Face face : member.faces()) {
            List<ProbeReading> here = probesOn.getOrDefault(face, List.of());
            if (here.isEmpty()) continue;
            probes.put(face, here);
            faces.add(new Looked(face, Slab.of(member, face), here, probesOn.getOrDefault(Member.opposite(face), List.of()), new SplitMix(seed ^ (face.ordinal() + 1) * 0xD1342543DE82EF95L).nextLong()));
        }
        List<Found> found = memo.sideBySide(faces.size(), i -> memo.roomy(faces.get(i), faces.get(i)::study));
        for (int i = 0; i < faces.size(); i++) {
            Looked one = faces.get(i);
            maps.add(found.get(i).map);
            if (one.sound()) {
                hidden.add(found.get(i).study);
                continue;
            }
            soft.put(one.face, found.get(i).study);
            bySide[member.sectionSide(one.face).ordinal()] = found.get(i).study.draws;
            if (one.face.ordinal() < Member.opposite(one.face).ordinal()) overlaps.addAll(Readings.overlaps(one.here, one.opposite, one.slab.throughMm()));
        }
        columns = soft.values().stream().mapToInt(study -> study.draws.grid.columns()).max().orElse(1);
    }

    private record Found(FaceStudy study, DepthMap map) {}

    /// All that the study of one face rests on.
    private record Looked(Member.Face face, Slab slab, List<ProbeReading> here, List<ProbeReading> opposite, long seed) {
        /// Every reading was sound, and nothing went right through from the other side.
        boolean sound() { return here.stream().noneMatch(MemberStudy::soft) && opposite.stream().noneMatch(probe -> Readings.wentThrough(probe, slab.throughMm())); }

        Found study() {
            Readings own = Readings.of(here);
            RandomGenerator random = new SplitMix(seed);
            if (sound()) {
                FaceStudy study = FaceStudy.ofSound(slab, own, random);
                return new Found(study, DepthMap.ofSound(face, study, here));
            }
            FaceStudy study = FaceStudy.of(slab, own, Readings.between(here, opposite, slab.throughMm()), Decay.TOLERANCE_MM, FaceStudy.DRAWS, random);
            return new Found(study, DepthMap.of(face, study, here));
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
        double step = member.lengthMm() / columns;
        keep(columns(fromMm, toMm));
        for (int c = 0; c < columns; c++) {
            double share = Math.max(0, Math.min((c + 1) * step, toMm) - Math.max(c * step, fromMm));
            if (share > 0) for (int d = 0; d < volumes.length; d++) volumes[d] += (member.sectionMm2() - keptMm2(c)[d]) * share / 1000;
        }
        return Interval.of(volumes);
    }

    private double stationMm(int column) { return (column + 0.5) * member.lengthMm() / columns; }

    /// The columns whose stations lie between two others; of a stretch shorter than a column the one it is in.
    private int[] columns(double fromMm, double toMm) {
        int[] all = IntStream.range(0, columns).filter(c -> stationMm(c) >= fromMm && stationMm(c) <= toMm).toArray();
        return all.length > 0 ? all : new int[] {Math.min(columns - 1, (int) ((fromMm + toMm) / 2 * columns / member.lengthMm()))};
    }

    /// The station where a load uses up most of what the draws leave, in the damages; elsewhere the member counts as whole.
    Governing governing(Stations use, List<Damage> damages) {
        double[] stations = damages.stream().flatMapToInt(damage -> Arrays.stream(columns(damage.fromMm(), damage.toMm()))).mapToDouble(this::stationMm).toArray();
        List<Section[]> left = hands.sideBySide(FaceStudy.DRAWS, d -> Arrays.stream(stations).mapToObj(station -> strips(d, station).largest()).toArray(Section[]::new));
        return Governing.of(use, stations, left::get, FaceStudy.DRAWS, station -> section(station, station));
    }

    private Strips strips(int draw, double stationMm) {
        return new Strips(member.widthMm(), member.depthMm(), strips(draw, stationMm, 0), strips(draw, stationMm, 1), strips(draw, stationMm, 2), strips(draw, stationMm, 3));
    }

    /// The depths of one draw across a side of the section; opposite faces have as many.
    private double[] strips(int draw, double stationMm, int side) {
        FaceDraws draws = bySide[side];
        if (draws == null) return NONE;
        double[] depths = new double[draws.grid.rows()];
        int column = draws.grid.columnAt(stationMm);
        for (int r = 0; r < depths.length; r++) depths[r] = draws.depthMm(draw, column, r);
        return depths;
    }

    private double[] keptMm2(int column) {
        keep(column);
        return keptMm2[column];
    }

    /// Works that of some columns, side by side.
    private void keep(int... wanted) {
        if (keptMm2 == null) keptMm2 = new double[columns][];
        int[] fresh = Arrays.stream(wanted).filter(column -> keptMm2[column] == null).toArray();
        List<double[]> kept = hands.sideBySide(fresh.length, i -> IntStream.range(0, FaceStudy.DRAWS).mapToDouble(d -> strips(d, stationMm(fresh[i])).areaMm2()).toArray());
        for (int i = 0; i < fresh.length; i++) keptMm2[fresh[i]] = kept.get(i);
    }

    /// What is left where least is, between two stations.
    SectionLeft section(double fromMm, double toMm) {
        if (soft.isEmpty()) return SectionLeft.whole((fromMm + toMm) / 2);
        int[] here = columns(fromMm, toMm);
        double worst = stationMm(here[0]), least = Double.MAX_VALUE;
        List<Double> areas = hands.sideBySide(here.length, i -> SoundSection.at(member, maps, stationMm(here[i]), false).areaKept());
        for (int i = 0; i < here.length; i++) {
            if (areas.get(i) >= least) continue;
            least = areas.get(i);
            worst = stationMm(here[i]);
        }
        double[] kept = new double[FaceStudy.DRAWS], at = new double[kept.length];
        for (int d = 0; d < kept.length; d++) {
            kept[d] = Double.MAX_VALUE;
            for (int column : here) {
                double share = keptMm2(column)[d] / member.sectionMm2();
                if (share >= kept[d]) continue;
                kept[d] = share;
                at[d] = stationMm(column);
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
            double[] depths = strips(nearest, at[nearest], side.ordinal());
            sides[side.ordinal()] = FaceProfile.sloping(across, Arrays.stream(depths).boxed().toList());
        }
        return new SectionLeft.Outline(sides[0], sides[1], sides[2], sides[3]);
    }
}
