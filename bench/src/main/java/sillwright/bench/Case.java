package sillwright.bench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

import sillwright.wood.drying.Air;
import sillwright.wood.drying.Stack;

/// Pieces and hours to race over: invented, drawn from a seed, with every part of the kernel at work.
final class Case {
    private Case() {}

    /// Boards and posts 20 to 200 mm thick; some bare, some under a film; rain on one hour in nine.
    static Stack stack(int slices, int pieces, long seed) {
        Random random = new Random(seed);
        Stack stack = new Stack(slices, pieces, 3600);
        for (int m = 0; m < pieces; m++) {
            double thicknessM = 0.02 + 0.18 * random.nextDouble(), total = 0;
            double[] part = new double[slices];
            for (int i = 0; i < slices; i++) total += part[i] = Math.pow(1.25, Math.min(i, slices - 1 - i));
            for (int i = 0; i < slices; i++) {
                part[i] *= thicknessM / total;
                stack.moisture[i][m] = 0.10 + 0.5 * random.nextDouble();
                stack.stepOverSlice[i][m] = stack.stepS / part[i];
            }
            for (int i = 0; i + 1 < slices; i++) stack.overDistance[i][m] = 2 / (part[i] + part[i + 1]);
            stack.bound[m] = 8e-11 * (0.6 + random.nextDouble());
            stack.rise[m] = 4;
            stack.saturation[m] = 0.28 + 0.04 * random.nextDouble();
            stack.full[m] = 1 + 0.5 * random.nextDouble();
            stack.overRoom[m] = 1 / (stack.full[m] - stack.saturation[m]);
            stack.free[m] = 1e-9 * random.nextDouble();
            stack.sums(m);
            face(stack.near, m, part[0] / 2, random);
            face(stack.far, m, part[slices - 1] / 2, random);
        }
        return stack;
    }

    private static void face(Stack.Faces face, int m, double halfM, Random random) {
        face.half[m] = halfM;
        face.open[m] = random.nextInt(5) == 0 ? 0 : 1;
        face.air[m] = 1 / 3.2e-8;
        face.film[m] = random.nextBoolean() ? 0 : 1e9 * random.nextDouble();
        face.leak[m] = random.nextDouble();
        face.fills[m] = random.nextInt(4) == 0 ? 0 : face.leak[m];
        face.supply[m] = random.nextDouble() / 3600 / 400;
        face.stays[m] = random.nextInt(3) == 0 ? 0 : 1 + 5 * random.nextDouble();
    }

    static Air air(int hours, long seed) {
        Random random = new Random(seed);
        Air air = new Air(hours);
        for (int h = 0; h < hours; h++) {
            double season = Math.sin(2 * Math.PI * h / 8760), day = Math.sin(2 * Math.PI * h / 24);
            air.atRest[h] = 0.15 + 0.05 * season - 0.04 * day;
            air.quick[h] = 1 + 0.5 * season + 0.2 * day;
            air.vapour[h] = 1 + 0.6 * season + 0.2 * day;
            air.runs[h] = season < -0.8 ? 0 : 1;
            air.rainMm[h] = random.nextInt(9) == 0 ? -Math.log(1 - random.nextDouble()) : 0;
        }
        return air;
    }

    /// The state that a round starts from.
    static double[][] copy(double[][] rows) {
        double[][] copy = new double[rows.length][];
        for (int i = 0; i < rows.length; i++) copy[i] = rows[i].clone();
        return copy;
    }

    static void restore(Stack stack, double[][] start) {
        for (int i = 0; i < start.length; i++) System.arraycopy(start[i], 0, stack.moisture[i], 0, start[i].length);
        java.util.Arrays.fill(stack.near.left, 0);
        java.util.Arrays.fill(stack.far.left, 0);
    }

    /// All that a case is, as doubles in the machine's own order, for the programs in the other languages.
    static void write(Path to, Stack stack, Air air) throws IOException {
        try (var out = Files.newByteChannel(to, java.nio.file.StandardOpenOption.CREATE, java.nio.file.StandardOpenOption.TRUNCATE_EXISTING, java.nio.file.StandardOpenOption.WRITE)) {
            put(out, new double[] {stack.slices, stack.pieces, stack.stepS, air.hours()}, 4);
            for (double[][] rows : new double[][][] {stack.moisture, stack.stepOverSlice, stack.overDistance}) for (double[] row : rows) put(out, row, stack.pieces);
            for (double[] row : new double[][] {stack.bound, stack.rise, stack.saturation, stack.free, stack.overRoom, stack.full}) put(out, row, stack.pieces);
            for (Stack.Faces f : new Stack.Faces[] {stack.near, stack.far})
                for (double[] row : new double[][] {f.half, f.open, f.air, f.film, f.leak, f.fills, f.supply, f.stays, f.left}) put(out, row, stack.pieces);
            for (double[] row : new double[][] {air.atRest, air.quick, air.vapour, air.runs, air.rainMm}) put(out, row, row.length);
        }
    }

    private static void put(java.nio.channels.WritableByteChannel out, double[] row, int count) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(count * 8).order(ByteOrder.nativeOrder());
        bytes.asDoubleBuffer().put(row, 0, count);
        while (bytes.hasRemaining()) out.write(bytes);
    }

    /// The greatest difference between a stack's moisture and what another program left.
    static double apart(Path answer, Stack stack) throws IOException {
        var theirs = ByteBuffer.wrap(Files.readAllBytes(answer)).order(ByteOrder.nativeOrder()).asDoubleBuffer();
        if (theirs.remaining() != stack.slices * stack.pieces) throw new IOException(answer + " is not of this case");
        double most = 0;
        for (double[] row : stack.moisture) for (int m = 0; m < stack.pieces; m++) most = Math.max(most, Math.abs(row[m] - theirs.get()));
        return most;
    }

    static double apart(double[][] one, Stack stack) {
        double most = 0;
        for (int i = 0; i < one.length; i++) for (int m = 0; m < one[i].length; m++) most = Math.max(most, Math.abs(one[i][m] - stack.moisture[i][m]));
        return most;
    }
}
