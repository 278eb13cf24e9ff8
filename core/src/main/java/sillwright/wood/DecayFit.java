package sillwright.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/// Finds the numbers of a face's field: the most likely ones given its readings and weak priors, and a few others that
/// are plausible too, so that an interval does not take the numbers for known.
///
/// Source: Nelder and Mead's simplex search, a standard of numerical texts (from memory), over the logarithm of the evidence
/// and the prior; then points about the best, spread by the curvature there and weighed by importance.
final class DecayFit {
    private static final int MOST_STEPS = 120;
    private static final double CLOSE = 1e-3;

    private final Readings readings;
    private final Feel.Shape shape;
    private static final double[] WIDEST = {0.4, 0.7, 0.7, 0.7, 0.3};
    private DecayField best;
    private DecayField last;
    private double bestValue = Double.NEGATIVE_INFINITY;

    /// A field and how much it counts beside the others; the weights sum to one.
    record Weighed(DecayField field, double weight) {}

    private DecayFit(Readings readings, Feel.Shape shape) {
        this.readings = readings;
        this.shape = shape;
    }

    static DecayField fit(Readings readings, Feel.Shape shape) {
        DecayFit fit = new DecayFit(readings, shape);
        fit.search();
        return fit.best;
    }

    /// The most likely field first, then `others` plausible ones.
    static List<Weighed> plausible(Readings readings, Feel.Shape shape, int others, RandomGenerator random) {
        DecayFit fit = new DecayFit(readings, shape);
        fit.search();
        return fit.about(others, random);
    }

    private List<Weighed> about(int others, RandomGenerator random) {
        DecayField middle = best;
        double top = bestValue;
        double[] centre = middle.feel().point(), width = new double[centre.length];
        for (int i = 0; i < centre.length; i++) {
            double step = 0.25, low = value(moved(centre, i, -step)), high = value(moved(centre, i, step));
            double curvature = (2 * top - low - high) / (step * step);
            width[i] = Math.min(WIDEST[i], 1 / Math.sqrt(Math.max(1, Double.isFinite(curvature) ? curvature : 1)));
        }
        List<DecayField> fields = new ArrayList<>(List.of(middle));
        List<Double> weights = new ArrayList<>(List.of(1.0));
        double sum = 1;
        for (int k = 0; k < others; k++) {
            double[] point = centre.clone();
            double proposed = 0;
            for (int i = 0; i < point.length; i++) {
                double off = random.nextGaussian();
                point[i] += width[i] * off;
                proposed -= 0.5 * off * off;
            }
            double value = value(point);
            if (value == Double.NEGATIVE_INFINITY) continue;
            double weight = Math.min(4, Math.exp(value - top - proposed));
            fields.add(last);
            weights.add(weight);
            sum += weight;
        }
        List<Weighed> all = new ArrayList<>();
        for (int k = 0; k < fields.size(); k++) all.add(new Weighed(fields.get(k), weights.get(k) / sum));
        return List.copyOf(all);
    }

    private static double[] moved(double[] point, int i, double by) {
        double[] moved = point.clone();
        moved[i] += by;
        return moved;
    }

    private double value(double[] point) {
        Feel feel = Feel.USUAL.at(point);
        feel = new Feel(feel.meanMm(), feel.spreadMm(), feel.alongMm(), feel.acrossMm(), feel.handMm(), shape);
        if (!(feel.spreadMm() > 0.5 && feel.spreadMm() < 500 && feel.handMm() > 0.2 && feel.alongMm() < 20000 && feel.acrossMm() < 20000
                && feel.alongMm() > 5 && feel.acrossMm() > 5)) return Double.NEGATIVE_INFINITY;
        DecayField field = best == null ? DecayField.of(readings, feel) : DecayField.of(readings, feel, best.siteTau(), best.siteNu());
        last = field;
        double value = field.logEvidence() + feel.logPrior();
        if (Double.isNaN(value)) return Double.NEGATIVE_INFINITY;
        if (value > bestValue) {
            bestValue = value;
            best = field;
        }
        return value;
    }

    private void search() {
        int d = 5;
        double[][] points = new double[d + 1][];
        double[] values = new double[d + 1];
        double[] step = {0.3, 0.5, 0.5, 0.5, 0.2};
        for (int i = 0; i <= d; i++) {
            points[i] = Feel.USUAL.point();
            if (i > 0) points[i][i - 1] += step[i - 1];
            values[i] = value(points[i]);
        }
        for (int count = 0; count < MOST_STEPS; count++) {
            sort(points, values);
            if (values[0] - values[d] < CLOSE) break;
            double[] centre = new double[d];
            for (int i = 0; i < d; i++) for (int j = 0; j < d; j++) centre[j] += points[i][j] / d;
            double[] mirrored = beyond(centre, points[d], 1);
            double value = value(mirrored);
            if (value > values[0]) {
                double[] farther = beyond(centre, points[d], 2);
                double further = value(farther);
                put(points, values, d, further > value ? farther : mirrored, Math.max(further, value));
            } else if (value > values[d - 1]) put(points, values, d, mirrored, value);
            else {
                double[] nearer = value > values[d] ? beyond(centre, points[d], 0.5) : beyond(centre, points[d], -0.5);
                double near = value(nearer);
                if (near > Math.max(value, values[d])) put(points, values, d, nearer, near);
                else for (int i = 1; i <= d; i++) {
                    for (int j = 0; j < d; j++) points[i][j] = 0.5 * (points[0][j] + points[i][j]);
                    values[i] = value(points[i]);
                }
            }
        }
    }

    private static void put(double[][] points, double[] values, int at, double[] point, double value) {
        points[at] = point;
        values[at] = value;
    }

    private static double[] beyond(double[] centre, double[] from, double by) {
        double[] point = new double[centre.length];
        for (int j = 0; j < point.length; j++) point[j] = centre[j] + by * (centre[j] - from[j]);
        return point;
    }

    private static void sort(double[][] points, double[] values) {
        for (int i = 1; i < values.length; i++)
            for (int j = i; j > 0 && values[j] > values[j - 1]; j--) {
                double value = values[j];
                values[j] = values[j - 1];
                values[j - 1] = value;
                double[] point = points[j];
                points[j] = points[j - 1];
                points[j - 1] = point;
            }
    }
}
