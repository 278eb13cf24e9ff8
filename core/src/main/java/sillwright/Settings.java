package sillwright;

import java.time.LocalDate;
import java.util.List;

import sillwright.measure.Units;
import sillwright.work.CutSolver;

/// What the whole road is told besides the survey.
///
/// @param start   the first day that work may begin
/// @param units   the reader's units
/// @param seed    for every random draw
/// @param solver  lays out the cut list
/// @param stockMm lengths of board that are sold
public record Settings(LocalDate start, Units units, long seed, CutSolver solver, List<Double> stockMm) {
    public Settings { stockMm = List.copyOf(stockMm); }

    /// The lengths that boards are commonly sold in: 8, 10, 12, 14 and 16 ft.
    public static final List<Double> COMMON_STOCK_MM = List.of(2438.4, 3048.0, 3657.6, 4267.2, 4876.8);
}
