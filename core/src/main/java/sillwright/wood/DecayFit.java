package sillwright.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/// Finds the numbers of a face's field: the most likely ones given its readings and weak priors, and a few others that
/// are plausible too, so that an interval does not take the numbers for known.
///
/// Source: the quasi-Newton search of Broyden, Fletcher, Goldfarb and Shanno, a standard of numerical texts (from memory), over the
/// logarithm of the evidence and the prior; then points about the best, spread by the curvature there and weighed by importance.
final class DecayFit {
    private static final int D = Feel.NUMBERS;
    private static final int MOST_STEPS = 40;
    private static final double CLOSE = 2e-3;
    /// More readings than this tell the numbers no better: the search walks on so many, well spread, and the field then takes them all.
    private static final int MOST_READINGS = 120;
    private static final double MOST_WEIGHT = 4;

    private final Readings readings;
    private final Feel.Shape shape;
    private DecayField best;
    private DecayField last;
    private double bestValue = Double.NEGATIVE_INFINITY;

    /// A field and how much it counts beside the others; the weights sum to one.
    record Weighed(DecayField field, double weight) {}

    private DecayFit(Readings readings, Feel.Shape shape) {
        this.readings = readings;
        this.shape = shape;
    }

    static DecayField fit(Readings readings, Feel.Shape shape) { return searched(readings, shape).full(readings); }

    /// The most likely field first, then `others` plausible ones.
    static List<Weighed> plausible(Readings readings, Feel.Shape shape, int others, RandomGenerator random) {
        DecayFit fit = searched(readings, shape);
        List<Weighed> rough = fit.about(others, random);
        if (fit.readings == readings) return rough;
        List<Weighed> all = new ArrayList<>();
        double[] tau = new double[readings.count], nu = new double[readings.count];
        for (Weighed one : rough) {
            DecayField field = DecayField.of(readings, one.field.feel(), tau, nu, DecayField.ROUGH);
            all.add(new Weighed(field, one.weight));
            tau = field.siteTau();
            nu = field.siteNu();
        }
        return List.copyOf(all);
    }

    private static DecayFit searched(Readings readings, Feel.Shape shape) {
        DecayFit fit = new DecayFit(readings.thinned(MOST_READINGS, Feel.USUAL.alongMm(), Feel.USUAL.acrossMm()), shape);
        fit.search();
        return fit;
    }

    private DecayField full(Readings all) { return all == readings ? best : DecayField.of(all, best.feel()); }

    /// The value to be made great at a point; the field there stays in `last`.
    private double value(double[] point) {
        Feel feel = Feel.USUAL.shaped(shape).at(point);
        if (!feel.sane()) return Double.NEGATIVE_INFINITY;
        last = best == null ? DecayField.of(readings, feel, new double[readings.count], new double[readings.count], DecayField.ROUGH)
                : DecayField.of(readings, feel, best.siteTau(), best.siteNu(), DecayField.ROUGH);
        double value = last.logEvidence() + feel.logPrior();
        if (Double.isNaN(value)) return Double.NEGATIVE_INFINITY;
        if (value > bestValue) {
            bestValue = value;
            best = last;
        }
        return value;
    }

    private static double[] slope(DecayField field) {
        double[] slope = field.slope(), prior = field.feel().priorSlope();
        for (int i = 0; i < D; i++) slope[i] += prior[i];
        return slope;
    }

    private void search() {
        double[] point = Feel.USUAL.point();
        double value = value(point);
        double[] slope = slope(last);
        double[][] inverse = new double[D][D];
        for (int i = 0; i < D; i++) inverse[i][i] = 1 / (2 * Feel.priorBend(i));
        for (int count = 0; count < MOST_STEPS; count++) {
            double[] step = times(inverse, slope);
            double gain = dot(step, slope);
            if (!(gain > CLOSE)) break;
            double shorten = Math.min(1, 1 / Math.max(1e-12, largest(step)));
            double[] next = moved(point, step, shorten);
            double nextValue = value(next);
            while (!(nextValue >= value + 1e-4 * shorten * gain) && shorten > 1e-3) {
                shorten *= 0.4;
                next = moved(point, step, shorten);
                nextValue = value(next);
            }
            if (!(nextValue > value)) break;
            double[] nextSlope = slope(last);
            learn(inverse, minus(next, point), minus(slope, nextSlope));
            point = next;
            value = nextValue;
            slope = nextSlope;
        }
    }

