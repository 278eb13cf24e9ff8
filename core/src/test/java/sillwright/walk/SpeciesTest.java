package sillwright.walk;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import sillwright.measure.Csv;
import sillwright.measure.Refused;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class SpeciesTest {
    @Test
    void every_row_of_the_table_is_read_under_a_name_of_its_own() {
        Csv table = Csv.read(SpeciesCsv.TEXT);
        assertEquals(table.rows().size(), Species.all().size());
        assertTrue(table.rows().size() >= 50, "the table is shorter than it was");
        for (Csv.Row row : table.rows()) {
            Species species = Species.named(row.get("name"));
            assertEquals(row.number("sg_green"), species.gravityGreen());
            assertEquals(row.number("tangential_pct"), 100 * species.tangential(), 1e-12);
            assertEquals(row.number("mor_12pct_psi"), species.bendingPsi());
        }
    }

    /// What holds for every wood: it floats when dry, shrinks more along the rings than across them, and denser when dry.
    @Test
    void every_species_has_figures_that_a_wood_can_have() {
        for (Species species : Species.all().values()) {
            String name = species.name();
            assertTrue(name.matches("[a-z]+(-[a-z]+)*"), name);
            assertTrue(species.gravityGreen() > 0.25 && species.gravityGreen() < 0.75, name);
            assertTrue(species.gravityOvenDry() > species.gravityGreen(), name);
            assertTrue(species.tangential() > species.radial(), name);
            assertTrue(species.volumetric() > species.tangential() && species.volumetric() < 0.2, name);
            assertTrue(species.bendingPsi() > 5000 && species.bendingPsi() < 25000, name);
            assertEquals(4, species.basis().size(), name);
        }
    }

    /// Computed by hand from the row: 0.34 / (1 - 0.082).
    @Test
    void dry_gravity_is_the_green_gravity_of_the_volume_that_shrinking_leaves() {
        assertEquals(0.3704, Species.named("pine-eastern-white").gravityOvenDry(), 0.00005);
    }

    @Test
    void a_name_near_a_species_is_refused_with_that_species() {
        Refused refused = assertThrows(Refused.class, () -> Species.named("pine-eastern-whte"));
        assertTrue(refused.mend().contains("pine-eastern-white"), refused.getMessage());
    }

    @Test
    void a_name_that_the_table_lacks_is_taken_for_its_kin_and_says_so() {
        assertEquals(Optional.empty(), Species.taken("pine-ponderosa").caution());
        Species.Taken pine = Species.taken("pine-mystery");
        assertEquals(Species.orCareful("pine-mystery"), pine.species());
        assertTrue(pine.caution().orElseThrow().contains("'pine-mystery' is not in the species table: worked as " + pine.species().name()), pine.caution().get());
        assertThrows(Refused.class, () -> Species.taken("zebrawood"));
        Species.Taken heavy = Species.taken("zebrawood", 0.64);
        assertTrue(Math.abs(heavy.species().gravityGreen() - 0.64) <= Species.all().values().stream().mapToDouble(one -> Math.abs(one.gravityGreen() - 0.64)).min().orElseThrow());
        assertEquals(Species.Durability.SLIGHT, heavy.species().durability(), "weight says nothing of durability");
    }

    @Test
    void a_known_name_is_itself() {
        for (String name : Species.all().keySet()) assertEquals(name, Species.orCareful(name).name());
    }

    @ParameterizedTest
    @ValueSource(strings = {"pine", "old-growth-pine", "northern pine", "Pine, old", "pine-eastern-whte"})
    void an_unknown_pine_is_no_better_than_any_pine_of_the_table(String name) { careful(name, "pine"); }

    @ParameterizedTest
    @ValueSource(strings = {"oak", "red-oak", "oak-live"})
    void an_unknown_oak_is_no_better_than_any_oak_of_the_table(String name) { careful(name, "oak"); }

    private static void careful(String name, String word) {
        Species careful = Species.orCareful(name);
        for (Species kin : Species.all().values())
            if (kin.name().startsWith(word + "-")) {
                assertTrue(careful.durability().compareTo(kin.durability()) <= 0, kin.name());
                assertTrue(careful.durability() != kin.durability() || careful.gravityGreen() <= kin.gravityGreen(), kin.name());
            }
        assertTrue(careful.name().startsWith(word + "-"), careful.name());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "not known", "old-growth", "softwood", "true", "ebony"})
    void a_name_that_tells_nothing_counts_as_a_light_softwood_of_slight_durability(String name) {
        Species careful = Species.orCareful(name);
        assertEquals(Species.Durability.SLIGHT, careful.durability());
        assertTrue(careful.gravityGreen() <= Species.named("pine-eastern-white").gravityGreen());
        assertTrue(careful.bendingPsi() <= Species.named("pine-eastern-white").bendingPsi());
    }

    @Test
    void no_name_makes_a_wood_resistant_unless_every_wood_of_that_word_is() {
        assertEquals(Species.Durability.MODERATE, Species.orCareful("old-growth-redwood").durability());
        assertEquals(Species.Durability.RESISTANT, Species.orCareful("cedar").durability());
        assertEquals(Species.Durability.SLIGHT, Species.orCareful("red-fir").durability());
    }

    @ParameterizedTest
    @CsvSource({"pine-eastern-white, eastern white pine", "oak-white, white oak", "tamarack, tamarack", "redwood-old-growth, old-growth redwood", "cedar-port-orford, Port Orford cedar",
            "douglas-fir-coast, coast Douglas fir", "douglas-fir-interior-north, northern interior Douglas fir", "yellow-poplar, yellow poplar", "baldcypress-young-growth, young-growth baldcypress",
            "heart-pine, heart-pine", "spanish-cedar, Spanish cedar"})
    void a_wood_is_said_as_a_yard_says_it_and_one_out_of_the_table_as_it_was_written(String name, String said) { assertEquals(said, Species.said(name)); }

    @Test
    void no_two_woods_are_said_alike() { assertEquals(Species.all().size(), Species.all().keySet().stream().map(Species::said).distinct().count()); }
}
