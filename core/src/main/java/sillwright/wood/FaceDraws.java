package sillwright.wood;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/// Draws of how deep the decay goes beneath one whole face, as its readings leave it open.
final class FaceDraws {
    final FaceGrid grid;
    final int count;
    /// Standard deviation of one push of a probe, as the readings tell it, mm.
    final double handMm;
    /// Deeper than this is soft, mm.
    final double toleranceMm;
    /// Depth at each cell, mm, between nothing and through: draw by draw. There are many, and they are kept.
    private final float[][] depthMm;

    private FaceDraws(FaceGrid grid, int count, double handMm, double toleranceMm) {
        this.toleranceMm = toleranceMm;
        this.grid = grid;
        this.count = count;
        this.handMm = handMm;
        depthMm = new float[count][grid.cells()];
    }

    /// Shared out among the plausible fields by their weights.
    static FaceDraws of(List<DecayFit.Weighed> fields, FaceGrid grid, double throughMm, double toleranceMm, int count, RandomGenerator random) {
        FaceDraws all = new FaceDraws(grid, count, fields.getFirst().field().feel().handMm(), toleranceMm);
        double[] alongs = grid.alongs(), acrosses = grid.acrosses();
        double share = 0;
        int drawn = 0;
        for (int f = 0; f < fields.size(); f++) {
            share += fields.get(f).weight();
            int until = f == fields.size() - 1 ? count : (int) Math.round(share * count);
            if (until > drawn) all.draw(fields.get(f).field(), alongs, acrosses, throughMm, drawn, until, random);
            drawn = Math.max(drawn, until);
        }
        return all;
    }

    /// Two draws at a time, which reads the rows half as often.
    private void draw(DecayField field, double[] alongs, double[] acrosses, double throughMm, int from, int until, RandomGenerator random) {
        int cells = grid.cells(), n = field.readings();
        PushDraws pushes = new PushDraws(field);
        double[][] known = pushes.pinned().covariances(alongs, acrosses), strays = pushes.pinned().strays(grid, known);
        double[] push = new double[n], one = new double[cells], two = new double[cells];
        double[][] weight = new double[2][n], normal = new double[2][strays.length];
        for (int d = from; d < until; d += 2) {
            for (int t = 0; t < 2; t++) {
                pushes.next(push, weight[t], random);
                for (int k = 0; k < strays.length; k++) normal[t][k] = random.nextGaussian();
            }
            Arrays.fill(one, field.feel().meanMm());
            Arrays.fill(two, field.feel().meanMm());
            Rows.add(one, weight[0], two, weight[1], known, 0, n, 0, cells);
            Rows.addTriangle(one, normal[0], two, normal[1], strays);
            keep(one, d, throughMm);
            if (d + 1 < until) keep(two, d + 1, throughMm);
        }
    }

    private void keep(double[] depths, int draw, double throughMm) { for (int c = 0; c < depths.length; c++) depthMm[draw][c] = (float) Math.max(0, Math.min(throughMm, depths[c])); }

    double depthMm(int draw, int cell) { return depthMm[draw][cell]; }

    double depthMm(int draw, int column, int row) { return depthMm[draw][row * grid.columns() + column]; }

    boolean soft(int draw, int column, int row) { return depthMm(draw, column, row) > toleranceMm; }

    /// Soft wood between two stations in one draw, mL.
    double volumeMl(int draw, double fromMm, double toMm) {
        double sum = 0;
        for (int c = 0; c < grid.columns(); c++) {
            double share = grid.share(c, fromMm, toMm);
            if (share > 0) for (int r = 0; r < grid.rows(); r++) sum += share * depthMm(draw, c, r);
        }
        return sum * grid.cellMm2() / 1000;
    }

    /// Soft wood beneath the whole face, for each draw, mL.
    double[] volumesMl() {
        double[] volumes = new double[count];
        for (int d = 0; d < count; d++) volumes[d] = volumeMl(d, 0, grid.lengthMm());
        return volumes;
    }

    /// Soft wood in some stretches, each from one station to another, for each draw, mL.
    double[] volumesMl(List<double[]> stretches) {
        double[] volumes = new double[count];
        for (int d = 0; d < count; d++) for (double[] one : stretches) volumes[d] += volumeMl(d, one[0], one[1]);
        return volumes;
    }

    double deepestMm(int draw, double fromMm, double toMm) {
        double deepest = 0;
        for (int c = 0; c < grid.columns(); c++)
            if (grid.share(c, fromMm, toMm) > 0) for (int r = 0; r < grid.rows(); r++) deepest = Math.max(deepest, depthMm(draw, c, r));
        return deepest;
    }

    /// The share of the skin between two stations that is soft in one draw, of the whole face.
    double softShare(int draw, double fromMm, double toMm) {
        double sum = 0;
        for (int c = 0; c < grid.columns(); c++) for (int r = 0; r < grid.rows(); r++) if (soft(draw, c, r)) sum += grid.share(c, fromMm, toMm);
        return sum / grid.cells();
    }

    /// The far edge of the last soft column of one draw between two stations, mm from the start; `fromMm` where none is soft.
    double lastSoftMm(int draw, double fromMm, double toMm) {
        for (int c = grid.columns() - 1; c >= 0; c--)
            if (grid.share(c, fromMm, toMm) > 0) for (int r = 0; r < grid.rows(); r++) if (soft(draw, c, r)) return edge(draw, c, 1);
        return fromMm;
    }

    /// The near edge of the first soft column of one draw between two stations; `toMm` where none is soft.
    double firstSoftMm(int draw, double fromMm, double toMm) {
        for (int c = 0; c < grid.columns(); c++)
            if (grid.share(c, fromMm, toMm) > 0) for (int r = 0; r < grid.rows(); r++) if (soft(draw, c, r)) return edge(draw, c, -1);
        return toMm;
    }

    /// Where the softness of a column ends toward the next: between their middles, by a straight line; at its edge where the next is soft too.
    private double edge(int draw, int column, int step) {
        int beyond = column + step;
        if (beyond < 0 || beyond >= grid.columns()) return step < 0 ? 0 : grid.lengthMm();
        double far = 0;
        for (int r = 0; r < grid.rows(); r++) {
            double here = depthMm(draw, column, r), there = depthMm(draw, beyond, r);
            if (here > toleranceMm) far = Math.max(far, there > toleranceMm ? 0.5 : (here - toleranceMm) / (here - there));
        }
        return (column + 0.5 + step * far) * grid.columnMm();
    }
}
