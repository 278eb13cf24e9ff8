package sillwright.watch.budget;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Csv;
import sillwright.measure.Refused;
import sillwright.watch.budget.Choices.Thing;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ChoicesTest {
    @Test
    void published_knapsacks_come_out_as_published() throws IOException {
        try (InputStream in = ChoicesTest.class.getResourceAsStream("/checks/watch/knapsack.csv")) {
            for (Csv.Row row : Csv.read(new String(in.readAllBytes(), StandardCharsets.UTF_8)).rows()) {
                String[] weights = row.get("weights").split(" "), profits = row.get("profits").split(" ");
                List<Thing> things = new ArrayList<>();
                for (int i = 0; i < weights.length; i++) things.add(new Thing("t" + i, Double.parseDouble(weights[i]), Double.parseDouble(profits[i]), List.of()));
                Choices.Best best = Choices.best(things, row.number("capacity"));
                assertEquals(row.number("best"), best.worth(), 0, row.get("set"));
                assertTrue(best.cost() <= row.number("capacity"));
            }
        }
    }

    @Test
    void with_needs_the_choice_is_that_of_trying_every_set() {
        long seed = 1969;
        RandomGenerator random = new SplittableRandom(seed);
        for (int draw = 0; draw < 300; draw++) {
            int n = 1 + random.nextInt(12);
            List<Thing> things = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                Set<Integer> needs = new TreeSet<>();
                for (int k = 0; k < i && k < 3; k++) if (random.nextInt(4) == 0) needs.add(random.nextInt(i));
                things.add(new Thing("t" + i, random.nextInt(1, 20), random.nextInt(0, 30), List.copyOf(needs)));
            }
            double budget = random.nextInt(0, 80), best = 0;
            for (int mask = 0; mask < 1 << n; mask++) {
                double cost = 0, worth = 0;
                boolean stands = true;
                for (int i = 0; i < n; i++) if ((mask >> i & 1) == 1) {
                    cost += things.get(i).cost();
                    worth += things.get(i).worth();
                    for (int need : things.get(i).needs()) stands &= (mask >> need & 1) == 1;
                }
                if (stands && cost <= budget) best = Math.max(best, worth);
            }
            Choices.Best found = Choices.best(things, budget);
            String told = "seed " + seed + ", draw " + draw + ": " + things + " for " + budget;
            assertEquals(best, found.worth(), 1e-9, told);
            assertTrue(found.cost() <= budget, told);
            for (int i : found.chosen()) assertTrue(found.chosen().containsAll(things.get(i).needs()), told);
            assertEquals(found.worth(), found.chosen().stream().mapToDouble(i -> things.get(i).worth()).sum(), 1e-9, told);
        }
    }

    @Test
    void what_cannot_be_chosen_is_refused_by_name() {
        assertThrows(Refused.class, () -> Choices.best(List.of(new Thing("a", 1, 1, List.of(1)), new Thing("b", 1, 1, List.of(0))), 5));
        assertThrows(Refused.class, () -> Choices.best(List.of(new Thing("a", 1, 1, List.of(7))), 5));
        assertThrows(Refused.class, () -> new Thing("a", -1, 1, List.of()));
        assertEquals(List.of(), Choices.best(List.of(), 5).chosen());
    }
}
