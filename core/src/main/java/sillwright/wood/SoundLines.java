package sillwright.wood;

import java.util.ArrayList;
import java.util.List;

/// Where along a face the softness begins and ends: the sound-wood lines, without the margin that is cut back beyond them.
///
/// A line lies where the chance that the wood is soft anywhere at a station falls below [Decay#DOUBT]. It is drawn along the tracks that were probed: wood that no
/// reading speaks for is neither sound nor soft, and the line stops where readings are too far away to tell.
final class SoundLines {
    /// A reading speaks for the rows of the grid this near to it.
    private static final double SIGHT_ROWS = 0.75;

    private final FaceDraws draws;
    private final FaceGrid grid;
    private final Readings readings;
    private final double sightMm;
    private final double[] doubt;

    private SoundLines(FaceDraws draws, Readings readings, double alongMm) {
        this.draws = draws;
        this.grid = draws.grid;
        this.readings = readings;
        sightMm = sightMm(alongMm);
        doubt = new double[grid.columns()];
        for (int c = 0; c < doubt.length; c++) doubt[c] = doubt(c);
    }

    /// The soft stretches, each from one line to the other, from the start on.
    ///
    /// @param alongMm over which depths go together along the grain
    static List<double[]> stretches(FaceDraws draws, Readings readings, double alongMm) {
        SoundLines lines = new SoundLines(draws, readings, alongMm);
        List<double[]> stretches = new ArrayList<>();
        for (int i = 0; i < readings.count; i++) {
            if (!readings.soft(i, draws.toleranceMm)) continue;
            double at = readings.alongMm[i];
            merge(stretches, lines.walk(at, -1), lines.walk(at, 1), 0);
        }
        return stretches;
    }

    /// How far along the grain a reading tells of the wood beside it, mm.
    static double sightMm(double alongMm) { return Math.max(100, Math.min(300, alongMm)); }

    private double middle(int column) { return (column + 0.5) * grid.columnMm(); }

    /// The chance that the wood is soft anywhere at a column that a reading speaks for.
    private double doubt(int column) {
        boolean[] seen = new boolean[grid.rows()];
        for (int i = 0; i < readings.count; i++)
            for (int r = 0; r < seen.length; r++)
                seen[r] |= Math.abs(readings.alongMm[i] - middle(column)) <= sightMm && Math.abs(readings.acrossMm[i] - (r + 0.5) * grid.rowMm()) <= SIGHT_ROWS * grid.rowMm();
        int soft = 0;
        for (int d = 0; d < draws.count; d++)
            for (int r = 0; r < seen.length; r++)
                if (seen[r] && draws.soft(d, column, r)) {
                    soft++;
                    break;
                }
        return soft / (double) draws.count;
    }

    /// From a soft reading outward until the doubt is gone, or until readings are too far away to tell.
    private double walk(double at, int step) {
        double end = step < 0 ? 0 : grid.lengthMm();
        int column = grid.columnAt(at);
        double before = doubt[column];
        for (int c = column + step; c >= 0 && c < grid.columns(); c += step) {
            double here = middle(c), nearest = Double.MAX_VALUE;
            for (int i = 0; i < readings.count; i++) nearest = Math.min(nearest, Math.abs(readings.alongMm[i] - here));
            if (nearest > sightMm) return here;
            if (doubt[c] < Decay.DOUBT) {
                double share = before > doubt[c] ? (before - Decay.DOUBT) / (before - doubt[c]) : 1;
                double from = Math.abs(middle(c - step) - at) < Math.abs(here - at) ? middle(c - step) : at;
                double line = from + Math.max(0, Math.min(1, share)) * (here - from);
                return step < 0 ? Math.min(line, at) : Math.max(line, at);
            }
            before = doubt[c];
        }
        return end;
    }

    /// Adds a stretch, joined with any that it touches or comes nearer to than `gap`.
    static void merge(List<double[]> stretches, double from, double to, double gap) {
        double low = from, high = to;
        List<double[]> apart = new ArrayList<>();
        for (double[] one : stretches) {
            if (one[1] + gap < low || one[0] - gap > high) apart.add(one);
            else {
                low = Math.min(low, one[0]);
                high = Math.max(high, one[1]);
            }
        }
        apart.add(new double[] {low, high});
        apart.sort((a, b) -> Double.compare(a[0], b[0]));
        stretches.clear();
        stretches.addAll(apart);
    }
}
