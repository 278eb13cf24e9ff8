package sillwright.wood;

/// A section whose faces are soft by a depth for each of equal strips: what is left of it, exactly, cell by cell.
///
/// Opposite faces have as many strips; a face without softness has one.
final class Strips {
    private static final Section NOTHING = new Section(0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    private final int across;
    private final int up;
    /// The sound rectangle of each cell, row by row; nothing is sound where `x1` is not beyond `x0`.
    private final double[] x0;
    private final double[] x1;
    private final double[] y0;
    private final double[] y1;

    Strips(double widthMm, double depthMm, double[] front, double[] back, double[] left, double[] right) {
        across = Math.max(front.length, back.length);
        up = Math.max(left.length, right.length);
        x0 = new double[across * up];
        x1 = new double[x0.length];
        y0 = new double[x0.length];
        y1 = new double[x0.length];
        double w = widthMm / across, h = depthMm / up;
        for (int j = 0; j < up; j++)
            for (int i = 0; i < across; i++) {
                int cell = j * across + i;
                x0[cell] = Math.max(i * w, left[j % left.length]);
                x1[cell] = Math.min((i + 1) * w, widthMm - right[j % right.length]);
                y0[cell] = Math.max(j * h, front[i % front.length]);
                y1[cell] = Math.min((j + 1) * h, depthMm - back[i % back.length]);
                if (y1[cell] <= y0[cell]) x1[cell] = x0[cell];
            }
    }

    private boolean sound(int cell) { return x1[cell] > x0[cell]; }

    private double areaMm2(int cell) { return sound(cell) ? (x1[cell] - x0[cell]) * (y1[cell] - y0[cell]) : 0; }

    double areaMm2() {
        double sum = 0;
        for (int cell = 0; cell < x0.length; cell++) sum += areaMm2(cell);
        return sum;
    }

    /// The largest piece that hangs together; of no area where nothing is sound.
    Section largest() {
        int[] piece = pieces();
        double[] areas = new double[x0.length];
        int largest = 0;
        for (int cell = 0; cell < x0.length; cell++) areas[piece[cell]] += areaMm2(cell);
        for (int p = 1; p < areas.length; p++) if (areas[p] > areas[largest]) largest = p;
        return areas[largest] > 0 ? section(piece, largest, areas[largest]) : NOTHING;
    }

    private Section section(int[] piece, int which, double area) {
        double x = 0, y = 0, xx = 0, yy = 0, xy = 0, left = Double.MAX_VALUE, right = 0, front = Double.MAX_VALUE, back = 0;
        for (int cell = 0; cell < x0.length; cell++) {
            if (piece[cell] != which || !sound(cell)) continue;
            double here = areaMm2(cell), middleX = (x0[cell] + x1[cell]) / 2, middleY = (y0[cell] + y1[cell]) / 2, wide = x1[cell] - x0[cell], tall = y1[cell] - y0[cell];
            x += here * middleX;
            y += here * middleY;
            xx += here * (middleY * middleY + tall * tall / 12);
            yy += here * (middleX * middleX + wide * wide / 12);
            xy += here * middleX * middleY;
            left = Math.min(left, x0[cell]);
            right = Math.max(right, x1[cell]);
            front = Math.min(front, y0[cell]);
            back = Math.max(back, y1[cell]);
        }
        return new Section(area, x / area, y / area, xx - y * y / area, yy - x * x / area, xy - x * y / area, left, right, front, back);
    }

    /// To which piece each cell belongs, by the number of its first cell: cells hang together where their sound rectangles share a stretch of an edge.
    private int[] pieces() {
        int[] piece = new int[x0.length];
        for (int cell = 0; cell < piece.length; cell++) piece[cell] = cell;
        boolean joined = true;
        while (joined) {
            joined = false;
            for (int cell = 0; cell < piece.length; cell++) {
                if (!sound(cell)) continue;
                int beside = cell + 1, above = cell + across;
                if (beside % across != 0 && sound(beside) && x1[cell] == x0[beside] && Math.min(y1[cell], y1[beside]) > Math.max(y0[cell], y0[beside])) joined |= join(piece, cell, beside);
                if (above < piece.length && sound(above) && y1[cell] == y0[above] && Math.min(x1[cell], x1[above]) > Math.max(x0[cell], x0[above])) joined |= join(piece, cell, above);
            }
        }
        return piece;
    }

    private static boolean join(int[] piece, int one, int other) {
        if (piece[one] == piece[other]) return false;
        piece[one] = piece[other] = Math.min(piece[one], piece[other]);
        return true;
    }
}
