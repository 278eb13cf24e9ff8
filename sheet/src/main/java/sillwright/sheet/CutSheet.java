package sillwright.sheet;

import java.util.List;

import sillwright.Assessment;
import sillwright.measure.Csv;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.walk.Choice;
import sillwright.work.Repair;
import sillwright.work.WorkFindings.Bar;
import sillwright.work.WorkFindings.CutPlan;

/// The cut list as a table, RFC 4180: a row for each piece, in the order it is sawn from its stock length.
public final class CutSheet {
    private CutSheet() {}

    static final List<String> HEADER = List.of("species", "section", "quality", "width", "depth", "bar", "in_hand", "stock_length", "defects", "piece", "repair", "starts_at",
            "piece_length", "piece_width", "piece_depth", "set", "left_over", "unit");

    public static String csv(Assessment assessment) {
        Unit unit = assessment.settings().units() == Units.US ? Unit.INCH : Unit.MILLIMETRE;
        StringBuilder csv = new StringBuilder(Csv.line(HEADER));
        int number = 0;
        for (CutPlan plan : assessment.work().cuts())
            for (Bar bar : plan.bars()) {
                number++;
                for (int k = 0; k < bar.pieces().size(); k++) {
                    Repair.Piece piece = bar.pieces().get(k);
                    csv.append(Csv.line(List.of(plan.species(), plan.bought().name(), Choice.word(plan.quality()), in(unit, plan.widthMm()), in(unit, plan.depthMm()), number, bar.inHand() ? "yes" : "no", in(unit, bar.stockMm()),
                            String.join("; ", bar.flaws().stream().map(flaw -> in(unit, flaw.fromMm()) + "-" + in(unit, flaw.toMm())).toList()), piece.label(), piece.repair(), in(unit, bar.startsMm().get(k)),
                            in(unit, piece.lengthMm()), in(unit, piece.widthMm()), in(unit, piece.depthMm()), piece.set(), in(unit, bar.longestLeftMm()), unit.symbol())));
                }
            }
        return csv.toString();
    }

    private static String in(Unit unit, double mm) { return OrderSheet.number(unit.fromOwn(mm)); }
}
