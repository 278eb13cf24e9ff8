package sillwright.work.schedule;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;

import sillwright.measure.Refused;

/// Who works, and when.
///
/// @param crews       how many jobs go on at once
/// @param days        of the week that are worked
/// @param hours       of work in a day
/// @param latitudeDeg of the place, for daylight
public record Crew(int crews, Set<DayOfWeek> days, double hours, double latitudeDeg) {
    /// One crew, Monday to Friday, six hours at the work: the program's own choice.
    public static final Crew ONE = new Crew(1, EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), 6, 42);

    public Crew {
        if (crews < 1 || crews > 20) throw new Refused("crews", "{} is no number of crews", "write 1 to 20", crews);
        if (days.isEmpty()) throw new Refused("days", "no day of the week is worked", "name at least one");
        if (!(hours > 0 && hours <= 12)) throw new Refused("hours", "{} is no working day", "write 1 to 12 hours", hours);
        if (!(Math.abs(latitudeDeg) <= 66)) throw new Refused("latitude", "{} is beyond the polar circle", "write -66 to 66 degrees", latitudeDeg);
        days = Set.copyOf(days);
    }

    public boolean works(LocalDate day) { return days.contains(day.getDayOfWeek()); }

    /// The first and the last hour of work on a day: about noon, within daylight less half an hour at each end.
    public int[] hoursOf(LocalDate day) {
        double light = Math.min(hours + 2, daylightH(latitudeDeg, day.getDayOfYear()) - 1);
        int half = (int) Math.max(1, Math.floor(light / 2));
        return new int[] {12 - half, 12 + half};
    }

    /// Minutes of work in a day that daylight leaves, in whole quarters of an hour; 0 on a day that is not worked.
    public int minutes(LocalDate day) { return works(day) ? 15 * (int) Math.round(4 * Math.max(0, Math.min(hours, daylightH(latitudeDeg, day.getDayOfYear()) - 1))) : 0; }

    /// Hours from sunrise to sunset, by the sun's declination.
    ///
    /// Source: Forsythe and others (1995), the model of the length of day by revolution angle, with the sun's edge at the horizon (from memory).
    public static double daylightH(double latitudeDeg, int dayOfYear) {
        double theta = 0.2163108 + 2 * Math.atan(0.9671396 * Math.tan(0.00860 * (dayOfYear - 186)));
        double phi = Math.asin(0.39795 * Math.cos(theta)), lat = Math.toRadians(latitudeDeg);
        double cos = (Math.sin(Math.toRadians(0.8333)) + Math.sin(lat) * Math.sin(phi)) / (Math.cos(lat) * Math.cos(phi));
        return 24 - 24 / Math.PI * Math.acos(Math.max(-1, Math.min(1, cos)));
    }
}
