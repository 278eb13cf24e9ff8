package sillwright.water;

import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Known;

/// What a downspout carries.
public final class Downspouts {
    private Downspouts() {}

    static final Basis RULE = Basis.read("A gutter supplier's note of plumbing code practice", "1 in² of downspout serves 1,200 ft² at 1 in/h");
    static final Basis TABLE = Basis.read("International Plumbing Code, 2015 and after, quoted in a public building-plan repository", "table 1106.3, vertical leaders");
    static final Basis TABLE_MEMORY = Basis.memory("International Plumbing Code, 2015 and after", "table 1106.3, vertical leaders");
    static final Basis THIRD_FULL = Basis.memory("Wyly and Eaton, as in EN 12056-3", "vertical pipe a third full");

    /// What it carries, L/s: by the code's table where that has the size, else by the rule of its area.
    public static double capacityLs(double sizeMm, Optional<Double> size2Mm) {
        return tableLs(sizeMm, size2Mm).orElseGet(() -> ruleLs(areaMm2(sizeMm, size2Mm)));
    }

    /// The clear section, mm².
    public static double areaMm2(double sizeMm, Optional<Double> size2Mm) {
        return size2Mm.map(other -> sizeMm * other).orElse(Math.PI * sizeMm * sizeMm / 4);
    }

    /// By its area, L/s: 1 in² serves 1,200 ft² of roof at 1 in/h.
    ///
    /// Source: plumbing code practice, a gutter supplier's note (read). Too kind to the smallest pipes, unkind to the large.
    public static double ruleLs(double areaMm2) {
        return RoofWater.inflowLs(1200 * 304.8 * 304.8, 25.4, 0) * areaMm2 / (25.4 * 25.4);
    }

    /// By the plumbing code's table of vertical leaders, L/s, where that has the size.
    public static Optional<Double> tableLs(double sizeMm, Optional<Double> size2Mm) { return row(sizeMm, size2Mm).map(GutterTable::carriesLs); }

    /// What the capacity of this size rests on.
    static Basis basis(double sizeMm, Optional<Double> size2Mm) {
        return row(sizeMm, size2Mm).map(row -> row.known() == Known.READ ? TABLE : TABLE_MEMORY).orElse(RULE);
    }

    static Optional<GutterTable> row(double sizeMm, Optional<Double> size2Mm) {
        return GutterTable.row(size2Mm.isPresent() ? "leader-rectangular" : "leader-round", sizeMm, size2Mm.orElse(sizeMm), 0, 2015);
    }

    /// A round pipe with a third of its section full of water clinging to its wall, L/s.
    ///
    /// 2.5e-4·k^(-0.167)·d^2.667·f^1.667, k = 0.25 mm, f = 0.33, mm. Source: Wyly and Eaton, as in EN 12056-3 (from memory).
    ///
    /// @param diameterMm 50 to 150
    public static double thirdFullLs(double diameterMm) {
        return 2.5e-4 * Math.pow(0.25, -0.167) * Math.pow(diameterMm, 2.667) * Math.pow(0.33, 1.667);
    }
}
