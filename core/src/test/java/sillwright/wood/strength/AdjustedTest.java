package sillwright.wood.strength;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static sillwright.wood.strength.Published.inches;
import static sillwright.wood.strength.Published.toPsi;

@DisplayNameGeneration(ReplaceUnderscores.class)
class AdjustedTest {
    private static Adjusted of(String wood, Grade grade, double width, double depth, Duration duration, boolean wet) {
        return Adjusted.of(DesignValues.of(wood, grade, inches(width), inches(depth)), inches(width), inches(depth), Adjusted.Service.of(duration, wet));
    }

    /// Size factors of Tables 4A and 4D (read, secondary; timbers from memory), on DF-L No.2: Fb 900, Fc 1350; posts 750, 700.
    @ParameterizedTest(name = "{0} x {1}")
    @CsvSource({"1.5, 3.5, 1.5, 1.15", "1.5, 4.5, 1.4, 1.1", "1.5, 5.5, 1.3, 1.1", "1.5, 7.25, 1.2, 1.05", "3.5, 7.25, 1.3, 1.05", "1.5, 9.25, 1.1, 1.0", "3.5, 9.25, 1.2, 1.0",
            "1.5, 11.25, 1.0, 1.0", "3.5, 11.25, 1.1, 1.0", "1.5, 13.25, 0.9, 0.9", "3.5, 13.25, 1.0, 0.9", "2, 6, 1.3, 1.1"})
    void lumber_is_factored_for_its_width(double width, double depth, double bending, double along) {
        Adjusted wood = of("douglas-fir-coast", Grade.NO2, width, depth, Duration.NORMAL, false);
        assertEquals(900 * bending, toPsi(wood.bendingMPa()), 1e-6);
        assertEquals(1350 * along, toPsi(wood.alongMPa()), 1e-6);
    }

    @Test
    void a_deep_timber_is_weaker_in_bending_and_one_on_its_flat_by_its_grade() {
        assertEquals(875 * Math.pow(12 / 15.5, 1.0 / 9), toPsi(of("douglas-fir-coast", Grade.NO2, 7.5, 15.5, Duration.NORMAL, false).bendingMPa()), 1e-6);
        Adjusted first = of("douglas-fir-coast", Grade.NO1, 5.5, 11.5, Duration.NORMAL, false);
        assertEquals(0.74, first.flatMPa() / first.bendingMPa(), 1e-12);
        Adjusted joist = of("douglas-fir-coast", Grade.NO1, 1.5, 5.5, Duration.NORMAL, false);
        assertEquals(1.15, joist.flatMPa() / joist.bendingMPa(), 1e-12);
    }

    @Test
    void load_that_goes_soon_may_be_heavier_but_not_across_the_grain_and_not_for_stiffness() {
        Adjusted normal = of("hem-fir", Grade.NO2, 1.5, 7.25, Duration.NORMAL, false), snow = of("hem-fir", Grade.NO2, 1.5, 7.25, Duration.SNOW, false);
        assertEquals(1.15, snow.bendingMPa() / normal.bendingMPa(), 1e-12);
        assertEquals(1.15, snow.alongMPa() / normal.alongMPa(), 1e-12);
        assertEquals(1.15, snow.shearMPa() / normal.shearMPa(), 1e-12);
        assertEquals(normal.acrossMPa(), snow.acrossMPa());
        assertEquals(normal.leastElasticMPa(), snow.leastElasticMPa());
        assertEquals(List.of(0.9, 1.0, 1.15, 1.25, 1.6), Arrays.stream(Duration.values()).map(Duration::factor).toList());
    }

    @Test
    void wet_wood_loses_what_the_tables_say() {
        Adjusted dry = of("douglas-fir-coast", Grade.NO1, 1.5, 5.5, Duration.NORMAL, false), wet = of("douglas-fir-coast", Grade.NO1, 1.5, 5.5, Duration.NORMAL, true);
        assertEquals(0.85, wet.bendingMPa() / dry.bendingMPa(), 1e-12);
        assertEquals(0.97, wet.shearMPa() / dry.shearMPa(), 1e-12);
        assertEquals(0.67, wet.acrossMPa() / dry.acrossMPa(), 1e-12);
        assertEquals(0.8, wet.alongMPa() / dry.alongMPa(), 1e-12);
        assertEquals(0.9, wet.leastElasticMPa() / dry.leastElasticMPa(), 1e-12);
        Adjusted weak = of("eastern-softwoods", Grade.NO2, 1.5, 5.5, Duration.NORMAL, true);
        assertEquals(575 * 1.3, toPsi(weak.bendingMPa()), 1e-9, "Fb CF up to 1150 psi loses nothing");
        Adjusted timber = of("douglas-fir-coast", Grade.NO2, 5.5, 5.5, Duration.NORMAL, true);
        assertEquals(700 * 0.91, toPsi(timber.alongMPa()), 1e-9);
        assertEquals(750, toPsi(timber.bendingMPa()), 1e-9);
        assertEquals(525, toPsi(of("pine-longleaf", Grade.NO2, 5.5, 5.5, Duration.NORMAL, true).alongMPa()), 1e-9, "its timbers serve wet as dry");
    }

    @Test
    void warm_wood_is_weaker_and_joists_side_by_side_stronger() {
        assertEquals(new Factors.Warm(1, 1), Factors.Warm.of(35, true));
        assertEquals(new Factors.Warm(0.8, 0.9), Factors.Warm.of(45, false));
        assertEquals(new Factors.Warm(0.5, 0.9), Factors.Warm.of(60, true));
        DesignValues joist = DesignValues.of("hem-fir", Grade.NO1, inches(1.5), inches(7.25));
        Adjusted many = Adjusted.of(joist, inches(1.5), inches(7.25), new Adjusted.Service(Duration.NORMAL, false, 21, true));
        assertEquals(1345.5, toPsi(many.bendingMPa()), 1e-6, "975 x 1.2 x 1.15");
        assertEquals(1350 * 1.05, toPsi(many.alongMPa()), 1e-6);
    }
}
