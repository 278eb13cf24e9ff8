package sillwright.wood;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.measure.Refused;
import sillwright.wood.moisture.Porosity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class MovementTest {
    @Test
    void there_and_back_again_is_the_same_width() {
        long seed = 12;
        var random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            double width = 20 + random.nextDouble() * 300, shrinkage = 0.02 + random.nextDouble() * 0.1, from = random.nextDouble() * 0.5, to = random.nextDouble() * 0.5;
            double there = width + Movement.changeMm(width, shrinkage, from, to);
            assertEquals(width, there + Movement.changeMm(there, shrinkage, to, from), 1e-9, "seed " + seed);
        }
    }

    @Test
    void from_green_to_oven_dry_a_board_loses_its_whole_shrinkage() { assertEquals(-7.6, Movement.changeMm(100, 0.076, 0.30, 0), 1e-9); }

    @Test
    void above_fibre_saturation_nothing_moves_and_the_figure_says_so() {
        assertEquals(0, Movement.changeMm(100, 0.076, 0.45, 0.31), 0);
        Answer answer = Figures.named("movement").answer(Map.of("species", "oak-white", "width", "6in", "from", "45%", "to", "30%"));
        assertEquals(0, answer.own("change"));
        assertTrue(answer.cautions().stream().anyMatch(caution -> caution.contains("30 %")));
    }

    @Test
    void damper_wood_is_never_narrower() {
        for (double to = 0; to < 0.4; to += 0.01) assertTrue(Movement.changeMm(100, 0.06, 0.12, to + 0.01) >= Movement.changeMm(100, 0.06, 0.12, to));
    }

    /// Two like boards each give half of what they shrink to the joint between: the gap is what one of them shrinks.
    @Test
    void two_like_boards_open_by_what_one_of_them_shrinks_and_a_like_inlay_by_nothing() {
        Answer answer = gap("pine-eastern-white");
        assertEquals(-answer.own("change"), answer.own("gap"), 1e-12);
        assertEquals(0, answer.own("gapInlaid"), 1e-12);
    }

    @Test
    void a_neighbour_already_dry_does_not_move() {
        Answer answer = gap("9%");
        assertEquals(0, answer.own("neighbourChange"), 1e-12);
        assertEquals(-answer.own("change"), answer.own("gapInlaid"), 1e-12);
        assertEquals(-answer.own("change") / 2, answer.own("gap"), 1e-12);
    }

    @Test
    void a_neighbour_twice_as_wide_moves_twice_as_far() {
        Answer answer = gap("12in");
        assertEquals(2 * answer.own("change"), answer.own("neighbourChange"), 1e-9);
    }

    @Test
    void a_neighbour_that_is_neither_wood_nor_width_nor_moisture_is_refused() {
        for (String neighbour : List.of("gopherwood", "5", "0in", "70F", "300%", "-5in")) assertThrows(Refused.class, () -> gap(neighbour), neighbour);
    }

    private static Answer gap(String neighbour) {
        return Figures.named("shrink-gap").answer(Map.of("species", "pine-eastern-white", "width", "6in", "from", "15%", "to", "9%", "neighbour", neighbour));
    }

    /// Siau's form with the gravity at that moisture given (computed from the equation, itself from memory).
    @ParameterizedTest(name = "G {0} at {1}")
    @CsvSource({"0.35, 0.12, 0.724667", "0.48, 0.12, 0.622400", "0.68, 0.12, 0.465067", "0.40, 0.30, 0.613333"})
    void room_is_left_for_liquid(double gravityAt, double moisture, double room) { assertEquals(room, Porosity.room(gravityAt, moisture), 0.0000005); }

    @Test
    void full_of_water_no_room_is_left() { assertEquals(0, Porosity.room(0.4, 2), 0); }

    @Test
    void wet_wood_is_lighter_by_its_volume_than_dry() {
        assertEquals(0.5, Porosity.gravityAt(0.5, 0), 1e-12);
        assertTrue(Porosity.gravityAt(0.5, 0.12) < 0.5 && Porosity.gravityAt(0.5, 0.30) < Porosity.gravityAt(0.5, 0.12));
        assertEquals(Porosity.gravityAt(0.5, 0.30), Porosity.gravityAt(0.5, 0.60), 1e-12);
    }

    /// Wood Handbook eq. 4-16 undoes eq. 4-12: 26.5 times the green gravity is the whole shrinkage.
    @Test
    void the_green_gravity_gives_back_the_shrinkage_it_was_found_by() {
        double green = Porosity.gravityAt(0.5, 0.30);
        assertEquals(0.265 * green, 1 - green / 0.5, 1e-12);
    }

    @Test
    void sg_and_species_are_given_one_at_a_time() {
        assertThrows(Refused.class, () -> Figures.named("porosity").answer(Map.of()));
        assertThrows(Refused.class, () -> Figures.named("porosity").answer(Map.of("sg", "0.4", "species", "oak-white")));
        assertEquals(1 - 0.34 / (1 - 0.082) / 1.5, Figures.named("porosity").answer(Map.of("species", "pine-eastern-white")).own("voids"), 1e-12);
    }
}
