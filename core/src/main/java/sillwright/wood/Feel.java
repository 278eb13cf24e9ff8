package sillwright.wood;

/// How decay is taken to spread beneath one face: the numbers of the latent field.
///
/// @param meanMm   of the latent depth where nothing is known; less than nothing, since most wood is sound
/// @param spreadMm its standard deviation
/// @param alongMm  the distance along the grain over which depths go together
/// @param acrossMm the same across the grain
/// @param handMm   standard deviation of one push of a probe by hand
/// @param shape    of the covariance
record Feel(double meanMm, double spreadMm, double alongMm, double acrossMm, double handMm, Shape shape) {
    /// Covariance functions of Matérn's family.
    enum Shape { MATERN_1_2, MATERN_3_2, MATERN_5_2 }

    /// How many numbers a search walks over.
    static final int NUMBERS = 5;

    /// What is taken before anything is known of a face. No published values were found: this program's own choice,
    /// weak enough that a dozen readings overrule them. Its mean lies 1.6 spreads below the skin: of wood that nobody looked
    /// at, about one place in twenty is soft.
    static final Feel USUAL = new Feel(-32, 20, 150, 60, 1.5, Shape.MATERN_5_2);

    /// How far each number on the scale of [#point] may stray before any reading: the mean by 0.4 spreads, lengths and spread by a factor of two, hand
    /// noise by a third.
    private static final double[] STRAY = {0.4, 0.7, 0.7, 0.7, 0.3};

    Feel shaped(Shape shape) { return new Feel(meanMm, spreadMm, alongMm, acrossMm, handMm, shape); }

    /// Covariance of the latent depth at two points.
    ///
    /// Source: Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), eq. 4.17 (from memory).
    double covariance(double alongMm1, double acrossMm1, double alongMm2, double acrossMm2) {
        double a = (alongMm1 - alongMm2) / alongMm, c = (acrossMm1 - acrossMm2) / acrossMm;
        double r = Math.sqrt(a * a + c * c);
        return spreadMm * spreadMm * switch (shape) {
            case MATERN_1_2 -> Math.exp(-r);
            case MATERN_3_2 -> {
                double x = Math.sqrt(3) * r;
                yield (1 + x) * Math.exp(-x);
            }
            case MATERN_5_2 -> {
                double x = Math.sqrt(5) * r;
                yield (1 + x + x * x / 3) * Math.exp(-x);
            }
        };
    }

    /// The same of one point with each of many, into `out`.
    void covariances(double alongMm1, double acrossMm1, double[] alongsMm, double[] acrossesMm, int until, double[] out) {
        for (int j = 0; j < until; j++) out[j] = covariance(alongMm1, acrossMm1, alongsMm[j], acrossesMm[j]);
    }

    /// What the covariance at a distance grows by with the logarithm of a length, over the square of the distance along it in such lengths.
    ///
    /// @param r          the distance in lengths; more than nothing
    /// @param covariance at that distance
    double stretch(double r, double covariance) {
        return covariance * switch (shape) {
            case MATERN_1_2 -> 1 / r;
            case MATERN_3_2 -> 3 / (1 + Math.sqrt(3) * r);
            case MATERN_5_2 -> {
                double x = Math.sqrt(5) * r;
                yield 5.0 / 3 * (1 + x) / (1 + x + x * x / 3);
            }
        };
    }

    /// The numbers as a point that a search can walk over.
    double[] point() { return new double[] {meanMm / spreadMm, Math.log(spreadMm), Math.log(alongMm), Math.log(acrossMm), Math.log(handMm)}; }

    Feel at(double[] point) {
        return new Feel(point[0] * Math.exp(point[1]), Math.exp(point[1]), Math.exp(point[2]), Math.exp(point[3]), Math.exp(point[4]), shape);
    }

    /// False for numbers so wild that arithmetic would fail before the prior could call them back.
    boolean sane() {
        return spreadMm > 0.5 && spreadMm < 500 && handMm > 0.2 && handMm < 50 && alongMm < 20000 && acrossMm < 20000 && alongMm > 5 && acrossMm > 5 && Math.abs(meanMm) < 5000;
    }

    /// The logarithm, but for a constant, of how likely these numbers are before any reading: each normal about the usual one.
    double logPrior() {
        double[] here = point(), usual = USUAL.point();
        double sum = 0;
        for (int i = 0; i < NUMBERS; i++) {
            double off = (here[i] - usual[i]) / STRAY[i];
            sum -= 0.5 * off * off;
        }
        return sum;
    }

    /// The slope of [#logPrior] along each number of [#point].
    double[] priorSlope() {
        double[] here = point(), usual = USUAL.point(), slope = new double[NUMBERS];
        for (int i = 0; i < NUMBERS; i++) slope[i] = (usual[i] - here[i]) / (STRAY[i] * STRAY[i]);
        return slope;
    }

    /// How sharply the prior bends along a number.
    static double priorBend(int i) { return 1 / (STRAY[i] * STRAY[i]); }
}
