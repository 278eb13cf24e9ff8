package sillwright.wood;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillwright.measure.Csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

/// Floor and ceiling against a long run of another program: `bounds.py` beside its answers.
@DisplayNameGeneration(ReplaceUnderscores.class)
class BoundsTest {
    private static final Readings.Says X = Readings.Says.EXACTLY, FLOOR = Readings.Says.AT_MOST, REACH = Readings.Says.AT_LEAST;

    private static Readings readings(String name) {
        return switch (name) {
            case "foot" -> Readings.of(new double[] {40, 60, 180, 320, 340, 520}, new double[] {35, 105, 70, 40, 100, 70}, new double[] {62, 100, 31, 0, 0, 0},
                    new Readings.Says[] {X, REACH, X, FLOOR, FLOOR, FLOOR});
            case "sound" -> Readings.of(new double[] {100, 300, 300, 600}, new double[] {70, 40, 100, 70}, new double[4], new Readings.Says[] {FLOOR, FLOOR, FLOOR, FLOOR});
            case "ranout" -> Readings.of(new double[] {100, 200, 260, 420}, new double[] {70, 50, 110, 70}, new double[] {80, 80, 45, 0}, new Readings.Says[] {REACH, REACH, X, FLOOR});
            case "close" -> Readings.of(new double[] {100, 130, 160, 130, 130}, new double[] {70, 70, 70, 100, 40}, new double[] {0, 12, 0, 0, 9}, new Readings.Says[] {FLOOR, X, FLOOR, FLOOR, X});
            default -> throw new IllegalArgumentException(name);
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"foot", "sound", "ranout", "close"})
    void a_long_chain_agrees(String name) {
        Readings readings = readings(name);
        DecayField field = DecayField.of(readings, Feel.USUAL);
        PushDraws pushes = new PushDraws(field);
        long seed = 3;
        Random random = new Random(seed);
        int draws = 20_000;
        double[] push = new double[readings.count], weight = new double[readings.count], out = new double[2], scratch = new double[readings.count];
        double[][] weights = new double[draws][];
        for (int d = 0; d < draws; d++) {
            pushes.next(push, weight, random);
            weights[d] = weight.clone();
        }
        for (Csv.Row row : Checks.read("wood/bounds-answers.csv").rows()) {
            if (!row.get("case").equals(name)) continue;
            double along = row.number("along_mm"), across = row.number("across_mm"), mean = row.number("mean_mm"), deviation = row.number("deviation_mm");
            field.at(along, across, out, scratch);
            assertEquals(mean, out[0], 0.1 * deviation + 0.1, "mean by stand-ins, " + row);
            assertEquals(deviation, Math.sqrt(out[1]), 0.1 * deviation + 0.05, "deviation by stand-ins, " + row);
            pushes.pinned().at(along, across, out, scratch);
            double spread = Math.sqrt(out[1]), sum = 0, depth = 0, soft = 0;
            for (double[] one : weights) {
                double f = Feel.USUAL.meanMm() + spread * random.nextGaussian();
                for (int i = 0; i < readings.count; i++) f += one[i] * Feel.USUAL.covariance(along, across, readings.alongMm[i], readings.acrossMm[i]);
                sum += f;
                depth += Math.max(0, Math.min(140, f));
                if (f > 5) soft++;
            }
            assertEquals(mean, sum / draws, 0.04 * deviation + 0.02, "mean of draws, seed " + seed + ", " + row);
            assertEquals(row.number("depth_mm"), depth / draws, 0.04 * deviation + 0.02, "depth of draws, " + row);
            assertEquals(row.number("soft"), soft / draws, 0.012, "softness of draws, " + row);
        }
    }
}
