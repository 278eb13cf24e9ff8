package sillwright.desk;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/// `serve` as it is typed: its pages under the terms it was given, and what it refuses before anything is opened.
@DisplayNameGeneration(ReplaceUnderscores.class)
class ServeCommandTest {
    private static final Pattern ADDRESS = Pattern.compile("http://\\S+/");

    @Test
    @Timeout(120)
    void pages_and_api_work_under_the_price_book_and_the_years_that_were_named(@TempDir Path folder) throws Exception {
        String book = folder.resolve("house.book").toString(), sill = ExamplesTest.FOLDER.resolve("one-sill.survey.json").toString(), prices = ExamplesTest.FOLDER.resolve("prices.csv").toString();
        assertEquals(0, Said.by("book", "import", sill, "--book", book).code());
        PipedReader read = new PipedReader(4096);
        PrintWriter out = new PrintWriter(new PipedWriter(read), true);
        StringWriter err = new StringWriter();
        Thread serving = Thread.ofPlatform().start(() -> Main.run(out, new PrintWriter(err, true), "serve", "--book", book, "--port", "0", "--prices", prices, "--postpone", "3,7"));
        try (BufferedReader lines = new BufferedReader(read); HttpClient client = HttpClient.newHttpClient()) {
            Matcher address = ADDRESS.matcher(lines.readLine());
            assertTrue(address.find());
            String ranked = body(client, address.group() + "api/rank?budget=1500");
            assertTrue(ranked.contains("\"priced\":true") && ranked.contains("\"currency\":\"dollars\"") && ranked.contains("\"money\""), ranked);
            String watch = body(client, address.group() + "b/one-sill/watch");
            assertTrue(watch.contains("the same work in 3 years") && watch.contains("the same work in 7 years") && !watch.contains("the same work in 2 years"), watch);
            assertTrue(watch.contains("dollars"));
            assertFalse(err.toString().contains("Exception"), err.toString());
        } finally {
            serving.interrupt();
            serving.join();
        }
    }

    private static String body(HttpClient client, String address) throws Exception {
        return client.send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString()).body();
    }

    @Test
    void a_price_book_that_is_not_there_is_refused_before_a_book_is_begun(@TempDir Path folder) {
        Path book = folder.resolve("new.book");
        Said said = Said.by("serve", "--book", book.toString(), "--port", "0", "--prices", folder.resolve("none.csv").toString());
        assertEquals(Main.BAD_INPUT, said.code());
        assertTrue(said.err().contains("--prices") && said.err().contains("cannot be read"), said.err());
        assertFalse(Files.exists(book));
    }
}
