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

    /// Softened and decayed wood beneath this face.
    public Interval volumeMl() { return volumeMl; }

    public double deepestMm() {
        double deepest = 0;
        for (double depth : depthMm) deepest = Math.max(deepest, depth);
        return deepest;
    }
}
