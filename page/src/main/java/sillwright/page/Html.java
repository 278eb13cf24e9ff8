package sillwright.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import sillwright.sheet.Markup;
import sillwright.sheet.Node;

/// Pages are written with the same elements as the dossier; here they become HTML.
///
/// A style on an element is left out, for the pages' policy forbids it; the names of hatches are made a drawing's own, so
/// that many drawings stand on one page.
final class Html {
    private static final Set<String> VOID = Set.of("br", "hr", "img", "input", "link", "meta", "col", "wbr");
    private int drawings;
    private String own = "";
    private final String first;
    /// The level of the last heading: none is skipped on the way down, wherever its words were first set.
    private int level;
    private int tables;
    private boolean wide;
    private List<String> heads = List.of();
    private int column;
    /// Whether what is written now breaks into lines.
    private boolean flows = true;

    private Html(String first, int level) {
        this.first = first;
        this.level = level;
    }

    static Markup of(String name, Object... children) { return Markup.of(name, children); }

    static Markup div(String look, Object... children) { return Markup.of("div", children).with("class", look); }

    static Markup p(Object... children) { return Markup.of("p", children); }

    static Markup small(Object... children) { return Markup.of("p", children).with("class", "small"); }

    static Markup h(int level, Object... children) { return Markup.of("h" + level, children); }

    static Markup a(String to, Object... children) { return Markup.of("a", children).with("href", to); }

    static Markup button(Object... children) { return Markup.of("button", children).with("type", "button"); }

    static Markup caution(Object... children) { return div("caution", Markup.of("b", "Caution. "), List.of(children)); }

    static List<Markup> list(Collection<?> items) { return items.isEmpty() ? List.of() : List.of(Markup.of("ul", items.stream().map(item -> Markup.of("li", item)).toList())); }

    static List<Markup> steps(Collection<?> items) { return items.isEmpty() ? List.of() : List.of(Markup.of("ol", items.stream().map(item -> Markup.of("li", item)).toList())); }

    /// @param named what the table is, for one who cannot see it
    static Markup table(String named, List<String> heads, List<? extends List<?>> rows) {
        List<Markup> top = heads.stream().map(head -> Markup.of("th", head).with("scope", "col")).toList(), body = new ArrayList<>();
        for (List<?> row : rows) body.add(Markup.of("tr", row.stream().map(cell -> Markup.of("td", cell)).toList()));
        return div("wide", Markup.of("table", Markup.of("thead", Markup.of("tr", top)), Markup.of("tbody", body)).with("aria-label", named)).with("tabindex", "0").with("role", "region").with("aria-label", named);
    }

    /// @param first sets the names in this piece apart from those in any other on the same page
    static String text(String first, Markup markup) { return text(first, markup, 0); }

    /// @param under the level of the heading that it stands under; 0 for none
    static String text(String first, Markup markup, int under) {
        StringBuilder out = new StringBuilder();
        new Html(first, under).write(markup, out);
        return out.toString();
    }

    private void write(Node node, StringBuilder out) {
        switch (node) {
            case Node.Text(var words) when flows -> flowing(words, out);
            case Node.Text(var words) -> escape(words, out);
            case Markup element -> element(element, out);
        }
    }

    /// A number with its unit: a measure, a share, a box to tick.
    private static final Pattern WHOLE = Pattern.compile("(?:\\d+ ft )?\\d[\\d.,/-]*(?: \\d+/\\d+)? (?:in²|in³|in|ft²|ft³|ft|mm|m²|m³|mL|L|lb|kN|fl oz|gal|h|%|°F|°C)(?![\\p{L}\\d])|\\[ +]");

    /// Words that break into lines: a number is not parted from its unit, nor a fraction from its whole.
    private static void flowing(String words, StringBuilder out) {
        Matcher whole = WHOLE.matcher(words);
        int from = 0;
        while (whole.find()) {
            escape(words.substring(from, whole.start()), out);
            out.append("<span class=\"n\">");
            escape(whole.group(), out);
            out.append("</span>");
            from = whole.end();
        }
        escape(words.substring(from), out);
    }

