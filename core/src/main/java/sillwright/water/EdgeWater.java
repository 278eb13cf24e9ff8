package sillwright.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Building;
import sillwright.walk.Side;
import sillwright.walk.Side.Downspout;
import sillwright.walk.Side.Edge;
import sillwright.walk.Side.Gutter;
import sillwright.walk.Side.GutterShape;
import sillwright.walk.Side.RoofEdge;
import sillwright.water.WaterFindings.GutterCheck;

/// The water of one roof edge: what comes, what its gutter carries, what its downspouts carry.
///
/// @param inflowLs    in the design rain; empty where the rain or the roof is not known
/// @param capacityLs  of the gutter, all its runs together; 0 with no gutter
/// @param downspoutLs of all its downspouts; 0 where none were recorded
/// @param runMm       the longest run to an outlet
record EdgeWater(Side side, RoofEdge edge, Optional<Double> inflowLs, double capacityLs, double downspoutLs, double runMm, double rainMmH) {

    static EdgeWater of(Side side, RoofEdge edge, Optional<Building> building) {
        Optional<Double> rain = building.flatMap(Building::designRain).map(Quantity::own);
        double pitch = edge.pitch().map(Quantity::own).orElse(0.0), length = edge.length().own();
        Optional<Double> inflow = rain.flatMap(mmH -> edge.catchmentMm2().map(mm2 -> RoofWater.inflowLs(mm2, mmH, pitch)));
        double run = edge.gutter().map(gutter -> longestRun(edge, gutter)).orElse(length);
        double capacity = edge.gutter().map(gutter -> Gutters.capacityLs(section(gutter), fall(gutter), run) * length / run).orElse(0.0);
        double downspouts = edge.gutter().stream().flatMap(gutter -> gutter.downspouts().stream()).mapToDouble(EdgeWater::carriesLs).sum();
        return new EdgeWater(side, edge, inflow, capacity, downspouts, run, rain.orElse(0.0));
    }

    static Gutters.Section section(Gutter gutter) {
        return Gutters.Section.of(gutter.shape(), gutter.size().own(), gutter.depth().map(Quantity::own));
    }

    /// A fall that was not measured, or that goes the wrong way, counts as none.
    private static double fall(Gutter gutter) { return Math.max(0, gutter.fall().map(Quantity::own).orElse(0.0)); }

    private static double carriesLs(Downspout downspout) {
        return Downspouts.capacityLs(downspout.size().own(), downspout.size2().map(Quantity::own));
    }

    /// From the furthest high point to an outlet: an end, or half way between two outlets.
    private static double longestRun(RoofEdge edge, Gutter gutter) {
        double length = edge.length().own(), left = edge.left().own();
        double[] outlets = gutter.downspouts().stream().mapToDouble(d -> Math.clamp(d.left().own() - left, 0, length)).sorted().toArray();
        if (outlets.length == 0) return length;
        double run = Math.max(outlets[0], length - outlets[outlets.length - 1]);
        for (int i = 1; i < outlets.length; i++) run = Math.max(run, (outlets[i] - outlets[i - 1]) / 2);
        return Math.max(run, length / 100);
    }

    boolean shedsHere() { return edge.kind() == Edge.EAVE; }

    boolean hasGutter() { return edge.gutter().isPresent(); }

    /// Whether more comes than gutter or downspouts carry; no gutter carries nothing.
    boolean overflows() { return inflowLs.isPresent() && inflowLs.get() > least(); }

    /// What gutter and downspouts together let through.
    double least() { return downspoutLs > 0 ? Math.min(capacityLs, downspoutLs) : capacityLs; }

    /// `main eave`.
    String place() { return edge.id() + (edge.kind() == Edge.RAKE ? " rake" : edge.kind() == Edge.FLAT ? " roof edge" : " eave"); }

    /// The check, where rain and roof are known.
    Optional<GutterCheck> check(Units units) {
        if (!shedsHere() && !hasGutter()) return Optional.empty();
        return inflowLs.map(inflow -> {
            double minutes = edge.gutter().map(gutter -> Gutters.minutesToOverflow(section(gutter), edge.length().own(), inflow)).orElse(0.0);
            List<Basis> basis = new ArrayList<>(List.of(RoofWater.INFLOW, RoofWater.PITCH));
            edge.gutter().ifPresent(gutter -> {
                basis.add(Gutters.LEVEL);
                if (gutter.shape() == GutterShape.HALF_ROUND) basis.add(Gutters.OLDER_TABLE);
                if (gutter.shape() == GutterShape.OGEE) basis.add(Gutters.OGEE);
                if (downspoutLs > 0) {
                    gutter.downspouts().stream().map(d -> Downspouts.basis(d.size().own(), d.size2().map(Quantity::own))).distinct().forEach(basis::add);
                }
            });
            return new GutterCheck(side.id(), edge.id(), inflow, capacityLs, downspoutLs, overflows(), minutes, words(inflow, minutes, units), basis);
        });
    }

    private String words(double inflow, double minutes, Units units) {
        String sends = "The roof sends " + Words.flow(inflow, units) + " to the " + place() + " in the design rain of " + Words.rain(rainMmH, units);
        if (!hasGutter()) return sends + ", and with no gutter it all falls along the drip line.";
        Gutter gutter = edge.gutter().get();
        String carries = "; the " + Words.length(gutter.size().own(), units) + " " + section(gutter).words() + " gutter carries " + Words.flow(capacityLs, units);
        String leaders = downspoutLs > 0 ? ", its " + (gutter.downspouts().size() > 1 ? "downspouts carry " : "downspout carries ") + Words.flow(downspoutLs, units) : "";
        String verdict = overflows() ? ": it overflows even clean and well hung" : ": it holds, clean and well hung";
        return sends + carries + leaders + verdict + "; with its outlet shut it would overflow in " + Words.significant(minutes, 2)
                + " min, full of leaves at once.";
    }

    private static final double[] SIZES_IN = {4, 5, 6, 7, 8, 10};
    private static final double COMMON_FALL = 1.0 / 240;

    /// The smallest common half-round gutter that carries this roof, with its downspouts, in words.
    String newGutter(Units units) {
        String fall = Words.length(12.7, units) + " per " + Words.length(3048, units);
        if (inflowLs.isEmpty()) return "a gutter of the size this roof asks for, falling " + fall + " to its downspout";
        double inflow = inflowLs.get(), length = edge.length().own();
        for (int outlets = Math.max(1, (int) Math.ceil(length / (50 * 304.8))); outlets <= 6; outlets++) {
            for (double size : SIZES_IN) {
                var section = Gutters.Section.of(GutterShape.HALF_ROUND, size * 25.4, Optional.empty());
                double carries = outlets * Gutters.capacityLs(section, COMMON_FALL, length / outlets);
                if (carries < inflow) continue;
                double pipe = pipe(inflow / outlets);
                return "a half-round gutter of at least " + Words.length(size * 25.4, units) + " falling " + fall + ", with "
                        + (outlets == 1 ? "a downspout" : outlets + " downspouts, one for each " + Words.length(length / outlets, units) + ",")
                        + " of at least " + Words.length(pipe, units) + " (it carries " + Words.flow(carries, units) + ", the roof sends " + Words.flow(inflow, units) + ")";
            }
        }
        return "a gutter sized by a roofer: no common half-round carries " + Words.flow(inflow, units);
    }

    private static double pipe(double inflow) {
        for (double size : new double[] {3, 4, 5}) if (Downspouts.capacityLs(size * 25.4, Optional.empty()) >= inflow) return Unit.INCH.toOwn(size);
        return Unit.INCH.toOwn(6);
    }
}
