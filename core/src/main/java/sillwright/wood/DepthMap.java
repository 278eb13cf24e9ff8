package sillwright.wood;

import java.util.List;

import sillwright.walk.Member;
import sillwright.walk.ProbeReading;

/// How deep the decay goes beneath one face, at the middle of each cell of a grid: the most likely depth, how sure that
/// is, and the chance that it is deeper than sound wood may be.
public final class DepthMap {
    private final Member.Face face;
    private final int columns;
    private final int rows;
    private final double lengthMm;
    private final double acrossMm;
    private final double throughMm;
    private final double[] depthMm;
    private final double[] highMm;
    private final double[] chance;
    private final List<ProbeReading> probes;
    private final Interval volumeMl;

    DepthMap(Member.Face face, int columns, int rows, double lengthMm, double acrossMm, double throughMm, double[] depthMm, double[] highMm,
             double[] chance, List<ProbeReading> probes, Interval volumeMl) {
        this.face = face;
        this.columns = columns;
        this.rows = rows;
        this.lengthMm = lengthMm;
        this.acrossMm = acrossMm;
        this.throughMm = throughMm;
        this.depthMm = depthMm.clone();
        this.highMm = highMm.clone();
        this.chance = chance.clone();
        this.probes = List.copyOf(probes);
        this.volumeMl = volumeMl;
    }

    /// Of a face where every reading was sound: what may be hidden between them.
    static DepthMap ofSound(Member.Face face, FaceStudy study, List<ProbeReading> probes) { return of(face, study, probes, study.draws.volumesMl()); }

    /// By the most likely field of a face.
    static DepthMap of(Member.Face face, FaceStudy study, List<ProbeReading> probes) {
        return of(face, study, probes, study.draws.volumesMl(study.stretches));
    }

    private static DepthMap of(Member.Face face, FaceStudy study, List<ProbeReading> probes, double[] volumes) {
        Slab slab = study.slab;
        FaceGrid grid = FaceGrid.forMap(slab.lengthMm(), slab.acrossMm());
        double[] depth = new double[grid.cells()], high = new double[depth.length], chance = new double[depth.length], means = new double[depth.length], variances = new double[depth.length];
        study.field.at(grid.alongs(), grid.acrosses(), means, variances);
        for (int cell = 0; cell < depth.length; cell++) {
            double mean = means[cell], deviation = Math.sqrt(variances[cell]);
            depth[cell] = Math.max(0, Math.min(slab.throughMm(), mean));
            high[cell] = Math.max(0, Math.min(slab.throughMm(), mean + 1.645 * deviation));
            chance[cell] = deviation > 0 ? Normal.below((mean - Decay.TOLERANCE_MM) / deviation) : mean > Decay.TOLERANCE_MM ? 1 : 0;
        }
        return new DepthMap(face, grid.columns(), grid.rows(), slab.lengthMm(), slab.acrossMm(), slab.throughMm(), depth, high, chance, probes, Interval.of(volumes));
    }

    public Member.Face face() { return face; }

    /// Cells along the member.
    public int columns() { return columns; }

    /// Cells across the face.
    public int rows() { return rows; }

    public double lengthMm() { return lengthMm; }

    public double acrossMm() { return acrossMm; }

    /// How much wood lies beneath the face, mm.
    public double throughMm() { return throughMm; }

    public double alongMm(int column) { return (column + 0.5) * lengthMm / columns; }

    public double acrossMm(int row) { return (row + 0.5) * acrossMm / rows; }

    /// The most likely depth, mm, never less than nothing nor more than the member is through.
    public double depthMm(int column, int row) { return depthMm[row * columns + column]; }

    /// The depth that is exceeded one time in twenty, mm.
    public double highMm(int column, int row) { return highMm[row * columns + column]; }

    /// The chance that the wood is soft deeper than [Decay#TOLERANCE_MM].
    public double chance(int column, int row) { return chance[row * columns + column]; }

    public List<ProbeReading> probes() { return probes; }

    /// Softened and decayed wood beneath this face; of a face where every reading was sound what may be hidden between them, in no damage counted.
    public Interval volumeMl() { return volumeMl; }

    public double deepestMm() {
        double deepest = 0;
        for (double depth : depthMm) deepest = Math.max(deepest, depth);
        return deepest;
    }

    /// The greatest most likely or read depth between two stations, mm.
    double deepestMm(double fromMm, double toMm) {
        double deepest = 0;
        for (int c = 0; c < columns; c++) if (alongMm(c) >= fromMm && alongMm(c) <= toMm) for (int r = 0; r < rows; r++) deepest = Math.max(deepest, depthMm(c, r));
        for (ProbeReading probe : probes) if (probe.spot().alongMm() >= fromMm && probe.spot().alongMm() <= toMm) deepest = Math.max(deepest, probe.depthMm());
        return deepest;
    }

    /// Skin likely softer than the tolerance between two stations, mm².
    double softMm2(double fromMm, double toMm) {
        int soft = 0;
        for (int c = 0; c < columns; c++) if (alongMm(c) >= fromMm && alongMm(c) <= toMm) for (int r = 0; r < rows; r++) if (depthMm(c, r) > Decay.TOLERANCE_MM) soft++;
        return soft * lengthMm / columns * acrossMm / rows;
    }

    /// The smallest recess from this face that takes all that may be soft between two stations, with a margin of sound wood across the face.
    Damage.CutOut cutOut(double fromMm, double toMm, double marginMm) {
        double low = acrossMm, high = 0, deep = 0;
        for (int c = 0; c < columns; c++)
            for (int r = 0; r < rows; r++) {
                if (alongMm(c) < fromMm || alongMm(c) > toMm || chance(c, r) <= Decay.DOUBT) continue;
                low = Math.min(low, r * acrossMm / rows);
                high = Math.max(high, (r + 1) * acrossMm / rows);
                deep = Math.max(deep, highMm(c, r));
            }
        if (high <= low) return new Damage.CutOut(face, fromMm, toMm, 0, acrossMm, Math.min(throughMm, deepestMm(fromMm, toMm)));
        double from = low - marginMm < marginMm ? 0 : low - marginMm, to = high + marginMm > acrossMm - marginMm ? acrossMm : high + marginMm;
        return new Damage.CutOut(face, fromMm, toMm, from, to, Math.max(deep, Math.min(throughMm, deepestMm(fromMm, toMm))));
    }
}
