package sillwright.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Csv;
import sillwright.measure.Known;
import sillwright.measure.Unit;

/// The plumbing code's tables of gutters and leaders, as printed: the roof each may serve.
///
/// @param shape     `half-round`, `rectangular`, `leader-round`, `leader-rectangular`
/// @param sizeMm    diameter, or the smaller side
/// @param size2Mm   the larger side; the same as the first of a round one
/// @param fall      rise over run; 0 of a leader
/// @param edition   2012 for the table of 2012 and before, 2015 for the one since
/// @param carriesLs the area printed, at 1 in/h, as a flow: it serves this much and no more
record GutterTable(String shape, double sizeMm, double size2Mm, double fall, int edition, double carriesLs, Known known) {

    static final List<GutterTable> ALL = read(GuttersCsv.TEXT);

    private static List<GutterTable> read(String csv) {
        List<GutterTable> all = new ArrayList<>();
        for (Csv.Row row : Csv.read(csv).rows()) {
            String[] sides = row.get("size_in").split("x");
            double one = Double.parseDouble(sides[0]) * 25.4, two = sides.length > 1 ? Double.parseDouble(sides[1]) * 25.4 : one;
            double flow = RoofWater.inflowLs(Unit.SQUARE_FOOT.toOwn(row.number("area_ft2")), 25.4, 0);
            all.add(new GutterTable(row.get("shape"), Math.min(one, two), Math.max(one, two), fall(row.get("fall_in_per_ft")),
                    (int) row.number("edition"), flow, Known.of(row.get("known"))));
        }
        return List.copyOf(all);
    }

    private static double fall(String written) {
        if (written.isEmpty()) return 0;
        String[] parts = written.split("/");
        return Double.parseDouble(parts[0]) / (parts.length > 1 ? Double.parseDouble(parts[1]) : 1) / 12;
    }

    /// The row for exactly this size and fall, the two sides in either order.
    static Optional<GutterTable> row(String shape, double sizeMm, double size2Mm, double fall, int edition) {
        double small = Math.min(sizeMm, size2Mm), large = Math.max(sizeMm, size2Mm);
        return ALL.stream().filter(row -> row.shape.equals(shape) && row.edition == edition && Math.abs(row.sizeMm - small) < 0.5
                && Math.abs(row.size2Mm - large) < 0.5 && Math.abs(row.fall - fall) < 1e-4).findFirst();
    }

    /// What the older table's half-round gutter carries, L/s, between its columns too.
    ///
    /// The table is the level-gutter formula times √2 for each doubling of fall, rounded by its makers (by 6 % at most).
    /// At a printed size and fall the cell is given back; between them the makers' rounding is carried over in
    /// proportion (on logarithms of size and fall), and beyond the table its last rounding is.
    ///
    /// @param diameterMm printed for 3 to 10 in
    /// @param fall       rise over run, 1/16 in/ft or more; printed to 1/2 in/ft
    static double olderHalfRoundLs(double diameterMm, double fall) {
        double[] sizes = {3, 4, 5, 6, 7, 8, 10}, falls = {1 / 192.0, 1 / 96.0, 1 / 48.0, 1 / 24.0};
        double atSize = place(sizes, diameterMm / 25.4), atFall = place(falls, fall);
        int s = (int) Math.min(Math.floor(atSize), sizes.length - 2), f = (int) Math.min(Math.floor(atFall), falls.length - 2);
        double u = atSize - s, v = atFall - f;
        double rounding = (1 - u) * ((1 - v) * rounding(sizes[s], falls[f]) + v * rounding(sizes[s], falls[f + 1]))
                + u * ((1 - v) * rounding(sizes[s + 1], falls[f]) + v * rounding(sizes[s + 1], falls[f + 1]));
        return rounding * Gutters.fallenHalfRoundLs(diameterMm, fall);
    }

    private static double rounding(double sizeIn, double fall) {
        double sizeMm = sizeIn * 25.4;
        return row("half-round", sizeMm, sizeMm, fall, 2012).orElseThrow().carriesLs / Gutters.fallenHalfRoundLs(sizeMm, fall);
    }

    /// Where a value lies among marks: 1.5 half way between the second and the third, on logarithms; never beyond the ends.
    private static double place(double[] marks, double value) {
        int last = marks.length - 1;
        if (value <= marks[0]) return 0;
        if (value >= marks[last]) return last;
        int i = 0;
        while (value > marks[i + 1]) i++;
        return i + Math.log(value / marks[i]) / Math.log(marks[i + 1] / marks[i]);
    }
}
