package sillwright;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sillwright.measure.Answer;
import sillwright.measure.Csv;
import sillwright.measure.Known;
import sillwright.measure.Units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/// Works every row of every file under `checks` and compares it with what the outside says.
@DisplayNameGeneration(ReplaceUnderscores.class)
class ChecksTest {
    @TestFactory
    Stream<DynamicContainer> every_figure_gives_the_value_that_was_published() {
        return Checks.all().stream().filter(Checks.File::isForFigures).map(file -> DynamicContainer.dynamicContainer(file.name() + ", " + file.note("known"),
                file.csv().rows().stream().map(row -> DynamicTest.dynamicTest("line " + row.line() + ": " + row.get("figure") + " " + row.get("inputs"), () -> check(row)))));
    }

    static void check(Csv.Row row) {
        Answer answer = Figures.named(row.get("figure")).answer(Checks.typed(row.get("inputs")));
        Answer.Result result = answer.results().get(row.get("result"));
        Units units = Units.valueOf(row.get("units").toUpperCase(Locale.ROOT));
        switch (result) {
            case null -> throw new AssertionError("there is no result '" + row.get("result") + "'; the results are " + answer.results().keySet());
            case Answer.Said(var word) -> assertEquals(row.get("expected"), word);
            case Answer.True(var yes) -> assertEquals(row.get("expected"), String.valueOf(yes));
            case Answer.Measured measured -> {
                assertEquals(row.get("unit"), measured.kind().in(units).symbol());
                assertEquals(row.number("expected"), measured.in(units), row.number("tolerance") + 1e-12);
            }
        }
    }

    @Test
    void every_file_says_where_it_is_from_how_it_is_known_and_what_it_checks() throws ClassNotFoundException {
        List<Checks.File> files = Checks.all();
        assertTrue(files.size() > 20);
        for (Checks.File file : files) {
            assertTrue(!file.note("source").isEmpty() && !file.note("where").isEmpty(), file.name());
            Known.of(file.note("known"));
            assertTrue(!file.csv().rows().isEmpty(), file.name() + " has no rows");
            String checks = file.note("checks");
            if (checks.startsWith("test ")) Class.forName(checks.substring(5));
            else {
                String figure = checks.substring(7);
                for (Csv.Row row : file.csv().rows()) assertEquals(figure, row.get("figure"), file.name());
                assertEquals(file.name().substring(0, file.name().indexOf('/')), Figures.named(figure).stage(), file.name() + " lies beside another stage");
            }
        }
    }

    @Test
    void a_row_that_is_wrong_fails() {
        String header = "figure,inputs,result,unit,units,expected,tolerance\n";
        for (String row : List.of("emc,temp=70F rh=65%,mc,%,us,13.0,0.1", "emc,temp=70F rh=65%,mc,F,us,12.0,0.1", "emc,temp=70F rh=65%,moisture,%,us,12.0,0.1",
                "lead-safe,built=1912 area=30ft2 side=exterior,covered,,us,false,"))
            assertThrows(AssertionError.class, () -> check(Csv.read(header + row + "\n").rows().getFirst()), row);
    }
}
