package sillwright.sheet;

import java.util.List;

/// A finished drawing: what is on it, how large it is, and where its lettering stands.
///
/// @param id       a name for files and anchors: `elevation-south`
/// @param title    one line
/// @param told     what it shows, for one who cannot see it
/// @param widthMm  of the paper
/// @param heightMm of the paper
/// @param defs     the hatches it uses
/// @param content  what is drawn
/// @param labels   all its lettering
public record Drawing(String id, String title, String told, double widthMm, double heightMm, List<Markup> defs, List<Markup> content,
        List<Label> labels) {
    public Drawing {
        defs = List.copyOf(defs);
        content = List.copyOf(content);
        labels = List.copyOf(labels);
    }

    /// Words on a drawing and the paper that they cover.
    ///
    /// @param sizeMm height of the type
    public record Label(String words, Box box, double sizeMm) {}

    /// The drawing as an SVG element, one unit to a millimetre of paper; the letter is looked for in the page.
    public Markup svg() { return svg(List.of()); }

    private Markup svg(List<Markup> first) {
        return Markup.of("svg").with("xmlns", "http://www.w3.org/2000/svg").with("width", Markup.number(widthMm) + "mm")
                .with("height", Markup.number(heightMm) + "mm")
                .with("viewBox", "0 0 " + Markup.number(widthMm) + " " + Markup.number(heightMm)).with("role", "img")
                        .with("font-family", Lettering.FAMILY)
                .has(Markup.of("title", title), Markup.of("desc", told), first, Markup.of("defs", defs),
                        Markup.of("rect").with("width", widthMm).with("height", heightMm).with("fill", Ink.PAPER), content);
    }

    /// The drawing as a file that stands alone, its letters inside it.
    public String file() {
        StringBuilder letters = new StringBuilder();
        for (Label label : labels) letters.append(label.words);
        Markup style = Markup.of("style", Lettering.fontFace(letters.toString()));
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg(List.of(style)).xml() + "\n";
    }
}
