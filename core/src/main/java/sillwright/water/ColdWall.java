package sillwright.water;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Vapour;
import sillwright.measure.Words;
import sillwright.walk.Building.Month;

/// Whether air from indoors leaves water behind the boards of an outside wall in the cold.
///
/// Steady heat flow in one line through films, plaster, cavity and boards: what lies outside the back of the boards, of all the wall, says how warm that back is. Air of the room is
/// taken to come to it as it is, through cracks and open plaster: the worst, and what old walls do. Units: °C, m²K/W, Pa, fractions.
final class ColdWall {
    static final Basis RESISTANCES = Basis.memory("EN ISO 6946", "films 0.13 inside and 0.04 outside, an air space of 0.18; softwood at 0.13 and fill at 0.04 W/(m·K)");
    static final Basis INDOORS = Basis.memory("EN ISO 13788, annex on humidity classes", "a usual dwelling holds up to 540 Pa more vapour than the air outside at and below 0 °C, nothing more at 20 °C");
    static final Basis OWN = Basis.own("rooms at 20 °C, plaster 0.05 m²K/W, boards and sheathing 40 mm; days about the month's mean as the weather of this program has them");

    private static final double FILM_IN = 0.13, FILM_OUT = 0.04, PLASTER = 0.05, AIR_SPACE = 0.18, FILL = 0.09 / 0.04, BOARDS = 0.04 / 0.13, PANE = 0.004, USUAL_PA = 540;
    /// Rooms in winter, °C.
    static final double ROOM_C = 20;
    /// In a month with a mean under this rooms are heated; in a warmer one they are as warm as outdoors, and nothing passes outward. Own choice.
    private static final double HEATED_UNDER_C = 16;
    private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final int SLICES = 40;
    /// How far the middle of each fortieth of all days lies off the mean, in standard deviations.
    private static final double[] OFF = offs();

    private ColdWall() {}

    /// @param filled whether the cavity is filled with insulation
    /// @return share of the fall in temperature, from room to outdoors, that is left at the back of the boards
    static double shareAtBoards(boolean filled) {
        double outside = BOARDS + FILM_OUT;
        return outside / (FILM_IN + PLASTER + (filled ? FILL : AIR_SPACE) + outside);
    }

    /// Back of the boards, °C.
    static double backC(double indoorsC, double outdoorsC, boolean filled) { return outdoorsC + (indoorsC - outdoorsC) * shareAtBoards(filled); }

    /// Inner face of the wall, °C.
    static double faceC(double indoorsC, double outdoorsC, boolean filled) {
        return indoorsC - (indoorsC - outdoorsC) * FILM_IN / (FILM_IN + PLASTER + (filled ? FILL : AIR_SPACE) + BOARDS + FILM_OUT);
    }

    /// Inner face of a single pane, °C.
    static double paneC(double indoorsC, double outdoorsC) { return indoorsC - (indoorsC - outdoorsC) * FILM_IN / (FILM_IN + PANE + FILM_OUT); }

    /// How humid a usual dwelling is, a fraction: the vapour outdoors, and what living adds.
    static double usualHumidity(double indoorsC, double outdoorsC, double outdoorsHumidity) {
        double adds = USUAL_PA * Math.clamp((20 - outdoorsC) / 20, 0, 1);
        return Math.clamp((outdoorsHumidity * Vapour.saturationPa(outdoorsC) + adds) / Vapour.saturationPa(indoorsC), 0.01, 1);
    }

    /// Hours of each month in which the back of the boards of an unfilled wall is colder than the dew point of a usual room.
    ///
    /// Daily means lie about the month's by 6 - 0.085 of it in °C, 2.5 to 7; in a day the temperature goes from low to high and back as a cosine.
    static List<Double> hours(List<Month> months) {
        List<Double> all = new ArrayList<>();
        for (int m = 0; m < months.size(); m++) {
            Month month = months.get(m);
            double mean = month.meanC(), swing = (month.meanHigh().own() - month.meanLow().own()) / 2, varies = Math.clamp(6 - 0.085 * mean, 2.5, 7);
            double damp = usualHumidity(ROOM_C, mean, month.humidity().own()), dew = Vapour.dewPointC(ROOM_C, damp);
            int cold = 0, of = 0;
            for (int day = 0; day < SLICES; day++) {
                double off = varies * OFF[day];
                for (int hour = 0; hour < 24; hour++) {
                    double outdoors = mean + off + swing * Math.cos(2 * Math.PI * (hour + 0.5 - 15) / 24);
                    of++;
                    if (mean < HEATED_UNDER_C && backC(ROOM_C, outdoors, false) < dew) cold++;
                }
            }
            all.add(24.0 * DAYS[m] * cold / of);
        }
        return List.copyOf(all);
    }

    static WaterFindings.ColdCheck check(List<Month> months) {
        List<Double> hours = hours(months);
        double year = hours.stream().mapToDouble(one -> one).sum();
        String words = year < 1 ? "The back of the boards is never colder than the dew point of a usual room: damp from indoors does not condense there."
                : "For about " + Words.significant(year, 2) + " hours a year the back of the boards is colder than the dew point of a usual room: where room air gets into the wall, its water is left there. "
                        + "Bath, kitchen and dryer must blow outdoors; look for it in the coldest month.";
        return new WaterFindings.ColdCheck(hours, words, List.of(RESISTANCES, INDOORS, OWN));
    }

    private static double[] offs() {
        double[] offs = new double[SLICES];
        for (int day = 0; day < SLICES; day++) offs[day] = quantile((day + 0.5) / SLICES);
        return offs;
    }

    /// The normal distribution's quantile, by halving on its series. Source: a standard of numerical texts (from memory).
    private static double quantile(double share) {
        double low = -8, high = 8;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (below(middle) < share) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }

    private static double below(double z) {
        double term = z, sum = z;
        for (int n = 1; n < 120; n++) {
            term *= z * z / (2 * n + 1);
            sum += term;
        }
        return 0.5 + Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * sum;
    }
}
