package sillwright.work;

import sillwright.measure.Basis;
import sillwright.wood.Interval;

/// How long to leave wood once its water is stopped, before it is metered again with some hope: the middle of the drying
/// forecast where the weather is known, else a rule.
final class DryingTime {
    static final Basis BASIS = Basis.own("a week of drying for each inch (25 mm) of thickness and each five points above 15 %: half of it where the wet end is sawn off: a date to meter again, used where no weather is known to forecast from");

    private static final int LEAST_DAYS = 3;
    private static final int MOST_DAYS = 182;
    private static final double NOT_METERED = 0.25;

    private DryingTime() {}

    /// The wait before one repair: that of opened wood where the work takes the coat off anyway, and takes it off first; half that of wood under its coat where the wet end comes off and the
    /// rest dries through its end grain; none where the whole piece is made new. Wood that no meter was put to counts as wet where its water still runs.
    static int days(Job job, Treatment treatment) {
        double moisture = job.moisture().orElse(job.water().isEmpty() ? Limits.DRY_ENOUGH : NOT_METERED);
        int whole = job.outlook().map(outlook -> days(opens(treatment) ? outlook.openedDays() : outlook.dryDownDays())).orElseGet(() -> days(Math.min(job.member().widthMm(), job.member().depthMm()), moisture));
        return switch (treatment) {
            case Treatment.Watch _, Treatment.Replace _ -> 0;
            case Treatment.Recoat _, Treatment.Reseat _, Treatment.Consolidate _, Treatment.Fill _, Treatment.Dutchman _, Treatment.Sister _ -> whole;
            case Treatment.BuildUp _, Treatment.ButtSplice _, Treatment.HalfLap _, Treatment.ScarfSplice _, Treatment.ReplacePart _ -> (whole + 1) / 2;
        };
    }

    /// Whether the work takes the coat off the wet place, or the piece down, and leaves it where it is: then that is done before it dries.
    static boolean opens(Treatment treatment) {
        return switch (treatment) {
            case Treatment.Recoat _, Treatment.Reseat _, Treatment.Consolidate _, Treatment.Fill _, Treatment.Dutchman _, Treatment.Sister _ -> true;
            case Treatment.Watch _, Treatment.Replace _, Treatment.BuildUp _, Treatment.ButtSplice _, Treatment.HalfLap _, Treatment.ScarfSplice _, Treatment.ReplacePart _ -> false;
        };
    }

    /// Whether it is opened and then left to dry, before anything else is done.
    static boolean opensFirst(Job job, Treatment treatment) { return opens(treatment) && days(job, treatment) > 0; }

    /// The middle of the forecast.
    private static int days(Interval forecast) {
        double days = forecast.median();
        return days <= 0 ? 0 : (int) Math.clamp(Math.ceil(days), LEAST_DAYS, MOST_DAYS);
    }

    /// @param thinMm   the lesser side of the member, mm
    /// @param moisture now, a fraction
    /// @return days; 0 where it is dry enough already, and never more than half a year
    static int days(double thinMm, double moisture) {
        if (moisture <= Limits.DRY_ENOUGH) return 0;
        double weeks = thinMm / 25.4 * (moisture - Limits.DRY_ENOUGH) / 0.05;
        return (int) Math.clamp(Math.ceil(weeks * 7), LEAST_DAYS, MOST_DAYS);
    }
}