    /// Betters the inverse of the curvature by one step and the change of slope along it.
    private static void learn(double[][] inverse, double[] step, double[] change) {
        double along = dot(step, change);
        if (!(along > 1e-12)) return;
        double[] bent = times(inverse, change);
        double whole = 1 + dot(change, bent) / along;
        for (int i = 0; i < D; i++) for (int j = 0; j < D; j++) inverse[i][j] += (whole * step[i] * step[j] - bent[i] * step[j] - step[i] * bent[j]) / along;
    }

    private List<Weighed> about(int others, RandomGenerator random) {
        DecayField middle = best;
        double top = bestValue;
        double[] centre = middle.feel().point();
        double[][] triangle = curvature(centre);
        List<DecayField> fields = new ArrayList<>(List.of(middle));
        List<Double> weights = new ArrayList<>(List.of(1.0));
        double sum = 1;
        double[] off = new double[D];
        for (int k = 0; k < others; k++) {
            for (int i = 0; i < D; i++) off[i] = k % 2 == 0 ? random.nextGaussian() : -off[i];
            double[] stray = off.clone();
            Triangle.backward(triangle, D, stray);
            double value = value(moved(centre, stray, 1));
            if (value == Double.NEGATIVE_INFINITY) continue;
            double weight = Math.min(MOST_WEIGHT, Math.exp(value - top + 0.5 * dot(off, off)));
            fields.add(last);
            weights.add(weight);
            sum += weight;
        }
        List<Weighed> all = new ArrayList<>();
        for (int k = 0; k < fields.size(); k++) all.add(new Weighed(fields.get(k), weights.get(k) / sum));
        return List.copyOf(all);
    }

    /// The triangle of the curvature at the best point, by differences of the slope; nowhere flatter than half the prior's own.
    private double[][] curvature(double[] centre) {
        double step = 0.1;
        double[][] bend = new double[D][D];
        for (int i = 0; i < D; i++) {
            double[] by = new double[D];
            by[i] = step;
            double[] high = value(moved(centre, by, 1)) > Double.NEGATIVE_INFINITY ? slope(last) : new double[D];
            double[] low = value(moved(centre, by, -1)) > Double.NEGATIVE_INFINITY ? slope(last) : new double[D];
            for (int j = 0; j < D; j++) {
                bend[i][j] += (low[j] - high[j]) / (4 * step);
                bend[j][i] += (low[j] - high[j]) / (4 * step);
            }
        }
        for (double share = 1; share > 1e-3; share *= 0.5) {
            double[][] triangle = new double[D][D];
            for (int i = 0; i < D; i++) for (int j = 0; j < D; j++)
                triangle[i][j] = i == j ? Math.max(bend[i][i], 0.5 * Feel.priorBend(i)) : share * bend[i][j];
            if (Triangle.factor(triangle, D)) return triangle;
        }
        double[][] plain = new double[D][D];
        for (int i = 0; i < D; i++) plain[i][i] = Math.sqrt(Feel.priorBend(i));
        return plain;
    }

    private static double[] moved(double[] from, double[] step, double by) {
        double[] to = from.clone();
        for (int i = 0; i < D; i++) to[i] += by * step[i];
        return to;
    }

    private static double[] minus(double[] a, double[] b) { return moved(a, b, -1); }

    private static double dot(double[] a, double[] b) { return Rows.dot(a, b, 0, D); }

    private static double largest(double[] a) { return java.util.Arrays.stream(a).map(Math::abs).max().orElse(0); }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] out = new double[D];
        for (int i = 0; i < D; i++) out[i] = dot(matrix[i], vector);
        return out;
    }
}
