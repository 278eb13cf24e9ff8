package sillwright.work.stock;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Units;
import sillwright.walk.Species;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class StockTest {
    private static Stock stock(String species, boolean damp, boolean letIn) { return Stock.of(Species.named(species), species, 19.05, 139.7, damp, letIn, Units.US); }

    @Test
    void dry_work_and_patches_are_in_kind() {
        for (String species : Species.all().keySet()) {
            assertEquals(species, stock(species, true, true).species(), "a patch");
            assertEquals(0, stock(species, true, true).apartMm());
        }
        assertEquals("pine-eastern-white", stock("pine-eastern-white", false, false).species());
    }

    @Test
    void white_pine_that_stays_damp_gets_a_durable_wood_that_moves_alike_and_is_no_softer() {
        Stock stock = stock("pine-eastern-white", true, false);
        assertEquals("cedar-yellow", stock.species(), stock.why());
        assertTrue(stock.others().stream().anyMatch(other -> other.contains("softer") && other.contains("northern white cedar")), stock.others()::toString);
    }

    @Test
    void nothing_is_ever_softer_than_the_old_wood_or_less_durable_than_its_place_asks_unless_it_is_in_kind() {
        for (Species old : Species.all().values())
            for (boolean damp : new boolean[] {false, true}) {
                Stock stock = stock(old.name(), damp, false);
                if (stock.species().equals(old.name())) continue;
                assertTrue(Species.named(stock.species()).gravityOvenDry() >= old.gravityOvenDry() - Stock.AS_DENSE, old.name());
                assertTrue(Stock.unlike(Species.named(stock.species()), old) <= Stock.UNLIKE, old.name());
                assertTrue(!damp || Supply.of(stock.species()).orElseThrow().durability().compareTo(Species.Durability.MODERATE) >= 0, old.name());
            }
    }

    @Test
    void rough_stock_planes_to_size_in_quarters_or_millimetres() {
        assertEquals("4/4", Stock.rough(19.05, Units.US));
        assertEquals("5/4", Stock.rough(25.4, Units.US));
        assertEquals("8/4", Stock.rough(44.45, Units.US));
        assertEquals("25 mm", Stock.rough(19, Units.SI));
        assertTrue(Stock.rough(139.7, Units.US).endsWith("sawn to order"));
    }
}
