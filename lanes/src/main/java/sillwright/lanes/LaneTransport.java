package sillwright.lanes;

import jdk.incubator.vector.DoubleVector;
import jdk.incubator.vector.VectorOperators;
import jdk.incubator.vector.VectorSpecies;

import sillwright.wood.drying.Air;
import sillwright.wood.drying.PlainTransport;
import sillwright.wood.drying.Stack;
import sillwright.wood.drying.Transport;

/// [Transport] in the vector unit: as many pieces as it has lanes go from face to face together, what one slice hands to the next staying in
/// registers; what a slice carries stands in the row of its moisture until the way back. A product and a sum are rounded once where [Transport#PLAIN] rounds them twice, so the two part in the last digits.
///
/// The compiler keeps vectors in registers only where it inlines all that makes them, so this is written out without small helpers.
final class LaneTransport implements Transport {
    private static final VectorSpecies<Double> LANES = DoubleVector.SPECIES_PREFERRED;
    /// Pieces whose rows stay in a near cache together.
    private static final int NEAR = 64;

    /// Whether pieces that go together fill whole vectors of this machine.
    static boolean fits() { return Stack.TOGETHER % LANES.length() == 0; }

    @Override
    public void hours(Stack stack, Air air, int fromHour, int toHour, int fromPiece, int toPiece) {
        if (fromPiece % Stack.TOGETHER != 0 || toPiece % Stack.TOGETHER != 0 && toPiece != stack.pieces || !fits())
            throw new IllegalArgumentException("pieces " + fromPiece + " to " + toPiece + " are not parted at multiples of " + Stack.TOGETHER);
        double[] shed = new double[stack.slices * LANES.length()];
        for (int from = fromPiece; from < toPiece; from += NEAR) {
            int to = Math.min(toPiece, from + NEAR);
            for (int h = fromHour; h < toHour; h++) hour(stack, shed, from, to, air.atRest[h], air.quick[h], air.vapour[h], air.runs[h], air.rainMm[h]);
        }
    }

    private static void hour(Stack stack, double[] shed, int from, int to, double atRest, double quick, double vapour, double runs, double rainMm) {
        double[][] moisture = stack.moisture;
        double overQuick = 1 / quick, overVapour = 1 / vapour;
        for (int m = from; m < to; m += LANES.length()) {
            face(stack, stack.near, moisture[0], m, atRest, quick, overQuick, overVapour, runs, rainMm);
            face(stack, stack.far, moisture[moisture.length - 1], m, atRest, quick, overQuick, overVapour, runs, rainMm);
            down(stack, moisture, stack.stepOverSlice, stack.overDistance, shed, m, quick, runs);
            up(moisture, shed, m);
            balance(stack, moisture[0], moisture[moisture.length - 1], m);
        }
        PlainTransport.sides(stack, from, to, atRest, quick);
    }

