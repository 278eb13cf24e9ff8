package sillwright.lanes;

import jdk.incubator.vector.DoubleVector;
import jdk.incubator.vector.VectorOperators;
import jdk.incubator.vector.VectorSpecies;

import sillwright.wood.drying.Air;
import sillwright.wood.drying.Stack;
import sillwright.wood.drying.Transport;

/// [Transport] in the vector unit: two vectors of pieces at a time, taken through all hours of the call in a [Batch] copy that stays in the first cache.
///
/// An hour is three passes over the slices. What drives each link hangs on no other link, and fills the unit. Elimination waits for one division after the other: so it comes from both faces at once, and the two vectors go side
/// by side. The way back likewise. A product and a sum are rounded once where [Transport#PLAIN] rounds them twice, so the two part in the last digits.
///
/// The compiler keeps vectors in registers only where it inlines all that makes them, so this is written out without small helpers.
final class LaneTransport implements Transport {
    private static final VectorSpecies<Double> LANES = DoubleVector.SPECIES_PREFERRED;
    private static final int ONE = LANES.length(), PAIR = 2 * ONE;

    /// Whether pieces that go together fill pairs of whole vectors on this machine.
    static boolean fits() { return Stack.TOGETHER % PAIR == 0; }

    @Override
    public void hours(Stack stack, Air air, int fromHour, int toHour, int fromPiece, int toPiece) {
        if (fromPiece % Stack.TOGETHER != 0 || toPiece % Stack.TOGETHER != 0 && toPiece != stack.pieces || !fits())
            throw new IllegalArgumentException("pieces " + fromPiece + " to " + toPiece + " are not parted at multiples of " + Stack.TOGETHER);
        Batch batch = new Batch(stack.slices, PAIR);
        for (int from = fromPiece; from < toPiece; from += PAIR) {
            boolean sides = batch.take(stack, from);
            for (int h = fromHour; h < toHour; h++) hour(stack, batch, from, sides, air.atRest[h], air.quick[h], air.vapour[h], air.runs[h], air.rainMm[h]);
            batch.give(stack, from);
        }
    }

    private static void hour(Stack stack, Batch batch, int from, boolean sides, double atRest, double quick, double vapour, double runs, double rainMm) {
        double overQuick = 1 / quick, overVapour = 1 / vapour;
        int end = (stack.slices - 1) * PAIR;
        for (int g = 0; g < PAIR; g += ONE) {
            face(stack, stack.near, batch.moisture, g, from + g, atRest, quick, overQuick, overVapour, runs, rainMm);
            face(stack, stack.far, batch.moisture, end + g, from + g, atRest, quick, overQuick, overVapour, runs, rainMm);
            drive(stack, batch, g, from + g, quick, runs);
        }
        in(stack, batch, from);
        out(batch);
        for (int g = 0; g < PAIR; g += ONE) balance(stack, batch, g, from + g);
        if (sides) for (int g = 0; g < PAIR; g += ONE) sides(stack, batch, g, from + g, atRest, quick);
    }

