package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillwright.measure.Refused;

/// What lets somebody in, until when, and how much of theirs is worked at a time; each on a server of its own, since tries at one door are counted.
@DisplayNameGeneration(ReplaceUnderscores.class)
class KeyTest {
    @Test
    void whoever_comes_in_anew_or_leaves_is_let_in_by_the_old_token_no_more(@TempDir Path folder) throws Exception {
        try (OpenHouse house = new OpenHouse(folder)) {
            String first = house.owner(), second = OpenHouse.cookie(house.ask("POST", "/api/session", "{\"passphrase\":\"" + OpenHouse.WORDS + "\"}", first));
            assertEquals(401, house.ask("GET", "/api/buildings", "", first).statusCode());
            assertEquals(401, house.ask("POST", "/api/session", "{\"passphrase\":\"" + OpenHouse.WORDS + " \"}", second).statusCode());
            assertEquals(200, house.ask("GET", "/api/buildings", "", second).statusCode(), "a try that fails ends nothing");
            assertTrue(house.ask("GET", "/", "", second).body().contains("data-leave"));
            assertFalse(house.ask("GET", "/enter", "", "").body().contains("data-leave"));
            HttpResponse<String> left = house.ask("DELETE", "/api/session", "", second);
            assertEquals(204, left.statusCode());
            assertEquals("\"cookies\", \"cache\"", left.headers().firstValue("Clear-Site-Data").orElse(""));
            assertEquals(401, house.ask("GET", "/api/buildings", "", second).statusCode());
        }
    }

    @Test
    void an_owner_shuts_all_devices_out_at_once(@TempDir Path folder) throws Exception {
        try (OpenHouse house = new OpenHouse(folder)) {
            String owner = house.owner();
            List<String> phones = new ArrayList<>();
            for (String name : List.of("one", "two")) phones.add(OpenHouse.cookie(house.ask("POST", "/api/session", "{\"code\":\"" + house.code(owner, "surveyor", name) + "\"}", "")));
            for (String phone : phones) assertEquals(403, house.ask("DELETE", "/api/devices", "", phone).statusCode());
            assertEquals(204, house.ask("DELETE", "/api/devices", "", owner).statusCode());
            for (String phone : phones) assertEquals(401, house.ask("GET", "/api/buildings", "", phone).statusCode());
            assertEquals(200, house.ask("GET", "/api/buildings", "", owner).statusCode());
        }
    }

    @Test
    void a_visitor_with_too_much_in_hand_waits_and_others_do_not(@TempDir Path folder) throws Exception {
        List<Socket> held = new ArrayList<>();
        try (OpenHouse house = new OpenHouse(folder)) {
            String owner = house.owner(), phone = OpenHouse.cookie(house.ask("POST", "/api/session", "{\"code\":\"" + house.code(owner, "reader", "busy") + "\"}", ""));
            // Bodies that do not arrive whole keep their requests in hand.
            String begun = "POST /api/figure/emc HTTP/1.1\r\nHost: localhost:" + house.server.port() + "\r\nCookie: " + phone + "\r\nContent-Type: application/json\r\nContent-Length: 99\r\n\r\n{";
            for (int i = 0; i < InHand.MOST; i++) {
                held.add(house.client.sslContext().getSocketFactory().createSocket("localhost", house.server.port()));
                held.getLast().getOutputStream().write(begun.getBytes(StandardCharsets.US_ASCII));
                held.getLast().getOutputStream().flush();
            }
            assertTrue(comes(house, phone, status -> status == 429));
            assertEquals(200, house.ask("GET", "/api/buildings", "", owner).statusCode());
            for (Socket socket : held) socket.close();
            assertTrue(comes(house, phone, status -> status == 200));
        } finally {
            for (Socket socket : held) socket.close();
        }
    }

    private static boolean comes(OpenHouse house, String cookie, IntPredicate status) throws Exception {
        for (int i = 0; i < 100; i++) {
            if (status.test(house.ask("GET", "/api/buildings", "", cookie).statusCode())) return true;
            Thread.sleep(50);
        }
        return false;
    }

