package sillwright.sheet;

import java.util.List;
import java.util.function.ToDoubleFunction;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.watch.LookAhead;
import sillwright.watch.LookAhead.Course;

/// Ten years under each course, drawn: the original wood that is lost once all is mended, what that costs by then, and the risk that a member comes to its limit.
public final class AheadDrawing {
    static final double WIDTH = 170, HEIGHT = 46, TOP = 7, TALL = 32, WIDE = 41, APART = 3.4;
    /// Left edges of the three frames.
    static final double WOOD = 6, COST = 64, RISK = 122;

    private AheadDrawing() {}

    public static Drawing draw(LookAhead ahead, Units units) {
        Canvas canvas = new Canvas(WIDTH, HEIGHT);
        double wood = most(ahead, year -> year.lostMl().high()), cost = most(ahead, year -> ahead.cost(year).all().high());
        frame(canvas, WOOD, "wood lost once mended, to " + Words.wood(wood, units));
        frame(canvas, COST, "cost once mended, to " + ahead.sum(cost));
        frame(canvas, RISK, "risk of a limit, to 100 %");
        lines(canvas, ahead, WOOD, year -> year.lostMl().median() / wood);
        lines(canvas, ahead, COST, year -> ahead.cost(year).all().median() / cost);
        lines(canvas, ahead, RISK, LookAhead.Year::risk);
        for (int c = 0; c < ahead.courses().size(); c++) {
            LookAhead.Year last = ahead.courses().get(c).years().getLast();
            bar(canvas, WOOD, c, last.lostMl().low() / wood, last.lostMl().high() / wood, pen(c, ahead));
            bar(canvas, COST, c, ahead.cost(last).all().low() / cost, ahead.cost(last).all().high() / cost, pen(c, ahead));
        }
        return canvas.done("look-ahead", "Ten years under each course", told(ahead, units), 0.6);
    }

    private static double most(LookAhead ahead, ToDoubleFunction<LookAhead.Year> of) {
        return Math.max(1, ahead.courses().stream().flatMap(course -> course.years().stream()).mapToDouble(of).max().orElse(1));
    }

    /// A line for each course, its letter at the end.
    private static void lines(Canvas canvas, LookAhead ahead, double left, ToDoubleFunction<LookAhead.Year> share) {
        double[] ends = new double[ahead.courses().size()];
        for (int c = 0; c < ends.length; c++) {
            List<LookAhead.Year> years = ahead.courses().get(c).years();
            double[] line = new double[2 * years.size()];
            for (int y = 0; y < years.size(); y++) {
                line[2 * y] = left + WIDE * y / LookAhead.YEARS;
                line[2 * y + 1] = y(share.applyAsDouble(years.get(y)));
            }
            canvas.polyline(pen(c, ahead), line);
            ends[c] = line[line.length - 1];
        }
        letters(canvas, left + WIDE + (left == RISK ? 1.5 : 2 + 1.1 * ends.length), ends);
    }

    /// Nine in ten of the draws in the last year.
    private static void bar(Canvas canvas, double left, int course, double low, double high, Ink.Pen pen) {
        double x = left + WIDE + 1 + course * 1.1;
        canvas.line(x, y(low), x, y(high), pen);
    }

    private static double y(double share) { return TOP + TALL * (1 - share); }

    private static void frame(Canvas canvas, double left, String title) {
        canvas.write(left, 4.2, title, Ink.SMALL, Anchor.START, Ink.BLACK);
        canvas.line(left, TOP + TALL, left + WIDE, TOP + TALL, Ink.FIRM);
        canvas.line(left, TOP, left, TOP + TALL, Ink.THIN);
        for (int year = 0; year <= LookAhead.YEARS; year += 5) {
            double x = left + WIDE * year / LookAhead.YEARS;
            canvas.line(x, TOP + TALL, x, TOP + TALL + 1, Ink.THIN);
            canvas.write(x, TOP + TALL + 4.6, year == 0 ? "now" : year + " y", Ink.SMALL, Anchor.MIDDLE, Ink.BLACK);
        }
    }

    /// The letters of the courses beside the ends of their lines, moved apart where they would lie on one another.
    private static void letters(Canvas canvas, double x, double[] ends) {
        Integer[] order = new Integer[ends.length];
        for (int i = 0; i < order.length; i++) order[i] = i;
        java.util.Arrays.sort(order, (a, b) -> Double.compare(ends[a], ends[b]));
        double[] at = new double[ends.length];
        for (int i = 0; i < at.length; i++) at[i] = Math.max(i == 0 ? 0 : at[i - 1] + APART, ends[order[i]] + 1);
        for (int i = at.length - 1; i >= 0; i--) at[i] = Math.min(at[i], i == at.length - 1 ? TOP + TALL : at[i + 1] - APART);
        for (int i = 0; i < at.length; i++) canvas.write(x, at[i], letter(order[i]), Ink.SMALL, Anchor.START, Ink.BLACK);
    }

    static String letter(int course) { return String.valueOf((char) ('a' + course)); }

    /// Nothing in the accent colour, the work boldest; courses put off are broken lines, the letters tell them apart.
    private static Ink.Pen pen(int c, LookAhead ahead) {
        return switch (ahead.courses().get(c).kind()) {
            case NOTHING -> Ink.ACTING;
            case WATER_ONLY -> Ink.FIRM;
            case WORK -> Ink.BOLD;
            case POSTPONED -> c % 2 == 1 ? Ink.HIDDEN : Ink.UNKNOWN;
        };
    }

    static String told(LookAhead ahead, Units units) {
        StringBuilder told = new StringBuilder();
        List<Course> courses = ahead.courses();
        for (int c = 0; c < courses.size(); c++) {
            LookAhead.Year last = courses.get(c).years().getLast();
            told.append(letter(c)).append(", ").append(courses.get(c).title()).append(": ").append(Words.wood(last.lostMl().median(), units)).append(" lost in ten years once all is mended, for ")
                    .append(ahead.sum(ahead.cost(last).all().median())).append(", risk ").append(Words.percent(last.risk())).append(". ");
        }
        return told.toString().strip();
    }
}
