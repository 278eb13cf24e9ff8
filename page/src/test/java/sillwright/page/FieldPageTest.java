package sillwright.page;

import module java.base;
import module java.net.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillwright.store.Book;
import sillwright.store.Import;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.Sign;
import sillwright.walk.Survey;
import sillwright.wood.NextProbe;
import tools.jackson.databind.JsonNode;

/// What a phone is given to keep, and what it asks of the stages.
@DisplayNameGeneration(ReplaceUnderscores.class)
class FieldPageTest {
    @TempDir
    Path folder;
    private Book book;
    private Server server;

    @BeforeEach
    void open() {
        book = Book.begin(folder.resolve("a.book").toString());
        server = Server.start(book, 0);
    }

    @AfterEach
    void close() {
        server.close();
        book.close();
    }

    private static HttpResponse<String> get(Server server, String path) throws Exception {
        try (HttpClient client = HttpClient.newHttpClient()) {
            return client.send(HttpRequest.newBuilder(URI.create(server.address() + path)).build(), HttpResponse.BodyHandlers.ofString());
        }
    }

    private static JsonNode list(Server server) throws Exception { return Wire.JSON.readTree(get(server, "field/files.js").body().replaceFirst("^self.FILES = ", "").replaceFirst(";\\s*$", "")); }

    @Test
    void a_phone_keeps_every_file_of_the_page_and_each_is_there() throws Exception {
        Path files = Path.of(Server.class.getResource("field").toURI());
        try (var all = Files.list(files)) {
            Set<String> there = all.map(file -> file.getFileName().toString()).filter(name -> !Set.of("index.html", "sw.js").contains(name)).collect(Collectors.toCollection(TreeSet::new));
            assertEquals(there, new TreeSet<>(FieldPage.FILES));
        }
        JsonNode list = list(server);
        for (JsonNode path : list.get("paths")) assertEquals(200, get(server, path.stringValue().substring(1)).statusCode(), path.stringValue());
        assertEquals(list, list(server));
    }

    @Test
    void the_version_changes_when_any_file_does() throws Exception {
        String now = list(server).get("version").stringValue();
        try (Server other = Server.start(book, 0, new StaticFiles("/sillwright/page/field/book.js", "// other".getBytes(java.nio.charset.StandardCharsets.UTF_8)))) {
            assertNotEquals(now, list(other).get("version").stringValue());
        }
        try (Server other = Server.start(book, 0, new StaticFiles("/sillwright/page/field/sw.js", "// other".getBytes(java.nio.charset.StandardCharsets.UTF_8)))) {
            assertNotEquals(now, list(other).get("version").stringValue());
        }
    }

    @Test
    void every_sign_and_every_kind_of_member_can_be_tapped() throws Exception {
        JsonNode words = Wire.JSON.readTree(get(server, "field/words.json").body());
        Set<String> groups = new HashSet<>(), signs = new HashSet<>(), used = new HashSet<>();
        words.get("groups").forEach(group -> groups.add(group.get("id").stringValue()));
        words.get("signs").forEach(sign -> {
            signs.add(sign.get("id").stringValue());
            used.add(sign.get("group").stringValue());
        });
        assertEquals(new HashSet<>(Choice.words(Sign.class)), signs);
        assertEquals(groups, used);
        String kinds = get(server, "field/kinds.js").body();
        for (String kind : Choice.words(MemberKind.class)) assertTrue(kinds.contains("'" + kind + "':"), kind);
    }

    @Test
    void the_server_says_where_to_probe_next_as_the_core_does() throws Exception {
        Import.from(book, Path.of("../examples/porch-alone.survey.json"), Optional.empty());
        Survey survey = book.read("porch-alone").fold();
        int told = 0;
        for (Member member : survey.members().values()) {
            JsonNode next = Wire.JSON.readTree(get(server, "api/buildings/porch-alone/next?member=" + member.id()).body()).get("next");
            Optional<NextProbe> core = NextProbe.of(member, member.faces().stream().flatMap(face -> survey.probesOn(member.id(), face).stream()).toList());
            assertEquals(core.isEmpty(), next.isNull(), member.id());
            if (core.isEmpty()) continue;
            told++;
            assertEquals(Choice.word(core.get().face()), next.get("face").stringValue());
            assertEquals(core.get().alongMm(), next.get("alongMm").doubleValue());
            assertTrue(next.get("alongMm").doubleValue() <= member.lengthMm() && next.get("acrossMm").doubleValue() <= member.acrossMm(core.get().face()));
            assertEquals(core.get().enough(), next.get("enough").booleanValue());
        }
        assertTrue(told > 3);
        assertEquals(404, get(server, "api/buildings/porch-alone/next?member=nobody").statusCode());
        assertEquals(400, get(server, "api/buildings/porch-alone/next").statusCode());
    }

    @Test
    void the_rounds_of_a_building_are_worked_once_and_given_from_then_on() throws Exception {
        assertEquals(404, get(server, "api/buildings/one-sill/rounds").statusCode());
        Import.from(book, Path.of("../examples/one-sill.survey.json"), Optional.empty());
        JsonNode given = Wire.JSON.readTree(get(server, "api/buildings/one-sill/rounds").body());
        for (int wait = 0; wait < 600 && !given.get("ready").booleanValue(); wait++) {
            Thread.sleep(100);
            given = Wire.JSON.readTree(get(server, "api/buildings/one-sill/rounds").body());
        }
        assertTrue(given.get("ready").booleanValue());
        assertTrue(given.get("rounds").size() >= 2);
        assertTrue(given.get("rounds").get(0).get("checks").size() > 3);
        assertEquals(400, get(server, "api/buildings/one-sill/rounds?units=ells").statusCode());
    }
}
