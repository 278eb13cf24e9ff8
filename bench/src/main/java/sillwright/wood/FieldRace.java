package sillwright.wood;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import sillwright.measure.SplitMix;

/// The decay map of one face against scikit-learn: numbers found, a map of 60 by 16 and 200 draws of it, from 100 readings of an invented face; then what one reading
/// more costs, and what all costs with as many readings as a figure takes. By the processor time of one thread, the least of several runs.
public final class FieldRace {
    private static final FaceGrid GRID = new FaceGrid(900, 140, 60, 16);

    private FieldRace() {}

    /// @param args the bench folder
    public static void main(String[] args) throws IOException, InterruptedException {
        Readings exact = readings(100, false);
        StringBuilder csv = new StringBuilder();
        for (int i = 0; i < exact.count; i++) csv.append(exact.alongMm[i]).append(',').append(exact.acrossMm[i]).append(',').append(exact.depthMm[i]).append('\n');
        Path file = Files.writeString(Files.createTempFile("readings", ".csv"), csv);
        double own = least(9, () -> whole(exact)), bounded = least(5, () -> whole(readings(100, true)));
        double other = python(Path.of(args[0], "src/main/python/field.py"), file);
        Files.delete(file);
        said("fit, map and 200 draws, 100 readings, none at a bound: %.0f ms; scikit-learn %.0f ms; %.1f times%n", own, 1000 * other, 1000 * other / own);
        said("the same with floor and ceiling: %.0f ms%n", bounded);
        DecayField field = DecayFit.fit(readings(100, true), Feel.Shape.MATERN_5_2);
        said("one reading more, mapped again: %.1f ms%n", least(15, () -> map(field.with(433, 77, 4, Readings.Says.EXACTLY))));
        said("readings: numbers found and one field / a whole study of nine fields and its draws%n");
        for (int n : new int[] {3, 10, 30, 100, 200, 350, 500}) {
            Readings some = readings(n, true);
            said("%5d: %8.1f ms %8.1f ms%n", n, least(3, () -> DecayFit.fit(some, Feel.Shape.MATERN_5_2)),
                    least(2, () -> FaceStudy.of(new Slab(900, 140, 140), some, new SplitMix(1))));
        }
    }

    private static void whole(Readings readings) {
        DecayField field = DecayFit.fit(readings, Feel.Shape.MATERN_5_2);
        map(field);
        FaceDraws.of(List.of(new DecayFit.Weighed(field, 1)), GRID, 140, Decay.TOLERANCE_MM, 200, new SplitMix(1));
    }

    private static void map(DecayField field) {
        field.at(GRID.alongs(), GRID.acrosses(), new double[GRID.cells()], new double[GRID.cells()]);
    }

    /// A seat of decay at the foot, by hand.
    private static Readings readings(int count, boolean bounded) {
        Random random = new Random(7);
        double[] along = random.doubles(count, 0, 900).toArray(), across = random.doubles(count, 0, 140).toArray(), depth = new double[count];
        Readings.Says[] says = new Readings.Says[count];
        for (int i = 0; i < count; i++) {
            double d = 80 * Math.exp(-along[i] / 250) - across[i] / 10 - (bounded ? 15 : 0) + 1.5 * random.nextGaussian();
            says[i] = !bounded ? Readings.Says.EXACTLY : d > 50 ? Readings.Says.AT_LEAST : d < 0 ? Readings.Says.AT_MOST : Readings.Says.EXACTLY;
            depth[i] = bounded ? Math.max(0, Math.min(50, d)) : d;
        }
        return Readings.of(along, across, depth, says);
    }

    /// The least processor time of several runs after two to warm up, ms.
    private static double least(int runs, Runnable work) {
        double[] took = new double[runs];
        for (int i = -2; i < runs; i++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            work.run();
            if (i >= 0) took[i] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
        }
        return Arrays.stream(took).min().orElseThrow();
    }

    private static double python(Path script, Path readings) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder("/usr/bin/python3", script.toString(), readings.toString()).redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().put("OPENBLAS_NUM_THREADS", "1");
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes());
        if (process.waitFor() != 0) throw new IOException("field.py failed");
        return Double.parseDouble(said.strip().split(" ")[0]);
    }

    private static void said(String format, Object... values) { System.out.printf(Locale.ROOT, format, values); }
}
