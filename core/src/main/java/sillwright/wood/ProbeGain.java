package sillwright.wood;

import java.util.Arrays;
import java.util.Optional;
import java.util.random.RandomGenerator;

/// The spot on one face whose reading is expected to shrink most the uncertainty of something that is to be decided.
///
/// Each draw of the face tells what a probe would read at a spot and what the decided value would then be; how much of that value's variance is explained by the
/// reading, floor, ceiling and hand included, is what the reading is worth: the law of total variance, with the mean given the reading taken as a straight
/// line above the floor and a level of its own at it. The spot is chosen by the value's place among the draws and not by the value itself: else a few draws with decay where
/// nobody looked would send every push there, and none to the seat that is known.
///
/// @param alongMm   of the spot
/// @param acrossMm  of the spot
/// @param variance  of the decided value now
/// @param explained by a reading there, in the same unit
record ProbeGain(double alongMm, double acrossMm, double variance, double explained) {
    /// The share of the width of what is not known that is expected to remain.
    double left() { return variance > 0 ? Math.sqrt(Math.max(0, 1 - explained / variance)) : 1; }

    /// Holes nearer to each other than this tell nothing new, and split the wood; nor does one do good at an arris, mm. Common practice, no source.
    static final double APART_MM = 25, ARRIS_MM = 8;

    /// A line is not laid through fewer soft draws than this.
    private static final int FEWEST = 6;

    /// @param by      a value for each draw, which the spot is to tell most of
    /// @param decided the value for each draw whose uncertainty is told
    /// @param apartMm of holes, at the least
    /// @param reachMm of the probe
    /// @return empty where no spot is left that is far enough from those that were probed
    static Optional<ProbeGain> best(FaceDraws draws, double[] by, double[] decided, Readings taken, double apartMm, double reachMm, RandomGenerator random) {
        FaceGrid grid = draws.grid;
        double[] places = places(by), hand = hand(draws, random), read = new double[draws.count];
        double middle = mean(places), most = -1;
        int best = -1;
        for (int cell = 0; cell < grid.cells(); cell++) {
            if (!allowed(grid.alongMm(cell), grid.acrossMm(cell), grid, taken, apartMm)) continue;
            read(draws, cell, hand, reachMm, read);
            double tells = explained(read, places, middle);
            if (tells <= most) continue;
            most = tells;
            best = cell;
        }
        return best < 0 ? Optional.empty() : Optional.of(at(draws, decided, best, hand, reachMm, grid.alongMm(best), grid.acrossMm(best)));
    }

    /// What a reading at a spot is worth that was chosen otherwise.
    static ProbeGain at(FaceDraws draws, double[] decided, double alongMm, double acrossMm, double reachMm, RandomGenerator random) {
        FaceGrid grid = draws.grid;
        int cell = grid.rowAt(acrossMm) * grid.columns() + grid.columnAt(alongMm);
        return at(draws, decided, cell, hand(draws, random), reachMm, alongMm, acrossMm);
    }

    private static ProbeGain at(FaceDraws draws, double[] decided, int cell, double[] hand, double reachMm, double alongMm, double acrossMm) {
        double[] read = new double[draws.count];
        read(draws, cell, hand, reachMm, read);
        double mean = mean(decided), variance = 0;
        for (double value : decided) variance += (value - mean) * (value - mean) / draws.count;
        return new ProbeGain(alongMm, acrossMm, variance, explained(read, decided, mean));
    }

    /// By how much the hand strays in each draw.
    private static double[] hand(FaceDraws draws, RandomGenerator random) {
        double[] hand = new double[draws.count];
        for (int d = 0; d < hand.length; d++) hand[d] = draws.handMm * random.nextGaussian();
        return hand;
    }

    /// What a probe would read at a cell in each draw.
    private static void read(FaceDraws draws, int cell, double[] hand, double reachMm, double[] read) {
        for (int d = 0; d < read.length; d++) read[d] = Math.max(0, Math.min(reachMm, draws.depthMm(d, cell) + hand[d]));
    }

    private static double mean(double[] values) { return Arrays.stream(values).sum() / values.length; }

    /// Of each value its place among all, so that a few far-off draws do not weigh more than all others.
    private static double[] places(double[] values) {
        double[] sorted = values.clone(), places = new double[values.length];
        Arrays.sort(sorted);
        for (int d = 0; d < places.length; d++) {
            int at = Arrays.binarySearch(sorted, values[d]), low = at, high = at;
            while (low > 0 && sorted[low - 1] == values[d]) low--;
            while (high + 1 < sorted.length && sorted[high + 1] == values[d]) high++;
            places[d] = (low + high) / 2.0;
        }
        return places;
    }

    private static boolean allowed(double along, double across, FaceGrid grid, Readings taken, double apartMm) {
        double arris = Math.min(ARRIS_MM, grid.acrossMm() / 4);
        if (across < arris || across > grid.acrossMm() - arris) return false;
        for (int i = 0; i < taken.count; i++) if (Math.hypot(taken.alongMm[i] - along, taken.acrossMm[i] - across) < apartMm) return false;
        return true;
    }

    /// The variance of a value that a reading explains, less what chance alone would seem to explain.
    private static double explained(double[] read, double[] decided, double mean) {
        int n = read.length, soft = 0;
        double sumRead = 0, sumSoft = 0, sumSound = 0;
        for (int d = 0; d < n; d++)
            if (read[d] > Readings.SKIN_MM) {
                soft++;
                sumRead += read[d];
                sumSoft += decided[d] - mean;
            } else sumSound += decided[d] - mean;
        if (soft == 0) return 0;
        double meanRead = sumRead / soft, meanSoft = sumSoft / soft, together = 0, spread = 0;
        for (int d = 0; d < n; d++)
            if (read[d] > Readings.SKIN_MM) {
                together += (read[d] - meanRead) * (decided[d] - mean - meanSoft);
                spread += (read[d] - meanRead) * (read[d] - meanRead);
            }
        double levels = sumSoft * sumSoft / soft + (soft < n ? sumSound * sumSound / (n - soft) : 0);
        double whole = 0;
        for (double value : decided) whole += (value - mean) * (value - mean);
        boolean sloped = soft >= FEWEST && spread > 0;
        double explained = levels + (sloped ? together * together / spread : 0);
        int by = (soft < n ? 1 : 0) + (sloped ? 1 : 0);
        return Math.max(0, explained - by * (whole - explained) / (n - by - 1)) / n;
    }
}
