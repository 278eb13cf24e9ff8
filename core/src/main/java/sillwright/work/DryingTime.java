package sillwright.work;

import sillwright.measure.Basis;

/// How long to leave wood once its water is stopped, before it is metered again with some hope.
final class DryingTime {
    static final Basis BASIS = Basis.own("a week of drying for each inch (25 mm) of thickness and each five points above 15 %: a date to meter again, no forecast");

    private static final int LEAST_DAYS = 3;
    private static final int MOST_DAYS = 182;
    /// Taken for wet wood that no meter was put to.
    static final double NOT_METERED = 0.25;

    private DryingTime() {}

    /// @param thinMm   the lesser side of the member, mm
    /// @param moisture now, a fraction
    /// @return days; 0 where it is dry enough already, and never more than half a year
    static int days(double thinMm, double moisture) {
        if (moisture <= Limits.DRY_ENOUGH) return 0;
        double weeks = thinMm / 25.4 * (moisture - Limits.DRY_ENOUGH) / 0.05;
        return (int) Math.clamp(Math.ceil(weeks * 7), LEAST_DAYS, MOST_DAYS);
    }
}
