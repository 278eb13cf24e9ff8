package sillwright.work.resin;

import sillwright.walk.Species;
import sillwright.wood.Interval;
import sillwright.wood.moisture.Porosity;

/// How much consolidant soft wood takes up.
public final class Soak {
    /// Share of the voids that consolidant reaches, where nothing better is known: this program's own choice; no published value was found.
    public static final double USUAL_FILL = 0.6;

    private static final double WORKABLE_MOISTURE = 0.15, MASS_LOST = 0.3;

    private Soak() {}

    /// Consolidant for a soft face, mL, with its range.
    ///
    /// The middle: the voids of sound oven-dry wood of the species, times the share that is reached. The low: half that share, in wood at 15 %, about
    /// the wettest that should be treated. The high: half as much again of the share (never more than all), in wood that has lost three tenths of its mass.
    /// The bounds are this program's own choice.
    ///
    /// @param areaMm2 of soft skin
    /// @param depthMm how deep it is soft
    /// @param fill    share of the voids that is reached, more than 0 to 1
    public static Interval volumeMl(Species species, double areaMm2, double depthMm, double fill) {
        double gravity = species.gravityOvenDry(), softMl = areaMm2 * depthMm / 1000;
        double middle = Porosity.voids(gravity, Porosity.CELL_WALL) * fill;
        double low = Porosity.room(Porosity.gravityAt(gravity, WORKABLE_MOISTURE), WORKABLE_MOISTURE) * fill / 2;
        double high = Porosity.voids(gravity * (1 - MASS_LOST), Porosity.CELL_WALL) * Math.min(1, 1.5 * fill);
        return new Interval(softMl * low, softMl * middle, softMl * high);
    }

    /// The middle alone, mL.
    public static double volume(Species species, double areaMm2, double depthMm) { return volumeMl(species, areaMm2, depthMm, USUAL_FILL).median(); }
}
