package sillwright.wood;

/// The triangle U of a symmetric positive matrix A = Uᵀ·U: row i from its diagonal on; what lies before the diagonal means nothing.
///
/// Source: Cholesky's factorisation, a standard of numerical texts (from memory); two rows at a time, each from the whole rows before it.
final class Triangle {
    private Triangle() {}

    /// Factors the matrix in place; only its upper half is read.
    ///
    /// @return false when the matrix is not positive, so that the caller can say so
    static boolean factor(double[][] a, int n) {
        double[] by = new double[n], next = new double[n];
        for (int i = 0; i < n; i += 2) {
            boolean two = i + 1 < n;
            for (int k = 0; k < i; k++) {
                by[k] = -a[k][i];
                if (two) next[k] = -a[k][i + 1];
            }
            if (two) Rows.add(a[i], by, a[i + 1], next, a, 0, i, i, n);
            else Rows.add(a[i], by, a, 0, i, i, n);
            if (!pivot(a[i], i, n)) return false;
            if (!two) continue;
            Rows.add(a[i + 1], -a[i][i + 1], a[i], i + 1, n);
            if (!pivot(a[i + 1], i + 1, n)) return false;
        }
        return true;
    }

    private static boolean pivot(double[] row, int i, int n) {
        if (!(row[i] > 0)) return false;
        Rows.scale(row, 1 / Math.sqrt(row[i]), i, n);
        return true;
    }

    /// Solves Uᵀ·X = B in place for many right sides at once: row i of B belongs to reading i, and `lengths` tell how far each row reaches.
    private static void forward(double[][] u, int n, double[][] b, java.util.function.IntUnaryOperator lengths) {
        double[] by = new double[n], next = new double[n];
        for (int i = 0; i < n; i += 2) {
            boolean two = i + 1 < n;
            for (int k = 0; k < i; k++) {
                by[k] = -u[k][i];
                if (two) next[k] = -u[k][i + 1];
            }
            if (two) Rows.add(b[i], by, b[i + 1], next, b, 0, i, 0, lengths.applyAsInt(i + 1));
            else Rows.add(b[i], by, b, 0, i, 0, lengths.applyAsInt(i));
            Rows.scale(b[i], 1 / u[i][i], 0, lengths.applyAsInt(i));
            if (!two) continue;
            Rows.add(b[i + 1], -u[i][i + 1], b[i], 0, lengths.applyAsInt(i + 1));
            Rows.scale(b[i + 1], 1 / u[i + 1][i + 1], 0, lengths.applyAsInt(i + 1));
        }
    }

    /// Solves Uᵀ·X = B in place, rows of one length.
    static void forward(double[][] u, int n, double[][] b) {
        if (n > 0) forward(u, n, b, _ -> b[0].length);
    }

    /// The inverse of Uᵀ into `inverse`, lower half; the rest is made nothing.
    static void invert(double[][] u, int n, double[][] inverse) {
        for (int i = 0; i < n; i++) {
            java.util.Arrays.fill(inverse[i], 0);
            inverse[i][i] = 1;
        }
        forward(u, n, inverse, i -> i + 1);
    }

    /// Solves Uᵀ·x = b in place.
    static void forward(double[][] u, int n, double[] b) {
        for (int k = 0; k < n; k++) {
            b[k] /= u[k][k];
            Rows.add(b, -b[k], u[k], k + 1, n);
        }
    }

    /// Solves U·x = b in place.
    static void backward(double[][] u, int n, double[] b) { for (int i = n - 1; i >= 0; i--) b[i] = (b[i] - Rows.dot(u[i], b, i + 1, n)) / u[i][i]; }

    /// Half the logarithm of the determinant of A.
    static double halfLogDet(double[][] u, int n) {
        double sum = 0;
        for (int i = 0; i < n; i++) sum += Math.log(u[i][i]);
        return sum;
    }
}
