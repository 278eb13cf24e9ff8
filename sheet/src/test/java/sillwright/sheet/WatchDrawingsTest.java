package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Units;
import sillwright.watch.LookAhead;
import sillwright.watch.LookAhead.Course;
import sillwright.watch.LookAhead.Kind;
import sillwright.watch.LookAhead.Spent;
import sillwright.watch.LookAhead.Year;
import sillwright.watch.Trend;
import sillwright.wood.Interval;

/// Ten years ahead and the strip of a trend: every point where its number says.
@DisplayNameGeneration(ReplaceUnderscores.class)
class WatchDrawingsTest {
    private static Course course(Kind kind, int delay, double growth) {
        List<Year> years = new ArrayList<>();
        for (int y = 0; y <= LookAhead.YEARS; y++) {
            double lost = 4000 + growth * y;
            Spent spent = new Spent(Interval.exactly(10), new Interval(80, 100 + y, 120 + 2 * y));
            years.add(new Year(Interval.exactly(lost / 2), new Interval(lost * 0.8, lost, lost * 1.25), spent, spent, growth * y / 10_000));
        }
        return new Course(kind, delay, years);
    }

    private static LookAhead ahead(boolean priced) {
        return new LookAhead(List.of(course(Kind.NOTHING, 0, 600), course(Kind.WATER_ONLY, 0, 200), course(Kind.WORK, 0, 0), course(Kind.POSTPONED, 2, 50), course(Kind.POSTPONED, 5, 130)), List.of(), priced,
                "crowns", List.of());
    }

    private static double[] points(Markup line) { return Arrays.stream(line.get("points").split("[ ,]")).mapToDouble(Double::parseDouble).toArray(); }

    @Test
    void each_line_stands_at_its_loss_its_cost_and_its_risk_in_every_year() {
        LookAhead ahead = ahead(true);
        List<Markup> lines = AheadDrawing.draw(ahead, Units.US).svg().all("polyline");
        assertEquals(15, lines.size(), "five courses in three frames");
        double wood = 10_000 * 1.25, cost = 140;
        for (int c = 0; c < 5; c++)
            for (int frame = 0; frame < 3; frame++) {
                double[] drawn = points(lines.get(5 * frame + c));
                double left = List.of(AheadDrawing.WOOD, AheadDrawing.COST, AheadDrawing.RISK).get(frame);
                for (int y = 0; y <= LookAhead.YEARS; y++) {
                    Year year = ahead.courses().get(c).years().get(y);
                    double share = switch (frame) { case 0 -> year.lostMl().median() / wood; case 1 -> year.money().all().median() / cost; default -> year.risk(); };
                    assertEquals(left + AheadDrawing.WIDE * y / LookAhead.YEARS, drawn[2 * y], 0.006);
                    assertEquals(AheadDrawing.TOP + AheadDrawing.TALL * (1 - share), drawn[2 * y + 1], 0.006, "course " + c + " frame " + frame + " year " + y);
                }
            }
    }

    @Test
    void no_letter_covers_another_and_all_stand_on_the_sheet_in_both_units_with_money_and_without() {
        for (Units units : Units.values())
            for (boolean priced : new boolean[] {true, false}) {
                Drawing drawing = AheadDrawing.draw(ahead(priced), units);
                LabelsTest.apart(drawing.labels(), drawing.id());
                Box sheet = new Box(0, 0, drawing.widthMm(), drawing.heightMm());
                for (Drawing.Label label : drawing.labels()) assertTrue(sheet.grown(0.05).holds(label.box()), label.words());
                assertTrue(drawing.told().contains("do nothing") && drawing.told().contains("the same work in 5 years"));
                assertEquals(priced, drawing.labels().stream().anyMatch(label -> label.words().contains("crowns")));
            }
    }

    private static Trend trend(Trend.What what, double... values) {
        List<Trend.Point> points = new ArrayList<>();
        for (int i = 0; i < values.length; i++) points.add(new Trend.Point(LocalDate.of(2022, 4, 1).plusDays(100L * i * (i + 1) / 2), values[i], what == Trend.What.PAINT ? Double.NaN : values[0]));
        return new Trend(what, "south", Optional.empty(), "a place", points, 0, 0, 0, 1, Trend.Way.RISING, Optional.empty(), "A place: grows wetter.", List.of());
    }

    @Test
    void rings_of_a_strip_stand_by_their_day_and_their_value() {
        Trend trend = trend(Trend.What.MOISTURE, 0.12, 0.16, 0.2, 0.28);
        List<Markup> rings = TrendDrawing.strip(trend).svg().all("circle");
        assertEquals(4, rings.size());
        double left = Double.parseDouble(rings.getFirst().get("cx")), right = Double.parseDouble(rings.getLast().get("cx"));
        double low = Double.parseDouble(rings.getFirst().get("cy")), high = Double.parseDouble(rings.getLast().get("cy"));
        assertTrue(left < right && high < low && right <= TrendDrawing.WIDTH && high >= 0);
        for (int i = 0; i < 4; i++) {
            // Days 0, 100, 300, 600; values from 0.12 to 0.28.
            assertEquals(left + (right - left) * List.of(0, 100, 300, 600).get(i) / 600, Double.parseDouble(rings.get(i).get("cx")), 0.02);
            assertEquals(low + (high - low) * (trend.points().get(i).value() - 0.12) / 0.16, Double.parseDouble(rings.get(i).get("cy")), 0.02);
        }
        assertEquals(2, TrendDrawing.strip(trend).svg().all("polyline").size(), "read and expected");
    }

    @Test
    void what_hardly_changes_is_drawn_flat_and_what_has_no_forecast_has_no_broken_line() {
        List<Markup> rings = TrendDrawing.strip(trend(Trend.What.MOISTURE, 0.12, 0.125, 0.12)).svg().all("circle");
        assertEquals(Double.parseDouble(rings.get(0).get("cy")), Double.parseDouble(rings.get(1).get("cy")), 0.6, "half a point is no climb");
        assertEquals(1, TrendDrawing.strip(trend(Trend.What.PAINT, 0, 1, 3)).svg().all("polyline").size());
    }
}
