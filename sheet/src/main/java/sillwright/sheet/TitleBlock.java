package sillwright.sheet;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Side;
import sillwright.walk.Survey;

/// The strip at the foot of a drawing: what it shows, of what building, at what scale, when it was walked, and what it is not.
final class TitleBlock {
    static final double HEIGHT = 17;
    /// Half the diagonal of the plan in its circle, mm.
    private static final double PLAN = 2.9;

    private TitleBlock() {}

    /// Adds the strip beneath all that is drawn so far.
    ///
    /// @param side the one that is drawn
    static void draw(Canvas canvas, Survey survey, Side side, Scale scale) {
        double top = canvas.height() + 1, wide = canvas.width();
        canvas.heighten(top + HEIGHT);
        canvas.line(0, top, wide, top, Ink.BOLD);
        canvas.line(0, top + 0.9, wide, top + 0.9, Ink.HAIR);
        double last = wide - 49, bar = last - 50, compass = bar - 27;
        canvas.write(1, top + 7.2, Lettering.fitted(Said.title(side), Ink.LARGE, compass - 4), Ink.LARGE, Anchor.START, Ink.BLACK);
        List<String> name = RepairNotes.wrapped(survey.name(), compass - 4);
        if (name.size() <= 2) for (int i = 0; i < name.size(); i++) canvas.write(1, top + (name.size() == 1 ? 13.4 : 11.6) + 3.9 * i, Lettering.fitted(name.get(i), Ink.SMALL, compass - 4), Ink.SMALL, Anchor.START, Ink.BLACK);
        else canvas.write(1, top + 13.4, Lettering.fitted(survey.name(), Ink.SMALL, compass - 4), Ink.SMALL, Anchor.START, Ink.BLACK);
        compass(canvas, survey, side, compass + 5.5, top + 8.8);
        for (double x : new double[] {compass, bar, last}) if (x < wide) canvas.line(x - 2, top + 2.5, x - 2, top + HEIGHT - 1, Ink.HAIR);
        canvas.write(bar, top + 6, "scale " + scale.words(), Ink.SMALL, Anchor.START, Ink.BLACK);
        Marks.bar(canvas, scale, bar, top + 8.6);
        canvas.write(last, top + 6, Said.walkedWords(survey), Ink.SMALL, Anchor.START, Ink.BLACK);
        canvas.write(last, top + 10.6, "screening, not engineering", Ink.SMALL, Anchor.START, Ink.ACT);
        canvas.write(last, top + 15, "measure again before cutting", Ink.SMALL, Anchor.START, Ink.BLACK);
    }

    /// A key to the plan, north up the page: the walls as their lengths and bearings lay them, the one that is looked at thick, a wedge pointing to where it looks.
    private static void compass(Canvas canvas, Survey survey, Side side, double x, double y) {
        double degrees = side.bearing().own(), radius = 4.6, turn = Math.toRadians(degrees), ux = Math.sin(turn), uy = -Math.cos(turn);
        canvas.circle(x, y, radius, Ink.PAPER, Ink.THIN);
        canvas.line(x, y - radius, x, y - radius + 1.2, Ink.FIRM);
        plan(canvas, survey, side, x, y);
        double tip = radius - 0.3, foot = radius - 1.5;
        canvas.polygon(Ink.BLACK, Ink.THIN, x + ux * tip, y + uy * tip, x + ux * foot - uy * 0.7, y + uy * foot + ux * 0.7, x + ux * foot + uy * 0.7, y + uy * foot - ux * 0.7);
        canvas.write(x + radius + 1.4, y - 1.2, "looks", Ink.SMALL, Anchor.START, Ink.BLACK);
        canvas.write(x + radius + 1.4, y + 3, Said.point(degrees) + " " + Math.round(degrees) + "°", Ink.SMALL, Anchor.START, Ink.BLACK);
    }

    /// Each wall from the end of the one before it, clockwise by bearing.
    private static void plan(Canvas canvas, Survey survey, Side side, double x, double y) {
        List<Side> walls = survey.sides().values().stream().sorted(Comparator.comparingDouble(wall -> wall.bearing().own())).toList();
        double[] px = new double[walls.size() + 1], py = new double[walls.size() + 1];
        for (int i = 0; i < walls.size(); i++) {
            double turn = Math.toRadians(walls.get(i).bearing().own()), length = walls.get(i).lengthMm();
            px[i + 1] = px[i] + Math.cos(turn) * length;
            py[i + 1] = py[i] + Math.sin(turn) * length;
        }
        double left = Arrays.stream(px).min().orElse(0), right = Arrays.stream(px).max().orElse(0), top = Arrays.stream(py).min().orElse(0), bottom = Arrays.stream(py).max().orElse(0);
        double scale = 2 * PLAN / Math.max(1, Math.hypot(right - left, bottom - top)), fromX = x - scale * (left + right) / 2, fromY = y - scale * (top + bottom) / 2;
        for (int i = 0; i < walls.size(); i++)
            canvas.add(Canvas.lined(fromX + scale * px[i], fromY + scale * py[i], fromX + scale * px[i + 1], fromY + scale * py[i + 1], walls.get(i).id().equals(side.id()) ? Ink.BOLD.in(Ink.ACT) : Ink.THIN).with("data-wall", walls.get(i).id()));
    }
}
