package sillwright.water;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Units;
import sillwright.walk.Building.Month;
import sillwright.water.Circumstance.Here;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ColdWallTest {
    private static double hours(double january) { return ColdWall.hours(Scene.months(january, 90, 4)).stream().mapToDouble(one -> one).sum(); }

    @Test
    void the_colder_the_place_the_longer_its_boards_are_under_the_dew_point() {
        double last = -1;
        for (double january : new double[] {12, 6, 0, -6, -12, -18}) {
            List<Double> months = ColdWall.hours(Scene.months(january, 90, 4));
            double year = hours(january);
            assertTrue(year >= last, "january " + january + ": " + year + " after " + last);
            for (double month : months) assertTrue(month >= 0 && month <= 744);
            last = year;
        }
        assertTrue(hours(-15) > 800 && hours(14) < 200, hours(-15) + ", " + hours(14));
    }

    @Test
    void a_steady_month_is_all_or_nothing_as_the_figure_has_it() {
        // With no swing in the day, the month's share is that of days whose mean lies under the outdoor temperature at which the boards meet the dew point: half of them, where that is the month's mean.
        double mean = -3;
        for (int i = 0; i < 60; i++) {
            double dew = sillwright.measure.Vapour.dewPointC(ColdWall.ROOM_C, ColdWall.usualHumidity(ColdWall.ROOM_C, mean, 0.75)), back = ColdWall.backC(ColdWall.ROOM_C, mean, false);
            mean += back > dew ? -0.5 * (back - dew) : 0.5 * (dew - back);
        }
        double at = mean;
        Month month = Scene.months(0, 90, 4).getFirst();
        Month steady = new Month(celsius(at), celsius(at), month.rain(), month.rainDays(), sillwright.measure.Quantity.read("75%", sillwright.measure.Kind.PERCENT), month.wind(), month.snow());
        double hours = ColdWall.hours(List.of(steady)).getFirst();
        assertEquals(0.5, hours / 744, 0.03, "mean " + at);
    }

    private static sillwright.measure.Quantity celsius(double value) { return new sillwright.measure.Quantity(value, sillwright.measure.Unit.CELSIUS, value + "C"); }

    @Test
    void what_is_filled_has_colder_boards_and_a_warmer_face() {
        for (double outdoors : new double[] {-25, -10, 0, 10}) {
            assertTrue(ColdWall.backC(20, outdoors, true) < ColdWall.backC(20, outdoors, false));
            assertTrue(ColdWall.faceC(20, outdoors, true) > ColdWall.faceC(20, outdoors, false));
            assertTrue(ColdWall.paneC(20, outdoors) < ColdWall.faceC(20, outdoors, false), "a pane shows it first");
        }
        assertEquals(20, ColdWall.backC(20, 20, false), 1e-12);
    }

    @Test
    void a_cold_place_makes_damp_from_indoors_likelier_and_a_mild_one_less_and_ice_likewise() {
        Map<Source, Double> cold = priors(-16), middle = priors(-1), mild = priors(14);
        assertTrue(cold.get(Source.INDOOR_VAPOUR) > middle.get(Source.INDOOR_VAPOUR) && middle.get(Source.INDOOR_VAPOUR) > mild.get(Source.INDOOR_VAPOUR), cold + "\n" + middle + "\n" + mild);
        assertTrue(cold.get(Source.ICE_DAM) > middle.get(Source.ICE_DAM) && middle.get(Source.ICE_DAM) > mild.get(Source.ICE_DAM));
    }

    private static Map<Source, Double> priors(double january) {
        Scene scene = new Scene().rain("4in/h", Scene.months(january, 90, 4)).side("south", "180deg", List.of(Scene.eave("12in", Optional.empty())), Scene.ground(sillwright.walk.Side.Surface.GRASS, "12in", ""));
        Map<Source, Double> priors = new EnumMap<>(Source.class);
        for (Instance one : Water.ranking(scene.survey(), (_, _) -> 1)) priors.merge(one.source(), one.prior(), Math::max);
        for (Source source : List.of(Source.INDOOR_VAPOUR, Source.ICE_DAM)) priors.putIfAbsent(source, 0.0);
        return priors;
    }

    /// Dams grow where it is about 22 °F outdoors or colder (Cold Regions Research and Engineering Laboratory, from memory): -5.6 °C.
    @Test
    void winters_count_as_cold_for_ice_where_the_laboratory_puts_it() {
        for (double[] row : new double[][] {{-5.7, 1}, {-5.3, 0}}) {
            List<Here> here = new Circumstances(new Scene().rain("4in/h", Scene.months(row[0], 90, 4)).survey(), Units.US)
                    .ofSide(new Scene().side("south", "180deg", List.of(), Scene.ground(sillwright.walk.Side.Surface.GRASS, "12in", "")).survey().sides().get("south"));
            assertEquals(row[1] == 1, here.stream().anyMatch(one -> one.what() == Circumstance.COLD_WINTERS), here.toString());
        }
    }
}
