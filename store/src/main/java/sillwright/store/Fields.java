package sillwright.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.HashSet;
import java.util.function.Function;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import tools.jackson.databind.JsonNode;

/// The fields of one JSON object, read one by one; every fault is kept, so that an entry's faults are told all at once.
///
/// A field that is missing or wrong reads as a stand-in, which is never used: an entry with a fault is set aside.
final class Fields {
    /// What is wrong in one field.
    record Wrong(String field, String what, String mend) {}

    /// Thrown once an entry's faults are all gathered.
    static final class Wrongs extends Exception {
        private static final long serialVersionUID = 1;
        private final transient List<Wrong> all;

        Wrongs(List<Wrong> all) { this.all = List.copyOf(all); }

        List<Wrong> all() { return all; }
    }

    private static final Quantity STAND_IN = new Quantity(1, sillwright.measure.Unit.MILLIMETRE, "1 mm");

    private final JsonNode node;
    private final String path;
    private final List<Wrong> wrongs;
    private final Set<String> asked = new HashSet<>();

    Fields(JsonNode node, String path, List<Wrong> wrongs) {
        this.node = node;
        this.path = path;
        this.wrongs = wrongs;
    }

    List<Wrong> wrongs() { return wrongs; }

    void wrong(String field, String what, String mend) { wrongs.add(new Wrong(path.isEmpty() ? field : field.isEmpty() ? path : path + "." + field, what, mend)); }

    private void wrong(String field, Refused refused) {
        String inner = refused.where().isEmpty() ? field : refused.where();
        wrong(inner, refused.what(Units.US), refused.mend());
    }

    private Optional<JsonNode> at(String field) {
        asked.add(field);
        JsonNode value = node.get(field);
        return value == null || value.isNull() ? Optional.empty() : Optional.of(value);
    }

    private <T> T missing(String field, String example, T standIn) {
        wrong(field, "is missing", "add \"" + field + "\": " + example);
        return standIn;
    }

    String text(String field, String example) {
        Optional<JsonNode> value = at(field);
        if (value.isEmpty()) return missing(field, "\"" + example + "\"", "x");
        return string(field, value.get(), example);
    }

    String textOr(String field, String otherwise) { return at(field).map(value -> string(field, value, "...")).orElse(otherwise); }

    Optional<String> textMaybe(String field) { return at(field).map(value -> string(field, value, "...")); }

    private String string(String field, JsonNode value, String example) {
        if (value.isString()) return value.stringValue();
        wrong(field, "is " + sort(value) + " where text is wanted", "write \"" + field + "\": \"" + example + "\"");
        return "x";
    }

    Quantity measure(String field, Kind kind) {
        Optional<JsonNode> value = at(field);
        if (value.isEmpty()) return missing(field, "\"" + kind.example().split(",| or ")[0] + "\"", STAND_IN);
        return quantity(field, value.get(), kind);
    }

    Optional<Quantity> measureMaybe(String field, Kind kind) { return at(field).map(value -> quantity(field, value, kind)); }

    private Quantity quantity(String field, JsonNode value, Kind kind) {
        if (!value.isString()) {
            wrong(field, value.isNumber() ? value.asString() + " has no unit" : "is " + sort(value) + " where a measure is wanted",
                    "write it as text with its unit, such as \"" + kind.example().split(",| or ")[0] + "\"");
            return STAND_IN;
        }
        try {
            return Quantity.read(value.stringValue(), kind);
        } catch (Refused refused) {
            wrong(field, refused);
            return STAND_IN;
        }
    }

    double number(String field) {
        Optional<JsonNode> value = at(field);
        if (value.isEmpty()) return missing(field, "10", 1.0);
        if (value.get().isNumber() && Double.isFinite(value.get().doubleValue())) return value.get().doubleValue();
        wrong(field, "is " + sort(value.get()) + " where a bare number is wanted", "write \"" + field + "\": 10");
        return 1;
    }

    Optional<Double> numberMaybe(String field) { return at(field).isPresent() ? Optional.of(number(field)) : Optional.empty(); }

    int whole(String field, String example) {
        Optional<JsonNode> value = at(field);
        if (value.isEmpty()) return missing(field, example, 1);
        if (value.get().isIntegralNumber() && value.get().canConvertToInt()) return value.get().intValue();
        wrong(field, "is " + sort(value.get()) + " where a whole number is wanted", "write \"" + field + "\": " + example);
        return 1;
    }

