package sillwright.sheet;

import java.util.List;

import sillwright.sheet.Canvas.Anchor;

/// Dimensions that follow each other on one line, each with its own length: where one is too short for its words, they hang below it, by turns nearer and further, on a leader.
final class Chain {
    private static final double TICK = 0.8, HANG = 3.7;

    private Chain() {}

    /// @param xs    of the ticks, from left to right
    /// @param words one for each space between
    /// @param fromY where the extension lines start
    /// @param y     of the line
    /// @return how far down its words reach
    static double level(Canvas canvas, List<Double> xs, List<String> words, double fromY, double y) {
        for (double x : xs) {
            canvas.line(x, fromY + TICK, x, y + 1.2, Ink.HAIR);
            canvas.line(x - TICK, y + TICK, x + TICK, y - TICK, Ink.FIRM);
        }
        canvas.line(xs.getFirst(), y, xs.getLast(), y, Ink.THIN);
        double deepest = y + 1.2;
        for (int i = 0; i + 1 < xs.size(); i++) {
            double middle = (xs.get(i) + xs.get(i + 1)) / 2, wide = Lettering.widthMm(words.get(i), Ink.SMALL);
            if (wide < xs.get(i + 1) - xs.get(i) - 1) canvas.write(middle, y - 0.8, words.get(i), Ink.SMALL, Anchor.MIDDLE, Ink.BLACK);
            else deepest = Math.max(deepest, hang(canvas, middle, y, words.get(i)));
        }
        return deepest;
    }

    private static double hang(Canvas canvas, double x, double y, String words) {
        for (int deep = 1; deep < 12; deep++) {
            double base = y + 0.6 + deep * HANG;
            Box box = Canvas.covers(x, base, words, Ink.SMALL, Anchor.MIDDLE).grown(0.4);
            if (!canvas.free(box) && deep < 11) continue;
            canvas.line(x, y, x, box.top(), Ink.HAIR);
            canvas.write(x, base, words, Ink.SMALL, Anchor.MIDDLE, Ink.BLACK);
            return base + 1;
        }
        throw new IllegalStateException("the last place is taken whatever is there");
    }

    /// A chain up the left of a view, its words lying, so that short spaces have them too.
    ///
    /// @param ys    of the ticks, from below up
    /// @param fromX where the extension lines start
    /// @param x     of the line; words end a little left of it
    static void upright(Canvas canvas, List<Double> ys, List<String> words, double fromX, double x) {
        for (double y : ys) {
            canvas.line(fromX - TICK, y, x - 1.2, y, Ink.HAIR);
            canvas.line(x - TICK, y + TICK, x + TICK, y - TICK, Ink.FIRM);
        }
        canvas.line(x, ys.getFirst(), x, ys.getLast(), Ink.THIN);
        for (int i = 0; i + 1 < ys.size(); i++) {
            double middle = (ys.get(i) + ys.get(i + 1)) / 2 + 1.1;
            while (!canvas.free(Canvas.covers(x - 1.8, middle, words.get(i), Ink.SMALL, Anchor.END))) middle -= 1;
            canvas.write(x - 1.8, middle, words.get(i), Ink.SMALL, Anchor.END, Ink.BLACK);
        }
    }
}
