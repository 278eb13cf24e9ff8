package sillwright.wood.weather;

import java.util.List;
import java.util.random.RandomGenerator;

import sillwright.measure.Basis;
import sillwright.measure.Vapour;

/// Makes any number of years of hourly weather that has the normals of a place.
///
/// Weather that might have been, for the spread from year to year; no forecast, and no storm beyond what the amounts' distribution holds. Years differ less than real
/// ones: what lasts longer than some days (a dry summer, a mild winter) is not in it. Sun and the direction of the wind are not made.
public final class WeatherMaker {
    public static final List<Basis> BASIS = List.of(Rainfall.CHAIN, Rainfall.HOURS,
            Basis.read("Richardson and Wright (1984), in public programs", "day-to-day residuals of high, low and radiation: matrices A and B"),
            Basis.own("highs and lows vary by 6 - 0.085 of the mean in °C, 2.5 to 7, at most 0.45 of what lies between them; wet days have highs 2 °C lower and humidity a tenth higher; humidity varies by 0.08"));

    /// Residuals x(t) = A x(t-1) + B e of daily high, low and radiation. Source: Richardson and Wright (1984), as public programs give it (read).
    private static final double[][] A = {{0.567, 0.086, -0.002}, {0.253, 0.504, -0.050}, {-0.006, -0.039, 0.244}};
    private static final double[][] B = {{0.781, 0, 0}, {0.328, 0.637, 0}, {0.238, -0.341, 0.873}};
    private static final double WET_COOLER_C = 2, WET_DAMPER = 0.10, HUMIDITY_VARIES = 0.08, LOW_HOUR = 5, HIGH_HOUR = 15;

    private final Normals normals;
    private final RandomGenerator random;
    private final double[] high = new double[365];
    private final double[] low = new double[365];
    private final double[] residual = new double[3];

    private WeatherMaker(Normals normals, RandomGenerator random) {
        this.normals = normals;
        this.random = random;
        smooth(normals.months().stream().mapToDouble(Normals.Month::highC).toArray(), high);
        smooth(normals.months().stream().mapToDouble(Normals.Month::lowC).toArray(), low);
    }

    /// @param random the same state gives the same weather, to the last digit
    public static Weather years(Normals normals, int years, RandomGenerator random) { return new WeatherMaker(normals, random).make(years); }

    /// Daily values by straight lines between mid-months, their mean over each month the month's own.
    private static void smooth(double[] monthly, double[] daily) {
        double[] node = monthly.clone(), mean = new double[12];
        for (int round = 0; round < 60; round++) {
            java.util.Arrays.fill(mean, 0);
            for (int d = 0; d < 365; d++) {
                int month = Normals.monthOf(d), days = Normals.daysIn(month);
                double at = (d - Normals.firstDay(month) + 0.5) / days - 0.5;
                int other = (at < 0 ? month + 11 : month + 1) % 12;
                double reach = (days + Normals.daysIn(other)) / 2.0, share = Math.abs(at) * days / reach;
                daily[d] = node[month] * (1 - share) + node[other] * share;
                mean[month] += daily[d] / days;
            }
            for (int m = 0; m < 12; m++) node[m] += monthly[m] - mean[m];
        }
    }

