package sillwright.wood.strength;

import java.util.LinkedHashMap;
import java.util.Map;

import sillwright.measure.Csv;

/// The metric way of the same checks, by limit states: design strengths and how far slenderness takes from them. Stresses in MPa.
///
/// Source: *EN 1995-1-1* (2004 with A1); kc, kmod and kcrit read in worked examples on public pages, the rest from memory.
public final class Eurocode {
    private Eurocode() {}

    /// Partial factor of sawn wood and of connections.
    public static final double SAWN = 1.3;

    /// Characteristic strengths of a class, MPa: fm,k, fc,0,k, fc,90,k and E0.05.
    public record Strengths(double bendingMPa, double alongMPa, double acrossMPa, double elastic05MPa) {}

    private static final Map<String, Strengths> CLASSES = read(StrengthClassesCsv.TEXT);

    /// Every class of the table, by name: `C24`.
    public static Map<String, Strengths> classes() { return CLASSES; }

    private static Map<String, Strengths> read(String csv) {
        Map<String, Strengths> classes = new LinkedHashMap<>();
        for (Csv.Row row : Csv.read(csv).rows())
            classes.put(row.get("class"), new Strengths(row.number("bending"), row.number("along"), row.number("across"), row.number("elastic05")));
        return java.util.Collections.unmodifiableMap(classes);
    }

    /// How long the load stays, longest first.
    public enum Stays { PERMANENT, LONG, MEDIUM, SHORT, INSTANTANEOUS }

    /// kmod of sawn wood.
    ///
    /// @param serviceClass 1 heated, 2 sheltered, 3 open to the weather
    public static double kmod(Stays stays, int serviceClass) {
        return (serviceClass < 3 ? new double[] {0.60, 0.70, 0.80, 0.90, 1.10} : new double[] {0.50, 0.55, 0.65, 0.70, 0.90})[stays.ordinal()];
    }

    /// What a characteristic strength may be counted as.
    public static double designMPa(double characteristicMPa, Stays stays, int serviceClass) { return kmod(stays, serviceClass) * characteristicMPa / SAWN; }

    /// λrel of a column.
    ///
    /// @param slender       length over radius of gyration
    /// @param alongMPa      fc,0,k
    /// @param elastic05MPa  E0.05
    public static double slenderness(double slender, double alongMPa, double elastic05MPa) { return slender / Math.PI * Math.sqrt(alongMPa / elastic05MPa); }

    /// kc of a column of sawn wood: 1 up to λrel 0.3.
    public static double column(double relative) {
        if (relative <= 0.3) return 1;
        double k = 0.5 * (1 + 0.2 * (relative - 0.3) + relative * relative);
        return 1 / (k + Math.sqrt(k * k - relative * relative));
    }

    /// λrel,m of a rectangular softwood beam that may tip: critical stress 0.78·b²·E0.05/(h·lef).
    public static double tipping(double levelMm, double uprightMm, double effectiveMm, double bendingMPa, double elastic05MPa) {
        return Math.sqrt(bendingMPa * uprightMm * effectiveMm / (0.78 * levelMm * levelMm * elastic05MPa));
    }

    /// kcrit of a beam.
    public static double beam(double relative) {
        if (relative <= 0.75) return 1;
        return relative <= 1.4 ? 1.56 - 0.75 * relative : 1 / (relative * relative);
    }

    /// Pressed and bent over both sides: the greater of the two sums, km 0.7 for a rectangle. Each argument a stress over what it may be, the press without kc.
    public static double combined(double press, double kcOverDepth, double kcOverWidth, double overDepth, double overWidth) {
        return Math.max(press / kcOverDepth + overDepth + 0.7 * overWidth, press / kcOverWidth + 0.7 * overDepth + overWidth);
    }
}
