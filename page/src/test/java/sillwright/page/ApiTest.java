package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillwright.store.Book;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/// The published description of the API against the server as it runs: every operation in it is called, every answer fits
/// its schema, and the server answers nothing under /api that stands in it not.
@DisplayNameGeneration(ReplaceUnderscores.class)
class ApiTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final String PORCH = "/api/buildings/porch-alone";
    private static JsonNode doc;
    private static Book book;
    private static Server server;

    @BeforeAll
    static void open(@TempDir Path folder) throws Exception {
        book = Book.begin(folder.resolve("a.book").toString());
        server = Server.start(book, 0);
        doc = Wire.JSON.readTree(ask("GET", "/api/openapi.json", Optional.empty()).body());
    }

    @AfterAll
    static void close() {
        server.close();
        book.close();
    }

    private static HttpResponse<byte[]> ask(String method, String address, Optional<byte[]> body, String... type) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.address() + address.substring(1)))
                .method(method, body.map(HttpRequest.BodyPublishers::ofByteArray).orElse(HttpRequest.BodyPublishers.noBody()));
        if (type.length > 0) request.header("Content-Type", type[0]);
        if (address.contains("/progress")) request.header("Accept", "text/event-stream");
        return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private static Optional<byte[]> json(String text) { return Optional.of(text.getBytes(StandardCharsets.UTF_8)); }

    /// One call of an operation that should come out with a status.
    private record Call(String path, String method, int status, String address, Optional<byte[]> body, String type) {
        Call(String path, String method, int status, String address) { this(path, method, status, address, Optional.empty(), "application/json"); }
    }

    private static byte[] picture() throws Exception {
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        javax.imageio.ImageIO.write(new java.awt.image.BufferedImage(3, 2, java.awt.image.BufferedImage.TYPE_INT_RGB), "png", out);
        return out.toByteArray();
    }

    private static List<Call> calls() throws Exception {
        JsonNode survey = Wire.JSON.readTree(Files.readString(Path.of("..", "examples", "porch-alone.survey.json")));
        byte[] picture = picture();
        String digest = HexFormat.of().formatHex(java.security.MessageDigest.getInstance("SHA-256").digest(picture)), photo = "/api/photos/{sha256}", b = "/api/buildings/{building}";
        JsonNode probe = null, member = null;
        for (JsonNode one : survey.get("entries")) {
            if (one.get("kind").asString().equals("probe")) probe = one;
            if (one.get("kind").asString().equals("member")) member = one;
        }
        ObjectNode amend = Wire.object().put("kind", "amend").put("stage", "wood");
        ObjectNode says = amend.putObject("says").put("entry", probe.get("id").asString()).put("kind", "probe");
        says.set("says", ((ObjectNode) probe.get("says").deepCopy()).put("depth", "1/4 in"));
        String id = member.get("says").get("id").asString();
        ObjectNode decision = Wire.object().put("kind", "decision").put("stage", "work");
        decision.putObject("says").put("member", id).put("along", "2 in").put("verdict", "overruled").put("taken", "watch").put("by", "owner").put("because", "to be looked at next year");
        return List.of(
                new Call(b + "/entries", "post", 200, PORCH + "/entries", json(survey.get("entries").toString()), "application/json"),
                new Call("/api/buildings", "get", 200, "/api/buildings"), new Call(b + "/entries", "get", 200, PORCH + "/entries?limit=3"),
                new Call(b + "/entries", "get", 400, PORCH + "/entries?limit=0"), new Call(b + "/photos", "get", 200, PORCH + "/photos"), new Call(b + "/findings", "get", 200, PORCH + "/findings"),
                new Call(b + "/findings", "get", 404, "/api/buildings/nowhere/findings"), new Call(b + "/next", "get", 200, PORCH + "/next?member=" + id), new Call(b + "/next", "get", 404, PORCH + "/next?member=no-such"),
                new Call(b + "/rounds", "get", 200, PORCH + "/rounds"), new Call(b + "/say", "post", 201, PORCH + "/say", json(amend.toString()), "application/json"),
                new Call(b + "/say", "post", 201, PORCH + "/say", json(decision.toString()), "application/json"),
                new Call(b + "/say", "post", 400, PORCH + "/say", json(decision.toString().replace("to be looked at next year", "")), "application/json"),
                new Call(b + "/say", "post", 400, PORCH + "/say", json("{\"kind\":\"probe\",\"says\":{}}"), "application/json"),
                new Call(b + "/whole", "post", 200, PORCH + "/whole", json("{\"since\":\"\",\"stage\":\"work\",\"known\":{\"work-plan\":\"1\"},\"near\":[\"work-list\"]}"), "application/json"),
                new Call(b + "/whole", "post", 400, PORCH + "/whole", json("{\"stage\":\"work\",\"near\":\"work-list\"}"), "application/json"),
                new Call(b + "/parts/{stage}/{part}", "get", 200, PORCH + "/parts/wood/member-" + id), new Call(b + "/parts/{stage}/{part}", "get", 404, PORCH + "/parts/wood/none"),
                new Call(b + "/parts/{stage}", "get", 200, PORCH + "/parts/work"), new Call(b + "/progress", "get", 200, PORCH + "/progress"),
                new Call(photo, "put", 201, "/api/photos/" + digest, Optional.of(picture), "image/png"), new Call(photo, "put", 200, "/api/photos/" + digest, Optional.of(picture), "image/png"),
                new Call(photo, "put", 400, "/api/photos/" + "0".repeat(64), Optional.of(picture), "image/png"), new Call(photo, "get", 200, "/api/photos/" + digest),
                new Call(photo, "head", 200, "/api/photos/" + digest), new Call(photo, "head", 404, "/api/photos/" + "0".repeat(64)),
                new Call("/api/figures", "get", 200, "/api/figures"), new Call("/api/figure/{figure}", "get", 200, "/api/figure/emc?temp=70F&rh=65%25"), new Call("/api/figure/{figure}", "get", 400, "/api/figure/emc?temp=70"),
                new Call("/api/figure/{figure}", "get", 404, "/api/figure/emk"),
                new Call("/api/figure/{figure}", "post", 200, "/api/figure/field", json("{\"values\":{\"file\":\"a\",\"length\":\"60in\",\"width\":\"5-1/2in\",\"thickness\":\"5-1/2in\"},\"files\":{\"a\":\"along_mm,across_mm,depth_mm,limit\\n50,70,30,none\\n300,70,0,none\\n700,70,0,none\\n\"}}"), "application/json"),
                new Call("/api/rank", "get", 200, "/api/rank?budget=12"), new Call("/api/rank", "get", 400, "/api/rank?budget=x"),
                new Call("/api/demo", "post", 200, "/api/demo", json("{}"), "application/json"), new Call("/api/session", "get", 200, "/api/session"),
                new Call("/api/session", "post", 400, "/api/session", json("{\"passphrase\":\"x\"}"), "application/json"), new Call("/api/session", "delete", 204, "/api/session"),
                new Call("/api/pairings", "post", 400, "/api/pairings", json("{\"role\":\"reader\",\"name\":\"a\"}"), "application/json"), new Call("/api/devices", "get", 200, "/api/devices"), new Call("/api/devices", "delete", 204, "/api/devices"),
                new Call("/api/devices/{device}", "delete", 404, "/api/devices/none"), new Call("/api/openapi.json", "get", 200, "/api/openapi.json"));
    }

    @Test
    void every_operation_answers_as_it_is_described() throws Exception {
        Set<String> called = new TreeSet<>(), described = new TreeSet<>();
        for (Call call : calls()) {
            called.add(call.method + " " + call.path);
            HttpResponse<byte[]> answer = ask(call.method.toUpperCase(java.util.Locale.ROOT), call.address, call.body, call.type);
            String said = new String(answer.body(), StandardCharsets.UTF_8), what = call.method + " " + call.address + ": " + (said.length() > 400 ? said.substring(0, 400) : said);
            assertEquals(call.status, answer.statusCode(), what);
            JsonNode responses = doc.get("paths").get(call.path).get(call.method).get("responses"), response = responses.has(String.valueOf(call.status)) ? responses.get(String.valueOf(call.status)) : responses.get("default");
            if (!response.has("content") || call.method.equals("head")) continue;
            String type = answer.headers().firstValue("Content-Type").orElse("").split(";")[0];
            assertTrue(response.get("content").has(type), what + " comes as " + type);
            if (type.equals("application/json")) assertEquals(List.of(), faults(response.get("content").get(type).get("schema"), said), what);
        }
        doc.get("paths").properties().forEach(path -> path.getValue().properties().forEach(one -> described.add(one.getKey() + " " + path.getKey())));
        assertEquals(described, called);
    }

    private static List<String> faults(JsonNode schema, String answer) {
        ObjectNode whole = ((ObjectNode) schema.deepCopy()).put("$schema", "https://json-schema.org/draft/2020-12/schema");
        whole.set("components", doc.get("components"));
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(whole.toString(), InputFormat.JSON).validate(answer, InputFormat.JSON).stream().map(String::valueOf).limit(5).toList();
    }

    @Test
    void what_differs_out_of_sight_is_named_and_what_is_in_sight_or_new_is_sent() throws Exception {
        JsonNode all = Wire.JSON.readTree(ask("POST", PORCH + "/whole", json("{\"stage\":\"work\"}"), "application/json").body());
        List<String> order = all.get("order").valueStream().map(JsonNode::asString).toList();
        assertTrue(order.size() > 3 && all.get("stale").isEmpty() && all.get("parts").size() == order.size());
        String known = "\"known\":{\"" + order.get(0) + "\":\"old\",\"" + order.get(1) + "\":\"old\",\"" + order.get(2) + "\":\"" + all.get("parts").get(order.get(2)).asString().replaceFirst("(?s).*?data-tag=\"([^\"]*)\".*", "$1") + "\"}";
        JsonNode some = Wire.JSON.readTree(ask("POST", PORCH + "/whole", json("{\"stage\":\"work\"," + known + ",\"near\":[\"" + order.get(1) + "\"]}"), "application/json").body());
        assertEquals(List.of(order.get(0)), some.get("stale").valueStream().map(JsonNode::asString).toList());
        Set<String> sent = new TreeSet<>(order.subList(3, order.size()));
        sent.add(order.get(1));
        assertEquals(sent, new TreeSet<>(some.get("parts").propertyNames()));
    }

    @Test
    void the_server_answers_nothing_under_api_that_is_not_described() {
        Set<String> described = new TreeSet<>();
        doc.get("paths").properties().forEach(path -> path.getValue().properties().forEach(one -> described.add(one.getKey() + " " + path.getKey())));
        assertEquals(described, new TreeSet<>(server.routes().stream().filter(route -> route.contains(" /api/")).toList()));
    }

    @Test
    void an_answer_that_does_not_fit_would_be_noticed() {
        List<String> found = new ArrayList<>(faults(Wire.JSON.readTree("{\"$ref\":\"#/components/schemas/Buildings\"}"), "{\"buildings\":[{\"id\":1}]}"));
        assertTrue(found.size() >= 2, found.toString());
    }
}
