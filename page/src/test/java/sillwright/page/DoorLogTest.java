package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillwright.measure.Refused;
import sillwright.store.Book;
import sillwright.store.SurveyFile;
import tools.jackson.databind.JsonNode;

/// What is written down of a server's door, read back from its file after visitors came to it.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DoorLogTest {
    private static List<JsonNode> lines(Path beside) throws IOException {
        List<JsonNode> lines = new ArrayList<>();
        for (String line : Files.readAllLines(beside.resolveSibling("a.book.door.log"))) lines.add(Wire.JSON.readTree(line));
        return lines;
    }

    private static boolean has(List<JsonNode> lines, String... pairs) {
        return lines.stream().anyMatch(line -> {
            for (int i = 0; i < pairs.length; i += 2) if (!line.path(pairs[i]).asString("").equals(pairs[i + 1])) return false;
            return true;
        });
    }

    @Test
    void who_came_in_who_did_not_and_who_went_too_far_is_written_down_without_a_secret(@TempDir Path folder) throws Exception {
        Instant before = Instant.now();
        List<String> secrets = new ArrayList<>(List.of(OpenHouse.WORDS, "kettle", "wrong words altogether", "hunter2hunter2", "ABCD-EFGH-JKMN"));
        try (OpenHouse house = new OpenHouse(folder)) {
            house.ask("POST", "/api/session", "{\"passphrase\":\"wrong words altogether\"}", "");
            house.ask("POST", "/api/session", "{\"passphrase\":hunter2hunter2}", "");
            house.ask("POST", "/api/session", "{\"code\":\"ABCD-EFGH-JKMN\"}", "");
            house.ask("GET", "/api/buildings?key=hunter2hunter2", "", Access.COOKIE + "=" + "0123".repeat(16));
            String owner = house.owner(), code = house.code(owner, "reader", "an adviser");
            String reader = OpenHouse.cookie(house.ask("POST", "/api/session", "{\"code\":\"" + code + "\"}", ""));
            secrets.addAll(List.of(code, owner.split("=")[1], reader.split("=")[1], "0123".repeat(16)));
            assertEquals(403, house.ask("POST", "/api/buildings/a/entries", "[]", reader).statusCode());
            assertEquals(421, house.ask("GET", "/enter", "", "", "Host", "evil.example").statusCode());
            assertEquals(403, house.ask("POST", "/api/session", "{}", "", "Origin", "https://evil.example").statusCode());
            assertEquals(204, house.ask("DELETE", "/api/devices", "", owner).statusCode());
            assertEquals(204, house.ask("DELETE", "/api/session", "", owner).statusCode());
            for (int i = 0; i < 10; i++) house.ask("POST", "/api/session", "{\"code\":\"ABCD-EFGH-JKMN\"}", "");
        }
        List<JsonNode> lines = lines(folder.resolve("a.book"));
        assertTrue(has(lines, "what", "begun, with a new passphrase"));
        assertTrue(has(lines, "what", "refused", "status", "401", "why", "passphrase is not right", "path", "/api/session", "method", "POST", "from", "127.0.0.1") || has(lines, "why", "passphrase is not right", "from", "[0:0:0:0:0:0:0:1]"), lines.toString());
        assertTrue(has(lines, "what", "refused", "status", "400", "path", "/api/session"));
        assertTrue(lines.stream().anyMatch(line -> line.path("why").asString("").startsWith("code is not known")));
        assertTrue(has(lines, "what", "refused", "status", "401", "path", "/api/buildings"));
        assertTrue(has(lines, "what", "let in", "by", "passphrase", "role", "owner"));
        assertTrue(has(lines, "what", "code shown", "for", "an adviser", "role", "reader"));
        assertTrue(has(lines, "what", "let in", "by", "code", "who", "an adviser", "role", "reader"));
        assertTrue(has(lines, "what", "refused", "status", "403", "who", "an adviser", "role", "reader", "why", "a reader may not do this"));
        assertTrue(lines.stream().anyMatch(line -> line.path("status").asInt(0) == 421 && line.path("why").asString("").contains("evil.example")));
        assertTrue(has(lines, "status", "403", "why", "Origin the request comes from another page"));
        assertTrue(has(lines, "what", "all devices shut out", "by", "owner") && has(lines, "what", "left", "who", "owner"));
        assertTrue(has(lines, "status", "429", "why", "too many tries"), lines.toString());
        for (JsonNode line : lines) {
            Instant at = Instant.parse(line.get("at").asString());
            assertFalse(at.isBefore(before.minusSeconds(1)) || at.isAfter(Instant.now()), line.toString());
        }
        String all = Files.readString(folder.resolve("a.book.door.log"));
        for (String secret : secrets) assertFalse(all.contains(secret), secret);
        assertEquals("[OWNER_READ, OWNER_WRITE]", new java.util.TreeSet<>(Files.getPosixFilePermissions(folder.resolve("a.book.door.log"))).toString());
    }

    /// Names as an owner may give them, and what a stranger's request may hold.
    @Test
    void nothing_that_is_sent_begins_a_line_or_moves_a_terminal(@TempDir Path folder) throws Exception {
        String forged = "x\r\n{\"at\":\"2026-01-01T00:00:00Z\",\"what\":\"let in\"}";
        String name = forged.substring(0, 40) + "\u001b[2J\u0085\u2028\u202e\u007f";
        try (OpenHouse house = new OpenHouse(folder)) {
            house.code(house.owner(), "reader", name);
            house.ask("GET", "/api/%0d%0a%1b%5b2J%7b%22what%22:%22let%20in%22%7d", "", "");
            house.ask("POST", "/api/session", "{}", "", "Origin", "https://\",\"what\":\"let in");
            house.ask("GET", "/api/" + "a".repeat(3000), "", "");
        }
        assertTrue(has(lines(folder.resolve("a.book")), "what", "code shown", "for", name.replace('\u007f', '?')));
        String all = Files.readString(folder.resolve("a.book.door.log"));
        assertTrue(all.chars().allMatch(c -> c == '\n' || c >= 0x20 && c < 0x7f), all);
        for (JsonNode line : lines(folder.resolve("a.book"))) {
            assertTrue(List.of("begun, with a new passphrase", "let in", "code shown", "refused").contains(line.get("what").asString()), line.toString());
            assertTrue(line.toString().length() < 700, line.toString());
        }
        assertEquals(1, lines(folder.resolve("a.book")).stream().filter(line -> line.get("what").asString().equals("let in")).count());
    }

    @Test
    void a_flood_fills_a_few_lines_and_then_is_counted(@TempDir Path folder) throws Exception {
        try (OpenHouse house = new OpenHouse(folder)) {
            for (int i = 0; i < 60; i++) house.ask("GET", "/api/buildings", "", "");
        }
        // A minute may begin in the middle.
        long told = lines(folder.resolve("a.book")).stream().filter(line -> line.get("what").asString().equals("refused")).count();
        assertTrue(told == 10 || told > 10 && told <= 20 && has(lines(folder.resolve("a.book")), "what", "more of the same"), String.valueOf(told));
    }

    @Test
    void a_log_that_grew_large_is_put_aside_once(@TempDir Path folder) throws Exception {
        Path place = folder.resolve("a.book.door.log");
        Files.write(place, new byte[DoorLog.LARGEST + 1]);
        DoorLog log = DoorLog.at(place, java.time.InstantSource.system());
        log.told("begun");
        assertEquals(DoorLog.LARGEST + 1, Files.size(folder.resolve("a.book.door.log.1")));
        assertEquals(1, Files.readAllLines(place).size());
    }

    @Test
    void what_fails_here_is_written_down_and_told_to_nobody(@TempDir Path folder) throws Exception {
        try (OpenHouse house = new OpenHouse(folder, _ -> { throw new IllegalStateException("the inside of it"); })) {
            house.book.take("porch-alone", SurveyFile.read("porch-alone.survey.json", Files.readString(Path.of("..", "examples", "porch-alone.survey.json"))));
            HttpResponse<String> answer = house.ask("GET", "/api/buildings/porch-alone/findings", "", house.owner());
            assertEquals(500, answer.statusCode());
            assertEquals("something went wrong here", Wire.JSON.readTree(answer.body()).get("error").get("what").asString());
            assertFalse(answer.body().contains("inside") || answer.body().contains("IllegalState"), answer.body());
        }
        JsonNode line = lines(folder.resolve("a.book")).stream().filter(one -> one.get("what").asString().equals("failed")).findFirst().orElseThrow();
        assertEquals("java.lang.IllegalStateException", line.get("thrown").get(0).get("class").asString());
        assertTrue(line.get("thrown").get(0).get("at").toString().contains("DoorLogTest"), line.toString());
        assertFalse(line.toString().contains("inside"));
    }

    /// A phone sends again what met a full disk, where it would keep back what was refused as wrong.
    @Test
    void a_store_that_fails_is_no_fault_of_what_was_asked(@TempDir Path folder) throws Exception {
        try (OpenHouse house = new OpenHouse(folder, _ -> { throw full(); })) {
            house.book.take("porch-alone", SurveyFile.read("porch-alone.survey.json", Files.readString(Path.of("..", "examples", "porch-alone.survey.json"))));
            HttpResponse<String> answer = house.ask("GET", "/api/buildings/porch-alone/findings", "", house.owner());
            assertEquals(503, answer.statusCode());
            assertFalse(answer.body().contains("disk"), answer.body());
        }
        assertTrue(has(lines(folder.resolve("a.book")), "what", "failed", "status", "503", "why", "a.book: the disk is full; make room, and send it again"));
    }

    private static Refused full() {
        Refused refused = new Refused("a.book", "the disk is full", "make room, and send it again");
        refused.initCause(new IOException("no space"));
        return refused;
    }

    @Test
    void on_this_machine_alone_a_foreign_name_is_told_aloud_and_no_file_is_begun(@TempDir Path folder) throws Exception {
        List<String> said = java.util.Collections.synchronizedList(new ArrayList<>());
        Opening here = Opening.here(0), heard = new Opening(0, Optional.empty(), here.names(), Access.none(), DoorLog.aloud(said::add));
        try (Book book = Book.begin(folder.resolve("a.book").toString()); Server server = Server.start(book, heard, Server::usual); HttpClient client = HttpClient.newHttpClient()) {
            HttpRequest foreign = HttpRequest.newBuilder(URI.create(server.address())).header("Host", "evil.example").build(), wrong = HttpRequest.newBuilder(URI.create(server.address() + "api/rank?budget=x")).build();
            assertEquals(421, client.send(foreign, HttpResponse.BodyHandlers.ofString()).statusCode());
            assertEquals(400, client.send(wrong, HttpResponse.BodyHandlers.ofString()).statusCode());
            assertEquals(Optional.empty(), server.log());
        }
        assertEquals(1, said.size(), said.toString());
        assertEquals(421, Wire.JSON.readTree(said.getFirst()).get("status").asInt());
        try (var files = Files.list(folder)) { assertTrue(files.noneMatch(file -> file.toString().endsWith(".log"))); }
    }
}
