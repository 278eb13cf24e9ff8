package sillwright.watch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;

import sillwright.measure.Basis;
import sillwright.measure.SplitMix;
import sillwright.measure.Words;
import sillwright.watch.LookAhead.Course;
import sillwright.watch.LookAhead.Kind;
import sillwright.watch.LookAhead.Spent;
import sillwright.water.WaterFindings;
import sillwright.wood.Capacity;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Forecast;
import sillwright.wood.Interval;
import sillwright.wood.Outlook;
import sillwright.wood.WoodFindings;
import sillwright.wood.drying.Dose;
import sillwright.work.Costing;
import sillwright.work.Repair;
import sillwright.work.Treatment;
import sillwright.work.WorkFindings;
import sillwright.work.cost.Range;

/// Draws many futures of a building and counts what each course leaves of it.
///
/// In a draw every damage is as great as its readings allow at one quantile and goes on as the dose-response forecast has it at another: what is
/// soft grows as its rating grows, and what its repair cuts, takes and costs grows with it. A member that bears load has come to its limit when its load uses up more than it has, or, where no load
/// is known, when less than three quarters of its section are left. Own choice, and screening only.
final class Ahead {
    static final Basis BASIS = Basis.own("soft wood, and what its repair cuts and costs, grow in the measure of the forecast rating; limits are a utilisation of 1, or three quarters of the section");
    private static final int DRAWS = 300, YEARS = LookAhead.YEARS + 1;
    private static final double LIMIT_AREA = 0.75, MOST_EFFORT = 3, END_MM = 300;

    private final List<Piece> pieces = new ArrayList<>();
    private final List<String> left = new ArrayList<>();
    private final List<Range> waterHours = new ArrayList<>(), waterMoney = new ArrayList<>();
    private final Costing cost;
    private final double aroundHours, aroundMoney;
    private final List<Double> wholes = new ArrayList<>();

    /// One damage, or a member that is wetted and sound yet.
    ///
    /// @param member   its place among the members that are counted
    /// @param cutMl    original wood that its repair cuts away; 0 where what is soft stays
    /// @param end      the most that can go of a member that is sound yet, mL
    /// @param lostLikely share of the section gone, likely, and `lostHigh` at one in twenty; 0 where it bears no load
    /// @param hours      and `money` that its repair takes as it is now; nothing where it has none
    private record Piece(int member, Interval softMl, double cutMl, Range hours, Range money, double end, boolean bears, double lostLikely, double lostHigh, Optional<Capacity> capacity,
                         Optional<Outlook> outlook, boolean repaired, boolean leftAlone) {
        boolean mends() { return repaired && !leftAlone; }
    }

    private Ahead(WaterFindings water, WoodFindings wood, WorkFindings work) {
        cost = work.plan().cost();
        aroundHours = cost.aroundHours();
        aroundMoney = cost.aroundMoney();
        for (Costing.Part source : cost.sources()) {
            waterHours.add(source.hours());
            waterMoney.add(source.money());
        }
        Map<String, Repair> repairs = new HashMap<>();
        for (Repair repair : work.repairs()) repairs.put(repair.damage().id(), repair);
        List<String> still = new ArrayList<>();
        boolean sound = false;
        for (Condition condition : wood.all()) {
            String id = condition.member().id();
            Optional<Outlook> outlook = wood.outlook(id);
            int member = wholes.size();
            for (Damage damage : condition.damages()) {
                Optional<Repair> repair = Optional.ofNullable(repairs.get(damage.id()));
                boolean alone = repair.filter(one -> one.treatment() instanceof Treatment.Watch).isPresent();
                Optional<Costing.Part> takes = repair.flatMap(one -> cost.part(one.id()));
                pieces.add(new Piece(member, damage.volumeMl(), repair.map(Repair::woodLostMl).orElse(0.0), takes.map(Costing.Part::hours).orElse(Range.NOTHING), takes.map(Costing.Part::money).orElse(Range.NOTHING), 0, condition.member().bearsLoad(),
                        1 - damage.section().areaKept(), 1 - damage.section().keptLow(), wood.capacity(id), outlook, repair.isPresent(), alone));
                if (outlook.isEmpty()) still.add(condition.member().title());
            }
            boolean wetted = condition.damages().isEmpty() && outlook.isPresent() && !water.wetting(id).isEmpty();
            if (wetted) pieces.add(new Piece(member, new Interval(0, 0, 0), 0, Range.NOTHING, Range.NOTHING, condition.member().sectionMm2() * Math.min(END_MM, condition.member().lengthMm()) / 1000, false, 0, 0,
                    Optional.empty(), outlook, false, false));
            sound |= wetted;
            if (wetted || !condition.damages().isEmpty()) wholes.add(condition.member().sectionMm2() * condition.member().lengthMm() / 1000);
        }
        if (!still.isEmpty()) left.add("No source of water is known for " + Words.list(still.stream().distinct().limit(4).toList()) + ": what is soft there is taken not to grow.");
        if (sound) left.add("What is wetted and sound yet is counted in wood where it would rot, and not in what mending it would take.");
        left.add("Mended wood is taken to stay sound for the ten years; a remedy that fails shortens that, and the rounds are there to see it.");
        left.add("Members that were not probed are not in it.");
    }

