package sillwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

import sillwright.wood.drying.Air;
import sillwright.wood.drying.Stack;
import sillwright.wood.drying.Transport;

/// The transport kernel against the same thing in C and in SciPy: same grid, same hours, the same answer, in one run.
public final class TransportRace {
    private static final int SLICES = 20, PIECES = 128, HOURS = 8760, SLOW_HOURS = 200;

    private static final Transport LANES = new sillwright.lanes.LaneTransport();

    private TransportRace() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path here = Path.of(args.length > 0 ? args[0] : "bench"), work = Files.createTempDirectory("race");
        Stack stack = Case.stack(SLICES, PIECES, 7);
        Air air = Case.air(HOURS, 11);
        double[][] start = Case.copy(stack.moisture);
        Path whole = work.resolve("case"), answer = work.resolve("answer");
        Case.write(whole, stack, air);
        Path program = work.resolve("transport");
        run(List.of("gcc", "-O3", "-march=native", "-std=gnu11", "-o", program.toString(), here.resolve("src/main/c/transport.c").toString(), "-lm"));

        double plain = best(Transport.PLAIN, stack, air, start, HOURS, 12);
        double[][] plainly = Case.copy(stack.moisture);
        double java = best(LANES, stack, air, start, HOURS, 12);
        double apartPlain = Case.apart(plainly, stack);
        double c = Double.parseDouble(run(List.of(program.toString(), whole.toString(), answer.toString(), "7")).strip());
        double apartC = Case.apart(answer, stack);
        java = Math.min(java, best(LANES, stack, air, start, HOURS, 5));
        double cells = (double) SLICES * PIECES * HOURS;
        say("%d pieces of %d slices, %d hours%n", PIECES, SLICES, HOURS);
        say("plain  %8.4f s  %6.3f ns; answers within %.1e%n", plain, plain / cells * 1e9, apartPlain);
        say("Java   %8.4f s  %6.3f ns a slice and hour%n", java, java / cells * 1e9);
        say("C      %8.4f s  %6.3f ns   Java is %.2f times as fast; answers within %.1e%n", c, c / cells * 1e9, c / java, apartC);

        double few = best(LANES, stack, air, start, SLOW_HOURS, 5) / SLOW_HOURS;
        for (String way : List.of("together", "each")) {
            double python = Double.parseDouble(run(List.of("/usr/bin/python3", here.resolve("src/main/python/transport.py").toString(), whole.toString(), answer.toString(),
                    Integer.toString(SLOW_HOURS), way)).strip()) / SLOW_HOURS;
            say("SciPy, %s: %.3f ms an hour of weather, Java %.4f: Java is %.0f times as fast; answers within %.1e over %d hours%n", way, python * 1e3, few * 1e3, python / few,
                    Case.apart(answer, stack), SLOW_HOURS);
        }
        linear();
    }

    private static void linear() {
        for (int pieces : new int[] {32, 64, 128, 256, 512}) {
            Stack stack = Case.stack(SLICES, pieces, 7);
            Air air = Case.air(8760, 11);
            double took = best(LANES, stack, air, Case.copy(stack.moisture), 8760, 3);
            say("%4d pieces, 1 year: %8.4f s, %.3f ns a slice and hour%n", pieces, took, took / pieces / SLICES / 8760 * 1e9);
        }
        for (int years : new int[] {1, 2, 4, 8}) {
            Stack stack = Case.stack(SLICES, 64, 7);
            Air air = Case.air(8760 * years, 11);
            double took = best(LANES, stack, air, Case.copy(stack.moisture), 8760 * years, 3);
            say("  64 pieces, %d years: %8.4f s, %.3f ns%n", years, took, took / 64 / SLICES / 8760 / years * 1e9);
        }
    }

    private static double best(Transport transport, Stack stack, Air air, double[][] start, int hours, int rounds) {
        double best = Double.MAX_VALUE;
        for (int round = 0; round < rounds; round++) {
            Case.restore(stack, start);
            long began = System.nanoTime();
            transport.hours(stack, air, 0, hours);
            best = Math.min(best, (System.nanoTime() - began) * 1e-9);
        }
        return best;
    }

    private static void say(String format, Object... values) { System.out.printf(Locale.ROOT, format, values); }

    private static String run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        if (!process.waitFor(10, TimeUnit.MINUTES) || process.exitValue() != 0) throw new IOException(command.getFirst() + " failed");
        return said;
    }
}
