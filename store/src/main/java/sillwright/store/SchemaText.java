package sillwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/// The published schemas of what this program reads and writes.
public final class SchemaText {
    private SchemaText() {}

    /// JSON Schema 2020-12 of `*.survey.json`.
    public static String survey() { return text("survey-1.schema.json"); }

    /// JSON Schema 2020-12 of `findings.json`.
    public static String findings() { return text("findings-1.schema.json"); }

    /// JSON Schema 2020-12 of what the figure `net` reads.
    public static String net() { return text("net-1.schema.json"); }

    private static String text(String name) {
        try (InputStream in = SchemaText.class.getResourceAsStream(name)) {
            if (in == null) throw new IllegalStateException(name + " is not in the program's jar");
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
