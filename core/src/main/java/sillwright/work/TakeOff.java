package sillwright.work;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import sillwright.measure.Basis;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.Repair.Need;
import sillwright.work.Repair.Piece;
import sillwright.work.WorkFindings.CutPlan;
import sillwright.work.WorkFindings.OrderLine;
import sillwright.work.WorkFindings.OrderLine.Measure;

/// What to buy: every need of every repair added up, waste put on, rounded up to what is sold.
final class TakeOff {
    static final Basis BASIS = Basis.own("waste on top of the net need: 10 % of liquids and sheet, 15 % of filler, 25 % of adhesive, 5 % of screws");

    private static final double THICKEST_BOARD_MM = 76.2;

    private TakeOff() {}

    /// Bought for each that is used.
    static double waste(Material material) {
        return switch (material) {
            case CONSOLIDANT, PRIMER, PAINT, BORATE, CAPILLARY_BREAK, SHEETING -> 1.10;
            case FILLER -> 1.15;
            case ADHESIVE -> 1.25;
            case SCREW -> 1.05;
            case BOLT, ABRASIVE -> 1.0;
        };
    }

    /// @param sheetingMm2 ground to be covered, all sides together
    /// @param sheeted     the repairs that it is laid for
    static List<OrderLine> of(List<Repair> repairs, CutList cuts, double sheetingMm2, List<String> sheeted, Units units) {
        List<OrderLine> order = new ArrayList<>();
        for (CutPlan plan : cuts.plans()) order.add(board(plan, units));
        for (Piece piece : cuts.over())
            order.add(new OrderLine("special length of " + piece.species() + ", " + CutList.section(Math.max(piece.widthMm(), piece.depthMm()),
                    Math.min(piece.widthMm(), piece.depthMm()), units), Measure.LENGTH, piece.lengthMm(), piece.lengthMm(), 1, List.of(piece.repair())));
        for (Material material : Material.values()) {
            double need = material == Material.SHEETING ? sheetingMm2 : 0;
            Set<String> ids = new LinkedHashSet<>(material == Material.SHEETING ? sheeted : List.of());
            for (Repair repair : repairs)
                for (Need one : repair.needs()) if (one.material() == material) {
                    need += one.amount();
                    ids.add(repair.id());
                }
            if (need > 0) order.add(line(material, need, List.copyOf(ids)));
        }
        return order;
    }

    private static OrderLine line(Material material, double need, List<String> repairs) {
        int packs = (int) Math.ceil(need * waste(material) / material.pack() - 1e-9);
        Measure measure = switch (material.measure()) {
            case VOLUME -> Measure.VOLUME;
            case AREA -> Measure.AREA;
            case COUNT -> Measure.COUNT;
        };
        return new OrderLine(material.words(), measure, need, packs * material.pack(), packs, repairs);
    }

    private static OrderLine board(CutPlan plan, Units units) {
        double need = 0;
        Set<String> repairs = new LinkedHashSet<>();
        for (WorkFindings.Bar bar : plan.bars())
            for (Piece piece : bar.pieces()) {
                need += piece.lengthMm();
                repairs.add(piece.repair());
            }
        List<String> lengths = plan.bars().stream().map(WorkFindings.Bar::stockMm).sorted().map(mm -> Words.length(mm, units)).toList();
        return new OrderLine((plan.depthMm() > THICKEST_BOARD_MM ? "timber of " : "board of ") + plan.species() + ", " + CutList.section(plan.widthMm(), plan.depthMm(), units) + ": " + Words.list(counted(lengths)),
                Measure.LENGTH, need, plan.stockMm(), plan.bars().size(), List.copyOf(repairs));
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
