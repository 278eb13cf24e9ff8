package sillwright.wood.drying;

/// One hour of [Transport] in short loops over the pieces, each short enough for the compiler to lay side by side.
final class PlainTransport {
    private PlainTransport() {}

    /// The exchange at both faces, from the state of the hour before.
    private static void faces(Stack stack, int from, int to, double atRest, double quick, double vapour, double runs, double rainMm) {
        wet(stack, from, to, runs, rainMm);
        vapour(stack, stack.near, stack.moisture[0], from, to, atRest, quick, vapour);
        vapour(stack, stack.far, stack.moisture[stack.slices - 1], from, to, atRest, quick, vapour);
        soak(stack, from, to, quick, rainMm);
    }

    /// How long liquid lies on both faces in this hour.
    private static void wet(Stack stack, int from, int to, double runs, double rainMm) {
        wet(stack.near.left, stack.near.stays, stack.near.wet, rainMm > 0 ? 1 : 0, runs, from, to);
        wet(stack.far.left, stack.far.stays, stack.far.wet, rainMm > 0 ? 1 : 0, runs, from, to);
    }

    /// What liquid does while it lies there, set over what vapour would do; nothing to work out where every face is dry.
    private static void soak(Stack stack, int from, int to, double quick, double rainMm) {
        if (any(stack.near.wet, from, to)) liquid(stack, stack.near, stack.moisture[0], quick, rainMm, from, to);
        if (any(stack.far.wet, from, to)) liquid(stack, stack.far, stack.moisture[stack.slices - 1], quick, rainMm, from, to);
    }

    private static boolean any(double[] wet, int from, int to) {
        for (int m = from; m < to; m++) if (wet[m] > 0) return true;
        return false;
    }

    static void hours(Stack stack, Air air, int fromHour, int toHour, int from, int to) {
        for (int h = fromHour; h < toHour; h++) {
            faces(stack, from, to, air.atRest[h], air.quick[h], air.vapour[h], air.runs[h], air.rainMm[h]);
            across(stack, from, to, air.quick[h], air.runs[h]);
            balance(stack, from, to);
            sides(stack, from, to, air.atRest[h], air.quick[h]);
        }
    }

    /// The step itself, from face to face and back: what drives each slice, links between them, elimination, substitution. A link is kept as one
    /// number over another, so that a slice costs one division.
    private static void across(Stack stack, int from, int to, double quick, double runs) {
        int last = stack.slices - 1;
        double[][] u = stack.moisture, shed = stack.shed, carried = stack.carried;
        double[] walls = stack.walls, loose = stack.loose, nextWalls = stack.nextWalls, nextLoose = stack.nextLoose;
        double[] link = stack.link, over = stack.over, lets = stack.lets, kept = stack.kept, has = stack.has, work = stack.work;
        root(u[0], stack.saturation, stack.rise, work, from, to);
        walls(work, stack.bound, quick, walls, from, to);
        loose(u[0], stack.saturation, stack.overRoom, stack.quarterFree, runs, loose, from, to);
        first(u[0], stack.stepOverSlice[0], stack.near.pull, stack.near.pulled, kept, has, from, to);
        for (int i = 0; i < last; i++) {
            double[] v = u[i + 1], step = stack.stepOverSlice[i];
            root(v, stack.saturation, stack.rise, work, from, to);
            walls(work, stack.bound, quick, nextWalls, from, to);
            loose(v, stack.saturation, stack.overRoom, stack.quarterFree, runs, nextLoose, from, to);
            lets(v, stack.saturation, nextWalls, nextLoose, lets, from, to);
            link(walls, nextWalls, loose, nextLoose, stack.overRise, link, from, to);
            over(u[i], v, stack.saturation, lets, link, over, stack.overDistance[i], from, to);
            pivot(step, link, kept, over, work, from, to);
            shed(step, link, work, shed[i], from, to);
            held(has, work, from, to);
            carry(has, over, carried[i], from, to);
            next(v, stack.stepOverSlice[i + 1], link, work, kept, has, from, to);
            double[] swap = walls;
            walls = nextWalls;
            nextWalls = swap;
            swap = loose;
            loose = nextLoose;
            nextLoose = swap;
        }
        end(u[last], stack.stepOverSlice[last], stack.far.pull, stack.far.pulled, kept, has, from, to);
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
        for (int m = from; m < to; m++) pulled[m] = bound[m] * exp(rise[m] * inWalls[m]);
        for (int m = from; m < to; m++) pull[m] = air[m] * overVapour * bound[m] + half[m] * overQuick + film[m] * overVapour * pulled[m];
        for (int m = from; m < to; m++) pull[m] = pull[m] * (Math.abs(moisture[m] - atRest) + Stack.TINY);
        for (int m = from; m < to; m++) pull[m] = open[m] * (Math.abs(inWalls[m] - atRest) + Stack.TINY) * pulled[m] / pull[m];
        for (int m = from; m < to; m++) pulled[m] = pull[m] * atRest;
    }

