package sillwright.sheet;

import java.util.List;

import sillwright.measure.Units;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Member;

/// One view of a stretch of a member, to scale: upright members stand, all others lie.
///
/// @param from   where the view starts, mm from the member's start
/// @param to     where it ends
/// @param across how wide the member is in this view, mm
/// @param x      of its lower left corner on paper
/// @param y      likewise
record Bench(Canvas canvas, Member member, Scale scale, double from, double to, double across, double x, double y) {
    boolean upright() { return member.run() == Member.Run.UPRIGHT; }

    double px(double along, double over) { return x + scale.paper(upright() ? over : along - from); }

    double py(double along, double over) { return y - scale.paper(upright() ? along - from : over); }

    Box box(double a, double b, double low, double high) { return Box.around(px(a, low), py(a, low), px(b, high), py(b, high)); }

    Box whole() { return box(from, to, 0, across); }

    Hatch newWood() { return upright() ? Hatch.NEW_UPRIGHT : Hatch.NEW_LEVEL; }

    /// A closed shape, its corners as along and over in turn.
    void shape(String fill, Ink.Pen pen, double... corners) {
        double[] points = new double[corners.length];
        for (int i = 0; i < corners.length; i += 2) {
            points[i] = px(corners[i], corners[i + 1]);
            points[i + 1] = py(corners[i], corners[i + 1]);
        }
        canvas.polygon(fill, pen, points);
    }

    void line(double a, double over, double b, double over2, Ink.Pen pen) { canvas.line(px(a, over), py(a, over), px(b, over2), py(b, over2), pen); }

    /// Both edges, and each end as a true end or a break.
    void outline() {
        line(from, 0, to, 0, Ink.FIRM);
        line(from, across, to, across, Ink.FIRM);
        end(from, from <= 0.5);
        end(to, to >= member.lengthMm() - 0.5);
    }

    /// One end, as a true end or as a break.
    void end(double at, boolean ends) {
        if (ends) line(at, 0, at, across, Ink.FIRM);
        else if (upright()) Marks.broken(canvas, px(at, 0), py(at, 0), px(at, across), py(at, across));
        else Marks.broken(canvas, px(at, across), py(at, across), px(at, 0), py(at, 0));
    }

    /// A dimension along the member, `away` paper millimetres off its left or lower edge.
    void measureAlong(double a, double b, double away, Units units) {
        String words = Said.length(Math.abs(b - a), units);
        if (upright()) Marks.upright(canvas, py(a, 0), py(b, 0), whole().left(), whole().left() - away, words);
        else Marks.level(canvas, px(Math.min(a, b), 0), px(Math.max(a, b), 0), whole().bottom(), whole().bottom() + away, words);
    }

    /// Lengths that follow each other along the member.
    void string(List<Double> stops, List<String> words, double away) {
        if (upright()) Chain.upright(canvas, stops.stream().map(at -> py(at, 0)).toList(), words, whole().left(), whole().left() - away + 1);
        else Chain.level(canvas, stops.stream().map(at -> px(at, 0)).toList(), words, whole().bottom(), whole().bottom() + away);
    }

    /// A dimension across the whole view, at its far end.
    void measureAcross(Units units) {
        String words = Said.length(across, units);
        if (upright()) Marks.level(canvas, whole().left(), whole().right(), whole().top(), whole().top() - 4, words);
        else Marks.upright(canvas, whole().bottom(), whole().top(), whole().left(), whole().left() - 4, words);
    }

    /// What the view shows, beneath a standing one and above a lying one.
    void named(List<String> lines) {
        if (!upright()) {
            canvas.write(whole().left(), whole().top() - 1.8, String.join(" ", lines), Ink.SMALL, Anchor.START, Ink.BLACK);
            return;
        }
        double y = whole().bottom() + 5;
        while (!free(lines, y) && y < whole().bottom() + 40) y += 1.5;
        for (int i = 0; i < lines.size(); i++) canvas.write(middle(lines.get(i)), y + i * 3.7, lines.get(i), Ink.SMALL, Anchor.MIDDLE, Ink.BLACK);
    }

    private double middle(String words) { return Math.max(whole().midX(), Lettering.widthMm(words, Ink.SMALL) / 2); }

    private boolean free(List<String> lines, double y) {
        for (int i = 0; i < lines.size(); i++) if (!canvas.free(Canvas.covers(middle(lines.get(i)), y + i * 3.7, lines.get(i), Ink.SMALL, Anchor.MIDDLE))) return false;
        return true;
    }

    /// The way of the grain, in the middle of a stretch.
    void grain(double a, double b) {
        double middle = (a + b) / 2, half = Math.min(Math.abs(b - a) * 0.3, scale.ratio() * 9);
        if (scale.paper(half) < 1.5) return;
        Marks.grain(canvas, px(middle - half, across / 2), py(middle - half, across / 2), px(middle + half, across / 2),
                py(middle + half, across / 2));
    }
}
