package sillwright.work;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import sillwright.measure.Refused;
import sillwright.work.CutSolver.Cut;
import sillwright.work.CutSolver.Flaw;
import sillwright.work.CutSolver.Layout;
import sillwright.work.CutSolver.Stock;

/// Lays a list out where boards have defects and pieces belong together, by any solver that knows of neither.
///
/// Pieces of one set are sawn one after another from one good stretch, so they count as a single length with the kerfs between. A board with defects is so many good
/// stretches: once it is paid for they are bars that cost nothing. Of boards that have a price every number from none to all is tried, so a proof of each is a proof of the
/// whole.
public final class Boards {
    /// So many choices of priced boards with defects are tried at the most.
    static final int MOST_CHOICES = 64;

    private final List<Double> lengths;
    private final List<List<Integer>> units;
    private final List<Stock> plain = new ArrayList<>(), flawed = new ArrayList<>();
    private final double kerf;
    private final CutSolver solver;

    private Boards(List<Double> lengths, List<String> sets, List<Stock> stock, double kerf, CutSolver solver) {
        this.lengths = lengths;
        this.units = units(sets);
        this.kerf = kerf;
        this.solver = solver;
        for (Stock one : stock) (one.flaws().isEmpty() ? plain : flawed).add(one);
    }

    /// @param sets name of the set that each piece belongs to, empty for none
    /// @throws Refused where a set is longer than any length that is sold
    public static Layout lay(List<Double> lengths, List<String> sets, List<Stock> stock, double kerf, CutSolver solver) { return new Boards(lengths, sets, stock, kerf, solver).lay(); }

    private static List<List<Integer>> units(List<String> sets) {
        Map<String, List<Integer>> named = new LinkedHashMap<>();
        List<List<Integer>> all = new ArrayList<>();
        for (int i = 0; i < sets.size(); i++) {
            List<Integer> unit = sets.get(i).isEmpty() ? new ArrayList<>() : named.computeIfAbsent(sets.get(i), _ -> new ArrayList<>());
            if (unit.isEmpty()) all.add(unit);
            unit.add(i);
        }
        return all;
    }

    private Layout lay() {
        List<int[]> choices = choices();
        Layout best = null;
        double bound = Double.POSITIVE_INFINITY;
        for (int[] taken : choices) {
            double paid = 0;
            for (int s = 0; s < taken.length; s++) paid += taken[s] * flawed.get(s).price();
            Layout inner = solver.layOn(units.stream().map(this::length).toList(), bars(taken), kerf), whole = whole(inner, taken);
            bound = Math.min(bound, paid + inner.bound());
            if (best == null || whole.cost() < best.cost() - 1e-9) best = whole;
        }
        return new Layout(best.bars(), Math.min(bound, best.cost()));
    }

    private double length(List<Integer> unit) { return unit.stream().mapToDouble(lengths::get).sum() + kerf * (unit.size() - 1); }

    /// How many of each flawed board are taken: all of what costs nothing, any number of the others.
    private List<int[]> choices() {
        List<int[]> all = new ArrayList<>(List.of(new int[flawed.size()]));
        for (int s = 0; s < flawed.size(); s++) {
            Stock one = flawed.get(s);
            List<int[]> next = new ArrayList<>();
            for (int[] so : all) for (int n = one.price() > 0 ? 0 : one.count(); n <= one.count(); n++) {
                int[] with = so.clone();
                with[s] = n;
                next.add(with);
                if (next.size() > MOST_CHOICES) throw new Refused("stock", "there are more than {} ways to choose among the priced boards with defects", "give those that are in the rack the price 0", MOST_CHOICES);
            }
            all = next;
        }
        return all;
    }

    private List<Stock> bars(int[] taken) {
        List<Stock> all = new ArrayList<>(plain);
        for (int s = 0; s < taken.length; s++)
            if (taken[s] > 0) for (Flaw good : good(flawed.get(s), kerf)) all.add(new Stock(good.toMm() - good.fromMm(), 0, taken[s]));
        return all;
    }

