package sillwright.sheet;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;

/// Marks that several drawings share: dimension strings, labels with leaders, the grain arrow, the break in a long member.
final class Marks {
    private Marks() {}

    /// A level dimension: extension lines from what is measured, a line between slanted ticks, the length over it.
    ///
    /// @param fromY where the extension lines start
    /// @param y     of the dimension line
    static void level(Canvas canvas, double x1, double x2, double fromY, double y, String words) {
        double over = y > fromY ? 1.2 : -1.2, gap = y > fromY ? 0.8 : -0.8;
        for (double x : new double[] {x1, x2}) {
            canvas.line(x, fromY + gap, x, y + over, Ink.HAIR);
            canvas.line(x - 0.8, y + 0.8, x + 0.8, y - 0.8, Ink.FIRM);
        }
        canvas.line(x1, y, x2, y, Ink.THIN);
        double wide = Lettering.widthMm(words, Ink.SMALL), middle = (x1 + x2) / 2;
        double[] starts = {middle - wide / 2, Math.max(x1, x2) + 1.4, Math.min(x1, x2) - 1.4 - wide};
        for (int raise = 0; raise < 12; raise++)
            for (int i = 0; i < starts.length; i++) {
                if (i == 0 && raise == 0 && wide > Math.abs(x2 - x1) - 1) continue;
                double base = i == 0 ? y - 0.8 - raise * 3.4 : y + 1 - raise * 3.4;
                Box box = Canvas.covers(starts[i], base, words, Ink.SMALL, Anchor.START);
                if (box.left() >= 0 && box.right() <= canvas.width() && canvas.free(box)) {
                    canvas.write(starts[i], base, words, Ink.SMALL, Anchor.START, Ink.BLACK);
                    return;
                }
            }
        elsewhere(canvas, middle, y, words);
    }

    /// An upright dimension, the length climbing beside it.
    ///
    /// @param fromX where the extension lines start
    /// @param x     of the dimension line
    static void upright(Canvas canvas, double y1, double y2, double fromX, double x, String words) {
        double over = x > fromX ? 1.2 : -1.2, gap = x > fromX ? 0.8 : -0.8;
        for (double y : new double[] {y1, y2}) {
            canvas.line(fromX + gap, y, x + over, y, Ink.HAIR);
            canvas.line(x - 0.8, y + 0.8, x + 0.8, y - 0.8, Ink.FIRM);
        }
        canvas.line(x, y1, x, y2, Ink.THIN);
        double wide = Lettering.widthMm(words, Ink.SMALL), middle = (y1 + y2) / 2;
        double[] middles = {middle, Math.min(y1, y2) - 1.4 - wide / 2, Math.max(y1, y2) + 1.4 + wide / 2};
        for (int shift = 0; shift < 12; shift++)
            for (int i = 0; i < middles.length; i++) {
                if (i == 0 && shift == 0 && wide > Math.abs(y2 - y1) - 1) continue;
                double base = i == 0 ? x - 0.8 - shift * 3.4 : x + 1 - shift * 3.4;
                Box box = Canvas.coversUpright(base, middles[i], words, Ink.SMALL);
                if (box.left() >= 0 && box.top() >= 0 && canvas.free(box)) {
                    canvas.writeUpright(base, middles[i], words, Ink.SMALL, Ink.BLACK);
                    return;
                }
            }
        elsewhere(canvas, x, middle, words);
    }

    /// Where nothing beside the line is free, the length goes to the nearest bare paper, with a leader.
    private static void elsewhere(Canvas canvas, double x, double y, String words) {
        Labels labels = new Labels(canvas, new Box(0, 0, canvas.width(), canvas.height()));
        Box box = labels.place(x, y, Lettering.widthMm(words, Ink.SMALL), Ink.SMALL);
        canvas.addOver(Canvas.lined(x, y, box.nearX(x), box.nearY(y), Ink.HAIR));
        canvas.write(box.left(), box.top() + Ink.SMALL * 0.76, words, Ink.SMALL, Anchor.START, Ink.BLACK);
    }

    /// A boxed label with a leader to its point.
    static void pointed(Canvas canvas, Labels labels, double x, double y, String words, double size, String colour) {
        double pad = 0.9, wide = Lettering.widthMm(words, size) + 2 * pad, high = size + 2 * pad - 0.2;
        Box box = labels.place(x, y, wide, high);
        canvas.addOver(Canvas.lined(x, y, box.nearX(x), box.nearY(y), new Ink.Pen(colour, 0.16, "")));
        canvas.addOver(Markup.of("circle").with("cx", x).with("cy", y).with("r", 0.55).with("fill", colour));
        canvas.addOver(new Ink.Pen(colour, 0.25, "").on(Markup.of("rect").with("x", box.left()).with("y", box.top()).with("width", wide)
                .with("height", high)
                .with("rx", 0.6).with("fill", Ink.PAPER)));
        canvas.write(box.left() + pad, box.top() + pad + size * 0.76 - 0.1, words, size, Anchor.START, colour);
    }

