package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillwright.store.Book;
import sillwright.store.SurveyFile;
import tools.jackson.databind.JsonNode;

/// Several buildings in one book, ranked by a real server.
@DisplayNameGeneration(ReplaceUnderscores.class)
class RankPageTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static Book book;
    private static Server server;

    @BeforeAll
    static void open(@TempDir Path folder) throws Exception {
        book = Book.begin(folder.resolve("a.book").toString());
        for (String name : List.of("one-sill", "porch-alone", "fascia-under-gutter"))
            book.take(Wire.JSON.readTree(Files.readString(Path.of("..", "examples", name + ".survey.json"))).get("entries").get(0).get("says").get("id").asString(),
                    SurveyFile.read(name, Files.readString(Path.of("..", "examples", name + ".survey.json"))));
        server = Server.start(book, 0);
    }

    @AfterAll
    static void close() {
        server.close();
        book.close();
    }

    private static HttpResponse<String> ask(String address) throws Exception {
        return CLIENT.send(HttpRequest.newBuilder(URI.create(server.address() + address)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static JsonNode rank(String query) throws Exception {
        HttpResponse<String> answer = ask("api/rank" + query);
        assertEquals(200, answer.statusCode(), answer.body());
        return Wire.JSON.readTree(answer.body());
    }

    /// The page, asked again until every building is worked.
    private static String page(String query) throws Exception {
        while (true) {
            HttpResponse<String> answer = ask("buildings" + query);
            assertEquals(200, answer.statusCode());
            if (answer.headers().firstValue("Refresh").isEmpty()) return answer.body();
            assertTrue(answer.body().contains("Still to be worked"));
            Thread.sleep(200);
        }
    }

    @Test
    void what_cannot_wait_stands_first_and_page_and_api_have_one_order() throws Exception {
        JsonNode buildings = rank("").get("buildings");
        assertEquals(3, buildings.size());
        assertTrue(buildings.get(0).get("cannotWait").intValue() > 0 && buildings.get(2).get("cannotWait").intValue() == 0);
        String page = page("");
        List<Integer> at = new ArrayList<>();
        for (JsonNode one : buildings) at.add(page.indexOf(">" + one.get("name").asString() + "</a>"));
        assertTrue(at.get(0) > 0 && at.get(0) < at.get(1) && at.get(1) < at.get(2), at.toString());
        for (JsonNode one : buildings) assertTrue(page.contains("href=\"/b/" + one.get("id").asString() + "\""));
        assertTrue(ask("").body().contains("href=\"/buildings\""), "the first page leads to it");
    }

    @Test
    void a_budget_is_kept_and_what_it_buys_comes_with_what_it_needs() throws Exception {
        JsonNode ranked = rank("?budget=20");
        double spent = 0;
        for (JsonNode one : ranked.get("chosen")) {
            spent += one.get("hours").doubleValue();
            for (JsonNode need : one.get("needs")) {
                boolean there = false;
                for (JsonNode other : ranked.get("chosen")) there |= other.get("building").equals(one.get("building")) && other.get("ref").equals(need);
                assertTrue(there, one + " wants " + need);
            }
        }
        assertTrue(ranked.get("chosen").size() > 1 && spent <= 20 + 1e-9, spent + " h");
        assertEquals(ranked.get("spent").doubleValue(), spent, 1e-6);
        String page = page("?budget=20");
        for (JsonNode one : ranked.get("chosen")) assertTrue(page.contains(one.get("building").asString() + " " + one.get("ref").asString()), one.toString());
        assertTrue(rank("?budget=40").get("savedMl").doubleValue() >= ranked.get("savedMl").doubleValue(), "more buys no less");
    }

    @Test
    void what_is_no_budget_is_said_beside_its_field_and_refused_by_the_api() throws Exception {
        assertEquals(400, ask("api/rank?budget=-4").statusCode());
        assertEquals(400, ask("api/rank?budget=much").statusCode());
        assertTrue(page("?budget=much").contains("role=\"alert\""));
    }
}
