package sillwright.wood.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Refused;
import sillwright.walk.Building;

/// The climate of a place, month by month, as a table of normals gives it.
///
/// @param months January to December
public record Normals(List<Month> months) {
    static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    /// The least depth that makes a rain day, mm: 0.01 in.
    static final double LEAST_MM = 0.254;

    /// @param highC    mean of daily highs, °C
    /// @param lowC     mean of daily lows, °C
    /// @param rainMm   depth in the month, snow melted with it
    /// @param rainDays days with 0.01 in or more
    /// @param humidity mean, a fraction
    /// @param windMs   mean speed
    public record Month(double highC, double lowC, double rainMm, double rainDays, double humidity, double windMs) {
        public double meanC() { return (highC + lowC) / 2; }
    }

    public Normals {
        months = List.copyOf(months);
        if (months.size() != 12) throw new Refused("months", "there are {} months where 12 are wanted", "give January to December", months.size());
        for (int m = 0; m < 12; m++) {
            Month month = months.get(m);
            if (month.rainDays > DAYS[m]) throw new Refused("month " + (m + 1), "{} rain days are more than the month has", "write 0 to " + DAYS[m], month.rainDays);
            if (month.rainDays > 0 != month.rainMm > 0)
                throw new Refused("month " + (m + 1), "{} rain days bring {} mm of rain", "give both or neither", month.rainDays, month.rainMm);
            if (month.rainMm < month.rainDays * LEAST_MM)
                throw new Refused("month " + (m + 1), "{} rain days bring less than 0.01 in each", "check the units of rain: in or mm", month.rainDays);
        }
    }

    /// Of a building whose weather was written down; empty where it was not.
    public static Optional<Normals> of(Building building) { return building.months().isEmpty() ? Optional.empty() : Optional.of(of(building.months())); }

    public static Normals of(List<Building.Month> months) {
        List<Month> all = new ArrayList<>();
        for (Building.Month m : months)
            all.add(new Month(m.meanHigh().own(), m.meanLow().own(), m.rain().own(), m.rainDays(), m.humidity().own(), m.wind().own()));
        return new Normals(all);
    }

    public Month month(int month) { return months.get(month); }

    /// The month of a day of the year, both from 0; a year has 365 days here.
    public static int monthOf(int dayOfYear) {
        int month = 0, first = 0;
        while (dayOfYear >= first + DAYS[month]) first += DAYS[month++];
        return month;
    }

    public static int daysIn(int month) { return DAYS[month]; }

    /// The first day of a month, from 0.
    public static int firstDay(int month) {
        int first = 0;
        for (int m = 0; m < month; m++) first += DAYS[m];
        return first;
    }

    public double yearlyRainMm() { return months.stream().mapToDouble(Month::rainMm).sum(); }
}
