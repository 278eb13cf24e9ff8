package sillwright.sheet;

import java.util.List;

import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.wood.Interval;
import sillwright.wood.Outlook;

/// How decay would go on, drawn small: mean rating over the years, with the water as it is and with it stopped.
public final class OutlookDrawing {
    private static final double WIDTH = 100, LEFT = 22, WIDE = 60, TOP = 5, TALL = 24;
    private static final int YEARS = 20;
    private static final List<String> RATINGS = List.of("sound", "slight", "moderate", "severe", "failed");

    private OutlookDrawing() {}

    public static Drawing draw(Outlook outlook, String title) {
        Canvas canvas = new Canvas(WIDTH, TOP + TALL + 7);
        for (int rating = 0; rating <= 4; rating++) {
            double y = y(rating);
            canvas.line(LEFT, y, LEFT + WIDE, y, rating == 0 ? Ink.FIRM : Ink.HAIR);
            canvas.write(LEFT - 1.5, y + 1, RATINGS.get(rating), Ink.SMALL, Anchor.END, Ink.BLACK);
        }
        for (int year = 0; year <= YEARS; year += 5) {
            canvas.line(x(year), y(0), x(year), y(0) + 1, Ink.THIN);
            canvas.write(x(year), y(0) + 5, year == 0 ? "now" : year + " y", Ink.SMALL, Anchor.MIDDLE, Ink.BLACK);
        }
        band(canvas, outlook.asIs().ratings(), Hatch.SOFTENED);
        curve(canvas, outlook.asIs().ratings(), Ink.ACTING);
        curve(canvas, outlook.stopped().ratings(), new Ink.Pen(Ink.BLACK, 0.4, "2 0.9"));
        double asIs = y(outlook.asIs().ratings().get(YEARS).median()), stopped = y(outlook.stopped().ratings().get(YEARS).median());
        if (stopped - asIs < 4) {
            canvas.write(LEFT + WIDE + 1.5, Math.min(asIs, stopped) - 0.6, "as it is, and", Ink.SMALL, Anchor.START, Ink.BLACK);
            canvas.write(LEFT + WIDE + 1.5, Math.min(asIs, stopped) + 3.6, "stopped", Ink.SMALL, Anchor.START, Ink.BLACK);
        } else {
            canvas.write(LEFT + WIDE + 1.5, asIs + 1, "as it is", Ink.SMALL, Anchor.START, Ink.ACT);
            canvas.write(LEFT + WIDE + 1.5, stopped + 1, "stopped", Ink.SMALL, Anchor.START, Ink.BLACK);
        }
        return canvas.done("outlook-" + outlook.member(), "Decay to come, " + title, "Mean decay rating over " + YEARS + " years. With the water as it is it goes from "
                + said(outlook.asIs().ratings()) + "; with the water stopped, from " + said(outlook.stopped().ratings()) + ".", 0.6);
    }

    private static String said(List<Interval> ratings) {
        return Words.number(ratings.getFirst().median(), 1) + " to " + Words.number(ratings.get(YEARS).median(), 1) + " (" + Words.number(ratings.get(YEARS).low(), 1) + " to "
                + Words.number(ratings.get(YEARS).high(), 1) + ")";
    }

    private static double x(int year) { return LEFT + WIDE * year / YEARS; }

    private static double y(double rating) { return TOP + TALL * (1 - Math.min(4, rating) / 4); }

    private static void curve(Canvas canvas, List<Interval> ratings, Ink.Pen pen) {
        double[] points = new double[2 * (YEARS + 1)];
        for (int year = 0; year <= YEARS; year++) {
            points[2 * year] = x(year);
            points[2 * year + 1] = y(ratings.get(year).median());
        }
        canvas.polyline(pen, points);
    }

    private static void band(Canvas canvas, List<Interval> ratings, Hatch hatch) {
        double[] points = new double[4 * (YEARS + 1)];
        for (int year = 0; year <= YEARS; year++) {
            points[2 * year] = x(year);
            points[2 * year + 1] = y(ratings.get(year).high());
            points[4 * YEARS + 2 - 2 * year] = x(year);
            points[4 * YEARS + 3 - 2 * year] = y(ratings.get(year).low());
        }
        canvas.polygon(hatch.fill(), Ink.HAIR, points);
    }
}
