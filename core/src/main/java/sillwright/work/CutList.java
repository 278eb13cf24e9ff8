package sillwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.Repair.Piece;
import sillwright.work.WorkFindings.Bar;
import sillwright.work.WorkFindings.CutPlan;

/// New wood of like species and section together, laid out on the lengths that are sold.
///
/// @param plans one for each species and section
/// @param over  pieces that no stock length carries
record CutList(List<CutPlan> plans, List<Piece> over) {
    /// A saw cut: 1/8 in.
    static final double KERF_MM = 3.175;

    private record Stock(String species, long widthTenths, long depthTenths) {
        static Stock of(Piece piece) {
            double thin = Math.min(piece.widthMm(), piece.depthMm()), wide = Math.max(piece.widthMm(), piece.depthMm());
            return new Stock(piece.species(), Math.round(wide * 10), Math.round(thin * 10));
        }
    }

    static CutList of(List<Repair> repairs, List<Double> stockMm, CutSolver solver) {
        double longest = stockMm.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        Map<Stock, List<Piece>> groups = new LinkedHashMap<>();
        List<Piece> over = new ArrayList<>();
        for (Repair repair : repairs)
            for (Piece piece : repair.pieces()) {
                if (FirstFit.micron(piece.lengthMm()) > FirstFit.micron(longest)) over.add(piece);
                else groups.computeIfAbsent(Stock.of(piece), _ -> new ArrayList<>()).add(piece);
            }
        List<CutPlan> plans = new ArrayList<>();
        groups.forEach((stock, pieces) -> plans.add(plan(stock, pieces, stockMm, solver)));
        return new CutList(List.copyOf(plans), List.copyOf(over));
    }

    private static CutPlan plan(Stock stock, List<Piece> pieces, List<Double> stockMm, CutSolver solver) {
        CutSolver.Layout layout = solver.lay(pieces.stream().map(Piece::lengthMm).toList(), stockMm, KERF_MM);
        List<Bar> bars = new ArrayList<>();
        for (CutSolver.Cut cut : layout.bars()) {
            List<Piece> in = cut.pieces().stream().map(pieces::get).toList();
            double sawn = in.stream().mapToDouble(Piece::lengthMm).sum() + KERF_MM * (in.size() - 1);
            bars.add(new Bar(cut.stockMm(), in, Math.max(0, cut.stockMm() - sawn)));
        }
        double gap = Math.max(0, 1 - layout.boundMm() / layout.usedMm());
        return new CutPlan(stock.species(), stock.widthTenths() / 10.0, stock.depthTenths() / 10.0, bars, KERF_MM, gap < 1e-6, gap < 1e-6 ? 0 : gap);
    }

    static String section(double widthMm, double depthMm, Units units) { return Words.length(depthMm, units) + " × " + Words.length(widthMm, units) + " net"; }
}
