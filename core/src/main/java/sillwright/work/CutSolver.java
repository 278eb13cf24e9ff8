package sillwright.work;

import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Kind;
import sillwright.measure.Refused;

/// Lays pieces out on stock lengths. The core has a plain one, [FirstFit]; a solver may prove its answer.
@FunctionalInterface
public interface CutSolver {
    /// @param lengthsMm the pieces, net
    /// @param stock     the lengths there are, each at its price
    /// @param kerfMm    taken by each cut between two pieces
    /// @return for each bar the indices of the pieces in it
    Layout layOn(List<Double> lengthsMm, List<Stock> stock, double kerfMm);

    /// On lengths that are sold by the length, any number of each.
    default Layout lay(List<Double> lengthsMm, List<Double> stockMm, double kerfMm) { return layOn(lengthsMm, stockMm.stream().map(Stock::sold).toList(), kerfMm); }

    /// A length that wood comes in.
    ///
    /// @param lengthMm of the bar
    /// @param price    of one, in any money; its length where it is sold by that
    /// @param count    how many there are; [#ANY] where as many as are wanted
    /// @param flaws    stretches of it that no piece may have in it; none where it is sold unseen. Only [Boards] knows them: a solver is handed the good stretches between
    record Stock(double lengthMm, double price, int count, List<Flaw> flaws) {
        public static final int ANY = Integer.MAX_VALUE;

        public Stock {
            flaws = List.copyOf(flaws);
            if (!(lengthMm > 0)) throw new Refused("stock", "{} is not a length", "name a length such as 8ft", new Answer.Measured(lengthMm, Kind.LENGTH));
            if (!(price >= 0 && price < 1e9)) throw new Refused("stock", "{} is no price", "write a price from 0 up", price);
            if (count < 1) throw new Refused("stock", "there are {} of it", "leave out a length that there is none of", count);
            for (Flaw flaw : flaws)
                if (flaw.toMm() > lengthMm + 0.5) throw new Refused("defects", "a defect to {} lies past the end of a board of {}", "measure defects and length from the same end",
                        new Answer.Measured(flaw.toMm(), Kind.LENGTH), new Answer.Measured(lengthMm, Kind.LENGTH));
            if (!flaws.isEmpty() && count == ANY) throw new Refused("defects", "they stand with a length that is sold in any number", "write the count of the boards that were looked at, such as 1");
        }

        public Stock(double lengthMm, double price, int count) { this(lengthMm, price, count, List.of()); }

        /// Sold by the length, as many as are wanted.
        public static Stock sold(double lengthMm) { return new Stock(lengthMm, lengthMm, ANY); }

        public boolean any() { return count == ANY; }
    }

    /// A stretch of a board that no piece may have in it: a knot, a shake, wane.
    ///
    /// @param fromMm from the marked end of the board
    record Flaw(double fromMm, double toMm) {
        public Flaw {
            if (!(fromMm >= 0 && toMm > fromMm)) throw new Refused("defects", "a defect from {} to {} has no length", "write it from its nearer edge to its further one, such as 14in-17in",
                    new Answer.Measured(fromMm, Kind.LENGTH), new Answer.Measured(toMm, Kind.LENGTH));
        }
    }

    /// @param bars  each bar with what is sawn from it
    /// @param bound no layout costs less than this; in the money of the prices, mm where stock is sold by length
    record Layout(List<Cut> bars, double bound) {
        public Layout { bars = List.copyOf(bars); }

        public double usedMm() { return bars.stream().mapToDouble(Cut::stockMm).sum(); }

        /// What all bars cost.
        public double cost() { return bars.stream().mapToDouble(Cut::price).sum(); }

        /// The bound where stock is sold by length.
        public double boundMm() { return bound; }

        /// The most that a better layout could save, as a fraction of what this one costs; 0 where it is proven.
        public double gap() {
            double cost = cost(), gap = cost > 0 ? 1 - bound / cost : 0;
            return gap < 1e-9 ? 0 : gap;
        }

        public boolean proven() { return gap() == 0; }
    }

    /// One bar.
    ///
    /// @param pieces   indices, from the marked end on
    /// @param startsMm where each begins; empty where they follow each other from the end, a kerf between
    /// @param flaws    of the board
    record Cut(double stockMm, double price, List<Integer> pieces, List<Double> startsMm, List<Flaw> flaws) {
        public Cut {
            pieces = List.copyOf(pieces);
            startsMm = List.copyOf(startsMm);
            flaws = List.copyOf(flaws);
        }

        public Cut(double stockMm, double price, List<Integer> pieces) { this(stockMm, price, pieces, List.of(), List.of()); }
    }
}
