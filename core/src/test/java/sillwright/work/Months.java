package sillwright.work;

import module java.base;

import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.walk.Building.Month;

/// Monthly means like Chicago's, °F (from memory); the rest of each month is made up to fill the record.
public final class Months {
    private Months() {}

    public static List<Month> chicago() { return of(25.2, 28.8, 39.0, 49.7, 60.6, 70.6, 75.4, 73.8, 66.3, 54.0, 41.3, 30.5); }

    /// @param meanF twelve means; the highs and lows lie 8 °F to either side
    public static List<Month> of(double... meanF) {
        return Arrays.stream(meanF).mapToObj(mean -> new Month(temp(mean + 8), temp(mean - 8), new Quantity(80, Unit.MILLIMETRE, "80mm"), 10,
                new Quantity(0.7, Unit.PERCENT, "70%"), new Quantity(4, Unit.METRE_PER_SECOND, "4m/s"), new Quantity(0, Unit.MILLIMETRE, "0mm"))).toList();
    }

    private static Quantity temp(double f) { return new Quantity(Unit.FAHRENHEIT.toOwn(f), Unit.FAHRENHEIT, f + "F"); }
}
