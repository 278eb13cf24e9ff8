package sillwright.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillwright.measure.Csv;

@DisplayNameGeneration(ReplaceUnderscores.class)
class DecayFieldTest {
    private static DecayField exact(double[] x, double[] y, double[] z, Feel feel) {
        Readings.Says[] says = new Readings.Says[x.length];
        Arrays.fill(says, Readings.Says.EXACTLY);
        return DecayField.of(Readings.of(x, y, z, says), feel);
    }

    /// The published example of ordinary kriging: seven samples, covariance 10·exp(−0.3h). Its unknown mean is put back by
    /// the generalised least squares that ordinary kriging is.
    @Test
    void the_published_kriging_example_comes_out() {
        Csv csv = Checks.read("wood/kriging.csv");
        int n = csv.rows().size();
        double[] x = new double[n], y = new double[n], z = new double[n], one = new double[n];
        Arrays.fill(one, 1);
        for (int i = 0; i < n; i++) {
            x[i] = csv.rows().get(i).number("x");
            y[i] = csv.rows().get(i).number("y");
            z[i] = csv.rows().get(i).number("value");
        }
        Feel feel = new Feel(0, Math.sqrt(10), 1 / 0.3, 1 / 0.3, 1e-5, Feel.Shape.MATERN_1_2);
        DecayField values = exact(x, y, z, feel), ones = exact(x, y, one, feel);
        double[] out = new double[2], scratch = new double[n];
        ones.at(65, 137, out, scratch);
        double share = out[0], simpleVariance = out[1];
        double total = Arrays.stream(ones.weights()).sum(), mean = Arrays.stream(values.weights()).sum() / total;
        values.at(65, 137, out, scratch);
        assertEquals(592.7, out[0] + (1 - share) * mean, 0.05, "estimate");
        assertEquals(8.96, simpleVariance + (1 - share) * (1 - share) / total, 0.005, "kriging variance");
        for (int i = 0; i < n; i++) {
            double[] unit = new double[n];
            unit[i] = 1;
            DecayField only = exact(x, y, unit, feel);
            only.at(65, 137, out, scratch);
            assertEquals(csv.rows().get(i).number("weight"), out[0] + (1 - share) * Arrays.stream(only.weights()).sum() / total, 0.0005, "weight " + i);
        }
    }

    /// Reference numbers of a general-purpose library, with its version and the script beside them.
    @ParameterizedTest
    @ValueSource(strings = {"MATERN_5_2", "MATERN_3_2"})
    void without_bounds_it_is_gaussian_process_regression(String shape) {
        Csv readings = Checks.read("wood/regression-readings.csv"), answers = Checks.read("wood/regression-answers.csv");
        double[] x = readings.rows().stream().mapToDouble(r -> r.number("along_mm")).toArray(), y = readings.rows().stream().mapToDouble(r -> r.number("across_mm")).toArray(),
                z = readings.rows().stream().mapToDouble(r -> r.number("depth_mm")).toArray();
        DecayField field = exact(x, y, z, new Feel(4, 12, 150, 60, 1.5, Feel.Shape.valueOf(shape)));
        double[] out = new double[2], scratch = new double[x.length];
        int seen = 0;
        for (Csv.Row row : answers.rows()) {
            if (!row.get("shape").equals(shape)) continue;
            seen++;
            if (row.get("what").equals("evidence")) {
                assertEquals(row.number("mean_mm"), field.logEvidence(), 1e-6, "log evidence");
                continue;
            }
            field.at(row.number("along_mm"), row.number("across_mm"), out, scratch);
            assertEquals(row.number("mean_mm"), out[0], 1e-6);
            assertEquals(row.number("deviation_mm"), Math.sqrt(out[1]), 1e-6);
        }
        assertTrue(seen > 5);
    }

    /// Slow twin: the field at the readings drawn from the prior given the exact ones, each draw weighed by the bounds.
    @ParameterizedTest
    @CsvSource({"0,0,100,30", "0,12,60,20", "50,8,120,0", "100,25,80,-15"})
    void bounds_are_met_as_weighed_draws_meet_them(double firstMm, double depthMm, double at, double meanMm) {
        Feel feel = new Feel(meanMm, 20, 90, 60, 2, Feel.Shape.MATERN_5_2);
        double[] x = {firstMm, firstMm + 40, firstMm + 110}, y = {10, 30, 20}, z = {depthMm, 0, 30};
        Readings.Says[] says = {Readings.Says.EXACTLY, Readings.Says.AT_MOST, Readings.Says.AT_LEAST};
        DecayField field = DecayField.of(Readings.of(x, y, z, says), feel);
        double[] out = new double[2];
        field.at(at, 25, out, new double[3]);
        assertTrue(field.settled());

        // The joint field at both bounds and the point, given the exact reading, by the same regression.
        DecayField given = exact(new double[] {x[0]}, new double[] {y[0]}, new double[] {z[0]}, feel);
        double[] means = new double[3];
        double[] triangle = given.together(new double[] {x[1], x[2], at}, new double[] {y[1], y[2], 25}, means);
        long seed = 20260418;
        Random random = new Random(seed);
        double total = 0, sum = 0, squares = 0;
        for (int d = 0; d < 2_000_000; d++) {
            double a = random.nextGaussian(), b = random.nextGaussian(), c = random.nextGaussian();
            double low = means[0] + triangle[0] * a, high = means[1] + triangle[3] * a + triangle[4] * b, here = means[2] + triangle[6] * a + triangle[7] * b + triangle[8] * c;
            double weight = Normal.below((0 - low) / 2) * Normal.below((high - 30) / 2);
            total += weight;
            sum += weight * here;
            squares += weight * here * here;
        }
        double mean = sum / total, deviation = Math.sqrt(squares / total - mean * mean);
        assertEquals(mean, out[0], 0.05 * deviation + 0.1, "mean, seed " + seed);
        assertEquals(deviation, Math.sqrt(out[1]), 0.05 * deviation, "deviation, seed " + seed);
        assertEquals(Math.log(total / 2_000_000) + given.logEvidence(), field.logEvidence(), 0.05, "evidence, seed " + seed);
    }

    @ParameterizedTest
    @CsvSource({"0,0.5", "1,0.8413447460685429", "-1,0.15865525393145705", "2,0.9772498680518208", "-3,0.0013498980316300933", "-6,9.865876450376946e-10", "-10,7.619853024160527e-24", "5,0.9999997133484281"})
    void the_normal_distribution_is_the_printed_one(double z, double below) {
        assertEquals(1, Normal.below(z) / below, 1e-12);
        assertEquals(Math.log(below), Normal.logBelow(z), Math.abs(Math.log(below)) * 1e-12);
    }

    @Test
    void the_push_of_a_bound_is_density_over_chance_far_into_the_tail() {
        for (double z = -30; z <= 8; z += 0.37) {
            double slope = (Normal.logBelow(z + 1e-5) - Normal.logBelow(z - 1e-5)) / 2e-5;
            assertEquals(slope, Normal.push(z), 1e-6 * Math.max(1, Math.abs(slope)), "z " + z);
        }
    }
}
