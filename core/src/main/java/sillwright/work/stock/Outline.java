package sillwright.work.stock;

import java.util.ArrayList;
import java.util.List;

import sillwright.walk.Profile;

/// The outline of a moulding, drawn through the steps of a gauge as straight lines and arcs that meet.
///
/// Each stroke runs from one step to a later one; an arc is the circle through its two ends that lies nearest to the steps between (least squares of the radial
/// distance, one unknown). Where to part the outline is settled over all ways at once by dynamic programming: the sum over strokes of squared misses, in units
/// of how exactly a gauge reads, and a price for each number a stroke is described by, as in a minimum description length.
/// Source: Rissanen, Modeling by shortest data description (1978), for the price (from memory); the gauge's 1/64 in is this program's own choice.
///
/// @param strokes  from the inner edge on, each starting where the one before ends
/// @param worstMm  the furthest that any step lies from its stroke
public record Outline(List<Stroke> strokes, double worstMm) {
    /// How exactly a step of the gauge is read, mm: 1/64 in.
    public static final double READ_MM = 25.4 / 64;
    /// The spread of one reading: half a step of the gauge, for rounding and for the hand.
    private static final double SPREAD_MM = READ_MM / 2;
    private static final double PRICE = 3, MOST_MISS = 3;
    /// An arc wants as many steps as this, its ends among them: three points lie on a circle whatever they are.
    private static final int ARC_STEPS = 4;

    public Outline { strokes = List.copyOf(strokes); }

    /// One stroke of the outline, in mm across and out.
    ///
    /// @param radiusMm 0 for a straight line
    /// @param cove     true where an arc is hollow, false where it swells out
    /// @param centreX  of an arc
    /// @param centreY  likewise
    /// @param missMm   the furthest that one of its steps lies from it
    /// @param steps    of the gauge that it runs through
    public record Stroke(double fromX, double fromY, double toX, double toY, double radiusMm, boolean cove, double centreX, double centreY, double missMm, int steps) {
        public boolean arc() { return radiusMm > 0; }

        /// Whether an arc is more than half of its circle: its middle lies on the side to which it bulges.
        public boolean large() {
            if (!arc()) return false;
            double side = (toX - fromX) * (centreY - fromY) - (toY - fromY) * (centreX - fromX);
            return cove ? side < -1e-9 : side > 1e-9;
        }

        /// How far an arc bulges from its chord, mm.
        public double riseMm() {
            double half = Math.hypot(toX - fromX, toY - fromY) / 2;
            double rise = radiusMm - Math.sqrt(Math.max(0, radiusMm * radiusMm - half * half));
            return !arc() ? 0 : large() ? 2 * radiusMm - rise : rise;
        }
    }

    public static Outline of(Profile profile) {
        return of(profile.offsets().stream().mapToDouble(Profile.Offset::acrossMm).toArray(), profile.offsets().stream().mapToDouble(Profile.Offset::outMm).toArray());
    }

    /// @param x across, mm, at least two places
    /// @param y out, mm
    public static Outline of(double[] x, double[] y) {
        int n = x.length;
        double[] best = new double[n];
        int[] from = new int[n];
        Stroke[] stroke = new Stroke[n];
        for (int j = 1; j < n; j++) {
            best[j] = Double.POSITIVE_INFINITY;
            for (int i = 0; i < j; i++) {
                if (best[i] == Double.POSITIVE_INFINITY) continue;
                for (int kind = 0; kind < 2; kind++) {
                    if (kind == 1 && j - i + 1 < ARC_STEPS) continue;
                    Stroke tried = kind == 0 ? line(x, y, i, j) : arc(x, y, i, j);
                    double cost = best[i] + cost(tried, x, y, i, j);
                    if (cost < best[j]) {
                        best[j] = cost;
                        from[j] = i;
                        stroke[j] = tried;
                    }
                }
            }
        }
        List<Stroke> strokes = new ArrayList<>();
        for (int j = n - 1; j > 0; j = from[j]) strokes.addFirst(stroke[j]);
        return new Outline(strokes, strokes.stream().mapToDouble(Stroke::missMm).max().orElse(0));
    }

