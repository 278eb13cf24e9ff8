package sillwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Refused;
import sillwright.measure.Words;
import sillwright.work.CutSolver.Cut;
import sillwright.work.CutSolver.Layout;
import sillwright.work.CutSolver.Stock;
import sillwright.work.CutTables.Group;
import sillwright.work.CutTables.Sold;
import sillwright.work.CutTables.Wanted;

/// The figure `cut-list`: pieces laid out on the lengths that are sold, group by group, around defects, sets side by side.
final class CutFigure {
    static final int MOST_PIECES = CutTables.MOST_PIECES;

    private CutFigure() {}

    /// @param solver that lays the list out
    static Figure of(CutSolver solver) {
        return new Figure("cut-list", "work", "How to saw a list of pieces from the lengths that are sold, with the least stock, or with stock prices the least money.",
                List.of(Key.text("file", "a table (CSV) with columns length, count, label; set for pieces to be sawn side by side from one length (matched grain); species, grade and section, where pieces that differ in any "
                                + "come from different stock. Each length with its unit, count 1 where it is left out, or a column length_mm or length_in of bare numbers", "pieces.csv"),
                        Key.text("stock", "lengths that are sold, parted by commas, or a table (CSV) with columns length, price, count, defects, species, grade, section: price of one (0 for what lies in the rack), count where "
                                + "there are only so many, defects as stretches that no piece may have in it, 14in-17in; 5ft-5ft 3in, from the marked end; what is left empty serves all", "8ft,10ft,12ft"),
                        Key.of("kerf", Kind.LENGTH, "what one cut takes").within("0mm", "25mm").or("1/8in"),
                        Key.of("keep", Kind.LENGTH, "a rest as long as this is listed, to be kept").within("1mm", "20m").or("1ft")),
                Figure.gives("bars", "how many bars are sawn", "waste", "share of the stock that ends in no piece: kerfs, defects and ends", "proven", "whether no layout can cost less",
                        "gap", "the most that a better layout could save, as a fraction of the cost; 0 where it is proven", "used", "length of all bars", "net", "length of all pieces", "left", "length of what is left over: in no piece, no cut, no defect",
                        "cost", "what the bars cost by the stock table; their length in mm where it gives no price", "bound", "no layout costs less than this", "pieces", "how many pieces", "groups", "how many sorts of stock they come from",
                        "layout", "how each bar is sawn; like bars counted together", "leftOver", "the rests to keep, each bar's longest, like ones counted together"),
                List.of(Basis.memory("Gilmore and Gomory (1961)", "patterns made as they are needed; bars in fractions for the bound"), Basis.memory("Martello and Toth, Knapsack Problems (1990)", "ch. 8: first fit, and bounds on the number of bars")),
                "file=examples/pieces.csv stock=8ft,10ft,12ft kerf=1/8in", (in, out) -> work(solver, in, out));
    }

    /// One group and how it is sawn.
    private record Sawn(Group group, List<Wanted> pieces, Layout layout) {
        double netMm() { return pieces.stream().mapToDouble(Wanted::lengthMm).sum(); }

        List<Double> lengths(Cut bar) { return bar.pieces().stream().map(i -> pieces.get(i).lengthMm()).toList(); }

        List<Double> left(Cut bar, double kerf) { return Boards.left(bar.stockMm(), bar.startsMm(), lengths(bar), bar.flaws(), kerf); }
    }

    private static void work(CutSolver solver, Inputs in, Answer.Sheet out) {
        List<Wanted> wanted = CutTables.pieces(in);
        boolean[] priced = {false};
        List<Sold> stock = CutTables.stock(in, priced);
        double kerf = in.own("kerf"), used = 0, net = 0, left = 0, cost = 0, bound = 0;
        Map<Group, List<Wanted>> groups = new LinkedHashMap<>();
        for (Wanted piece : wanted) groups.computeIfAbsent(piece.group(), _ -> new ArrayList<>()).add(piece);
        for (Sold one : stock)
            if (!one.stock().any() && groups.keySet().stream().filter(one.group()::serves).count() > 1)
                throw in.refuse("stock", "a length of {} of which there are only so many would serve several sorts of pieces", "name its species, grade and section as the pieces have them", said(one.stock().lengthMm()));
        List<Sawn> all = new ArrayList<>();
        for (Map.Entry<Group, List<Wanted>> group : groups.entrySet()) all.add(sawn(solver, in, group.getKey(), group.getValue(), stock.stream().filter(one -> one.group().serves(group.getKey())).map(Sold::stock).toList(), kerf));
        int bars = 0;
        for (Sawn one : all) {
            bars += one.layout.bars().size();
            used += one.layout.usedMm();
            net += one.netMm();
            cost += one.layout.cost();
            bound += one.layout.bound();
            for (Cut bar : one.layout.bars()) left += one.left(bar, kerf).stream().mapToDouble(Double::doubleValue).sum();
        }
        boolean proven = all.stream().allMatch(one -> one.layout.proven());
        double gap = proven || cost <= 0 ? 0 : 1 - bound / cost;
        out.put("bars", bars, Kind.NUMBER).put("waste", used > 0 ? 1 - net / used : 0, Kind.FRACTION).put("proven", proven).put("gap", gap, Kind.FRACTION).put("used", used, Kind.SPAN).put("net", net, Kind.SPAN)
                .put("left", left, Kind.SPAN).put("cost", cost, Kind.NUMBER).put("bound", bound, Kind.NUMBER).put("pieces", wanted.size(), Kind.NUMBER).put("groups", all.size(), Kind.NUMBER)
                .put("layout", String.join("; ", all.stream().map(CutFigure::words).toList())).put("leftOver", kept(all, kerf, in.own("keep")));
        if (!proven) out.beware("the search stopped before the proof: a better layout may save up to " + Words.number(100 * gap, 2) + " % of the stock's cost, or nothing");
        if (!priced[0]) out.beware("no price was given, so the least length of stock is sought; a table with prices seeks the least money");
        out.beware("lengths are net: allow for squaring the ends, and look at each board for knots, checks and bow before it is sawn");
    }

