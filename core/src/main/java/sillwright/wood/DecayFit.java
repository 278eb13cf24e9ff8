package sillwright.wood;

/// Finds the numbers of a face's field: the most likely ones given its readings and weak priors.
///
/// Source: Nelder and Mead's simplex search, a standard of numerical texts (from memory), over the logarithm of the evidence
/// and the prior.
final class DecayFit {
    private static final int MOST_STEPS = 120;
    private static final double CLOSE = 1e-3;

    private final Readings readings;
    private final Feel.Shape shape;
    private DecayField best;
    private double bestValue = Double.NEGATIVE_INFINITY;

    private DecayFit(Readings readings, Feel.Shape shape) {
        this.readings = readings;
        this.shape = shape;
    }

    static DecayField fit(Readings readings, Feel.Shape shape) {
        DecayFit fit = new DecayFit(readings, shape);
        fit.search();
        return fit.best;
    }

    private double value(double[] point) {
        Feel feel = Feel.USUAL.at(point);
        feel = new Feel(feel.meanMm(), feel.spreadMm(), feel.alongMm(), feel.acrossMm(), feel.handMm(), shape);
        if (!(feel.spreadMm() > 0.5 && feel.spreadMm() < 500 && feel.handMm() > 0.2 && feel.alongMm() < 20000 && feel.acrossMm() < 20000
                && feel.alongMm() > 5 && feel.acrossMm() > 5)) return Double.NEGATIVE_INFINITY;
        DecayField field = best == null ? DecayField.of(readings, feel) : DecayField.of(readings, feel, best.siteTau(), best.siteNu());
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
        double[] step = {0.6, 0.5, 0.5, 0.5, 0.2};
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
