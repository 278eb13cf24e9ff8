package sillwright.wood;

import sillwright.measure.Basis;

/// What counts as decay, and how far sound wood must go on beyond it.
public final class Decay {
    private Decay() {}

    /// A probe sinks so far into the skin of sound, weathered softwood by hand; deeper is soft.
    public static final double TOLERANCE_MM = 5;

    /// The chance of softness below which wood beyond a line counts as sound.
    public static final double DOUBT = 0.05;

    /// Sound wood that is cut back into beyond the last doubt, trim, mm.
    public static final double TRIM_MARGIN_MM = 25;

    /// The same for wood that bears load, mm.
    public static final double LOAD_MARGIN_MM = 50;

    /// What the decay map and its lines rest on.
    public static java.util.List<Basis> basis() { return java.util.List.of(TOLERANCE, MARGIN, FIELD, Exposures.BASIS); }

    static final Basis TOLERANCE = Basis.own("soft means deeper than 5 mm (3/16 in) under a hand probe; no published limit was found");
    static final Basis MARGIN = Basis.memory("Trade practice of cutting back", "1/2 to 1 in for small trim, 2 in and more in sills and posts");
    static final Basis FIELD = Basis.memory("Rasmussen and Williams, Gaussian Processes for Machine Learning (2006)",
            "sec. 3.6 and eq. 4.17: a latent field seen through a floor and a ceiling");
}
