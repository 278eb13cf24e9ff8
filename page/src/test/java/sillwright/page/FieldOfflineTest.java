package sillwright.page;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.options.BoundingBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillwright.store.Book;
import sillwright.store.Doctor;
import sillwright.store.Import;
import sillwright.walk.Body;
import sillwright.walk.Entry;
import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.Photo;
import sillwright.walk.ProbeReading;
import sillwright.walk.Sighting;
import sillwright.walk.Survey;
import sillwright.wood.NextProbe;

/// What is recorded on the wall with no signal, by phones that die, is all in the book afterwards, and once.
@DisplayNameGeneration(ReplaceUnderscores.class)
class FieldOfflineTest {
    private static final String HOUSE = "porch-alone";

    @TempDir
    static Path profiles;
    @TempDir
    Path folder;
    private Book book;
    private Server server;
    private int port;
    private int there;
    private final List<Phone> phones = new ArrayList<>();

    @BeforeEach
    void open() {
        assumeTrue(Chromium.program().isPresent(), "there is no Chromium on this machine");
        book = Book.begin(folder.resolve("office.book").toString());
        Import.from(book, Path.of("../examples/" + HOUSE + ".survey.json"), Optional.empty());
        there = book.read(HOUSE).entries().size();
        server = Server.start(book, 0);
        port = server.port();
    }

    private Phone phone(String name) {
        Phone phone = Phone.begin(profiles.resolve(name), address()).installed();
        phones.add(phone);
        return phone;
    }

    private Phone killed(Phone phone) throws Exception {
        Phone again = phone.killed();
        phones.remove(phone);
        phones.add(again);
        return again;
    }

    @AfterEach
    void close() {
        for (Phone phone : phones) phone.close();
        if (server != null) server.close();
        if (book != null) book.close();
    }

    private String address() { return "http://127.0.0.1:" + port + "/"; }

    private void signal(boolean there) {
        if (there) server = Server.start(book, port);
        else server.close();
    }

    private List<Entry> fresh() {
        List<Entry> all = book.read(HOUSE).entries();
        return all.subList(there, all.size());
    }

    private static Phone onPost(Phone phone) { return phone.tap("side-front", "member-p-post-2"); }

    /// Taps the face this far along and across, as shares of it.
    private static Phone touch(Phone phone, double along, double across) {
        for (int tries = 0; ; tries++) {
            BoundingBox wood = phone.page.locator(".face-wood").boundingBox();
            // The drawing is made anew after each tap: one that is gone has no place.
            if (wood == null && tries < 100) continue;
            try {
                phone.page.locator(".face-wood").click(new Locator.ClickOptions().setPosition(wood.width * across, wood.height * (1 - along)).setForce(true));
                break;
            } catch (PlaywrightException gone) {
                if (tries >= 100 || !gone.getMessage().contains("not visible")) throw gone;
            }
        }
        phone.page.locator(".spot").waitFor();
        return phone;
    }

    private static byte[] picture() throws IOException {
        var image = new java.awt.image.BufferedImage(64, 48, java.awt.image.BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 64; x++) for (int y = 0; y < 48; y++) image.setRGB(x, y, x * 1024 + y * 5);
        var bytes = new ByteArrayOutputStream();
        javax.imageio.ImageIO.write(image, "jpg", bytes);
        return bytes.toByteArray();
    }

