package sillwright.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

import sillwright.wood.drying.Air;
import sillwright.wood.drying.Stack;
import sillwright.wood.drying.Transport;

/// The transport kernel against the same thing in C and in SciPy: same grid, same hours, the same answer, in one run.
///
/// All times are processor time of the one thread that works, so that a busy machine does not decide the race. Ends with 1 when answers differ by more than 1e-6 or an hour
/// makes an object.
public final class TransportRace {
    private static final int SLICES = 20, PIECES = 128, HOURS = 8760, SLOW_HOURS = 200;
    private static final double SAME = 1e-6;
    /// Bytes that one call may make, however many hours it takes: a few pieces taken near.
    private static final long A_CALL = 32768;
    private static final com.sun.management.ThreadMXBean THREAD = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    private static boolean failed;

    private TransportRace() {}

    /// @param args the folder of the bench module; `bench` when left out
    public static void main(String[] args) throws IOException, InterruptedException {
        Path here = Path.of(args.length > 0 ? args[0] : "bench"), work = Files.createTempDirectory("race");
        Path program = work.resolve("transport"), whole = work.resolve("case"), answer = work.resolve("answer");
        run(List.of("gcc", "-O3", "-march=native", "-std=gnu11", "-o", program.toString(), here.resolve("src/main/c/transport.c").toString(), "-lm"));
        Stack stack = Case.stack(SLICES, PIECES, 7);
        Air air = Case.air(HOURS, 11);
        double[][] start = Case.copy(stack.moisture);
        Case.write(whole, stack, air);
        Transport lanes = sillwright.lanes.Lanes.best();

        double plain = 1e9, vector = 1e9, c = 1e9, apartPlain, apartC;
        double[][] plainly = null;
        for (int heat = 0; heat < 3; heat++) {
            plain = Math.min(plain, best(Transport.PLAIN, stack, air, start, HOURS, 8));
            plainly = Case.copy(stack.moisture);
            c = Math.min(c, Double.parseDouble(run(List.of(program.toString(), whole.toString(), answer.toString(), "8"))));
            vector = Math.min(vector, best(lanes, stack, air, start, HOURS, 8));
        }
        apartPlain = Case.apart(plainly, stack);
        apartC = Case.apart(answer, stack);
        double cells = (double) SLICES * PIECES * HOURS / 1e9;
        say("%d pieces of %d slices, %d hours%n", PIECES, SLICES, HOURS);
        say("C, gcc -O3 -march=native  %7.4f s  %6.3f ns a slice and hour%n", c, c / cells);
        say("Java, vector unit         %7.4f s  %6.3f ns, %.2f times C; answers within %s%n", vector, vector / cells, c / vector, within(apartC));
        say("Java, plain               %7.4f s  %6.3f ns, %.2f times C; answers within %s of the vector unit's%n", plain, plain / cells, c / plain, within(apartPlain));

        double few = best(lanes, stack, air, start, SLOW_HOURS, 20) / SLOW_HOURS;
        for (String way : List.of("alone", "each", "together")) {
            double python = Double.parseDouble(run(List.of("/usr/bin/python3", here.resolve("src/main/python/transport.py").toString(), whole.toString(), answer.toString(),
                    Integer.toString(SLOW_HOURS), way))) / SLOW_HOURS;
            say("SciPy, %-8s           %7.3f ms an hour of weather; Java %.4f ms, %.0f times as fast; answers within %s over %d hours%n", way, python * 1e3, few * 1e3, python / few,
                    within(Case.apart(answer, stack)), SLOW_HOURS);
        }
        growth(lanes);
        if (failed) System.exit(1);
    }

    private static void growth(Transport transport) {
        say("cost by pieces, one year, ns a slice and hour:");
        for (int pieces : new int[] {16, 32, 64, 128, 256, 512}) say("  %d: %.2f", pieces, cost(transport, pieces, 1));
        say("%ncost by years, 64 pieces:");
        for (int years : new int[] {1, 2, 4, 8}) say("  %d: %.2f", years, cost(transport, 64, years));
        say("%n");
    }

    private static double cost(Transport transport, int pieces, int years) {
        Stack stack = Case.stack(SLICES, pieces, 7);
        Air air = Case.air(HOURS * years, 11);
        return best(transport, stack, air, Case.copy(stack.moisture), HOURS * years, 4) / SLICES / pieces / HOURS / years * 1e9;
    }

    private static double best(Transport transport, Stack stack, Air air, double[][] start, int hours, int rounds) {
        double best = Double.MAX_VALUE;
        long made = Long.MAX_VALUE;
        for (int round = 0; round < rounds; round++) {
            Case.restore(stack, start);
            long objects = THREAD.getCurrentThreadAllocatedBytes(), began = THREAD.getCurrentThreadCpuTime();
            transport.hours(stack, air, 0, hours);
            best = Math.min(best, (THREAD.getCurrentThreadCpuTime() - began) * 1e-9);
            made = Math.min(made, THREAD.getCurrentThreadAllocatedBytes() - objects);
        }
        if (made > A_CALL) {
            failed = true;
            say("%d bytes were made in a call of %d hours%n", made, hours);
        }
        return best;
    }

    private static String within(double apart) {
        if (!(apart <= SAME)) failed = true;
        return String.format(Locale.ROOT, "%.0e", apart) + (apart <= SAME ? "" : ", NOT THE SAME");
    }

    private static void say(String format, Object... values) { System.out.printf(Locale.ROOT, format, values); }

    private static String run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        if (!process.waitFor(10, TimeUnit.MINUTES) || process.exitValue() != 0) throw new IOException(command.getFirst() + " failed");
        return said;
    }
}
