package sillwright.page;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillwright.store.Book;
import sillwright.store.Import;
import sillwright.walk.Body;
import sillwright.walk.Entry;
import sillwright.walk.ProbeReading;

/// Every screen of the field page, in both themes and both windows: no fault that axe-core knows, nothing too small for a glove,
/// nothing that runs out of the window.
@DisplayNameGeneration(ReplaceUnderscores.class)
class FieldLooksTest {
    private static final String HOUSE = "fallow-brook-house";
    private static final String SIDE = "screen: 'side', side: 'south'", POST = "screen: 'member', side: 'south', member: 's-post-2', stretch: 'whole'";
    private static final String SPOT = "face: 'front', spot: {alongMm: 100, acrossMm: 60}, depthMm: 9.525, hint: 'it was soft here: go on towards the head until it is sound'";

    /// What the page would keep of each screen.
    private static final Map<String, String> SCREENS = new LinkedHashMap<>();
    static {
        SCREENS.put("who walks", "screen: 'setup'");
        SCREENS.put("buildings", "screen: 'buildings'");
        SCREENS.put("a new building", "screen: 'newBuilding', form: {}, wrong: {field: 'year', what: 'write a year, such as 1888'}");
        SCREENS.put("a building", "screen: 'building'");
        SCREENS.put("a new side", "screen: 'newSide', form: {}");
        SCREENS.put("a side", SIDE + ", near: ['s-post-1', 's-post-2'], place: {leftMm: 1000, aboveMm: 500}, last: {ids: ['x'], said: '3/8 in deep: front, 6 in up, 2 in across.'}");
        SCREENS.put("a side, larger", SIDE + ", zoom: 4, centre: [0.3, 0.8]");
        SCREENS.put("where a member goes", "screen: 'place', side: 'south'");
        SCREENS.put("what it is", "screen: 'kind', side: 'south', place: {leftMm: 1000, aboveMm: 500}");
        SCREENS.put("how thick it is", "screen: 'size', side: 'south', kind: 'post', place: {leftMm: 1000, aboveMm: 500}");
        SCREENS.put("probe", POST + ", mode: 'probe', " + SPOT);
        SCREENS.put("probe by keypad", POST + ", mode: 'probe', pad: true, typed: {whole: '1', part: 3}, " + SPOT + ", wrong: {field: 'depth', what: '5 in is beyond the reach'}");
        SCREENS.put("probe of a beam", "screen: 'member', side: 'south', member: 's-beam-3', mode: 'probe', stretch: 'start', face: 'front', spot: null, depthMm: null");
        SCREENS.put("meter", POST + ", mode: 'moisture', percent: '18.5', " + SPOT);
        SCREENS.put("signs", POST + ", mode: 'signs', group: 'wood'");
        SCREENS.put("photo", POST + ", mode: 'photo', " + SPOT);
        SCREENS.put("mend", "screen: 'mend', side: 'south', member: 's-post-2', form: {width: '5-1/2 in', depth: '5-1/2 in', length: '8 ft', title: 'post', species: 'fir'}");
        SCREENS.put("signs of a side", "screen: 'sideSigns', side: 'south', group: 'gutter'");
        SCREENS.put("photo of a side", "screen: 'sidePhoto', side: 'south'");
        SCREENS.put("the book", "screen: 'book'");
        SCREENS.put("to send", "screen: 'send'");
        SCREENS.put("the round", "screen: 'round'");
    }

    private static Chromium chromium;
    private static Book book;
    private static Server server;

    @BeforeAll
    static void open(@TempDir Path folder) {
        chromium = Chromium.start();
        book = Book.begin(folder.resolve("a.book").toString());
        for (String name : List.of(HOUSE, "porch-alone")) Import.from(book, Path.of("../examples/" + name + ".survey.json"), Optional.empty());
        server = Server.start(book, 0);
    }

    @AfterAll
    static void close() {
        if (chromium == null) return;
        server.close();
        book.close();
        chromium.close();
    }

    private static Page begin(BrowserContext profile) {
        Page page = profile.newPage();
        page.navigate(server.address() + "field/");
        Chromium.ready(page);
        page.locator("[data-key='units-us']").click();
        page.locator("[data-key='begin']").click();
        page.locator("[data-key='building-" + HOUSE + "']").click();
        page.locator("[data-key='round']").waitFor();
        return page;
    }

    private static void show(Page page, String now) {
        page.evaluate("async () => { const keep = await import('/field/keep.js'); await keep.put('now', {building: '" + HOUSE + "', trail: ['buildings'], " + now + "}); }");
        page.navigate(server.address() + "field/");
        Chromium.ready(page);
        page.locator("main > *").first().waitFor();
    }

