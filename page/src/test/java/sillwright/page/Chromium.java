package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.WaitForSelectorState;

/// The machine's own Chromium, driven: one for a test class, closed at its end. Where there is none, tests are skipped and say so.
///
/// Every page that is opened is listened to: an error on its console, an error thrown, or a request to another machine
/// is remembered, and [#calm] fails on it.
final class Chromium implements AutoCloseable {
    /// The two windows that every page is looked at in.
    enum Window {
        PHONE(390, 844), DESK(1440, 900);

        final int width, height;

        Window(int width, int height) {
            this.width = width;
            this.height = height;
        }
    }

    private static final List<String> PLACES = List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/usr/bin/google-chrome-stable");

    private final Playwright playwright;
    private final Browser browser;
    private final List<String> trouble = new ArrayList<>();

    private Chromium(Path program) {
        playwright = Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright.chromium().launch(new BrowserType.LaunchOptions().setExecutablePath(program).setHeadless(true)
                .setArgs(List.of("--no-sandbox", "--disable-dev-shm-usage", "--disable-background-networking", "--disable-component-update")));
    }

    static Optional<Path> program() {
        String told = System.getProperty("sillwright.chromium", System.getenv().getOrDefault("SILLWRIGHT_CHROMIUM", ""));
        return Stream.concat(Stream.of(told).filter(place -> !place.isEmpty()), PLACES.stream()).map(Path::of).filter(Files::isExecutable).findFirst();
    }

    /// Skips the tests where this machine has no Chromium.
    static Chromium start() {
        Optional<Path> program = program();
        assumeTrue(program.isPresent(), "there is no Chromium on this machine: install it (Debian: apt-get install chromium), or name it by SILLWRIGHT_CHROMIUM");
        return new Chromium(program.get());
    }

    /// A fresh profile: no cookie, no cache, no service worker of another.
    BrowserContext profile(Window window, ColorScheme theme) {
        BrowserContext profile = browser.newContext(new Browser.NewContextOptions().setViewportSize(window.width, window.height).setColorScheme(theme)
                .setHasTouch(window == Window.PHONE).setReducedMotion(com.microsoft.playwright.options.ReducedMotion.REDUCE));
        profile.setDefaultTimeout(120_000);      // a busy machine is slow, and no test is of speed
        profile.onPage(this::listen);
        return profile;
    }

    private void listen(Page page) {
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") || message.type().equals("warning")) trouble.add("console: " + message.text());
        });
        page.onPageError(error -> trouble.add("thrown: " + error));
        page.onRequest(request -> {
            if (!request.url().matches("(?:https?://(?:127\\.0\\.0\\.1|localhost)[:/]|data:|blob:).*")) trouble.add("request to elsewhere: " + request.url());
        });
    }

    /// Nothing was said on a console, thrown, or asked of another machine since this was last asked.
    void calm() {
        List<String> all = List.copyOf(trouble);
        trouble.clear();
        assertEquals(List.of(), all);
    }

    /// Forgets what a test brought about on purpose.
    void expected(String part) { assertEquals(true, trouble.removeIf(one -> one.contains(part)), "nothing said: " + part); }

    /// Until the field page stands: before that it only says that it is opening.
    static void ready(Page page) { page.locator("html[data-ready=yes]").waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED)); }

    /// What axe-core finds wrong on the page as it stands, of every rule that it has.
    ///
    /// The script is handed to the page from outside, so that the page's own policy may go on forbidding every other.
    static List<String> faults(Page page) {
        page.evaluate(axe());
        Object found = page.evaluate("""
                async () => (await axe.run(document, { resultTypes: ['violations'] })).violations
                    .map(v => v.id + ': ' + v.help + ': ' + v.nodes.slice(0, 5).map(n => n.target.join(' ') + ' {' + (n.any[0] ?? n.all[0] ?? n.none[0])?.message + '}').join(' | '))""");
        return ((List<?>) found).stream().map(String::valueOf).toList();
    }

    private static String axe() {
        try (InputStream in = Chromium.class.getResourceAsStream("/axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
