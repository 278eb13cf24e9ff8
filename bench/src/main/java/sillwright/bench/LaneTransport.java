package sillwright.bench;

import jdk.incubator.vector.DoubleVector;
import jdk.incubator.vector.VectorOperators;
import jdk.incubator.vector.VectorSpecies;

import sillwright.wood.drying.Air;
import sillwright.wood.drying.PlainTransport;
import sillwright.wood.drying.Stack;
import sillwright.wood.drying.Transport;

/// [Transport] in the vector unit: as many pieces as it has lanes go from face to face together, what one slice hands to the next staying in
/// registers. A product and a sum are rounded once where [Transport#PLAIN] rounds them twice, so the two part in the last digits.
///
/// The compiler keeps vectors in registers only where it inlines all that makes them, so this is written out without small helpers.
final class LaneTransport implements Transport {
    private static final VectorSpecies<Double> LANES = DoubleVector.SPECIES_PREFERRED;
    /// Pieces whose rows stay in a near cache together.
    private static final int NEAR = 128;

    @Override
    public void hours(Stack stack, Air air, int fromHour, int toHour, int fromPiece, int toPiece) {
        if (fromPiece % Stack.TOGETHER != 0 || toPiece % Stack.TOGETHER != 0 && toPiece != stack.pieces || Stack.TOGETHER % LANES.length() != 0)
            throw new IllegalArgumentException("pieces " + fromPiece + " to " + toPiece + " are not parted at multiples of " + Stack.TOGETHER);
        for (int from = fromPiece; from < toPiece; from += NEAR) {
            int to = Math.min(toPiece, from + NEAR);
            for (int h = fromHour; h < toHour; h++) hour(stack, from, to, air.atRest[h], air.quick[h], air.vapour[h], air.runs[h], air.rainMm[h]);
        }
    }

    private static void hour(Stack stack, int from, int to, double atRest, double quick, double vapour, double runs, double rainMm) {
        PlainTransport.wet(stack, from, to, runs, rainMm);
        double[][] moisture = stack.moisture;
        for (int m = from; m < to; m += LANES.length()) {
            vapour(stack, stack.near, moisture[0], m, atRest, 1 / quick, 1 / vapour);
            vapour(stack, stack.far, moisture[moisture.length - 1], m, atRest, 1 / quick, 1 / vapour);
        }
        for (int m = from; m < to; m += LANES.length()) {
            soak(stack, stack.near, moisture[0], m, quick, rainMm);
            soak(stack, stack.far, moisture[moisture.length - 1], m, quick, rainMm);
        }
        for (int m = from; m < to; m += LANES.length()) {
            down(stack, moisture, stack.stepOverSlice, stack.overDistance, stack.shed, stack.carried, m, quick, runs * 0.25);
            up(moisture, stack.shed, stack.carried, m);
        }
        PlainTransport.balance(stack, from, to, atRest, quick);
    }

    private static void vapour(Stack stack, Stack.Faces face, double[] moisture, int m, double atRest, double overQuick, double overVapour) {
        DoubleVector tiny = DoubleVector.broadcast(LANES, Stack.TINY), one = DoubleVector.broadcast(LANES, 1), half = DoubleVector.broadcast(LANES, 0.5);
        DoubleVector rest = DoubleVector.broadcast(LANES, atRest), thin = DoubleVector.broadcast(LANES, overVapour);
        DoubleVector u = DoubleVector.fromArray(LANES, moisture, m), over = u.sub(DoubleVector.fromArray(LANES, stack.saturation, m));
        DoubleVector b = u.sub(over.add(over.abs()).mul(half)), drying = b.sub(rest).abs().add(tiny).div(u.sub(rest).abs().add(tiny));
        DoubleVector inside = DoubleVector.fromArray(LANES, face.half, m).mul(DoubleVector.broadcast(LANES, overQuick)).div(DoubleVector.fromArray(LANES, stack.bound, m));
        DoubleVector dry = DoubleVector.fromArray(LANES, face.air, m).fma(thin, inside), q = DoubleVector.fromArray(LANES, stack.rise, m).mul(b).mul(DoubleVector.broadcast(LANES, 0.25));
        DoubleVector root = q.fma(DoubleVector.broadcast(LANES, 1.0 / 120), DoubleVector.broadcast(LANES, 1.0 / 24)).fma(q, DoubleVector.broadcast(LANES, 1.0 / 6)).fma(q, half).fma(q, one).fma(q, one);
        DoubleVector square = root.mul(root), resists = DoubleVector.fromArray(LANES, face.film, m).fma(thin, dry.div(square.mul(square)));
        DoubleVector pull = DoubleVector.fromArray(LANES, face.open, m).mul(drying).div(resists);
        pull.intoArray(face.pull, m);
        pull.mul(rest).intoArray(face.pulled, m);
    }

