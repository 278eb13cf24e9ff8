package sillwright.wood;

import java.util.random.RandomGenerator;

/// Draws of what each push of the probe met beneath the floor or beyond its reach, so that bounds are kept exactly and not by a normal that stands in for them.
///
/// A draw begins at the stand-ins' field and then renews each bounded push in turn from what all others leave it: Gibbs sampling of a normal cut off by bounds.
/// Source: Geweke (1991), Robert (1995), standards of texts on simulation (from memory).
final class PushDraws {
    private static final int SWEEPS = 12;

    private final Readings readings;
    private final Feel feel;
    private final int n;
    /// The field as it is once every push is known.
    private final DecayField pinned;
    private final double[][] precision;
    private final double[] startMean;
    private final double[][] startStrays;

    PushDraws(DecayField field) {
        readings = field.said();
        feel = field.feel();
        n = readings.count;
        pinned = DecayField.of(readings.pinned(), feel);
        precision = pinned.precision();
        startMean = new double[n];
        field.at(readings.alongMm, readings.acrossMm, startMean, new double[n]);
        startStrays = field.strays(readings.alongMm, readings.acrossMm);
    }

    /// The field, were every push known; its spread does not hang on what they met.
    DecayField pinned() { return pinned; }

    /// What each push weighs in the mean of the field in one draw.
    ///
    /// @param push  room for what each push met
    /// @param weight room for the answer
    void next(double[] push, double[] weight, RandomGenerator random) {
        System.arraycopy(startMean, 0, push, 0, n);
        for (double[] stray : startStrays) Rows.add(push, random.nextGaussian(), stray, 0, n);
        for (int i = 0; i < n; i++)
            push[i] = switch (readings.says[i]) {
                case EXACTLY -> readings.depthMm[i];
                case AT_MOST -> Math.min(push[i], readings.depthMm[i]);
                case AT_LEAST -> Math.max(push[i], readings.depthMm[i]);
            } - feel.meanMm();
        java.util.Arrays.fill(weight, 0);
        Rows.add(weight, push, precision, 0, n, 0, n);
        for (int sweep = 0; sweep < SWEEPS; sweep++) for (int i = 0; i < n; i++) if (readings.says[i] != Readings.Says.EXACTLY) renew(i, push, weight, random);
    }

    private void renew(int i, double[] push, double[] weight, RandomGenerator random) {
        double sharp = precision[i][i], deviation = 1 / Math.sqrt(sharp), middle = push[i] - weight[i] / sharp, edge = readings.depthMm[i] - feel.meanMm();
        double sign = readings.says[i] == Readings.Says.AT_LEAST ? 1 : -1;
        double next = middle + sign * deviation * Normal.above(sign * (edge - middle) / deviation, random), step = next - push[i];
        push[i] = next;
        Rows.add(weight, step, precision[i], 0, n);
    }
}