    private Weather make(int years) {
        int days = 365 * years;
        Weather weather = new Weather(24 * days);
        double[] highs = new double[days + 1], lows = new double[days + 1];
        boolean wet = false;
        double shareBefore = share(11);
        double damp = 0;
        boolean[] wetDays = new boolean[days];
        for (int d = 0; d < days; d++) {
            int day = d % 365, month = Normals.monthOf(day);
            double share = share(month);
            wet = random.nextDouble() < (d == 0 ? share : Rainfall.chance(share, shareBefore, wet));
            shareBefore = share;
            wetDays[d] = wet;
            if (wet) Rainfall.lay(Rainfall.amountMm(normals.month(month).rainMm() / normals.month(month).rainDays(), random), weather.fallsMm, 24 * d, random);
            step();
            double varies = varies(normals.month(month)), cooler = WET_COOLER_C * (share - (wet ? 1 : 0));
            double top = high[day] + cooler + varies * residual[0], bottom = low[day] + varies * residual[1], middle = (top + bottom) / 2;
            double half = Math.max(0.5, (top - bottom) / 2);
            highs[d] = middle + half;
            lows[d] = middle - half;
        }
        highs[days] = highs[days - 1];
        lows[days] = lows[days - 1];
        for (int d = 0; d < days; d++) {
            int month = Normals.monthOf(d % 365);
            Normals.Month normal = normals.month(month);
            temperatures(weather.tempC, d, d == 0 ? highs[0] : highs[d - 1], lows[d], highs[d], lows[d + 1]);
            damp = 0.5 * damp + Math.sqrt(0.75) * HUMIDITY_VARIES * random.nextGaussian();
            humidities(weather, d, normal.humidity() + damp + WET_DAMPER * ((wetDays[d] ? 1 : 0) - share(month)));
            double wind = normal.windMs() * Rainfall.gamma(4, random) / 4;
            for (int h = 0; h < 24; h++) weather.windMs[24 * d + h] = wind * (1 + 0.25 * Math.cos(2 * Math.PI * (h + 0.5 - 14) / 24));
        }
        return weather;
    }

    /// How far highs and lows vary from day to day, °C; less where the day itself varies little, or its low and its high would change places.
    private static double varies(Normals.Month month) {
        return Math.min(0.45 * (month.highC() - month.lowC()), Math.max(2.5, Math.min(7, 6 - 0.085 * month.meanC())));
    }

    private double share(int month) { return normals.month(month).rainDays() / Normals.daysIn(month); }

    private void step() {
        double e0 = random.nextGaussian(), e1 = random.nextGaussian(), e2 = random.nextGaussian(), x0 = residual[0], x1 = residual[1], x2 = residual[2];
        for (int i = 0; i < 3; i++) residual[i] = A[i][0] * x0 + A[i][1] * x1 + A[i][2] * x2 + B[i][0] * e0 + B[i][1] * e1 + B[i][2] * e2;
    }

    /// From yesterday's high down to today's low at 5, up to the high at 15, down to tomorrow's low: each way half a cosine.
    private static void temperatures(double[] tempC, int day, double highBefore, double lowC, double highC, double lowAfter) {
        for (int h = 0; h < 24; h++) {
            double at = h + 0.5;
            tempC[24 * day + h] = at < LOW_HOUR ? between(highBefore, lowC, (at + 24 - HIGH_HOUR) / (24 - HIGH_HOUR + LOW_HOUR))
                    : at < HIGH_HOUR ? between(lowC, highC, (at - LOW_HOUR) / (HIGH_HOUR - LOW_HOUR)) : between(highC, lowAfter, (at - HIGH_HOUR) / (24 - HIGH_HOUR + LOW_HOUR));
        }
    }

    private static double between(double from, double to, double part) { return from + (to - from) * (1 - Math.cos(Math.PI * part)) / 2; }

    /// One vapour pressure all day, such that the day's mean humidity is the wanted one; no hour goes above 99 %.
    private static void humidities(Weather weather, int day, double wanted) {
        double goal = Math.max(0.1, Math.min(0.97, wanted)), pressure = 0, thirst = 0;
        double[] humidity = weather.humidity;
        for (int h = 24 * day; h < 24 * day + 24; h++) {
            humidity[h] = 1 / Vapour.saturationPa(weather.tempC[h]);
            thirst += humidity[h] / 24;
        }
        pressure = goal / thirst;
        for (int round = 0; round < 6; round++) {
            double mean = 0;
            for (int h = 24 * day; h < 24 * day + 24; h++) mean += Math.min(0.99, humidity[h] * pressure) / 24;
            pressure *= goal / mean;
        }
        for (int h = 24 * day; h < 24 * day + 24; h++) humidity[h] = Math.min(0.99, humidity[h] * pressure);
    }
}
