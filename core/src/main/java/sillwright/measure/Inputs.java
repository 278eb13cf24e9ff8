package sillwright.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// What was typed for a figure, read and checked against its keys.
public final class Inputs {
    private final String figure;
    private final Map<String, Object> values = new LinkedHashMap<>();
    private final Map<String, String> texts;

    private Inputs(String figure, Map<String, String> texts) {
        this.figure = figure;
        this.texts = texts;
    }

    /// Reads all that was typed; reports every fault at once.
    ///
    /// @param texts the contents of files named by keys, by the name typed: the core opens no file itself
    static Inputs read(Figure figure, Map<String, String> typed, Map<String, String> texts) {
        Inputs inputs = new Inputs(figure.name(), texts);
        List<String> faults = new ArrayList<>();
        for (String name : typed.keySet())
            if (figure.keys().stream().noneMatch(key -> key.name().equals(name)))
                faults.add("there is no key '" + name + "'; the keys are " + Words.list(figure.keys().stream().map(Key::name).toList()));
        for (Key key : figure.keys()) {
            String value = typed.getOrDefault(key.name(), key.standing().orElse(null));
            try {
                if (value != null) inputs.values.put(key.name(), one(key, value.strip()));
                else if (key.needed())
                    throw new Refused("", "is missing", "add " + key.name() + "=..., " + key.says() + ": " + key.accepts(Units.US));
            } catch (Refused refused) {
                faults.add(refused.at(key.name()).line(Units.US));
            }
        }
        if (!faults.isEmpty()) throw new Refused("figure " + figure.name(), String.join("; and ", faults), "");
        return inputs;
    }

    private static Object one(Key key, String text) {
        return switch (key.takes()) {
            case Key.Takes.Measured(var kind, var least, var most) -> inside(key, Quantity.read(text, kind), least, most);
            case Key.Takes.Several(var kind, var count, var least, var most) -> {
                List<Quantity> all = Quantity.readList(text, kind);
                if (count > 0 && all.size() != count)
                    throw new Refused("", "has {} values where {} are wanted", "part them by commas", all.size(), count);
                for (Quantity quantity : all) inside(key, quantity, least, most);
                yield all;
            }
            case Key.Takes.OneOf(var words) -> {
                if (!words.contains(text)) throw new Refused("", "'{}' is not one of the choices", "use " + String.join(", ", words), text);
                yield text;
            }
            case Key.Takes.Text _ -> {
                if (text.isEmpty()) throw new Refused("", "is empty", "write " + key.accepts(Units.US));
                yield text;
            }
            case Key.Takes.YesNo() -> switch (text) {
                case "true", "yes" -> true;
                case "false", "no" -> false;
                default -> throw new Refused("", "'{}' is neither true nor false", "write true or false", text);
            };
        };
    }

    private static Quantity inside(Key key, Quantity quantity, double least, double most) {
        double slack = 1e-9 * Math.max(1, Math.abs(quantity.own()));
        if (quantity.own() < least - slack || quantity.own() > most + slack)
            throw new Refused("", "{} is outside the range of this figure", key.says() + " is " + key.accepts(Units.US), quantity);
        return quantity;
    }

    public boolean has(String key) { return values.containsKey(key); }

    /// The value in the program's own unit.
    public double own(String key) { return ((Quantity) values.get(key)).own(); }

    /// The value in the program's own unit, or another where none was given.
    public double own(String key, double otherwise) { return has(key) ? own(key) : otherwise; }

    public Quantity quantity(String key) { return (Quantity) values.get(key); }

    @SuppressWarnings("unchecked")
    public List<Quantity> several(String key) { return (List<Quantity>) values.get(key); }

    public String word(String key) { return (String) values.get(key); }

    public boolean yes(String key) { return (Boolean) values.get(key); }

    /// Whether a key names a file that was handed in.
    public boolean holds(String key) { return has(key) && texts.containsKey(word(key)); }

    /// The contents of the file that a key names.
    public String contents(String key) {
        String text = texts.get(word(key));
        if (text == null) throw refuse(key, "file '{}' was not handed in", "name a file that can be read", word(key));
        return text;
    }

    /// A refusal that names the figure and the key.
    public Refused refuse(String key, String what, String mend, Object... values) {
        return new Refused("figure " + figure + ", " + key, what, mend, values);
    }

    /// A refusal met while reading a key, said with the figure and the key before it.
    public Refused refuse(String key, Refused refused) { return refused.at("figure " + figure + ", " + key); }

    /// All that was given or stood by itself, in the order of the keys.
    Map<String, Object> all() { return values; }
}
