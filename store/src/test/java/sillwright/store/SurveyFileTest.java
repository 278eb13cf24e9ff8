package sillwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillwright.measure.Refused;
import sillwright.walk.Choice;
import sillwright.walk.Fault;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.Side;
import sillwright.walk.Sign;
import sillwright.walk.Survey;
import sillwright.walk.WorkDone;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@DisplayNameGeneration(ReplaceUnderscores.class)
class SurveyFileTest {
    /// An invented shed, small enough to read.
    static final String SHED = """
            {
            "format": "sillwright-survey",
            "version": 1,
            "note": "an invented shed",
            "entries": [
            {"id":"0196f0c2-0000-7000-8000-000000000001","at":"2026-04-18T09:00:00Z","device":"phone-1","author":"A","kind":"building","says":{"id":"shed","name":"An invented shed","note":"invented","yearBuilt":1901,"designRain":"3.5in/h"}},
            {"id":"0196f0c2-0000-7000-8000-000000000002","at":"2026-04-18T09:01:00Z","kind":"side","says":{"id":"south","title":"South side","bearing":"180deg","length":"12ft","edges":[{"id":"main","kind":"eave","left":"0in","length":"12ft","height":"8' 0\\"","overhang":"10 in","planDepth":"8ft","pitch":"5/12","gutter":{"shape":"half-round","size":"5 in","fall":"1/16in/ft","downspouts":[{"left":"11ft 6in","size":"3 in","empties":"at-foot"}]}}],"ground":{"surface":"soil","fall":"-2%","clearance":"3 in"},"openings":[{"kind":"window","left":"4 ft","bottom":"30 in","width":"28 in","height":"46 in"}]}},
            {"id":"0196f0c2-0000-7000-8000-000000000003","at":"2026-04-18T09:02:00Z","kind":"member","says":{"id":"sill-1","side":"south","kind":"window-sill","title":"window sill","role":"sheds-water","species":"pine-eastern-white","run":"level","width":"1-3/4 in","depth":"6 in","length":"3' 4-1/2\\"","left":"44 in","above":"28-1/4 in","coat":"failing"}},
            {"id":"0196f0c2-0000-7000-8000-000000000004","at":"2026-04-18T09:03:00Z","kind":"probe","says":{"member":"sill-1","face":"top","along":"2 in","across":"1-1/2 in","depth":"3/8 in","reach":"4 in"}},
            {"id":"0196f0c2-0000-7000-8000-000000000005","at":"2026-04-18T09:04:00Z","kind":"probe","says":{"member":"sill-1","face":"top","along":"114 mm","across":"1-1/2 in","depth":"0 in","reach":"4 in"}},
            {"id":"0196f0c2-0000-7000-8000-000000000006","at":"2026-04-18T09:05:00Z","kind":"moisture","says":{"member":"sill-1","face":"top","along":"2 in","across":"2 in","reading":"27%","wood":"52F"}},
            {"id":"0196f0c2-0000-7000-8000-000000000007","at":"2026-04-18T09:06:00Z","kind":"sighting","says":{"sign":"no-drip-kerf","seen":true,"side":"south","member":"sill-1"}},
            {"id":"0196f0c2-0000-7000-8000-000000000008","at":"2026-04-18T09:07:00Z","kind":"sighting","says":{"sign":"icicles","seen":false,"side":"south"}},
            {"id":"0196f0c2-0000-7000-8000-000000000009","at":"2026-04-18T09:08:00Z","kind":"amend","says":{"entry":"0196f0c2-0000-7000-8000-000000000005","kind":"probe","says":{"member":"sill-1","face":"top","along":"114 mm","across":"1-1/2 in","depth":"1/8 in","reach":"4 in"}}},
            {"id":"0196f0c2-0000-7000-8000-000000000010","at":"2026-04-18T09:09:00Z","kind":"strike","says":{"entry":"0196f0c2-0000-7000-8000-000000000008","because":"wrong side"}}
            ]
            }
            """;

    private static final JsonMapper JSON = JsonMapper.builder().build();

    @Test
    void a_whole_book_is_read_without_a_fault() {
        Survey survey = SurveyFile.read("shed.survey.json", SHED).fold();
        assertEquals(List.of(), survey.faults());
        assertEquals(10, survey.entries());
        assertEquals(2, survey.probes().size());
        assertEquals(25.4 / 8, survey.probes().getLast().what().depthMm(), 1e-9, "amended");
        assertEquals(1, survey.sightings().size(), "one was struck");
    }