    private static void soak(Stack stack, Stack.Faces face, double[] moisture, int m, double quick, double rainMm) {
        DoubleVector wet = DoubleVector.fromArray(LANES, face.wet, m);
        if (!wet.compare(VectorOperators.GT, 0).anyTrue()) return;
        DoubleVector one = DoubleVector.broadcast(LANES, 1), half = DoubleVector.broadcast(LANES, 0.5), sixth = DoubleVector.broadcast(LANES, 1.0 / 6);
        DoubleVector of120 = DoubleVector.broadcast(LANES, 1.0 / 120), quarter = DoubleVector.broadcast(LANES, 0.25);
        DoubleVector u = DoubleVector.fromArray(LANES, moisture, m), saturation = DoubleVector.fromArray(LANES, stack.saturation, m), full = DoubleVector.fromArray(LANES, stack.full, m);
        DoubleVector rise = DoubleVector.fromArray(LANES, stack.rise, m), over = u.sub(saturation), above = over.add(over.abs()).mul(half);
        DoubleVector s = above.mul(DoubleVector.fromArray(LANES, stack.overRoom, m)), walls = saturation.sub(u.sub(above));
        DoubleVector gap = full.sub(u).add(DoubleVector.broadcast(LANES, Stack.TINY)), filling = walls.div(gap), spread = half.mul(rise).mul(walls), wide = spread.mul(spread);
        DoubleVector q = rise.mul(saturation.sub(half.mul(walls))).mul(quarter);
        DoubleVector root = q.fma(of120, DoubleVector.broadcast(LANES, 1.0 / 24)).fma(q, sixth).fma(q, half).fma(q, one).fma(q, one), square = root.mul(root);
        DoubleVector wallsD = DoubleVector.fromArray(LANES, stack.bound, m).mul(DoubleVector.broadcast(LANES, quick)).mul(square.mul(square)).mul(wide.fma(of120, sixth).fma(wide, one));
        DoubleVector freeD = DoubleVector.fromArray(LANES, stack.free, m).mul(quarter).mul(one.add(s)).mul(s.fma(s, one)).mul(one.sub(filling));
        DoubleVector enters = DoubleVector.fromArray(LANES, face.leak, m).mul(wallsD.fma(filling, freeD)).div(DoubleVector.fromArray(LANES, face.half, m));
        if (rainMm > 0) enters = enters.min(DoubleVector.fromArray(LANES, face.supply, m).mul(DoubleVector.broadcast(LANES, rainMm)).div(gap));
        DoubleVector dry = one.sub(wet), taken = wet.mul(enters);
        dry.fma(DoubleVector.fromArray(LANES, face.pull, m), taken).intoArray(face.pull, m);
        dry.fma(DoubleVector.fromArray(LANES, face.pulled, m), taken.mul(full)).intoArray(face.pulled, m);
    }

