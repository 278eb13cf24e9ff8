package sillwright;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.walk.Building;
import sillwright.walk.Survey;
import sillwright.watch.Past;
import sillwright.watch.Watch;
import sillwright.watch.Watching;
import sillwright.water.Source;
import sillwright.work.FirstFit;
import sillwright.work.Outfit;
import sillwright.work.Scene;
import sillwright.work.Work;
import sillwright.work.WorkFindings;
import sillwright.work.cost.Labour;
import sillwright.work.cost.PriceBook;
import sillwright.work.schedule.Crew;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class PortfolioTest {
    private static final String BOOK = """
            # currency: crowns
            item,unit,price,low,high,date
            labour,h,50,40,70,
            consolidant,qt,60,50,80,
            filler,qt,55,50,70,
            wood,bdft,10,8,14,
            """;

    private static final Outfit PRICED = new Outfit(PriceBook.read("book", BOOK), Labour.usual(), Crew.ONE, Set.of());

    private static Assessment assessed(Scene scene, String id, Outfit outfit) {
        Survey plain = scene.survey();
        Survey survey = plain.with(new Building(id, "House " + id, "invented for a test", 1900, Optional.empty(), Optional.empty(), List.of()));
        WorkFindings work = Work.find(survey, scene.water(), scene.wood(), scene.start, Units.US, scene.stock, new FirstFit(), outfit, 1);
        var watch = Watch.find(survey, scene.water(), scene.wood(), work, scene.start, Units.US, List.of(), scene.water(), outfit, Watching.USUAL, Past.of(survey));
        return new Assessment(survey, new Settings(scene.start, Units.US, 1, new FirstFit(), scene.stock, outfit), scene.water(), scene.wood(), work, watch);
    }

    /// Small enough that every set of things can be tried.
    private static List<Assessment> two(Outfit outfit) {
        return List.of(assessed(Scene.house(), "a", outfit), assessed(Scene.house().source(Source.ROOF_LEAKS_ABOVE, "east", 0.8, 5, "window-sill"), "b", outfit));
    }

    private static double cost(Portfolio of, Portfolio.Bought one) { return of.priced() ? one.money() : one.hours(); }

    private void brute(Outfit outfit, boolean priced) {
        Portfolio all = Portfolio.of(two(outfit), Optional.of(1e9));
        assertEquals(priced, all.priced());
        List<Portfolio.Bought> things = all.chosen();
        int n = things.size();
        assertTrue(n >= 9 && n <= 18, n + " things");
        double whole = things.stream().mapToDouble(one -> cost(all, one)).sum();
        SplittableRandom random = new SplittableRandom(1957);
        for (int draw = 0; draw < 40; draw++) {
            double budget = random.nextDouble() * whole, best = 0;
            for (int set = 0; set < 1 << n; set++) {
                double spent = 0, worth = 0;
                boolean stands = true;
                for (int i = 0; i < n && stands; i++) {
                    if ((set >> i & 1) == 0) continue;
                    spent += cost(all, things.get(i));
                    worth += things.get(i).savedMl();
                    for (String need : things.get(i).needs()) {
                        String building = things.get(i).building();
                        int at = IntStream.range(0, n).filter(k -> things.get(k).building().equals(building) && things.get(k).ref().equals(need)).findFirst().orElseThrow();
                        stands &= (set >> at & 1) == 1;
                    }
                }
                if (stands && spent <= budget) best = Math.max(best, worth);
            }
            Portfolio found = Portfolio.of(two(outfit), Optional.of(budget));
            assertEquals(best, found.savedMl(), 1e-6 * Math.max(1, best), "budget " + budget);
            assertTrue(found.spent() <= budget * (1 + 1e-9));
            assertEquals(found.spent(), found.chosen().stream().mapToDouble(one -> cost(found, one)).sum(), 1e-6);
            for (Portfolio.Bought one : found.chosen()) for (String need : one.needs())
                assertTrue(found.chosen().stream().anyMatch(other -> other.building().equals(one.building()) && other.ref().equals(need)), one + " wants " + need);
        }
    }

    @Test
    void a_budget_of_hours_buys_what_trying_every_set_would_buy() { brute(Outfit.COMMON, false); }

    @Test
    void a_budget_of_money_buys_what_trying_every_set_would_buy() { brute(PRICED, true); }

    @Test
    void all_that_is_offered_comes_to_the_whole_work_of_the_buildings_setting_up_and_clearing_with_it() {
        for (Outfit outfit : List.of(Outfit.COMMON, PRICED)) {
            Portfolio all = Portfolio.of(two(outfit), Optional.of(1e9));
            double whole = all.buildings().stream().mapToDouble(one -> all.priced() ? one.money().middle() : one.hours().middle()).sum();
            // Whole packs and shared prices are in the buildings' sums and not in the parts', so that what is around may be more than nothing and never less.
            assertEquals(whole, all.spent(), 0.02 * whole);
        }
    }

    @Test
    void what_cannot_wait_stands_first_and_more_water_costs_more() {
        Scene sound = new Scene().side("east", "");
        sound.add(Scene.sill(), sillwright.wood.Condition.State.SOFTENED, 0.13, Scene.sillSpot(Scene.sill()));
        List<Assessment> three = List.of(assessed(sound, "calm", PRICED), two(PRICED).get(0), two(PRICED).get(1));
        Portfolio ranked = Portfolio.of(three, Optional.empty());
        assertEquals("calm", ranked.buildings().getLast().id());
        assertTrue(ranked.buildings().getFirst().urgent() > 0 && ranked.buildings().getLast().urgent() == 0);
        assertEquals(List.of(), ranked.chosen());
        Portfolio.Standing a = ranked.buildings().stream().filter(one -> one.id().equals("a")).findFirst().orElseThrow(), b = ranked.buildings().stream().filter(one -> one.id().equals("b")).findFirst().orElseThrow();
        assertTrue(b.money().middle() > a.money().middle() && b.hours().middle() > a.hours().middle());
        assertTrue(ranked.cost(a).endsWith(" crowns"));
    }

    @Test
    void a_building_without_prices_makes_the_budget_one_of_hours_and_a_bad_budget_is_refused() {
        List<Assessment> mixed = List.of(assessed(Scene.house(), "a", PRICED), assessed(Scene.house(), "b", Outfit.COMMON));
        assertFalse(Portfolio.of(mixed, Optional.of(10.0)).priced());
        assertThrows(Refused.class, () -> Portfolio.of(mixed, Optional.of(-1.0)));
        assertThrows(Refused.class, () -> Portfolio.of(mixed, Optional.of(Double.NaN)));
        assertEquals(List.of(), Portfolio.of(List.of(), Optional.of(5.0)).chosen());
    }
}
