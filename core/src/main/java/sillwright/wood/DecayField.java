package sillwright.wood;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/// The latent depth of decay beneath one face, given what a probe said: a Gaussian process seen through a floor at zero
/// and a ceiling at the probe's reach.
///
/// A reading of nothing bounds the latent depth from above, one that ran out bounds it from below; each such bound is
/// replaced by the normal that keeps its two moments (expectation propagation), so that with no bound at all this is exact
/// Gaussian-process regression, which is simple kriging.
/// Source: Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), sec. 3.6, algorithm 3.5, eq. 3.65 and 5.9
/// (from memory).
final class DecayField {
    private static final int MOST_PASSES = 60;
    /// The bounds have come to rest when none moves the field by more than this share of its deviation there.
    private static final double REST = 1e-7;
    /// A bound that would move the field by less than this share of what counts as rest is left as it is.
    private static final double STILL = 0.3;
    /// So near is enough while a search is still under way.
    static final double ROUGH = 1e-4;
    /// What draws add to a field at each point, so that its covariance has a triangle: a deviation of this share of its spread, which is 0.06 mm of 20 mm, beside a hand that strays by 1.5 mm.
    private static final double FINE = 3e-3;
    /// A stand-in weaker than this beside the field is as good as none.
    private static final double FAINT = 1e-9;

    private final Feel feel;
    private final Readings readings;
    private final int n;
    private final double[] siteTau;
    private final double[] siteNu;
    private final double[][] k;
    /// Uᵀ·U = I + √S·K·√S, where S holds the precision of each reading's stand-in; and the inverse of Uᵀ.
    private final double[][] triangle;
    private final double[][] inverse;
    private final double[] root;
    private final double[] mean;
    private final double[] variance;
    private final double[] weight;
    private double logEvidence;
    private boolean settled;

    private DecayField(Readings readings, Feel feel, double[] startTau, double[] startNu) {
        this.feel = feel;
        this.readings = readings;
        n = readings.count;
        siteTau = startTau.clone();
        siteNu = startNu.clone();
        k = new double[n][n];
        triangle = new double[n][n];
        inverse = new double[n][n];
        root = new double[n];
        mean = new double[n];
        variance = new double[n];
        weight = new double[n];
        for (int i = 0; i < n; i++) {
            feel.covariances(readings.alongMm[i], readings.acrossMm[i], readings.alongMm, readings.acrossMm, i + 1, k[i]);
            for (int j = 0; j < i; j++) k[j][i] = k[i][j];
        }
    }

    static DecayField of(Readings readings, Feel feel) { return of(readings, feel, new double[readings.count], new double[readings.count], REST); }

    /// @param startTau where the bounds' stand-ins begin: those of a field with nearly the same numbers save passes
    /// @param rest     how still the bounds must be
    static DecayField of(Readings readings, Feel feel, double[] startTau, double[] startNu, double rest) {
        DecayField field = new DecayField(readings, feel, startTau, startNu);
        field.settle(rest);
        return field;
    }

    /// The field with one reading more, its numbers kept: the stand-ins of the others begin where they were.
    DecayField with(double alongMm, double acrossMm, double depthMm, Readings.Says says) {
        return of(readings.with(alongMm, acrossMm, depthMm, says), feel, Arrays.copyOf(siteTau, n + 1), Arrays.copyOf(siteNu, n + 1), 1e-5);
    }

    private void settle(double rest) {
        double hand2 = feel.handMm() * feel.handMm();
        int bounds = 0;
        int[] bounded = new int[n];
        for (int i = 0; i < n; i++)
            if (readings.says[i] == Readings.Says.EXACTLY) {
                siteTau[i] = 1 / hand2;
                siteNu[i] = (readings.depthMm[i] - feel.meanMm()) / hand2;
            } else bounded[bounds++] = i;
        double[] column = new double[n];
        posterior(column);
        if (bounds > 0) {
            settled = settle(Arrays.copyOf(bounded, bounds), hand2, rest);
            posterior(column);
        } else settled = true;
        logEvidence = evidence(hand2);
    }

