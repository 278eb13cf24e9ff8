package sillwright.sheet;

import java.util.List;

import sillwright.Assessment;
import sillwright.measure.Csv;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.WorkFindings.OrderLine;

/// What to buy as a table, RFC 4180, each amount a plain number with its unit in a column of its own.
public final class OrderSheet {
    private OrderSheet() {}

    static final List<String> HEADER = List.of("item", "need", "buy", "unit", "packs", "repairs");

    public static String csv(Assessment assessment) {
        StringBuilder csv = new StringBuilder(Csv.line(HEADER));
        for (OrderLine line : assessment.work().order()) {
            Unit unit = unit(line.measure(), assessment.settings().units());
            csv.append(Csv.line(List.of(line.item(), number(unit.fromOwn(line.need())), number(unit.fromOwn(line.buy())),
                    line.measure() == OrderLine.Measure.COUNT ? "pieces" : unit.symbol(), line.packs(),
                    String.join(" ", line.repairs()))));
        }
        return csv.toString();
    }

    static Unit unit(OrderLine.Measure measure, Units units) {
        boolean us = units == Units.US;
        return switch (measure) {
            case VOLUME -> us ? Unit.FLUID_OUNCE : Unit.MILLILITRE;
            case AREA -> us ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
            case COUNT -> Unit.NUMBER;
            case LENGTH -> us ? Unit.FOOT : Unit.METRE;
        };
    }

    static String number(double value) { return Words.number(value, 3); }
}
