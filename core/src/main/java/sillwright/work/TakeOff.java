package sillwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import sillwright.measure.Basis;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Species;
import sillwright.work.Repair.Need;
import sillwright.work.Repair.Piece;
import sillwright.work.WorkFindings.CutPlan;
import sillwright.work.WorkFindings.OrderLine;
import sillwright.work.WorkFindings.OrderLine.Measure;
import sillwright.work.cost.PriceBook;
import sillwright.work.cost.Spread;
import sillwright.work.cost.Want;
import sillwright.work.stock.Nominal;
import sillwright.work.stock.Supply;

/// What to buy: every need of every repair added up, waste put on, rounded up to what is sold.
///
/// @param lines of the order, wood first
/// @param wants the same to be priced, under the same words
record TakeOff(List<OrderLine> lines, List<Want> wants) {
    static final Basis BASIS = Basis.own("waste on top of the net need: 10 % of liquids and sheet, 15 % of filler, 25 % of adhesive, 5 % of screws; a bag for 20 L of wood, 10 m² scraped or 15 m² of sheeting");

    private static final double THICKEST_BOARD_MM = 76.2;
    /// Net millimetres to a board that is left in the rack for its knots: own choice.
    private static final Spread BOUGHT = new Spread(1, 1, 1.12);

    /// Bought for each that is used.
    static double waste(Material material) { return used(material).mid(); }

    /// What one of the net need turns out to be, waste and all: the least, the likeliest, the most. The program's own choice.
    static Spread used(Material material) {
        return switch (material) {
            case CONSOLIDANT -> new Spread(0.55, 1.10, 1.8);
            case FILLER, SKIM_FILLER -> new Spread(0.9, 1.15, 1.6);
            case ADHESIVE -> new Spread(0.9, 1.25, 1.7);
            case PRIMER, PAINT, BORATE -> new Spread(0.95, 1.10, 1.4);
            case CAPILLARY_BREAK, SHEETING -> new Spread(1.0, 1.10, 1.25);
            case SCREW -> new Spread(1.0, 1.05, 1.2);
            case DOWEL -> new Spread(1, 1.05, 1.25);
            case BOLT -> new Spread(1, 1, 1.25);
            case ABRASIVE -> new Spread(0.7, 1.0, 1.8);
            case WASTE_BAG -> new Spread(0.7, 1.0, 1.6);
        };
    }

    /// @param sheetingMm2 ground to be covered, all sides together
    /// @param sheeted     the repairs that it is laid for
    /// @param prices      whose packs are bought where it has the material
    static TakeOff of(List<Repair> repairs, CutList cuts, double sheetingMm2, List<String> sheeted, PriceBook prices, Units units) {
        List<OrderLine> lines = new ArrayList<>();
        List<Want> wants = new ArrayList<>();
        for (CutPlan plan : cuts.plans()) if (plan.boughtMm() > 0) {
            OrderLine line = board(plan, units);
            lines.add(line);
            wants.add(Estimate.wood(plan.species(), plan.bought(), plan.boughtMm() / line.packs(), BOUGHT.times(plan.boughtMm()), line.item(), line.repairs()));
        }
        for (Piece piece : cuts.over()) {
            Nominal bought = Nominal.of(piece.widthMm(), piece.depthMm(), Supply.of(piece.species()), units);
            OrderLine line = new OrderLine("special length of " + Species.said(piece.species()) + ", " + bought.name(), Measure.LENGTH, piece.lengthMm(), piece.lengthMm(), 1, List.of(piece.repair()), 0, milled(bought, List.of(piece), units));
            lines.add(line);
            wants.add(Estimate.wood(piece.species(), bought, piece.lengthMm(), BOUGHT.times(piece.lengthMm()), line.item(), line.repairs()));
        }
        needs(repairs, sheetingMm2, sheeted).forEach((need, ids) -> {
            lines.add(line(need, List.copyOf(ids), pack(need, prices), units));
            wants.add(Estimate.want(need, true, List.copyOf(ids)));
        });
        return new TakeOff(List.copyOf(lines), List.copyOf(wants));
    }

    /// Needs of one material and size together, in the order of the materials, each with the repairs that have it.
    private static Map<Need, Set<String>> needs(List<Repair> repairs, double sheetingMm2, List<String> sheeted) {
        Map<Need, Set<String>> all = new LinkedHashMap<>();
        for (Material material : Material.values()) {
            Map<String, Double> sums = new LinkedHashMap<>();
            Map<String, Set<String>> ids = new LinkedHashMap<>();
            double laid = material == Material.SHEETING ? sheetingMm2 : material == Material.WASTE_BAG ? sheetingMm2 / Amounts.BAG_SHEETING_MM2 : 0;
            if (laid > 0) {
                sums.put("", laid);
                ids.put("", new LinkedHashSet<>(sheeted));
            }
            for (Repair repair : repairs)
                for (Need one : repair.needs()) if (one.material() == material) {
                    sums.merge(one.size(), one.amount(), Double::sum);
                    ids.computeIfAbsent(one.size(), _ -> new LinkedHashSet<>()).add(repair.id());
                }
            sums.forEach((size, sum) -> all.put(new Need(material, sum, size), ids.get(size)));
        }
        return all;
    }

