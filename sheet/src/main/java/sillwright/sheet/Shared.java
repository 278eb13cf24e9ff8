package sillwright.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

import static sillwright.sheet.Text.*;

/// Words that many entries of one chapter would repeat: told once at its head, and named by a letter at each entry, so that a page holds
/// more and nothing is left out.
final class Shared {
    /// Told once where as many entries as this would say it. Own choice.
    static final int MANY = 3;

    /// Cut short only where so many letters are saved: else a reader would be sent to the head of the chapter for next to nothing. Own choice.
    private static final int WORTH = 30;

    /// Marks `n1`, `n2` in place of letters, where a chapter has letters of two kinds already.
    static final char NUMBERED = '1';

    private final Map<String, String> letters = new LinkedHashMap<>();

    /// @param entries what each entry would say
    /// @param many     told once where so many entries would say it
    Shared(Collection<? extends Collection<String>> entries, int many) { this(entries, many, 'a', 0); }

    /// For entries that keep the first clause of what is told once, see [#brief].
    ///
    /// @param first `a` or `A`, or [#NUMBERED]: a chapter may have several kinds
    static Shared cutShort(Collection<? extends Collection<String>> entries, char first) { return new Shared(entries, MANY, first, WORTH); }

    private Shared(Collection<? extends Collection<String>> entries, int many, char first, int worth) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Collection<String> entry : entries) for (String words : new LinkedHashSet<>(entry)) counts.merge(words, 1, Integer::sum);
        counts.forEach((words, count) -> {
            if (count >= many && words.length() - start(words).length() >= worth) letters.put(words, letter(letters.size(), first));
        });
    }

    /// `a` to `z`, then `aa`, `ab`; or `n1`, `n2`.
    static String letter(int number, char first) {
        if (first == NUMBERED) return "n" + (number + 1);
        return number < 26 ? String.valueOf((char) (first + number)) : letter(number / 26 - 1, first) + letter(number % 26, first);
    }

    boolean has(String words) { return letters.containsKey(words); }

    /// The first clause of what is told once, with its letter; all of what is not.
    String brief(String words) { return letters.containsKey(words) ? start(words) + " ... (" + letters.get(words) + ")" : words; }

    private static String start(String words) {
        int end = words.length();
        for (String mark : List.of(", ", "; ", ": ")) if (words.indexOf(mark) > 12) end = Math.min(end, words.indexOf(mark));
        return words.substring(0, end);
    }

    /// What is told once, run on in one paragraph behind its heading, each with its letter; nothing at all where nothing is shared.
    List<Markup> run(String head) { return run(head, letters); }

    static List<Markup> run(String head, Map<String, String> letters) {
        if (letters.isEmpty()) return List.of();
        List<Object> words = new ArrayList<>(List.of(b(head)));
        letters.forEach((said, letter) -> words.addAll(List.of(new Node.Text(" "), b(letter), new Node.Text(" " + said.replaceFirst("[.;]$", "") + "."))));
        return List.of(notes(words));
    }

    /// The same as a list.
    List<Markup> told() {
        List<Object> lines = new ArrayList<>();
        letters.forEach((words, letter) -> lines.add(List.of(b(letter), new Node.Text("  " + words))));
        return list(lines);
    }

    /// The letters of what an entry shares: `a, c`; four and more in a row as `a to f`.
    String letters(Collection<String> entry) {
        List<String> all = List.copyOf(letters.values()), own = all.stream().filter(letter -> entry.stream().anyMatch(words -> letter.equals(letters.get(words)))).toList();
        List<String> said = new ArrayList<>();
        for (int from = 0, to; from < own.size(); from = to) {
            to = from + 1;
            while (to < own.size() && all.indexOf(own.get(to)) == all.indexOf(own.get(from)) + to - from) to++;
            if (to - from < 4) said.addAll(own.subList(from, to));
            else said.add(own.get(from) + " to " + own.get(to - 1));
        }
        return String.join(", ", said);
    }

    /// What an entry says that the others do not.
    List<String> own(Collection<String> entry) { return entry.stream().filter(words -> !letters.containsKey(words)).toList(); }
}
