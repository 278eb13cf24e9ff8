package sillwright.work.stock;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import sillwright.measure.Units;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class NominalTest {
    private static final Optional<Supply> PINE = Supply.of("pine-eastern-white"), OAK = Supply.of("oak-white"), SALVAGED = Supply.of("pine-longleaf");

    /// Source: American Softwood Lumber Standard PS 20, table of nominal and minimum dressed sizes, dry, in a reprint (read).
    @ParameterizedTest(name = "{0}")
    @CsvSource({"1×4, 0.75, 3.5", "1×8, 0.75, 7.25", "1×10, 0.75, 9.25", "1×12, 0.75, 11.25", "5/4×6, 1, 5.5", "2×6, 1.5, 5.5", "2×10, 1.5, 9.25", "4×4, 3.5, 3.5", "6×6, 5.5, 5.5", "6×8, 5.5, 7.25", "8×8, 7.25, 7.25"})
    void a_dressed_section_is_bought_by_its_name_and_used_as_sold(String name, double thin, double wide) {
        Nominal bought = Nominal.of(wide * 25.4, thin * 25.4, PINE, Units.US);
        assertEquals(name, bought.name());
        assertEquals(Optional.empty(), bought.milling(wide * 25.4, thin * 25.4, Units.US));
    }

    /// Source: BS EN 336, customary target sizes: sawn 50, 75, 100, 150, 225 planed 47, 72, 97, 145, 220 (read).
    @ParameterizedTest(name = "{0}")
    @CsvSource({"50 × 100, 47, 97", "75 × 225, 72, 220", "100 × 150, 97, 145"})
    void in_millimetres_likewise(String name, double thin, double wide) { assertEquals(name, Nominal.of(thin, wide, PINE, Units.SI).name()); }

    @Test
    void what_has_no_name_is_milled_from_the_next_larger() {
        Nominal bought = Nominal.of(114.3, 22.225, PINE, Units.US);
        assertEquals("5/4×5", bought.name());
        assertEquals("to 7/8 in × 4-1/2 in: plane 1/8 in off the thickness", bought.milling(114.3, 22.225, Units.US).orElseThrow());
        assertEquals("1×12", Nominal.of(279.4, 19.05, PINE, Units.US).name());
        assertTrue(Nominal.of(279.4, 19.05, PINE, Units.US).milling(279.4, 19.05, Units.US).orElseThrow().contains("rip 1/4 in off the width"));
    }

    @Test
    void hardwood_and_salvaged_wood_and_odd_timber_come_rough_with_wood_to_plane_off() {
        assertEquals("16/4 rough, 8 in wide", Nominal.of(184.15, 76.2, OAK, Units.US).name());
        assertEquals(Nominal.Way.ROUGH, Nominal.of(82.55, 28.575, SALVAGED, Units.US).way());
        assertEquals(Nominal.Way.ROUGH, Nominal.of(203.2, 203.2, PINE, Units.US).way(), "an 8 in timber is not planed out of a 10×10");
        assertTrue(Nominal.of(203.2, 203.2, PINE, Units.US).name().contains("sawn to order"));
    }

    static LongStream seeds() { return LongStream.range(0, 200); }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void what_is_bought_holds_the_piece_whichever_way_round_and_is_paid_for_by_no_less(long seed) {
        Random random = new Random(seed);
        double one = 10 + random.nextDouble() * 290, other = 10 + random.nextDouble() * 290;
        Units units = random.nextBoolean() ? Units.US : Units.SI;
        Optional<Supply> supply = random.nextInt(3) == 0 ? OAK : random.nextInt(5) == 0 ? Optional.empty() : PINE;
        Nominal bought = Nominal.of(one, other, supply, units);
        assertEquals(bought, Nominal.of(other, one, supply, units));
        assertTrue(bought.wideMm() >= Math.max(one, other) - 0.8 && bought.thinMm() >= Math.min(one, other) - 0.8, bought.toString());
        assertTrue(bought.paidMm2() >= bought.wideMm() * bought.thinMm() - 1e-6, bought.toString());
        Nominal more = Nominal.of(one + 1, other + 1, supply, units);
        if (more.way() == bought.way()) assertTrue(more.paidMm2() >= bought.paidMm2() - 1e-6, "a greater piece is never bought as a lesser section");
    }
}
