package sillwright.solve;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.work.Boards;
import sillwright.work.CutSolver.Cut;
import sillwright.work.CutSolver.Flaw;
import sillwright.work.CutSolver.Layout;
import sillwright.work.CutSolver.Stock;

import static org.junit.jupiter.api.Assertions.*;

/// Boards with defects and pieces that belong together, against every layout there is.
@DisplayNameGeneration(ReplaceUnderscores.class)
class BoardsTest {
    static LongStream seeds() { return LongStream.range(0, 150); }

    private record Job(List<Double> pieces, List<String> sets, List<Stock> stock, double kerf) {
        static Job drawn(Random random) {
            List<Stock> stock = new ArrayList<>(List.of(Stock.sold(2400)));
            if (random.nextBoolean()) stock.add(Stock.sold(3600));
            for (int b = 0; b < 1 + random.nextInt(3); b++) {
                double length = 1200 + random.nextInt(2400), from = random.nextInt((int) length - 200);
                List<Flaw> flaws = new ArrayList<>();
                if (random.nextInt(4) > 0) flaws.add(new Flaw(from, Math.min(length, from + 1 + random.nextInt(150))));
                if (random.nextInt(3) == 0) flaws.add(new Flaw(Math.max(0, length - 300), length - 250));
                stock.add(new Stock(length, random.nextBoolean() ? 0 : 200 + random.nextInt(2000), 1 + random.nextInt(2), flaws));
            }
            List<Double> pieces = new ArrayList<>();
            List<String> sets = new ArrayList<>();
            for (int i = 0; i < 3 + random.nextInt(4); i++) {
                pieces.add(150.0 + random.nextInt(1100));
                sets.add(random.nextInt(3) == 0 && joined(pieces, sets) + pieces.getLast() < 2300 ? "A" : "");
            }
            return new Job(pieces, sets, stock, random.nextInt(3) * 3.0);
        }
    }

    private static double joined(List<Double> pieces, List<String> sets) {
        double sum = 0;
        for (int i = 0; i < sets.size(); i++) if (sets.get(i).equals("A")) sum += pieces.get(i) + 6;
        return sum;
    }

    /// A place that pieces go into: a good stretch of a board that is there, or a bar to be bought.
    private record Place(double lengthMm, int board) {}

    private static double best(Job job) {
        Map<String, Double> joined = new LinkedHashMap<>();
        List<Double> units = new ArrayList<>();
        for (int i = 0; i < job.pieces.size(); i++) {
            if (job.sets.get(i).isEmpty()) units.add(job.pieces.get(i));
            else joined.merge(job.sets.get(i), job.pieces.get(i), (a, b) -> a + job.kerf + b);
        }
        units.addAll(joined.values());
        List<Place> places = new ArrayList<>();
        List<Double> prices = new ArrayList<>();
        for (Stock one : job.stock) if (!one.any()) for (int n = 0; n < one.count(); n++) {
            double from = 0;
            for (Flaw flaw : one.flaws().stream().sorted(Comparator.comparingDouble(Flaw::fromMm)).toList()) {
                places.add(new Place(flaw.fromMm() - from, prices.size()));
                from = Math.max(from, Math.max(flaw.toMm(), flaw.fromMm() + job.kerf));
            }
            places.add(new Place(one.lengthMm() - from, prices.size()));
            prices.add(one.price());
        }
        List<Stock> sold = job.stock.stream().filter(Stock::any).toList();
        return best(units, 0, places, new double[places.size()], prices, new ArrayList<>(), sold, job.kerf);
    }

