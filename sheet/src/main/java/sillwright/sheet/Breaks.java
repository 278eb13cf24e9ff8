package sillwright.sheet;

import java.util.Set;

import com.openhtmltopdf.extend.FSTextBreaker;

/// Where a line of text may end: between words, and behind a hyphen between letters; never within a fraction or a ratio,
/// nor between a number and its unit, so that `8 ft 6-3/8 in` always stands on one line.
final class Breaks implements FSTextBreaker {
    private static final Set<String> UNITS = Set.of("in", "ft", "mm", "m", "%", "fl", "oz", "gal", "lb", "mL", "L", "°F", "°C", "psi", "h", "in³",
            "ft³", "ft²", "m²", "gpm", "L/s", "kN", "in/h", "mm/h");

    private String text = "";
    private int at;

    @Override
    public void setText(String newText) {
        text = newText;
        at = 0;
    }

    @Override
    public int next() {
        for (int i = at + 1; i < text.length(); i++)
            if (mayBreak(i)) return at = i;
        if (at >= text.length()) return -1;
        at = text.length();
        return at;
    }

    /// Whether the letter at `i` may start a line.
    private boolean mayBreak(int i) {
        char before = text.charAt(i - 1), here = text.charAt(i);
        if (before == '-') return i >= 2 && Character.isLetter(text.charAt(i - 2)) && Character.isLetter(here);
        if (!blank(before) || blank(here)) return false;
        int end = i;
        while (end < text.length() && !blank(text.charAt(end)) && ",.;:)".indexOf(text.charAt(end)) < 0) end++;
        String word = text.substring(i, end);
        return !(UNITS.contains(word) && (digitBefore(i) || unitBefore(i)) || digit(here) && lengthGoesOn(i, end));
    }

    private static boolean blank(char c) { return c == ' ' || c == '\n' || c == '\t' || c == '\r'; }

    private static boolean digit(char c) { return c >= '0' && c <= '9'; }

    private boolean digitBefore(int i) {
        int last = i - 1;
        while (last > 0 && blank(text.charAt(last))) last--;
        return digit(text.charAt(last));
    }

    /// `oz` behind `fl`.
    private boolean unitBefore(int i) { return wordBefore(i).equals("fl"); }

    /// `6-3/8 in` behind `8 ft`.
    private boolean lengthGoesOn(int i, int end) { return wordBefore(i).equals("ft") && text.startsWith(" in", end); }

    private String wordBefore(int i) {
        int last = i - 1;
        while (last > 0 && blank(text.charAt(last))) last--;
        int first = last;
        while (first > 0 && !blank(text.charAt(first - 1))) first--;
        return text.substring(first, last + 1);
    }
}
