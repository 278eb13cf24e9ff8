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

    Canvas(double widthMm, double heightMm) {
        this.width = widthMm;
        this.height = heightMm;
    }

    double width() { return width; }

    double height() { return height; }

    void heighten(double toMm) { height = Math.max(height, toMm); }

    List<Label> labels() { return List.copyOf(labels); }

    void add(Markup shape) { shapes.add(shape); }

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

    Drawing done(String id, String title, String told, double fine) {
        List<Markup> content = new ArrayList<>(shapes);
        content.addAll(lettering);
        List<Markup> used = new ArrayList<>();
        String drawn = Markup.of("g", shapes).xml();
        for (Markup pattern : Hatch.patterns(fine)) if (drawn.contains("url(#" + pattern.get("id") + ")")) used.add(pattern);
        return new Drawing(id, title, told, width, height, used, content, labels);
    }
}
