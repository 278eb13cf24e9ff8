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

    /// What is taken before anything is known of a face. No published values were found: this program's own choice,
    /// weak enough that a dozen readings overrule them. Its mean lies 1.6 spreads below the skin: of wood that nobody looked
    /// at, about one place in twenty is soft.
    static final Feel USUAL = new Feel(-32, 20, 150, 60, 1.5, Shape.MATERN_5_2);

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

    /// The numbers as a point that a search can walk over.
    double[] point() { return new double[] {meanMm / spreadMm, Math.log(spreadMm), Math.log(alongMm), Math.log(acrossMm), Math.log(handMm)}; }

    Feel at(double[] point) {
        return new Feel(point[0] * Math.exp(point[1]), Math.exp(point[1]), Math.exp(point[2]), Math.exp(point[3]), Math.exp(point[4]), shape);
    }

    /// The logarithm, but for a constant, of how likely these numbers are before any reading: each normal about the
    /// usual one on the scale of [#point]; the mean within 0.4 spreads, lengths and spread within a factor of two, hand
    /// noise within a third.
    double logPrior() {
        double[] here = point(), usual = USUAL.point();
        double[] width = {0.4, 0.7, 0.7, 0.7, 0.3};
        double sum = 0;
        for (int i = 0; i < here.length; i++) {
            double off = (here[i] - usual[i]) / width[i];
            sum -= 0.5 * off * off;
        }
        return sum;
    }
}
