package sillwright.sheet;

import sillwright.work.joint.Fixings;
import sillwright.work.joint.Joinery;

/// The fasteners of a joint at their true places in one view: circles where they are driven from it, centre lines where they are seen from beside.
final class Fixed {
    static final Ink.Pen CENTRE = new Ink.Pen(Ink.BLACK, 0.18, "1.8 0.5 0.4 0.5");
    private static final double MOST = 60;

    private final Bench bench;
    private final Joinery joinery;
    private final Fixings fixings;

    private Fixed(Bench bench, Joinery joinery, Fixings fixings) {
        this.bench = bench;
        this.joinery = joinery;
        this.fixings = fixings;
    }

    /// @param fromMm   where the joint starts on the member
    /// @param way      1 where its places run toward the far end, -1 where they run back
    /// @param drivenIn whether this view looks at the face they are driven from
    /// @param lowMm    where the face they are driven from starts across this view
    static void draw(Bench bench, Joinery joinery, double fromMm, int way, boolean drivenIn, double lowMm) {
        joinery.fixings().ifPresent(fixings -> new Fixed(bench, joinery, fixings).draw(fromMm, way, drivenIn, lowMm));
    }

    private void draw(double fromMm, int way, boolean drivenIn, double lowMm) {
        if (fixings.count() > MOST) return;
        double over = bench.across(), radius = Math.max(0.45, bench.scale().paper(fixings.diameterMm()) / 2);
        for (Fixings.Place place : fixings.places()) {
            double at = fromMm + way * place.alongMm();
            if (at < bench.from() || at > bench.to()) continue;
            switch (fixings.sort()) {
                case DOWEL -> {
                    double half = fixings.lengthMm() / 2, row = drivenIn ? lowMm + place.acrossMm() : over / 2;
                    bench.line(Math.max(bench.from(), at - half), row, Math.min(bench.to(), at + half), row, CENTRE);
                }
                case SCREW, BOLT -> {
                    if (drivenIn) bench.canvas().circle(bench.px(at, lowMm + place.acrossMm()), bench.py(at, lowMm + place.acrossMm()), radius, Ink.PAPER, Ink.THIN);
                    else bench.line(at, fixings.sort() == Fixings.Sort.BOLT || joinery.sort() == Joinery.Sort.SCARF ? -over * 0.06 : 0, at,
                            fixings.sort() == Fixings.Sort.BOLT || joinery.sort() == Joinery.Sort.SCARF ? over * 1.06 : Math.min(over, fixings.lengthMm()), CENTRE);
                }
            }
        }
    }

    /// `first 2-1/2 in from the joint's start, then every 5 in; rows 1-3/8 in from the edges`.
    static String words(Fixings fixings, sillwright.measure.Units units) {
        double first = fixings.places().getFirst().alongMm(), next = first, edge = fixings.places().stream().mapToDouble(Fixings.Place::acrossMm).min().orElse(0);
        for (Fixings.Place place : fixings.places()) if (place.alongMm() > first + 1e-6 && (next <= first || place.alongMm() < next)) next = place.alongMm();
        String sort = switch (fixings.sort()) {
            case SCREW -> "screw";
            case BOLT -> "bolt";
            case DOWEL -> "dowel";
        };
        return sillwright.measure.Words.count(fixings.count(), sort) + " " + fixings.size(units) + " × " + Said.length(fixings.lengthMm(), units) + ": first " + Said.length(Math.abs(first), units) + (first < 0 ? " back" : "")
                + " from the joint's start" + (next > first + 1 ? ", next " + Said.length(next - first, units) + " on" : "") + "; " + Said.length(edge, units) + " from the edge";
    }
}
