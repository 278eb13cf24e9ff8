package sillwright.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import sillwright.measure.Refused;
import sillwright.measure.Words;

/// The words of a closed list, as they are written in a survey: lower case, hyphens.
public final class Choice {
    private Choice() {}

    /// How a case is written: `BEARS_LOAD` is `bears-load`.
    public static String word(Enum<?> one) { return one.name().toLowerCase(Locale.ROOT).replace('_', '-'); }

    /// How a case is said: `bears load`.
    public static String said(Enum<?> one) { return one.name().toLowerCase(Locale.ROOT).replace('_', ' '); }

    public static <E extends Enum<E>> List<String> words(Class<E> list) {
        List<String> words = new ArrayList<>();
        for (E one : list.getEnumConstants()) words.add(word(one));
        return List.copyOf(words);
    }

    /// @throws Refused with the nearest words, or all of them when few
    public static <E extends Enum<E>> E of(Class<E> list, String written) {
        for (E one : list.getEnumConstants()) if (word(one).equals(written)) return one;
        List<String> words = words(list), near = Words.near(written, words);
        throw new Refused("", "'{}' is not one of the choices",
                words.size() <= 12 || near.isEmpty() ? "use one of " + String.join(", ", words) : "did you mean " + String.join(", ", near) + "?", written);
    }
}