    static Optional<LookAhead> of(WaterFindings water, WoodFindings wood, WorkFindings work, List<Integer> waits, long seed) {
        Ahead ahead = new Ahead(water, wood, work);
        if (ahead.pieces.isEmpty() || wood.outlooks().isEmpty()) return Optional.empty();
        List<Tally> tallies = new ArrayList<>(List.of(ahead.new Tally(Kind.NOTHING, Integer.MAX_VALUE), ahead.new Tally(Kind.WATER_ONLY, Integer.MAX_VALUE), ahead.new Tally(Kind.WORK, 0)));
        for (int wait : waits) tallies.add(ahead.new Tally(Kind.POSTPONED, wait));
        // The same draws for every course, so that courses differ by what is done and by nothing else.
        RandomGenerator random = new SplitMix(seed);
        for (int d = 0; d < DRAWS; d++) {
            Draw draw = ahead.new Draw(random);
            for (Tally tally : tallies) tally.add(draw, d);
        }
        List<Course> courses = tallies.stream().map(Tally::course).toList();
        List<Basis> basis = new ArrayList<>(List.of(BASIS));
        basis.addAll(Dose.BASIS);
        return Optional.of(new LookAhead(courses, ahead.left, ahead.cost.priced() && ahead.cost.money().draws() > 0, ahead.cost.currency(), basis));
    }

    /// One future: how great each damage is, how fast it goes on, how dear the work is.
    private final class Draw {
        final double[] size = new double[pieces.size()], soft = new double[size.length], hours = new double[size.length], money = new double[size.length];
        /// How many times what is soft now, year by year, as it is wetted and with the water stopped.
        final double[][] asIs = new double[size.length][YEARS], stopped = new double[size.length][YEARS];
        final double stopHours, stopMoney;

        Draw(RandomGenerator random) {
            double pace = random.nextDouble(), dear = random.nextDouble();
            for (int p = 0; p < size.length; p++) {
                Piece piece = pieces.get(p);
                size[p] = random.nextDouble();
                soft[p] = piece.softMl.high() > 0 ? at(piece.softMl, size[p]) : piece.end;
                hours[p] = at(piece.hours, dear);
                money[p] = at(piece.money, dear);
                grow(piece.outlook.map(Outlook::asIs), pace, asIs[p]);
                grow(piece.outlook.map(Outlook::stopped), pace, stopped[p]);
            }
            stopHours = waterHours.stream().mapToDouble(range -> at(range, dear)).sum();
            stopMoney = waterMoney.stream().mapToDouble(range -> at(range, dear)).sum();
        }

        /// How many times what is soft now; for wood still sound, the share that has gone.
        private static void grow(Optional<Forecast> forecast, double pace, double[] grown) {
            Arrays.fill(grown, 1);
            if (forecast.isEmpty()) return;
            List<Interval> ratings = forecast.get().ratings();
            double from = ratings.getFirst().median();
            for (int year = 0; year < grown.length; year++) {
                double now = at(ratings.get(Math.min(year, ratings.size() - 1)), pace);
                grown[year] = from > 0 ? Math.max(1, now / from) : Math.max(0, (now - 1) / 3);
            }
        }
    }

    /// What one course comes to, draw by draw and year by year.
    private final class Tally {
        private final Kind kind;
        private final int wait;
        private final double[][] gone = new double[YEARS][DRAWS], lost = new double[YEARS][DRAWS], hours = new double[YEARS][DRAWS], allHours = new double[YEARS][DRAWS], money = new double[YEARS][DRAWS],
                allMoney = new double[YEARS][DRAWS];
        private final double[] goneOf = new double[wholes.size()], lostOf = new double[wholes.size()];
        private final int[] reached = new int[YEARS];

