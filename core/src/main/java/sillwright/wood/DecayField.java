package sillwright.wood;

/// The latent depth of decay beneath one face, given what a probe said: a Gaussian process seen through a floor at zero
/// and a ceiling at the probe's reach.
///
/// A reading of nothing bounds the latent depth from above, one that ran out bounds it from below; each such bound is
/// replaced by the normal that keeps its two moments (expectation propagation), so that with no bound at all this is exact
/// Gaussian-process regression, which is simple kriging.
/// Source: Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), sec. 3.6, algorithm 3.5, eq. 3.65, here
/// with all bounds taken together at each pass (from memory).
final class DecayField {
    private static final int MOST_PASSES = 60;
    private static final double HURRY = 0.7;

    private final Feel feel;
    private final Readings readings;
    private final int n;
    private final double[] siteTau;
    private final double[] siteNu;
    private final double[] k;
    private final double[] b;
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
        k = new double[n * n];
        b = new double[n * n];
        mean = new double[n];
        variance = new double[n];
        weight = new double[n];
        for (int i = 0; i < n; i++)
            for (int j = 0; j <= i; j++) {
                double c = feel.covariance(readings.alongMm[i], readings.acrossMm[i], readings.alongMm[j], readings.acrossMm[j]);
                k[i * n + j] = c;
                k[j * n + i] = c;
            }
    }

    static DecayField of(Readings readings, Feel feel) { return of(readings, feel, new double[readings.count], new double[readings.count]); }

    /// @param startTau where the bounds' stand-ins begin: those of a field with nearly the same numbers save passes
    static DecayField of(Readings readings, Feel feel, double[] startTau, double[] startNu) {
        DecayField field = new DecayField(readings, feel, startTau, startNu);
        field.settle();
        return field;
    }

    private void settle() {
        double hand2 = feel.handMm() * feel.handMm();
        for (int i = 0; i < n; i++)
            if (readings.says[i] == Readings.Says.EXACTLY) {
                siteTau[i] = 1 / hand2;
                siteNu[i] = (readings.depthMm[i] - feel.meanMm()) / hand2;
            }
        double[] root = new double[n], column = new double[n];
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            posterior(root, column);
            double moved = 0;
            for (int i = 0; i < n; i++) if (readings.says[i] != Readings.Says.EXACTLY) moved = Math.max(moved, bound(i, hand2));
            settled = moved < 1e-7;
            if (settled) break;
        }
        posterior(root, column);
        logEvidence = evidence(hand2);
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) sum += k[i * n + j] * siteNu[j];
            column[i] = root[i] * sum;
        }
        Triangle.forward(b, n, column);
        Triangle.backward(b, n, column);
        for (int i = 0; i < n; i++) weight[i] = siteNu[i] - root[i] * column[i];
    }

    /// The field at the readings, from the bounds' present stand-ins.
    private void posterior(double[] root, double[] column) {
        for (int i = 0; i < n; i++) root[i] = Math.sqrt(siteTau[i]);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) b[i * n + j] = root[i] * k[i * n + j] * root[j];
            b[i * n + i] += 1;
        }
        if (!Triangle.factor(b, n)) throw new ArithmeticException("the covariance of the readings is not positive");
        double[] scaled = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) sum += k[i * n + j] * siteNu[j];
            scaled[i] = root[i] * sum;
            mean[i] = sum;
        }
        Triangle.forward(b, n, scaled);
        Triangle.backward(b, n, scaled);
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) sum += k[i * n + j] * root[j] * scaled[j];
            mean[i] -= sum;
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) column[j] = root[j] * k[i * n + j];
            Triangle.forward(b, n, column);
            double sum = 0;
            for (int j = 0; j < n; j++) sum += column[j] * column[j];
            variance[i] = k[i * n + i] - sum;
        }
    }

    /// Renews the stand-in of one bound; tells how far it moved.
    private double bound(int i, double hand2) {
        double tau = 1 / variance[i] - siteTau[i], nu = mean[i] / variance[i] - siteNu[i];
        if (!(tau > 0)) return 0;
        double v = 1 / tau, m = nu / tau;
        double sign = readings.says[i] == Readings.Says.AT_LEAST ? 1 : -1;
        double scale = Math.sqrt(hand2 + v), z = sign * (m - edge(i)) / scale;
        double push = Normal.push(z);
        double newMean = m + sign * v * push / scale, newVariance = v - v * v * push * (z + push) / (hand2 + v);
        double newTau = Math.max(0, 1 / newVariance - tau), newNu = newMean / newVariance - nu;
        double stepTau = HURRY * (newTau - siteTau[i]), stepNu = HURRY * (newNu - siteNu[i]);
        siteTau[i] += stepTau;
        siteNu[i] += stepNu;
        return Math.abs(stepTau) * v + Math.abs(stepNu) * Math.sqrt(v);
    }

    /// Where a bound lies, about the mean of the field.
    private double edge(int i) { return (readings.says[i] == Readings.Says.AT_LEAST ? readings.depthMm[i] : 0) - feel.meanMm(); }

    /// The logarithm of how likely the readings are under these numbers: eq. 3.65 in the form that divides by nothing.
    private double evidence(double hand2) {
        double sum = -Triangle.halfLogDet(b, n);
        for (int i = 0; i < n; i++) {
            double tau = 1 / variance[i] - siteTau[i], nu = mean[i] / variance[i] - siteNu[i], m = nu / tau, v = 1 / tau;
            sum += 0.5 * Math.log1p(siteTau[i] * v) + 0.5 * siteNu[i] * mean[i] - 0.5 * siteNu[i] * siteNu[i] / (tau + siteTau[i])
                    + 0.5 * m * tau / (tau + siteTau[i]) * (siteTau[i] * m - 2 * siteNu[i]);
            double sign = readings.says[i] == Readings.Says.AT_LEAST ? 1 : -1;
            sum += readings.says[i] == Readings.Says.EXACTLY ? Normal.logDensity(readings.depthMm[i] - feel.meanMm(), m, v + hand2)
                    : Normal.logBelow(sign * (m - edge(i)) / Math.sqrt(hand2 + v));
        }
        return sum;
    }

    Feel feel() { return feel; }

    double logEvidence() { return logEvidence; }

    /// False where the passes ran out before the bounds came to rest.
    boolean settled() { return settled; }

    /// What each reading weighs in the mean of the field: the inverse of the readings' covariance times what they say.
    double[] weights() { return weight.clone(); }

    double[] siteTau() { return siteTau.clone(); }

    double[] siteNu() { return siteNu.clone(); }

    /// The latent depth at a point, mm, into `out`: its mean, then its variance.
    ///
    /// @param scratch as long as there are readings
    void at(double alongMm, double acrossMm, double[] out, double[] scratch) {
        double sum = feel.meanMm();
        for (int i = 0; i < n; i++) {
            double c = feel.covariance(alongMm, acrossMm, readings.alongMm[i], readings.acrossMm[i]);
            sum += c * weight[i];
            scratch[i] = Math.sqrt(siteTau[i]) * c;
        }
        Triangle.forward(b, n, scratch);
        double known = 0;
        for (int i = 0; i < n; i++) known += scratch[i] * scratch[i];
        out[0] = sum;
        out[1] = Math.max(0, feel.spreadMm() * feel.spreadMm() - known);
    }

    /// The latent depth at many points together: their means into `means`, and the lower half of the triangle of their
    /// covariance, for draws.
    double[] together(double[] alongMm, double[] acrossMm, double[] means) {
        int m = alongMm.length;
        double[] scaled = new double[m * n];
        for (int p = 0; p < m; p++) {
            double[] row = new double[n];
            double sum = feel.meanMm();
            for (int i = 0; i < n; i++) {
                double c = feel.covariance(alongMm[p], acrossMm[p], readings.alongMm[i], readings.acrossMm[i]);
                sum += c * weight[i];
                row[i] = Math.sqrt(siteTau[i]) * c;
            }
            means[p] = sum;
            Triangle.forward(b, n, row);
            System.arraycopy(row, 0, scaled, p * n, n);
        }
        double[] covariance = new double[m * m];
        double jitter = 1e-6 * feel.spreadMm() * feel.spreadMm();
        for (int p = 0; p < m; p++)
            for (int q = 0; q <= p; q++) {
                double c = feel.covariance(alongMm[p], acrossMm[p], alongMm[q], acrossMm[q]);
                for (int i = 0; i < n; i++) c -= scaled[p * n + i] * scaled[q * n + i];
                covariance[p * m + q] = p == q ? c + jitter : c;
            }
        if (!Triangle.factor(covariance, m)) throw new ArithmeticException("the covariance of the grid is not positive");
        return covariance;
    }
}
