package sillwright.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// Reads a JSON text from left to right. Source: RFC 8259, section 2 to 7, from memory.
final class JsonText {
    private static final int DEEPEST = 100;

    private final String text;
    private int at;
    private int depth;

    JsonText(String text) {
        this.text = text;
        at = text.startsWith("\uFEFF") ? 1 : 0;
    }

    Json whole() {
        Json value = value("");
        blank();
        if (at < text.length()) throw wrong("there is more text after the end", "keep one value: { ... }");
        return value;
    }

    private Json value(String place) {
        blank();
        if (at >= text.length()) throw wrong("the text ends too early", "close every brace, bracket and quote");
        return switch (text.charAt(at)) {
            case '{' -> object(place);
            case '[' -> list(place);
            case '"' -> new Json.Str(place, string());
            case 't' -> word("true", new Json.Bool(place, true));
            case 'f' -> word("false", new Json.Bool(place, false));
            case 'n' -> word("null", new Json.Nothing(place));
            default -> new Json.Num(place, number());
        };
    }

    private Json object(String place) {
        Map<String, Json> fields = new LinkedHashMap<>();
        in('{');
        blank();
        if (!taken('}'))
            do {
                blank();
                if (at >= text.length() || text.charAt(at) != '"') throw wrong("a name in double quotes is wanted", "write {\"name\": value, ...}, with no comma after the last");
                int from = at;
                String name = string();
                blank();
                if (!taken(':')) throw wrong("a colon is wanted after \"" + name + "\"", "write \"name\": value");
                Json before = fields.put(name, value(place.isEmpty() ? name : place + ", " + name));
                if (before != null) {
                    at = from;
                    throw wrong("\"" + name + "\" is given twice", "give it once");
                }
                blank();
            } while (more('}'));
        depth--;
        return new Json.Obj(place, fields);
    }

    private Json list(String place) {
        List<Json> items = new ArrayList<>();
        in('[');
        blank();
        if (!taken(']'))
            do {
                items.add(value((place.isEmpty() ? "item" : place) + " " + (items.size() + 1)));
                blank();
            } while (more(']'));
        depth--;
        return new Json.Arr(place, items);
    }

    private void in(char open) {
        at++;
        if (++depth > DEEPEST) throw wrong("it is nested more than " + DEEPEST + " deep", "write it flatter");
    }

    private boolean more(char close) {
        if (taken(',')) return true;
        if (taken(close)) return false;
        throw wrong(at >= text.length() ? "the text ends too early" : "'" + text.charAt(at) + "' stands where a comma or '" + close + "' is wanted", "part values by commas, and close every brace, bracket and quote");
    }

    private boolean taken(char c) {
        if (at >= text.length() || text.charAt(at) != c) return false;
        at++;
        return true;
    }

    private Json word(String word, Json value) {
        if (!text.startsWith(word, at)) throw wrong("this is no JSON value", "write a number, true, false, null, or a text in double quotes");
        at += word.length();
        return value;
    }

    private String string() {
        StringBuilder said = new StringBuilder();
        at++;
        while (true) {
            if (at >= text.length()) throw wrong("a quote is opened and never closed", "close it with \"");
            char c = text.charAt(at++);
            if (c == '"') return said.toString();
            if (c < ' ') {
                at--;
                throw wrong("a line break or other control character stands within a text", "write it as an escape such as \\n");
            }
            said.append(c == '\\' ? escape() : c);
        }
    }

    private char escape() {
        if (at >= text.length()) throw wrong("a quote is opened and never closed", "close it with \"");
        char c = text.charAt(at++);
        return switch (c) {
            case '"', '\\', '/' -> c;
            case 'b' -> '\b';
            case 'f' -> '\f';
            case 'n' -> '\n';
            case 'r' -> '\r';
            case 't' -> '\t';
            case 'u' -> unicode();
            default -> {
                at--;
                throw wrong("'\\" + c + "' is no escape of JSON", "write \\\\ for a backslash");
            }
        };
    }

    private char unicode() {
        int value = 0;
        for (int i = 0; i < 4; i++) {
            char c = at < text.length() ? text.charAt(at) : ' ';
            int digit = c < 128 ? Character.digit(c, 16) : -1;
            if (digit < 0) throw wrong("\\u wants four hexadecimal digits", "write it as in \\u00e9");
            value = 16 * value + digit;
            at++;
        }
        return (char) value;
    }

    private double number() {
        int from = at;
        taken('-');
        if (!taken('0')) digits(from);
        if (taken('.')) digits(from);
        if (taken('e') || taken('E')) {
            if (!taken('+')) taken('-');
            digits(from);
        }
        double value = Double.parseDouble(text.substring(from, at));
        if (Double.isInfinite(value)) {
            at = from;
            throw wrong("this number is too large", "write a smaller one");
        }
        return value;
    }

    private void digits(int from) {
        int first = at;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') at++;
        if (at > first) return;
        at = from;
        throw wrong("this is no JSON value", "write a number as 0.25, true, false, null, or a text in double quotes");
    }

    private void blank() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) at++;
    }

    private Refused wrong(String what, String mend) {
        int line = 1, column = 1;
        for (int i = 0; i < Math.min(at, text.length()); i++) {
            boolean next = text.charAt(i) == '\n';
            line += next ? 1 : 0;
            column = next ? 1 : column + 1;
        }
        return new Refused("line " + line + ", column " + column, what.replace("{}", "{ }"), mend);
    }
}
