package sillwright.work.schedule;

import java.time.LocalDate;
import java.util.Set;

import sillwright.measure.Basis;
import sillwright.measure.Vapour;
import sillwright.wood.weather.Normals;
import sillwright.wood.weather.Weather;
import sillwright.work.schedule.Activity.Fit;

/// What each day is fit for, in each of many generated years.
///
/// Paint wants four hours together in the working day at 50 to 90 °F, humidity to 85 %, the face 5 °F over the dew point (the face taken at air temperature, as in shade), no rain in them nor in the
/// four hours after, under 2 mm in the day before, and a night no lower than 35 °F. Wood lies open where no rain falls in working hours.
public final class Season {
    public static final Basis BASIS = Basis.own("a day is fit for paint with four hours together in range, no rain in them or the four after, under 2 mm in 24 h before and 35 °F or more in the 24 h after; for resin at a mean of 50 °F in working hours; for open wood with under 0.25 mm in them; for work outdoors with under 5 mm; wood is opened where in the mean seven days for paint follow within five weeks");

    private static final double LEAST_C = 10, MOST_C = 32.2, MARGIN_C = 5.0 / 1.8, DAMPEST = 0.85, NIGHT_C = 1.7;
    /// At this humidity the dew point lies more than the margin below any temperature paint is used at.
    private static final double CLEAR = 0.79;
    private static final int FITS = Fit.values().length;

    private final int years;
    private final int days;
    /// The most that a day's weather is fit for, by year and day.
    private final byte[] best;
    /// Needs that a worked day is fit for, by year and day: the bit of each is set.
    final byte[] fit;
    /// Days from which on paint can follow.
    private final boolean[] opening;
    private final int[] minutes;
    private final LocalDate start;
    /// By year, need and day: the first worked day from there on that is fit.
    private final short[] next;

    private Season(LocalDate start, int years, int days) {
        this.start = start;
        this.years = years;
        this.days = days;
        this.best = new byte[years * days];
        this.fit = new byte[years * days];
        this.opening = new boolean[days];
        this.minutes = new int[days];
        this.next = new short[years * FITS * days];
    }

    /// One year in which every day is fit for everything: where no weather is known.
    public static Season fair(LocalDate start, Crew crew, int days, Set<LocalDate> rained) {
        Season season = new Season(start, 1, days);
        java.util.Arrays.fill(season.best, (byte) Fit.PAINT.ordinal());
        java.util.Arrays.fill(season.opening, true);
        return season.with(crew, rained);
    }

    /// @param weather of one year more than are asked for, and as many more as the days want
    /// @param rained  days known to be lost to rain, whatever the year
    public static Season of(LocalDate start, Crew crew, Weather weather, int years, int days, Set<LocalDate> rained) {
        Season season = new Season(start, years, days);
        int first = Math.min(start.getDayOfYear(), 365) - 1;
        for (int y = 0; y < years; y++)
            for (int d = 0; d < days; d++) season.best[y * days + d] = (byte) fit(weather, (y * 365 + first + d) % (weather.hours() / 24), crew.hoursOf(start.plusDays(d))).ordinal();
        season.open(crew);
        return season.with(crew, rained);
    }

    /// Work that leaves wood bare is begun where in the mean of the years so many days for paint follow within so many.
    private static final int PAINT_DAYS = 7, WITHIN_DAYS = 35;

    private void open(Crew crew) {
        double[] paint = new double[days + 1];
        for (int d = 0; d < days; d++) {
            int good = 0;
            if (crew.works(start.plusDays(d))) for (int y = 0; y < years; y++) if (best[y * days + d] >= Fit.PAINT.ordinal()) good++;
            paint[d + 1] = paint[d] + good / (double) years;
        }
        for (int d = 0; d < days; d++) opening[d] = d + WITHIN_DAYS > days || paint[d + WITHIN_DAYS] - paint[d] >= PAINT_DAYS;
    }

    /// Years of days given one by one, each as the most it is fit for, and whether paint can follow.
    static Season drawn(LocalDate start, Crew crew, byte[][] years, boolean[] opening) {
        Season season = new Season(start, years.length, years[0].length);
        for (int y = 0; y < years.length; y++) System.arraycopy(years[y], 0, season.best, y * season.days, season.days);
        System.arraycopy(opening, 0, season.opening, 0, season.days);
        return season.with(crew, Set.of());
    }