    /// From the near face to the far one: the links between slices, and elimination as they come.
    private static void down(Stack stack, double[][] moisture, double[][] stepOver, double[][] overDistance, double[][] shedRows, double[][] carriedRows, int m,
                             double quick, double quarterRuns) {
        int last = moisture.length - 1;
        DoubleVector tiny = DoubleVector.broadcast(LANES, Stack.TINY), one = DoubleVector.broadcast(LANES, 1), half = DoubleVector.broadcast(LANES, 0.5);
        DoubleVector sixth = DoubleVector.broadcast(LANES, 1.0 / 6), of24 = DoubleVector.broadcast(LANES, 1.0 / 24), of120 = DoubleVector.broadcast(LANES, 1.0 / 120);
                DoubleVector saturation = DoubleVector.fromArray(LANES, stack.saturation, m), rise = DoubleVector.fromArray(LANES, stack.rise, m);
        DoubleVector twice = saturation.add(saturation), least = DoubleVector.broadcast(LANES, Stack.LEAST);
        DoubleVector eighthRise = rise.mul(DoubleVector.broadcast(LANES, 0.125)), halfRise = rise.mul(half);
        DoubleVector quickBound = DoubleVector.fromArray(LANES, stack.bound, m).mul(DoubleVector.broadcast(LANES, quick)), overRoom = DoubleVector.fromArray(LANES, stack.overRoom, m);
        DoubleVector free = DoubleVector.fromArray(LANES, stack.free, m).mul(DoubleVector.broadcast(LANES, quarterRuns));
        DoubleVector u = DoubleVector.fromArray(LANES, moisture[0], m), over = u.sub(saturation), above = over.add(over.abs()).mul(half);
        DoubleVector walls = u.sub(above), s = above.mul(overRoom), step = DoubleVector.fromArray(LANES, stepOver[0], m);
        DoubleVector a = step.fma(DoubleVector.fromArray(LANES, stack.near.pull, m), one), taken = step.mul(DoubleVector.fromArray(LANES, stack.near.pulled, m));
        for (int i = 0; i < last; i++) {
            DoubleVector v = DoubleVector.fromArray(LANES, moisture[i + 1], m), overV = v.sub(saturation), aboveV = overV.add(overV.abs()).mul(half);
            DoubleVector wallsV = v.sub(aboveV), t = aboveV.mul(overRoom), between = walls.sub(wallsV);
            DoubleVector lacks = twice.sub(walls).sub(wallsV), has = u.sub(walls).add(v.sub(wallsV));
            DoubleVector share = lacks.fma(tiny, between.abs()).div(lacks.add(has).fma(tiny, u.sub(v).abs()).add(least));
            DoubleVector q = eighthRise.mul(walls.add(wallsV));
            DoubleVector root = q.fma(of120, of24).fma(q, sixth).fma(q, half).fma(q, one).fma(q, one), square = root.mul(root);
            DoubleVector spread = halfRise.mul(between), wide = spread.mul(spread);
            DoubleVector d = square.mul(square).mul(quickBound).mul(wide.fma(of120, sixth).fma(wide, one));
            DoubleVector liquid = free.mul(s.add(t).mul(s.fma(s, t.mul(t)))).mul(one.sub(share));
            DoubleVector link = d.fma(share, liquid).mul(DoubleVector.fromArray(LANES, overDistance[i], m));
            DoubleVector pivot = one.div(step.fma(link, a)), shed = step.mul(link).mul(pivot), carried = u.add(taken).mul(pivot);
            shed.intoArray(shedRows[i], m);
            carried.intoArray(carriedRows[i], m);
            u = v;
            walls = wallsV;
            s = t;
            step = DoubleVector.fromArray(LANES, stepOver[i + 1], m);
            DoubleVector back = step.mul(link);
            taken = back.mul(carried);
            a = back.fma(one.sub(shed), one);
        }
        DoubleVector pivot = step.fma(DoubleVector.fromArray(LANES, stack.far.pull, m), a);
        u.add(step.mul(DoubleVector.fromArray(LANES, stack.far.pulled, m))).add(taken).mul(one.div(pivot)).intoArray(moisture[last], m);
    }

    /// Back to the near face.
    private static void up(double[][] moisture, double[][] shed, double[][] carried, int m) {
        int last = moisture.length - 1;
        DoubleVector after = DoubleVector.fromArray(LANES, moisture[last], m);
        for (int i = last - 1; i >= 0; i--) {
            after = after.fma(DoubleVector.fromArray(LANES, shed[i], m), DoubleVector.fromArray(LANES, carried[i], m));
            after.intoArray(moisture[i], m);
        }
    }
}
