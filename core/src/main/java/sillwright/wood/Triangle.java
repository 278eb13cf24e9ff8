package sillwright.wood;

/// The lower triangle L of a symmetric positive matrix A = L·Lᵀ, row by row in one array the caller owns.
///
/// Source: Cholesky's factorisation, a standard of numerical texts (from memory).
final class Triangle {
    private Triangle() {}

    /// Factors the matrix in place; only its lower half is read, the upper half is left as it was.
    ///
    /// @return false when the matrix is not positive, so that the caller can say so
    static boolean factor(double[] a, int n) {
        for (int i = 0; i < n; i++) {
            int row = i * n;
            for (int j = 0; j <= i; j++) {
                double sum = a[row + j] - dot(a, row, j * n, j);
                if (i == j) {
                    if (!(sum > 0)) return false;
                    a[row + i] = Math.sqrt(sum);
                } else a[row + j] = sum / a[j * n + j];
            }
        }
        return true;
    }

    private static double dot(double[] a, int from, int other, int count) {
        double s0 = 0, s1 = 0, s2 = 0, s3 = 0;
        int k = 0;
        for (; k + 3 < count; k += 4) {
            s0 += a[from + k] * a[other + k];
            s1 += a[from + k + 1] * a[other + k + 1];
            s2 += a[from + k + 2] * a[other + k + 2];
            s3 += a[from + k + 3] * a[other + k + 3];
        }
        for (; k < count; k++) s0 += a[from + k] * a[other + k];
        return s0 + s1 + s2 + s3;
    }

    /// Solves L·x = b in place.
    static void forward(double[] l, int n, double[] b) {
        for (int i = 0; i < n; i++) {
            double sum = b[i];
            for (int k = 0; k < i; k++) sum -= l[i * n + k] * b[k];
            b[i] = sum / l[i * n + i];
        }
    }

    /// Solves Lᵀ·x = b in place.
    static void backward(double[] l, int n, double[] b) {
        for (int i = n - 1; i >= 0; i--) {
            double value = b[i] / l[i * n + i];
            b[i] = value;
            for (int k = 0; k < i; k++) b[k] -= l[i * n + k] * value;
        }
    }

    /// Half the logarithm of the determinant of A.
    static double halfLogDet(double[] l, int n) {
        double sum = 0;
        for (int i = 0; i < n; i++) sum += Math.log(l[i * n + i]);
        return sum;
    }
}
