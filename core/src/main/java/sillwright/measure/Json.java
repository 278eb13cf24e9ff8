package sillwright.measure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// A value of a JSON text, with the place it stands at, items counted from one: `sightings 2, leak`.
///
/// The core may use no library, so that the same bytecode runs in a browser; it reads the few small texts that its figures
/// take by itself, and strictly. Surveys and findings are read and written outside it.
public sealed interface Json {
    String place();

    record Obj(String place, Map<String, Json> fields) implements Json {
        public Obj { fields = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(fields)); }

        /// @throws Refused for a field that is none of these, with those near it
        public void only(Set<String> names) {
            for (String name : fields.keySet()) {
                if (names.contains(name)) continue;
                List<String> near = Words.near(name, names);
                throw new Refused(fields.get(name).place(), "there is no field '{}' here", near.isEmpty() ? "the fields are " + String.join(", ", names) : "did you mean " + String.join(", ", near) + "?", name);
            }
        }

        /// Empty where it is not there, or null.
        public Optional<Json> get(String name) { return Optional.ofNullable(fields.get(name)).filter(value -> !(value instanceof Nothing)); }

        /// @throws Refused where it is not there
        public Json need(String name, String mend) {
            return get(name).orElseThrow(() -> new Refused(place, "'{}' is missing", mend, name));
        }
    }

    record Arr(String place, List<Json> items) implements Json {
        public Arr { items = List.copyOf(items); }
    }

    record Str(String place, String text) implements Json {}

    record Num(String place, double value) implements Json {}

    record Bool(String place, boolean yes) implements Json {}

    record Nothing(String place) implements Json {}

    /// @throws Refused where it is another sort of value
    default Obj object() { return this instanceof Obj obj ? obj : refuse("an object, in braces"); }

    default List<Json> list() { return this instanceof Arr arr ? arr.items : refuse("a list, in brackets"); }

    default String text() { return this instanceof Str str ? str.text : refuse("a text, in double quotes"); }

    default double number() { return this instanceof Num num ? num.value : refuse("a number, without quotes"); }

    default boolean yes() { return this instanceof Bool bool ? bool.yes : refuse("true or false, without quotes"); }

    private <T> T refuse(String wanted) { throw new Refused(place().isEmpty() ? "the whole text" : place(), "is {}", "write " + wanted, sort()); }

    private String sort() {
        return switch (this) {
            case Obj _ -> "an object";
            case Arr _ -> "a list";
            case Str(_, var text) -> "the text \"" + text + "\"";
            case Num(_, var value) -> "the number " + Words.significant(value, 6);
            case Bool(_, var yes) -> String.valueOf(yes);
            case Nothing _ -> "null";
        };
    }

    /// Reads one JSON text; a byte order mark before it is passed over.
    ///
    /// @throws Refused with line and column where it is not JSON, where a name is given twice, or where it is nested deeper than 100
    static Json read(String text) { return new JsonText(text).whole(); }
}