        Tally(Kind kind, int wait) {
            this.kind = kind;
            this.wait = wait;
        }

        void add(Draw draw, int d) {
            boolean over = false;
            for (int year = 0; year < YEARS; year++) {
                over |= count(draw, d, year);
                if (over) reached[year]++;
                for (int m = 0; m < goneOf.length; m++) {
                    gone[year][d] += Math.min(wholes.get(m), goneOf[m]);
                    lost[year][d] += Math.min(wholes.get(m), Math.max(goneOf[m], lostOf[m]));
                }
            }
        }

        /// Counts one year of one draw; true where a piece that bears load is at its limit.
        private boolean count(Draw draw, int d, int year) {
            boolean done = year >= wait && (kind == Kind.WORK || kind == Kind.POSTPONED), over = false;
            if (kind == Kind.WATER_ONLY || done) {
                hours[year][d] += draw.stopHours;
                money[year][d] += draw.stopMoney;
            }
            if (done) {
                hours[year][d] += aroundHours;
                money[year][d] += aroundMoney;
            }
            allHours[year][d] = draw.stopHours + aroundHours;
            allMoney[year][d] = draw.stopMoney + aroundMoney;
            Arrays.fill(goneOf, 0);
            Arrays.fill(lostOf, 0);
            for (int p = 0; p < draw.size.length; p++) {
                Piece piece = pieces.get(p);
                double now = grown(draw, piece, p, year, done);
                boolean mends = piece.mends(), mended = done && mends;
                double soft = draw.soft[p] * now, mending = mends && piece.cutMl > 0 ? piece.cutMl * now : soft;
                goneOf[piece.member] += mended ? mending : soft;
                lostOf[piece.member] += mending;
                double more = mends ? Math.min(MOST_EFFORT, now) : 0;
                allHours[year][d] += draw.hours[p] * more;
                allMoney[year][d] += draw.money[p] * more;
                if (mended) {
                    hours[year][d] += draw.hours[p] * more;
                    money[year][d] += draw.money[p] * more;
                }
                over |= !mended && piece.bears && atLimit(piece, draw.size[p], now);
            }
            return over;
        }

        /// What is not mended goes on as stopped wood does from the day the water is stopped.
        private double grown(Draw draw, Piece piece, int p, int year, boolean done) {
            double then = (kind == Kind.WATER_ONLY ? draw.stopped : draw.asIs)[p][Math.min(year, wait)];
            if (!done || piece.repaired) return then;
            double since = draw.stopped[p][Math.max(0, year - wait)];
            return piece.softMl.high() > 0 ? then * since : Math.max(then, since);
        }

        Course course() {
            List<LookAhead.Year> all = new ArrayList<>();
            for (int year = 0; year < YEARS; year++) all.add(new LookAhead.Year(spread(gone[year]), spread(lost[year]), new Spent(spread(hours[year]), spread(allHours[year])),
                    new Spent(spread(money[year]), spread(allMoney[year])), reached[year] / (double) DRAWS));
            return new Course(kind, kind == Kind.POSTPONED ? wait : 0, all);
        }
    }

    private static boolean atLimit(Piece piece, double size, double grown) {
        double gone = Math.max(0, at(new Interval(Math.max(0, 2 * piece.lostLikely - piece.lostHigh), piece.lostLikely, piece.lostHigh), size)), then = Math.min(0.99, gone * grown);
        if (piece.capacity.isEmpty()) return 1 - then < LIMIT_AREA;
        return at(piece.capacity.get().utilisation(), size) * (1 - Math.min(0.98, gone)) / (1 - then) > 1;
    }

    /// The value below which a share of an interval's draws lie, straight between its bounds and its middle.
    static double at(Interval interval, double share) { return between(interval.low(), interval.median(), interval.high(), (share - 0.05) / 0.9); }

    private static double at(Range range, double share) { return between(range.low(), range.middle(), range.high(), (share - 0.1) / 0.8); }

    private static double between(double low, double middle, double high, double share) {
        double place = Math.clamp(share, 0, 1);
        return place < 0.5 ? low + 2 * place * (middle - low) : middle + (2 * place - 1) * (high - middle);
    }

    private static Interval spread(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Interval(sorted[(int) (0.05 * (sorted.length - 1))], sorted[sorted.length / 2], sorted[(int) Math.ceil(0.95 * (sorted.length - 1))]);
    }
}
