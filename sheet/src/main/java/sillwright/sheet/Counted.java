package sillwright.sheet;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.Repair;
import sillwright.work.WorkFindings.OrderLine;

/// Amounts of material in the reader's units.
final class Counted {
    private Counted() {}

    static String words(OrderLine.Measure measure, double amount, Units units) {
        return switch (measure) {
            case VOLUME -> Words.volume(amount, units);
            case AREA -> Words.area(amount, units);
            case COUNT -> count(amount);
            case LENGTH -> Words.length(amount, units);
        };
    }

    /// Of what one piece serves several repairs, each has a part.
    private static String count(double amount) { return amount > 0 && amount < 0.5 ? "part of 1" : Words.number(amount, 0); }

    static String words(Repair.Need need, Units units) {
        return need.item() + ": " + switch (need.material().measure()) {
            case VOLUME -> Words.volume(need.amount(), units);
            case AREA -> Words.area(need.amount(), units);
            case COUNT -> count(need.amount());
        };
    }

    /// `2 × 12 ft`, `3 packs, 1.5 gal`.
    static String buy(OrderLine line, Units units) {
        String whole = words(line.measure(), line.buy(), units);
        return line.measure() == OrderLine.Measure.LENGTH ? Words.count(line.packs(), "length") + ", " + whole + " in all"
                : line.note().isEmpty() ? Words.count(line.packs(), "pack") + ", " + whole : line.note().split("; ")[0];
    }
}
