package sillwright.wood.drying;

/// The step of one piece as its definition reads, with nothing made quick.
final class SlowTwin {
    private SlowTwin() {}

    /// D as a function of moisture.
    static double d(Stack s, int m, double u, double quick, double runs) {
        if (u < s.saturation[m]) return s.bound[m] * quick * Math.exp(s.rise[m] * u);
        return s.free[m] * runs * Math.pow((u - s.saturation[m]) * s.overRoom[m], 3);
    }

    /// The mean of D between two moistures, by Simpson's rule on either side of the kink.
    static double mean(Stack s, int m, double u, double v, double quick, double runs) {
        double low = Math.min(u, v), high = Math.max(u, v), kink = Math.max(low, Math.min(high, s.saturation[m]));
        if (high - low < 1e-7) return d(s, m, (u + v) / 2, quick, runs);
        return (integral(s, m, low, kink - 1e-13, quick, runs) + integral(s, m, kink, high, quick, runs)) / (high - low);
    }

    private static double integral(Stack s, int m, double from, double to, double quick, double runs) {
        if (to <= from) return 0;
        int parts = 40;
        double sum = 0, width = (to - from) / parts;
        for (int k = 0; k < parts; k++) {
            double a = from + k * width;
            sum += width / 6 * (d(s, m, a, quick, runs) + 4 * d(s, m, a + width / 2, quick, runs) + d(s, m, a + width, quick, runs));
        }
        return sum;
    }

    /// The exchange at the faces is taken as the stack has it; the rest is worked anew, and the system solved whole.
    static double[] step(Stack s, double[][] before, int m, double quick, double runs) {
        int n = s.slices;
        double[][] a = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            a[i][i] += 1;
            a[i][n] += before[i][m];
        }
        for (int i = 0; i + 1 < n; i++) {
            double g = mean(s, m, before[i][m], before[i + 1][m], quick, runs) * s.overDistance[i][m];
            a[i][i] += s.stepOverSlice[i][m] * g;
            a[i][i + 1] -= s.stepOverSlice[i][m] * g;
            a[i + 1][i + 1] += s.stepOverSlice[i + 1][m] * g;
            a[i + 1][i] -= s.stepOverSlice[i + 1][m] * g;
        }
        a[0][0] += s.stepOverSlice[0][m] * s.near.pull[m];
        a[0][n] += s.stepOverSlice[0][m] * s.near.pulled[m];
        a[n - 1][n - 1] += s.stepOverSlice[n - 1][m] * s.far.pull[m];
        a[n - 1][n] += s.stepOverSlice[n - 1][m] * s.far.pulled[m];
        return solve(a, n);
    }

    private static double[] solve(double[][] a, int n) {
        for (int c = 0; c < n; c++) {
            int best = c;
            for (int r = c + 1; r < n; r++) if (Math.abs(a[r][c]) > Math.abs(a[best][c])) best = r;
            double[] swap = a[c];
            a[c] = a[best];
            a[best] = swap;
            for (int r = c + 1; r < n; r++) {
                double f = a[r][c] / a[c][c];
                for (int k = c; k <= n; k++) a[r][k] -= f * a[c][k];
            }
        }
        double[] x = new double[n];
        for (int r = n - 1; r >= 0; r--) {
            x[r] = a[r][n];
            for (int k = r + 1; k < n; k++) x[r] -= a[r][k] * x[k];
            x[r] /= a[r][r];
        }
        return x;
    }
}
