package sillwright.work;

import java.time.LocalDate;
import java.util.Set;

import sillwright.work.cost.Allowances;
import sillwright.work.cost.Labour;
import sillwright.work.cost.PriceBook;
import sillwright.work.schedule.Crew;

/// Who does the work, and what things cost there.
///
/// @param prices the user's price book, [PriceBook#EMPTY] where there is none
/// @param labour hours for each task
/// @param materials what the remedies against water use up
/// @param crew   who works, and when
/// @param rained days known to be lost to rain
/// @param rack   boards that are there already
public record Outfit(PriceBook prices, Labour labour, Allowances materials, Crew crew, Set<LocalDate> rained, Rack rack) {
    /// No price known, the usual hours.
    public static final Outfit COMMON = new Outfit(PriceBook.EMPTY, Labour.usual(), Crew.ONE, Set.of());

    public Outfit { rained = Set.copyOf(rained); }

    /// With the usual allowances for remedies, and an empty rack.
    public Outfit(PriceBook prices, Labour labour, Crew crew, Set<LocalDate> rained) { this(prices, labour, Allowances.usual(), crew, rained, Rack.EMPTY); }

    public Outfit with(Rack boards) { return new Outfit(prices, labour, materials, crew, rained, boards); }
}
