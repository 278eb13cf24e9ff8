package sillwright.water;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import sillwright.measure.Answer;
import sillwright.measure.Csv;
import sillwright.measure.Figure;
import sillwright.measure.Refused;
import sillwright.measure.Units;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class WaterChecksTest {
    static Figure figure(String name) { return WaterFigures.all().stream().filter(figure -> figure.name().equals(name)).findFirst().orElseThrow(); }

    static Answer answer(String name, String typed) {
        Map<String, String> keys = new LinkedHashMap<>();
        for (String pair : typed.split(" ")) keys.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1).replace('_', ' '));
        return figure(name).answer(keys);
    }

    @TestFactory
    List<DynamicTest> every_row_of_the_checks_is_met_by_its_figure() throws Exception {
        List<DynamicTest> tests = new ArrayList<>();
        try (var files = Files.list(Path.of(WaterChecksTest.class.getResource("/checks/water").toURI()))) {
            for (Path file : files.sorted().toList()) {
                Csv csv = Csv.read(Files.readString(file));
                for (Csv.Row row : csv.rows())
                    tests.add(DynamicTest.dynamicTest(file.getFileName() + ": " + row.get("inputs") + " " + row.get("result"), () -> meets(row)));
            }
        }
        assertTrue(tests.size() > 100, "the checks were not found");
        return tests;
    }

    private static void meets(Csv.Row row) {
        Answer.Result result = answer(row.get("figure"), row.get("inputs")).results().get(row.get("result"));
        Units units = row.get("units").equals("si") ? Units.SI : Units.US;
        switch (result) {
            case Answer.Measured measured -> {
                assertEquals(row.get("unit"), measured.kind().in(units).symbol());
                assertEquals(row.number("expected"), measured.in(units), row.number("tolerance"));
            }
            case Answer.Said(var word) -> assertEquals(row.get("expected"), word);
            case Answer.True(var yes) -> assertEquals(row.get("expected"), String.valueOf(yes));
        }
    }

    @Test
    void the_example_of_every_figure_works_and_gives_no_result_that_help_does_not_name() {
        for (Figure figure : WaterFigures.all()) {
            Answer answer = answer(figure.name(), figure.example());
            assertTrue(figure.gives().keySet().containsAll(answer.results().keySet()), figure.name());
            assertFalse(answer.cautions().isEmpty(), figure.name());
        }
    }

    @Test
    void an_input_outside_the_range_is_refused_and_one_outside_the_table_is_cautioned() {
        assertThrows(Refused.class, () -> answer("gutter", "shape=half-round size=40in slope=0in/ft roofArea=450ft2 rain=4in/h"));
        assertThrows(Refused.class, () -> answer("gutter", "shape=half-round size=5in slope=-1in/ft roofArea=450ft2 rain=4in/h"));
        Answer large = answer("gutter", "shape=half-round size=12in slope=1/16in/ft roofArea=450ft2 rain=4in/h");
        assertTrue(large.cautions().stream().anyMatch(caution -> caution.contains("from 3 to 10 in")));
        Answer deep = answer("gutter", "shape=rectangular size=5in slope=0in/ft roofArea=450ft2 rain=4in/h");
        assertTrue(deep.cautions().stream().anyMatch(caution -> caution.contains("no depth was given")));
    }
}