    /// Good stretches of a board. A defect narrower than a kerf is as wide as one, for the cut that takes it out.
    static List<Flaw> good(Stock board, double kerf) {
        List<Flaw> good = new ArrayList<>();
        double from = 0;
        for (Flaw flaw : board.flaws().stream().sorted(Comparator.comparingDouble(Flaw::fromMm)).toList()) {
            if (flaw.fromMm() - from > 0.001) good.add(new Flaw(from, flaw.fromMm()));
            from = Math.max(from, Math.max(flaw.toMm(), flaw.fromMm() + kerf));
        }
        if (board.lengthMm() - from > 0.001) good.add(new Flaw(from, board.lengthMm()));
        return good;
    }

    /// The bars of the solver put back on their boards, their units taken apart again.
    private Layout whole(Layout inner, int[] taken) {
        Map<Long, Deque<int[]>> free = new TreeMap<>();
        for (int s = 0; s < taken.length; s++) {
            List<Flaw> good = good(flawed.get(s), kerf);
            for (int n = 0; n < taken[s]; n++) for (int g = 0; g < good.size(); g++)
                free.computeIfAbsent(FirstFit.micron(good.get(g).toMm() - good.get(g).fromMm()), _ -> new ArrayDeque<>()).add(new int[] {s, n, g});
        }
        List<Cut> bars = new ArrayList<>();
        Map<List<Integer>, List<Cut>> onBoards = new LinkedHashMap<>();
        for (Cut cut : inner.bars()) {
            List<Integer> pieces = cut.pieces().stream().flatMap(unit -> units.get(unit).stream()).toList();
            Deque<int[]> places = cut.price() == 0 ? free.getOrDefault(FirstFit.micron(cut.stockMm()), new ArrayDeque<>()) : new ArrayDeque<>();
            if (places.isEmpty()) bars.add(new Cut(cut.stockMm(), cut.price(), pieces, follow(of(pieces), 0, kerf), List.of()));
            else {
                int[] place = places.poll();
                double from = good(flawed.get(place[0]), kerf).get(place[2]).fromMm();
                onBoards.computeIfAbsent(List.of(place[0], place[1]), _ -> new ArrayList<>()).add(new Cut(cut.stockMm(), 0, pieces, follow(of(pieces), from, kerf), List.of()));
            }
        }
        onBoards.forEach((board, cuts) -> {
            Stock stock = flawed.get(board.getFirst());
            cuts.sort(Comparator.comparingDouble(cut -> cut.startsMm().getFirst()));
            bars.add(new Cut(stock.lengthMm(), stock.price(), cuts.stream().flatMap(cut -> cut.pieces().stream()).toList(), cuts.stream().flatMap(cut -> cut.startsMm().stream()).toList(), stock.flaws()));
        });
        return new Layout(bars, Math.min(inner.bound(), bars.stream().mapToDouble(Cut::price).sum()));
    }

    private List<Double> of(List<Integer> pieces) { return pieces.stream().map(lengths::get).toList(); }

    /// Where pieces begin that follow each other, a kerf between.
    static List<Double> follow(List<Double> lengths, double fromMm, double kerf) {
        List<Double> starts = new ArrayList<>();
        double at = fromMm;
        for (double length : lengths) {
            starts.add(at);
            at += length + kerf;
        }
        return starts;
    }

    /// The stretches of a bar that are in no piece, no cut and no defect, in order; shorter than a kerf is nothing.
    public static List<Double> left(double stockMm, List<Double> startsMm, List<Double> lengths, List<Flaw> flaws, double kerf) {
        List<Flaw> taken = new ArrayList<>(flaws);
        for (int i = 0; i < startsMm.size(); i++) taken.add(new Flaw(Math.max(0, startsMm.get(i) - kerf), startsMm.get(i) + lengths.get(i) + kerf));
        List<Double> left = new ArrayList<>();
        double from = 0;
        for (Flaw one : taken.stream().sorted(Comparator.comparingDouble(Flaw::fromMm)).toList()) {
            if (one.fromMm() - from > kerf) left.add(one.fromMm() - from);
            from = Math.max(from, one.toMm());
        }
        if (stockMm - from > kerf) left.add(stockMm - from);
        return left;
    }
}