    @Test
    void what_was_tapped_without_signal_outlives_two_kills_and_arrives_once() throws Exception {
        Phone phone = phone("one").walks("A. Surveyor", HOUSE);
        phone.tap("side-front");
        phone.waiting(0);
        signal(false);
        phone.tap("member-p-post-2");
        touch(phone, 0.1, 0.5).tap("depth-1/2", "keep").waiting(1).sees("Where next");
        phone.tap("feel-cubes-across-grain").waiting(2);
        phone.tap("mode-signs", "clear-nails-popped").waiting(3);
        phone.tap("mode-moisture");
        touch(phone, 0.05, 0.5).tap("key-2", "key-7", "key-dot", "key-5", "keep").waiting(4);
        byte[] picture = picture();
        phone.tap("mode-photo");
        touch(phone, 0.2, 0.5);
        phone.page.locator("#caption").fill("foot of the middle post");
        phone.page.locator("#camera").setInputFiles(new com.microsoft.playwright.options.FilePayload("a.jpg", "image/jpeg", picture));
        phone.waiting(6);
        // A fourth tap makes the member: where, what, how thick.
        phone.tap("back").tap("add", "middle", "kind-newel", "size-88.89999999999999-88.89999999999999").waiting(7);
        phone.tap("back", "member-p-post-2", "mode-probe");
        touch(phone, 0.3, 0.5).tap("pad", "key-1", "part-3").sees("1-3/8 in");

        phone = killed(phone);
        phone.waiting(7).sees("1-3/8 in");
        assertEquals("true", phone.at("part-3").getAttribute("aria-pressed"), "the half-made entry stands as it was tapped");
        phone.tap("keep").waiting(8);
        phone = killed(phone);
        phone.waiting(8).sees("how deep?");
        phone.tap("undo").waiting(9).sees("Taken back.");
        signal(true);
        phone.tap("send", "send-now").waiting(0).sees("Nothing waits.");
        phone.tap("send-now").waiting(0);
        phone.calm();

        List<Entry> fresh = fresh();
        assertEquals(8, fresh.size());
        assertEquals(8, new HashSet<>(fresh.stream().map(Entry::id).toList()).size());
        for (Entry entry : fresh) {
            assertEquals("A. Surveyor", entry.author());
            assertTrue(entry.device().startsWith("phone-"), entry.device());
        }
        List<Body> said = fresh.stream().sorted(Entry.ORDER).map(Entry::body).toList();
        assertTrue(said.get(0) instanceof ProbeReading p && p.spot().member().equals("p-post-2") && p.depth().text().equals("1/2 in") && Math.abs(p.spot().alongMm() - 207) < 40 && !p.ranOut(), said.get(0).toString());
        assertTrue(said.get(1) instanceof Sighting s && s.seen() && s.member().equals(Optional.of("p-post-2")) && s.above().isPresent(), said.get(1).toString());
        assertTrue(said.get(2) instanceof Sighting s && !s.seen(), said.get(2).toString());
        assertTrue(said.get(3) instanceof MoistureReading m && Math.abs(m.reading().own() - 0.275) < 1e-9 && m.wood().isPresent(), said.get(3).toString());
        assertTrue(said.get(4) instanceof Photo photo && photo.pin().isPresent() && photo.caption().equals("foot of the middle post"), said.get(4).toString());
        assertTrue(said.get(5) instanceof Member m && m.title().equals("newel 1") && m.bearsLoad(), said.get(5).toString());
        assertTrue(said.get(6) instanceof ProbeReading p && p.depth().text().equals("1-3/8 in"), said.get(6).toString());
        assertTrue(said.get(7) instanceof Body.Struck struck && struck.entry().equals(fresh.stream().sorted(Entry.ORDER).toList().get(6).id()), said.get(7).toString());
        assertArrayEquals(picture, book.photos().get(HOUSE, ((Photo) said.get(4)).file()).orElseThrow().bytes());
        assertEquals(List.of(), book.photos().missing(HOUSE));
        Survey survey = book.read(HOUSE).fold();
        assertEquals(List.of(), survey.faults());
        assertTrue(Doctor.examine(book).clean(), Doctor.examine(book).toString());
    }

    /// Entries and a mark as a long day would leave them, put in by the page's own hand.
    private static final String LONG_DAY = """
            async n => {
                const keep = await import('/field/keep.js'), { entryOf, tick } = await import('/field/clock.js'), self = await keep.get('self');
                for (let i = 0; i < n; i += 50)
                    await keep.record('porch-alone', last => {
                        let stamp = last;
                        const entries = Array.from({ length: Math.min(50, n - i) }, (_, j) => entryOf(stamp = tick(stamp, Date.now()), self.device, self.author, 'probe',
                            { member: 'p-beam', face: 'front', along: 10 * (i + j) + ' mm', across: '50 mm', depth: '3 mm', reach: '100 mm' }));
                        return { stamp, entries };
                    }, () => ({ screen: 'building', building: 'porch-alone', trail: ['buildings'] }));
            }""";

    @Test
    void a_phone_killed_while_it_sends_sends_the_rest_later_and_nothing_twice() throws Exception {
        Phone phone = phone("two").walks("B. Surveyor", HOUSE);
        signal(false);
        phone.page.evaluate(LONG_DAY, 450);
        phone = killed(phone);
        phone.waiting(450);
        signal(true);
        Random random = new Random(7);
        for (int kill = 0; kill < 3; kill++) {
            phone.tap("send", "send-now");
            Thread.sleep(random.nextInt(60));
            phone = killed(phone);
        }
        phone.tap("send", "send-now").waiting(0);
        phone.calm();
        assertEquals(450, fresh().size());
        assertEquals(450, fresh().stream().map(Entry::id).distinct().count());
        assertEquals(450, fresh().stream().map(Entry::stamp).distinct().count(), "one device never stamps two the same");
    }

    @Test
    void a_newer_page_takes_over_when_it_is_wanted_and_finds_all_that_is_unsent() throws Exception {
        Phone phone = phone("three").walks("C. Surveyor", HOUSE);
        onPost(phone).waiting(0);
        signal(false);
        touch(phone, 0.5, 0.5).tap("depth-1", "keep").waiting(1);
        touch(phone, 0.7, 0.5).tap("depth-1/4").sees("1/4 in");
        String file = "/sillwright/page/field/book.js";
        String newer = new String(Server.class.getResourceAsStream(file).readAllBytes(), StandardCharsets.UTF_8).replace("'The book'", "'The newer book'");
        // A server with the newer page and an empty book: what it takes is offered again to the one that comes after it.
        Book other = Book.begin(folder.resolve("other.book").toString());
        server = Server.start(other, port, new StaticFiles(file, newer.getBytes(StandardCharsets.UTF_8)));
        phone.ask("async () => { await (await navigator.serviceWorker.getRegistration()).update(); }");
        phone.at("renew").waitFor();
        assertEquals("1/4 in", phone.at("deep").textContent(), "it waits until it is wanted");
        phone.tap("renew").sees("1/4 in");
        phone.tap("keep", "back", "back", "book").sees("The newer book");
        server.close();
        other.close();
        signal(true);
        phone.tap("send", "send-now");
        for (int wait = 0; wait < 300 && fresh().size() < 2; wait++) Thread.sleep(100);
        phone.waiting(0);
        assertEquals(2, fresh().size());
        phone.calm();
    }