    /// What one face lets through in this hour: vapour, and liquid while it lies there.
    private static void face(Stack stack, Stack.Faces face, double[] moisture, int m, double atRest, double quick, double overQuick, double overVapour, double runs,
                             double rainMm) {
        DoubleVector tiny = DoubleVector.broadcast(LANES, Stack.TINY), one = DoubleVector.broadcast(LANES, 1), half = DoubleVector.broadcast(LANES, 0.5);
        DoubleVector sixth = DoubleVector.broadcast(LANES, 1.0 / 6), of24 = DoubleVector.broadcast(LANES, 1.0 / 24), of120 = DoubleVector.broadcast(LANES, 1.0 / 120);
        DoubleVector lasts = DoubleVector.fromArray(LANES, face.left, m).sub(one).max(0);
        if (rainMm > 0) lasts = lasts.max(DoubleVector.fromArray(LANES, face.stays, m));
        lasts.intoArray(face.left, m);
        DoubleVector wet = lasts.min(one).mul(DoubleVector.broadcast(LANES, runs));
        wet.intoArray(face.wet, m);
        DoubleVector rest = DoubleVector.broadcast(LANES, atRest), thin = DoubleVector.broadcast(LANES, overVapour), bound = DoubleVector.fromArray(LANES, stack.bound, m);
        DoubleVector u = DoubleVector.fromArray(LANES, moisture, m), saturation = DoubleVector.fromArray(LANES, stack.saturation, m), over = u.sub(saturation);
        DoubleVector above = over.add(over.abs()).mul(half), b = u.sub(above), rise = DoubleVector.fromArray(LANES, stack.rise, m), quarterRise = rise.mul(DoubleVector.broadcast(LANES, 0.25));
        DoubleVector q = quarterRise.mul(b), root = q.fma(of120, of24).fma(q, sixth).fma(q, half).fma(q, one).fma(q, one), square = root.mul(root);
        DoubleVector carries = square.mul(square).mul(bound), deep = DoubleVector.fromArray(LANES, face.half, m);
        DoubleVector resists = deep.fma(DoubleVector.broadcast(LANES, overQuick), thin.mul(DoubleVector.fromArray(LANES, face.air, m).fma(bound, DoubleVector.fromArray(LANES, face.film, m).mul(carries))));
        DoubleVector pull = DoubleVector.fromArray(LANES, face.open, m).mul(b.sub(rest).abs().add(tiny)).mul(carries).div(u.sub(rest).abs().add(tiny).mul(resists)), pulled = pull.mul(rest);
        if (wet.compare(VectorOperators.GT, 0).anyTrue()) {
            DoubleVector full = DoubleVector.fromArray(LANES, stack.full, m), walls = saturation.sub(b), gap = full.sub(u).add(tiny), s = above.mul(DoubleVector.fromArray(LANES, stack.overRoom, m));
            DoubleVector spread = half.mul(rise).mul(walls), wide = spread.mul(spread);
            q = quarterRise.mul(saturation.sub(half.mul(walls)));
            root = q.fma(of120, of24).fma(q, sixth).fma(q, half).fma(q, one).fma(q, one);
            square = root.mul(root);
            DoubleVector wallsD = bound.mul(DoubleVector.broadcast(LANES, quick)).mul(square.mul(square)).mul(wide.fma(of120, sixth).fma(wide, one));
            DoubleVector freeD = DoubleVector.fromArray(LANES, stack.free, m).mul(DoubleVector.broadcast(LANES, 0.25)).mul(one.add(s)).mul(s.fma(s, one)).mul(gap.sub(walls));
            DoubleVector enters = DoubleVector.fromArray(LANES, face.leak, m).fma(wallsD.mul(walls), DoubleVector.fromArray(LANES, face.fills, m).mul(freeD));
            if (rainMm > 0) enters = enters.min(DoubleVector.fromArray(LANES, face.supply, m).mul(DoubleVector.broadcast(LANES, rainMm)).mul(deep));
            DoubleVector taken = wet.mul(enters).div(gap.mul(deep)), dry = one.sub(wet);
            pull = dry.fma(pull, taken);
            pulled = dry.fma(pulled, taken.mul(full));
        }
        pull.intoArray(face.pull, m);
        pulled.intoArray(face.pulled, m);
    }

