package sillwright.work;

import java.time.LocalDate;
import java.util.List;

import sillwright.measure.Basis;

/// What the work stage settled.
///
/// @param repairs  the first to be done first
/// @param order    what to buy
/// @param cuts     new wood laid out on the lengths that are sold
/// @param tasks    the order of work
/// @param safety   how to work safely, a plan for each side
/// @param gaps     what could not be worked, and what would let it be
public record WorkFindings(List<Repair> repairs, List<OrderLine> order, List<CutPlan> cuts, List<Task> tasks, List<SafeSide> safety, List<String> gaps) {
    public WorkFindings {
        repairs = List.copyOf(repairs);
        order = List.copyOf(order);
        cuts = List.copyOf(cuts);
        tasks = List.copyOf(tasks);
        safety = List.copyOf(safety);
        gaps = List.copyOf(gaps);
    }

    public List<Repair> urgent() { return repairs.stream().filter(Repair::urgent).toList(); }

    /// One line of what to buy.
    ///
    /// @param item    what
    /// @param measure how `need` and `buy` are counted; boards in mm of length
    /// @param need    net, all repairs together
    /// @param buy     with waste, in whole packs or lengths
    /// @param packs   how many packs or lengths that is
    /// @param repairs ids of the repairs that need it
    public record OrderLine(String item, Measure measure, double need, double buy, int packs, List<String> repairs) {
        public OrderLine { repairs = List.copyOf(repairs); }

        public enum Measure { VOLUME, AREA, COUNT, LENGTH }
    }

    /// Pieces of one species and section laid out on stock lengths.
    ///
    /// @param species of the stock
    /// @param widthMm net section of the stock
    /// @param bars    each stock length with the pieces sawn from it
    /// @param kerfMm  taken by each cut
    /// @param proven  true where no layout can use less
    /// @param gap     the most that a better layout could save, as a fraction of what this one uses
    public record CutPlan(String species, double widthMm, double depthMm, List<Bar> bars, double kerfMm, boolean proven, double gap) {
        public CutPlan { bars = List.copyOf(bars); }

        public double stockMm() { return bars.stream().mapToDouble(Bar::stockMm).sum(); }

        public double leftMm() { return bars.stream().mapToDouble(Bar::leftMm).sum(); }
    }

    /// One stock length and what is sawn from it.
    public record Bar(double stockMm, List<Repair.Piece> pieces, double leftMm) {
        public Bar { pieces = List.copyOf(pieces); }
    }

    /// One job in the order of work.
    ///
    /// @param id    `T1`
    /// @param kind  what sort of job
    /// @param start the first day
    /// @param end   the last day, inclusive
    /// @param after ids of the tasks that come before it
    /// @param refs  ids of the sources or repairs it serves
    public record Task(String id, TaskKind kind, String title, String words, LocalDate start, LocalDate end, List<String> after, List<String> refs) {
        public Task {
            after = List.copyOf(after);
            refs = List.copyOf(refs);
        }
    }

    /// In the order that the trade does them.
    public enum TaskKind { SET_UP, SHORE, STOP_WATER, DRY, OPEN_AND_CUT, CONSOLIDATE, JOIN, FILL, PRIME, COAT, CLEAN_UP }

    /// How to work safely on one side.
    ///
    /// @param side        id
    /// @param paintMm2    painted surface that the repairs disturb
    /// @param leadApplies whether the federal lead rule covers the work
    /// @param coverMm     how far the ground cover reaches from the wall
    /// @param barrier     whether a vertical barrier is wanted
    /// @param duties      one line each, with the rule's section
    /// @param cautions    heights, loads, dust, solvents, electricity
    public record SafeSide(String side, double paintMm2, boolean leadApplies, double coverMm, boolean barrier, List<String> duties, List<String> cautions,
                           List<Basis> basis) {
        public SafeSide {
            duties = List.copyOf(duties);
            cautions = List.copyOf(cautions);
            basis = List.copyOf(basis);
        }
    }
}