    private Season with(Crew crew, Set<LocalDate> rained) {
        for (int d = 0; d < days; d++) {
            LocalDate day = start.plusDays(d);
            minutes[d] = crew.minutes(day);
            boolean wet = rained.contains(day), after = rained.contains(day.minusDays(1));
            for (int y = 0; y < years; y++) {
                int at = y * days + d;
                if (wet) best[at] = (byte) Fit.ANY.ordinal();
                else if (after) best[at] = (byte) Math.min(best[at], Fit.WARM.ordinal());
            }
        }
        return looked();
    }

    /// The same with every second fit day of a month lost to rain.
    public Season wetMonth(int month) {
        Season wet = new Season(start, years, days);
        System.arraycopy(minutes, 0, wet.minutes, 0, days);
        System.arraycopy(opening, 0, wet.opening, 0, days);
        for (int y = 0; y < years; y++)
            for (int d = 0; d < days; d++) {
                int at = y * days + d;
                boolean lost = start.plusDays(d).getMonthValue() == month && d % 2 == 0 && start.plusDays(d).toEpochDay() < start.toEpochDay() + 365;
                wet.best[at] = lost ? (byte) Fit.ANY.ordinal() : best[at];
            }
        return wet.looked();
    }

    public int years() { return years; }

    public int days() { return days; }

    public LocalDate day(int day) { return start.plusDays(day); }

    boolean fits(int year, int day, Fit needs) { return (fit[year * days + day] >> needs.ordinal() & 1) != 0; }

    /// Minutes of work of one crew on a day; 0 where it is not worked.
    int minutes(int day) { return minutes[day]; }

    /// The first worked day from a day on that is fit, [#days] where there is none.
    int next(int year, int needs, int day) {
        return day >= days ? days : next[(year * FITS + needs) * days + day];
    }

    private Season looked() {
        for (int y = 0; y < years; y++)
            for (int d = 0; d < days; d++) {
                int most = best[y * days + d];
                fit[y * days + d] = (byte) (minutes[d] == 0 ? 0 : (2 << most) - 1 | (most >= Fit.WARM.ordinal() && opening[d] ? 1 << Fit.OPENING.ordinal() : 0));
            }
        for (int y = 0; y < years; y++)
            for (int f = 0; f < FITS; f++) {
                short at = (short) days;
                for (int d = days - 1; d >= 0; d--) {
                    if ((fit[y * days + d] >> f & 1) != 0) at = (short) d;
                    next[(y * FITS + f) * days + d] = at;
                }
            }
        return this;
    }

    /// The share of worked days of a month that are fit, over all years; empty of days gives 0.
    public double share(int month, Fit needs) {
        int all = 0, fit = 0;
        for (int d = 0; d < Math.min(days, 365); d++) if (minutes[d] > 0 && day(d).getMonthValue() == month)
            for (int y = 0; y < years; y++) {
                all++;
                if (fits(y, d, needs)) fit++;
            }
        return all == 0 ? 0 : fit / (double) all;
    }

    /// The most that a day of weather is fit for.
    static Fit fit(Weather weather, int day, int[] hours) {
        double rain = 0, warmth = 0;
        for (int h = hours[0]; h < hours[1]; h++) {
            rain += weather.fallsMm[24 * day + h];
            warmth += weather.tempC[24 * day + h];
        }
        warmth /= hours[1] - hours[0];
        if (rain >= 5) return Fit.ANY;
        if (rain >= 0.25) return Fit.OUTDOORS;
        if (warmth < LEAST_C) return Fit.DRY;
        return paint(weather, day, hours) ? Fit.PAINT : Fit.WARM;
    }

    private static boolean paint(Weather weather, int day, int[] hours) {
        double before = 0;
        int at = 24 * day, all = weather.hours();
        for (int h = 1; h <= 24; h++) before += weather.fallsMm[Math.floorMod(at + hours[0] - h, all)];
        if (before >= 2) return false;
        int together = 0;
        for (int h = at + hours[0]; h < at + hours[1]; h++) {
            boolean good = weather.tempC[h] >= LEAST_C && weather.tempC[h] <= MOST_C && weather.humidity[h] <= DAMPEST && weather.fallsMm[h] == 0
                    && (weather.humidity[h] <= CLEAR || weather.tempC[h] - Vapour.dewPointC(weather.tempC[h], weather.humidity[h]) >= MARGIN_C);
            together = good ? together + 1 : 0;
            if (together >= 4 && stays(weather, h, all)) return true;
        }
        return false;
    }

    private static boolean stays(Weather weather, int last, int all) {
        for (int h = 1; h <= 4; h++) if (weather.fallsMm[(last + h) % all] > 0) return false;
        for (int h = 1; h <= 24; h++) if (weather.tempC[(last + h) % all] < NIGHT_C) return false;
        return true;
    }
}
