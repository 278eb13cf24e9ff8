package sillwright.wood;

import java.util.Arrays;
import java.util.Optional;

import sillwright.measure.SplitMix;

/// Where on one face to push the probe next, and whether that is worth a push.
///
/// Two things are decided from a face: how much wood is to be filled or cut out, and where the member is cut. Each has a width that does no harm; the volume comes
/// first while it is not known so well, then the line that is least sure. When neither is open the best spot is still named, with `enough`.
///
/// While the volume is open, pushes go by turns into the soft stretches that were found, where they tell most of how much is soft there, and into the widest stretch that nobody
/// probed; once what was found is known well enough, all go there, until steps are so near that the draws alone say where softness may yet hide.
///
/// @param decides  what the reading would tell of
/// @param now      what is known of that; mL of a volume, mm from the start of a line
/// @param left     the share of its width that is expected to remain after the reading, 0 to 1
/// @param enough   true where more probing of this face would not change what is done
/// @param worth    how many times wider than harmless the interval is now; what one face has over another
record FaceNext(double alongMm, double acrossMm, NextProbe.Decides decides, NextProbe.Why why, Interval now, double left, boolean enough, double worth) {
    /// A volume is known well enough when it lies within a tenth of its median either way, or within so much, mL: a fill is mixed with more to spare. Own choice.
    static final double ENOUGH_SHARE = 0.1, ENOUGH_ML = 60;

    private static final long SEED = 20_26;

    /// @param marginMm how much sound wood is cut back into, which a line that is out by less stays within
    static FaceNext of(FaceStudy study, double reachMm, double marginMm) {
        double[] volumes = study.draws.volumesMl();
        Interval volume = Interval.of(volumes);
        double volumeNeed = need(volume);
        double[] line = new double[0];
        double lineNeed = 0;
        for (double[] stretch : study.stretches)
            for (boolean far : new boolean[] {false, true}) {
                double[] ends = ends(study, stretch, far);
                double need = half(Interval.of(ends)) / marginMm;
                if (need <= lineNeed) continue;
                lineNeed = need;
                line = ends;
            }
        boolean byLine = volumeNeed <= 1 && lineNeed > 1;
        double need = Math.max(volumeNeed, lineNeed);
        boolean settled = need(study.foundMl()) <= 1;
        Unprobed unprobed = Unprobed.widest(study.readings, study.slab);
        if (volumeNeed > 1 && unprobed.worth() && (settled || study.readings.count % 2 == 0)) {
            ProbeGain gain = ProbeGain.at(study.draws, volumes, unprobed.alongMm(), unprobed.acrossMm(), reachMm, new SplitMix(SEED));
            return new FaceNext(gain.alongMm(), gain.acrossMm(), NextProbe.Decides.VOLUME, NextProbe.Why.UNSEEN, volume, gain.left(), false, need);
        }
        double[] decided = byLine ? line : volumes, by = byLine || settled ? decided : study.draws.volumesMl(study.stretches);
        Optional<ProbeGain> apart = ProbeGain.best(study.draws, by, decided, study.readings, ProbeGain.APART_MM, reachMm, new SplitMix(SEED));
        ProbeGain gain = apart.or(() -> ProbeGain.best(study.draws, by, decided, study.readings, 0, reachMm, new SplitMix(SEED))).orElseThrow();
        return new FaceNext(gain.alongMm(), gain.acrossMm(), byLine ? NextProbe.Decides.CUT_LINE : NextProbe.Decides.VOLUME,
                apart.isPresent() ? why(study, gain) : NextProbe.Why.CROWDED, Interval.of(decided), gain.left(), apart.isEmpty() || need <= 1, need);
    }

    /// How many times wider than harmless a volume's interval is.
    private static double need(Interval volume) { return half(volume) / Math.max(ENOUGH_ML, ENOUGH_SHARE * volume.median()); }

    private static double half(Interval interval) { return (interval.high() - interval.low()) / 2; }

    /// Where each draw has the softness of a stretch end: looked for as far beyond its line as readings tell.
    static double[] ends(FaceStudy study, double[] stretch, boolean far) {
        double sight = SoundLines.sightMm(study.field.feel().alongMm()), from = Math.max(0, stretch[0] - sight), to = Math.min(study.slab.lengthMm(), stretch[1] + sight);
        double[] ends = new double[study.draws.count];
        Arrays.setAll(ends, d -> far ? study.draws.lastSoftMm(d, from, to) : study.draws.firstSoftMm(d, from, to));
        return ends;
    }

    private static NextProbe.Why why(FaceStudy study, ProbeGain gain) {
        Feel feel = study.field.feel();
        double nearest = Double.MAX_VALUE;
        Readings taken = study.readings;
        for (int i = 0; i < taken.count; i++)
            nearest = Math.min(nearest, Math.hypot((taken.alongMm[i] - gain.alongMm()) / feel.alongMm(), (taken.acrossMm[i] - gain.acrossMm()) / feel.acrossMm()));
        if (nearest > 1) return NextProbe.Why.UNSEEN;
        int column = study.draws.grid.columnAt(gain.alongMm()), row = study.draws.grid.rowAt(gain.acrossMm()), soft = 0;
        for (int d = 0; d < study.draws.count; d++) if (study.draws.soft(d, column, row)) soft++;
        return soft > 0.9 * study.draws.count ? NextProbe.Why.DEPTH : NextProbe.Why.EDGE;
    }
}
