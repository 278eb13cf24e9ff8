package sillwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import sillwright.measure.Memo;
import sillwright.measure.Units;
import sillwright.water.WaterFindings;
import sillwright.work.Costing.Part;
import sillwright.work.cost.Allowances;
import sillwright.work.cost.Bill;
import sillwright.work.cost.Line;
import sillwright.work.cost.Range;
import sillwright.work.cost.Spread;
import sillwright.work.cost.Toil;

/// Prices the whole work: the order by whole packs, the hours by the table, and each repair and source by itself.
final class Costs {
    private final Outfit outfit;
    private final long seed;
    private final Memo memo;

    private Costs(Outfit outfit, long seed, Memo memo) {
        this.outfit = outfit;
        this.seed = seed;
        this.memo = memo;
    }

    static Costing of(List<Repair> repairs, Map<String, Job> jobs, TakeOff order, Safety safety, WaterFindings water, Outfit outfit, long seed, Units units, Memo memo) {
        return new Costs(outfit, seed, memo).all(repairs, jobs, order, safety, water, units);
    }

    private Costing all(List<Repair> repairs, Map<String, Job> jobs, TakeOff order, Safety safety, WaterFindings water, Units units) {
        List<Toil> toils = new ArrayList<>();
        List<Part> parts = new ArrayList<>(), sources = new ArrayList<>();
        for (Repair repair : repairs) {
            Job job = jobs.get(repair.damage().id());
            toils.addAll(Hours.of(job, repair.treatment(), repair.id()));
            Bill alone = Estimate.treatment(job, repair.treatment(), outfit);
            parts.add(new Part(repair.id(), money(alone), hours(alone)));
        }
        List<String> gaps = new ArrayList<>();
        List<Line> against = new ArrayList<>();
        for (WaterFindings.RankedSource source : water.toStop()) source.remedies().stream().findFirst().ifPresent(remedy -> {
            toils.add(Toil.of("water-remedy", remedy.hours(), source.id()));
            against.addAll(outfit.materials().lines(outfit.prices(), remedy.word(), remedy.metres(), source.id(), gaps));
            Bill alone = Estimate.remedy(source, remedy, outfit);
            sources.add(new Part(source.id(), money(alone), hours(alone)));
        });
        around(repairs, safety, toils);
        if (against.stream().anyMatch(line -> line.words().endsWith(Allowances.BY_PAY)))
            gaps.add("What the remedies against water use up is allowed for by hours of pay where the price book has no price for it: add rows such as gutter,m,18 or gravel,m3,45.");
        Bill bill = Bill.of(outfit.prices(), outfit.labour(), order.wants(), toils).with(against, gaps);
        return new Costing(outfit.prices().currency(), !outfit.prices().isEmpty(), money(bill), hours(bill), bill, parts, sources, remedies(water, units));
    }

    /// All that a sum rests on.
    private record Summed(List<Line> lines, boolean money, long seed) {}

    private Range money(Bill bill) { return memo.of(new Summed(bill.lines(), true, seed), () -> bill.money(seed)); }

    private Range hours(Bill bill) { return memo.of(new Summed(bill.lines(), false, seed), () -> bill.hours(seed)); }

    private List<Costing.Remedied> remedies(WaterFindings water, Units units) {
        List<Costing.Remedied> all = new ArrayList<>();
        for (WaterFindings.RankedSource source : water.sources())
            for (WaterFindings.Remedy remedy : source.remedies()) {
                Bill bill = Estimate.remedy(source, remedy, outfit);
                all.add(new Costing.Remedied(source.id(), remedy.word(), remedy == source.remedies().getFirst() && source.probability() >= WaterFindings.LIKELY, outfit.materials().words(remedy.word(), remedy.metres(), units), money(bill), hours(bill)));
            }
        return all;
    }

    private static void around(List<Repair> repairs, Safety safety, List<Toil> toils) {
        if (repairs.isEmpty()) return;
        List<String> ids = repairs.stream().map(Repair::id).toList();
        toils.add(new Toil("order-and-fetch", Spread.exactly(1), ids));
        int sides = safety.sides().size();
        if (sides > 0) {
            toils.add(new Toil("set-up", Spread.exactly(sides), ids));
            toils.add(new Toil("clean-up", Spread.exactly(sides), ids));
        }
        if (safety.sheetingMm2() > 0) toils.add(new Toil("sheeting", Spread.exactly(safety.sheetingMm2() / 1e6), safety.sheeted()));
    }
}