    /// What one face lets through in this hour: vapour, and liquid while it lies there.
    private static void face(Stack stack, Stack.Faces face, double[] moisture, int at, int m, double atRest, double quick, double overQuick, double overVapour, double runs,
                             double rainMm) {
        DoubleVector tiny = DoubleVector.broadcast(LANES, Stack.TINY), one = DoubleVector.broadcast(LANES, 1), half = DoubleVector.broadcast(LANES, 0.5);
        DoubleVector sixth = DoubleVector.broadcast(LANES, 1.0 / 6), of24 = DoubleVector.broadcast(LANES, 1.0 / 24), of120 = DoubleVector.broadcast(LANES, 1.0 / 120);
        DoubleVector lasts = DoubleVector.fromArray(LANES, face.left, m).sub(one).max(0);
        if (rainMm > 0) lasts = lasts.max(DoubleVector.fromArray(LANES, face.stays, m));
        lasts.intoArray(face.left, m);
        DoubleVector wet = lasts.min(one).mul(DoubleVector.broadcast(LANES, runs));
        wet.intoArray(face.wet, m);
        DoubleVector rest = DoubleVector.broadcast(LANES, atRest), thin = DoubleVector.broadcast(LANES, overVapour), bound = DoubleVector.fromArray(LANES, stack.bound, m);
        DoubleVector u = DoubleVector.fromArray(LANES, moisture, at), saturation = DoubleVector.fromArray(LANES, stack.saturation, m), over = u.sub(saturation);
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

    /// What each slice gives the next for a difference of one: one number over another, so that a slice costs one division.
    private static void drive(Stack stack, Batch batch, int g, int m, double quick, double runs) {
        double[] moisture = batch.moisture, givesBy = batch.givesBy, backBy = batch.backBy, gives = batch.gives, back = batch.back, apart = batch.apart;
        int last = stack.slices - 1;
        DoubleVector tiny = DoubleVector.broadcast(LANES, Stack.TINY), one = DoubleVector.broadcast(LANES, 1), half = DoubleVector.broadcast(LANES, 0.5), lessHalf = half.neg();
        DoubleVector sixth = DoubleVector.broadcast(LANES, 1.0 / 6), of24 = DoubleVector.broadcast(LANES, 1.0 / 24), of120 = DoubleVector.broadcast(LANES, 1.0 / 120);
        DoubleVector fourTiny = DoubleVector.broadcast(LANES, 4 * Stack.TINY), least = DoubleVector.broadcast(LANES, Stack.LEAST);
        DoubleVector saturation = DoubleVector.fromArray(LANES, stack.saturation, m), quarterRise = DoubleVector.fromArray(LANES, stack.rise, m).mul(DoubleVector.broadcast(LANES, 0.25));
        DoubleVector overRise = DoubleVector.fromArray(LANES, stack.overRise, m), halfRoom = half.mul(DoubleVector.fromArray(LANES, stack.overRoom, m));
        DoubleVector ofFree = DoubleVector.fromArray(LANES, stack.quarterFree, m).mul(DoubleVector.broadcast(LANES, runs));
        DoubleVector quickBound = DoubleVector.fromArray(LANES, stack.bound, m).mul(DoubleVector.broadcast(LANES, quick));
        DoubleVector u = DoubleVector.fromArray(LANES, moisture, g), over = u.sub(saturation), above = over.add(over.abs());
        DoubleVector q = quarterRise.mul(above.fma(lessHalf, u));
        DoubleVector root = q.fma(of120, of24).fma(q, sixth).fma(q, half).fma(q, one).fma(q, one), square = root.mul(root);
        DoubleVector walls = square.mul(square).mul(quickBound), s = above.mul(halfRoom), second = s.mul(s), loose = second.mul(second).mul(ofFree);
        for (int i = 0; i < last; i++) {
            DoubleVector v = DoubleVector.fromArray(LANES, moisture, i * PAIR + PAIR + g);
            over = v.sub(saturation);
            DoubleVector away = over.abs();
            above = over.add(away);
            q = quarterRise.mul(above.fma(lessHalf, v));
            root = q.fma(of120, of24).fma(q, sixth).fma(q, half).fma(q, one).fma(q, one);
            square = root.mul(root);
            s = above.mul(halfRoom);
            second = s.mul(s);
            DoubleVector nextWalls = square.mul(square).mul(quickBound), nextLoose = second.mul(second).mul(ofFree);
            DoubleVector sum = walls.sub(nextWalls).fma(overRise, loose.sub(nextLoose)).abs();
            DoubleVector link = above.fma(lessHalf, away).mul(nextWalls).fma(tiny, nextLoose.fma(fourTiny, sum));
            link.mul(DoubleVector.fromArray(LANES, givesBy, i * PAIR + g)).intoArray(gives, i * PAIR + g);
            link.mul(DoubleVector.fromArray(LANES, backBy, i * PAIR + g)).intoArray(back, i * PAIR + g);
            away.fma(tiny, u.sub(v).abs()).add(least).intoArray(apart, i * PAIR + g);
            u = v;
            walls = nextWalls;
            loose = nextLoose;
        }
    }

    /// Elimination from both faces to the slice where they meet, which then is known: four of the divisions that wait for one another go side by side.
    private static void in(Stack stack, Batch batch, int m) {
        double[] moisture = batch.moisture, step = batch.step, gives = batch.gives, back = batch.back, apart = batch.apart;
        int end = (batch.slices - 1) * PAIR, meet = batch.slices / 2 * PAIR, n = m + ONE;
        DoubleVector one = DoubleVector.broadcast(LANES, 1);
        DoubleVector here = DoubleVector.fromArray(LANES, step, 0), there = DoubleVector.fromArray(LANES, step, ONE);
        DoubleVector keptA = here.fma(DoubleVector.fromArray(LANES, stack.near.pull, m), one), keptB = there.fma(DoubleVector.fromArray(LANES, stack.near.pull, n), one);
        DoubleVector hasA = here.fma(DoubleVector.fromArray(LANES, stack.near.pulled, m), DoubleVector.fromArray(LANES, moisture, 0));
        DoubleVector hasB = there.fma(DoubleVector.fromArray(LANES, stack.near.pulled, n), DoubleVector.fromArray(LANES, moisture, ONE));
        here = DoubleVector.fromArray(LANES, step, end);
        there = DoubleVector.fromArray(LANES, step, end + ONE);
        DoubleVector keptC = here.fma(DoubleVector.fromArray(LANES, stack.far.pull, m), one), keptD = there.fma(DoubleVector.fromArray(LANES, stack.far.pull, n), one);
        DoubleVector hasC = here.fma(DoubleVector.fromArray(LANES, stack.far.pulled, m), DoubleVector.fromArray(LANES, moisture, end));
        DoubleVector hasD = there.fma(DoubleVector.fromArray(LANES, stack.far.pulled, n), DoubleVector.fromArray(LANES, moisture, end + ONE));
        for (int at = 0, far = end; at < meet; at += PAIR, far -= PAIR) {
            DoubleVector apartA = DoubleVector.fromArray(LANES, apart, at), apartB = DoubleVector.fromArray(LANES, apart, at + ONE);
            DoubleVector givesA = DoubleVector.fromArray(LANES, gives, at), givesB = DoubleVector.fromArray(LANES, gives, at + ONE);
            DoubleVector pivotA = one.div(keptA.fma(apartA, givesA)), pivotB = one.div(keptB.fma(apartB, givesB)), heldA = hasA.mul(pivotA), heldB = hasB.mul(pivotB);
            DoubleVector backA = DoubleVector.fromArray(LANES, back, at), backB = DoubleVector.fromArray(LANES, back, at + ONE);
            givesA.mul(pivotA).intoArray(gives, at);
            givesB.mul(pivotB).intoArray(gives, at + ONE);
            heldA.mul(apartA).intoArray(moisture, at);
            heldB.mul(apartB).intoArray(moisture, at + ONE);
            hasA = backA.fma(heldA, DoubleVector.fromArray(LANES, moisture, at + PAIR));
            hasB = backB.fma(heldB, DoubleVector.fromArray(LANES, moisture, at + PAIR + ONE));
            keptA = backA.fma(keptA.mul(pivotA), one);
            keptB = backB.fma(keptB.mul(pivotB), one);
            if (far == meet) break;
            int link = far - PAIR;
            DoubleVector apartC = DoubleVector.fromArray(LANES, apart, link), apartD = DoubleVector.fromArray(LANES, apart, link + ONE);
            DoubleVector givesC = DoubleVector.fromArray(LANES, back, link), givesD = DoubleVector.fromArray(LANES, back, link + ONE);
            DoubleVector pivotC = one.div(keptC.fma(apartC, givesC)), pivotD = one.div(keptD.fma(apartD, givesD)), heldC = hasC.mul(pivotC), heldD = hasD.mul(pivotD);
            DoubleVector backC = DoubleVector.fromArray(LANES, gives, link), backD = DoubleVector.fromArray(LANES, gives, link + ONE);
            givesC.mul(pivotC).intoArray(back, link);
            givesD.mul(pivotD).intoArray(back, link + ONE);
            heldC.mul(apartC).intoArray(moisture, far);
            heldD.mul(apartD).intoArray(moisture, far + ONE);
            hasC = backC.fma(heldC, DoubleVector.fromArray(LANES, moisture, link));
            hasD = backD.fma(heldD, DoubleVector.fromArray(LANES, moisture, link + ONE));
            keptC = backC.fma(keptC.mul(pivotC), one);
            keptD = backD.fma(keptD.mul(pivotD), one);
        }
        hasA.add(hasC).sub(DoubleVector.fromArray(LANES, moisture, meet)).div(keptA.add(keptC).sub(one)).intoArray(moisture, meet);
        hasB.add(hasD).sub(DoubleVector.fromArray(LANES, moisture, meet + ONE)).div(keptB.add(keptD).sub(one)).intoArray(moisture, meet + ONE);
    }

    /// From where they met back out to both faces.
    private static void out(Batch batch) {
        double[] moisture = batch.moisture, gives = batch.gives, back = batch.back;
        int end = (batch.slices - 1) * PAIR, meet = batch.slices / 2 * PAIR;
        DoubleVector a = DoubleVector.fromArray(LANES, moisture, meet), b = DoubleVector.fromArray(LANES, moisture, meet + ONE), c = a, d = b;
        int here = meet - PAIR;
        for (int there = meet + PAIR; there <= end; here -= PAIR, there += PAIR) {
            a = a.fma(DoubleVector.fromArray(LANES, gives, here), DoubleVector.fromArray(LANES, moisture, here));
            b = b.fma(DoubleVector.fromArray(LANES, gives, here + ONE), DoubleVector.fromArray(LANES, moisture, here + ONE));
            c = c.fma(DoubleVector.fromArray(LANES, back, there - PAIR), DoubleVector.fromArray(LANES, moisture, there));
            d = d.fma(DoubleVector.fromArray(LANES, back, there - PAIR + ONE), DoubleVector.fromArray(LANES, moisture, there + ONE));
            a.intoArray(moisture, here);
            b.intoArray(moisture, here + ONE);
            c.intoArray(moisture, there);
            d.intoArray(moisture, there + ONE);
        }
        if (here < 0) return;
        a.fma(DoubleVector.fromArray(LANES, gives, 0), DoubleVector.fromArray(LANES, moisture, 0)).intoArray(moisture, 0);
        b.fma(DoubleVector.fromArray(LANES, gives, ONE), DoubleVector.fromArray(LANES, moisture, ONE)).intoArray(moisture, ONE);
    }

    /// What came in and went out, from the fluxes themselves and not from the change; and the time a face was wet.
    private static void balance(Stack stack, Batch batch, int g, int m) {
        DoubleVector step = DoubleVector.broadcast(LANES, stack.stepS), hours = DoubleVector.broadcast(LANES, stack.stepS / 3600);
        DoubleVector in = DoubleVector.fromArray(LANES, stack.near.pulled, m).add(DoubleVector.fromArray(LANES, stack.far.pulled, m));
        DoubleVector out = DoubleVector.fromArray(LANES, stack.near.pull, m).mul(DoubleVector.fromArray(LANES, batch.moisture, g));
        out = DoubleVector.fromArray(LANES, stack.far.pull, m).fma(DoubleVector.fromArray(LANES, batch.moisture, (batch.slices - 1) * PAIR + g), out);
        step.fma(in.sub(out), DoubleVector.fromArray(LANES, stack.gained, m)).intoArray(stack.gained, m);
        DoubleVector wet = DoubleVector.fromArray(LANES, stack.near.wet, m).max(DoubleVector.fromArray(LANES, stack.far.wet, m));
        hours.fma(wet, DoubleVector.fromArray(LANES, stack.wetHours, m)).intoArray(stack.wetHours, m);
    }

    /// Exchange of each slice with the air beside the run, after the step along it and implicit like it.
    private static void sides(Stack stack, Batch batch, int g, int m, double atRest, double quick) {
        double[] moisture = batch.moisture, step = batch.step;
        DoubleVector tiny = DoubleVector.broadcast(LANES, Stack.TINY), one = DoubleVector.broadcast(LANES, 1), lessHalf = DoubleVector.broadcast(LANES, -0.5), rest = DoubleVector.broadcast(LANES, atRest);
        DoubleVector most = DoubleVector.fromArray(LANES, stack.sides, m).mul(DoubleVector.broadcast(LANES, stack.stepS * quick));
        DoubleVector saturation = DoubleVector.fromArray(LANES, stack.saturation, m), length = DoubleVector.broadcast(LANES, stack.stepS), gained = DoubleVector.fromArray(LANES, stack.gainedBySides, m);
        for (int i = 0; i < batch.slices; i++) {
            DoubleVector u = DoubleVector.fromArray(LANES, moisture, i * PAIR + g), over = u.sub(saturation), inWalls = over.add(over.abs()).fma(lessHalf, u);
            DoubleVector gone = most.mul(inWalls.sub(rest).abs().add(tiny)).div(u.sub(rest).abs().add(tiny));
            DoubleVector then = gone.fma(rest, u).div(gone.add(one));
            then.intoArray(moisture, i * PAIR + g);
            gained = gone.mul(rest.sub(then)).mul(length).div(DoubleVector.fromArray(LANES, step, i * PAIR + g)).add(gained);
        }
        gained.intoArray(stack.gainedBySides, m);
    }
}
