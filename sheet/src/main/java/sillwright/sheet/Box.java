package sillwright.sheet;

/// An upright rectangle on paper, mm, y down the page.
public record Box(double left, double top, double width, double height) {
    /// Around two corners, whichever they are.
    static Box around(double x1, double y1, double x2, double y2) {
        return new Box(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x2 - x1), Math.abs(y2 - y1));
    }

    public double right() { return left + width; }

    public double bottom() { return top + height; }

    double midX() { return left + width / 2; }

    double midY() { return top + height / 2; }

    Box grown(double by) { return new Box(left - by, top - by, width + 2 * by, height + 2 * by); }

    Box moved(double x, double y) { return new Box(left + x, top + y, width, height); }

    /// Whether they share more than an edge.
    public boolean overlaps(Box other) {
        return left < other.right() - 1e-9 && other.left < right() - 1e-9 && top < other.bottom() - 1e-9 && other.top < bottom() - 1e-9;
    }

    public boolean holds(Box other) {
        return other.left >= left - 1e-9 && other.right() <= right() + 1e-9 && other.top >= top - 1e-9 && other.bottom() <= bottom() + 1e-9;
    }

    boolean holds(double x, double y) { return x >= left && x <= right() && y >= top && y <= bottom(); }

    /// The area they share, mm².
    double shared(Box other) {
        double across = Math.min(right(), other.right()) - Math.max(left, other.left), down = Math.min(bottom(), other.bottom()) - Math.max(top,
                other.top);
        return across > 0 && down > 0 ? across * down : 0;
    }

    /// The point of it nearest to a point.
    double nearX(double x) { return Math.clamp(x, left, right()); }

    double nearY(double y) { return Math.clamp(y, top, bottom()); }

    /// Whether a straight line runs through it: the line's parameter range is clipped by each pair of edges in turn.
    boolean crossedBy(double x1, double y1, double x2, double y2) {
        double from = 0, to = 1;
        double[] start = {x1, y1}, run = {x2 - x1, y2 - y1}, low = {left, top}, high = {right(), bottom()};
        for (int axis = 0; axis < 2; axis++) {
            if (Math.abs(run[axis]) < 1e-12) {
                if (start[axis] <= low[axis] || start[axis] >= high[axis]) return false;
                continue;
            }
            double a = (low[axis] - start[axis]) / run[axis], b = (high[axis] - start[axis]) / run[axis];
            from = Math.max(from, Math.min(a, b));
            to = Math.min(to, Math.max(a, b));
        }
        return to - from > 1e-9;
    }
}
