package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Member;
import sillwright.walk.Profile;
import sillwright.work.stock.Outline;

/// The outline of a moulding, full size: a template to print, check by its bars, glue to a board and cut out.
///
/// One millimetre of wood is one millimetre of paper. The fitted line is drawn firm, each step of the gauge as a cross, each arc with its radius.
public final class ProfileDrawing {
    private static final double EDGE = 14, HEAD = 16, FOOT = 34, LEAST_WIDE = 138;

    private ProfileDrawing() {}

    public static Drawing draw(Profile profile, Member member, Units units) {
        Outline outline = Outline.of(profile);
        double first = profile.offsets().getFirst().acrossMm(), wide = profile.offsets().getLast().acrossMm() - first;
        double high = profile.offsets().stream().mapToDouble(Profile.Offset::outMm).max().orElse(0);
        Canvas canvas = new Canvas(Math.max(LEAST_WIDE, wide + 2 * EDGE), HEAD + high + FOOT);
        double x0 = EDGE - first, y0 = HEAD + high;
        canvas.write(EDGE, 5, Lettering.fitted((profile.title().isBlank() ? "outline" : profile.title()) + ", " + Said.title(member), Ink.PLAIN, canvas.width() - EDGE - 2), Ink.PLAIN, Anchor.START, Ink.BLACK);
        canvas.write(EDGE, 9.6, "full size: print at 100 %, then lay a rule on both bars", Ink.SMALL, Anchor.START, Ink.ACT);
        canvas.line(EDGE - 4, y0, EDGE + wide + 4, y0, Ink.HIDDEN);
        canvas.add(Ink.BOLD.on(Markup.of("path").with("fill", "none").with("d", path(outline, x0, y0))));
        for (Profile.Offset offset : profile.offsets()) cross(canvas, x0 + offset.acrossMm(), y0 - offset.outMm());
        radii(canvas, outline, x0, y0, units);
        Marks.level(canvas, EDGE, EDGE + wide, y0, y0 + 6, Said.length(wide, units));
        bars(canvas, y0 + 15);
        canvas.write(EDGE, y0 + 31, "worst step off its line: " + (units == Units.US ? Words.number(outline.worstMm() / 25.4, 3) + " in" : Words.number(outline.worstMm(), 1) + " mm") + "; crosses: steps of the gauge", Ink.SMALL, Anchor.START, Ink.GREY);
        return canvas.done("profile-" + member.id(), "Outline of " + Said.title(member) + ", full size", "The outline of " + Said.title(member) + " in " + outline.strokes().size() + " strokes, " + Said.length(wide, units)
                + " wide and " + Said.length(high, units) + " out, drawn full size with bars to check it.", 0.8);
    }

    private static String path(Outline outline, double x0, double y0) {
        StringBuilder d = new StringBuilder();
        for (Outline.Stroke stroke : outline.strokes()) {
            if (d.isEmpty()) d.append("M").append(Marks.at(x0 + stroke.fromX(), y0 - stroke.fromY()));
            if (!stroke.arc()) d.append("L").append(Marks.at(x0 + stroke.toX(), y0 - stroke.toY()));
            else d.append("A").append(Markup.number(stroke.radiusMm())).append(" ").append(Markup.number(stroke.radiusMm())).append(" 0 ").append(stroke.large() ? "1 " : "0 ").append(stroke.cove() ? "0 " : "1 ")
                    .append(Marks.at(x0 + stroke.toX(), y0 - stroke.toY()));
        }
        return d.toString();
    }

    private static void cross(Canvas canvas, double x, double y) {
        canvas.line(x - 0.9, y, x + 0.9, y, Ink.THIN);
        canvas.line(x, y - 0.9, x, y + 0.9, Ink.THIN);
    }

    private static void radii(Canvas canvas, Outline outline, double x0, double y0, Units units) {
        Labels labels = new Labels(canvas, new Box(0, 10.6, canvas.width(), y0 + 3));
        for (Outline.Stroke stroke : outline.strokes()) bare(labels, stroke, x0, y0);
        List<Outline.Stroke> arcs = new ArrayList<>(outline.strokes().stream().filter(Outline.Stroke::arc).toList());
        for (Outline.Stroke arc : arcs) {
            double mx = (arc.fromX() + arc.toX()) / 2, my = (arc.fromY() + arc.toY()) / 2, ux = mx - arc.centreX(), uy = my - arc.centreY(), away = Math.hypot(ux, uy);
            double way = arc.large() ? -1 : 1, px = away < 1e-6 ? mx : arc.centreX() + way * ux / away * arc.radiusMm(), py = away < 1e-6 ? my : arc.centreY() + way * uy / away * arc.radiusMm();
            Marks.pointed(canvas, labels, x0 + px, y0 - py, (arc.cove() ? "cove R " : "R ") + Said.length(arc.radiusMm(), units), Ink.SMALL, Ink.BLACK);
        }
    }

    /// The line is cut along: no label may stand on it.
    private static void bare(Labels labels, Outline.Stroke stroke, double x0, double y0) {
        double from = Math.atan2(stroke.fromY() - stroke.centreY(), stroke.fromX() - stroke.centreX()), to = Math.atan2(stroke.toY() - stroke.centreY(), stroke.toX() - stroke.centreX());
        double turn = stroke.cove() ? around(to - from) : -around(from - to), far = stroke.arc() ? Math.abs(turn) * stroke.radiusMm() : Math.hypot(stroke.toX() - stroke.fromX(), stroke.toY() - stroke.fromY());
        int steps = Math.max(1, (int) Math.ceil(far));
        for (int i = 0; i <= steps; i++) {
            double at = (double) i / steps, angle = from + at * turn;
            if (stroke.arc()) labels.keepBare(x0 + stroke.centreX() + stroke.radiusMm() * Math.cos(angle), y0 - stroke.centreY() - stroke.radiusMm() * Math.sin(angle), 0.6);
            else labels.keepBare(x0 + stroke.fromX() + at * (stroke.toX() - stroke.fromX()), y0 - stroke.fromY() - at * (stroke.toY() - stroke.fromY()), 0.6);
        }
    }

    /// An angle in one turn, from 0.
    private static double around(double angle) { return angle - 2 * Math.PI * Math.floor(angle / (2 * Math.PI)); }

    /// A bar of 4 in and one of 100 mm: whichever rule is at hand.
    private static void bars(Canvas canvas, double y) {
        for (int i = 0; i < 4; i++) canvas.rect(new Box(EDGE + i * 25.4, y, 25.4, 2), i % 2 == 0 ? Ink.BLACK : Ink.PAPER, Ink.THIN);
        canvas.write(EDGE + 103, y + 2.2, "4 in", Ink.SMALL, Anchor.START, Ink.BLACK);
        for (int i = 0; i < 10; i++) canvas.rect(new Box(EDGE + i * 10, y + 5.5, 10, 2), i % 2 == 0 ? Ink.BLACK : Ink.PAPER, Ink.THIN);
        canvas.write(EDGE + 103, y + 7.9, "100 mm", Ink.SMALL, Anchor.START, Ink.BLACK);
    }

    /// As the name of a file has it.
    static String file(Member member) { return "profile-" + Sheets.fileName(member.id().toLowerCase(Locale.ROOT)); }
}
