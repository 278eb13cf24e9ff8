package sillwright.work.resin;

import sillwright.measure.Basis;

/// A kind of two-part resin, with what its label usually says. Every label says its own: these stand where none was read.
///
/// Ratio, pot life and lift: usual for the kind, from memory, varying by product. Hours: own choice about a usual sheet.
public enum Resin {
    CONSOLIDANT("consolidant", 1, 45, 3, 24), SKIM("skim filler", 1, 25, 6, 24), SHAPING("shaping filler", 1, 30, 25.4, 24);

    /// The temperature that a pot life is stated for, °C: 77 °F.
    public static final double STATED_C = 25;
    /// Below this none of them cures well, °C: 50 °F.
    public static final double LEAST_C = 10;
    /// No wetter wood takes resin, a fraction: 15 to 18 % is common practice, makers differ; 12 % is asked by a military guide specification (read).
    public static final double MOST_MOISTURE = 0.15;
    static final Basis BASIS = Basis.memory("Makers' sheets, varying by product", "equal parts; pot life 25 to 45 min for 500 g at 77 °F; lifts to 1 in; 24 h before paint at 70 °F; not under 50 °F");

    private final String words;
    private final double ratio;
    private final double potLifeS;
    private final double liftMm;
    private final double paintH;

    Resin(String words, double ratio, double potLifeMin, double liftMm, double paintH) {
        this.words = words;
        this.ratio = ratio;
        this.potLifeS = 60 * potLifeMin;
        this.liftMm = liftMm;
        this.paintH = paintH;
    }

    public String words() { return words; }

    /// Part a over part b, by volume.
    public double ratio() { return ratio; }

    /// For [Mix#USUAL_POT_G] at [#STATED_C].
    public double potLifeS() { return potLifeS; }

    /// The thickest at once at the stated temperature, mm.
    public double liftMm() { return liftMm; }

    /// Hours at 21 °C before paint.
    public double paintH() { return paintH; }
}
