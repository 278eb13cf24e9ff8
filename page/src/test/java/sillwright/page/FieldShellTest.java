package sillwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillwright.store.Book;

/// The field page as a browser meets it first.
@DisplayNameGeneration(ReplaceUnderscores.class)
class FieldShellTest {
    private static Chromium chromium;
    private static Book book;
    private static Server server;

    @BeforeAll
    static void open(@TempDir Path folder) {
        chromium = Chromium.start();
        book = Book.begin(folder.resolve("a.book").toString());
        server = Server.start(book, 0);
    }

    @AfterAll
    static void close() {
        if (chromium == null) return;
        server.close();
        book.close();
        chromium.close();
    }

    @ParameterizedTest
    @CsvSource({"PHONE, LIGHT", "PHONE, DARK", "DESK, LIGHT", "DESK, DARK"})
    void the_first_screen_has_no_fault(Chromium.Window window, ColorScheme theme) {
        try (BrowserContext profile = chromium.profile(window, theme)) {
            Page page = profile.newPage();
            page.navigate(server.address() + "field/");
            Chromium.ready(page);
            assertEquals(List.of(), Chromium.faults(page));
            chromium.calm();
        }
    }
}
