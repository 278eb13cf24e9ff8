package sillwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.measure.Csv;
import sillwright.measure.Figure;
import sillwright.measure.Units;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FigureCommandTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    static List<Figure> figures() { return List.copyOf(Figures.all().values()); }

    private static List<String> words(Figure figure) {
        List<String> words = new ArrayList<>(List.of("figure", figure.name()));
        for (String word : figure.example().split(" (?=[a-zA-Z0-9]+=)")) words.add(word.replaceAll("^'|'$", "").replaceAll("=['\"](.*)['\"]$", "=$1"));
        return words;
    }

    /// Every published value comes out of the command line's JSON as it comes out of Java.
    @Test
    void the_command_line_says_what_java_says_for_every_check() {
        int seen = 0;
        for (Check check : Check.all()) {
            if (!check.ofFigure()) continue;
            for (Csv.Row row : check.csv().rows()) {
                if (row.line() % 7 != 0 && check.csv().rows().size() > 40) continue;
                List<String> args = new ArrayList<>(List.of("figure", row.get("figure"), "--json", "--units", row.cells().getOrDefault("units", "us").isEmpty() ? "us" : row.cells().getOrDefault("units", "us")));
                Map<String, String> inputs = Check.inputs(row);
                inputs.forEach((key, value) -> args.add(key + "=" + value));
                Said said = Said.by(args.toArray(String[]::new));
                assertEquals(0, said.code(), said.err());
                JsonNode result = JSON.readTree(said.out()).get("results").get(row.get("result"));
                Answer.Result java = Figures.named(row.get("figure")).answer(inputs).results().get(row.get("result"));
                switch (java) {
                    case Answer.Measured measured -> assertEquals(measured.in(Check.units(row)), result.get("value").doubleValue(), 0, args.toString());
                    case Answer.Said(var word) -> assertEquals(word, result.get("value").stringValue());
                    case Answer.True(var yes) -> assertEquals(yes, result.get("value").booleanValue());
                }
                seen++;
            }
        }
        assertTrue(seen > 200, "rows seen: " + seen);
    }

    @Test
    void every_check_of_a_figure_comes_out() {
        List<String> misses = new ArrayList<>();
        for (Check check : Check.all()) misses.addAll(check.misses());
        assertEquals(List.of(), misses);
    }

    @Test
    void the_thirteen_figures_that_the_road_rests_on_are_there() {
        for (String name : "emc dewpoint meter movement porosity section mix consolidant lead-safe paint-window splash gutter scarf".split(" "))
            assertTrue(Figures.all().containsKey(name), name);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void an_answer_has_the_one_shape_in_both_systems(Figure figure, @TempDir Path folder) throws Exception {
        for (Units units : Units.values()) {
            List<String> args = words(figure);
            for (int i = 0; i < args.size(); i++)
                if (args.get(i).startsWith("file=")) {
                    Path file = folder.resolve("given.csv");
                    if (figure.name().equals("net")) Files.copy(ExamplesTest.FOLDER.resolve("porch-corner.net.json"), file, StandardCopyOption.REPLACE_EXISTING);
                    else if (figure.name().equals("cut-list")) Files.writeString(file, "length,count,label\n4ft 6in,2,rail\n700mm,3,baluster\n");
                    else if (figure.name().equals("field")) Files.writeString(file, "along_mm,across_mm,depth_mm,limit\n50,70,30,none\n300,70,0,none\n500,40,0,none\n");
                    else Files.writeString(file, "date,mc_pct,temp_C\n2026-01-01,28,15\n2026-01-02,30,20\n");
                    args.set(i, "file=" + file);
                }
            args.add("--json");
            args.add("--units");
            args.add(units.name().toLowerCase(java.util.Locale.ROOT));
            Said said = Said.by(args.toArray(String[]::new));
            assertEquals(0, said.code(), said.err());
            JsonNode root = JSON.readTree(said.out());
            assertEquals(List.of("figure", "inputs", "results", "basis", "cautions"), List.copyOf(root.propertyNames()));
            assertEquals(figure.name(), root.get("figure").stringValue());
            root.get("results").forEach(result -> assertEquals(List.of("value", "unit"), List.copyOf(result.propertyNames())));
            for (String result : figure.gives().keySet()) assertTrue(root.get("results").has(result) || said.out().contains("cautions"), result);
            assertTrue(root.get("basis").size() > 0);
            assertTrue(Said.by(args.subList(0, args.size() - 3).toArray(String[]::new)).out().contains("Rests on"));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void help_tells_keys_units_ranges_and_sources(Figure figure) {
        Said said = Said.by("figure", figure.name(), "--help");
        assertEquals(0, said.code());
        figure.keys().forEach(key -> assertTrue(said.out().contains(key.name()) && said.out().contains(key.says()), key.name()));
        figure.gives().keySet().forEach(result -> assertTrue(said.out().contains(result), result));
        figure.basis().forEach(basis -> assertTrue(said.out().contains(basis.source()), basis.source()));
        assertTrue(said.out().contains("sillwright figure " + figure.name() + " " + figure.example()));
    }

    @Test
    void without_a_name_every_figure_is_listed() {
        Said said = Said.by("figure");
        assertEquals(0, said.code());
        Figures.all().keySet().forEach(name -> assertTrue(said.out().contains("  " + name), name));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "emc temp=70 rh=65%|figure emc: temp: '70' has no unit; add one of F, C, K",
        "emc temp=70F|figure emc: rh: is missing; add rh=...",
        "emc temp=70F rh=65% wind=3mph|there is no key 'wind'",
        "emc temp=70F rh=165%|outside the range",
        "emc temp=70F rh=12in|rh: '12in' is a length, where a fraction is wanted",
        "emc temp=70F temp=71F rh=65%|given twice",
        "emc temp|is not key=value",
        "emcc temp=70F|did you mean emc",
        "movement species=okk width=8in from=8% to=14% grain=flat|not a species of the table; did you mean",
        "movement species=oak-white width=8in from=8% to=14% grain=round|grain: 'round' is not one of the choices; use flat, quarter",
    })
    void what_cannot_be_worked_is_said_in_one_line(String typed, String what) {
        Said said = Said.by(("figure " + typed).split(" "));
        assertEquals(2, said.code());
        assertTrue(said.err().contains(what), said.err());
        assertEquals(1, said.err().lines().count(), said.err());
        assertEquals("", said.out());
    }
}