    int wholeOr(String field, int otherwise) { return node.has(field) ? whole(field, String.valueOf(otherwise)) : otherwise; }

    boolean yes(String field) {
        Optional<JsonNode> value = at(field);
        if (value.isEmpty()) return missing(field, "true", false);
        return bool(field, value.get());
    }

    boolean yesOr(String field, boolean otherwise) { return at(field).map(value -> bool(field, value)).orElse(otherwise); }

    private boolean bool(String field, JsonNode value) {
        if (value.isBoolean()) return value.booleanValue();
        wrong(field, "is " + sort(value) + " where true or false is wanted", "write \"" + field + "\": true");
        return false;
    }

    <E extends Enum<E>> E choice(String field, Class<E> list) {
        E first = list.getEnumConstants()[0];
        Optional<JsonNode> value = at(field);
        if (value.isEmpty()) return missing(field, "one of " + String.join(", ", Choice.words(list).subList(0, Math.min(6, Choice.words(list).size()))), first);
        return chosen(field, value.get(), list);
    }

    <E extends Enum<E>> E choiceOr(String field, Class<E> list, E otherwise) { return at(field).map(value -> chosen(field, value, list)).orElse(otherwise); }

    <E extends Enum<E>> Optional<E> choiceMaybe(String field, Class<E> list) { return at(field).map(value -> chosen(field, value, list)); }

    private <E extends Enum<E>> E chosen(String field, JsonNode value, Class<E> list) {
        try {
            return Choice.of(list, string(field, value, Choice.words(list).getFirst()));
        } catch (Refused refused) {
            if (value.isString()) wrong(field, refused);
            return list.getEnumConstants()[0];
        }
    }

    <T> List<T> list(String field, Function<Fields, T> each) {
        Optional<JsonNode> value = at(field);
        if (value.isEmpty()) return List.of();
        if (!value.get().isArray()) {
            wrong(field, "is " + sort(value.get()) + " where a list is wanted", "write \"" + field + "\": [ ... ]");
            return List.of();
        }
        List<T> all = new ArrayList<>();
        int i = 0;
        for (JsonNode one : value.get()) inside(field + "[" + i++ + "]", one, each).ifPresent(all::add);
        return all;
    }

    <T> Optional<T> object(String field, Function<Fields, T> read) { return at(field).flatMap(value -> inside(field, value, read)); }

    private <T> Optional<T> inside(String field, JsonNode value, Function<Fields, T> read) {
        String inner = path.isEmpty() ? field : path + "." + field;
        Fields fields = new Fields(value, inner, wrongs);
        if (!value.isObject()) {
            fields.wrong("", "is " + sort(value) + " where an object is wanted", "write { ... }");
            return Optional.empty();
        }
        return fields.make(read);
    }

    /// Makes a record of these fields; none when a field is wrong or the record refuses them.
    <T> Optional<T> make(Function<Fields, T> read) {
        int before = wrongs.size();
        T made = null;
        try {
            made = read.apply(this);
        } catch (Refused refused) {
            // A record checks what stand-ins would make nonsense of: its refusal counts only where the fields were right.
            if (wrongs.size() == before) wrong("", refused);
        }
        strangers();
        return wrongs.size() == before && made != null ? Optional.of(made) : Optional.empty();
    }

    private void strangers() {
        for (String name : node.propertyNames()) {
            if (asked.contains(name)) continue;
            List<String> near = Words.near(name, asked);
            wrong(name, "is not a field that is known here", near.isEmpty() ? "take it out, or use one of " + String.join(", ", new java.util.TreeSet<>(asked))
                    : "did you mean " + String.join(", ", near) + "?");
        }
    }

    Fields says() {
        asked.add("says");
        JsonNode says = node.get("says");
        if (says != null && says.isObject()) return new Fields(says, path.isEmpty() ? "" : path + ".says", wrongs);
        wrong("says", says == null ? "is missing" : "is " + sort(says) + " where an object is wanted", "add \"says\": { ... }");
        return null;
    }

    private static String sort(JsonNode value) {
        if (value.isString()) return "text";
        if (value.isNumber()) return "a number";
        if (value.isBoolean()) return "true or false";
        if (value.isArray()) return "a list";
        return value.isObject() ? "an object" : "nothing";
    }
}
