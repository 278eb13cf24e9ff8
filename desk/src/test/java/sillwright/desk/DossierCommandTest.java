package sillwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillwright.store.SchemaText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@DisplayNameGeneration(ReplaceUnderscores.class)
class DossierCommandTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private static Path example(String name) { return ExamplesTest.FOLDER.resolve(name + ".survey.json"); }

    private static JsonNode findings(Path folder) throws Exception {
        String text = Files.readString(folder.resolve("findings.json"));
        JsonNode findings = JSON.readTree(text);
        assertEquals(List.of(), SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(SchemaText.findings()).validate(findings));
        return findings;
    }

    private static Said dossier(Path survey, Path out) { return Said.by("dossier", survey.toString(), "-o", out.toString(), "--start", "2026-06-01"); }

    @ParameterizedTest
    @ValueSource(strings = {"one-sill", "fascia-under-gutter", "porch-alone"})
    void a_small_survey_comes_out_as_a_whole_dossier(String name, @TempDir Path out) throws Exception {
        Said said = dossier(example(name), out);
        assertEquals(0, said.code(), said.err());
        for (String file : List.of("dossier.pdf", "order.csv", "cuts.csv", "work.ics", "watch.ics", "findings.json", "repair-R1.svg")) assertTrue(Files.size(out.resolve(file)) > 100, file);
        try (var files = Files.list(out)) { assertTrue(files.anyMatch(file -> file.getFileName().toString().startsWith("elevation-"))); }
        JsonNode findings = findings(out);
        assertTrue(findings.get("work").get("repairs").size() > 0);
        for (String head : List.of("THE WATER TO STOP", "WHAT CANNOT WAIT", "WHAT TO ORDER", "WHAT TO WATCH")) assertTrue(said.out().contains(head), head);
        assertFalse(Files.exists(out.resolve("set-aside.json")));
    }

    @Test
    void a_decision_in_the_book_is_designed_and_told_by_the_command_the_findings_and_the_print(@TempDir Path out) throws Exception {
        String text = Files.readString(example("one-sill")), member = text.replaceFirst("(?s).*\"member\":\\s*\"([^\"]+)\".*", "$1");
        JsonNode was = JSON.readTree(text);
        ((tools.jackson.databind.node.ArrayNode) was.get("entries")).add(JSON.readTree("{\"id\":\"0196f0c2-0000-7000-8000-0000000000ff\",\"at\":\"2026-12-20T09:00:00Z\",\"kind\":\"decision\",\"says\":{\"member\":\"" + member
                + "\",\"along\":\"2 in\",\"verdict\":\"overruled\",\"taken\":\"dutchman\",\"by\":\"owner\",\"because\":\"it is to match its neighbour\"}}"));
        Path survey = Files.writeString(out.resolve("a.survey.json"), was.toString());
        Said said = Said.by("work", survey.toString(), "--start", "2026-06-01");
        assertEquals(0, said.code(), said.err());
        assertTrue(said.out().contains("dutchman") && said.out().replaceAll("\\s+", " ").contains("because it is to match its neighbour"), said.out());
        assertEquals(0, dossier(survey, out.resolve("d")).code());
        JsonNode decision = findings(out.resolve("d")).get("work").get("repairs").get(0).get("decision");
        assertEquals("dutchman", decision.get("taken").stringValue());
        assertFalse(decision.get("recommended").stringValue().equals("dutchman"), decision.toString());
        assertFalse(decision.get("cautions").isEmpty(), "what refuses it stands beside it: " + decision);
    }

    /// The four faults that the invented house was given are the four that are found.
    @Test
    void the_demo_finds_the_water_it_was_given(@TempDir Path out) throws Exception {
        Said said = Said.by("demo", "-o", out.toString());
        assertEquals(0, said.code(), said.err());
        JsonNode findings = findings(out);
        try (PDDocument pdf = Loader.loadPDF(out.resolve("dossier.pdf").toFile())) {
            // Forty pages for sixty members, and as many more as this house has more.
            int members = findings.get("walk").get("members").intValue();
            assertTrue(pdf.getNumberOfPages() * 60 <= 40 * members, pdf.getNumberOfPages() + " pages for " + members + " members");
        }
        TreeSet<String> first = new TreeSet<>();
        for (JsonNode source : findings.get("water").get("sources")) if (source.get("probability").doubleValue() > 0.95) first.add(source.get("source").stringValue() + " " + source.get("side").stringValue());
        assertTrue(first.containsAll(List.of("gutter-clogged west", "porch-floor-holds-water south", "splash-from-ground east", "sill-holds-water north")), first.toString());
        String hollow = "", awful = "";
        for (JsonNode member : findings.get("wood").get("members")) {
            if (member.get("id").stringValue().equals("s-beam-3")) hollow = member.get("state").stringValue();
            if (member.get("id").stringValue().equals("w-skirt")) awful = member.get("state").stringValue();
        }
        assertEquals("hollow", hollow, "the beam that looks fine");
        assertEquals("sound", awful, "the board that looks awful");
        int told = 0;
        for (JsonNode source : findings.get("water").get("sources"))
            for (JsonNode change : source.path("changes")) {
                double now = change.get("wettingHoursPerYear").doubleValue(), then = change.get("wettingHoursPerYearThen").doubleValue();
                assertTrue(then <= now + 1e-6, change.toString());
                if (!change.has("alone")) continue;
                double alone = change.get("alone").get("wettingHoursPerYear").doubleValue();
                assertTrue(then <= alone + 1e-6 && alone <= now + 1e-6, "one source stopped leaves no less water than all of them, over the same weather: " + change);
                told++;
            }
        assertTrue(told > 10, told + " changes of one source alone");
        for (JsonNode repair : findings.get("work").get("repairs")) assertFalse(repair.get("member").stringValue().equals("w-skirt"), "nothing is done to the board that is fine");
        try (var files = Files.list(out)) { assertEquals(4, files.map(file -> file.getFileName().toString()).filter(name -> name.startsWith("elevation-") && name.endsWith(".svg")).count()); }
    }

    /// What a file says, without the moment at which it was written, which stands in the document's information of a PDF and of a workbook.
    private static String said(Path file) throws Exception {
        if (!file.toString().endsWith(".xlsx")) return Files.readString(file);
        StringBuilder text = new StringBuilder();
        try (ZipFile book = new ZipFile(file.toFile())) {
            for (ZipEntry part : Collections.list(book.entries()))
                if (!part.getName().startsWith("docProps/")) text.append(part.getName()).append(new String(book.getInputStream(part).readAllBytes(), StandardCharsets.UTF_8));
        }
        assertTrue(text.length() > 1000, file + " holds its sheets");
        return text.toString();
    }

    @Test
    void the_same_survey_gives_the_same_drawings_tables_and_findings(@TempDir Path one, @TempDir Path two) throws Exception {
        dossier(example("one-sill"), one);
        dossier(example("one-sill"), two);
        try (var files = Files.list(one)) {
            for (Path file : files.toList())
                if (!file.toString().endsWith(".pdf")) assertEquals(said(file), said(two.resolve(file.getFileName())), file.toString());
        }
    }

    private static Path changed(Path folder, String good, String bad) throws Exception {
        String text = Files.readString(example("one-sill"));
        String changed = text.replaceFirst(good, bad);
        assertFalse(changed.equals(text), "the example holds " + good);
        return Files.writeString(folder.resolve("changed.survey.json"), changed);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "a wrong unit|\"depth\":\"[^\"]*\"|\"depth\":\"3/8 oz\"|1|depth: '3/8 oz' is a volume",
        "an impossible depth|\"depth\":\"[^\"]*\",\"reach\":\"[^\"]*\"|\"depth\":\"11 in\",\"reach\":\"12 in\"|1|deeper than the member",
        "a reading off the member|\"along\":\"[^\"]*\"|\"along\":\"90 ft\"|1|off the member",
        "an unknown species|\"species\":\"[^\"]*\"|\"species\":\"pine-mystery\"|0|not a species of the table",
        "a field mistyped|\"reading\":|\"raeding\":|1|did you mean reading",
    })
    void one_bad_entry_is_named_and_the_dossier_is_made(String what, String good, String bad, int code, String said, @TempDir Path folder) throws Exception {
        Path out = folder.resolve("out");
        Said run = dossier(changed(folder, good, bad), out);
        assertEquals(code, run.code(), run.err());
        assertTrue(run.err().contains("changed.survey.json, entry ") && run.err().contains(said), run.err());
        assertTrue(Files.size(out.resolve("dossier.pdf")) > 1000);
        assertTrue(findings(out).get("walk").get("faults").size() > 0);
    }

    @Test
    void a_torn_file_gives_the_dossier_of_what_came_before(@TempDir Path folder) throws Exception {
        String text = Files.readString(example("one-sill"));
        Path torn = Files.writeString(folder.resolve("torn.survey.json"), text.substring(0, text.length() * 2 / 3));
        Said run = dossier(torn, folder.resolve("out"));
        assertEquals(1, run.code());
        assertTrue(run.err().contains("the file ends in the middle"), run.err());
        assertTrue(Files.exists(folder.resolve("out/dossier.pdf")));
    }

    @Test
    void without_readings_or_gutters_the_gap_is_named(@TempDir Path folder) throws Exception {
        StringBuilder kept = new StringBuilder();
        for (String line : Files.readString(example("fascia-under-gutter")).split("\n"))
            if (!line.contains("\"kind\":\"probe\"") && !line.contains("\"kind\":\"moisture\"") && !line.contains("\"kind\":\"amend\"") && !line.contains("\"kind\":\"strike\""))
                kept.append(line.replaceFirst(",\"gutter\":\\{.*?]}", "")).append('\n');
        Path file = Files.writeString(folder.resolve("bare.survey.json"), kept.toString().replaceFirst(",\n]", "\n]"));
        Said run = dossier(file, folder.resolve("out"));
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("No probe reading was taken") && run.out().contains("No moisture reading was taken"), run.out());
        assertTrue(Files.exists(folder.resolve("out/dossier.pdf")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "{\"format\":\"sillwright-survey\",\"version\":1,\"entries\":[]}", "not a survey"})
    void what_holds_nothing_is_refused_in_one_line(String text, @TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("empty.survey.json"), text);
        Said run = dossier(file, folder.resolve("out"));
        assertEquals(2, run.code());
        assertTrue(run.err().startsWith("sillwright: empty.survey.json: ") && run.err().strip().lines().count() == 1, run.err());
        assertFalse(Files.exists(folder.resolve("out")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"walk", "water", "wood", "work", "watch", "check"})
    void each_stage_says_its_part(String stage) {
        Said run = Said.by(stage, example("porch-alone").toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().lines().count() > 3 || stage.equals("check"), run.out());
    }

    @Test
    void sources_lists_what_the_program_rests_on_and_every_check() {
        Said run = Said.by("sources", "--work");
        assertEquals(0, run.code(), run.out());
        assertTrue(run.out().contains("Wood Handbook") && run.out().contains("CHECKS MADE AGAINST THE OUTSIDE") && run.out().contains("All that figures answer came out."));
        assertFalse(run.out().contains("DOES NOT COME OUT"));
    }

    @Test
    void a_species_is_told_with_what_it_rests_on() {
        assertEquals(sillwright.walk.Species.all().size(), Said.by("species").out().lines().count());
        Said one = Said.by("species", "oak-white");
        assertTrue(one.out().contains("Quercus alba") && one.out().contains("sills, thresholds") && one.out().contains("Rests on"), one.out());
        assertEquals(2, Said.by("species", "oak-wite").code());
    }

    /// A year that is the same every day: the file's temperatures stand in for the survey's, whose rain is kept.
    @Test
    void an_hourly_file_gives_the_weather(@TempDir Path folder) throws Exception {
        StringBuilder text = new StringBuilder("LOCATION,Invented,--,--,made up,000000,40.0,-80.0,-5.0,200.0\n");
        for (int i = 1; i < 8; i++) text.append("HEADER ").append(i).append('\n');
        for (int hour = 0; hour < 8760; hour++) {
            java.time.LocalDateTime at = java.time.LocalDateTime.of(2025, 1, 1, 0, 0).plusHours(hour);
            text.append(at.getYear()).append(',').append(at.getMonthValue()).append(',').append(at.getDayOfMonth()).append(',').append(at.getHour() + 1)
                    .append(",60,?9,20.0,10.0,50,101325,0,0,300,0,0,0,0,0,0,0,180,3.0,0,0,20,10000,9,999999999,0,0.1,0,88,0.2,999,99\n");
        }
        Path file = Files.writeString(folder.resolve("even.epw"), text);
        Said plain = Said.by("wood", example("one-sill").toString()), hourly = Said.by("wood", example("one-sill").toString(), "--weather", file.toString());
        assertEquals(0, hourly.code(), hourly.err());
        assertFalse(plain.out().equals(hourly.out()), "the weather tells");
        Said none = Said.by("wood", example("one-sill").toString(), "--weather", folder.resolve("none.epw").toString());
        assertEquals(2, none.code());
        Path torn = Files.writeString(folder.resolve("torn.epw"), text.substring(0, text.length() / 2));
        Said half = Said.by("wood", example("one-sill").toString(), "--weather", torn.toString());
        assertEquals(2, half.code());
        assertTrue(half.err().contains("torn.epw") && half.err().contains("fields"), half.err());
    }

    @Test
    void a_command_that_is_not_there_is_said_in_one_line() {
        Said run = Said.by("dosier", "x");
        assertEquals(2, run.code());
        assertEquals(1, run.err().strip().lines().count(), run.err());
    }
}
