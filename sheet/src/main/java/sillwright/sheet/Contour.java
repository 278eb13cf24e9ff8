package sillwright.sheet;

import sillwright.wood.Decay;
import sillwright.wood.DepthMap;

/// The line on a face beyond which softness is less likely than one in twenty, between the middles of the map's cells.
///
/// Source: marching squares with straight lines, a standard of drawing texts (from memory).
final class Contour {
    private final DepthMap map;
    private final StringBuilder path = new StringBuilder();
    private final java.util.function.DoubleUnaryOperator x;
    private final java.util.function.DoubleUnaryOperator y;

    private Contour(DepthMap map, java.util.function.DoubleUnaryOperator x, java.util.function.DoubleUnaryOperator y) {
        this.map = map;
        this.x = x;
        this.y = y;
    }

    /// The path as SVG has it, empty where the line crosses nothing.
    ///
    /// @param x paper for a place along
    /// @param y paper for a place across
    static String of(DepthMap map, double fromMm, double toMm, java.util.function.DoubleUnaryOperator x, java.util.function.DoubleUnaryOperator y) {
        Contour contour = new Contour(map, x, y);
        for (int c = 0; c + 1 < map.columns(); c++)
            if (map.alongMm(c) >= fromMm && map.alongMm(c + 1) <= toMm) for (int r = -1; r < map.rows(); r++) contour.square(c, r);
        return contour.path.toString();
    }

    private double value(int c, int r) { return map.chance(c, Math.clamp(r, 0, map.rows() - 1)) - Decay.DOUBT; }

    private double across(int r) { return r < 0 ? 0 : r >= map.rows() ? map.acrossMm() : map.acrossMm(r); }

    private void square(int c, int r) {
        double[] a = {map.alongMm(c), map.alongMm(c + 1), map.alongMm(c + 1), map.alongMm(c)}, b = {across(r), across(r), across(r + 1), across(r + 1)};
        double[] v = {value(c, r), value(c + 1, r), value(c + 1, r + 1), value(c, r + 1)};
        int found = 0;
        for (int i = 0; i < 4; i++) {
            int j = (i + 1) % 4;
            if (v[i] > 0 == v[j] > 0) continue;
            double t = v[i] / (v[i] - v[j]);
            path.append(found++ % 2 == 0 ? "M" : "L").append(Markup.number(x.applyAsDouble(a[i] + t * (a[j] - a[i])))).append(' ')
                    .append(Markup.number(y.applyAsDouble(b[i] + t * (b[j] - b[i]))));
        }
    }
}