    @Test
    void where_to_probe_next_comes_from_the_core_where_the_server_answers() {
        Phone phone = phone("four").walks("D. Surveyor", HOUSE);
        onPost(phone).waiting(0);
        touch(phone, 0.4, 0.5).tap("depth-0", "keep").waiting(0);
        Survey survey = book.read(HOUSE).fold();
        Member post = survey.members().get("p-post-2");
        NextProbe next = NextProbe.of(post, post.faces().stream().flatMap(face -> survey.probesOn(post.id(), face).stream()).toList()).orElseThrow();
        phone.sees(next.enough() ? "nough is known" : next.why().words());
        phone.calm();
    }

    /// One entry and one picture that no server takes, among others that it does.
    private static final String ODD_DAY = """
            async () => {
                const keep = await import('/field/keep.js'), { entryOf, tick } = await import('/field/clock.js'), self = await keep.get('self');
                const one = (along, stamp) => entryOf(stamp, self.device, self.author, 'probe', { member: 'p-beam', face: 'front', along, across: '50 mm', depth: '3 mm', reach: '100 mm' });
                await keep.record('porch-alone', last => {
                    const a = tick(last, Date.now()), b = tick(a, Date.now()), c = tick(b, Date.now());
                    return { stamp: c, entries: [one('10 mm', a), one('9 furlongs', b), one('20 mm', c)] };
                }, () => ({ screen: 'building', building: 'porch-alone', trail: ['buildings'] }), [{ sha256: '0'.repeat(64), media: 'image/jpeg', blob: new Blob(['no picture'], { type: 'image/jpeg' }) }]);
            }""";

    @Test
    void what_the_server_will_not_take_holds_up_nothing_else_and_is_told_with_its_reason() throws Exception {
        Phone phone = phone("five").walks("E. Surveyor", HOUSE);
        signal(false);
        phone.page.evaluate(ODD_DAY);
        phone = killed(phone);
        phone.waiting(4);
        signal(true);
        phone.tap("send", "send-now").waiting(0).sees("furlongs");
        phone.sees("a photo");
        phone.page.getByText("2 refused").waitFor();
        assertEquals(2, fresh().size());
    }

    private static final String HELD = """
            async () => { const keep = await import('/field/keep.js'); return (await keep.entriesOf('porch-alone')).map(row => row.id + ' ' + row.sent).sort(); }""";

    @Test
    void two_phones_at_once_end_with_the_same_book_as_the_office() throws Exception {
        Phone left = phone("left").walks("Left", HOUSE), right = phone("right").walks("Right", HOUSE);
        left.waiting(0);
        right.waiting(0);
        signal(false);
        for (Phone phone : List.of(left, right)) {
            onPost(phone);
            for (int i = 1; i <= 4; i++) touch(phone, i * 0.2, phone == left ? 0.3 : 0.7).tap(i % 2 == 0 ? "depth-1" : "depth-0", "keep").waiting(i);
            phone.tap("mode-signs", phone == left ? "seen-hollow-sound" : "clear-hollow-sound").waiting(5);
        }
        signal(true);
        for (Phone phone : List.of(left, right)) phone.tap("send", "send-now");
        for (Phone phone : List.of(left, right)) phone.waiting(0);
        // Each fetches once more what the other sent in the meantime, and one takes back what the other said.
        right.tap("send-now").waiting(0);
        right.tap("back", "back", "back", "book");
        Entry other = fresh().stream().filter(entry -> entry.author().equals("Left") && entry.body() instanceof ProbeReading).findFirst().orElseThrow();
        right.tap("strike-" + other.id(), "why-0-" + other.id()).waiting(0);
        for (Phone phone : List.of(left, right)) {
            if (phone == left) phone.tap("send-now");
            else phone.tap("send", "send-now");
            phone.waiting(0);
        }
        List<String> office = book.read(HOUSE).entries().stream().map(entry -> entry.id() + " 1").sorted().toList();
        assertEquals(there + 11, office.size());
        for (Phone phone : List.of(left, right)) {
            for (int wait = 1; wait < 300 && !office.equals(phone.ask(HELD)); wait++) {
                Thread.sleep(100);
                // A tap that fell between two drawings of the screen is made again, as anybody would.
                if (wait % 50 == 0) phone.tap("send-now");
            }
            assertEquals(office, phone.ask(HELD));
            phone.calm();
        }
        assertTrue(book.read(HOUSE).fold().probes().stream().noneMatch(probe -> probe.entry().equals(other.id())));
    }
}
