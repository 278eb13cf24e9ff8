package sillwright.wood;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import sillwright.measure.Csv;

/// The check values of this stage.
final class Checks {
    private Checks() {}

    static Csv read(String name) {
        try (var in = Checks.class.getResourceAsStream("/checks/" + name)) {
            if (in == null) throw new IllegalStateException("no checks/" + name);
            return Csv.read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
