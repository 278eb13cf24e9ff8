package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
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
import sillwright.store.SurveyFile;

/// The office pages in a real browser, on the invented porch.
@DisplayNameGeneration(ReplaceUnderscores.class)
class OfficeTest {
    private static final List<String> PAGES = List.of("", "figures", "figures/emc?temp=70F&rh=65%25", "figures/field", "enter", "devices", "b/porch-alone", "b/porch-alone/walk", "b/porch-alone/water", "b/porch-alone/wood",
            "b/porch-alone/work", "b/porch-alone/watch", "buildings", "buildings?budget=20");
    private static Chromium chromium;
    private static Book book;
    private static Server server;

    @BeforeAll
    static void open(@TempDir Path folder) throws Exception {
        chromium = Chromium.start();
        book = Book.begin(folder.resolve("a.book").toString());
        book.take("porch-alone", SurveyFile.read("porch-alone.survey.json", Files.readString(Path.of("..", "examples", "porch-alone.survey.json"))));
        server = Server.start(book, 0);
    }

    @AfterAll
    static void close() {
        if (chromium == null) return;
        server.close();
        book.close();
        chromium.close();
    }

    private static Page go(BrowserContext profile, String address) {
        Page page = profile.newPage();
        page.setDefaultTimeout(120_000);
        page.navigate(server.address() + address);
        page.locator("main:not(:has([data-await]))").waitFor();
        return page;
    }

    @ParameterizedTest
    @CsvSource({"PHONE, LIGHT", "PHONE, DARK", "DESK, LIGHT", "DESK, DARK"})
    void no_page_has_a_fault_that_axe_finds_nor_is_wider_than_its_window(Chromium.Window window, ColorScheme theme) {
        try (BrowserContext profile = chromium.profile(window, theme)) {
            for (String address : PAGES) {
                Page page = go(profile, address);
                assertEquals(List.of(), Chromium.faults(page), address);
                assertTrue((Integer) page.evaluate("document.documentElement.scrollWidth") <= window.width, address + " is wider than its window");
                page.close();
            }
            chromium.calm();
        }
    }

    @Test
    void a_changed_reading_shows_all_it_touches_and_can_be_taken_back_by_the_keyboard_alone() {
        try (BrowserContext profile = chromium.profile(Chromium.Window.DESK, ColorScheme.LIGHT)) {
            Page page = go(profile, "b/porch-alone/wood");
            Locator article = page.locator("article.member", new Page.LocatorOptions().setHas(page.locator("details[data-forms]"))).first();
            assertEquals(0, page.locator("form.reading").count(), "no form is sent before its list is opened");
            article.locator("summary", new Locator.LocatorOptions().setHasText("reading")).focus();
            page.keyboard().press("Enter");
            Locator depth = article.locator("form.reading input[name=depth]").first();
            depth.waitFor();
            String before = article.textContent();
            depth.focus();
            page.keyboard().press("Control+A");
            page.keyboard().type("3/8 in");
            page.keyboard().press("Enter");
            page.locator("#touched:not([hidden])").waitFor();
            assertTrue(page.locator("#touched ins").count() > 0);
            assertFalse(before.equals(article.textContent()));
            page.locator("#touched button", new Page.LocatorOptions().setHasText("take it back")).focus();
            page.keyboard().press("Enter");
            page.locator("#touched:not(:has(button:nth-of-type(2)))").waitFor();
            assertEquals(before, article.textContent());
            chromium.calm();
        }
    }

    @Test
    void what_a_change_touches_out_of_sight_is_brought_by_itself() {
        try (BrowserContext profile = chromium.profile(Chromium.Window.PHONE, ColorScheme.LIGHT)) {
            Page page = go(profile, "b/porch-alone/wood");
            Locator list = page.locator("details[data-forms]").last(), depth = list.locator("form.reading input[name=depth]").first();
            list.locator("summary").click();
            depth.fill("5/16 in");
            // The elevation that the reading is drawn on stands a long way up the page.
            page.waitForResponse(answer -> answer.url().contains("/parts/wood/elevation-"), () -> depth.press("Enter"));
            page.locator("#parts[data-whole=true]:not(:has([data-stale]))").waitFor();
            assertEquals(List.of(), page.evaluate("""
                    async () => {
                        const {parts} = await (await fetch('/api/buildings/porch-alone/parts/wood')).json();
                        return Object.entries(parts).filter(([id, html]) => !html.includes(`data-tag="${document.getElementById(id)?.dataset.tag}"`)).map(([id]) => id);
                    }"""));
            chromium.calm();
        }
    }

