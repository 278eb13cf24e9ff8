package sillwright.work.resin;

import sillwright.measure.Unit;

/// A two-part mix: how much of each part, how long it can be worked, and in how many batches.
public final class Mix {
    /// Mass of a mixed epoxy over its volume, g/mL: 2 to 1 by volume of parts of 1.16 and 0.98 g/mL. This program's own choice of a usual pair.
    public static final double GRAM_PER_ML = (2 * 1.16 + 0.98) / 3;
    /// The mass that a pot life is usually stated for, g. Source: a builders' forum of 1999 (read, low authority).
    public static final double USUAL_POT_G = 500;
    /// How thick one lift may be where the maker does not say, mm: 1 in, the thicker of the usual ½ to 1 in (from memory, varies by product).
    public static final double USUAL_LIFT_MM = Unit.INCH.toOwn(1);

    private Mix() {}

    /// The two parts, mL.
    public record Parts(double aMl, double bMl) {}

    /// How a whole is mixed: in so many batches of one size.
    public record Batches(int count, double eachMl) {}

    /// Splits a volume by a ratio of volumes.
    ///
    /// @param ratio a over b: 2 for 2:1
    public static Parts split(double volumeMl, double ratio) { return new Parts(volumeMl * ratio / (1 + ratio), volumeMl / (1 + ratio)); }

    /// How long a batch can be worked: the stated pot life, halved for each 10 °C warmer and doubled for each 10 °C cooler.
    ///
    /// Source: a builders' forum of 1999 (read, low authority), the usual rule for such reactions. Good from about 5 to 40 °C.
    ///
    /// @param potLifeS as stated at `refC`
    public static double workingS(double potLifeS, double refC, double tempC) { return potLifeS * Math.pow(2, (refC - tempC) / 10); }

    /// The most that should be mixed at once, mL.
    ///
    /// No more than the mass the pot life is stated for, since a greater mass heats itself and sets sooner; and, where it sets sooner than stated,
    /// less in proportion, since as much less can be placed in the time. This program's own choice.
    public static double greatestBatchMl(double potMassG, double potLifeS, double workingS) {
        return potMassG / GRAM_PER_ML * Math.min(1, workingS / potLifeS);
    }

    /// The fewest equal batches, none greater than the greatest.
    public static Batches batches(double volumeMl, double greatestMl) {
        int count = (int) Math.max(1, Math.ceil(volumeMl / greatestMl - 1e-9));
        return new Batches(count, volumeMl / count);
    }

    /// The fewest equal lifts that fill a depth.
    public static int lifts(double depthMm, double liftMm) { return (int) Math.max(1, Math.ceil(depthMm / liftMm - 1e-9)); }
}
