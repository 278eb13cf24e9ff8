package sillwright.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Basis;
import sillwright.work.stock.Nominal;
import sillwright.work.stock.Quality;

/// What the work stage settled.
///
/// @param repairs  the first to be done first
/// @param order    what to buy
/// @param cuts     new wood laid out on the lengths that are sold
/// @param tasks    the order of work
/// @param safety   how to work safely, a plan for each side
/// @param gaps     what could not be worked, and what would let it be
/// @param plan     what it takes besides: the money and the hours
public record WorkFindings(List<Repair> repairs, List<OrderLine> order, List<CutPlan> cuts, List<Task> tasks, List<SafeSide> safety, List<String> gaps, Plan plan) {
    public WorkFindings {
        repairs = List.copyOf(repairs);
        order = List.copyOf(order);
        cuts = List.copyOf(cuts);
        tasks = List.copyOf(tasks);
        safety = List.copyOf(safety);
        gaps = List.copyOf(gaps);
    }

    /// Without a plan.
    public WorkFindings(List<Repair> repairs, List<OrderLine> order, List<CutPlan> cuts, List<Task> tasks, List<SafeSide> safety, List<String> gaps) {
        this(repairs, order, cuts, tasks, safety, gaps, Plan.NONE);
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
    /// @param waste   put on the net need, a fraction; 0 for wood, of which the cut list shows every offcut
    /// @param note    how it is sold, and how it is counted or milled
    public record OrderLine(String item, Measure measure, double need, double buy, int packs, List<String> repairs, double waste, String note) {
        public OrderLine { repairs = List.copyOf(repairs); }

        /// Nothing more is to be said of it.
        public OrderLine(String item, Measure measure, double need, double buy, int packs, List<String> repairs) { this(item, measure, need, buy, packs, repairs, 0, ""); }

        public enum Measure { VOLUME, AREA, COUNT, LENGTH }
    }

    /// Pieces of one species, quality and bought section laid out on stock lengths.
    ///
    /// @param species of the stock
    /// @param bought  its section, as it is sold
    /// @param quality asked of it
    /// @param bars    each stock length with the pieces sawn from it
    /// @param kerfMm  taken by each cut
    /// @param proven  true where no layout can use less
    /// @param gap     the most that a better layout could save, as a fraction of what this one uses
    public record CutPlan(String species, Nominal bought, Quality quality, List<Bar> bars, double kerfMm, boolean proven, double gap) {
        public CutPlan { bars = List.copyOf(bars); }

        /// Of a section whose name is not known.
        public CutPlan(String species, double widthMm, double depthMm, List<Bar> bars, double kerfMm, boolean proven, double gap) {
            this(species, Nominal.net(widthMm, depthMm), Quality.FINISH, bars, kerfMm, proven, gap);
        }

        /// Greater side as it is delivered.
        public double widthMm() { return bought.wideMm(); }

        public double depthMm() { return bought.thinMm(); }

        public double stockMm() { return bars.stream().mapToDouble(Bar::stockMm).sum(); }

        /// What has to be bought of it: what lies in the rack is not.
        public double boughtMm() { return bars.stream().filter(bar -> !bar.inHand()).mapToDouble(Bar::stockMm).sum(); }

        public double leftMm() { return bars.stream().mapToDouble(Bar::leftMm).sum(); }
    }

    /// One stock length and what is sawn from it.
    ///
    /// @param leftMm   what is in no piece, no cut and no defect
    /// @param startsMm where each piece begins, from the marked end
    /// @param flaws    that pieces keep clear of
    /// @param inHand   it lies in the rack already
    public record Bar(double stockMm, List<Repair.Piece> pieces, double leftMm, List<Double> startsMm, List<CutSolver.Flaw> flaws, boolean inHand) {
        public Bar {
            pieces = List.copyOf(pieces);
            startsMm = List.copyOf(startsMm);
            flaws = List.copyOf(flaws);
        }

        /// Without defects, one piece after another from its end.
        public Bar(double stockMm, List<Repair.Piece> pieces, double leftMm) {
            this(stockMm, pieces, leftMm, Boards.follow(pieces.stream().map(Repair.Piece::lengthMm).toList(), 0, CutList.KERF_MM), List.of(), false);
        }

        /// The longest stretch of it that is left whole, mm.
        public double longestLeftMm() {
            return Boards.left(stockMm, startsMm, pieces.stream().map(Repair.Piece::lengthMm).toList(), flaws, CutList.KERF_MM).stream().mapToDouble(Double::doubleValue).max().orElse(0);
        }
    }

    /// What is long enough to keep: each bar's longest rest.
    ///
    /// @param bar number of the bar, from 1 over the whole cut list
    public record LeftOver(int bar, String species, String name, double widthMm, double depthMm, double lengthMm) {}

    /// The rests that are worth keeping, in the order of the bars.
    public List<LeftOver> leftOvers() {
        List<LeftOver> all = new ArrayList<>();
        int number = 0;
        for (CutPlan plan : cuts) for (Bar bar : plan.bars()) {
            number++;
            double left = bar.longestLeftMm();
            if (left >= CutList.KEEP_MM) all.add(new LeftOver(number, plan.species(), plan.bought().name(), plan.widthMm(), plan.depthMm(), left));
        }
        return all;
    }

    /// One job in the order of work.
    ///
    /// @param id    `T1`
    /// @param kind  what sort of job
    /// @param start the first day
    /// @param end   the last day, inclusive
    /// @param after ids of the tasks that come before it
    /// @param refs  ids of the sources or repairs it serves
    /// @param hours of work for one person; 0 for a wait
    /// @param lot   the repairs of one side that go together, as the title has it; empty where it is for the whole
    public record Task(String id, TaskKind kind, String title, String words, LocalDate start, LocalDate end, List<String> after, List<String> refs, double hours, String lot) {
        public Task {
            after = List.copyOf(after);
            refs = List.copyOf(refs);
        }

        /// Its hours not known, for the whole.
        public Task(String id, TaskKind kind, String title, String words, LocalDate start, LocalDate end, List<String> after, List<String> refs) {
            this(id, kind, title, words, start, end, after, refs, 0, "");
        }
    }

    /// In the order that the trade does them.
    public enum TaskKind { SET_UP, SHORE, STOP_WATER, OPEN_TO_DRY, DRY, OPEN_AND_CUT, CONSOLIDATE, JOIN, FILL, PRIME, COAT, CLEAN_UP }

    /// How to work safely on one side.
    ///
    /// @param side        id
    /// @param paintMm2    painted surface that the repairs disturb
    /// @param leadApplies whether the federal lead rule covers the work
    /// @param coverMm     how far the ground cover reaches from the wall
    /// @param sheetingMm2 ground to be covered; 0 where the rule asks for none
    /// @param barrier     whether a vertical barrier is wanted
    /// @param duties      one line each, with the rule's section
    /// @param cautions    heights, loads, dust, solvents, electricity
    /// @param plan        the same drawn: sheets, stands, props, what is closed
    public record SafeSide(String side, double paintMm2, boolean leadApplies, double coverMm, double sheetingMm2, boolean barrier, List<String> duties, List<String> cautions,
                           List<Basis> basis, SafePlan plan) {
        public SafeSide {
            duties = List.copyOf(duties);
            cautions = List.copyOf(cautions);
            basis = List.copyOf(basis);
        }

        /// Not drawn, its sheeting not known.
        public SafeSide(String side, double paintMm2, boolean leadApplies, double coverMm, boolean barrier, List<String> duties, List<String> cautions, List<Basis> basis) {
            this(side, paintMm2, leadApplies, coverMm, 0, barrier, duties, cautions, basis, SafePlan.NONE);
        }
    }
}
