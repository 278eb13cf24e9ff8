package sillwright.sheet;

import java.util.List;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.measure.Csv;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.Tool;
import sillwright.work.WorkFindings.OrderLine;
import sillwright.work.cost.Line;

/// What to buy, and what tools to have at hand, as a table, RFC 4180, each amount a plain number with its unit in a column of its own.
public final class OrderSheet {
    private OrderSheet() {}

    static final List<String> HEADER = List.of("sort", "item", "need", "buy", "unit", "packs", "repairs", "price", "priced_by", "cost", "waste_percent", "note");

    public static String csv(Assessment assessment) {
        StringBuilder csv = new StringBuilder(Csv.line(HEADER));
        for (OrderLine line : assessment.work().order()) {
            Optional<Line> priced = assessment.work().plan().cost().line(line.item());
            Unit unit = unit(line.measure(), assessment.settings().units());
            csv.append(Csv.line(List.of(line.measure() == OrderLine.Measure.LENGTH ? "wood" : "material", line.item(), number(unit.fromOwn(line.need())), number(unit.fromOwn(line.buy())),
                    line.measure() == OrderLine.Measure.COUNT ? "pieces" : unit.symbol(), line.packs(),
                    String.join(" ", line.repairs()), priced.flatMap(Line::price).map(price -> number(price.money().mid())).orElse(""),
                    priced.flatMap(Line::price).map(price -> price.sold().text()).orElse(""), priced.flatMap(Line::likely).map(OrderSheet::number).orElse(""), number(100 * line.waste()), line.note())));
        }
        for (Tool tool : assessment.work().plan().tools())
            csv.append(Csv.line(List.of("tool", tool.words(), tool.count(), "", "pieces", "", String.join(" ", tool.repairs()), "", "", "", "", tool.job())));
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
