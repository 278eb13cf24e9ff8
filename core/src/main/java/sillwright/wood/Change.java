package sillwright.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Words;
import sillwright.water.WaterFindings;
import sillwright.water.WaterFindings.RankedSource;

/// What stopping a source of water is expected to change in a member that it reaches: the wetting model run with and without.
///
/// Where other likely sources reach the member too, `with` names them, and the change is that of all of them stopped; `alone` tells what stopping this
/// one and letting the others run would leave, which may be no less.
///
/// @param source      id of the source, `W1`
/// @param member      id
/// @param with        ids of the other likely sources that must be stopped as well
/// @param hours       with liquid water in a mean year, as it is, and `hoursThen` once stopped
/// @param moisture    mean, a fraction
/// @param years       to the next decay rating, middle value; empty where it is not reached in [Forecast#LONGEST_YEARS]
/// @param alone       what stopping this source alone leaves, where others wet the member too
/// @param nextRating  the rating that the years count to; for 4, to [Forecast#AS_GOOD_AS_FAILED]
public record Change(String source, String member, List<String> with, double hours, double hoursThen, double moisture, double moistureThen, Optional<Double> years, Optional<Double> yearsThen,
                     int nextRating, Optional<Alone> alone) {
    public Change { with = List.copyOf(with); }

    /// Without the source alone.
    public Change(String source, String member, List<String> with, double hours, double hoursThen, double moisture, double moistureThen, Optional<Double> years, Optional<Double> yearsThen, int nextRating) {
        this(source, member, with, hours, hoursThen, moisture, moistureThen, years, yearsThen, nextRating, Optional.empty());
    }

    /// For every likely source and every member that it reaches and whose outlook was worked.
    public static List<Change> all(WaterFindings water, WoodFindings wood) {
        List<Change> all = new ArrayList<>();
        for (RankedSource source : water.toStop())
            for (String member : source.members()) {
                Optional<Outlook> outlook = wood.outlook(member);
                if (outlook.isEmpty()) continue;
                Outlook o = outlook.get();
                List<String> with = water.wetting(member).stream().map(RankedSource::id).filter(id -> !id.equals(source.id())).toList();
                all.add(new Change(source.id(), member, with, o.wettingHours(), o.stoppedHours(), o.meanMoisture(), o.stoppedMoisture(), o.asIs().yearsToNext().map(Interval::median),
                        o.stopped().yearsToNext().map(Interval::median), Forecast.next(o.asIs().ratings().getFirst().median()),
                        wood.alone().stream().filter(one -> one.source().equals(source.id()) && one.member().equals(member)).findFirst()));
            }
        return List.copyOf(all);
    }

    /// `1840 to 120 h wet a year, moisture 26 % to 15 %, moderate decay in 4 years as it is, in over 60 years then`.
    public String words() {
        return Words.number(hours, 0) + " to " + Words.number(hoursThen, 0) + " h wet a year, moisture " + Outlook.moist(moisture) + " to " + Outlook.moist(moistureThen)
                + ", " + Forecast.grade(nextRating) + " in " + said(years) + " as it is, in " + said(yearsThen) + " then";
    }

    /// `alone it leaves 1,900 h wet a year, moisture 24 %, moderate decay in 6 years`; empty where no other source wets the member.
    public String aloneWords() {
        return alone.map(one -> "alone it leaves " + Words.number(one.hours(), 0) + " h wet a year, moisture " + Outlook.moist(one.moisture()) + ", " + Forecast.grade(nextRating) + " in " + said(one.years())
                + (one.hours() > 0.95 * hours ? ": hardly a change while the others run" : "")).orElse("");
    }

    private static String said(Optional<Double> years) {
        return years.map(y -> y < 1 ? "under a year" : Words.count((int) Math.round(y), "year")).orElse("over " + Forecast.LONGEST_YEARS + " years");
    }
}