    /// What is bought at once: the pack that the price book has, else the usual one.
    private static double pack(Need need, PriceBook prices) {
        Want want = Estimate.want(need, true, List.of());
        return prices.find(want.names()).filter(price -> price.sold().by() == want.by()).map(price -> price.sold().amount()).orElse(need.material().pack());
    }

    private static OrderLine line(Need need, List<String> repairs, double pack, Units units) {
        Material material = need.material();
        int packs = (int) Math.max(1, Math.ceil(need.amount() * waste(material) / pack - 1e-9));
        Measure measure = switch (material.measure()) {
            case VOLUME -> Measure.VOLUME;
            case AREA -> Measure.AREA;
            case COUNT -> Measure.COUNT;
        };
        return new OrderLine(need.item(), measure, need.amount(), packs * pack, packs, repairs, waste(material) - 1, note(need, packs, pack, units));
    }

    private static String note(Need need, int packs, double pack, Units units) {
        Material material = need.material();
        String size = switch (material.measure()) {
            case VOLUME -> " of " + Words.volume(pack, units);
            case AREA -> " of " + Words.area(pack, units);
            case COUNT -> pack > 1 ? " of " + Words.number(pack, 0) : "";
        };
        String packed = material.packed(), sold = packs + " " + (packs == 1 ? packed : packed.equals("box") ? "boxes" : packed + "s") + size;
        String rule = switch (material) {
            case PRIMER -> "one coat, end grain two, " + Words.number(Amounts.PRIMER_MM2_PER_ML / 1000, 1) + " m²/L (350 ft²/gal)";
            case PAINT -> "two coats, " + Words.number(Amounts.PAINT_MM2_PER_ML / 1000, 1) + " m²/L (400 ft²/gal) each";
            case BORATE -> "two coats, " + Words.number(Amounts.BORATE_MM2_PER_ML / 1000, 0) + " m²/L each";
            case ADHESIVE -> "joints " + Words.number(Amounts.JOINT_MM, 0) + " mm thick";
            case ABRASIVE -> "a sheet to each " + Words.area(Amounts.ABRASIVE_MM2, units);
            case WASTE_BAG -> "wood cut out, scrapings and sheeting";
            case BOLT -> "not before the engineer has settled it";
            case CONSOLIDANT, SKIM_FILLER, FILLER, SCREW, DOWEL, CAPILLARY_BREAK, SHEETING -> "";
        };
        double over = waste(material) - 1;
        return sold + (rule.isEmpty() ? "" : "; " + rule) + (over > 0 ? "; " + Words.percent(over) + " over for waste" : "");
    }

    private static OrderLine board(CutPlan plan, Units units) {
        double need = 0;
        List<Piece> pieces = plan.bars().stream().filter(bar -> !bar.inHand()).flatMap(bar -> bar.pieces().stream()).toList();
        Set<String> repairs = new LinkedHashSet<>();
        for (Piece piece : pieces) {
            need += piece.lengthMm();
            repairs.add(piece.repair());
        }
        List<String> lengths = plan.bars().stream().filter(bar -> !bar.inHand()).map(WorkFindings.Bar::stockMm).sorted().map(mm -> Words.length(mm, units)).toList();
        return new OrderLine((plan.depthMm() > THICKEST_BOARD_MM ? "timber of " : "board of ") + Species.said(plan.species()) + ", " + plan.bought().name() + ": " + Words.list(counted(lengths)),
                Measure.LENGTH, need, plan.boughtMm(), lengths.size(), List.copyOf(repairs), 0, plan.quality().words(units) + "; " + milled(plan.bought(), pieces, units));
    }

    /// How it comes, and what is planed and ripped off it for which repair.
    private static String milled(Nominal bought, List<Piece> pieces, Units units) {
        Map<String, List<String>> by = new LinkedHashMap<>();
        for (Piece piece : pieces) bought.milling(piece.widthMm(), piece.depthMm(), units).ifPresent(words -> by.computeIfAbsent(words, _ -> new ArrayList<>()).add(piece.repair()));
        List<String> all = new ArrayList<>(List.of(bought.delivered(units)));
        if (by.isEmpty()) all.add("used as sold");
        by.forEach((words, ids) -> all.add((by.size() > 1 ? Words.list(ids.stream().distinct().toList()) + " " : "") + words));
        return String.join("; ", all);
    }

    /// `2 × 8 ft`, like lengths counted together.
    private static List<String> counted(List<String> lengths) {
        List<String> counted = new ArrayList<>();
        for (int from = 0, to; from < lengths.size(); from = to) {
            to = from;
            while (to < lengths.size() && lengths.get(to).equals(lengths.get(from))) to++;
            counted.add((to - from) + " × " + lengths.get(from));
        }
        return counted;
    }
}
