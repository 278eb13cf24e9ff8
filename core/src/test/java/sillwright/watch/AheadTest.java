package sillwright.watch;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.Figures;
import sillwright.watch.LookAhead.Course;
import sillwright.watch.LookAhead.Kind;
import sillwright.water.Source;
import sillwright.wood.Condition;
import sillwright.wood.Forecast;
import sillwright.wood.Interval;
import sillwright.wood.Outlook;
import sillwright.wood.WoodFindings;
import sillwright.wood.drying.Dose;
import sillwright.work.Scene;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class AheadTest {
    /// The decay of the dose-response figure at so many days a year, from a rating on.
    private static List<Interval> ratings(double from, double daysAYear) {
        List<Interval> all = new ArrayList<>();
        for (int year = 0; year <= Forecast.CURVE_YEARS; year++) {
            double middle = Dose.rating(Dose.days(from) + daysAYear * year), fast = Dose.rating(Dose.days(from) + 1.3 * daysAYear * year), slow = Dose.rating(Dose.days(from) + 0.7 * daysAYear * year);
            all.add(new Interval(slow, middle, fast));
        }
        return all;
    }

    private static LookAhead ahead(double daysAYear) {
        Scene scene = Scene.house();
        Map<String, Outlook> outlooks = new LinkedHashMap<>();
        for (Condition condition : scene.wood().all()) {
            Forecast wet = new Forecast(ratings(2, daysAYear), Interval.exactly(daysAYear), Optional.empty()), dry = new Forecast(ratings(2, 1), Interval.exactly(1), Optional.empty());
            outlooks.put(condition.member().id(), new Outlook(condition.member().id(), 500, 0.25, 100, Interval.exactly(60), 1, Interval.exactly(30), 1, 0.16, wet, dry, 40, 0.14, false, List.of()));
        }
        WoodFindings wood = new WoodFindings(scene.wood().conditions(), outlooks, Map.of(), List.of());
        return Ahead.of(scene.water(), wood, scene.work(), List.of(2, 5), 7).orElseThrow();
    }

    private static Course course(LookAhead ahead, Kind kind, int delay) { return ahead.courses().stream().filter(one -> one.kind() == kind && one.delay() == delay).findFirst().orElseThrow(); }

    @Test
    void with_nothing_done_soft_wood_grows_as_the_dose_response_has_it() {
        Course nothing = course(ahead(40), Kind.NOTHING, 0);
        double first = nothing.years().getFirst().goneMl().median(), growth = nothing.years().get(5).goneMl().median() / first;
        assertEquals(Dose.rating(Dose.days(2) + 200) / 2, growth, 0.12 * growth);
    }

    @Test
    void doing_more_and_sooner_never_leaves_more_at_risk() {
        LookAhead ahead = ahead(40);
        Course nothing = course(ahead, Kind.NOTHING, 0), water = course(ahead, Kind.WATER_ONLY, 0), work = course(ahead, Kind.WORK, 0), two = course(ahead, Kind.POSTPONED, 2), five = course(ahead, Kind.POSTPONED, 5);
        for (int year = 0; year <= LookAhead.YEARS; year++) {
            assertTrue(water.years().get(year).lostMl().median() <= nothing.years().get(year).lostMl().median() + 1e-9, "year " + year);
            assertTrue(work.years().get(year).risk() <= two.years().get(year).risk() + 1e-9 && two.years().get(year).risk() <= five.years().get(year).risk() + 1e-9
                    && five.years().get(year).risk() <= nothing.years().get(year).risk() + 1e-9, "year " + year);
            for (Course one : ahead.courses()) if (year > 0) assertTrue(one.years().get(year).risk() >= one.years().get(year - 1).risk() - 1e-9, one.title());
        }
        assertTrue(work.years().getLast().lostMl().median() < five.years().getLast().lostMl().median(), "what waits is cut away further");
        assertTrue(work.years().getLast().hours().spent().median() < five.years().getLast().hours().spent().median());
    }

    /// Nothing uncertain: one year like the other, so that each year's growth must be the rating of the figure `decay-dose` for as many damp days, over the rating of today.
    @Test
    void on_a_simple_case_the_forecast_has_the_digits_of_the_figure_decay_dose() {
        Scene scene = Scene.house();
        int daysAYear = 40;
        double oneDay = Dose.day(0.3, 20), start = Dose.days(2);
        List<Interval> wetRatings = new ArrayList<>();
        for (int year = 0; year <= Forecast.CURVE_YEARS; year++) wetRatings.add(Interval.exactly(Dose.rating(start + daysAYear * oneDay * year)));
        Forecast wet = new Forecast(wetRatings, Interval.exactly(daysAYear), Optional.empty()), dry = new Forecast(ratings(2, 1), Interval.exactly(1), Optional.empty());
        Map<String, Outlook> outlooks = new LinkedHashMap<>();
        for (Condition condition : scene.wood().all())
            outlooks.put(condition.member().id(), new Outlook(condition.member().id(), 500, 0.25, 100, Interval.exactly(60), 1, Interval.exactly(30), 1, 0.16, wet, dry, 40, 0.14, false, List.of()));
        LookAhead ahead = Ahead.of(scene.water(), new WoodFindings(scene.wood().conditions(), outlooks, Map.of(), List.of()), scene.work(), List.of(), 7).orElseThrow();
        List<LookAhead.Year> years = course(ahead, Kind.NOTHING, 0).years();
        // So many days at 30 % and 20 °C as bring the figure to a rating of 2 today, and 40 more each year.
        int before = (int) Math.round(start / oneDay);
        double scale = years.getFirst().goneMl().median() / figure(before);
        for (int year = 1; year <= 5; year++) {
            double expected = figure(before + daysAYear * year) * scale;
            assertEquals(expected, years.get(year).goneMl().median(), 0.005 * expected, "year " + year);
        }
    }

    /// The rating that the figure gives for so many like days.
    private static double figure(int days) {
        StringBuilder csv = new StringBuilder("date,mc_pct,temp_C\n");
        for (int day = 0; day < days; day++) csv.append(LocalDate.of(2020, 1, 1).plusDays(day)).append(",30,20\n");
        return Figures.named("decay-dose").answer(Map.of("file", "days.csv"), Map.of("days.csv", csv.toString())).own("rating");
    }

    @Test
    void every_course_starts_from_the_same_loss_and_the_work_costs_now_what_the_costing_says() {
        LookAhead ahead = ahead(40);
        Scene scene = Scene.house();
        double lost = course(ahead, Kind.WORK, 0).years().getFirst().lostMl().median(), all = course(ahead, Kind.WORK, 0).years().getFirst().hours().all().median();
        for (Course one : ahead.courses()) {
            assertEquals(lost, one.years().getFirst().lostMl().median(), 1e-9, one.title());
            assertEquals(all, one.years().getFirst().hours().all().median(), 1e-9, one.title());
        }
        assertEquals(scene.work().plan().cost().hours().middle(), all, 0.03 * all);
        LookAhead.Year now = course(ahead, Kind.WORK, 0).years().getFirst(), nothing = course(ahead, Kind.NOTHING, 0).years().getLast();
        assertEquals(now.hours().all(), now.hours().spent(), "what is done is paid");
        assertEquals(0, nothing.hours().spent().high(), 0);
        assertTrue(nothing.hours().all().median() > now.hours().all().median() && nothing.lostMl().median() > lost, "waiting takes more in the end");
        assertTrue(nothing.goneMl().median() < nothing.lostMl().median(), "mending takes sound wood too");
        assertTrue(ahead.words(sillwright.measure.Units.US).contains("more of the original wood"), ahead.words(sillwright.measure.Units.US));
    }

    @Test
    void work_may_be_put_off_by_any_year_and_no_further() {
        assertThrows(sillwright.measure.Refused.class, () -> new Watching(List.of(10), sillwright.wood.weather.Since.NOTHING));
        assertThrows(sillwright.measure.Refused.class, () -> new Watching(List.of(0), sillwright.wood.weather.Since.NOTHING));
        assertEquals("the same work in 1 year", new Course(Kind.POSTPONED, 1, List.of()).title());
    }

    @Test
    void without_weather_nothing_is_foretold() {
        Scene scene = Scene.house().source(Source.SPRINKLER, "east", 0.6, 1);
        assertEquals(Optional.empty(), Ahead.of(scene.water(), scene.wood(), scene.work(), List.of(2, 5), 7));
    }
}
