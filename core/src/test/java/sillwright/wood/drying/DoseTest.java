package sillwright.wood.drying;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.measure.Csv;
import sillwright.measure.Refused;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class DoseTest {
    static List<Csv.Row> values() throws IOException {
        try (var in = DoseTest.class.getResourceAsStream("/checks/wood/dose.csv")) { return Csv.read(new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)).rows(); }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("values")
    void the_values_worked_from_the_published_equations_come_out(Csv.Row row) {
        double first = row.number("first"), expected = row.number("expected");
        assertEquals(expected, switch (row.get("what")) {
            case "of-moisture" -> Dose.ofMoisture(first / 100);
            case "of-temperature" -> Dose.ofTemperature(first);
            case "day" -> Dose.day(first / 100, row.number("second"));
            case "rating" -> Dose.rating(first);
            case "rating-earlier" -> Dose.ratingEarlier(first);
            case "days" -> Dose.days(first);
            default -> throw new AssertionError(row.get("what"));
        }, row.number("tolerance") + 1e-12);
    }

    @Test
    void a_rating_and_its_dose_go_round() {
        for (double rating = 0.01; rating < 3.99; rating += 0.01) assertEquals(rating, Dose.rating(Dose.days(rating)), 1e-9);
    }

    @Test
    void dry_cold_frozen_hot_and_drowned_days_add_nothing() {
        for (double[] day : new double[][] {{0.24, 20}, {0.40, -1}, {0.40, 41}, {1.40, 20}, {3, 20}, {0.25, 20}, {0.40, 0}}) assertEquals(0, Dose.day(day[0], day[1]), Arrays.toString(day));
    }

    private static Answer work(String csv) { return Figures.named("decay-dose").answer(Map.of("file", "days.csv"), Map.of("days.csv", csv)); }

    @Test
    void the_figure_adds_up_the_days_of_a_file() {
        StringBuilder csv = new StringBuilder("date,mc_pct,temp_C\n");
        for (int d = 0; d < 500; d++) csv.append(LocalDate.of(2025, 1, 1).plusDays(2 * d)).append(",40,20\n").append(LocalDate.of(2025, 1, 2).plusDays(2 * d)).append(",12,20\n");
        Answer answer = work(csv.toString());
        assertEquals(500 * 0.726057, answer.own("dose") / 86400, 500 * 5e-7);
        assertEquals(Dose.rating(500 * Dose.day(0.4, 20)), answer.own("rating"), 1e-12);
        assertEquals(1000, answer.own("days"));
        assertEquals(500, answer.own("dampDays"));
        assertTrue(answer.cautions().stream().noneMatch(caution -> caution.contains("missing")));
        assertTrue(work("date,mc_pct,temp_C\n2025-01-01,40,20\n2025-01-05,40,20\n").cautions().stream().anyMatch(caution -> caution.contains("3 of the 5 days")));
    }

    @Test
    void a_bad_file_is_refused_with_the_line() {
        assertTrue(assertThrows(Refused.class, () -> work("date,mc_pct,temp_C\n2025-01-01,40,20\n2025-01-02,wet,20\n")).getMessage().contains("line 3"));
        assertTrue(assertThrows(Refused.class, () -> work("date,mc_pct\n2025-01-01,40\n")).getMessage().contains("temp_C"));
        assertTrue(assertThrows(Refused.class, () -> work("date,mc_pct,temp_C\n")).getMessage().contains("no rows"));
        assertTrue(assertThrows(Refused.class, () -> work("date,mc_pct,temp_C\n2025-01-01,-3,20\n")).getMessage().contains("no moisture"));
        assertTrue(assertThrows(Refused.class, () -> work("date,mc_pct,temp_C\nMay 4,40,20\n")).getMessage().contains("no day"));
        assertTrue(assertThrows(Refused.class, () -> work("date,mc_pct,temp_C\n2025-01-01,40,20\n2025-01-01,41,20\n")).getMessage().contains("twice"));
    }
}
