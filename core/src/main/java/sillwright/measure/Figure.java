package sillwright.measure;

import java.util.List;
import java.util.Map;

/// A calculation that can be worked alone, by anyone, from the command line, the web and Java.
///
/// @param name    one or two words joined by a hyphen
/// @param stage   the stage that owns it
/// @param says    what it answers, one sentence
/// @param keys    what it takes
/// @param gives   its results by name, each with what it means
/// @param basis   what it always rests on
/// @param example what may be typed behind its name, and works
/// @param work    the calculation: a call of the stage's own function, no formula of its own
public record Figure(String name, String stage, String says, List<Key> keys, Map<String, String> gives, List<Basis> basis,
                     String example, Work work) {
    public Figure {
        keys = List.copyOf(keys);
        basis = List.copyOf(basis);
        gives = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(gives));
    }

    /// Results and what each means, in pairs, kept in order.
    public static Map<String, String> gives(String... nameThenMeaning) {
        Map<String, String> gives = new java.util.LinkedHashMap<>();
        for (int i = 0; i < nameThenMeaning.length; i += 2) gives.put(nameThenMeaning[i], nameThenMeaning[i + 1]);
        return gives;
    }

    /// The calculation behind a figure.
    @FunctionalInterface
    public interface Work { void work(Inputs in, Answer.Sheet out); }

    /// Works the figure from what was typed.
    ///
    /// @param typed key to text, as typed
    /// @throws Refused naming the figure, every key that is wrong, and how to mend it
    public Answer answer(Map<String, String> typed) { return answer(typed, Map.of()); }

    /// @param files the contents of files that keys name, by the name typed
    public Answer answer(Map<String, String> typed, Map<String, String> files) {
        Inputs inputs = Inputs.read(this, typed, files);
        Answer.Sheet sheet = new Answer.Sheet();
        work.work(inputs, sheet);
        return sheet.done(name, inputs, basis);
    }
}
