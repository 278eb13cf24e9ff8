package sillwright.sheet;

import java.time.LocalDate;
import java.util.List;

import sillwright.watch.Trend;

/// One place read over the years, as small as a line of a table: rings and a line for what was read, dashes for what was expected.
final class TrendDrawing {
    static final double WIDTH = 44, HEIGHT = 10;
    private static final double EDGE = 1.2;

    private TrendDrawing() {}

    static Drawing strip(Trend trend) {
        Canvas canvas = new Canvas(WIDTH, HEIGHT);
        List<Trend.Point> points = trend.points();
        double low = Double.MAX_VALUE, high = -Double.MAX_VALUE;
        for (Trend.Point point : points) {
            low = Math.min(low, Double.isNaN(point.expected()) ? point.value() : Math.min(point.value(), point.expected()));
            high = Math.max(high, Double.isNaN(point.expected()) ? point.value() : Math.max(point.value(), point.expected()));
        }
        double least = switch (trend.what()) {
            case MOISTURE -> 0.08;
            case DEPTH -> 5;
            case PAINT -> 2;
        };
        if (high - low < least) high = low + least;
        long from = points.getFirst().day().toEpochDay(), to = Math.max(from + 1, points.getLast().day().toEpochDay());
        double[] read = new double[2 * points.size()], expected = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            Trend.Point point = points.get(i);
            read[2 * i] = expected[2 * i] = x(point.day(), from, to);
            read[2 * i + 1] = y(point.value(), low, high);
            expected[2 * i + 1] = y(Double.isNaN(point.expected()) ? low : point.expected(), low, high);
        }
        canvas.line(EDGE, HEIGHT - EDGE, WIDTH - EDGE, HEIGHT - EDGE, Ink.HAIR);
        if (points.stream().noneMatch(point -> Double.isNaN(point.expected()))) canvas.polyline(Ink.HIDDEN, expected);
        canvas.polyline(Ink.FIRM, read);
        for (int i = 0; i < points.size(); i++) canvas.circle(read[2 * i], read[2 * i + 1], 0.7, Ink.PAPER, trend.way() == Trend.Way.RISING ? Ink.ACTING : Ink.FIRM);
        return canvas.done("trend-" + Integer.toHexString(trend.place().hashCode()), "Readings of " + trend.place(), trend.words(), 0.5);
    }

    private static double x(LocalDate day, long from, long to) { return EDGE + (WIDTH - 2 * EDGE) * (day.toEpochDay() - from) / (to - from); }

    private static double y(double value, double low, double high) { return HEIGHT - EDGE - (HEIGHT - 2 * EDGE) * (value - low) / (high - low); }
}
