package sillwright.watch;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import sillwright.measure.Basis;
import sillwright.walk.Building;
import sillwright.walk.Building.Month;

/// The days of the year that a building is walked round on, by its own monthly normals.
///
/// Normals are laid on the middle of their months and joined by straight lines. The thaw is the day after the coldest month on
/// which the mean low rises above freezing, the freeze the day after the warmest on which it falls below; spring comes ten days
/// after the thaw, autumn three weeks before the freeze, and each nearer where hardly any time lies between. Leaves are taken to be down when the mean falls under 7 °C. Where
/// it never freezes, spring is a month after the coldest time and autumn two months before it. Reckoned from the coldest and
/// the warmest month, so that it holds south of the equator too.
///
/// @param spring   after the thaw
/// @param autumn   before the freeze; after leaf fall where that comes in the six weeks before the freeze
/// @param leafFall where gutters want a look of their own, because the leaves come down at another time
/// @param known    whether normals were given; else mid-April and mid-November, as the trade does
record Seasons(MonthDay spring, MonthDay autumn, Optional<MonthDay> leafFall, boolean known) {
    static final double LEAVES_DOWN_C = 7;
    private static final int YEAR = 365, AFTER_THAW = 10, BEFORE_FREEZE = 21, SIX_WEEKS = 42, HARD_BY = 3;
    private static final int[] FIRST_OF_MONTH = {0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
    private static final int[] LENGTH = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    static final List<Basis> BASIS = List.of(Basis.read("Historic New England, recommended inspection and maintenance schedule",
                    "twice a year, early spring and late autumn, and after rain"),
            Basis.read("National Park Service, Preservation Brief 47", "inspection table; roof to ground, one side at a time, always the same way round"),
            Basis.own("the day, by the building's monthly normals: ten days after the mean low rises above freezing, three weeks before it falls below, leaves down under a mean of 7 °C"));

    static Seasons of(List<Month> months) {
        if (months.isEmpty()) return new Seasons(MonthDay.of(4, 15), MonthDay.of(11, 15), Optional.empty(), false);
        int coldest = extreme(months, -1), warmest = extreme(months, 1);
        Optional<Integer> thaw = crossing(months, coldest, month -> month.meanLow().own(), 0, true);
        Optional<Integer> freeze = crossing(months, warmest, month -> month.meanLow().own(), 0, false);
        Optional<Integer> leaves = crossing(months, warmest, Month::meanC, LEAVES_DOWN_C, false);
        if (thaw.isEmpty() || freeze.isEmpty()) return new Seasons(day(middle(coldest) + 30), day(middle(coldest) - 60), leaves.map(Seasons::day), true);
        int between = Math.floorMod(freeze.get() - thaw.get(), YEAR), spring = thaw.get() + Math.min(AFTER_THAW, between / 4);
        int before = leaves.map(down -> Math.floorMod(freeze.get() - down, YEAR)).orElse(YEAR);
        if (before >= HARD_BY && before <= Math.min(SIX_WEEKS, between / 2)) return new Seasons(day(spring), day(leaves.get()), Optional.empty(), true);
        return new Seasons(day(spring), day(freeze.get() - Math.min(BEFORE_FREEZE, between / 4)), leaves.map(down -> day(down + 7)), true);
    }

    private static int extreme(List<Month> months, int sign) {
        int best = 0;
        for (int m = 1; m < 12; m++) if (sign * months.get(m).meanC() > sign * months.get(best).meanC()) best = m;
        return best;
    }

    private static int middle(int month) { return FIRST_OF_MONTH[month] + LENGTH[month] / 2; }

    /// The first day from the middle of a month on, within a year, on which a normal has passed a threshold; none where it never does, or
    /// is past it already.
    private static Optional<Integer> crossing(List<Month> months, int from, ToDoubleFunction<Month> normal, double at, boolean rising) {
        int start = middle(from);
        if (passed(months, normal, start, at, rising)) return Optional.empty();
        for (int day = start; day < start + YEAR; day++) if (passed(months, normal, day, at, rising)) return Optional.of(day);
        return Optional.empty();
    }

    private static boolean passed(List<Month> months, ToDoubleFunction<Month> normal, int day, double at, boolean rising) {
        double value = on(months, normal, Math.floorMod(day, YEAR));
        return rising ? value > at : value < at;
    }

    /// A monthly normal on a day of the year.
    ///
    /// @param day 0 to 364
    static double on(List<Month> months, ToDoubleFunction<Month> normal, int day) {
        int month = 11;
        while (month > 0 && middle(month) > day) month--;
        if (middle(month) > day) month = 11;
        int next = (month + 1) % 12, from = middle(month), span = Math.floorMod(middle(next) - from, YEAR);
        double share = (double) Math.floorMod(day - from, YEAR) / span;
        return normal.applyAsDouble(months.get(month)) * (1 - share) + normal.applyAsDouble(months.get(next)) * share;
    }

    private static MonthDay day(int ofYear) { return MonthDay.from(LocalDate.ofYearDay(2025, Math.floorMod(ofYear, YEAR) + 1)); }

    /// A day of the year, from `start` on.
    static LocalDate first(MonthDay day, LocalDate start) {
        LocalDate first = day.atYear(start.getYear());
        return first.isBefore(start) ? day.atYear(start.getYear() + 1) : first;
    }

    /// The day of a year of 365 days, 0 to 364.
    static int ofYear(LocalDate day) { return (day.getDayOfYear() - 1) % YEAR; }

    /// Moisture that wood outdoors in shade comes to by the normals of the month before a day; empty where there are none.
    ///
    /// @param building whose normals
    static Optional<Double> atRest(Optional<Building> building, LocalDate day) {
        return building.map(Building::months).filter(months -> !months.isEmpty()).map(months -> {
            double sum = 0;
            for (int back = 0; back < 30; back++) {
                int on = Math.floorMod(ofYear(day) - back, YEAR);
                sum += sillwright.wood.moisture.Moisture.atRest(Math.max(-1, on(months, Month::meanC, on)), Math.clamp(on(months, month -> month.humidity().own(), on), 0.05, 0.95));
            }
            return sum / 30;
        });
    }
}