    /// From the near face to the far one: the links between slices, and elimination as they come.
    private static void down(Stack stack, double[][] moisture, double[][] stepOver, double[][] overDistance, double[] shed, int m,
                             double quick, double runs) {
        int last = moisture.length - 1;
        DoubleVector tiny = DoubleVector.broadcast(LANES, Stack.TINY), one = DoubleVector.broadcast(LANES, 1), half = DoubleVector.broadcast(LANES, 0.5);
        DoubleVector sixth = DoubleVector.broadcast(LANES, 1.0 / 6), of24 = DoubleVector.broadcast(LANES, 1.0 / 24), of120 = DoubleVector.broadcast(LANES, 1.0 / 120);
        DoubleVector saturation = DoubleVector.fromArray(LANES, stack.saturation, m), rise = DoubleVector.fromArray(LANES, stack.rise, m);
        DoubleVector quarterRise = rise.mul(DoubleVector.broadcast(LANES, 0.25)), overRise = DoubleVector.fromArray(LANES, stack.overRise, m);
        DoubleVector halfRoom = half.mul(DoubleVector.fromArray(LANES, stack.overRoom, m));
        DoubleVector ofFree = DoubleVector.fromArray(LANES, stack.quarterFree, m).mul(DoubleVector.broadcast(LANES, runs));
        DoubleVector four = DoubleVector.broadcast(LANES, 4), least = DoubleVector.broadcast(LANES, Stack.LEAST);
        DoubleVector quickBound = DoubleVector.fromArray(LANES, stack.bound, m).mul(DoubleVector.broadcast(LANES, quick));
        DoubleVector u = DoubleVector.fromArray(LANES, moisture[0], m), over = u.sub(saturation), above = over.add(over.abs());
        DoubleVector q = quarterRise.mul(u.sub(half.mul(above)));
        DoubleVector root = q.fma(of120, of24).fma(q, sixth).fma(q, half).fma(q, one).fma(q, one), square = root.mul(root);
        DoubleVector walls = square.mul(square).mul(quickBound), s = above.mul(halfRoom), second = s.mul(s), loose = second.mul(second).mul(ofFree), step = DoubleVector.fromArray(LANES, stepOver[0], m);
        DoubleVector kept = step.fma(DoubleVector.fromArray(LANES, stack.near.pull, m), one), has = step.fma(DoubleVector.fromArray(LANES, stack.near.pulled, m), u);
        for (int i = 0; i < last; i++) {
            DoubleVector v = DoubleVector.fromArray(LANES, moisture[i + 1], m);
            over = v.sub(saturation);
            above = over.add(over.abs());
            q = quarterRise.mul(v.sub(half.mul(above)));
            root = q.fma(of120, of24).fma(q, sixth).fma(q, half).fma(q, one).fma(q, one);
            square = root.mul(root);
            s = above.mul(halfRoom);
            second = s.mul(s);
            DoubleVector nextWalls = square.mul(square).mul(quickBound), nextLoose = second.mul(second).mul(ofFree);
            DoubleVector away = over.abs(), lets = away.sub(half.mul(above)).fma(nextWalls, four.mul(nextLoose));
            DoubleVector sum = walls.sub(nextWalls).fma(overRise, loose.sub(nextLoose)).abs();
            DoubleVector link = lets.fma(tiny, sum).mul(DoubleVector.fromArray(LANES, overDistance[i], m)), apart = away.fma(tiny, u.sub(v).abs()).add(least);
            DoubleVector gives = step.mul(link), pivot = one.div(kept.fma(apart, gives)), held = has.mul(pivot);
            gives.mul(pivot).intoArray(shed, i * LANES.length());
            held.mul(apart).intoArray(moisture[i], m);
            u = v;
            walls = nextWalls;
            loose = nextLoose;
            step = DoubleVector.fromArray(LANES, stepOver[i + 1], m);
            DoubleVector back = step.mul(link);
            has = back.fma(held, v);
            kept = back.fma(kept.mul(pivot), one);
        }
        DoubleVector pivot = step.fma(DoubleVector.fromArray(LANES, stack.far.pull, m), kept);
        step.fma(DoubleVector.fromArray(LANES, stack.far.pulled, m), has).div(pivot).intoArray(moisture[last], m);
    }

    /// Back to the near face.
    private static void up(double[][] moisture, double[] shed, int m) {
        int last = moisture.length - 1;
        DoubleVector after = DoubleVector.fromArray(LANES, moisture[last], m);
        for (int i = last - 1; i >= 0; i--) {
            after = after.fma(DoubleVector.fromArray(LANES, shed, i * LANES.length()), DoubleVector.fromArray(LANES, moisture[i], m));
            after.intoArray(moisture[i], m);
        }
    }

    /// What came in and went out, from the fluxes themselves and not from the change; and the time a face was wet.
    private static void balance(Stack stack, double[] first, double[] last, int m) {
        DoubleVector step = DoubleVector.broadcast(LANES, stack.stepS), hours = DoubleVector.broadcast(LANES, stack.stepS / 3600);
        DoubleVector in = DoubleVector.fromArray(LANES, stack.near.pulled, m).add(DoubleVector.fromArray(LANES, stack.far.pulled, m));
        DoubleVector out = DoubleVector.fromArray(LANES, stack.near.pull, m).mul(DoubleVector.fromArray(LANES, first, m));
        out = DoubleVector.fromArray(LANES, stack.far.pull, m).fma(DoubleVector.fromArray(LANES, last, m), out);
        step.fma(in.sub(out), DoubleVector.fromArray(LANES, stack.gained, m)).intoArray(stack.gained, m);
        DoubleVector wet = DoubleVector.fromArray(LANES, stack.near.wet, m).max(DoubleVector.fromArray(LANES, stack.far.wet, m));
        hours.fma(wet, DoubleVector.fromArray(LANES, stack.wetHours, m)).intoArray(stack.wetHours, m);
    }
}
