package sillwright.work.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Units;
import sillwright.measure.Words;

/// A section as it is bought: by its name at the yard, and what that is net.
///
/// @param name    `1×10`, `6×6`, `50 × 150`, `8/4 × 8 in rough`
/// @param wideMm  greater side as it is delivered
/// @param thinMm  lesser side as it is delivered
/// @param paidMm2 section that board feet and cubic metres are counted by: the sizes of the name
/// @param way     how it comes
public record Nominal(String name, double wideMm, double thinMm, double paidMm2, Way way) {
    public static final List<Basis> BASIS = List.of(Basis.read("American Softwood Lumber Standard PS 20", "nominal and minimum dressed sizes, dry; read in a reprint"),
            Basis.read("BS EN 336", "customary target sizes, sawn and planed; read in a reprint"), Basis.practice("which names a yard keeps; metric boards planed 4 to 5 mm off; hardwood rough by the quarter inch"),
            Basis.own("rough stock: 1/8 in or 3 mm to plane off each face, as much again off each edge"));

    /// A section within so little of a dressed one is taken as it, mm: 1/32 in, what a plane stroke is.
    private static final double ALIKE_MM = 0.8;
    /// Timber this much over in either side is sawn to order instead, mm: 1 in.
    private static final double TOO_MUCH_MM = 25.4;
    private static final double THICKEST_BOARD_MM = 90;
    private static final Map<String, List<Nominal>> SOLD = read(NominalCsv.TEXT);

    /// `DRESSED` planed by the mill; `ROUGH` as it left the saw; `NET` where the trade's name is not known.
    public enum Way { DRESSED, ROUGH, NET }

    /// A section whose name is not known.
    public static Nominal net(double widthMm, double depthMm) {
        double wide = Math.max(widthMm, depthMm), thin = Math.min(widthMm, depthMm);
        return new Nominal("", wide, thin, wide * thin, Way.NET);
    }

    /// The least that a net section comes out of: softwood dressed, by its name; hardwood, salvaged wood and heavy timber between sizes rough, with wood to plane off.
    ///
    /// @param supply how the species is sold; empty where that is not known, and it is taken as a yard's softwood
    public static Nominal of(double widthMm, double depthMm, Optional<Supply> supply, Units units) {
        double wide = Math.max(widthMm, depthMm), thin = Math.min(widthMm, depthMm);
        boolean rough = supply.filter(one -> one.sort() == Supply.Sort.HARDWOOD || one.sold() == Supply.Sold.RECLAIMED).isPresent();
        Optional<Nominal> dressed = rough ? Optional.empty() : least(wide, thin, units);
        return dressed.orElseGet(() -> rough(wide, thin, units));
    }

    private static Optional<Nominal> least(double wide, double thin, Units units) {
        Nominal best = null;
        for (Nominal one : SOLD.get(units == Units.US ? "in" : "mm"))
            if (one.wideMm >= wide - ALIKE_MM && one.thinMm >= thin - ALIKE_MM && (best == null || one.paidMm2 < best.paidMm2)) best = one;
        if (best == null || thin > THICKEST_BOARD_MM && Math.max(best.wideMm - wide, best.thinMm - thin) > TOO_MUCH_MM) return Optional.empty();
        return Optional.of(best);
    }

    private static Nominal rough(double wide, double thin, Units units) {
        double plane = Stock.planeMm(units), step = units == Units.US ? 12.7 : 10, broad = Math.ceil((wide + 2 * plane) / step - 1e-6) * step, thick = Stock.roughMm(thin, units);
        return new Nominal(Stock.rough(thin, units) + " rough, " + Words.length(broad, units) + " wide", broad, thick, broad * thick, Way.ROUGH);
    }

    /// `dressed 3/4 in × 9-1/4 in`, `rough, 2 in × 8 in`
    public String delivered(Units units) {
        String size = Words.length(thinMm, units) + " × " + Words.length(wideMm, units);
        return switch (way) {
            case DRESSED -> "dressed " + size;
            case ROUGH -> "rough " + size;
            case NET -> "net " + size;
        };
    }

    /// How a net piece is got out of it: `to 7/8 in × 4-1/2 in: plane 1/8 in off the thickness`; empty where it is used as sold.
    public Optional<String> milling(double widthMm, double depthMm, Units units) {
        double wide = Math.max(widthMm, depthMm), thin = Math.min(widthMm, depthMm), over = thinMm - thin, broad = wideMm - wide;
        String net = "to " + Words.length(thin, units) + " × " + Words.length(wide, units) + ": ";
        if (way == Way.ROUGH) return Optional.of(net + "plane about " + Words.length(Math.max(over / 2, 0.5), units) + " off each face, rip and joint the edges");
        List<String> cuts = new ArrayList<>();
        if (over > ALIKE_MM) cuts.add("plane " + Words.length(over, units) + " off the thickness");
        if (broad > ALIKE_MM) cuts.add("rip " + Words.length(broad, units) + " off the width and plane the edge");
        return cuts.isEmpty() || way == Way.NET ? Optional.empty() : Optional.of(net + String.join(", ", cuts));
    }

    private static Map<String, List<Nominal>> read(String csv) {
        List<Csv.Row> rows = Csv.read(csv).rows();
        return List.of("in", "mm").stream().collect(Collectors.toUnmodifiableMap(unit -> unit, unit -> {
            List<Nominal> all = new ArrayList<>();
            for (Csv.Row thick : rows) if (is(thick, unit, "thick"))
                for (Csv.Row wide : rows) if (is(wide, unit, "wide") && wide.get("sort").equals(thick.get("sort")) && wide.number("net") >= thick.number("net")) all.add(sold(unit, thick, wide));
            return List.copyOf(all);
        }));
    }

    private static boolean is(Csv.Row row, String unit, String side) { return row.get("unit").equals(unit) && row.get("side").equals(side); }

    private static Nominal sold(String unit, Csv.Row thick, Csv.Row wide) {
        double mm = unit.equals("in") ? 25.4 : 1;
        return new Nominal(thick.get("name") + (unit.equals("in") ? "×" : " × ") + wide.get("name"), wide.number("net") * mm, thick.number("net") * mm, inches(thick.get("name")) * inches(wide.get("name")) * mm * mm, Way.DRESSED);
    }

    /// `5/4` is five quarters.
    private static double inches(String name) {
        int slash = name.indexOf('/');
        return slash < 0 ? Double.parseDouble(name) : Double.parseDouble(name.substring(0, slash)) / Double.parseDouble(name.substring(slash + 1));
    }
}