    @Test
    void a_link_to_a_reading_opens_the_list_that_it_lies_in() {
        try (BrowserContext profile = chromium.profile(Chromium.Window.PHONE, ColorScheme.LIGHT)) {
            String id = book.read("porch-alone").fold().probes().getFirst().entry();
            Page page = go(profile, "b/porch-alone/wood#reading-" + id);
            Locator form = page.locator("[id='reading-" + id + "']:focus");
            form.waitFor();
            assertTrue(form.locator("input[name=depth]").isVisible());
            chromium.calm();
        }
    }

    @Test
    void a_depth_that_cannot_be_is_refused_beside_its_field_and_nothing_is_written() {
        try (BrowserContext profile = chromium.profile(Chromium.Window.PHONE, ColorScheme.LIGHT)) {
            int kept = book.read("porch-alone").entries().size();
            Page page = go(profile, "b/porch-alone/wood");
            Locator list = page.locator("details[data-forms]").first(), form = list.locator("form.reading", new Locator.LocatorOptions().setHas(page.locator("input[name=depth]"))).first();
            list.evaluate("one => { one.open = true; }");
            form.locator("input[name=depth]").fill("90 in");
            form.locator("button[type=submit]").click();
            form.locator(".wrong").filter(new Locator.FilterOptions().setHasText("reach")).waitFor();
            assertEquals(kept, book.read("porch-alone").entries().size());
            chromium.expected("400");
            chromium.calm();
        }
    }

    @Test
    void a_recommendation_is_overruled_with_a_reason_that_is_kept_and_can_be_taken_back() {
        try (BrowserContext profile = chromium.profile(Chromium.Window.PHONE, ColorScheme.LIGHT)) {
            Page page = go(profile, "b/porch-alone/work");
            Locator form = page.locator("form.decide", new Page.LocatorOptions().setHas(page.locator(".option:not(.taken) .bars"))).first();
            page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })");
            String id = form.getAttribute("id"), before = page.locator("#" + id + " .option.taken b").textContent();
            form.locator(".option:not(.taken) input[type=radio]").first().check();
            form.locator("button[value=taken]").click();
            form.locator(".wrong").filter(new Locator.FilterOptions().setHasText("because")).waitFor();
            form.locator("input[name=because]").fill("the old foot is to be seen");
            form.locator("select[name=by]").selectOption("owner");
            form.locator("button[value=taken]").click();
            Locator decided = page.locator("#" + id + " .decided");
            decided.waitFor();
            assertTrue(decided.textContent().contains("chosen by the owner in place of " + before.toLowerCase(java.util.Locale.ROOT) + ", because the old foot is to be seen"), decided.textContent());
            assertFalse(before.equals(page.locator("#" + id + " .option.taken b").textContent()));
            assertEquals(List.of(), Chromium.faults(page));
            decided.locator("button").click();
            decided.waitFor(new Locator.WaitForOptions().setState(com.microsoft.playwright.options.WaitForSelectorState.DETACHED));
            assertEquals(before, page.locator("#" + id + " .option.taken b").textContent());
            chromium.expected("400");
            chromium.calm();
        }
    }

    @Test
    void an_elevation_is_pointed_at_and_moved_by_keys_and_leads_to_the_member() {
        try (BrowserContext profile = chromium.profile(Chromium.Window.DESK, ColorScheme.DARK)) {
            Page page = go(profile, "b/porch-alone/wood");
            Locator svg = page.locator(".pointing svg").first(), member = svg.locator("a.member").first();
            String whole = svg.getAttribute("viewBox");
            member.focus();
            page.keyboard().press("+");
            page.keyboard().press("ArrowRight");
            assertFalse(whole.equals(svg.getAttribute("viewBox")));
            page.keyboard().press("0");
            assertEquals(whole.split(" ")[2] + ".00", svg.getAttribute("viewBox").split(" ")[2].replaceFirst("^(\\d+)$", "$1.00"));
            member.focus();
            page.keyboard().press("Enter");
            page.locator("[id^=member-]:focus").waitFor();
            chromium.calm();
        }
    }

    @Test
    void a_first_visit_opens_the_example_house_with_one_tap(@TempDir Path folder) {
        try (Book empty = Book.begin(folder.resolve("b.book").toString()); Server fresh = Server.start(empty, 0); BrowserContext profile = chromium.profile(Chromium.Window.PHONE, ColorScheme.LIGHT)) {
            Page page = profile.newPage();
            page.setDefaultTimeout(120_000);
            page.navigate(fresh.address());
            page.locator("form[data-demo] button").click();
            page.waitForURL("**/b/" + Demo.BUILDING);
            page.locator(".ways").first().waitFor();
            chromium.calm();
        }
    }
}
