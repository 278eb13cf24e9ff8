package sillwright.wood.strength;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sillwright.measure.Known;
import sillwright.measure.Refused;
import sillwright.walk.Species;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sillwright.wood.strength.Published.inches;
import static sillwright.wood.strength.Published.psi;
import static sillwright.wood.strength.Published.toPsi;

@DisplayNameGeneration(ReplaceUnderscores.class)
class DesignValuesTest {
    private static DesignValues of(String wood, Grade grade, double width, double depth) { return DesignValues.of(wood, grade, inches(width), inches(depth)); }

    @TestFactory
    Stream<DynamicTest> a_graded_piece_may_be_stressed_as_the_tables_say() {
        return Stream.of("design-values", "design-values-recalled").flatMap(file -> Published.rows(file).stream()
                .map(row -> DynamicTest.dynamicTest(file + " line " + row.line() + ": " + row.get("wood") + " " + row.get("grade"), () -> {
                    DesignValues found = of(row.get("wood"), Grade.of(row.get("grade")), row.number("width_in"), row.number("depth_in"));
                    double[] values = {found.bendingMPa(), found.tensionMPa(), found.shearMPa(), found.acrossMPa(), found.alongMPa(), found.elasticMPa() / 1e6, found.leastElasticMPa() / 1e6};
                    List<String> columns = List.of("fb", "ft", "fv", "fcp", "fc", "e", "emin");
                    for (int i = 0; i < values.length; i++) assertEquals(row.number(columns.get(i)), toPsi(values[i]), 1e-9 * (1 + toPsi(values[i])), columns.get(i));
                    if (file.equals("design-values")) assertEquals(Known.READ, found.basis().getFirst().known());
                })));
    }

    @Test
    void every_species_of_the_handbook_has_some_value_for_every_grade_and_size_or_is_refused_in_words() {
        for (String species : Species.all().keySet())
            for (Grade grade : Grade.values())
                for (double[] size : new double[][] {{1.5, 5.5}, {3.5, 11.25}, {5.5, 5.5}, {5.5, 11.5}}) {
                    if (grade == Grade.NO3 && size[0] > 5) {
                        assertTrue(assertThrows(Refused.class, () -> of(species, grade, size[0], size[1])).getMessage().contains("No.3"));
                        continue;
                    }
                    DesignValues found = of(species, grade, size[0], size[1]);
                    String say = species + " " + grade + " " + size[0];
                    assertTrue(found.bendingMPa() >= psi(275) && found.alongMPa() >= psi(250) && found.acrossMPa() >= psi(200) && found.shearMPa() >= psi(100), say);
                    assertTrue(found.leastElasticMPa() < found.elasticMPa() / 2 && found.leastElasticMPa() > found.elasticMPa() / 3.2, say);
                    assertFalse(found.basis().isEmpty(), say);
                }
    }

    /// Emin = E·(1 − 1.645·0.25)·1.03/1.66, rounded to 0.01 in the table (the standard's appendix D, from memory).
    @Test
    void the_modulus_for_buckling_follows_from_the_mean_one() {
        for (String group : DesignTable.groups())
            for (Grade grade : List.of(Grade.SELECT_STRUCTURAL, Grade.NO1, Grade.NO2)) {
                DesignValues found = of(group, grade, 1.5, 5.5);
                assertEquals(found.elasticMPa() * (1 - 1.645 * 0.25) * 1.03 / 1.66, found.leastElasticMPa(), psi(0.0075e6), group + " " + grade);
            }
    }

    @Test
    void a_better_grade_is_never_weaker() {
        for (String group : DesignTable.groups())
            for (double[] size : new double[][] {{1.5, 5.5}, {5.5, 5.5}, {5.5, 11.5}})
                for (int g = 1; g < (size[0] > 5 ? 3 : 4); g++) {
                    DesignValues better = of(group, Grade.values()[g - 1], size[0], size[1]), worse = of(group, Grade.values()[g], size[0], size[1]);
                    String say = group + " " + Grade.values()[g] + " " + size[1];
                    assertTrue(better.bendingMPa() >= worse.bendingMPa() && better.alongMPa() >= worse.alongMPa() && better.elasticMPa() >= worse.elasticMPa()
                            && better.tensionMPa() >= worse.tensionMPa(), say);
                }
    }

    @Test
    void wood_that_the_tables_lack_is_never_stronger_than_any_they_have_and_says_so() {
        DesignValues chestnut = of("chestnut-american", Grade.NO2, 5.5, 5.5);
        for (String group : DesignTable.groups()) {
            DesignValues other = of(group, Grade.NO2, 5.5, 5.5);
            if (other.cautions().stream().noneMatch(caution -> caution.contains("stands in"))) assertTrue(chestnut.alongMPa() <= other.alongMPa() && chestnut.bendingMPa() <= other.bendingMPa(), group);
        }
        assertEquals(Known.MEMORY, chestnut.basis().getLast().known(), "a mixture is no better known than its worst part");
        assertTrue(chestnut.cautions().getFirst().contains("American chestnut") && chestnut.cautions().getFirst().contains("stands in"), chestnut.cautions().toString());
        DesignValues cedar = of("cedar-northern-white", Grade.NO2, 5.5, 5.5);
        assertTrue(toPsi(cedar.alongMPa()) <= 475.0001 && toPsi(cedar.leastElasticMPa()) <= 260_000.1, "its own lumber is weaker than any timber listed");
    }

    @Test
    void a_name_that_is_in_no_table_counts_as_the_least_of_its_kin() {
        DesignValues pine = DesignValues.orCareful("old-growth-pine", Grade.NO2, inches(5.5), inches(5.5));
        for (String kin : List.of("pine-eastern-white", "pine-longleaf", "pine-sugar")) assertTrue(pine.alongMPa() <= of(kin, Grade.NO2, 5.5, 5.5).alongMPa(), kin);
        DesignValues nothing = DesignValues.orCareful("", Grade.NO2, inches(5.5), inches(5.5));
        assertTrue(nothing.alongMPa() <= pine.alongMPa());
        assertEquals(of("pine-longleaf", Grade.NO2, 5.5, 5.5), DesignValues.orCareful("pine-longleaf", Grade.NO2, inches(5.5), inches(5.5)));
        assertTrue(assertThrows(Refused.class, () -> of("pine-longlef", Grade.NO2, 5.5, 5.5)).mend().contains("pine-longleaf"));
    }

    @Test
    void sizes_are_graded_as_lumber_posts_or_beams_by_what_they_measure() {
        assertEquals(Use.LUMBER, Use.of(inches(3.5), inches(3.5)));
        assertEquals(Use.LUMBER, Use.of(inches(4), inches(12)));
        assertEquals(Use.POST, Use.of(inches(5.5), inches(5.5)));
        assertEquals(Use.POST, Use.of(inches(7.5), inches(5.5)));
        assertEquals(Use.BEAM, Use.of(inches(5.5), inches(9.5)));
        assertEquals(Use.POST, Use.of(114, 114), "4-1/2 in typed in whole millimetres");
    }
}