    /// A flag for water: a swallow-tailed pennant, its point at the drop.
    static void flag(Canvas canvas, Labels labels, double x, double y, String words) {
        double size = Ink.PLAIN, wide = Lettering.widthMm(words, size) + 4.4, high = size + 1.4;
        Box box = labels.place(x, y, wide, high);
        canvas.addOver(Canvas.lined(x, y, box.nearX(x), box.nearY(y), new Ink.Pen(Ink.ACT, 0.18, "")));
        canvas.addOver(Markup.of("path").with("d", drop(x, y)).with("fill", Ink.ACT));
        double l = box.left(), t = box.top(), r = box.right(), b = box.bottom(), m = box.midY();
        canvas.addOver(Ink.ACTING.on(Markup.of("path").with("fill", Ink.PAPER).with("d", "M" + at(l, t) + "L" + at(r, t) + "L" + at(r - 1.8, m) + "L"
                + at(r, b) + "L" + at(l, b) + "Z")));
        canvas.write(l + 1.1, t + 0.65 + size * 0.76, words, size, Anchor.START, Ink.ACT);
    }

    static String drop(double x, double y) {
        return "M" + at(x, y - 1.9) + "C" + at(x + 0.5, y - 1) + " " + at(x + 1.1, y - 0.5) + " " + at(x + 1.1, y + 0.1) + "C" + at(x + 1.1, y + 0.71) + " " + at(x + 0.61, y + 1.2) + " " + at(x, y + 1.2)
                + "C" + at(x - 0.61, y + 1.2) + " " + at(x - 1.1, y + 0.71) + " " + at(x - 1.1, y + 0.1) + "C" + at(x - 1.1, y - 0.5) + " " + at(x - 0.5, y - 1) + " " + at(x, y - 1.9) + "Z";
    }

    static String at(double x, double y) { return Markup.number(x) + " " + Markup.number(y); }

    /// A short number beside something, with a leader only where it had to move off.
    static void key(Canvas canvas, Labels labels, double x, double y, String words, double size) {
        double wide = Lettering.widthMm(words, size) + 0.8, high = size * 0.98;
        Box here = new Box(x - wide / 2, y - high / 2, wide, high);
        Box box = labels.free(here.grown(0.2)) ? here : labels.place(x, y, wide, high);
        if (box != here) canvas.addOver(Canvas.lined(x, y, box.nearX(x), box.nearY(y), Ink.HAIR));
        canvas.addOver(Markup.of("rect").with("x", box.left()).with("y", box.top()).with("width", wide).with("height", high).with("rx", 0.5)
                .with("fill", Ink.PAPER).with("fill-opacity", 0.85));
        canvas.write(box.left() + 0.4, box.top() + size * 0.76, words, size, Anchor.START, Ink.BLACK);
    }

    /// The way of the grain: a long arrow with a barb at each end.
    static void grain(Canvas canvas, double x1, double y1, double x2, double y2) {
        canvas.line(x1, y1, x2, y2, Ink.FIRM);
        double length = Math.hypot(x2 - x1, y2 - y1), ux = (x2 - x1) / length, uy = (y2 - y1) / length;
        canvas.line(x2, y2, x2 - 2.2 * ux + 0.9 * uy, y2 - 2.2 * uy - 0.9 * ux, Ink.FIRM);
        canvas.line(x1, y1, x1 + 2.2 * ux - 0.9 * uy, y1 + 2.2 * uy + 0.9 * ux, Ink.FIRM);
    }

    /// The broken edge of a member that goes on: a lightning stroke between two points, paper beyond it.
    static void broken(Canvas canvas, double x1, double y1, double x2, double y2) {
        double mx = (x1 + x2) / 2, my = (y1 + y2) / 2, ux = (x2 - x1), uy = (y2 - y1), length = Math.hypot(ux, uy);
        ux /= length;
        uy /= length;
        double a = Math.min(1.6, length / 6);
        canvas.polyline(Ink.THIN, x1 - ux * 1.5, y1 - uy * 1.5, mx - ux * a, my - uy * a, mx - ux * a / 3 - uy * a, my - uy * a / 3 + ux * a, mx
                + ux * a / 3 + uy * a, my + uy * a / 3 - ux * a,
                mx + ux * a, my + uy * a, x2 + ux * 1.5, y2 + uy * 1.5);
    }

    /// A bar of the building's own measure, so that a copy of another size can still be scaled.
    static void bar(Canvas canvas, Scale scale, double x, double y) {
        double whole = scale.barMm(), long1 = scale.paper(whole);
        int parts = 4;
        for (int i = 0; i < parts; i++)
            canvas.rect(new Box(x + long1 * i / parts, y, long1 / parts, 1.3), i % 2 == 0 ? Ink.BLACK : Ink.PAPER, Ink.THIN);
        canvas.write(x, y + 4.4, "0", Ink.SMALL, Anchor.START, Ink.BLACK);
        canvas.write(x + long1, y + 4.4, round(whole, scale.units()), Ink.SMALL, Anchor.END, Ink.BLACK);
    }

    private static String round(double mm, Units units) {
        if (units == Units.SI) return mm >= 1000 ? Words.number(mm / 1000, 1) + " m" : Words.number(mm, 0) + " mm";
        return mm >= 304.8 ? Words.number(mm / 304.8, 1) + " ft" : Words.number(mm / 25.4, 1) + " in";
    }

    /// A small square of hatch with what it means; returns where the next may start.
    static double swatch(Canvas canvas, double x, double y, Hatch hatch, String words) {
        canvas.rect(new Box(x, y, 6, 3.6), hatch.fill(), Ink.THIN);
        Box box = canvas.write(x + 7, y + 2.9, words, Ink.SMALL, Anchor.START, Ink.BLACK);
        return box.right() + 4.5;
    }
}
