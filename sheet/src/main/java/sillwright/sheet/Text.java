package sillwright.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/// The few elements of XHTML that the dossier is written in.
final class Text {
    private Text() {}

    static Markup h2(String id, String words) { return Markup.of("h2", words).with("id", id); }

    static Markup h3(String id, String words) { return Markup.of("h3", words).with("id", id); }

    /// A heading of the second rank that looks like one of the third: on a page where nothing stands between it and the title.
    static Markup minor(String id, String words) { return h2(id, words).with("class", "minor"); }

    static Markup h4(String words) { return Markup.of("h4", words); }

    static Markup p(Object... words) { return Markup.of("p", words); }

    /// A paragraph of a look of its own.
    static Markup small(Object... words) { return Markup.of("p", words).with("class", "small"); }

    /// What is looked up and not read through, in the letter of the drawings.
    static Markup notes(Object... words) { return Markup.of("p", words).with("class", "notes"); }

    static Markup lead(Object... words) { return Markup.of("p", words).with("class", "lead"); }

    static Markup b(String words) { return Markup.of("b", words); }

    static Markup act(String words) { return Markup.of("span", words).with("class", "act"); }

    /// Kept on one line.
    static Markup n(String words) { return Markup.of("span", words).with("class", "n"); }

    static Markup div(String look, Object... inside) { return Markup.of("div", inside).with("class", look); }

    /// A list, each item a text or an element; nothing at all where it would be empty.
    static List<Markup> list(Collection<?> items) { return list("ul", items); }

    static List<Markup> steps(Collection<?> items) { return list("ol", items); }

    private static List<Markup> list(String kind, Collection<?> items) {
        if (items.isEmpty()) return List.of();
        List<Markup> lines = new ArrayList<>();
        for (Object item : items) lines.add(Markup.of("li", item));
        return List.of(Markup.of(kind, lines));
    }

    /// Said beside the number that it concerns.
    static List<Markup> cautions(Collection<String> all) { return all.stream().map(words -> div("caution", b("Caution. "), words)).toList(); }

    /// A table with a head; the widths are percents of the page, in order. Nothing at all where it would be empty.
    ///
    /// @param rows each a list of texts, elements or lists of them, one for each head
    static List<Markup> table(List<String> heads, List<Integer> widths, List<? extends List<?>> rows) {
        if (rows.isEmpty()) return List.of();
        List<Markup> top = new ArrayList<>(), body = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) top.add(Markup.of("th", heads.get(i)).with("scope", "col").with("style", "width: " + widths.get(i)
                + "%"));
        for (List<?> row : rows) {
            List<Markup> cells = new ArrayList<>();
            for (Object cell : row) cells.add(Markup.of("td", cell));
            body.add(Markup.of("tr", cells));
        }
        return List.of(Markup.of("table", Markup.of("thead", Markup.of("tr", top)), Markup.of("tbody", body)));
    }

    /// Entries in two columns, in bands of a few, each read down the left and then down the right. A table for the eye alone: it has no head, and is tagged as none.
    static Markup columns(List<Markup> entries) { return bands(entries, Band.of(entries)); }

    /// All entries in one band, for short ones that are looked up and not read through.
    static Markup twoColumns(List<Markup> entries) { return bands(entries, List.of(Band.whole(entries))); }

    private static Markup bands(List<Markup> entries, List<Band> bands) {
        List<Markup> rows = new ArrayList<>();
        for (Band band : bands)
            rows.add(Markup.of("tr", Markup.of("td", entries.subList(band.from(), band.middle())).with("class", "half"), Markup.of("td", entries.subList(band.middle(), band.to()))));
        return entries.isEmpty() ? div("none") : Markup.of("table", rows).with("class", "grid");
    }

    /// Two columns side by side.
    static Markup pair(List<Markup> left, List<Markup> right) {
        return Markup.of("table", Markup.of("tr", Markup.of("td", left).with("class", "half"), Markup.of("td", right))).with("class", "grid");
    }

    static Markup drawing(Drawing drawing) { return div("drawing", drawing.svg().with("alt", drawing.told())).with("id", drawing.id()); }
}
