package sillwright.sheet;

import java.util.List;

import sillwright.Assessment;
import sillwright.measure.Csv;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.work.Repair;
import sillwright.work.WorkFindings.Bar;
import sillwright.work.WorkFindings.CutPlan;

/// The cut list as a table, RFC 4180: a row for each piece, in the order it is sawn from its stock length.
public final class CutSheet {
    private CutSheet() {}

    static final List<String> HEADER = List.of("species", "width", "depth", "bar", "stock_length", "piece", "repair", "piece_length", "left_over",
            "unit");

    public static String csv(Assessment assessment) {
        Unit unit = assessment.settings().units() == Units.US ? Unit.INCH : Unit.MILLIMETRE;
        StringBuilder csv = new StringBuilder(Csv.line(HEADER));
        int number = 0;
        for (CutPlan plan : assessment.work().cuts())
            for (Bar bar : plan.bars()) {
                number++;
                for (Repair.Piece piece : bar.pieces())
                    csv.append(Csv.line(List.of(plan.species(), in(unit, plan.widthMm()), in(unit, plan.depthMm()), number, in(unit, bar.stockMm()),
                            piece.label(), piece.repair(), in(unit, piece.lengthMm()),
                            in(unit, bar.leftMm()), unit.symbol())));
            }
        return csv.toString();
    }

    private static String in(Unit unit, double mm) { return OrderSheet.number(unit.fromOwn(mm)); }
}
