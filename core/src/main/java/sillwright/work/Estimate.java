package sillwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import sillwright.walk.Member;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.water.WaterFindings.Remedy;
import sillwright.work.Repair.Need;
import sillwright.work.Repair.Piece;
import sillwright.work.cost.Bill;
import sillwright.work.cost.Line;
import sillwright.work.cost.Sold;
import sillwright.work.cost.Spread;
import sillwright.work.cost.Toil;
import sillwright.work.cost.Want;
import sillwright.work.stock.Nominal;
import sillwright.work.stock.Supply;

/// What anything costs by itself: a treatment of a damage, a remedy for a source of water, some hours of a task.
///
/// Material is counted by what is used up, so that treatments compare; the order list buys whole packs.
public final class Estimate {
    /// Wood bought for each millimetre of a piece where the cut list is not known: own choice.
    private static final Spread WOOD = new Spread(1.05, 1.2, 1.5);

    private Estimate() {}

    /// One treatment of one damage: its material and its hours.
    static Bill treatment(Job job, Treatment treatment, Outfit outfit) {
        List<Want> wants = new ArrayList<>();
        List<String> refs = List.of(job.damage().id());
        for (Need need : Amounts.of(job, treatment)) wants.add(want(need, false, refs));
        for (Piece piece : Amounts.pieces("", job, treatment)) wants.add(wood(piece.species(), Nominal.of(piece.widthMm(), piece.depthMm(), Supply.of(piece.species()), job.units()), piece.lengthMm(), WOOD.times(piece.lengthMm()), "wood", refs));
        return Bill.of(outfit.prices(), outfit.labour(), wants, Hours.of(job, treatment, job.damage().id()));
    }

    /// What stops a source of water: its hours by the remedies' table, its material by the table of allowances.
    public static Bill remedy(RankedSource source, Remedy remedy, Outfit outfit) {
        List<String> gaps = new ArrayList<>();
        List<Line> material = outfit.materials().lines(outfit.prices(), remedy.word(), remedy.metres(), source.id(), gaps);
        return Bill.of(outfit.prices(), outfit.labour(), List.of(), List.of(Toil.of("water-remedy", remedy.hours(), source.id()))).with(material, gaps);
    }

    /// A piece coated anew all round: old paint off by hand where it fails, else sanded; primed where it is bare; two coats.
    ///
    /// @param fails whether the old coat is coming off
    public static Bill recoat(Member member, boolean fails, Outfit outfit) {
        double mm2 = 2 * (member.widthMm() + member.depthMm()) * member.lengthMm(), m2 = mm2 / 1e6;
        List<String> refs = List.of(member.id());
        List<Toil> toils = List.of(Toil.of(fails ? "strip-paint" : "sand", m2, member.id()), Toil.of("prime", fails ? m2 : m2 / 4, member.id()), Toil.of("coat", 2 * m2, member.id()));
        List<Want> wants = List.of(want(new Need(Material.PRIMER, (fails ? mm2 : mm2 / 4) / Amounts.PRIMER_MM2_PER_ML), false, refs), want(new Need(Material.PAINT, 2 * mm2 / Amounts.PAINT_MM2_PER_ML), false, refs));
        return Bill.of(outfit.prices(), outfit.labour(), wants, toils);
    }

    /// So much of one task of the table of hours: a round of the watch, a member probed again.
    public static Bill task(String task, double amount, String ref, Outfit outfit) {
        return Bill.of(outfit.prices(), outfit.labour(), List.of(), List.of(Toil.of(task, amount, ref)));
    }

    /// Material as it is bought: a price book may have it by its size, or all sizes alike.
    static Want want(Need need, boolean whole, List<String> refs) {
        Material material = need.material();
        String name = material.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        List<String> names = new ArrayList<>();
        if (!need.size().isEmpty()) names.addAll(List.of(name + " " + need.size(), name + " " + need.size().replace('×', 'x')));
        names.addAll(List.of(name, name + "s", material.words()));
        if (material == Material.SKIM_FILLER) names.add("filler");
        return new Want(need.item(), names, switch (material.measure()) {
            case VOLUME -> Sold.By.VOLUME;
            case AREA -> Sold.By.AREA;
            case COUNT -> Sold.By.COUNT;
        }, TakeOff.used(material).times(need.amount()), Map.of(), whole, refs);
    }

    /// Wood by length, which a price book may have by length, by volume as the trade counts it (board feet by the name of the section), or by the piece of one stock length.
    static Want wood(String species, Nominal bought, double stockMm, Spread lengthMm, String words, List<String> refs) {
        return new Want(words, List.of("wood " + species, species, "board " + species, "wood", "board", "boards"), Sold.By.LENGTH, lengthMm,
                Map.of(Sold.By.VOLUME, bought.paidMm2() / 1000, Sold.By.COUNT, 1 / stockMm), false, refs);
    }
}
