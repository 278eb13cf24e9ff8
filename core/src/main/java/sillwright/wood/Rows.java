package sillwright.wood;

/// Sums of rows of numbers: what the inner loops of the decay map come down to.
///
/// Every loop runs along whole rows from the same place in each, one array a row: so a plain compiler lays it into the vector unit, which it does not where rows lie end to end
/// in one array.
final class Rows {
    private Rows() {}

    /// Adds to a row the others from `first` to before `last`, each `by` so much, from one place to before another.
    static void add(double[] to, double[] by, double[][] rows, int first, int last, int from, int until) {
        int k = first;
        for (; k + 3 < last; k += 4) add(to, by[k], rows[k], by[k + 1], rows[k + 1], by[k + 2], rows[k + 2], by[k + 3], rows[k + 3], from, until);
        for (; k < last; k++) add(to, by[k], rows[k], from, until);
    }

    /// The same for two rows at once, which reads the others half as often.
    static void add(double[] to, double[] by, double[] to2, double[] by2, double[][] rows, int first, int last, int from, int until) {
        int k = first;
        for (; k + 3 < last; k += 4) {
            double a0 = by[k], a1 = by[k + 1], a2 = by[k + 2], a3 = by[k + 3], b0 = by2[k], b1 = by2[k + 1], b2 = by2[k + 2], b3 = by2[k + 3];
            add(to, a0, a1, a2, a3, to2, b0, b1, b2, b3, rows[k], rows[k + 1], rows[k + 2], rows[k + 3], from, until);
        }
        for (; k < last; k++) {
            add(to, by[k], rows[k], from, until);
            add(to2, by2[k], rows[k], from, until);
        }
    }

    /// The same of rows each of which begins at its own place.
    static void addTriangle(double[] to, double[] by, double[] to2, double[] by2, double[][] rows) {
        int n = rows.length;
        for (int k = 0; k < n; k += 4) add(to, by, to2, by2, rows, k, Math.min(k + 4, n), k, n);
    }

    static void add(double[] to, double by, double[] row, int from, int until) { for (int j = from; j < until; j++) to[j] += by * row[j]; }

    private static void add(double[] to, double by0, double[] row0, double by1, double[] row1, double by2, double[] row2, double by3, double[] row3, int from, int until) {
        for (int j = from; j < until; j++) to[j] += by0 * row0[j] + by1 * row1[j] + (by2 * row2[j] + by3 * row3[j]);
    }

    private static void add(double[] to, double a0, double a1, double a2, double a3, double[] to2, double b0, double b1, double b2, double b3,
                            double[] row0, double[] row1, double[] row2, double[] row3, int from, int until) {
        for (int j = from; j < until; j++) {
            double r0 = row0[j], r1 = row1[j], r2 = row2[j], r3 = row3[j];
            to[j] += a0 * r0 + a1 * r1 + (a2 * r2 + a3 * r3);
            to2[j] += b0 * r0 + b1 * r1 + (b2 * r2 + b3 * r3);
        }
    }

    /// Adds the squares of a row.
    static void addSquares(double[] to, double by, double[] row, int until) { for (int j = 0; j < until; j++) to[j] += by * row[j] * row[j]; }

    static void scale(double[] row, double by, int from, int until) { for (int j = from; j < until; j++) row[j] *= by; }

    /// Four sums side by side: a processor need not wait for one addition to begin the next.
    static double dot(double[] a, double[] b, int from, int until) {
        double s0 = 0, s1 = 0, s2 = 0, s3 = 0;
        int k = from;
        for (; k + 3 < until; k += 4) {
            s0 += a[k] * b[k];
            s1 += a[k + 1] * b[k + 1];
            s2 += a[k + 2] * b[k + 2];
            s3 += a[k + 3] * b[k + 3];
        }
        for (; k < until; k++) s0 += a[k] * b[k];
        return s0 + s1 + s2 + s3;
    }
}
