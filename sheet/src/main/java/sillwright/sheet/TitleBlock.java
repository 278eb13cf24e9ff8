package sillwright.sheet;

import java.util.Optional;

import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Survey;

/// The strip at the foot of a drawing: what it shows, of what building, at what scale, when it was walked, and what it is not.
final class TitleBlock {
    static final double HEIGHT = 17;

    private TitleBlock() {}

    /// Adds the strip beneath all that is drawn so far.
    ///
    /// @param bearing the direction the drawn side looks to, degrees from north, clockwise; empty where there is none
    static void draw(Canvas canvas, Survey survey, String shows, Scale scale, Optional<Double> bearing) {
        double top = canvas.height() + 1, wide = canvas.width();
        canvas.heighten(top + HEIGHT);
        canvas.line(0, top, wide, top, Ink.BOLD);
        canvas.line(0, top + 0.9, wide, top + 0.9, Ink.HAIR);
        double last = wide - 62, bar = last - 62, compass = bearing.isPresent() ? bar - 26 : bar;
        canvas.write(1, top + 7.2, Lettering.fitted(shows, Ink.LARGE, compass - 4), Ink.LARGE, Anchor.START, Ink.BLACK);
        canvas.write(1, top + 13.4, Lettering.fitted(survey.name(), Ink.PLAIN, compass - 4), Ink.PLAIN, Anchor.START, Ink.BLACK);
        bearing.ifPresent(degrees -> compass(canvas, compass + 6.5, top + 8.8, degrees));
        for (double x : new double[] {compass, bar, last}) if (x < wide) canvas.line(x - 2, top + 2.5, x - 2, top + HEIGHT - 1, Ink.HAIR);
        canvas.write(bar, top + 6, "scale " + scale.words(), Ink.SMALL, Anchor.START, Ink.BLACK);
        Marks.bar(canvas, scale, bar, top + 8.6);
        canvas.write(last, top + 6, Said.walkedWords(survey), Ink.SMALL, Anchor.START, Ink.BLACK);
        canvas.write(last, top + 10.6, "screening, not engineering", Ink.SMALL, Anchor.START, Ink.ACT);
        canvas.write(last, top + 15, "measure again before cutting", Ink.SMALL, Anchor.START, Ink.BLACK);
    }

    /// North up the page; the wedge points where the side looks.
    private static void compass(Canvas canvas, double x, double y, double degrees) {
        double radius = 4.6, turn = Math.toRadians(degrees), ux = Math.sin(turn), uy = -Math.cos(turn);
        canvas.circle(x, y, radius, Ink.PAPER, Ink.THIN);
        canvas.line(x, y - radius, x, y - radius + 1.6, Ink.FIRM);
        canvas.polygon(Ink.BLACK, Ink.THIN, x + ux * (radius - 0.4), y + uy * (radius - 0.4), x - uy * 1.1, y + ux * 1.1, x + uy * 1.1, y - ux * 1.1);
        canvas.write(x + radius + 1.4, y - 1.2, "looks", Ink.SMALL, Anchor.START, Ink.BLACK);
        canvas.write(x + radius + 1.4, y + 3, Said.point(degrees) + " " + Math.round(degrees) + "°", Ink.SMALL, Anchor.START, Ink.BLACK);
    }
}
