package sillwright.wood;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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

    /// The readings that both libraries were given.
    private static DecayField regression(String shape) {
        Csv readings = Checks.read("wood/regression-readings.csv");
        double[] x = readings.rows().stream().mapToDouble(r -> r.number("along_mm")).toArray(), y = readings.rows().stream().mapToDouble(r -> r.number("across_mm")).toArray(),
                z = readings.rows().stream().mapToDouble(r -> r.number("depth_mm")).toArray();
        return exact(x, y, z, new Feel(4, 12, 150, 60, 1.5, Feel.Shape.valueOf(shape)));
    }

    /// Reference numbers of a general-purpose library, with its version and the script beside them.
    @ParameterizedTest
    @ValueSource(strings = {"MATERN_5_2", "MATERN_3_2"})
    void without_bounds_it_is_gaussian_process_regression(String shape) {
        Csv answers = Checks.read("wood/regression-answers.csv");
        DecayField field = regression(shape);
        double[] out = new double[2], scratch = new double[field.readings()];
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

    /// A second library, of geostatistics, gives the same numbers; its version and script beside them.
    @ParameterizedTest
    @ValueSource(strings = {"MATERN_5_2", "MATERN_3_2"})
    void without_bounds_it_is_simple_kriging(String shape) {
        Csv answers = Checks.read("wood/gstat-answers.csv");
        DecayField field = regression(shape);
        double[] out = new double[2], scratch = new double[field.readings()];
        int seen = 0;
        for (Csv.Row row : answers.rows()) {
            if (!row.get("shape").equals(shape)) continue;
            seen++;
            field.at(row.number("along_mm"), row.number("across_mm"), out, scratch);
            assertEquals(row.number("mean_mm"), out[0], 1e-8 * 20);
            assertEquals(row.number("deviation_mm"), Math.sqrt(out[1]), 1e-8 * 20);
        }
        assertEquals(7, seen);
    }

    /// The slope that the search walks by is that of the evidence.
    @Test
    void the_slope_of_the_evidence_is_its_difference() {
        long seed = 17;
        Random random = new Random(seed);
        int n = 20;
        double[] x = random.doubles(n, 0, 900).toArray(), y = random.doubles(n, 0, 140).toArray(), z = new double[n];
        Readings.Says[] says = new Readings.Says[n];
        for (int i = 0; i < n; i++) {
            double depth = 70 - x[i] / 4 + 2 * random.nextGaussian();
            says[i] = depth > 50 ? Readings.Says.AT_LEAST : depth < 0 ? Readings.Says.AT_MOST : Readings.Says.EXACTLY;
            z[i] = Math.max(0, Math.min(50, depth));
        }
        Readings readings = Readings.of(x, y, z, says);
        for (Feel.Shape shape : Feel.Shape.values()) {
            double[] point = {-1.2, Math.log(30), Math.log(180), Math.log(70), Math.log(1.8)};
            double[] slope = DecayField.of(readings, Feel.USUAL.shaped(shape).at(point)).slope();
            for (int i = 0; i < Feel.NUMBERS; i++) {
                double[] high = point.clone(), low = point.clone();
                high[i] += 1e-4;
                low[i] -= 1e-4;
                double difference = (DecayField.of(readings, Feel.USUAL.shaped(shape).at(high)).logEvidence() - DecayField.of(readings, Feel.USUAL.shaped(shape).at(low)).logEvidence()) / 2e-4;
                assertEquals(difference, slope[i], 1e-3 * Math.max(1, Math.abs(difference)), shape + ", number " + i + ", seed " + seed);
            }
        }
    }

    /// Slow twin: the joint field at both bounds and a point, given the exact reading, summed over a fine grid of what the bounds may have met.
    @ParameterizedTest
    @CsvSource({"0,0,100,30", "0,12,60,20", "50,8,120,0", "100,25,80,-15"})
    void bounds_are_met_as_a_plain_sum_over_what_they_met_says(double firstMm, double depthMm, double at, double meanMm) {
        Feel feel = new Feel(meanMm, 20, 90, 60, 2, Feel.Shape.MATERN_5_2);
        double[] x = {firstMm, firstMm + 40, firstMm + 110}, y = {10, 30, 20}, z = {depthMm, 0, 30};
        Readings.Says[] says = {Readings.Says.EXACTLY, Readings.Says.AT_MOST, Readings.Says.AT_LEAST};
        DecayField field = DecayField.of(Readings.of(x, y, z, says), feel);
        double[] out = new double[2];
        field.at(at, 25, out, new double[3]);
        assertTrue(field.settled());

        DecayField given = exact(new double[] {x[0]}, new double[] {y[0]}, new double[] {z[0]}, feel);
        double[] middle = new double[3], alongs = {x[1], x[2], at}, acrosses = {y[1], y[2], 25};
        given.at(alongs, acrosses, middle, new double[3]);
        double[][] c = new double[3][3];
        for (double[] stray : given.strays(alongs, acrosses)) for (int i = 0; i < 3; i++) for (int j = 0; j < 3; j++) c[i][j] += stray[i] * stray[j];
        double det = c[0][0] * c[1][1] - c[0][1] * c[0][1], byLow = (c[2][0] * c[1][1] - c[2][1] * c[0][1]) / det, byHigh = (c[2][1] * c[0][0] - c[2][0] * c[0][1]) / det;
        double rest = c[2][2] - byLow * c[2][0] - byHigh * c[2][1], total = 0, sum = 0, squares = 0;
        double step = 0.02, width = 9, slope = c[0][1] / c[0][0], beside = Math.sqrt(c[1][1] - slope * c[0][1]);
        for (double a = -width; a < width; a += step)
            for (double b = -width; b < width; b += step) {
                double low = Math.sqrt(c[0][0]) * a, high = slope * low + beside * b;
                double weight = Math.exp(-0.5 * (a * a + b * b)) / (2 * Math.PI) * step * step * Normal.below((0 - middle[0] - low) / 2) * Normal.below((middle[1] + high - 30) / 2);
                double here = middle[2] + byLow * low + byHigh * high;
                total += weight;
                sum += weight * here;
                squares += weight * (here * here + rest);
            }
        double mean = sum / total, deviation = Math.sqrt(squares / total - mean * mean);
        assertEquals(mean, out[0], 0.05 * deviation + 0.1, "mean");
        assertEquals(deviation, Math.sqrt(out[1]), 0.05 * deviation, "deviation");
        assertEquals(Math.log(total) + given.logEvidence(), field.logEvidence(), 0.05, "evidence");
    }

    /// Slow twin: the covariance of points as the textbook has it, by a plain elimination of the readings; the rows that draws are made of come back to it, and the map of
    /// many points is that of each alone.
    @Test
    void draws_stray_as_the_covariance_given_the_readings_says() {
        long seed = 29;
        Random random = new Random(seed);
        for (Feel.Shape shape : Feel.Shape.values()) {
            int n = 1 + random.nextInt(30), m = 60;
            double[] x = random.doubles(n, 0, 900).toArray(), y = random.doubles(n, 0, 140).toArray(), z = random.doubles(n, 0, 60).toArray();
            double[] alongs = random.doubles(m, 0, 900).toArray(), acrosses = random.doubles(m, 0, 140).toArray(), means = new double[m], variances = new double[m], out = new double[2];
            Feel feel = new Feel(-5, 20, 130, 70, 1.5, shape);
            DecayField field = exact(x, y, z, feel);
            field.at(alongs, acrosses, means, variances);
            double[][] all = new double[n + m][n + m];
            double[] along = java.util.stream.DoubleStream.concat(Arrays.stream(x), Arrays.stream(alongs)).toArray(), across = java.util.stream.DoubleStream.concat(Arrays.stream(y), Arrays.stream(acrosses)).toArray();
            for (int i = 0; i < n + m; i++) for (int j = 0; j < n + m; j++) all[i][j] = feel.covariance(along[i], across[i], along[j], across[j]) + (i == j && i < n ? 1.5 * 1.5 : 0);
            for (int k = 0; k < n; k++) for (int i = k + 1; i < n + m; i++) {
                double by = all[i][k] / all[k][k];
                for (int j = k; j < n + m; j++) all[i][j] -= by * all[k][j];
            }
            double[][] strays = field.strays(alongs, acrosses);
            assertTrue(strays.length <= m);
            String say = shape + ", seed " + seed;
            for (int p = 0; p < m; p++) {
                field.at(alongs[p], acrosses[p], out, new double[n]);
                assertEquals(out[0], means[p], 1e-9, say);
                assertEquals(out[1], variances[p], 1e-8, say);
                for (int q = 0; q < m; q++) {
                    double sum = 0;
                    for (double[] stray : strays) sum += stray[p] * stray[q];
                    assertEquals(all[n + p][n + q], sum, 400 * 9.1e-6, say + ", points " + p + " and " + q);
                }
            }
        }
    }

    /// A closely probed face whose wood is mostly sound: bounds by the hundred, each hanging on its neighbours, still come to rest, from wherever they begin.
    @Test
    void many_bounds_side_by_side_come_to_rest_in_the_same_place() {
        long seed = 37;
        Random random = new Random(seed);
        int n = 160;
        double[] x = random.doubles(n, 0, 900).toArray(), y = random.doubles(n, 0, 140).toArray(), z = new double[n];
        Readings.Says[] says = new Readings.Says[n];
        for (int i = 0; i < n; i++) {
            double depth = 80 * Math.exp(-x[i] / 250) - y[i] / 10 - 15 + 1.5 * random.nextGaussian();
            says[i] = depth > 50 ? Readings.Says.AT_LEAST : depth < 0 ? Readings.Says.AT_MOST : Readings.Says.EXACTLY;
            z[i] = Math.max(0, Math.min(50, depth));
        }
        Readings readings = Readings.of(x, y, z, says);
        Feel feel = new Feel(-41, 36, 420, 350, 1.4, Feel.Shape.MATERN_5_2);
        DecayField field = DecayField.of(readings, feel), near = DecayField.of(readings, new Feel(-35, 30, 300, 250, 1.6, Feel.Shape.MATERN_5_2)),
                again = DecayField.of(readings, feel, near.siteTau(), near.siteNu(), 1e-7);
        assertTrue(field.settled() && near.settled() && again.settled(), "seed " + seed);
        double[] means = new double[n], others = new double[n], variances = new double[n], otherVariances = new double[n];
        field.at(x, y, means, variances);
        again.at(x, y, others, otherVariances);
        for (int i = 0; i < n; i++) {
            double deviation = Math.sqrt(variances[i]);
            assertEquals(means[i], others[i], 1e-4 * deviation + 1e-6, "mean, seed " + seed);
            assertEquals(deviation, Math.sqrt(otherVariances[i]), 1e-4 * deviation, "deviation, seed " + seed);
        }
        assertEquals(field.logEvidence(), again.logEvidence(), 1e-4, "seed " + seed);
    }

    /// Slow twin: the triangle and its inverse against plain products, for sizes odd and even.
    @Test
    void the_triangle_and_its_inverse_give_the_matrix_back() {
        long seed = 31;
        Random random = new Random(seed);
        for (int n = 1; n < 24; n++) {
            double[][] a = new double[n][n], inverse = new double[n][n];
            for (int i = 0; i < n; i++) for (int j = 0; j <= i; j++) a[i][j] = a[j][i] = Math.exp(-Math.abs(i - j) / 5.0) + (i == j ? 0.1 * random.nextDouble() : 0);
            double[][] u = Arrays.stream(a).map(double[]::clone).toArray(double[][]::new);
            assertTrue(Triangle.factor(u, n));
            Triangle.invert(u, n, inverse);
            double[] x = random.doubles(n).toArray(), b = new double[n];
            for (int i = 0; i < n; i++) for (int j = 0; j < n; j++) b[i] += a[i][j] * x[j];
            Triangle.forward(u, n, b);
            Triangle.backward(u, n, b);
            assertArrayEquals(x, b, 1e-10, "n " + n + ", seed " + seed);
            for (int i = 0; i < n; i++)
                for (int j = i; j < n; j++) {
                    double sum = 0, one = 0;
                    for (int k = 0; k <= i; k++) sum += u[k][i] * u[k][j];
                    assertEquals(a[i][j], sum, 1e-13, "n " + n + ", seed " + seed);
                    for (int k = i; k <= j; k++) one += inverse[j][k] * u[i][k];
                    assertEquals(i == j ? 1 : 0, one, 1e-11, "inverse, n " + n + ", seed " + seed);
                }
        }
        assertEquals(false, Triangle.factor(new double[][] {{1, 2}, {2, 1}}, 2), "not positive");
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
