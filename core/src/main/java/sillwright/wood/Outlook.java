package sillwright.wood;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Words;

/// What weather will do to one member: how wet it is, how soon it dries, how decay would go on.
///
/// @param member        id
/// @param wettingHours  hours in a mean year with liquid water on it
/// @param meanMoisture  a fraction, near the skin that is wetted, over all hours
/// @param dampDays      days in a mean year on which it is wet and warm enough there for decay to go on
/// @param dryDownDays   from the day the water is stopped until the wood is at or below `limit`; where a bound is [#LONGEST_DAYS] it is not reached in a year
/// @param driesInAYear  share of the generated years in which it dries within a year
/// @param openedDays    the same with its coat taken off there, or it taken down, and a sheet hung before it that keeps rain out and lets air by
/// @param openedInAYear share of the years in which it then dries within a year
/// @param limit         the moisture to be reached before treatment
/// @param asIs          with the water as it is
/// @param stopped       with the water stopped now
/// @param stoppedHours    hours in a mean year with liquid water on it, once the water is stopped
/// @param stoppedMoisture its mean moisture then, a fraction
/// @param atAnEnd       true where the end grain is the wetter place, so that all of this speaks of the end
public record Outlook(String member, double wettingHours, double meanMoisture, double dampDays, Interval dryDownDays, double driesInAYear, Interval openedDays, double openedInAYear, double limit,
                      Forecast asIs, Forecast stopped, double stoppedHours, double stoppedMoisture, boolean atAnEnd, List<Basis> basis) {
    public static final int LONGEST_DAYS = 365;
    /// Wetter than any meter tells and than decay needs: a number beyond would claim more than the computation knows.
    private static final double SODDEN = 0.6;

    /// What such a computation can tell and what not, to stand beside it.
    public static final String CAUTION = "Computed from mean weather for plain wood: it ranks members and remedies, and dates nothing. Sun, shade, checks, sapwood, trapped joints and the fungus "
            + "itself are not in it. Meter and probe before and after.";

    /// Said in place of an outlook where nobody knows yet what wets a member: there is nothing to stop, and nothing to forecast from.
    public static final String NO_SOURCE = "No likely source of water reaches it by what was seen, so neither drying nor decay is forecast: find what keeps it wet first.";

    public Outlook { basis = List.copyOf(basis); }

    /// A moisture as it is said: `18 %`; past what decay cares for, only that it is.
    public static String moist(double moisture) { return moisture > SODDEN ? "over " + Words.percent(SODDEN) : Words.percent(moisture); }

    /// One or two sentences.
    public String words() {
        String place = atAnEnd ? "Its end grain" : "It";
        String wet = place + " has liquid water on it about " + Words.number(wettingHours, 0) + " h a year; moisture there is about " + moist(meanMoisture) + " in the mean. ";
        if (dryDownDays.median() <= 0) return wet + "It is dry enough to treat.";
        String opened = openedDays.median() >= dryDownDays.median() ? "" : "; with its coat off and a sheet hung before it against rain, in " + about(openedDays);
        if (dryDownDays.median() >= LONGEST_DAYS)
            return wet + "Once the water is stopped it takes more than a year to dry to " + Words.percent(limit) + (opened.isEmpty() ? ", its coat off or on: take it apart to dry." : opened + ".");
        return wet + "Once the water is stopped it dries to " + Words.percent(limit) + " in " + about(dryDownDays) + opened + ".";
    }

    private static String about(Interval days) {
        return "about " + days(days.median()) + " (" + days(days.low()) + " to " + (days.high() >= LONGEST_DAYS ? "more than a year" : days(days.high())) + ")";
    }

    private static String days(double days) { return days < 21 ? Words.count((int) Math.max(1, Math.round(days)), "day") : Words.count((int) Math.round(days / 7), "week"); }
}
