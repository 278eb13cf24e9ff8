package sillwright.wood.drying;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.walk.Species;

/// How much a day of damp and warmth does toward decay, and how much decay so many such days have been seen to make.
///
/// Fitted to the mean rating of small softwood specimens in the open at many places; what it says of one member is a rate to compare by and no date.
/// Sources: Brischke and Rapp (2010) and later fits; that material moisture and temperature make a usable dose was read, every coefficient is from memory.
public final class Dose {
    public static final List<Basis> BASIS = List.of(
            Basis.memory("Brischke and Rapp (2010); Isaksson, Brischke and Thelandersson (2013)", "daily dose from moisture and temperature; 4 exp(-exp(1.9612 - 0.0037D))"),
            Basis.read("Brischke and Rapp, Service life prediction of wooden components, part 1", "abstract: moisture and temperature of the wood make a usable dose"));
    public static final List<Basis> RESISTANCE = List.of(
            Basis.memory("EN 350, classes of natural durability", "life over that of sapwood in field tests: above 5, 3 to 5, 2 to 3, under 2"),
            Basis.own("slight 1, moderate 2, resistant 3.5, very resistant 5 times the dose for the same decay"));

    /// Above this the fitted curve turns up again without sense; wood so full of water lacks air and counts as nothing.
    private static final double DROWNED = 1.357;

    private Dose() {}

    /// The part of a day's dose that moisture gives, 0 to 0.97; nothing below 25 %.
    ///
    /// 6.75e-10u⁵ - 3.50e-7u⁴ + 7.18e-5u³ - 7.22e-3u² + 0.34u - 4.98, u in %. Greatest near 51.6 %.
    public static double ofMoisture(double moisture) {
        if (!(moisture >= 0.25 && moisture <= DROWNED)) return 0;
        double u = 100 * moisture;
        return Math.max(0, ((((6.75e-10 * u - 3.50e-7) * u + 7.18e-5) * u - 7.22e-3) * u + 0.34) * u - 4.98);
    }

    /// The part that temperature gives, 0 to about 1; nothing outside 0 to 40 °C.
    ///
    /// -1.8e-6T⁴ + 9.57e-5T³ - 1.55e-3T² + 4.17e-2T.
    public static double ofTemperature(double tempC) {
        if (!(tempC >= 0 && tempC <= 40)) return 0;
        return Math.max(0, (((-1.8e-6 * tempC + 9.57e-5) * tempC - 1.55e-3) * tempC + 4.17e-2) * tempC);
    }

    /// One day's dose from the day's means: (3.2 dT + du)/4.2, or nothing where either is nothing.
    public static double day(double moisture, double tempC) {
        double wet = ofMoisture(moisture), warm = ofTemperature(tempC);
        return wet > 0 && warm > 0 ? (3.2 * warm + wet) / 4.2 : 0;
    }

    /// Mean rating that a dose makes in the reference softwood, 0 sound to 4 failed: 4 exp(-exp(1.9612 - 0.0037D)).
    public static double rating(double days) { return 4 * Math.exp(-Math.exp(1.9612 - 0.0037 * days)); }

    /// The earlier fit: 4 exp(-exp(1.7716 - 0.0032D)).
    public static double ratingEarlier(double days) { return 4 * Math.exp(-Math.exp(1.7716 - 0.0032 * days)); }

    /// The dose that makes a rating, days; 0 for the rating that no dose already gives.
    ///
    /// @param rating less than 4
    public static double days(double rating) { return rating <= rating(0) ? 0 : (1.9612 - Math.log(-Math.log(rating / 4))) / 0.0037; }

    /// How much more dose a heartwood stands than sapwood or the reference softwood for the same decay.
    public static double resistance(Species.Durability heartwood) {
        return switch (heartwood) {
            case SLIGHT -> 1;
            case MODERATE -> 2;
            case RESISTANT -> 3.5;
            case VERY_RESISTANT -> 5;
        };
    }
}
