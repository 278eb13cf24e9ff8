package sillwright.wood.drying;

/// One hour of [Transport] in short loops over the pieces, each short enough for the compiler to lay side by side.
public final class PlainTransport {
    private PlainTransport() {}

    /// The exchange at both faces, from the state of the hour before.
    private static void faces(Stack stack, int from, int to, double atRest, double quick, double vapour, double runs, double rainMm) {
        wet(stack, from, to, runs, rainMm);
        vapour(stack, stack.near, stack.moisture[0], from, to, atRest, quick, vapour);
        vapour(stack, stack.far, stack.moisture[stack.slices - 1], from, to, atRest, quick, vapour);
        soak(stack, from, to, quick, rainMm);
    }

    /// How long liquid lies on both faces in this hour.
    public static void wet(Stack stack, int from, int to, double runs, double rainMm) {
        wet(stack.near.left, stack.near.stays, stack.near.wet, rainMm > 0 ? 1 : 0, runs, from, to);
        wet(stack.far.left, stack.far.stays, stack.far.wet, rainMm > 0 ? 1 : 0, runs, from, to);
    }

    /// What liquid does while it lies there, set over what vapour would do.
    public static void soak(Stack stack, int from, int to, double quick, double rainMm) {
        double[] near = stack.near.wet, far = stack.far.wet;
        for (int m = from; m < to; m++) {
            if (near[m] > 0) liquid(stack, stack.near, m, stack.moisture[0][m], quick, rainMm);
            if (far[m] > 0) liquid(stack, stack.far, m, stack.moisture[stack.slices - 1][m], quick, rainMm);
        }
    }

    static void hours(Stack stack, Air air, int fromHour, int toHour, int from, int to) {
        for (int h = fromHour; h < toHour; h++) {
            faces(stack, from, to, air.atRest[h], air.quick[h], air.vapour[h], air.runs[h], air.rainMm[h]);
            across(stack, from, to, air.quick[h], air.runs[h]);
            balance(stack, from, to, air.atRest[h], air.quick[h]);
        }
    }

    /// The step itself, from face to face and back: links between slices, elimination, substitution.
    private static void across(Stack stack, int from, int to, double quick, double runs) {
        int last = stack.slices - 1;
        double[][] u = stack.moisture, shed = stack.shed, carried = stack.carried;
        double[] filled = stack.filled, bound = stack.inWalls, nextFilled = stack.nextFilled, nextBound = stack.nextInWalls, before = stack.link, next = stack.nextLink;
        double[] work = stack.work;
        split(u[0], stack.saturation, stack.overRoom, filled, bound, from, to);
        for (int i = 0; i < last; i++) {
            double[] step = stack.stepOverSlice[i];
            split(u[i + 1], stack.saturation, stack.overRoom, nextFilled, nextBound, from, to);
            walls(u[i], u[i + 1], bound, nextBound, stack.saturation, work, stack.walls, from, to);
            root(bound, nextBound, stack.rise, work, from, to);
            grown(work, stack.bound, quick, next, from, to);
            widened(bound, nextBound, stack.rise, next, from, to);
            cubes(filled, nextFilled, work, from, to);
            link(work, stack.free, runs * 0.25, stack.walls, stack.overDistance[i], next, from, to);
            if (i == 0) first(u[0], step, stack.near.pull, stack.near.pulled, next, shed[0], carried[0], from, to);
            else {
                pivot(step, before, next, shed[i - 1], work, from, to);
                shed(step, next, work, shed[i], from, to);
                carry(u[i], step, before, carried[i - 1], work, carried[i], from, to);
            }
            double[] swap = filled;
            filled = nextFilled;
            nextFilled = swap;
            swap = bound;
            bound = nextBound;
            nextBound = swap;
            swap = before;
            before = next;
            next = swap;
        }
        end(u[last], stack.stepOverSlice[last], stack.far.pull, stack.far.pulled, before, shed[last - 1], carried[last - 1], from, to);
        for (int i = last - 1; i >= 0; i--) back(u[i], u[i + 1], shed[i], carried[i], from, to);
    }

    private static void wet(double[] left, double[] stays, double[] wet, double raining, double runs, int from, int to) {
        for (int m = from; m < to; m++) {
            double stay = 0.5 * (left[m] - 1 + Math.abs(left[m] - 1)), fresh = stays[m] * raining;
            double lasts = 0.5 * (stay + fresh + Math.abs(stay - fresh));
            left[m] = lasts;
            wet[m] = runs * 0.5 * (lasts + 1 - Math.abs(lasts - 1));
        }
    }

