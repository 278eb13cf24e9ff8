package sillwright.wood;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillwright.measure.Answer;
import sillwright.measure.Refused;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FieldFigureTest {
    private static final String HEAD = "along_mm,across_mm,depth_mm,limit\n";

    private static Answer work(String rows, String length, String width, String thickness) {
        return sillwright.Figures.named("field").answer(Map.of("file", "r.csv", "length", length, "width", width, "thickness", thickness), Map.of("r.csv", HEAD + rows));
    }

    private static Answer post(String rows) { return work(rows, "900mm", "140mm", "140mm"); }

    private static String grid(int columns, int rows, DoubleBinaryOperator depth, double reach) {
        StringBuilder text = new StringBuilder();
        for (int c = 0; c < columns; c++)
            for (int r = 0; r < rows; r++) {
                double x = (c + 0.5) * 900 / columns, y = (r + 0.5) * 140 / rows, z = Math.max(0, depth.applyAsDouble(x, y));
                text.append(x).append(',').append(y).append(',').append(Math.min(reach, z)).append(',').append(z >= reach ? "reach" : "none").append('\n');
            }
        return text.toString();
    }

    private static void whole(Answer answer) {
        assertTrue(answer.own("low") <= answer.own("volume") && answer.own("volume") <= answer.own("high"));
        assertTrue(answer.own("soundLine") >= 0 && answer.own("soundLine") <= 900);
        assertTrue(answer.own("nextAlong") > 0 && answer.own("nextAlong") < 900 && answer.own("nextAcross") > 0 && answer.own("nextAcross") < 140);
    }

    /// A wedge 60 mm deep at the foot that ends at 300 mm: 60·300/2·140 mm³ = 1260 mL.
    @ParameterizedTest
    @CsvSource({"8,2", "15,2", "20,3", "50,3", "100,5"})
    void a_wedge_is_measured_by_few_readings_and_by_many(int columns, int rows) {
        Answer answer = post(grid(columns, rows, (x, _) -> 60 * (1 - x / 300), 120));
        whole(answer);
        assertEquals(1260, answer.own("volume"), 1260 * (columns < 10 ? 0.25 : 0.08));
        assertTrue(answer.own("soundLine") > 275 && answer.own("soundLine") < 300 + 51 + 900.0 / columns, answer.results().toString());
        assertEquals(0, answer.own("soundBefore"));
        assertEquals(60, answer.own("deepest"), 8);
    }

    /// The rougher field follows the same wedge; between readings far apart it is less sure than the smoother one.
    @Test
    void the_smoothness_can_be_chosen() {
        Map<String, String> keys = Map.of("file", "r.csv", "length", "900mm", "width", "140mm", "thickness", "140mm");
        Map<String, String> rough = new HashMap<>(keys);
        rough.put("smooth", "3/2");
        // Over several grids: of one, two hundred draws tell the width to a tenth.
        double smootherWidth = 0, rougherWidth = 0;
        Map<String, String> files = Map.of();
        for (int columns = 6; columns <= 12; columns++) {
            files = Map.of("r.csv", HEAD + grid(columns, 2, (x, _) -> 60 * (1 - x / 300), 120));
            Answer smoother = sillwright.Figures.named("field").answer(keys, files), rougher = sillwright.Figures.named("field").answer(rough, files);
            whole(rougher);
            assertEquals(1260, rougher.own("volume"), 0.25 * 1260);
            smootherWidth += smoother.own("foundHigh") - smoother.own("foundLow");
            rougherWidth += rougher.own("foundHigh") - rougher.own("foundLow");
        }
        assertTrue(rougherWidth > 1.05 * smootherWidth, rougherWidth + " mL against " + smootherWidth);
        rough.put("smooth", "7/2");
        Map<String, String> last = files;
        assertTrue(assertThrows(Refused.class, () -> sillwright.Figures.named("field").answer(rough, last)).getMessage().contains("smooth"));
    }

    @Test
    void a_probe_that_ran_out_says_at_least() {
        Answer shallow = post(grid(12, 2, (x, _) -> 120 * (1 - x / 400), 60)), deep = post(grid(12, 2, (x, _) -> 120 * (1 - x / 400), 200));
        whole(shallow);
        assertTrue(shallow.own("deepestHigh") - shallow.own("deepestLow") > deep.own("deepestHigh") - deep.own("deepestLow"));
        assertTrue(shallow.own("deepest") > 60);
        assertTrue(shallow.own("high") > 120 * 400 / 2.0 * 140 / 1000 * 0.95, "the truth is within reach of the interval: " + shallow.results());
        assertTrue(shallow.cautions().stream().anyMatch(said -> said.contains("ran out")));
    }

    @ParameterizedTest
    @CsvSource({"2,1", "6,1", "12,2", "24,3"})
    void a_face_sound_at_every_reading_has_no_line_and_little_hidden_in_it(int columns, int rows) {
        Answer answer = post(grid(columns, rows, (_, _) -> 0, 100));
        whole(answer);
        assertEquals(0, answer.own("soundLine"));
        assertEquals(900, answer.own("soundBefore"));
        assertTrue(answer.own("low") < 5 && answer.own("volume") < 0.02 * 900 * 140 * 140 / 1000, answer.results().toString());
        if (columns == 24) assertTrue(answer.own("high") < 100 && answer.results().get("enough").equals(new Answer.True(true)), answer.results().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0,0,30,none\n0,140,25,none\n900,0,0,none\n900,140,0,none\n", "450,70,40,none\n", "450,70,40,none\n450,70,42,none\n450,70,38,none\n",
            "10,70,100,reach\n20,70,100,reach\n30,70,100,reach\n", "100,70,3,none\n300,70,12,none\n500,70,44,none\n700,70,9,none\n"})
    void readings_at_corners_in_one_row_or_on_one_spot_are_taken(String rows) { whole(post(rows)); }

    @Test
    void a_hundred_and_more_readings_leave_a_spot_to_name_even_where_wood_bears_no_more_holes() {
        Answer answer = post(grid(50, 10, (x, _) -> 40 * (1 - x / 300), 120));
        whole(answer);
        assertEquals(new Answer.True(true), answer.results().get("enough"));
        assertEquals(840, answer.own("volume"), 40);
    }

    @Test
    void the_next_spot_is_never_on_top_of_another() {
        String rows = grid(6, 2, (x, _) -> 60 * (1 - x / 300), 120);
        for (int i = 0; i < 8; i++) {
            Answer answer = post(rows);
            double along = answer.own("nextAlong"), across = answer.own("nextAcross");
            for (String row : rows.split("\n")) {
                String[] cells = row.split(",");
                assertTrue(Math.hypot(along - Double.parseDouble(cells[0]), across - Double.parseDouble(cells[1])) >= 25 - 1e-9);
            }
            rows += along + "," + across + "," + Math.max(0, 60 * (1 - along / 300)) + ",none\n";
        }
    }

    @Test
    void a_mirrored_face_has_the_mirrored_answer() {
        String rows = grid(12, 2, (x, y) -> 60 * (1 - x / 300) - y / 10, 120), mirrored = grid(12, 2, (x, y) -> 60 * (1 - (900 - x) / 300) - (140 - y) / 10, 120);
        Answer one = post(rows), other = post(mirrored);
        assertEquals(one.own("volume"), other.own("volume"), 0.03 * one.own("volume"));
        assertEquals(900 - one.own("soundLine"), other.own("soundBefore"), 30);
        assertEquals(900, other.own("soundLine"));
    }

    @Test
    void a_bad_row_is_refused_by_line_and_column() {
        refused("10,10,5,none\n20,x,5,none", "line 3, column across_mm", "'x' is not a number");
        refused("10,10,5,none\n950,10,5,none", "line 3, column along_mm", "900.0 mm long");
        refused("10,150,5,none", "line 2, column across_mm", "140.0 mm wide");
        refused("10,10,141,none", "line 2, column depth_mm", "140.0 mm thick");
        refused("10,10,-1,none", "line 2, column depth_mm", "out of range");
        refused("10,10,NaN,none", "line 2, column depth_mm", "'NaN'");
        refused("10,10,5,maybe", "line 2, column limit", "neither none nor reach");
        refused("10,10,5,none,7", "line 2", "5 cells");
        refused("", "file", "has no rows");
        refused("10,10,5,none\n".repeat(501), "file", "501 readings");
    }

    private static void refused(String rows, String where, String what) {
        String said = assertThrows(Refused.class, () -> post(rows)).getMessage();
        assertTrue(said.startsWith("figure field, file") && said.contains(where) && said.contains(what), said);
    }

    @Test
    void a_missing_column_is_named() {
        String said = assertThrows(Refused.class, () -> sillwright.Figures.named("field").answer(Map.of("file", "r.csv", "length", "900mm", "width", "140mm", "thickness", "140mm"),
                Map.of("r.csv", "along_mm,across_mm,depth_mm\n1,2,3\n"))).getMessage();
        assertTrue(said.contains("'limit'") && said.contains("along_mm,across_mm,depth_mm,limit"), said);
    }
}