    @Test
    void what_was_written_comes_back_the_same() {
        var held = SurveyFile.read("shed", SHED);
        String again = SurveyFile.text("an invented shed", held.entries());
        assertEquals(held.entries(), SurveyFile.read("shed", again).entries());
        for (String measure : List.of("3/8 in", "3' 4-1/2\\\"", "114 mm", "1-3/4 in", "8' 0\\\"", "1/16in/ft", "-2%", "52F", "5/12"))
            assertTrue(again.contains('"' + measure + '"'), measure);
        assertEquals(again, SurveyFile.text("an invented shed", SurveyFile.read("shed", again).entries()), "and writing is the same each time");
    }

    @Test
    void a_written_file_is_whole(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("deep/shed.survey.json");
        SurveyFile.write(file, "n", SurveyFile.read("shed", SHED).entries());
        assertEquals(10, SurveyFile.read(file).entries().size());
        try (var left = Files.list(file.getParent())) { assertEquals(1, left.count(), "no part is left behind"); }
    }

    @ParameterizedTest(name = "{0} for {1}: {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "\"depth\":\"3/8 in\"|\"depth\":\"3/8 oz\"|depth|is a volume, where a length is wanted",
        "\"depth\":\"3/8 in\"|\"depth\":\"3/8\"|depth|has no unit",
        "\"depth\":\"3/8 in\"|\"depth\":0.375|depth|has no unit",
        "\"depth\":\"3/8 in\"|\"depth\":\"5 in\"|depth|not within the probe's reach",
        "\"depth\":\"3/8 in\"|\"depth\":\"2 in\"|depth|deeper than the member",
        "\"depth\":\"3/8 in\"|\"depht\":\"3/8 in\"|depht|not a field",
        "\"depth\":\"3/8 in\"|\"depth\":null|depth|is missing",
        "\"face\":\"top\",\"along\":\"2 in\"|\"face\":\"left\",\"along\":\"2 in\"|face|has no left face",
        "\"along\":\"2 in\",\"across\":\"1-1/2 in\"|\"along\":\"4ft\",\"across\":\"1-1/2 in\"|along|off the member",
        "\"along\":\"2 in\",\"across\":\"1-1/2 in\"|\"along\":\"2 in\",\"across\":\"7 in\"|across|off the face",
        "\"reading\":\"27%\"|\"reading\":\"270%\"|reading|not a moisture content",
        "\"sign\":\"icicles\"|\"sign\":\"icicle\"|sign|not one of the choices",
        "\"kind\":\"moisture\"|\"kind\":\"moist\"|kind|not a kind of entry",
        "\"at\":\"2026-04-18T09:03:00Z\"|\"at\":\"18 April\"|at|not a time",
        "\"yearBuilt\":1901|\"yearBuilt\":\"old\"|yearBuilt|is text where a whole number is wanted",
        "\"member\":\"sill-1\",\"face\":\"top\",\"along\":\"2 in\",\"across\":\"2 in\"|\"member\":\"sill-2\",\"face\":\"top\",\"along\":\"2 in\",\"across\":\"2 in\"|member|not described",
    })
    void one_bad_entry_is_named_with_its_field_and_costs_no_other(String good, String bad, String field, String what) {
        String text = SHED.replaceFirst(java.util.regex.Pattern.quote(good), java.util.regex.Matcher.quoteReplacement(bad));
        assertTrue(!text.equals(SHED), "the shed holds " + good);
        var held = SurveyFile.read("shed.survey.json", text);
        Survey survey = held.fold();
        List<Fault> faults = survey.faults().stream().filter(f -> f.field().endsWith(field)).toList();
        assertEquals(1, faults.size(), () -> survey.faults().toString());
        String line = faults.getFirst().line();
        assertTrue(line.startsWith("shed.survey.json, entry ") && line.contains(what) && line.contains(";"), line);
        assertTrue(held.entries().size() >= 9, "the others are kept");
        assertEquals(10, held.entries().size() + held.setAside().size(), "nothing is lost");
    }

    @Test
    void every_fault_of_a_book_is_told_at_once() {
        String text = SHED.replace("\"depth\":\"3/8 in\"", "\"depth\":\"3/8\"").replace("\"across\":\"1-1/2 in\",\"depth\":\"0 in\",\"reach\":\"4 in\"", "\"across\":\"wide\",\"depth\":\"deep\"")
                .replace("icicles", "icecles");
        List<String> fields = SurveyFile.read("shed", text).faults().stream().map(Fault::field).toList();
        assertEquals(List.of("depth", "across", "depth", "reach", "sign"), fields);
    }

    @Test
    void a_torn_file_keeps_all_that_came_before_the_tear() {
        for (int cut = SHED.indexOf("000000000004"); cut < SHED.length() - 4; cut += 37) {
            var held = SurveyFile.read("torn.survey.json", SHED.substring(0, cut));
            int whole = 0;
            for (int at = SHED.indexOf("\n{\"id\""); at >= 0 && SHED.indexOf('\n', at + 1) < cut; at = SHED.indexOf("\n{\"id\"", at + 1)) whole++;
            assertTrue(held.entries().size() >= whole - 1 && held.entries().size() <= whole + 1, cut + ": " + held.entries().size() + " of " + whole);
            assertTrue(held.faults().stream().anyMatch(f -> f.what().contains("ends in the middle") || f.what().contains("broken")), () -> held.faults().toString());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"000000000004\",|000000000004\"", "\"face\":\"top\",\"along\":\"2 in\",\"across\":\"1-1/2 in\"|\"face\":\"top,\"along\":\"2 in\"",
        "\"reach\":\"4 in\"}},|\"reach\":\"4 in\"},", "\"reach\":\"4 in\"}},|\"reach\":\"4 in\"}}"})
    void a_broken_place_in_the_middle_costs_one_entry_at_most(String good, String bad) {
        String text = SHED.replaceFirst(java.util.regex.Pattern.quote(good), java.util.regex.Matcher.quoteReplacement(bad));
        var held = SurveyFile.read("broken.survey.json", text);
        assertTrue(held.entries().size() >= 9, () -> held.entries().size() + " kept; " + held.faults());
        assertTrue(held.faults().stream().anyMatch(f -> f.what().contains("broken") && f.entry().contains("line")), () -> held.faults().toString());
        assertEquals(10, held.entries().size() + held.setAside().size(), "nothing is lost: " + held.setAside());
    }

    @Test
    void what_holds_no_book_is_refused(@TempDir Path folder) throws Exception {
        for (String text : List.of("", "   ", "[]", "nonsense", "{}", "{\"entries\": 3}", "{\"format\":\"sillwright-survey\",\"version\":1,\"entries\":[]}", "{\"format\":\"other\"}", "{\"format\"")) {
            Refused refused = assertThrows(Refused.class, () -> SurveyFile.read("x.survey.json", text), text);
            assertTrue(refused.getMessage().startsWith("x.survey.json: "), refused.getMessage());
        }
        assertThrows(Refused.class, () -> SurveyFile.read(folder.resolve("none.json")));
        assertThrows(Refused.class, () -> SurveyFile.read(folder));
        Path binary = Files.write(folder.resolve("photo.jpg"), new byte[] {(byte) 0xff, (byte) 0xd8, 0, 1});
        assertThrows(Refused.class, () -> SurveyFile.read(binary));
    }

    @Test
    void a_file_of_200_MB_is_refused_before_it_is_read(@TempDir Path folder) throws Exception {
        Path large = folder.resolve("large.survey.json");
        try (var file = new java.io.RandomAccessFile(large.toFile(), "rw")) { file.setLength(200_000_000); }
        Refused refused = assertThrows(Refused.class, () -> SurveyFile.read(large));
        assertTrue(refused.getMessage().contains("200 MB") && refused.getMessage().contains("64 MB"), refused.getMessage());
    }

    @Test
    void the_schema_takes_what_is_written_and_refuses_what_is_not() {
        Schema schema = schema();
        assertEquals(List.of(), schema.validate(JSON.readTree(SurveyFile.text("n", SurveyFile.read("shed", SHED).entries()))));
        assertTrue(!schema.validate(JSON.readTree(SHED.replace("icicles", "icecles"))).isEmpty());
        assertTrue(!schema.validate(JSON.readTree(SHED.replace("\"depth\":\"3/8 in\"", "\"depth\":3"))).isEmpty());
        assertTrue(!schema.validate(JSON.readTree(SHED.replace("\"depth\":\"3/8 in\",", ""))).isEmpty());
    }

    @Test
    void work_that_was_done_comes_back_as_written_and_is_checked() {
        String done = "{\"id\":\"0196f0c2-0000-7000-8000-000000000011\",\"at\":\"2026-06-20T09:00:00Z\",\"kind\":\"work-done\",\"says\":{\"done\":\"dutchman\",\"on\":\"2026-06-19\","
                + "\"side\":\"south\",\"member\":\"sill-1\",\"from\":\"0 in\",\"to\":\"6 in\",\"against\":\"sill-holds-water\",\"step\":\"join\",\"coat\":{\"film\":\"oil-paint\",\"primer\":1,"
                + "\"coats\":2,\"backs\":false,\"ends\":true,\"moisture\":\"13%\"},\"hours\":5.5,\"cost\":120.0,\"words\":\"w\"}}";
        String text = SHED.replace("\"because\":\"wrong side\"}}", "\"because\":\"wrong side\"}},\n" + done);
        var held = SurveyFile.read("shed", text);
        assertEquals(List.of(), held.fold().faults());
        assertEquals(1, held.fold().works().size());
        String again = SurveyFile.text("an invented shed", held.entries());
        assertEquals(held.entries(), SurveyFile.read("shed", again).entries());
        assertEquals(List.of(), schema().validate(JSON.readTree(again)));
        Map.of("\"2026-06-19\"", "\"19 June\"", "sill-holds-water", "sill-hold-water", "\"dutchman\"", "\"dutch\"", "5.5", "\"five\"", "\"13%\"", "\"13\"").forEach((good, bad) ->
                assertEquals(1, SurveyFile.read("shed", text.replace(good, bad)).faults().size(), bad));
    }

    @Test
    void a_decision_comes_back_as_written_and_is_checked() {
        String wood = "{\"id\":\"0196f0c2-0000-7000-8000-000000000011\",\"at\":\"2026-06-20T09:00:00Z\",\"kind\":\"decision\",\"says\":{\"member\":\"sill-1\",\"along\":\"2 in\",\"verdict\":\"overruled\","
                + "\"taken\":\"scarf-splice-8\",\"by\":\"review-board\",\"because\":\"the nosing is original\"}}";
        String water = "{\"id\":\"0196f0c2-0000-7000-8000-000000000012\",\"at\":\"2026-06-20T09:01:00Z\",\"kind\":\"decision\",\"says\":{\"source\":\"sill-holds-water\",\"side\":\"south\",\"place\":\"window sill\","
                + "\"verdict\":\"accepted\",\"taken\":\"saw-drip-kerf\",\"by\":\"owner\"}}";
        String text = SHED.replace("\"because\":\"wrong side\"}}", "\"because\":\"wrong side\"}},\n" + wood + ",\n" + water);
        var held = SurveyFile.read("shed", text);
        assertEquals(List.of(), held.fold().faults());
        assertEquals(2, held.fold().decisions().size());
        String again = SurveyFile.text("an invented shed", held.entries());
        assertEquals(held.entries(), SurveyFile.read("shed", again).entries());
        assertEquals(List.of(), schema().validate(JSON.readTree(again)));
        Map.of("\"scarf-splice-8\"", "\"scarf-joint\"", "saw-drip-kerf", "clear-gutter", "\"because\":\"the nosing is original\"", "\"because\":\"\"", "review-board", "board", "\"side\":\"south\",\"place\"", "\"side\":\"\",\"place\"",
                "\"member\":\"sill-1\",\"along\":\"2 in\",\"verdict\"", "\"verdict\"").forEach((good, bad) -> assertTrue(SurveyFile.read("shed", text.replace(good, bad)).faults().stream().anyMatch(Fault::grave), bad));
    }

    @Test
    void the_schema_lists_the_choices_that_the_program_has() {
        JsonNode defs = JSON.readTree(SchemaText.survey()).get("$defs");
        Map<String, Class<? extends Enum<?>>> lists = new java.util.HashMap<>(Map.of("work-done/done", WorkDone.Done.class, "work-done/against", sillwright.water.Source.class,
                "coating/film", WorkDone.Film.class, "decision/source", sillwright.water.Source.class, "decision/verdict", sillwright.walk.Decision.Verdict.class,
                "decision/by", sillwright.walk.Decision.By.class));
        lists.putAll(Map.of("sighting/sign", Sign.class, "member/kind", MemberKind.class, "member/role", Member.Role.class,
                "member/run", Member.Run.class, "probe/face", Member.Face.class, "edge/kind", Side.Edge.class, "gutter/shape", Side.GutterShape.class,
                "ground/surface", Side.Surface.class, "downspout/empties", Side.Empties.class));
        lists.forEach((where, list) -> {
            String[] path = where.split("/");
            TreeSet<String> schema = new TreeSet<>();
            defs.get(path[0]).get("properties").get(path[1]).get("enum").forEach(word -> schema.add(word.stringValue()));
            TreeSet<String> program = new TreeSet<>();
            for (Enum<?> one : list.getEnumConstants()) program.add(Choice.word(one));
            assertEquals(program, schema, where);
        });
    }

    static Schema schema() {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(SchemaText.survey());
    }
}