    /// Targets that are lower or narrower than a gloved finger, and what is wider than the window.
    private static final String SMALL = """
            () => [...document.querySelectorAll('button, a.button, input, .button')].filter(e => e.offsetParent && e.type !== 'file').map(e => [e, e.getBoundingClientRect()])
                .filter(([, r]) => r.height < 56 || r.width < 48).map(([e, r]) => (e.dataset.key ?? e.id ?? e.textContent) + ' is ' + Math.round(r.width) + ' by ' + Math.round(r.height))
                .concat(document.documentElement.scrollWidth > innerWidth ? ['the page is ' + document.documentElement.scrollWidth + ' wide'] : [])
                .concat([...document.querySelectorAll('main, footer, header')].filter(e => e.scrollWidth > e.clientWidth).map(e => e.tagName + ' is ' + e.scrollWidth + ' wide'))""";

    @ParameterizedTest
    @CsvSource({"PHONE, LIGHT", "PHONE, DARK", "DESK, LIGHT", "DESK, DARK"})
    void no_screen_has_a_fault_or_anything_too_small_for_a_glove(Chromium.Window window, ColorScheme theme) throws IOException {
        List<String> wrong = new ArrayList<>();
        String folder = System.getProperty("field.pictures", "");
        try (BrowserContext profile = chromium.profile(window, theme)) {
            Page page = begin(profile);
            for (var screen : SCREENS.entrySet()) {
                show(page, screen.getValue());
                if (!folder.isEmpty()) page.screenshot(new Page.ScreenshotOptions().setPath(Path.of(folder, window + "-" + theme + "-" + screen.getKey().replaceAll("\\W+", "-") + ".png")));
                for (String fault : Chromium.faults(page)) wrong.add(screen.getKey() + ": " + fault);
                for (Object small : (List<?>) page.evaluate(SMALL)) wrong.add(screen.getKey() + ": " + small);
            }
        }
        assertEquals(List.of(), wrong);
        chromium.calm();
    }

    @Test
    void the_book_says_of_every_entry_what_it_is() {
        try (BrowserContext profile = chromium.profile(Chromium.Window.PHONE, ColorScheme.LIGHT)) {
            Page page = begin(profile);
            show(page, "screen: 'book', more: 2000");
            List<String> lines = page.locator(".entries li > p").allInnerTexts();
            assertEquals(book.read(HOUSE).entries().size(), lines.size());
            assertTrue(lines.stream().anyMatch(line -> line.startsWith("outline of base of post 3")) && lines.stream().anyMatch(line -> line.startsWith("5 open checks: ")), lines.subList(0, 9).toString());
            long struck = book.read(HOUSE).entries().stream().filter(entry -> entry.body() instanceof Body.Struck).count();
            assertEquals(struck, lines.stream().filter(line -> line.matches("(?s)(taken|brought) back: .+")).count(), "each tells what was taken back");
        }
        chromium.calm();
    }

    @Test
    void all_of_it_goes_by_the_keyboard_alone() {
        int there = book.read("porch-alone").entries().size();
        try (BrowserContext profile = chromium.profile(Chromium.Window.PHONE, ColorScheme.LIGHT)) {
            Page page = profile.newPage();
            page.navigate(server.address() + "field/");
            Chromium.ready(page);
            to(page, "author");
            page.keyboard().type("K. Board");
            press(page, "units-us", "begin", "building-porch-alone", "side-front", "member-p-post-3");
            press(page, "along-more", "along-more");
            to(page, "slider");
            for (int i = 0; i < 3; i++) page.keyboard().press("ArrowRight");
            press(page, "keep");
            page.getByText("3/16 in deep").waitFor();
            press(page, "mode-signs", "clear-nails-popped", "undo");
            page.getByText("Taken back").waitFor();
            page.locator("[data-key='send'][aria-label='0 not yet sent']").waitFor();
        }
        List<Entry> fresh = book.read("porch-alone").entries();
        fresh = fresh.subList(there, fresh.size());
        assertEquals(3, fresh.size());
        assertTrue(fresh.getFirst().body() instanceof ProbeReading probe && probe.depth().text().equals("3/16 in") && fresh.getFirst().author().equals("K. Board"), fresh.toString());
        chromium.calm();
    }

    private static void press(Page page, String... keys) {
        for (String key : keys) {
            to(page, key);
            page.keyboard().press("Enter");
        }
    }

    /// Walks with the tabulator until it stands there.
    private static void to(Page page, String key) {
        page.locator("[data-key='" + key + "']").first().waitFor();
        for (int i = 0; i < 150; i++) {
            if (key.equals(page.evaluate("document.activeElement?.dataset?.key ?? ''"))) return;
            page.keyboard().press("Tab");
        }
        throw new AssertionError("the tabulator never comes to " + key);
    }
}
