package sillwright.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

import sillwright.store.Book;
import sillwright.store.Kept;
import sillwright.store.SurveyFile;

/// The invented house that a first visitor may open.
final class Demo {
    static final String BUILDING = "fallow-brook-house";
    private static final String FILE = "demo/" + BUILDING + ".survey.json";

    private Demo() {}

    /// Puts the house into a book; to do so again changes nothing.
    static Kept into(Book book) {
        try (InputStream in = Demo.class.getResourceAsStream(FILE)) {
            if (in == null) throw new IllegalStateException(FILE + " is not in the program's jar");
            return book.take(BUILDING, SurveyFile.read(BUILDING + ".survey.json", new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
