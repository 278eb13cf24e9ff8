package sillwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillwright.measure.Json;
import sillwright.measure.Refused;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@DisplayNameGeneration(ReplaceUnderscores.class)
class NetCommandTest {
    private static final Path CORNER = ExamplesTest.FOLDER.resolve("porch-corner.net.json");
    private static final JsonMapper JSON = JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

    @Test
    void the_example_answers_with_one_result_for_each_source() throws Exception {
        Said said = Said.by("figure", "net", "file=" + CORNER, "--json");
        assertEquals(0, said.code(), said.err());
        JsonNode results = JSON.readTree(said.out()).get("results");
        JSON.readTree(Files.readString(CORNER)).get("sources").forEach(source -> {
            double p = results.get(source.get("id").stringValue()).get("value").doubleValue();
            assertTrue(p > 0 && p < 1 && results.get(source.get("id").stringValue()).get("unit").stringValue().isEmpty());
        });
        assertTrue(Said.by("figure", "net", "file=" + CORNER).out().contains("ground-splash"));
    }

    @Test
    void a_file_that_is_wrong_is_told_in_one_line_and_the_place_named(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("wrong.json"), Files.readString(CORNER).replace("\"prior\": 0.15", "\"prior\": 15"));
        Said said = Said.by("figure", "net", "file=" + file);
        assertEquals(2, said.code());
        assertEquals("sillwright: figure net, file, sources 2, prior: 15 is not a probability; write 0 to 1", said.err().strip());
    }

    @Test
    void the_published_schema_takes_the_example_and_refuses_what_the_figure_refuses() throws Exception {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(JSON.readTree(Said.by("schema", "net").out()));
        String corner = Files.readString(CORNER);
        assertTrue(schema.validate(JSON.readTree(corner)).isEmpty());
        for (String[] change : new String[][] {{"0.30}", "1.30}"}, {"\"prior\": 0.15", "\"chance\": 0.15"}, {"\"seen\": true", "\"seen\": \"yes\""}, {"\"leak\": 0.05", "\"leak\": \"low\""}})
            assertFalse(schema.validate(JSON.readTree(corner.replace(change[0], change[1]))).isEmpty(), change[1]);
    }

    /// The core's own reader against the library's: a text with a few characters changed at random.
    @Test
    void the_cores_reader_takes_and_refuses_what_the_library_takes_and_refuses() {
        String small = "{\"a\": [1, -2.5e1, true, null, 0.05],\n \"b\": {\"c\": \"x\\n\"}, \"d\": false}";
        String letters = "{}[]\",:0123456789.-+eEtrufalsn \\/\n\tx\u00e9";
        int taken = 0;
        for (long seed = 1; seed <= 8_000; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder(small);
            for (int change = 1 + random.nextInt(2); change > 0; change--) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(3)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, letters.charAt(random.nextInt(letters.length())));
                    default -> text.setCharAt(at, letters.charAt(random.nextInt(letters.length())));
                }
            }
            String given = text.toString();
            boolean library = true, own = true;
            JsonNode theirs = null;
            Json ours = null;
            try { theirs = JSON.readTree(given); } catch (JacksonException e) { library = false; }
            try { ours = Json.read(given); } catch (Refused e) { own = false; }
            assertEquals(library, own, "seed " + seed + ": " + given);
            if (own) {
                taken++;
                assertEquals(plain(theirs), plain(ours), "seed " + seed);
            }
        }
        assertTrue(taken > 1000, "taken: " + taken);
    }

    private static String plain(JsonNode node) {
        List<String> parts = new ArrayList<>();
        if (node.isObject()) node.properties().forEach(field -> parts.add(field.getKey() + "=" + plain(field.getValue())));
        else if (node.isArray()) node.forEach(item -> parts.add(plain(item)));
        else if (node.isNumber()) return String.valueOf(node.doubleValue());
        else return node.isString() ? "'" + node.stringValue() + "'" : node.toString();
        return node.isObject() ? "{" + parts + "}" : "[" + parts + "]";
    }

    private static String plain(Json json) {
        return switch (json) {
            case Json.Obj obj -> "{" + obj.fields().entrySet().stream().map(field -> field.getKey() + "=" + plain(field.getValue())).toList() + "}";
            case Json.Arr arr -> "[" + arr.items().stream().map(NetCommandTest::plain).toList() + "]";
            case Json.Str str -> "'" + str.text() + "'";
            case Json.Num num -> String.valueOf(num.value());
            case Json.Bool bool -> String.valueOf(bool.yes());
            case Json.Nothing _ -> "null";
        };
    }
}
