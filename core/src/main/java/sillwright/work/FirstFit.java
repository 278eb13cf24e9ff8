package sillwright.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import sillwright.measure.Kind;
import sillwright.measure.Refused;

/// The plain way to lay pieces out: the longest first, each into the first bar with room for it.
///
/// Lengths count to the nearest thousandth of a millimetre. A bar of `n` pieces loses `n - 1` kerfs. Bars of which there are only so many are filled first
/// where they are cheaper by the length than what is sold. The bound beside the layout is a true one: it adds up what every layout must use, and rounds that up to a sum of prices.
/// Source: first fit decreasing and the bounds of Martello and Toth, *Knapsack Problems* (1990), ch. 8 (from memory).
public final class FirstFit implements CutSolver {
    @Override
    public Layout layOn(List<Double> lengthsMm, List<Stock> given, double kerfMm) {
        check(lengthsMm, given, kerfMm);
        if (lengthsMm.isEmpty()) return new Layout(List.of(), 0);
        long kerf = micron(kerfMm);
        long[] pieces = lengthsMm.stream().mapToLong(length -> micron(length) + kerf).toArray();
        List<Stock> stock = worthwhile(given), few = given.stream().filter(one -> !one.any()).toList();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < pieces.length; i++) order.add(i);
        order.sort(Comparator.comparingLong((Integer i) -> -pieces[i]).thenComparing(i -> i));
        double bound = bound(pieces, stock, few, kerf) / 1000.0;
        Layout best = few.isEmpty() ? null : plain(pieces, order, stock, List.of(), kerf, bound);
        return better(best, plain(pieces, order, stock, few, kerf, bound));
    }

    private static Layout plain(long[] pieces, List<Integer> order, List<Stock> stock, List<Stock> few, long kerf, double bound) {
        List<Integer> left = new ArrayList<>(order);
        List<Cut> first = few(pieces, left, stock, few, kerf);
        Layout best = null;
        for (Stock open : stock) best = better(best, new Layout(joined(first, firstFit(pieces, left, stock, open, kerf)), bound));
        return better(best, new Layout(joined(first, fullest(pieces, left, stock, kerf)), bound));
    }

    private static List<Cut> joined(List<Cut> a, List<Cut> b) {
        List<Cut> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }

    /// Refuses what cannot be laid out: no stock, a piece longer than every stock of which there are enough.
    public static void check(List<Double> lengthsMm, List<Stock> stock, double kerfMm) {
        if (stock.stream().noneMatch(Stock::any)) throw new Refused("stock", "no length is sold", "name at least one stock length, such as 8ft");
        if (!(kerfMm >= 0)) throw new Refused("kerf", "{} is less than nothing", "measure one cut of the saw, such as 1/8in", said(kerfMm));
        double longest = stock.stream().filter(Stock::any).mapToDouble(Stock::lengthMm).max().orElseThrow();
        for (double length : lengthsMm)
            if (!(length > 0 && micron(length) <= micron(longest)))
                throw new Refused("pieces", "a piece of {} cannot be cut from stock of {}", "add a stock length that carries it", said(length), said(longest));
    }

    private static sillwright.measure.Answer.Measured said(double mm) { return new sillwright.measure.Answer.Measured(mm, Kind.LENGTH); }

    /// Lengths are compared as whole thousandths of a millimetre, so that eight feet hold exactly eight feet; prices as whole thousandths too.
    public static long micron(double mm) { return Math.round(mm * 1000); }

    /// The lengths that are sold, the shortest first, without any that a longer one undercuts.
    public static List<Stock> worthwhile(List<Stock> stock) {
        List<Stock> sorted = stock.stream().filter(Stock::any).sorted(Comparator.comparingDouble(Stock::lengthMm).thenComparing(Comparator.comparingDouble(Stock::price).reversed())).toList(), kept = new ArrayList<>();
        for (Stock one : sorted) {
            kept.removeIf(shorter -> micron(shorter.price()) >= micron(one.price()) || micron(shorter.lengthMm()) == micron(one.lengthMm()));
            kept.add(one);
        }
        return kept;
    }

    private static Layout better(Layout best, Layout other) {
        if (best == null) return other;
        int less = Long.compare(micron(other.cost()), micron(best.cost()));
        return less < 0 || less == 0 && other.bars().size() < best.bars().size() ? other : best;
    }

    /// Fills what there are only so many of, while each costs less by the length than the cheapest that is sold; what goes in is taken from `left`.
    private static List<Cut> few(long[] pieces, List<Integer> left, List<Stock> stock, List<Stock> few, long kerf) {
        double sold = stock.stream().mapToDouble(one -> one.price() / one.lengthMm()).min().orElseThrow();
        List<Cut> cuts = new ArrayList<>();
        for (Stock one : few.stream().sorted(Comparator.comparingDouble((Stock bar) -> bar.price() / bar.lengthMm()).thenComparingDouble(Stock::lengthMm)).toList())
            for (int n = 0; n < one.count() && !left.isEmpty(); n++) {
                List<Integer> in = new ArrayList<>();
                long room = micron(one.lengthMm()) + kerf, filled = 0;
                for (int piece : left) if (pieces[piece] <= room) {
                    in.add(piece);
                    room -= pieces[piece];
                    filled += pieces[piece];
                }
                if (in.isEmpty() || one.price() > filled / 1000.0 * sold) break;
                left.removeAll(in);
                cuts.add(new Cut(one.lengthMm(), one.price(), in));
            }
        return cuts;
    }

    /// Opens bars of one length, or of the cheapest that carries the piece where that one does not; at the end each bar
    /// is exchanged for the cheapest that holds what is in it.
    private static List<Cut> firstFit(long[] pieces, List<Integer> order, List<Stock> stock, Stock open, long kerf) {
        List<List<Integer>> bars = new ArrayList<>();
        List<Long> room = new ArrayList<>(), filled = new ArrayList<>();
        for (int piece : order) {
            int bar = 0;
            while (bar < bars.size() && room.get(bar) < pieces[piece]) bar++;
            if (bar == bars.size()) {
                bars.add(new ArrayList<>());
                long length = micron(open.lengthMm());
                room.add((length + kerf >= pieces[piece] ? length : micron(cheapest(stock, pieces[piece] - kerf).lengthMm())) + kerf);
                filled.add(0L);
            }
            bars.get(bar).add(piece);
            room.set(bar, room.get(bar) - pieces[piece]);
            filled.set(bar, filled.get(bar) + pieces[piece]);
        }
        List<Cut> cuts = new ArrayList<>();
        for (int bar = 0; bar < bars.size(); bar++) {
            Stock one = cheapest(stock, filled.get(bar) - kerf);
            cuts.add(new Cut(one.lengthMm(), one.price(), bars.get(bar)));
        }
        return cuts;
    }

    /// Fills one bar after another, each of the sort that gives the most wood for its price.
    private static List<Cut> fullest(long[] pieces, List<Integer> order, List<Stock> stock, long kerf) {
        List<Integer> left = new ArrayList<>(order);
        List<Cut> cuts = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Integer> best = List.of();
            double bestShare = -1;
            Stock bestStock = stock.getFirst();
            for (Stock one : stock) {
                List<Integer> in = new ArrayList<>();
                long whole = micron(one.lengthMm()) + kerf, room = whole;
                for (int piece : left) if (pieces[piece] <= room) { in.add(piece); room -= pieces[piece]; }
                double share = in.isEmpty() ? -1 : (whole - room) / Math.max(1e-9, one.price());
                if (share > bestShare) { best = in; bestShare = share; bestStock = one; }
            }
            left.removeAll(best);
            cuts.add(new Cut(bestStock.lengthMm(), bestStock.price(), best));
        }
        return cuts;
    }

    /// @param stock as [#worthwhile] leaves it, so that the shortest is the cheapest
    private static Stock cheapest(List<Stock> stock, long length) {
        for (Stock one : stock) if (micron(one.lengthMm()) >= length) return one;
        throw new IllegalStateException("checked before: " + length);
    }

    /// What no layout can go under, in thousandths of the price.
    ///
    /// @param pieces with one kerf added to each
    static long bound(long[] pieces, List<Stock> stock, List<Stock> few, long kerf) {
        long longest = 0, sum = 0;
        double best = Double.POSITIVE_INFINITY, alone = 0, have = 0;
        for (Stock one : stock) {
            longest = Math.max(longest, micron(one.lengthMm()));
            best = Math.min(best, micron(one.price()) / (double) (micron(one.lengthMm()) + kerf));
        }
        // A bar of length s carries s + kerf of pieces so counted.
        for (Stock one : few) {
            have += (double) one.count() * (micron(one.lengthMm()) + kerf);
            longest = Math.max(longest, micron(one.lengthMm()));
        }
        for (long piece : pieces) {
            sum += piece;
            if (2 * piece > longest + kerf) alone += micron(cheapest(stock, piece - kerf).price());
        }
        long least = (long) Math.max(0, Math.ceil(best * (sum - have) - 1e-6));
        if (!few.isEmpty()) return least;
        least = Math.max(least, (long) alone);
        if (stock.size() == 1) least = Math.max(least, bars(pieces, longest + kerf) * micron(stock.getFirst().price()));
        return reachable(stock.stream().mapToLong(one -> micron(one.price())).toArray(), least);
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

    /// The least sum of these that is not under `least`.
    public static long reachable(long[] stock, long least) {
        if (least <= 0) return 0;
        long step = 0, greatest = 0;
        for (long length : stock) {
            step = gcd(step, length);
            greatest = Math.max(greatest, length);
        }
        if (step == 0) return least;
        long steps = (least + step - 1) / step;
        if (steps > 200_000 || greatest / step > 2_000_000) return steps * step;
        boolean[] sums = new boolean[(int) (steps + greatest / step) + 1];
        sums[0] = true;
        for (int at = 0; at < sums.length; at++) {
            if (sums[at] && at >= steps) return at * step;
            for (long length : stock) if (sums[at] && at + length / step < sums.length) sums[(int) (at + length / step)] = true;
        }
        throw new IllegalStateException("some sum of the longest stock is always met");
    }

    private static long gcd(long a, long b) { return b == 0 ? a : gcd(b, a % b); }
}
