package sillwright.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import sillwright.walk.Member;
import sillwright.walk.ProbeReading;

/// The soft stretches of a member as damages: from sound-wood line to sound-wood line, with the sound wood that the trade cuts back into.
final class Damages {
    /// Soft stretches nearer to each other than this are one damage, mm.
    private static final double ONE_DAMAGE_MM = 100;

    private Damages() {}

    static List<Damage> of(MemberStudy study) {
        Member member = study.member;
        double margin = member.bearsLoad() ? Decay.LOAD_MARGIN_MM : Decay.TRIM_MARGIN_MM;
        List<double[]> widened = new ArrayList<>();
        for (double[] one : study.stretches(ONE_DAMAGE_MM))
            SoundLines.merge(widened, snapStart(one[0] - margin, margin), snapEnd(one[1] + margin, margin, member.lengthMm()), 0);
        List<Damage> all = new ArrayList<>();
        for (double[] one : widened) all.add(damage(study, one[0], one[1], all.size() + 1));
        return all;
    }

    /// Sound wood too short to keep at an end counts with the damage.
    private static double snapStart(double fromMm, double margin) { return fromMm < margin ? 0 : fromMm; }

    private static double snapEnd(double toMm, double margin, double lengthMm) { return toMm > lengthMm - margin ? lengthMm : toMm; }

    private static Damage damage(MemberStudy study, double fromMm, double toMm, int count) {
        Member.Face worst = null;
        double deepest = -1, area = 0;
        boolean ranOut = false;
        for (DepthMap map : study.maps()) {
            double here = map.deepestMm(fromMm, toMm);
            if (here > deepest) {
                deepest = here;
                worst = map.face();
            }
            area += map.softMm2(fromMm, toMm);
            for (ProbeReading probe : map.probes()) ranOut |= probe.ranOut() && probe.spot().alongMm() >= fromMm && probe.spot().alongMm() <= toMm;
        }
        return new Damage(study.member.id() + "/" + count, study.member, worst, fromMm, toMm, deepest, study.volumeMl(fromMm, toMm), area, study.section(fromMm, toMm), ranOut,
                doubt(study, worst, fromMm, toMm));
    }

    /// What the draws leave open.
    private static Damage.Doubt doubt(MemberStudy study, Member.Face worst, double fromMm, double toMm) {
        int n = FaceStudy.DRAWS;
        double[] deepest = new double[n], soft = new double[n], starts = new double[n], ends = new double[n];
        for (int d = 0; d < n; d++) {
            starts[d] = toMm;
            ends[d] = fromMm;
            for (Map.Entry<Member.Face, FaceStudy> one : study.soft().entrySet()) {
                FaceDraws draws = one.getValue().draws;
                deepest[d] = Math.max(deepest[d], draws.deepestMm(d, fromMm, toMm));
                soft[d] += draws.softShare(d, fromMm, toMm) * draws.grid.lengthMm() * draws.grid.acrossMm();
                starts[d] = Math.min(starts[d], draws.firstSoftMm(d, fromMm, toMm));
                ends[d] = Math.max(ends[d], draws.lastSoftMm(d, fromMm, toMm));
            }
            ends[d] = Math.max(starts[d] > ends[d] ? starts[d] : ends[d], starts[d]);
        }
        double skin = 2 * (study.member.widthMm() + study.member.depthMm()) * (toMm - fromMm);
        for (int d = 0; d < n; d++) soft[d] = Math.min(1, soft[d] / skin);
        return new Damage.Doubt(Interval.of(deepest), Interval.of(soft), Interval.of(starts), Interval.of(ends), study.cutOut(worst, fromMm, toMm));
    }
}