    /// Liquid soaks into that part of the face where the film is open, no faster than it comes: as bound water, and where it fills as free water too, by how much of the
    /// gap to full wood lies in the walls.
    private static void liquid(Stack stack, Stack.Faces face, double[] moisture, double quick, double rainMm, int from, int to) {
        double[] walls = stack.walls, gap = stack.over, filled = stack.loose, soaks = stack.lets, comes = stack.link, spread = stack.has;
        double[] saturation = stack.saturation, full = stack.full, overRoom = stack.overRoom, bound = stack.bound, rise = stack.rise, free = stack.free;
        double[] leak = face.leak, fills = face.fills, supply = face.supply, half = face.half, wet = face.wet, pull = face.pull, pulled = face.pulled;
        for (int m = from; m < to; m++) {
            double over = moisture[m] - saturation[m];
            walls[m] = 0.5 * (Math.abs(over) - over);
        }
        for (int m = from; m < to; m++) filled[m] = (moisture[m] - saturation[m] + walls[m]) * overRoom[m];
        for (int m = from; m < to; m++) gap[m] = full[m] - moisture[m] + Stack.TINY;
        for (int m = from; m < to; m++) soaks[m] = bound[m] * quick * exp(rise[m] * (saturation[m] - 0.5 * walls[m])) * walls[m];
        for (int m = from; m < to; m++) spread[m] = 0.25 * rise[m] * rise[m] * walls[m] * walls[m];
        for (int m = from; m < to; m++) soaks[m] = soaks[m] * (1 + spread[m] * (1.0 / 6 + spread[m] * (1.0 / 120)));
        for (int m = from; m < to; m++) soaks[m] = leak[m] * soaks[m] + fills[m] * free[m] * 0.25 * (1 + filled[m]) * (1 + filled[m] * filled[m]) * (gap[m] - walls[m]);
        if (rainMm > 0) {
            for (int m = from; m < to; m++) comes[m] = supply[m] * rainMm * half[m];
            for (int m = from; m < to; m++) soaks[m] = 0.5 * (soaks[m] + comes[m] - Math.abs(soaks[m] - comes[m]));
        }
        for (int m = from; m < to; m++) soaks[m] = wet[m] * soaks[m] / (gap[m] * half[m]);
        for (int m = from; m < to; m++) pull[m] = (1 - wet[m]) * pull[m] + soaks[m];
        for (int m = from; m < to; m++) pulled[m] = (1 - wet[m]) * pulled[m] + soaks[m] * full[m];
    }

    /// exp(x) for 0 to 1.4, within 2e-6: the fourth power of a short series.
    static double exp(double x) {
        double q = 0.25 * x;
        double root = 1 + q * (1 + q * (0.5 + q * (1.0 / 6 + q * (1.0 / 24 + q * (1.0 / 120)))));
        double square = root * root;
        return square * square;
    }

    /// The fourth root of exp(rise · u), u what the walls hold.
    private static void root(double[] u, double[] saturation, double[] rise, double[] root, int from, int to) {
        for (int m = from; m < to; m++) {
            double over = u[m] - saturation[m], q = 0.25 * rise[m] * (u[m] - 0.5 * (over + Math.abs(over)));
            root[m] = 1 + q * (1 + q * (0.5 + q * (1.0 / 6 + q * (1.0 / 24 + q * (1.0 / 120)))));
        }
    }

    /// D of bound water, from that root; over the rise it is also the sum of D up to that moisture.
    private static void walls(double[] root, double[] bound, double quick, double[] walls, int from, int to) {
        for (int m = from; m < to; m++) {
            double square = root[m] * root[m];
            walls[m] = square * square * bound[m] * quick;
        }
    }

