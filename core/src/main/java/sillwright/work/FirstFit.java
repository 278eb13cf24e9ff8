package sillwright.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import sillwright.measure.Kind;
import sillwright.measure.Refused;

/// The plain way to lay pieces out: the longest first, each into the first bar with room for it.
///
/// Lengths count to the nearest thousandth of a millimetre. A bar of `n` pieces loses `n - 1` kerfs. The bound beside the
/// layout is a true one: it adds up what every layout must use, and rounds that up to a sum of lengths that are sold.
/// Source: first fit decreasing and the bounds of Martello and Toth, *Knapsack Problems* (1990), ch. 8 (from memory).
public final class FirstFit implements CutSolver {
    @Override
    public Layout lay(List<Double> lengthsMm, List<Double> stockMm, double kerfMm) {
        check(lengthsMm, stockMm, kerfMm);
        if (lengthsMm.isEmpty()) return new Layout(List.of(), 0);
        long kerf = micron(kerfMm);
        long[] pieces = lengthsMm.stream().mapToLong(length -> micron(length) + kerf).toArray();
        long[] stock = stockMm.stream().mapToLong(FirstFit::micron).distinct().sorted().toArray();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < pieces.length; i++) order.add(i);
        order.sort(Comparator.comparingLong((Integer i) -> -pieces[i]).thenComparing(i -> i));
        Layout best = null;
        long bound = bound(pieces, stock, kerf);
        for (long open : stock) best = better(best, firstFit(pieces, order, stock, open, kerf, bound));
        return better(best, fullest(pieces, order, stock, kerf, bound));
    }

    /// Refuses what cannot be laid out: no stock, a piece longer than every stock.
    public static void check(List<Double> lengthsMm, List<Double> stockMm, double kerfMm) {
        if (stockMm.isEmpty()) throw new Refused("stock", "no length is sold", "name at least one stock length, such as 8ft");
        for (double stock : stockMm) if (!(stock > 0)) throw new Refused("stock", "{} is not a length", "name a length such as 8ft", said(stock));
        if (!(kerfMm >= 0)) throw new Refused("kerf", "{} is less than nothing", "measure one cut of the saw, such as 1/8in", said(kerfMm));
        double longest = stockMm.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        for (double length : lengthsMm)
            if (!(length > 0 && micron(length) <= micron(longest)))
                throw new Refused("pieces", "a piece of {} cannot be cut from stock of {}", "add a stock length that carries it", said(length), said(longest));
    }

    private static sillwright.measure.Answer.Measured said(double mm) { return new sillwright.measure.Answer.Measured(mm, Kind.LENGTH); }

    /// Lengths are compared as whole thousandths of a millimetre, so that eight feet hold exactly eight feet.
    public static long micron(double mm) { return Math.round(mm * 1000); }

    private static Layout better(Layout best, Layout other) {
        if (best == null) return other;
        int less = Long.compare(micron(other.usedMm()), micron(best.usedMm()));
        return less < 0 || less == 0 && other.bars().size() < best.bars().size() ? other : best;
    }

    /// Opens bars of one length, or of the shortest that carries the piece where that one does not; at the end each bar
    /// is exchanged for the shortest that holds what is in it.
    private static Layout firstFit(long[] pieces, List<Integer> order, long[] stock, long open, long kerf, long bound) {
        List<List<Integer>> bars = new ArrayList<>();
        List<Long> room = new ArrayList<>(), filled = new ArrayList<>();
        for (int piece : order) {
            int bar = 0;
            while (bar < bars.size() && room.get(bar) < pieces[piece]) bar++;
            if (bar == bars.size()) {
                bars.add(new ArrayList<>());
                room.add((open + kerf >= pieces[piece] ? open : shortest(stock, pieces[piece] - kerf)) + kerf);
                filled.add(0L);
            }
            bars.get(bar).add(piece);
            room.set(bar, room.get(bar) - pieces[piece]);
            filled.set(bar, filled.get(bar) + pieces[piece]);
        }
        List<Cut> cuts = new ArrayList<>();
        for (int bar = 0; bar < bars.size(); bar++) cuts.add(new Cut(shortest(stock, filled.get(bar) - kerf) / 1000.0, bars.get(bar)));
        return new Layout(cuts, bound / 1000.0);
    }

    /// Fills one bar after another, each of the length that wastes the least of itself.
    private static Layout fullest(long[] pieces, List<Integer> order, long[] stock, long kerf, long bound) {
        List<Integer> left = new ArrayList<>(order);
        List<Cut> cuts = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Integer> best = List.of();
            double bestShare = -1;
            long bestStock = 0;
            for (long length : stock) {
                List<Integer> in = new ArrayList<>();
                long room = length + kerf;
                for (int piece : left) if (pieces[piece] <= room) { in.add(piece); room -= pieces[piece]; }
                double share = in.isEmpty() ? -1 : (length + kerf - room) / (double) length;
                if (share > bestShare) { best = in; bestShare = share; bestStock = length; }
            }
            left.removeAll(best);
            cuts.add(new Cut(bestStock / 1000.0, best));
        }
        return new Layout(cuts, bound / 1000.0);
    }

    private static long shortest(long[] stock, long length) {
        for (long one : stock) if (one >= length) return one;
        throw new IllegalStateException("checked before: " + length);
    }

    /// What no layout can go under, in thousandths of a millimetre.
    ///
    /// @param pieces with one kerf added to each
    /// @param stock  ascending
    static long bound(long[] pieces, long[] stock, long kerf) {
        long shortest = stock[0], longest = stock[stock.length - 1], sum = 0, alone = 0;
        for (long piece : pieces) {
            sum += piece;
            if (2 * piece > longest + kerf) alone += shortest(stock, piece - kerf);
        }
        // A bar of length s carries s + kerf of pieces so counted, and the shortest bar carries the most for its length.
        long filled = (long) Math.ceil(sum * (shortest / (double) (shortest + kerf)) - 1e-6);
        long least = Math.max(filled, alone);
        if (stock.length == 1) least = Math.max(least, bars(pieces, longest + kerf) * longest);
        return reachable(stock, least);
    }

    /// The least number of bars, of one length: Martello and Toth's second bound.
    private static long bars(long[] pieces, long room) {
        long most = 0;
        for (long small : pieces) {
            if (2 * small > room) continue;
            long own = 0, shared = 0, sharedSum = 0, smallSum = 0;
            for (long piece : pieces) {
                if (piece > room - small) own++;
                else if (2 * piece > room) { shared++; sharedSum += piece; }
                else if (piece >= small) smallSum += piece;
            }
            long over = smallSum - (shared * room - sharedSum);
            most = Math.max(most, own + shared + (over > 0 ? (over + room - 1) / room : 0));
        }
        return most;
    }

    /// The least sum of stock lengths that is not under `least`.
    public static long reachable(long[] stock, long least) {
        long step = 0;
        for (long length : stock) step = gcd(step, length);
        long steps = (least + step - 1) / step;
        if (steps > 200_000) return steps * step;
        boolean[] sums = new boolean[(int) (steps + stock[stock.length - 1] / step) + 1];
        sums[0] = true;
        for (int at = 0; at < sums.length; at++) {
            if (sums[at] && at >= steps) return at * step;
            for (long length : stock) if (sums[at] && at + length / step < sums.length) sums[(int) (at + length / step)] = true;
        }
        throw new IllegalStateException("some sum of the longest stock is always met");
    }

    private static long gcd(long a, long b) { return b == 0 ? a : gcd(b, a % b); }
}
