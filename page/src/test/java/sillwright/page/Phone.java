package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ReducedMotion;
import com.microsoft.playwright.options.WaitForSelectorState;

/// A phone in somebody's pocket: a Chromium of its own whose profile outlives it, so that it may be killed and begun again.
final class Phone implements AutoCloseable {
    private final Path folder;
    private final String address;
    private final List<String> trouble;
    private final Playwright playwright;
    private final BrowserContext profile;
    final Page page;

    private Phone(Path folder, String address, List<String> trouble) {
        this.folder = folder;
        this.address = address;
        this.trouble = trouble;
        playwright = Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        profile = playwright.chromium().launchPersistentContext(folder, new BrowserType.LaunchPersistentContextOptions().setExecutablePath(Chromium.program().orElseThrow()).setHeadless(true)
                .setArgs(List.of("--no-sandbox", "--disable-dev-shm-usage", "--disable-background-networking", "--disable-component-update")).setViewportSize(390, 844).setHasTouch(true)
                .setReducedMotion(ReducedMotion.REDUCE));
        profile.setDefaultTimeout(120_000);
        page = profile.pages().getFirst();
        page.onPageError(error -> trouble.add("thrown: " + error));
        // A server out of reach is told by the browser itself; it is no fault of the page.
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") && !message.text().contains("net::ERR_")) trouble.add("console: " + message.text());
        });
        profile.onRequest(request -> {
            if (!request.url().matches("(?:https?://(?:127\\.0\\.0\\.1|localhost)[:/]|data:|blob:|chrome).*")) trouble.add("request to elsewhere: " + request.url());
        });
    }

    /// Opens the field page; with or without a server once it has been opened with one.
    static Phone begin(Path folder, String address) { return begin(folder, address, new ArrayList<>()); }

    private static Phone begin(Path folder, String address, List<String> trouble) {
        Phone phone = new Phone(folder, address, trouble);
        phone.page.navigate(address + "field/");
        phone.until("html[data-ready=yes]");
        return phone;
    }

    /// Until the page's own files lie on the phone.
    Phone installed() {
        until("html[data-offline=ready]");
        return this;
    }

    /// Waits for an element; what the page's policy forbids a script to do, a selector may.
    private void until(String selector) { page.locator(selector).waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED)); }

    /// Kills the browser as the system kills it when memory is short, and begins it again on the same profile.
    Phone killed() throws Exception {
        List<ProcessHandle> all = ProcessHandle.allProcesses().filter(process -> process.info().commandLine().filter(line -> line.contains("--user-data-dir=" + folder)).isPresent()).toList();
        assertTrue(!all.isEmpty(), "the browser of " + folder + " is there to be killed");
        all.forEach(ProcessHandle::destroyForcibly);
        for (ProcessHandle process : all) process.onExit().get(120, TimeUnit.SECONDS);
        try {
            playwright.close();
        } catch (RuntimeException gone) {
            // The browser it would say goodbye to is dead, which is what was wanted.
        }
        return begin(folder, address, trouble);
    }

    Locator at(String key) { return page.locator("[data-key='" + key + "']").first(); }

    Phone tap(String... keys) {
        for (String key : keys) at(key).click();
        return this;
    }

    /// Waits until something is on the screen.
    Phone sees(String words) {
        page.getByText(words).first().waitFor();
        return this;
    }

    /// Waits until the screen says how many are not yet sent.
    Phone waiting(int count) {
        page.locator("[data-key='send'][aria-label='" + count + " not yet sent']").waitFor();
        return this;
    }

    Object ask(String script) { return page.evaluate(script); }

    /// From the first screen to a building, as a newcomer.
    Phone walks(String who, String building) {
        page.locator("#author").fill(who);
        tap("units-us", "begin", "building-" + building);
        at("round").waitFor();
        return this;
    }

    void calm() { assertEquals(List.of(), trouble); }

    @Override
    public void close() {
        profile.close();
        playwright.close();
    }
}
