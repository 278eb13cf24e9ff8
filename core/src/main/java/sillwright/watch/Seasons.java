package sillwright.watch;

import java.time.LocalDate;
import java.util.List;

import sillwright.measure.Basis;
import sillwright.walk.Building;

/// The two months of the year that a building is walked round in.
///
/// Spring: the first month from February on whose mean low is above freezing, May at the latest. Autumn: November, or October
/// where November's mean is under 4 °C and the gutters would be frozen. April and November where no normals are given.
/// Twice a year, early spring and late autumn: Historic New England's schedule (read). Which month that is: own choice.
///
/// @param spring 2 to 5
/// @param autumn 10 or 11
record Seasons(int spring, int autumn) {
    private static final int DAY = 15;
    private static final double FROST_C = 0, COLD_C = 4;

    static final List<Basis> BASIS = List.of(Basis.read("Historic New England, recommended inspection and maintenance schedule",
                    "twice a year, early spring and late autumn, and after rain"),
            Basis.read("National Park Service, Preservation Brief 47", "inspection table; roof to ground, one side at a time, always the same way round"),
            Basis.own("the month by the building's monthly normals"));

    static Seasons of(List<Building.Month> months) {
        if (months.isEmpty()) return new Seasons(4, 11);
        int spring = 2;
        while (spring < 5 && months.get(spring - 1).meanLow().own() <= FROST_C) spring++;
        return new Seasons(spring, months.get(10).meanC() < COLD_C ? 10 : 11);
    }

    /// The middle of the month, from `start` on.
    static LocalDate first(int month, LocalDate start) {
        LocalDate day = LocalDate.of(start.getYear(), month, DAY);
        return day.isBefore(start) ? day.plusYears(1) : day;
    }
}