    private static Sawn sawn(CutSolver solver, Inputs in, Group group, List<Wanted> pieces, List<Stock> stock, double kerf) {
        double longest = stock.stream().filter(Stock::any).mapToDouble(Stock::lengthMm).max().orElse(0);
        String where = group.words().isEmpty() ? "" : " (" + group.words() + ")";
        if (longest == 0) throw in.refuse("stock", "no length is sold{} in any number", "add a row that it can be bought from, its count left empty", where);
        for (Wanted piece : pieces)
            if (FirstFit.micron(piece.lengthMm()) > FirstFit.micron(longest))
                throw in.refuse("file", "'{}'{}, {} long, is longer than the longest stock of {}", "add a stock length that carries it, or splice the piece", piece.label(), where, said(piece.lengthMm()), said(longest));
        Map<String, Double> sets = new LinkedHashMap<>();
        for (Wanted piece : pieces) if (!piece.set().isEmpty()) sets.merge(piece.set(), piece.lengthMm(), (a, b) -> a + kerf + b);
        sets.forEach((set, mm) -> {
            if (FirstFit.micron(mm) > FirstFit.micron(longest)) throw in.refuse("file", "the pieces of set '{}' take {} together, longer than the longest stock of {}", "add a stock length that carries them, or part the set", set, said(mm), said(longest));
        });
        try {
            return new Sawn(group, pieces, Boards.lay(pieces.stream().map(Wanted::lengthMm).toList(), pieces.stream().map(Wanted::set).toList(), stock, kerf, solver));
        } catch (Refused refused) {
            throw in.refuse("stock", refused);
        }
    }

    private static Answer.Measured said(double mm) { return new Answer.Measured(mm, Kind.LENGTH); }

    /// `2 × 3.048 m: rail 2.1 m, rail 0.9 m`
    private static String words(Sawn sawn) {
        Map<String, Integer> like = new LinkedHashMap<>();
        for (Cut bar : sawn.layout.bars()) like.merge(mm(bar.stockMm()) + ": " + (bar.flaws().isEmpty() ? counted(bar, sawn.pieces) : placed(bar, sawn.pieces)), 1, Integer::sum);
        return (sawn.group.words().isEmpty() ? "" : "from " + sawn.group.words() + " ") + String.join("; ", like.entrySet().stream().map(one -> one.getValue() + " × " + one.getKey()).toList());
    }

    private static String counted(Cut bar, List<Wanted> pieces) {
        Map<String, Integer> in = new TreeMap<>();
        for (int i : bar.pieces()) in.merge(pieces.get(i).label() + " " + mm(pieces.get(i).lengthMm()), 1, Integer::sum);
        return String.join(", ", in.entrySet().stream().map(one -> (one.getValue() > 1 ? one.getValue() + " × " : "") + one.getKey()).toList());
    }

    /// With where each begins, since it must keep clear of defects.
    private static String placed(Cut bar, List<Wanted> pieces) {
        List<String> all = new ArrayList<>();
        for (int k = 0; k < bar.pieces().size(); k++) {
            Wanted piece = pieces.get(bar.pieces().get(k));
            all.add(piece.label() + " " + mm(piece.lengthMm()) + " from " + mm(bar.startsMm().get(k)));
        }
        return String.join(", ", all);
    }

    private static String kept(List<Sawn> all, double kerf, double least) {
        Map<String, Integer> like = new LinkedHashMap<>();
        for (Sawn one : all) for (Cut bar : one.layout.bars()) {
            double longest = one.left(bar, kerf).stream().mapToDouble(Double::doubleValue).max().orElse(0);
            if (longest >= least) like.merge((one.group.words().isEmpty() ? "" : one.group.words() + " ") + mm(longest), 1, Integer::sum);
        }
        return like.isEmpty() ? "none" : String.join(", ", like.entrySet().stream().map(one -> one.getValue() + " × " + one.getKey()).toList());
    }

    private static String mm(double mm) { return Words.number(mm, 1) + " mm"; }
}