    /// What vapour does at a face: `pulled − pull · u` enters the slice behind it, m/s of moisture, past the still air, the film and half the
    /// slice, one after the other. The air's share and the film's are taken to grow with the pressure of vapour.
    private static void vapour(Stack stack, Stack.Faces face, double[] moisture, int from, int to, double atRest, double quick, double vapour) {
        double[] half = face.half, open = face.open, air = face.air, film = face.film, pull = face.pull, pulled = face.pulled;
        double[] bound = stack.bound, rise = stack.rise, saturation = stack.saturation, inWalls = stack.inWalls;
        double overVapour = 1 / vapour, overQuick = 1 / quick;
        for (int m = from; m < to; m++) {
            double u = moisture[m], over = u - saturation[m];
            inWalls[m] = u - 0.5 * (over + Math.abs(over));
        }
        for (int m = from; m < to; m++) pull[m] = (Math.abs(inWalls[m] - atRest) + Stack.TINY) / (Math.abs(moisture[m] - atRest) + Stack.TINY);
        for (int m = from; m < to; m++) pulled[m] = air[m] * overVapour + half[m] * overQuick / bound[m];
        for (int m = from; m < to; m++) pulled[m] = pulled[m] / exp(rise[m] * inWalls[m]);
        for (int m = from; m < to; m++) pull[m] = open[m] * pull[m] / (pulled[m] + film[m] * overVapour);
        for (int m = from; m < to; m++) pulled[m] = pull[m] * atRest;
    }

    /// Liquid soaks into that part of the face where the film is open, no faster than it comes.
    private static void liquid(Stack stack, Stack.Faces face, int m, double u, double quick, double rainMm) {
        double saturation = stack.saturation[m], full = stack.full[m], over = u - saturation, above = 0.5 * (over + Math.abs(over));
        double s = above * stack.overRoom[m], walls = saturation - (u - above), gap = full - u + Stack.TINY;
        double filling = walls / gap, spread = 0.5 * stack.rise[m] * walls, square = spread * spread;
        double wallsD = stack.bound[m] * quick * exp(stack.rise[m] * (saturation - 0.5 * walls)) * (1 + square * (1.0 / 6 + square * (1.0 / 120)));
        double soaks = face.leak[m] * (wallsD * filling + stack.free[m] * 0.25 * (1 + s) * (1 + s * s) * (1 - filling)) / face.half[m];
        double comes = rainMm > 0 ? face.supply[m] * rainMm / gap : soaks, enters = Math.min(soaks, comes), wet = face.wet[m];
        face.pull[m] = (1 - wet) * face.pull[m] + wet * enters;
        face.pulled[m] = (1 - wet) * face.pulled[m] + wet * enters * full;
    }

    /// exp(x) for 0 to 1.4, within 2e-6: the fourth power of a short series.
    static double exp(double x) {
        double q = 0.25 * x;
        double root = 1 + q * (1 + q * (0.5 + q * (1.0 / 6 + q * (1.0 / 24 + q * (1.0 / 120)))));
        double square = root * root;
        return square * square;
    }

    /// Parts moisture into what the walls hold and what lies free, this as a share of its room.
    private static void split(double[] u, double[] saturation, double[] overRoom, double[] filled, double[] bound, int from, int to) {
        for (int m = from; m < to; m++) {
            double over = u[m] - saturation[m], free = 0.5 * (over + Math.abs(over));
            filled[m] = free * overRoom[m];
            bound[m] = u[m] - free;
        }
    }

    /// How much of the step from one slice's moisture to the next is of bound water; where the two are alike, all or nothing by which side of
    /// saturation they lie on.
    private static void walls(double[] u, double[] v, double[] boundU, double[] boundV, double[] saturation, double[] work, double[] walls, int from, int to) {
        for (int m = from; m < to; m++) work[m] = 2 * saturation[m] - boundU[m] - boundV[m];
        for (int m = from; m < to; m++) walls[m] = Math.abs(boundU[m] - boundV[m]) + Stack.TINY * work[m];
        for (int m = from; m < to; m++) work[m] = Math.abs(u[m] - v[m]) + Stack.TINY * (work[m] + (u[m] - boundU[m] + v[m] - boundV[m])) + Stack.LEAST;
        for (int m = from; m < to; m++) walls[m] = walls[m] / work[m];
    }

    /// The fourth root of exp(rise · u) at the middle of two bound moistures.
    private static void root(double[] u, double[] v, double[] rise, double[] root, int from, int to) {
        for (int m = from; m < to; m++) {
            double q = 0.125 * rise[m] * (u[m] + v[m]);
            root[m] = 1 + q * (1 + q * (0.5 + q * (1.0 / 6 + q * (1.0 / 24 + q * (1.0 / 120)))));
        }
    }

    /// D at the middle of two bound moistures, from that root.
    private static void grown(double[] root, double[] bound, double quick, double[] d, int from, int to) {
        for (int m = from; m < to; m++) {
            double square = root[m] * root[m];
            d[m] = square * square * bound[m] * quick;
        }
    }

