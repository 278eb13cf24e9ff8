package sillwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.CutSolver.Cut;
import sillwright.work.Repair.Piece;
import sillwright.work.WorkFindings.Bar;
import sillwright.work.WorkFindings.CutPlan;
import sillwright.work.stock.Nominal;
import sillwright.work.stock.Quality;
import sillwright.work.stock.Supply;

/// New wood that is bought alike laid out together: one species, one quality, one section by name. What lies in the rack is used first, around its defects.
///
/// @param plans  one for each species, quality and section
/// @param over   pieces that no stock length carries
/// @param parted names of sets that no stock length carries whole, so that their pieces are sawn apart
record CutList(List<CutPlan> plans, List<Piece> over, List<String> parted) {
    /// A saw cut: 1/8 in.
    static final double KERF_MM = 3.175;
    /// A rest this long is kept, mm: 1 ft. Own choice.
    static final double KEEP_MM = 304.8;

    private record Group(String species, Nominal bought, Quality quality) {
        static Group of(Piece piece, Units units) { return new Group(piece.species(), Nominal.of(piece.widthMm(), piece.depthMm(), Supply.of(piece.species()), units), piece.quality()); }
    }

    static CutList of(List<Repair> repairs, List<Double> stockMm, CutSolver solver, Rack rack, Units units) {
        double longest = stockMm.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        Map<Group, List<Piece>> groups = new LinkedHashMap<>();
        List<Piece> over = new ArrayList<>();
        for (Repair repair : repairs)
            for (Piece piece : repair.pieces()) {
                if (FirstFit.micron(piece.lengthMm()) > FirstFit.micron(longest)) over.add(piece);
                else groups.computeIfAbsent(Group.of(piece, units), _ -> new ArrayList<>()).add(piece);
            }
        List<CutPlan> plans = new ArrayList<>();
        List<String> parted = new ArrayList<>();
        int[] left = rack.boards().stream().mapToInt(Rack.Board::count).toArray();
        groups.forEach((group, pieces) -> plans.add(plan(group, pieces, stockMm, solver, rack, left, parted)));
        return new CutList(List.copyOf(plans), List.copyOf(over), List.copyOf(parted));
    }

    /// @param left how many of each board of the rack there still are
    private static CutPlan plan(Group group, List<Piece> pieces, List<Double> stockMm, CutSolver solver, Rack rack, int[] left, List<String> parted) {
        List<CutSolver.Stock> stock = new ArrayList<>(stockMm.stream().map(CutSolver.Stock::sold).toList());
        List<Integer> offered = new ArrayList<>();
        for (int b = 0; b < left.length; b++) {
            Rack.Board board = rack.boards().get(b);
            if (left[b] == 0 || !pieces.stream().allMatch(board::carries)) continue;
            offered.add(b);
            stock.add(new CutSolver.Stock(board.lengthMm(), 0, left[b], board.flaws()));
        }
        CutSolver.Layout layout = Boards.lay(pieces.stream().map(Piece::lengthMm).toList(), sets(pieces, stockMm, parted), stock, KERF_MM, solver);
        List<Bar> bars = new ArrayList<>();
        for (Cut cut : layout.bars()) {
            List<Piece> in = cut.pieces().stream().map(pieces::get).toList();
            boolean inHand = cut.price() == 0;
            if (inHand) taken(cut, rack, offered).ifPresent(b -> left[b]--);
            double sawn = in.stream().mapToDouble(Piece::lengthMm).sum() + KERF_MM * (in.size() - 1) + cut.flaws().stream().mapToDouble(flaw -> flaw.toMm() - flaw.fromMm()).sum();
            bars.add(new Bar(cut.stockMm(), in, Math.max(0, cut.stockMm() - sawn), cut.startsMm(), cut.flaws(), inHand));
        }
        double gap = layout.gap();
        return new CutPlan(group.species(), group.bought(), group.quality(), bars, KERF_MM, gap < 1e-6, gap < 1e-6 ? 0 : gap);
    }

    private static Optional<Integer> taken(Cut cut, Rack rack, List<Integer> offered) {
        return offered.stream().filter(b -> rack.boards().get(b).lengthMm() == cut.stockMm() && rack.boards().get(b).flaws().equals(cut.flaws())).findFirst();
    }

    /// Their sets; none for those of a set that is longer than every length there is.
    private static List<String> sets(List<Piece> pieces, List<Double> stockMm, List<String> parted) {
        double longest = stockMm.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        Map<String, Double> whole = new LinkedHashMap<>();
        for (Piece piece : pieces) whole.merge(piece.set(), piece.lengthMm(), (a, b) -> a + KERF_MM + b);
        whole.forEach((set, mm) -> {
            if (!set.isEmpty() && mm > longest && !parted.contains(set)) parted.add(set);
        });
        return pieces.stream().map(piece -> parted.contains(piece.set()) ? "" : piece.set()).toList();
    }

    /// `5-1/2 in × 5-1/2 in net`
    static String section(double widthMm, double depthMm, Units units) {
        return Words.length(widthMm, units) + " × " + Words.length(depthMm, units) + " net";
    }
}
