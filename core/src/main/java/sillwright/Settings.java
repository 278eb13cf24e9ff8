package sillwright;

import java.time.LocalDate;
import java.util.List;

import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.walk.Survey;
import sillwright.watch.Watching;
import sillwright.wood.drying.Transport;
import sillwright.work.CutSolver;
import sillwright.work.Outfit;

/// What the whole road is told besides the survey.
///
/// @param start   the first day that work may begin
/// @param units   the reader's units
/// @param seed    for every random draw
/// @param solver  lays out the cut list
/// @param stockMm lengths of board that are sold
/// @param outfit  who does the work, and what things cost there
/// @param watching how far the work may be put off
/// @param transport moves the moisture
public record Settings(LocalDate start, Units units, long seed, CutSolver solver, List<Double> stockMm, Outfit outfit, Watching watching, Transport transport) {
    public Settings { stockMm = List.copyOf(stockMm); }

    /// Moved in plain Java.
    public Settings(LocalDate start, Units units, long seed, CutSolver solver, List<Double> stockMm, Outfit outfit, Watching watching) { this(start, units, seed, solver, stockMm, outfit, watching, Transport.PLAIN); }

    /// With the usual courses of the look ahead.
    public Settings(LocalDate start, Units units, long seed, CutSolver solver, List<Double> stockMm, Outfit outfit) { this(start, units, seed, solver, stockMm, outfit, Watching.USUAL); }

    /// The same in other units.
    public Settings in(Units other) { return new Settings(start, other, seed, solver, stockMm, outfit, watching, transport); }

    /// The same, moved by another transport.
    public Settings moved(Transport by) { return new Settings(start, units, seed, solver, stockMm, outfit, watching, by); }

    /// With no price known and the usual hours.
    public Settings(LocalDate start, Units units, long seed, CutSolver solver, List<Double> stockMm) { this(start, units, seed, solver, stockMm, Outfit.COMMON); }

    /// What the road is told where nobody says otherwise: work begins the Monday after next, in the units that most was measured in, with boards as they are commonly sold there.
    ///
    /// @param today the reader's day
    public static Settings usual(Survey survey, LocalDate today, CutSolver solver) {
        Units units = written(survey);
        return new Settings(firstDay(today), units, 1, solver, commonStock(units));
    }

    /// The Monday after next: a week to order in, and the rest of this one.
    public static LocalDate firstDay(LocalDate today) { return today.plusDays(14 - (today.getDayOfWeek().getValue() - 1)); }

    /// The units most members were measured in.
    public static Units written(Survey survey) {
        int metric = 0;
        for (Member member : survey.members().values()) {
            Unit unit = member.width().unit();
            if (unit == Unit.MILLIMETRE || unit == Unit.CENTIMETRE || unit == Unit.METRE) metric++;
        }
        return metric * 2 > survey.members().size() ? Units.SI : Units.US;
    }

    /// The lengths that boards are commonly sold in: 8, 10, 12, 14 and 16 ft.
    public static final List<Double> COMMON_STOCK_MM = List.of(2438.4, 3048.0, 3657.6, 4267.2, 4876.8);
    /// The metric ones.
    private static final List<Double> METRIC_STOCK_MM = List.of(2400.0, 3000.0, 3600.0, 4200.0, 4800.0);

    public static List<Double> commonStock(Units units) { return units == Units.US ? COMMON_STOCK_MM : METRIC_STOCK_MM; }
}