    /// From D at the middle to its mean between two moistures: sinh(x)/x, x half the step times the rise.
    private static void widened(double[] u, double[] v, double[] rise, double[] d, int from, int to) {
        for (int m = from; m < to; m++) {
            double spread = 0.5 * rise[m] * (u[m] - v[m]), square = spread * spread;
            d[m] = d[m] * (1 + square * (1.0 / 6 + square * (1.0 / 120)));
        }
    }

    /// Four times the mean of s³ between s and t.
    private static void cubes(double[] s, double[] t, double[] cubes, int from, int to) {
        for (int m = from; m < to; m++) cubes[m] = (s[m] + t[m]) * (s[m] * s[m] + t[m] * t[m]);
    }

    /// Bound and free water together, over the distance: m/s.
    private static void link(double[] cubes, double[] free, double quarter, double[] walls, double[] overDistance, double[] link, int from, int to) {
        for (int m = from; m < to; m++) link[m] = (link[m] * walls[m] + free[m] * quarter * cubes[m] * (1 - walls[m])) * overDistance[m];
    }

    private static void first(double[] u, double[] step, double[] pull, double[] pulled, double[] next, double[] shed, double[] carried, int from, int to) {
        for (int m = from; m < to; m++) {
            double c = step[m] * next[m], pivot = 1 / (1 + c + step[m] * pull[m]);
            shed[m] = c * pivot;
            carried[m] = (u[m] + step[m] * pulled[m]) * pivot;
        }
    }

    private static void pivot(double[] step, double[] before, double[] next, double[] shedBefore, double[] pivot, int from, int to) {
        for (int m = from; m < to; m++) pivot[m] = 1 / (1 + step[m] * next[m] + step[m] * before[m] * (1 - shedBefore[m]));
    }

    private static void shed(double[] step, double[] next, double[] pivot, double[] shed, int from, int to) {
        for (int m = from; m < to; m++) shed[m] = step[m] * next[m] * pivot[m];
    }

    private static void carry(double[] u, double[] step, double[] before, double[] carriedBefore, double[] pivot, double[] carried, int from, int to) {
        for (int m = from; m < to; m++) carried[m] = (u[m] + step[m] * before[m] * carriedBefore[m]) * pivot[m];
    }

    private static void end(double[] u, double[] step, double[] pull, double[] pulled, double[] before, double[] shedBefore, double[] carriedBefore, int from, int to) {
        for (int m = from; m < to; m++) {
            double a = step[m] * before[m], pivot = 1 / (1 + step[m] * pull[m] + a * (1 - shedBefore[m]));
            u[m] = (u[m] + step[m] * pulled[m] + a * carriedBefore[m]) * pivot;
        }
    }

    private static void back(double[] here, double[] next, double[] shed, double[] carried, int from, int to) {
        for (int m = from; m < to; m++) here[m] = carried[m] + shed[m] * next[m];
    }

    /// What came in and went out, from the fluxes themselves and not from the change; then the sides.
    public static void balance(Stack stack, int from, int to, double atRest, double quick) {
        double[] first = stack.moisture[0], last = stack.moisture[stack.slices - 1];
        double[] gained = stack.gained, wetHours = stack.wetHours, nearPull = stack.near.pull, nearPulled = stack.near.pulled, farPull = stack.far.pull;
        double[] farPulled = stack.far.pulled, nearWet = stack.near.wet, farWet = stack.far.wet;
        double step = stack.stepS, hours = step / 3600;
        for (int m = from; m < to; m++) gained[m] += step * (nearPulled[m] - nearPull[m] * first[m] + farPulled[m] - farPull[m] * last[m]);
        for (int m = from; m < to; m++) wetHours[m] += hours * 0.5 * (nearWet[m] + farWet[m] + Math.abs(nearWet[m] - farWet[m]));
        if (stack.anySides) for (int i = 0; i < stack.slices; i++) sides(stack, stack.moisture[i], stack.stepOverSlice[i], from, to, atRest, quick);
    }

    /// Exchange of one slice with the air beside the run, after the step along it and implicit like it.
    private static void sides(Stack stack, double[] u, double[] stepOver, int from, int to, double atRest, double quick) {
        double[] saturation = stack.saturation, sides = stack.sides, gained = stack.gainedBySides, work = stack.work, bound = stack.inWalls;
        double step = stack.stepS, most = step * quick;
        for (int m = from; m < to; m++) {
            double over = u[m] - saturation[m];
            bound[m] = Math.abs(u[m] - 0.5 * (over + Math.abs(over)) - atRest) + Stack.TINY;
        }
        for (int m = from; m < to; m++) work[m] = most * sides[m] * bound[m] / (Math.abs(u[m] - atRest) + Stack.TINY);
        for (int m = from; m < to; m++) u[m] = (u[m] + work[m] * atRest) / (1 + work[m]);
        for (int m = from; m < to; m++) gained[m] += work[m] * (atRest - u[m]) * step / stepOver[m];
    }
}