    /// One bound after the other, each heard at once by all others, until none moves the field any more.
    ///
    /// @param bounded which readings set a bound
    private boolean settle(int[] bounded, double hand2, double rest) {
        int count = bounded.length;
        double[][] spread = spread(bounded);
        double[] middle = new double[count], row = new double[count], step = new double[2];
        for (int b = 0; b < count; b++) middle[b] = mean[bounded[b]];
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double moved = 0;
            for (int b = 0; b < count; b++) {
                double here = spread[b][b], by = bound(bounded[b], middle[b], here, hand2, step);
                moved = Math.max(moved, by);
                if (by < STILL * rest) continue;
                siteTau[bounded[b]] += step[0];
                siteNu[bounded[b]] += step[1];
                for (int c = 0; c < count; c++) row[c] = c < b ? spread[c][b] : spread[b][c];
                double whole = 1 + step[0] * here;
                Rows.add(middle, (step[1] - step[0] * middle[b]) / whole, row, 0, count);
                for (int c = 0; c < count; c++) Rows.add(spread[c], -step[0] / whole * row[c], row, c, count);
            }
            if (moved < rest) return true;
        }
        return false;
    }

    /// The covariance of the field at some readings, as the stand-ins leave it: the upper half.
    private double[][] spread(int[] some) {
        int count = some.length;
        double[][] spread = new double[count][count], told = new double[n][count];
        for (int i = 0; i < n; i++) for (int c = 0; c < count; c++) told[i][c] = root[i] * k[i][some[c]];
        Triangle.forward(triangle, n, told);
        double[] by = new double[n];
        for (int b = 0; b < count; b++) {
            for (int c = b; c < count; c++) spread[b][c] = k[some[b]][some[c]];
            for (int i = 0; i < n; i++) by[i] = -told[i][b];
            Rows.add(spread[b], by, told, 0, n, b, count);
        }
        return spread;
    }

    /// The field at the readings, from the bounds' present stand-ins.
    private void posterior(double[] column) {
        for (int i = 0; i < n; i++) root[i] = Math.sqrt(siteTau[i]);
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) triangle[i][j] = root[i] * k[i][j] * root[j];
            triangle[i][i] += 1;
        }
        if (!Triangle.factor(triangle, n)) throw new ArithmeticException("the covariance of the readings is not positive");
        Triangle.invert(triangle, n, inverse);
        Arrays.fill(column, 0);
        Rows.add(column, siteNu, k, 0, n, 0, n);
        for (int i = 0; i < n; i++) column[i] *= root[i];
        Triangle.forward(triangle, n, column);
        Triangle.backward(triangle, n, column);
        for (int i = 0; i < n; i++) weight[i] = siteNu[i] - root[i] * column[i];
        Arrays.fill(mean, 0);
        Rows.add(mean, weight, k, 0, n, 0, n);
        Arrays.fill(variance, 0);
        for (int r = 0; r < n; r++) Rows.addSquares(variance, 1, inverse[r], r + 1);
        double faint = FAINT / (feel.spreadMm() * feel.spreadMm());
        for (int i = 0; i < n; i++) variance[i] = siteTau[i] > faint ? (1 - variance[i]) / siteTau[i] : k[i][i] - known(k[i], column);
    }

    /// How much of the prior variance at a point the readings take away.
    ///
    /// @param covariance of the point with each reading
    private double known(double[] covariance, double[] scratch) {
        for (int i = 0; i < n; i++) scratch[i] = root[i] * covariance[i];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double one = Rows.dot(inverse[i], scratch, 0, i + 1);
            sum += one * one;
        }
        return sum;
    }

    /// What the stand-in of one bound should change by, its precision and its pull, into `step`; tells how far that moves the field there, in its deviations.
    private double bound(int i, double middle, double spread, double hand2, double[] step) {
        double tau = 1 / spread - siteTau[i], nu = middle / spread - siteNu[i];
        step[0] = 0;
        step[1] = 0;
        if (!(tau > 0)) return 0;
        double v = 1 / tau, m = nu / tau;
        double sign = sign(i), scale = Math.sqrt(hand2 + v), z = sign * (m - edge(i)) / scale;
        double push = Normal.push(z);
        double newMean = m + sign * v * push / scale, newVariance = v - v * v * push * (z + push) / (hand2 + v);
        step[0] = Math.max(0, 1 / newVariance - tau) - siteTau[i];
        step[1] = newMean / newVariance - nu - siteNu[i];
        return Math.abs(step[0]) * v + Math.abs(step[1]) * Math.sqrt(v);
    }

    private double sign(int i) { return readings.says[i] == Readings.Says.AT_LEAST ? 1 : -1; }

    /// Where a bound lies, about the mean of the field.
    private double edge(int i) { return readings.depthMm[i] - feel.meanMm(); }

    /// The logarithm of how likely the readings are under these numbers: eq. 3.65 in the form that divides by nothing.
    private double evidence(double hand2) {
        double sum = -Triangle.halfLogDet(triangle, n);
        for (int i = 0; i < n; i++) {
            double tau = 1 / variance[i] - siteTau[i], nu = mean[i] / variance[i] - siteNu[i], m = nu / tau, v = 1 / tau;
            sum += 0.5 * Math.log1p(siteTau[i] * v) + 0.5 * siteNu[i] * mean[i] - 0.5 * siteNu[i] * siteNu[i] / (tau + siteTau[i])
                    + 0.5 * m * tau / (tau + siteTau[i]) * (siteTau[i] * m - 2 * siteNu[i]);
            sum += readings.says[i] == Readings.Says.EXACTLY ? Normal.logDensity(readings.depthMm[i] - feel.meanMm(), m, v + hand2)
                    : Normal.logBelow(sign(i) * (m - edge(i)) / Math.sqrt(hand2 + v));
        }
        return sum;
    }

    /// How the evidence grows along each number of [Feel#point], the bounds at rest: eq. 5.9 with the stand-ins as noise.
    double[] slope() {
        double[] slope = new double[Feel.NUMBERS];
        double hand2 = feel.handMm() * feel.handMm(), weights = 0;
        for (int i = 0; i < n; i++) weights += weight[i];
        double[][] precision = precision();
        for (int i = 0; i < n; i++) {
            double own = 0.5 * (weight[i] * weight[i] - precision[i][i]);
            slope[1] += 2 * own * k[i][i];
            slope[4] += 2 * hand2 * (readings.says[i] == Readings.Says.EXACTLY ? own : boundSlope(i, hand2));
            for (int j = 0; j < i; j++) {
                double g = weight[i] * weight[j] - precision[i][j];
                double a = (readings.alongMm[i] - readings.alongMm[j]) / feel.alongMm(), c = (readings.acrossMm[i] - readings.acrossMm[j]) / feel.acrossMm();
                slope[1] += 2 * g * k[i][j];
                double r = Math.sqrt(a * a + c * c);
                if (!(r > 0)) continue;
                double stretch = g * feel.stretch(r, k[i][j]);
                slope[2] += stretch * a * a;
                slope[3] += stretch * c * c;
            }
        }
        slope[0] = weights * feel.spreadMm();
        slope[1] += weights * feel.meanMm();
        return slope;
    }

    /// What a bound's likelihood gains with the variance of the hand.
    private double boundSlope(int i, double hand2) {
        double tau = 1 / variance[i] - siteTau[i], nu = mean[i] / variance[i] - siteNu[i], m = nu / tau, v = 1 / tau;
        double z = sign(i) * (m - edge(i)) / Math.sqrt(hand2 + v);
        return -0.5 * z / (hand2 + v) * Normal.push(z);
    }

    /// The inverse of the readings' covariance with their noise.
    double[][] precision() {
        double[][] precision = new double[n][n];
        double[] by = new double[n];
        for (int i = 0; i < n; i++) {
            for (int r = i; r < n; r++) by[r] = root[i] * inverse[r][i];
            Rows.add(precision[i], by, inverse, i, n, 0, i + 1);
            for (int j = 0; j <= i; j++) {
                precision[i][j] *= root[j];
                precision[j][i] = precision[i][j];
            }
        }
        return precision;
    }

    Feel feel() { return feel; }

    double logEvidence() { return logEvidence; }

    /// False where the passes ran out before the bounds came to rest.
    boolean settled() { return settled; }

    int readings() { return n; }

    Readings said() { return readings; }

    /// What each reading weighs in the mean of the field: the inverse of the readings' covariance times what they say.
    double[] weights() { return weight.clone(); }

    double[] siteTau() { return siteTau.clone(); }

    double[] siteNu() { return siteNu.clone(); }

    /// The latent depth at a point, mm, into `out`: its mean, then its variance.
    ///
    /// @param scratch as long as there are readings
    void at(double alongMm, double acrossMm, double[] out, double[] scratch) {
        double[] covariance = new double[n];
        feel.covariances(alongMm, acrossMm, readings.alongMm, readings.acrossMm, n, covariance);
        out[0] = feel.meanMm() + Rows.dot(covariance, weight, 0, n);
        out[1] = Math.max(0, feel.spreadMm() * feel.spreadMm() - known(covariance, scratch));
    }

    /// The latent depth at many points, mm: of each its mean and its variance.
    void at(double[] alongsMm, double[] acrossesMm, double[] means, double[] variances) {
        int points = alongsMm.length;
        double[][] covariance = covariances(alongsMm, acrossesMm);
        Arrays.fill(means, feel.meanMm());
        Rows.add(means, weight, covariance, 0, n, 0, points);
        Arrays.fill(variances, feel.spreadMm() * feel.spreadMm());
        tell(covariance);
        for (double[] row : covariance) Rows.addSquares(variances, -1, row, points);
        for (int p = 0; p < points; p++) variances[p] = Math.max(0, variances[p]);
    }

    /// Of each reading with many points.
    double[][] covariances(double[] alongsMm, double[] acrossesMm) {
        double[][] all = new double[n][alongsMm.length];
        for (int i = 0; i < n; i++) feel.covariances(readings.alongMm[i], readings.acrossMm[i], alongsMm, acrossesMm, alongsMm.length, all[i]);
        return all;
    }

    /// Makes of the covariances of the readings with many points rows whose products are the covariance that the readings tell.
    private void tell(double[][] covariance) {
        for (int i = 0; i < n; i++) Rows.scale(covariance[i], root[i], 0, covariance[i].length);
        Triangle.forward(triangle, n, covariance);
    }

    /// Rows that make draws of many points together: their sum, each row times a standard normal of its own, strays about the mean as the readings leave the field. Each row
    /// begins at its own point; those before it are nothing.
    double[][] strays(double[] alongsMm, double[] acrossesMm) {
        int points = alongsMm.length;
        return strays(covariances(alongsMm, acrossesMm), points, (i, j) -> feel.covariance(alongsMm[i], acrossesMm[i], alongsMm[j], acrossesMm[j]));
    }

    /// The same of the cells of a grid, of which many lie alike to one another.
    ///
    /// @param told the covariance of each reading with each cell
    double[][] strays(FaceGrid grid, double[][] told) {
        int cells = grid.cells(), columns = grid.columns();
        double[] apart = new double[cells];
        feel.covariances(grid.alongMm(0), grid.acrossMm(0), grid.alongs(), grid.acrosses(), cells, apart);
        int[] column = IntStream.range(0, cells).map(cell -> cell % columns).toArray(), line = IntStream.range(0, cells).map(cell -> cell / columns).toArray();
        return strays(Arrays.stream(told).map(double[]::clone).toArray(double[][]::new), cells, (i, j) -> apart[Math.abs(line[i] - line[j]) * columns + Math.abs(column[i] - column[j])]);
    }

    private double[][] strays(double[][] told, int points, Covariance covariance) {
        double fine = FINE * FINE * feel.spreadMm() * feel.spreadMm();
        double[][] rows = new double[points][points];
        double[] by = new double[n];
        tell(told);
        for (int i = 0; i < points; i++) {
            double[] row = rows[i];
            for (int j = i; j < points; j++) row[j] = covariance.between(i, j);
            for (int k = 0; k < n; k++) by[k] = -told[k][i];
            Rows.add(row, by, told, 0, n, i, points);
            row[i] += fine;
        }
        if (!Triangle.factor(rows, points)) throw new IllegalStateException("points stray by less than nothing under " + feel);
        for (int i = 1; i < points; i++) Arrays.fill(rows[i], 0, i, 0);
        return rows;
    }

    /// Of the latent depth at two of many points.
    private interface Covariance { double between(int i, int j); }
}