    private static double best(List<Double> units, int at, List<Place> places, double[] filled, List<Double> prices, List<Double> bought, List<Stock> sold, double kerf) {
        if (at == units.size()) {
            Set<Integer> boards = new HashSet<>();
            for (int p = 0; p < filled.length; p++) if (filled[p] > 0) boards.add(places.get(p).board);
            double cost = boards.stream().mapToDouble(prices::get).sum();
            for (double bar : bought) cost += sold.stream().filter(one -> one.lengthMm() >= bar - 1e-6).mapToDouble(Stock::price).min().orElse(Double.POSITIVE_INFINITY);
            return cost;
        }
        double least = Double.POSITIVE_INFINITY, unit = units.get(at);
        for (int p = 0; p < filled.length; p++) {
            double before = filled[p], after = before > 0 ? before + kerf + unit : unit;
            if (after > places.get(p).lengthMm + 1e-6) continue;
            filled[p] = after;
            least = Math.min(least, best(units, at + 1, places, filled, prices, bought, sold, kerf));
            filled[p] = before;
        }
        for (int b = 0; b <= bought.size(); b++) {
            List<Double> with = new ArrayList<>(bought);
            if (b == bought.size()) with.add(unit);
            else with.set(b, with.get(b) + kerf + unit);
            double group = with.get(b);
            if (sold.stream().anyMatch(one -> one.lengthMm() >= group - 1e-6)) least = Math.min(least, best(units, at + 1, places, filled, prices, with, sold, kerf));
        }
        return least;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void around_defects_and_side_by_side_it_is_what_trying_every_layout_finds_and_proven(long seed) {
        Job job = Job.drawn(new Random(seed));
        Layout layout = lay(job);
        double best = best(job);
        assertEquals(best, layout.cost(), 1e-6, job::toString);
        assertEquals(best, layout.bound(), 2e-3, () -> "not proven: " + job);
    }

    private static Layout lay(Job job) {
        try {
            return Boards.lay(job.pieces, job.sets, job.stock, job.kerf, new ProvenCuts());
        } catch (Refused refused) {
            throw new AssertionError(refused.line(Units.SI) + " for " + job, refused);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void every_piece_is_cut_once_clear_of_defects_and_of_its_neighbours_and_sets_follow_each_other(long seed) {
        Job job = Job.drawn(new Random(seed));
        Layout layout = lay(job);
        assertEquals(IntStream.range(0, job.pieces.size()).boxed().toList(), layout.bars().stream().flatMap(bar -> bar.pieces().stream()).sorted().toList());
        for (Cut bar : layout.bars()) {
            double from = -job.kerf;
            for (int k = 0; k < bar.pieces().size(); k++) {
                double start = bar.startsMm().get(k), end = start + job.pieces.get(bar.pieces().get(k));
                assertTrue(start >= from + job.kerf - 1e-6 && end <= bar.stockMm() + 1e-3, bar::toString);
                for (Flaw flaw : bar.flaws()) assertTrue(end <= flaw.fromMm() + 1e-3 || start >= flaw.toMm() - 1e-3, () -> bar + " cuts into a defect");
                from = end;
            }
        }
        List<Integer> set = IntStream.range(0, job.sets.size()).filter(i -> job.sets.get(i).equals("A")).boxed().toList();
        if (set.size() < 2) return;
        Cut own = layout.bars().stream().filter(bar -> bar.pieces().contains(set.getFirst())).findFirst().orElseThrow();
        int at = own.pieces().indexOf(set.getFirst());
        assertEquals(set, own.pieces().subList(at, at + set.size()), "side by side, in order");
        for (int k = at; k + 1 < at + set.size(); k++)
            assertEquals(own.startsMm().get(k) + job.pieces.get(own.pieces().get(k)) + job.kerf, own.startsMm().get(k + 1), 1e-6, "nothing but a kerf between");
        for (Stock one : job.stock) if (!one.any())
            assertTrue(layout.bars().stream().filter(bar -> bar.stockMm() == one.lengthMm() && bar.flaws().equals(one.flaws())).count() <= job.stock.stream().filter(same -> same.lengthMm() == one.lengthMm() && same.flaws().equals(one.flaws())).mapToInt(Stock::count).sum(), "no more boards than there are");
    }

    @Test
    void a_knot_in_the_middle_of_a_board_sends_the_long_piece_to_another() {
        Layout layout = Boards.lay(List.of(1500.0, 900.0, 900.0), List.of("", "", ""), List.of(Stock.sold(2400), new Stock(2400, 0, 1, List.of(new Flaw(1000, 1050)))), 3, new ProvenCuts());
        Cut rack = layout.bars().stream().filter(bar -> !bar.flaws().isEmpty()).findFirst().orElseThrow();
        assertEquals(List.of(0.0, 1050.0), rack.startsMm());
        assertEquals(2400, layout.cost(), 1e-9, "one bar is bought, for the long piece");
        assertEquals(List.of(1347.0 - 900.0), Boards.left(2400, rack.startsMm(), List.of(900.0, 900.0), rack.flaws(), 3).stream().filter(left -> left > 200).toList());
    }

    @Test
    void what_cannot_be_is_refused_by_name() {
        assertTrue(assertThrows(Refused.class, () -> new Stock(2400, 0, Stock.ANY, List.of(new Flaw(1, 2)))).line(Units.SI).contains("count"));
        assertTrue(assertThrows(Refused.class, () -> new Stock(2400, 0, 1, List.of(new Flaw(2300, 2500)))).line(Units.SI).contains("past the end"));
        assertTrue(assertThrows(Refused.class, () -> new Flaw(20, 10)).line(Units.SI).contains("defect"));
    }
}
