package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.sheet.Drawing.Label;

/// A sheet being drawn on: shapes first, lettering over them, and a memory of all that is lettered so that no words are
/// ever set on others.
final class Canvas {
    /// Which point of the words a place names.
    enum Anchor { START, MIDDLE, END }

    private final double width;
    private double height;
    private final List<Markup> shapes = new ArrayList<>();
    private final List<Markup> lettering = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();

    /// A part of the sheet at a scale of its own: all that is drawn and lettered from one count to another, about its anchor.
    private record Part(int shapesFrom, int shapesTo, int lettersFrom, int lettersTo, double ratio, double x, double y) {}

    Canvas(double widthMm, double heightMm) {
        this.width = widthMm;
        this.height = heightMm;
    }

    double width() { return width; }

    double height() { return height; }

    void heighten(double toMm) { height = Math.max(height, toMm); }

    List<Label> labels() { return List.copyOf(labels); }

    void add(Markup shape) { shapes.add(shape); }

    /// Draws a part that stands at a scale of its own, so that a file at the building's own size can have it in its true size too.
    ///
    /// @param ratio of that scale
    /// @param x     of the point that stays where it is
    void part(double ratio, double x, double y, Runnable draw) {
        int shapesFrom = shapes.size(), lettersFrom = lettering.size();
        draw.run();
        parts.add(new Part(shapesFrom, shapes.size(), lettersFrom, lettering.size(), ratio, x, y));
    }

    /// Something that belongs to the lettering: it is drawn over every shape.
    void addOver(Markup mark) { lettering.add(mark); }

    void line(double x1, double y1, double x2, double y2, Ink.Pen pen) { add(lined(x1, y1, x2, y2, pen)); }

    static Markup lined(double x1, double y1, double x2, double y2, Ink.Pen pen) {
        return pen.on(Markup.of("line").with("x1", x1).with("y1", y1).with("x2", x2).with("y2", y2));
    }

    void rect(Box box, String fill, Ink.Pen pen) { add(pen.on(filled(box, fill))); }

    void fill(Box box, String fill) { add(filled(box, fill)); }

    private static Markup filled(Box box, String fill) {
        return Markup.of("rect").with("x", box.left()).with("y", box.top()).with("width", box.width()).with("height", box.height())
                .with("fill", fill);
    }

    /// @param points x and y in turn
    void polygon(String fill, Ink.Pen pen, double... points) { add(pen.on(Markup.of("polygon").with("points", joined(points)).with("fill", fill))); }

    /// A polygon that stands for something that a screen may let one point at.
    void pointed(String attribute, String name, String fill, Ink.Pen pen, double... points) {
        add(pen.on(Markup.of("polygon").with("points", joined(points)).with("fill", fill)).with(attribute, name));
    }

    void polyline(Ink.Pen pen, double... points) { add(pen.on(Markup.of("polyline").with("points", joined(points)).with("fill", "none"))); }

    private static String joined(double... points) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < points.length; i++) all.append(i == 0 ? "" : i % 2 == 0 ? " " : ",").append(Markup.number(points[i]));
        return all.toString();
    }

    void circle(double x, double y, double radius, String fill, Ink.Pen pen) {
        add(pen.on(Markup.of("circle").with("cx", x).with("cy", y).with("r", radius).with("fill", fill)));
    }

    /// The paper that words would cover, their line at `y`.
    static Box covers(double x, double y, String words, double size, Anchor anchor) {
        double wide = Lettering.widthMm(words, size);
        double left = switch (anchor) {
            case START -> x;
            case MIDDLE -> x - wide / 2;
            case END -> x - wide;
        };
        return new Box(left, y - size * 0.76, wide, size * (0.76 + Lettering.BELOW));
    }

    boolean free(Box box) {
        for (Label label : labels) if (label.box().overlaps(box)) return false;
        return true;
    }

    Box write(double x, double y, String words, double size, Anchor anchor, String colour) {
        String said = Lettering.sayable(words);
        Box box = covers(x, y, said, size, anchor);
        Markup text = Markup.of("text", said).with("x", x).with("y", y).with("font-size", size).with("fill", colour);
        letter(anchor == Anchor.START ? text : text.with("text-anchor", anchor == Anchor.MIDDLE ? "middle" : "end"), said, box, size);
        return box;
    }

    /// Words that climb the page, their middle at a height, their line at `x`.
    Box writeUpright(double x, double y, String words, double size, String colour) {
        String said = Lettering.sayable(words);
        Box box = coversUpright(x, y, said, size);
        letter(Markup.of("text", said).with("x", x).with("y", y).with("font-size", size).with("fill", colour).with("text-anchor", "middle")
                .with("transform", "rotate(-90 " + Markup.number(x) + " " + Markup.number(y) + ")"), said, box, size);
        return box;
    }

    static Box coversUpright(double x, double y, String words, double size) {
        double wide = Lettering.widthMm(words, size);
        return new Box(x - size * 0.76, y - wide / 2, size * (0.76 + Lettering.BELOW), wide);
    }

    private void letter(Markup text, String said, Box box, double size) {
        if (said.isBlank()) return;
        lettering.add(text);
        labels.add(new Label(said, box, size));
    }

    /// Those of each part in a group that says its scale.
    private List<Markup> grouped(List<Markup> all, boolean drawn) {
        List<Markup> grouped = new ArrayList<>();
        int at = 0;
        for (Part part : parts) {
            int from = drawn ? part.shapesFrom : part.lettersFrom, to = drawn ? part.shapesTo : part.lettersTo;
            grouped.addAll(all.subList(at, from));
            if (to > from) grouped.add(Markup.of("g", all.subList(from, to)).with("data-ratio", part.ratio).with("data-x", part.x).with("data-y", part.y));
            at = to;
        }
        grouped.addAll(all.subList(at, all.size()));
        return grouped;
    }

    Drawing done(String id, String title, String told, double fine) {
        List<Markup> content = new ArrayList<>(grouped(shapes, true));
        content.addAll(grouped(lettering, false));
        List<Markup> used = new ArrayList<>();
        String drawn = Markup.of("g", shapes).xml();
        for (Markup pattern : Hatch.patterns(fine)) if (drawn.contains("url(#" + pattern.get("id") + ")")) used.add(pattern);
        return new Drawing(id, title, told, width, height, used, content, labels);
    }
}
