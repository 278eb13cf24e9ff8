package sillwright.sheet;

import java.util.List;

import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.wood.Interval;
import sillwright.wood.Outlook;

/// How decay would go on, drawn small: mean rating over the years, with the water as it is and with it stopped.
public final class OutlookDrawing {
    /// The paper that one chart takes, mm.
    static final double WIDTH = 60, HEIGHT = 27.5;
    private static final double LEFT = 16, WIDE = 29, TOP = 3, TALL = 18;
    private static final int YEARS = 20;
    private static final List<String> RATINGS = List.of("sound", "slight", "moderate", "severe", "failed");

    private final Canvas canvas;
    private final double left;
    private final double top;
    private final double wide;
    private final double tall;

    private OutlookDrawing(Canvas canvas, double wide, double tall, double left, double top) {
        this.canvas = canvas;
        this.left = left;
        this.top = top;
        this.wide = wide;
        this.tall = tall;
    }

    public static Drawing draw(Outlook outlook, String title) {
        Canvas canvas = new Canvas(WIDTH, HEIGHT);
        new OutlookDrawing(canvas, WIDE, TALL, LEFT, TOP).draw(outlook);
        return canvas.done("outlook-" + outlook.member(), "Decay to come, " + title, told(outlook), 0.6);
    }

    /// As small as a line of a table: the band and both curves, nothing lettered; the height of the strip is from sound to failed.
    static Drawing strip(Outlook outlook, String title) {
        Canvas canvas = new Canvas(24, 4);
        OutlookDrawing strip = new OutlookDrawing(canvas, 23.6, 3.6, 0.2, 0.2);
        canvas.line(strip.left, strip.y(0), strip.left + strip.wide, strip.y(0), Ink.THIN);
        canvas.line(strip.left, strip.y(4), strip.left + strip.wide, strip.y(4), Ink.HAIR);
        strip.curves(outlook);
        return canvas.done("outlook-" + outlook.member(), "Decay to come, " + title, told(outlook), 0.5);
    }

    static String told(Outlook outlook) {
        return "Mean decay rating over " + YEARS + " years. With the water as it is it goes from " + said(outlook.asIs().ratings()) + "; with the water stopped, from "
                + said(outlook.stopped().ratings()) + ".";
    }

    private void draw(Outlook outlook) {
        for (int rating = 0; rating <= 4; rating++) {
            double y = y(rating);
            canvas.line(left, y, left + wide, y, rating == 0 ? Ink.FIRM : Ink.HAIR);
            canvas.write(left - 1.2, y + 1, RATINGS.get(rating), Ink.SMALL, Anchor.END, Ink.BLACK);
        }
        for (int year = 0; year <= YEARS; year += 10) {
            canvas.line(x(year), y(0), x(year), y(0) + 1, Ink.THIN);
            canvas.write(x(year), y(0) + 4.4, year == 0 ? "now" : year + " y", Ink.SMALL, Anchor.MIDDLE, Ink.BLACK);
        }
        curves(outlook);
        double asIs = y(outlook.asIs().ratings().get(YEARS).median()), stopped = y(outlook.stopped().ratings().get(YEARS).median()), x = left + wide + 1;
        if (stopped - asIs < 3.9) {
            double middle = (asIs + stopped) / 2;
            canvas.write(x, middle - 0.8, "as it is", Ink.SMALL, Anchor.START, Ink.ACT);
            canvas.write(x, middle + 3, "stopped", Ink.SMALL, Anchor.START, Ink.BLACK);
        } else {
            canvas.write(x, asIs + 1, "as it is", Ink.SMALL, Anchor.START, Ink.ACT);
            canvas.write(x, stopped + 1, "stopped", Ink.SMALL, Anchor.START, Ink.BLACK);
        }
    }

    private void curves(Outlook outlook) {
        band(outlook.asIs().ratings(), Hatch.SOFTENED);
        curve(outlook.asIs().ratings(), Ink.ACTING);
        curve(outlook.stopped().ratings(), new Ink.Pen(Ink.BLACK, 0.4, "2 0.9"));
    }

    private static String said(List<Interval> ratings) {
        return Words.number(ratings.getFirst().median(), 1) + " to " + Words.number(ratings.get(YEARS).median(), 1) + " (" + Words.number(ratings.get(YEARS).low(), 1) + " to "
                + Words.number(ratings.get(YEARS).high(), 1) + ")";
    }

    private double x(int year) { return left + wide * year / YEARS; }

    private double y(double rating) { return top + tall * (1 - Math.min(4, rating) / 4); }

    private void curve(List<Interval> ratings, Ink.Pen pen) {
        double[] points = new double[2 * (YEARS + 1)];
        for (int year = 0; year <= YEARS; year++) {
            points[2 * year] = x(year);
            points[2 * year + 1] = y(ratings.get(year).median());
        }
        canvas.polyline(pen, points);
    }

    private void band(List<Interval> ratings, Hatch hatch) {
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
