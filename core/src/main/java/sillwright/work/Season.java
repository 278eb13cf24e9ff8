package sillwright.work;

import java.time.LocalDate;
import java.util.List;

import sillwright.walk.Building;
import sillwright.work.resin.Resin;

/// When resin can be worked on a building: the first month warm enough after the work may begin and the wood has dried.
///
/// @param month   1 to 12; 0 where no weather is known
/// @param tempC   its mean, or a usual day's where no weather is known
/// @param waits   whether that is a later month than the work could have begun in
/// @param warmest mean of the warmest month of the year, °C
record Season(int month, double tempC, boolean waits, double warmest) {
    /// Taken where no weather is known, °C: 68 °F. Own choice.
    static final double USUAL_C = 20;

    static Season of(List<Building.Month> months, LocalDate start, int dryDays) {
        if (months.isEmpty()) return new Season(0, USUAL_C, false, USUAL_C);
        int first = start.plusDays(dryDays).getMonthValue();
        double warmest = months.stream().mapToDouble(Building.Month::meanC).max().orElseThrow();
        for (int i = 0; i < 12; i++) {
            double mean = months.get((first - 1 + i) % 12).meanC();
            if (mean >= Resin.LEAST_C) return new Season((first - 1 + i) % 12 + 1, mean, i > 0, warmest);
        }
        return new Season(first, months.get(first - 1).meanC(), false, warmest);
    }
}
