package sillwright.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.measure.Csv;
import sillwright.measure.Refused;
import sillwright.measure.Units;

/// One table of values from outside, with where they are from and what is checked by them.
record Check(String name, Csv csv) {
    /// Every table the program was built with.
    static List<Check> all() {
        List<Check> all = new ArrayList<>();
        for (String name : text("/checks/index.txt").lines().filter(line -> line.endsWith(".csv")).sorted().toList()) all.add(new Check(name, Csv.read(text("/checks/" + name))));
        return List.copyOf(all);
    }

    private static String text(String resource) {
        try (InputStream in = Check.class.getResourceAsStream(resource)) {
            if (in == null) throw new IllegalStateException(resource + " is not in the program");
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /// What its header says: `source`, `where`, `known`, `checks`.
    String note(String key) {
        for (String note : csv.notes()) if (note.startsWith(key + ":")) return note.substring(key.length() + 1).strip();
        return "";
    }

    boolean ofFigure() { return note("checks").startsWith("figure"); }

    /// The rows that a figure does not answer as the outside does.
    List<String> misses() {
        List<String> misses = new ArrayList<>();
        if (ofFigure()) for (Csv.Row row : csv.rows()) miss(row).ifPresent(misses::add);
        return misses;
    }

    static Map<String, String> inputs(Csv.Row row) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String pair : row.get("inputs").split(" ")) if (!pair.isEmpty()) typed.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1).replace('_', ' '));
        return typed;
    }

    static Units units(Csv.Row row) { return "si".equals(row.cells().getOrDefault("units", "us")) ? Units.SI : Units.US; }

    static Optional<String> miss(Csv.Row row) {
        String what = row.get("figure") + " " + row.get("inputs") + " " + row.get("result");
        try {
            Answer answer = Figures.named(row.get("figure")).answer(inputs(row));
            Answer.Result result = answer.results().get(row.get("result"));
            String expected = row.get("expected");
            return switch (result) {
                case null -> Optional.of(what + ": no such result");
                case Answer.Measured measured -> {
                    double got = measured.in(units(row));
                    yield Math.abs(got - Double.parseDouble(expected)) <= row.number("tolerance") + 1e-12 ? Optional.empty() : Optional.of(what + ": " + got + ", printed " + expected);
                }
                case Answer.Said(var word) -> word.equals(expected) ? Optional.empty() : Optional.of(what + ": " + word + ", printed " + expected);
                case Answer.True(var yes) -> String.valueOf(yes).equals(expected) ? Optional.empty() : Optional.of(what + ": " + yes + ", printed " + expected);
            };
        } catch (Refused refused) {
            return Optional.of(what + ": " + refused.getMessage());
        }
    }
}
