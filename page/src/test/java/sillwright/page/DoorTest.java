package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillwright.measure.Refused;

/// The door of a server that is open to the network, knocked at over its own TLS.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DoorTest {
    private static final String WORDS = OpenHouse.WORDS;
    private static OpenHouse house;
    private static Path beside;

    @BeforeAll
    static void open(@TempDir Path folder) throws Exception {
        house = new OpenHouse(folder);
        beside = house.beside;
    }

    @AfterAll
    static void close() { house.close(); }

    private static HttpResponse<String> ask(String method, String path, String body, String cookie, String... more) throws Exception { return house.ask(method, path, body, cookie, more); }

    private static String cookie(HttpResponse<String> entered) { return OpenHouse.cookie(entered); }

    @Test
    void a_stranger_sees_nothing_an_owner_lets_a_phone_in_and_shuts_it_out() throws Exception {
        assertEquals(401, ask("GET", "/api/buildings", "", "").statusCode());
        assertEquals("/enter", ask("GET", "/", "", "").headers().firstValue("Location").orElse(""));
        assertEquals(200, ask("GET", "/enter", "", "").statusCode());
        assertEquals(401, ask("GET", "/api/buildings", "", Access.COOKIE + "=" + "0".repeat(64)).statusCode());
        assertEquals(401, ask("POST", "/api/session", "{\"passphrase\":\"wrong words altogether\"}", "").statusCode());
        HttpResponse<String> owner = ask("POST", "/api/session", "{\"passphrase\":\"" + WORDS + "\"}", "");
        assertEquals(200, owner.statusCode(), owner.body());
        String set = owner.headers().firstValue("Set-Cookie").orElseThrow();
        for (String guard : List.of("Secure", "HttpOnly", "SameSite=Strict", "Path=/")) assertTrue(set.contains(guard), set);
        assertEquals(200, ask("GET", "/api/buildings", "", cookie(owner)).statusCode());

        String code = Wire.JSON.readTree(ask("POST", "/api/pairings", "{\"role\":\"surveyor\",\"name\":\"a phone\"}", cookie(owner)).body()).get("code").asString();
        HttpResponse<String> phone = ask("POST", "/api/session", "{\"code\":\"" + code + "\"}", "");
        assertEquals(200, phone.statusCode(), phone.body());
        assertEquals(401, ask("POST", "/api/session", "{\"code\":\"" + code + "\"}", "").statusCode());
        assertEquals(200, ask("POST", "/api/buildings/a/entries", "[]", cookie(phone)).statusCode());
        assertEquals(403, ask("GET", "/api/devices", "", cookie(phone)).statusCode());
        assertEquals(403, ask("POST", "/api/pairings", "{\"role\":\"reader\",\"name\":\"b\"}", cookie(phone)).statusCode());

        String device = "";
        for (var one : Wire.JSON.readTree(ask("GET", "/api/devices", "", cookie(owner)).body()).get("devices")) if (one.get("name").asString().equals("a phone")) device = one.get("id").asString();
        assertEquals(204, ask("DELETE", "/api/devices/" + device, "", cookie(owner)).statusCode());
        assertEquals(401, ask("GET", "/api/buildings", "", cookie(phone)).statusCode());
        assertEquals(204, ask("DELETE", "/api/session", "", cookie(owner)).statusCode());
        assertEquals(401, ask("GET", "/api/buildings", "", cookie(owner)).statusCode());
    }

    @Test
    void another_page_another_name_and_another_sort_of_body_are_refused() throws Exception {
        assertEquals(421, ask("GET", "/enter", "", "", "Host", "evil.example").statusCode());
        assertEquals(403, ask("POST", "/api/session", "{}", "", "Origin", "https://evil.example").statusCode());
        assertEquals(403, ask("POST", "/api/session", "{}", "", "Sec-Fetch-Site", "cross-site").statusCode());
        HttpRequest form = house.request("/api/session").header("Content-Type", "application/x-www-form-urlencoded").POST(HttpRequest.BodyPublishers.ofString("a=b")).build();
        assertEquals(415, house.client.send(form, HttpResponse.BodyHandlers.ofString()).statusCode());
        assertTrue(ask("GET", "/enter", "", "").headers().firstValue("Content-Security-Policy").orElseThrow().startsWith("default-src 'none'; script-src 'self'; style-src 'self'"));
    }

    @Test
    void guessing_is_slowed_down() {
        Access access = Access.of(AccessFile.at(beside.resolveSibling("guess.access.json"), Optional.of(WORDS)), java.time.InstantSource.fixed(java.time.Instant.EPOCH));
        for (int i = 0; i < 10; i++) assertEquals(401, assertThrows(Refusal.class, () -> access.byCode("0000-0000-0000", "10.0.0.1")).status());
        assertEquals(429, assertThrows(Refusal.class, () -> access.byCode("0000-0000-0000", "10.0.0.1")).status());
        assertEquals(401, assertThrows(Refusal.class, () -> access.byCode("0000-0000-0000", "10.0.0.2")).status());
    }

    @Test
    void a_device_is_let_in_for_half_a_year_and_no_more_once_it_left() {
        AccessFile file = AccessFile.at(beside.resolveSibling("half.access.json"), Optional.of(WORDS));
        java.time.Instant begun = java.time.Instant.EPOCH;
        Access access = Access.of(file, java.time.InstantSource.fixed(begun)), later = Access.of(file, java.time.InstantSource.fixed(begun.plus(java.time.Duration.ofDays(180)))),
                tooLate = Access.of(file, java.time.InstantSource.fixed(begun.plus(java.time.Duration.ofDays(181))));
        String phone = access.byCode(access.code(Role.SURVEYOR, "a phone"), "10.0.0.1"), other = access.byCode(access.code(Role.READER, "an adviser"), "10.0.0.1");
        assertEquals(Role.SURVEYOR, later.guest(Optional.of(phone)).orElseThrow().role());
        assertTrue(tooLate.guest(Optional.of(phone)).isEmpty());
        access.leave(Optional.of(phone));
        assertTrue(access.guest(Optional.of(phone)).isEmpty());
        assertTrue(access.guest(Optional.of(other)).isPresent());
        assertEquals(List.of("an adviser"), access.devices().stream().map(AccessFile.Device::name).toList());
    }

    @Test
    void a_reader_may_look_and_not_write() throws Exception {
        String owner = cookie(ask("POST", "/api/session", "{\"passphrase\":\"" + WORDS + "\"}", ""));
        String code = Wire.JSON.readTree(ask("POST", "/api/pairings", "{\"role\":\"reader\",\"name\":\"an adviser\"}", owner).body()).get("code").asString();
        String reader = cookie(ask("POST", "/api/session", "{\"code\":\"" + code + "\"}", ""));
        assertEquals(200, ask("GET", "/api/buildings", "", reader).statusCode());
        assertEquals(403, ask("POST", "/api/buildings/a/entries", "[]", reader).statusCode());
        assertEquals(403, ask("POST", "/api/demo", "{}", reader).statusCode());
    }

    @Test
    void what_is_kept_beside_the_book_tells_no_secret_and_is_its_owners_alone() throws Exception {
        Path kept = beside.resolveSibling("a.book.access.json");
        assertFalse(Files.readString(kept).contains("kettle"));
        assertTrue(Files.readString(kept).contains("$argon2id$v=19$m=19456,t=2,p=1$"));
        for (String name : List.of("a.book.access.json", "a.book.tls.p12")) assertEquals("[OWNER_READ, OWNER_WRITE]", new java.util.TreeSet<>(Files.getPosixFilePermissions(beside.resolveSibling(name))).toString());
        assertTrue(Passphrase.fits(WORDS, Passphrase.kept(WORDS)));
        assertFalse(Passphrase.fits(WORDS + " ", Passphrase.kept(WORDS)));
        assertThrows(Refused.class, () -> Passphrase.kept("too short"));
        assertThrows(Refused.class, () -> AccessFile.at(beside.resolveSibling("none.access.json"), Optional.empty()));
    }

    /// The picture is read again by the library's own reader.
    @Test
    void the_code_can_be_read_by_a_camera() throws Exception {
        String address = "https://192.168.1.20:8321/enter#ABCD-EFGH-JKMN";
        var svg = AccessApi.drawn(address);
        int side = Integer.parseInt(svg.get("viewBox").split(" ")[2]), scale = 6;
        int[] points = new int[side * scale * side * scale];
        java.util.Arrays.fill(points, 0xffffff);
        java.util.regex.Matcher each = java.util.regex.Pattern.compile("M(\\d+) (\\d+)h").matcher(svg.all("path").getFirst().get("d"));
        while (each.find()) for (int y = 0; y < scale; y++) for (int x = 0; x < scale; x++) points[(Integer.parseInt(each.group(2)) * scale + y) * side * scale + Integer.parseInt(each.group(1)) * scale + x] = 0;
        assertEquals(address, new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side * scale, side * scale, points)))).getText());
    }
}