    /// What holds no elements, or is drawn.
    private static final Set<String> BARE = Set.of("svg", "title", "option", "textarea", "style", "script", "summary", "button");

    private void element(Markup element, StringBuilder out) {
        boolean flowed = flows;
        flows &= !BARE.contains(element.name());
        tabled(element, out);
        flows = flowed;
    }

    private void tabled(Markup element, StringBuilder out) {
        boolean wrapped = element.name().equals("table") && tables++ == 0 && !wide;
        // A table that is wider than a phone is moved under the finger, or by the keys; the page is not.
        if (wrapped) out.append("<div class=\"wide\" tabindex=\"0\">");
        boolean within = wide;
        wide |= element.get("class").equals("wide");
        List<String> above = heads;
        int at = column;
        if (element.name().equals("table")) heads = element.all("th").stream().map(Markup::text).toList();
        if (element.name().equals("tr")) column = 0;
        written(element, out);
        heads = above;
        if (element.name().equals("table")) column = at;
        wide = within;
        if (element.name().equals("table")) tables--;
        if (wrapped) out.append("</div>");
    }

    private void written(Markup element, StringBuilder out) {
        boolean drawing = element.name().equals("svg"), sized = drawing && !element.get("width").isEmpty();
        String before = own;
        if (drawing) own = first + "-" + ++drawings + "-";
        String name = emptyHead(element) ? "td" : named(element.name());
        out.append('<').append(name);
        for (Markup.Attribute one : element.attributes()) {
            if (one.name().equals("style") || emptyHead(element) || drawing && (one.name().equals("xmlns") || one.name().equals("width") || one.name().equals("height"))) continue;
            out.append(' ').append(one.name()).append("=\"").append(sized && one.name().equals("class") ? "drawn " : "");
            escape(named(one), out);
            out.append('"');
        }
        if (name.equals("td")) headed(out);
        // A drawing keeps its size on paper as its size on the screen, and shrinks with a narrow window.
        if (sized) out.append(element.get("class").isEmpty() ? " class=\"drawn\"" : "").append(" width=\"").append(Math.round(parse(element.get("width")) * 4.6)).append('"');
        if (name.equals("th") && element.get("style").startsWith("width: ")) out.append(" class=\"w").append(Math.max(5, 5 * Math.round(parse(element.get("style")) / 5))).append('"');
        out.append('>');
        if (VOID.contains(element.name())) return;
        element.children().forEach(child -> write(child, out));
        out.append("</").append(name).append('>');
        own = before;
    }

    /// A cell of a broad table carries its head, which is said beside it where a narrow window sets its row as a paragraph.
    private void headed(StringBuilder out) {
        if (heads.size() >= BROAD && column < heads.size() && !heads.get(column).isBlank()) {
            out.append(" data-head=\"");
            escape(heads.get(column) + (heads.get(column).matches(".*[.?]") ? " " : ": "), out);
            out.append('"');
        }
        column++;
    }

    /// A table of so many columns is too broad for a phone.
    private static final int BROAD = 4;

    private static boolean emptyHead(Markup element) { return element.name().equals("th") && element.text().isBlank(); }

    private String named(String name) {
        if (!name.matches("h[1-6]")) return name;
        level = Math.min(name.charAt(1) - '0', level + 1);
        return "h" + level;
    }

    private static double parse(String length) { return Double.parseDouble(length.replaceAll("[^0-9.]", "")); }

    private String named(Markup.Attribute one) {
        if (own.isEmpty()) return one.value();
        if (one.name().equals("id")) return own + one.value();
        return one.value().replace("url(#", "url(#" + own);
    }

    private static void escape(String words, StringBuilder out) {
        words.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> {
                    if (c == '\n' || c == '\t' || c >= 0x20 && !(c >= 0xd800 && c < 0xe000)) out.appendCodePoint(c);
                }
            }
        });
    }
}
