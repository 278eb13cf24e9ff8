package sillwright.lanes;

import sillwright.wood.drying.Stack;

/// The slices of a few pieces of a [Stack] in one row, slice after slice, small enough for the first cache.
final class Batch {
    final int slices;
    private final int pieces;

    final double[] moisture;
    final double[] step;
    /// The step over the thickness of a slice, and of the one after it, both over the distance between the two, s/m².
    final double[] givesBy;
    final double[] backBy;

    /// Of the hour in hand: what a slice gives the next and that one gives back, over how far apart the two are.
    final double[] gives;
    final double[] back;
    final double[] apart;

    Batch(int slices, int pieces) {
        this.slices = slices;
        this.pieces = pieces;
        int all = slices * pieces;
        moisture = new double[all];
        step = new double[all];
        givesBy = new double[all];
        backBy = new double[all];
        gives = new double[all];
        back = new double[all];
        apart = new double[all];
    }

    /// Takes over the pieces from one on; true where any of them loses through its sides.
    boolean take(Stack stack, int from) {
        for (int i = 0; i < slices; i++) {
            System.arraycopy(stack.moisture[i], from, moisture, i * pieces, pieces);
            System.arraycopy(stack.stepOverSlice[i], from, step, i * pieces, pieces);
        }
        for (int i = 0; i + 1 < slices; i++) for (int m = 0; m < pieces; m++) {
            givesBy[i * pieces + m] = stack.overDistance[i][from + m] * stack.stepOverSlice[i][from + m];
            backBy[i * pieces + m] = stack.overDistance[i][from + m] * stack.stepOverSlice[i + 1][from + m];
        }
        boolean sides = false;
        if (stack.anySides) for (int m = 0; m < pieces; m++) sides |= stack.sides[from + m] > 0;
        return sides;
    }

    /// Gives their moisture back.
    void give(Stack stack, int from) {
        for (int i = 0; i < slices; i++) System.arraycopy(moisture, i * pieces, stack.moisture[i], from, pieces);
    }
}
