package sillwright.wood.weather;

import java.util.random.RandomGenerator;

import sillwright.measure.Basis;

/// Whether a day is wet, how much falls on it, and in which of its hours.
final class Rainfall {
    static final Basis CHAIN = Basis.memory("Geng and others (1986)", "wet after dry 0.75f, wet after wet 0.25 + 0.75f; gamma scale -2.16 + 1.83 of the mean of a wet day");
    static final Basis HOURS = Basis.own("rain lies in one spell a day, of about 1.5 times the root of its mm in hours; no rain day has less than 0.01 in");

    private static final double AFTER_RAIN = 0.25;
    /// Geng's scale is fitted down to about here, mm; below, amounts are taken as exponential.
    private static final double LEAST_MEAN_MM = 2.16 / 0.83;

    private Rainfall() {}

    /// The chance of a wet day.
    ///
    /// Of an order-1 chain that is wet a share f of days and remembers one day by 0.25: f + 0.25(wet yesterday - f of yesterday). With one f all month this is Geng's
    /// p01 = 0.75f and p11 = 0.25 + 0.75f; across a change of month it keeps the share exact.
    static double chance(double share, double shareYesterday, boolean wetYesterday) {
        return Math.max(0, Math.min(1, share + AFTER_RAIN * ((wetYesterday ? 1 : 0) - shareYesterday)));
    }

    /// What falls on a wet day, mm: the least that counts, and a gamma above it.
    static double amountMm(double meanMm, RandomGenerator random) {
        double mean = meanMm - Normals.LEAST_MM, scale = meanMm > LEAST_MEAN_MM ? -2.16 + 1.83 * meanMm : mean, shape = Math.min(1, mean / scale);
        return Normals.LEAST_MM + gamma(shape, random) * mean / shape;
    }

    /// A gamma of scale 1.
    ///
    /// Source: Marsaglia and Tsang, A simple method for generating gamma variables (2000) (from memory).
    static double gamma(double shape, RandomGenerator random) {
        if (shape <= 0) return 0;
        double small = 1;
        if (shape < 1) {
            small = Math.pow(1 - random.nextDouble(), 1 / shape);
            shape += 1;
        }
        double d = shape - 1.0 / 3, c = 1 / Math.sqrt(9 * d);
        while (true) {
            double x = random.nextGaussian(), v = 1 + c * x;
            if (v <= 0) continue;
            v = v * v * v;
            if (Math.log(1 - random.nextDouble()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return small * d * v;
        }
    }

    /// Lays a day's rain into its hours.
    ///
    /// @param hours where the day's 24 begin at `from`
    static void lay(double mm, double[] hours, int from, RandomGenerator random) {
        long wanted = Math.round(1.5 * Math.sqrt(mm) * Math.exp(0.4 * random.nextGaussian()));
        int spell = (int) Math.max(1, Math.min(24, wanted)), start = random.nextInt(25 - spell);
        double total = 0;
        for (int h = 0; h < spell; h++) total += hours[from + start + h] = -Math.log(1 - random.nextDouble()) + 0.05;
        for (int h = 0; h < spell; h++) hours[from + start + h] *= mm / total;
    }
}
