package sillwright.watch;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;

/// One place read over several walks, and where it is going.
///
/// @param what    what is followed
/// @param side    id
/// @param member  id; empty where it is of a whole side
/// @param place   as one points at it
/// @param points  what was read, in the order of time
/// @param slope   change in a year: a fraction of moisture, mm, or signs; season and meter taken out of moisture
/// @param low     nineteen in twenty such intervals hold the true slope
/// @param high    its other bound
/// @param p       probability of so strong a trend by chance alone, all followed places of the building counted in; 1 where too little was read
/// @param way     what may be said; never of what chance could do
/// @param changed where the level changed, if it did more than chance would have it
/// @param words   one sentence
public record Trend(What what, String side, Optional<String> member, String place, List<Point> points, double slope, double low, double high, double p, Way way,
                    Optional<LocalDate> changed, String words, List<Basis> basis) {
    public Trend {
        points = List.copyOf(points);
        basis = List.copyOf(basis);
    }

    public enum What { MOISTURE, DEPTH, PAINT }

    public enum Way { RISING, FALLING, NO_TREND, TOO_FEW }

    /// @param value    as read: a fraction, mm, a count of signs
    /// @param expected by the season and the dry places, or by the forecast; NaN where nothing was expected
    public record Point(LocalDate day, double value, double expected) {}
}