    @ParameterizedTest
    @ValueSource(strings = {"passwordpassword", "123456789012", "aaaaaaaaaaaaaaaa", "qwertyuiopas", "Sillwright house book", "sillwright2026!", "old-mill-house", "the old mill house book", "iloveyouforever", "1qaz2wsx3edc"})
    void a_passphrase_that_would_soon_be_guessed_is_not_taken(String words) {
        assertTrue(assertThrows(Refused.class, () -> Passphrase.kept(words, "old-mill-house.book.access.json")).getMessage().contains("guessed"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"barn kettle lantern oak", "horse battery tulip seven", "Zwölf Kähne ziehn bergauf", "k7#pQ2vX!m9Lw", "£^*)%=!{?}~+<", "  four odd words apart  "})
    void any_sort_of_letters_makes_a_passphrase_and_none_is_changed(String words) {
        String kept = Passphrase.kept(words, "old-mill-house.book.access.json");
        assertTrue(Passphrase.fits(words, kept));
        for (String other : List.of(words.toUpperCase(Locale.ROOT), words + " ", words.substring(0, words.length() - 1))) assertEquals(words.equals(other), Passphrase.fits(other, kept), other);
    }

    @Test
    void a_long_passphrase_is_told_apart_to_its_last_letter() {
        String words = "seven lamps beneath a slate roof ".repeat(4), kept = Passphrase.kept(words);
        assertTrue(Passphrase.fits(words, kept));
        assertFalse(Passphrase.fits(words.substring(0, words.length() - 1) + "x", kept));
    }

    /// The lines that the server itself does not take, before any page of ours sees them.
    @ParameterizedTest
    @CsvSource({"400, GET / HTTP/1.1|Host: a b||", "400, POST /api/session HTTP/1.1|Host: localhost|Content-Length: 2|Transfer-Encoding: chunked||0||", "400, POST /api/session HTTP/1.1|Host: localhost|Content-Length: 2|Content-Length: 5||{}",
            "400, GET /enter%00 HTTP/1.1|Host: localhost||", "400, nonsense||"})
    void what_is_no_request_is_refused_without_a_word_and_with_the_same_guards(int status, String said, @TempDir Path folder) throws Exception {
        try (OpenHouse house = new OpenHouse(folder); Socket socket = house.client.sslContext().getSocketFactory().createSocket("localhost", house.server.port())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write(said.replace("|", "\r\n").getBytes(StandardCharsets.US_ASCII));
            socket.getOutputStream().flush();
            var answer = new java.io.BufferedReader(new java.io.InputStreamReader(socket.getInputStream(), StandardCharsets.ISO_8859_1));
            List<String> head = new ArrayList<>();
            for (String line = answer.readLine(); line != null && !line.isEmpty(); line = answer.readLine()) head.add(line);
            assertTrue(head.getFirst().contains(" " + status + " "), head.toString());
            assertTrue(head.contains("X-Content-Type-Options: nosniff") && head.contains("Content-Length: 0"), head.toString());
            assertTrue(head.stream().anyMatch(line -> line.startsWith("Content-Security-Policy: default-src 'none'") && line.contains("frame-ancestors 'none'")), head.toString());
            assertTrue(head.stream().noneMatch(line -> line.startsWith("Server:")), head.toString());
        }
    }

    @ParameterizedTest
    @CsvSource({"TLSv1.3, TLS_AES_256_GCM_SHA384, true", "TLSv1.2, TLS_ECDHE_ECDSA_WITH_AES_128_GCM_SHA256, true", "TLSv1.2, TLS_ECDHE_ECDSA_WITH_AES_128_CBC_SHA256, false", "TLSv1.2, TLS_ECDHE_ECDSA_WITH_AES_256_CBC_SHA384, false"})
    void only_suites_that_encrypt_and_authenticate_in_one_are_agreed_upon(String version, String suite, boolean taken, @TempDir Path folder) throws Exception {
        try (OpenHouse house = new OpenHouse(folder); var socket = (javax.net.ssl.SSLSocket) house.client.sslContext().getSocketFactory().createSocket("localhost", house.server.port())) {
            socket.setEnabledProtocols(new String[] {version});
            socket.setEnabledCipherSuites(new String[] {suite});
            if (taken) socket.startHandshake();
            else assertThrows(javax.net.ssl.SSLHandshakeException.class, socket::startHandshake);
            assertEquals(taken ? suite : "SSL_NULL_WITH_NULL_NULL", socket.getSession().getCipherSuite());
        }
    }

    @Test
    void an_answer_of_the_api_is_no_page_and_no_trace_is_answered(@TempDir Path folder) throws Exception {
        try (OpenHouse house = new OpenHouse(folder)) {
            String owner = house.owner();
            assertTrue(house.ask("GET", "/api/buildings", "", owner).headers().firstValue("Content-Security-Policy").orElse("").contains("sandbox"));
            assertEquals(415, house.ask("TRACE", "/api/buildings", "", owner).statusCode());
            assertEquals(405, house.ask("TRACE", "/api/buildings", "{}", owner).statusCode());
        }
    }
}