    /// The sum of D of free water up to one moisture: it grows with the fourth power of the filled share of the room.
    private static void loose(double[] u, double[] saturation, double[] overRoom, double[] quarterFree, double runs, double[] loose, int from, int to) {
        for (int m = from; m < to; m++) {
            double over = u[m] - saturation[m], s = 0.5 * (over + Math.abs(over)) * overRoom[m], square = s * s;
            loose[m] = quarterFree[m] * runs * square * square;
        }
    }

    /// How far one moisture lies from saturation, times D there: of bound water below, of free water above.
    private static void lets(double[] u, double[] saturation, double[] walls, double[] loose, double[] lets, int from, int to) {
        for (int m = from; m < to; m++) {
            double over = u[m] - saturation[m];
            lets[m] = 0.5 * (Math.abs(over) - over) * walls[m] + 4 * loose[m];
        }
    }

    /// The sum of D between two moistures.
    private static void link(double[] walls, double[] nextWalls, double[] loose, double[] nextLoose, double[] overRise, double[] link, int from, int to) {
        for (int m = from; m < to; m++) link[m] = (walls[m] - nextWalls[m]) * overRise[m] + loose[m] - nextLoose[m];
    }

    /// That sum and the step between the two moistures: one over the other is the mean of D between them, or D itself where they are alike.
    private static void over(double[] u, double[] v, double[] saturation, double[] lets, double[] link, double[] over, double[] overDistance, int from, int to) {
        for (int m = from; m < to; m++) over[m] = Math.abs(u[m] - v[m]) + Stack.TINY * Math.abs(v[m] - saturation[m]) + Stack.LEAST;
        for (int m = from; m < to; m++) link[m] = (Math.abs(link[m]) + Stack.TINY * lets[m]) * overDistance[m];
    }

    private static void first(double[] u, double[] step, double[] pull, double[] pulled, double[] kept, double[] has, int from, int to) {
        for (int m = from; m < to; m++) kept[m] = 1 + step[m] * pull[m];
        for (int m = from; m < to; m++) has[m] = u[m] + step[m] * pulled[m];
    }

    private static void pivot(double[] step, double[] link, double[] kept, double[] over, double[] pivot, int from, int to) {
        for (int m = from; m < to; m++) pivot[m] = 1 / (kept[m] * over[m] + step[m] * link[m]);
    }

    private static void shed(double[] step, double[] link, double[] pivot, double[] shed, int from, int to) {
        for (int m = from; m < to; m++) shed[m] = step[m] * link[m] * pivot[m];
    }

    private static void held(double[] has, double[] pivot, int from, int to) {
        for (int m = from; m < to; m++) has[m] = has[m] * pivot[m];
    }

    private static void carry(double[] held, double[] over, double[] carried, int from, int to) {
        for (int m = from; m < to; m++) carried[m] = held[m] * over[m];
    }

    private static void next(double[] v, double[] step, double[] link, double[] pivot, double[] kept, double[] has, int from, int to) {
        for (int m = from; m < to; m++) kept[m] = 1 + step[m] * link[m] * kept[m] * pivot[m];
        for (int m = from; m < to; m++) has[m] = v[m] + step[m] * link[m] * has[m];
    }

    private static void end(double[] u, double[] step, double[] pull, double[] pulled, double[] kept, double[] has, int from, int to) {
        for (int m = from; m < to; m++) u[m] = (has[m] + step[m] * pulled[m]) / (kept[m] + step[m] * pull[m]);
    }

    private static void back(double[] here, double[] next, double[] shed, double[] carried, int from, int to) {
        for (int m = from; m < to; m++) here[m] = carried[m] + shed[m] * next[m];
    }

    /// What came in and went out, from the fluxes themselves and not from the change.
    private static void balance(Stack stack, int from, int to) {
        double[] first = stack.moisture[0], last = stack.moisture[stack.slices - 1];
        double[] gained = stack.gained, wetHours = stack.wetHours, nearPull = stack.near.pull, nearPulled = stack.near.pulled, farPull = stack.far.pull;
        double[] farPulled = stack.far.pulled, nearWet = stack.near.wet, farWet = stack.far.wet;
        double step = stack.stepS, hours = step / 3600;
        for (int m = from; m < to; m++) gained[m] += step * (nearPulled[m] - nearPull[m] * first[m] + farPulled[m] - farPull[m] * last[m]);
        for (int m = from; m < to; m++) wetHours[m] += hours * 0.5 * (nearWet[m] + farWet[m] + Math.abs(nearWet[m] - farWet[m]));
    }

    /// What the sides lose, where any piece has sides that count.
    private static void sides(Stack stack, int from, int to, double atRest, double quick) {
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