    private static double cost(Stroke stroke, double[] x, double[] y, int i, int j) {
        if (stroke.missMm > MOST_MISS * SPREAD_MM) return Double.POSITIVE_INFINITY;
        double sum = 0;
        for (int k = i + 1; k < j; k++) {
            double miss = stroke.arc() ? Math.abs(Math.hypot(x[k] - stroke.centreX, y[k] - stroke.centreY) - stroke.radiusMm) : toChord(x, y, i, j, k);
            sum += miss * miss / (SPREAD_MM * SPREAD_MM);
        }
        return sum + PRICE * (stroke.arc() ? 3 : 2);
    }

    private static Stroke line(double[] x, double[] y, int i, int j) {
        double miss = 0;
        for (int k = i + 1; k < j; k++) miss = Math.max(miss, toChord(x, y, i, j, k));
        return new Stroke(x[i], y[i], x[j], y[j], 0, false, 0, 0, miss, j - i + 1);
    }

    /// Distance to the chord, and beyond its ends to the nearer end.
    private static double toChord(double[] x, double[] y, int i, int j, int k) {
        double ux = x[j] - x[i], uy = y[j] - y[i], length = Math.hypot(ux, uy), along = ((x[k] - x[i]) * ux + (y[k] - y[i]) * uy) / length;
        double at = Math.clamp(along, 0, length);
        return Math.hypot(x[k] - x[i] - at * ux / length, y[k] - y[i] - at * uy / length);
    }

    /// The circle through both ends nearest to what lies between: its middle moves along the chord's perpendicular. The signed distance `h` from chord to middle is
    /// found by Gauss and Newton from the algebraic answer, which is linear in it.
    private static Stroke arc(double[] x, double[] y, int i, int j) {
        double mx = (x[i] + x[j]) / 2, my = (y[i] + y[j]) / 2, ux = x[j] - x[i], uy = y[j] - y[i], half = Math.hypot(ux, uy) / 2, px = -uy / (2 * half), py = ux / (2 * half);
        double top = 0, bottom = 0;
        for (int k = i + 1; k < j; k++) {
            double dx = x[k] - mx, dy = y[k] - my, off = dx * px + dy * py, square = dx * dx + dy * dy - half * half;
            top += off * square;
            bottom += 2 * off * off;
        }
        if (bottom < 1e-12) return flat(x, y, i, j);
        double h = top / bottom;
        for (int pass = 0; pass < 30; pass++) {
            double slope = 0, miss = 0, radius = Math.hypot(h, half);
            for (int k = i + 1; k < j; k++) {
                double dx = x[k] - mx - h * px, dy = y[k] - my - h * py, away = Math.hypot(dx, dy);
                if (away < 1e-9) continue;
                double d = -(dx * px + dy * py) / away - h / radius;
                slope += d * d;
                miss += d * (away - radius);
            }
            if (slope < 1e-15) break;
            double step = miss / slope;
            h -= step;
            if (Math.abs(step) < 1e-9 * (1 + Math.abs(h))) break;
        }
        double radius = Math.hypot(h, half), cx = mx + h * px, cy = my + h * py, worst = 0, side = 0;
        if (!(radius < 1e5)) return flat(x, y, i, j);
        for (int k = i + 1; k < j; k++) {
            worst = Math.max(worst, Math.abs(Math.hypot(x[k] - cx, y[k] - cy) - radius));
            side += (x[k] - mx) * px + (y[k] - my) * py;
        }
        // Places never go back, so that the left of a stroke is outward.
        return new Stroke(x[i], y[i], x[j], y[j], radius, side < 0, cx, cy, worst, j - i + 1);
    }

    /// A circle so wide that it is straight: priced as an arc, so that a line is taken.
    private static Stroke flat(double[] x, double[] y, int i, int j) {
        Stroke line = line(x, y, i, j);
        return new Stroke(x[i], y[i], x[j], y[j], 1e6, false, x[i], y[i] - 1e6, Math.max(line.missMm, MOST_MISS * READ_MM + 1), line.steps);
    }
}
