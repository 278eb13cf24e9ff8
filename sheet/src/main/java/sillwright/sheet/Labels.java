package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

/// Finds room for labels that point at something: each is set as near its point as it can be without covering another,
/// its leader without running through one, and rather on bare paper than on wood.
final class Labels {
    private final Canvas canvas;
    private final Box bounds;
    private final List<Avoid> avoided = new ArrayList<>();
    private final List<Box> bare = new ArrayList<>();
    private final List<double[]> leaders = new ArrayList<>();

    /// Paper that had better stay bare, and how much it matters.
    private record Avoid(Box box, double weight) {}

    /// @param bounds where labels may stand
    Labels(Canvas canvas, Box bounds) {
        this.canvas = canvas;
        this.bounds = bounds;
    }

    /// Paper that no label may cover: the points that others speak of.
    void keepBare(double x, double y, double radius) { bare.add(new Box(x - radius, y - radius, 2 * radius, 2 * radius)); }

    boolean free(Box box) {
        for (Box kept : bare) if (kept.overlaps(box)) return false;
        return canvas.free(box);
    }

    void avoid(Box box, double weight) { avoided.add(new Avoid(box, weight)); }

    /// Chooses a place for a label of a size, and takes it: the leader is remembered, the words are the caller's to write.
    ///
    /// @param x the point it speaks of
    /// @param y likewise
    Box place(double x, double y, double width, double height) {
        Box best = best(x, y, width, height, true);
        if (best == null) best = best(x, y, width, height, false);
        if (best == null) best = anywhere(x, y, width, height);
        leaders.add(new double[] {x, y, best.nearX(x), best.nearY(y)});
        return best;
    }

    private Box best(double x, double y, double width, double height, boolean strict) {
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double reach : new double[] {1.5, 3, 5, 7.5, 10.5, 14, 18, 23, 29, 36, 44, 54}) {
            if (reach > least) break;
            for (int step = 0; step < 24; step++) {
                double turn = 2 * Math.PI * step / 24;
                Box box = new Box(x + Math.cos(turn) * (reach + width / 2) - width / 2, y + Math.sin(turn) * (reach + height / 2) - height / 2, width,
                        height);
                if (!bounds.holds(box) || !free(box.grown(0.6))) continue;
                int tangles = tangles(x, y, box);
                if (strict && tangles > 0) continue;
                double cost = reach + 12 * tangles;
                for (Avoid avoid : avoided) cost += avoid.weight * avoid.box.shared(box);
                if (cost < least) {
                    least = cost;
                    best = box;
                }
            }
        }
        return best;
    }

    /// How many leaders run through the box, and how many labels or leaders its own would run through.
    private int tangles(double x, double y, Box box) {
        double toX = box.nearX(x), toY = box.nearY(y);
        int count = 0;
        for (double[] leader : leaders) {
            if (box.crossedBy(leader[0], leader[1], leader[2], leader[3])) count++;
            if (cross(leader, x, y, toX, toY)) count++;
        }
        for (Drawing.Label label : canvas.labels()) if (label.box().crossedBy(x, y, toX, toY)) count++;
        return count;
    }

    private static boolean cross(double[] leader, double x1, double y1, double x2, double y2) {
        double a = turn(leader[0], leader[1], leader[2], leader[3], x1, y1), b = turn(leader[0], leader[1], leader[2], leader[3], x2, y2);
        double c = turn(x1, y1, x2, y2, leader[0], leader[1]), d = turn(x1, y1, x2, y2, leader[2], leader[3]);
        return a * b < 0 && c * d < 0;
    }

    private static double turn(double x1, double y1, double x2, double y2, double x, double y) { return (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1); }

    /// The nearest free place within bounds; where the sheet is full, a new row beneath it.
    private Box anywhere(double x, double y, double width, double height) {
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double top = bounds.top(); top + height <= bounds.bottom(); top += 1.5)
            for (double left = bounds.left(); left + width <= bounds.right(); left += 1.5) {
                Box box = new Box(left, top, width, height);
                double far = Math.hypot(box.midX() - x, box.midY() - y);
                if (far < least && free(box.grown(0.4))) {
                    least = far;
                    best = box;
                }
            }
        if (best != null) return best;
        for (double top = bounds.bottom() + 1; ; top += height + 1)
            for (double left = bounds.left(); left + width <= Math.max(bounds.right(), bounds.left() + width); left += 2) {
                Box box = new Box(left, top, width, height);
                if (canvas.free(box.grown(0.4))) {
                    canvas.heighten(box.bottom() + 1);
                    return box;
                }
            }
    }
}
