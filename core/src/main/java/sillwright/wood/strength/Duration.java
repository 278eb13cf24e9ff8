package sillwright.wood.strength;

import sillwright.measure.Basis;
import sillwright.measure.Refused;

/// How long the whole load stays: wood bears more for a short time. The shortest load of a combination sets it.
public enum Duration {
    PERMANENT("permanent", 0.9), NORMAL("normal", 1.0), SNOW("snow", 1.15), CONSTRUCTION("construction", 1.25), WIND("wind", 1.6);

    public static final Basis BASIS = Basis.read("NDS 2018, secondary", "CD: permanent 0.9, ten years (floor) 1.0, two months (snow) 1.15, "
            + "seven days (roof live, construction) 1.25, ten minutes (wind) 1.6");

    private final String word;
    private final double factor;

    Duration(String word, double factor) {
        this.word = word;
        this.factor = factor;
    }

    public String word() { return word; }

    /// CD.
    public double factor() { return factor; }

    public static Duration of(String word) {
        for (Duration duration : values()) if (duration.word.equals(word)) return duration;
        throw new Refused("", "'{}' is not a duration of load", "use permanent, normal, snow, construction or wind", word);
    }
}
