package sillwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillwright.desk.demo.DemoBooks;
import sillwright.store.SurveyFile;

/// The files under examples/ are the invented books as the exchange file has them.
///
/// `mvn -pl desk -am test -Dtest=ExamplesTest -Dsurefire.failIfNoSpecifiedTests=false -Dexamples.write=true` writes them anew.
@DisplayNameGeneration(ReplaceUnderscores.class)
class ExamplesTest {
    static final Path FOLDER = Path.of("..", "examples");

    static List<String> names() { return List.copyOf(DemoBooks.all().keySet()); }

    private static Path file(String name) { return FOLDER.resolve(name.endsWith(".survey.json") ? name : name + ".survey.json"); }

    @ParameterizedTest
    @MethodSource("names")
    void each_example_is_its_book(String name) throws Exception {
        String text = SurveyFile.text("An invented building: nothing in it is anywhere.", DemoBooks.all().get(name));
        if (Boolean.getBoolean("examples.write")) Files.writeString(Files.createDirectories(FOLDER).resolve(file(name).getFileName()), text);
        assertEquals(text, Files.readString(file(name)));
    }

    @ParameterizedTest
    @MethodSource("names")
    void each_example_is_read_without_a_fault_and_says_it_is_invented(String name) {
        var survey = SurveyFile.read(file(name)).fold();
        assertEquals(List.of(), survey.faults());
        assertTrue(survey.building().orElseThrow().note().toLowerCase(java.util.Locale.ROOT).contains("invented"));
    }

    @Test
    void there_is_no_other_example() throws Exception {
        try (var files = Files.list(FOLDER)) {
            assertEquals(names().stream().map(name -> file(name).getFileName().toString()).sorted().toList(), files.map(f -> f.getFileName().toString()).filter(name -> name.endsWith(".survey.json")).sorted().toList());
        }
    }
}
