package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// A drawing as a DXF file of release 12, at the building's own size in millimetres, its lines in layers by what they mean.
///
/// `OUTLINE` what is cut or seen firmly, `THIN` and `FINE` lesser lines, `HIDDEN` dashed ones, `CUT` lines of sound wood and of the saw, `ACT` water and repairs, `SOFTENED`, `DECAYED`,
/// `HOLLOW`, `NEW-WOOD`, `BREAK` the outline of what is hatched so on paper, `TEXT` all words.
///
/// Source: the DXF reference for release 12, group codes 0 to 79 (from memory); read back in a check by another program's reader.
public final class Dxf {
    private static final Pattern SCALE = Pattern.compile("(?:scale|views) .*?1:([0-9]+)");
    private static final Pattern PATH = Pattern.compile("([MLCQAZ])([^MLCQAZ]*)");

    private final StringBuilder entities = new StringBuilder();
    private final Set<String> layers = new TreeSet<>();
    private final double height;
    private final double whole;
    private double ratio;
    private double anchorX;
    private double anchorY;

    private Dxf(double ratio, double height) {
        this.whole = ratio;
        this.ratio = ratio;
        this.height = height;
    }

    /// @param drawing one that says its scale; else it comes at the size of the paper
    public static String of(Drawing drawing) {
        Dxf dxf = new Dxf(ratio(drawing), drawing.heightMm());
        drawing.content().forEach(dxf::shape);
        StringBuilder file = new StringBuilder();
        pair(file, 0, "SECTION", 2, "HEADER", 9, "$ACADVER", 1, "AC1009", 0, "ENDSEC", 0, "SECTION", 2, "TABLES");
        pair(file, 0, "TABLE", 2, "LTYPE", 70, 2, 0, "LTYPE", 2, "CONTINUOUS", 70, 0, 3, "Solid line", 72, 65, 73, 0, 40, 0.0);
        pair(file, 0, "LTYPE", 2, "DASHED", 70, 0, 3, "__ __ __", 72, 65, 73, 2, 40, 23 * dxf.ratio / 10, 49, 14 * dxf.ratio / 10, 49, -9 * dxf.ratio / 10, 0, "ENDTAB");
        pair(file, 0, "TABLE", 2, "LAYER", 70, dxf.layers.size());
        for (String layer : dxf.layers) pair(file, 0, "LAYER", 2, layer, 70, 0, 62, layer.equals("ACT") || layer.equals("CUT") ? 1 : 7, 6, dashed(layer) ? "DASHED" : "CONTINUOUS");
        pair(file, 0, "ENDTAB", 0, "TABLE", 2, "STYLE", 70, 1, 0, "STYLE", 2, "STANDARD", 70, 0, 40, 0.0, 41, 1.0, 50, 0.0, 71, 0, 42, 2.5, 3, "txt", 4, "", 0, "ENDTAB", 0, "ENDSEC");
        pair(file, 0, "SECTION", 2, "ENTITIES");
        file.append(dxf.entities);
        pair(file, 0, "ENDSEC", 0, "EOF");
        return file.toString();
    }

    private static boolean dashed(String layer) { return layer.equals("HIDDEN") || layer.equals("CUT"); }

    /// How many mm of the building one mm of paper stands for.
    static double ratio(Drawing drawing) {
        for (Drawing.Label label : drawing.labels()) {
            Matcher scale = SCALE.matcher(label.words());
            if (scale.find()) return Double.parseDouble(scale.group(1));
            if (label.words().matches("(scale|views) half size")) return 2;
        }
        return 1;
    }

    private static void pair(StringBuilder out, Object... codes) {
        for (int i = 0; i < codes.length; i += 2)
            out.append(String.format(Locale.ROOT, "%3d", (Integer) codes[i])).append("\r\n").append(codes[i + 1] instanceof Double number ? Markup.number(number) : codes[i + 1]).append("\r\n");
    }

    private void shape(Markup shape) {
        switch (shape.name()) {
            case "line" -> line(layer(shape), at(shape, "x1"), at(shape, "y1"), at(shape, "x2"), at(shape, "y2"));
            case "rect" -> {
                double x = at(shape, "x"), y = at(shape, "y"), w = at(shape, "width"), h = at(shape, "height");
                if (!shape.get("stroke").isEmpty() || shape.get("fill").startsWith("url")) polyline(layer(shape), true, new double[] {x, y, x + w, y, x + w, y + h, x, y + h});
            }
            case "polygon", "polyline" -> {
                String[] numbers = shape.get("points").split("[ ,]+");
                double[] points = new double[numbers.length];
                for (int i = 0; i < numbers.length; i++) points[i] = Double.parseDouble(numbers[i]);
                polyline(layer(shape), shape.name().equals("polygon"), points);
            }
            case "circle" -> {
                String layer = layer(shape);
                pair(entities, 0, "CIRCLE", 8, layer, 10, along(at(shape, "cx")), 20, up(at(shape, "cy")), 40, at(shape, "r") * ratio);
            }
            case "path" -> path(shape);
            case "text" -> text(shape);
            case "g" -> group(shape);
            default -> throw new IllegalStateException("no drawing has a " + shape.name());
        }
    }

    /// A part that stands at a scale of its own comes at the building's size like all else, about the point where it stands.
    private void group(Markup group) {
        boolean own = !group.get("data-ratio").isEmpty();
        if (own) {
            ratio = at(group, "data-ratio");
            anchorX = at(group, "data-x");
            anchorY = at(group, "data-y");
        }
        group.children().forEach(child -> { if (child instanceof Markup one) shape(one); });
        if (own) {
            ratio = whole;
            anchorX = 0;
            anchorY = 0;
        }
    }

    private double along(double x) { return anchorX * whole + (x - anchorX) * ratio; }

    private double at(Markup shape, String attribute) { return Double.parseDouble(shape.get(attribute)); }

    private double up(double y) { return (height - anchorY) * whole + (anchorY - y) * ratio; }

    private String layer(Markup shape) {
        String fill = shape.get("fill"), colour = shape.get("stroke");
        String layer = fill.startsWith("url(#hatch-") ? fill.substring(11, fill.length() - 1).toUpperCase(Locale.ROOT).replaceAll("^NEW-.*", "NEW-WOOD")
                : shape.get("stroke-dasharray").equals(Ink.CUT.dashes()) ? "CUT" : colour.equals(Ink.ACT) || fill.equals(Ink.ACT) ? "ACT"
                : !shape.get("stroke-dasharray").isEmpty() ? "HIDDEN" : width(shape) >= Ink.FIRM.widthMm() ? "OUTLINE" : width(shape) >= Ink.THIN.widthMm() ? "THIN" : "FINE";
        layers.add(layer);
        return layer;
    }

    private static double width(Markup shape) { return shape.get("stroke-width").isEmpty() ? 0 : Double.parseDouble(shape.get("stroke-width")); }

    private void line(String layer, double x1, double y1, double x2, double y2) {
        pair(entities, 0, "LINE", 8, layer, 10, along(x1), 20, up(y1), 11, along(x2), 21, up(y2));
    }

    private void polyline(String layer, boolean closed, double[] points) {
        pair(entities, 0, "POLYLINE", 8, layer, 66, 1, 70, closed ? 1 : 0, 10, 0.0, 20, 0.0, 30, 0.0);
        for (int i = 0; i + 1 < points.length; i += 2) pair(entities, 0, "VERTEX", 8, layer, 10, along(points[i]), 20, up(points[i + 1]));
        pair(entities, 0, "SEQEND", 8, layer);
    }

    /// Curves by their end points, and one point between: the marks that have any are a few mm large.
    private void path(Markup shape) {
        List<Double> points = new ArrayList<>();
        boolean closed = false;
        Matcher part = PATH.matcher(shape.get("d"));
        while (part.find()) {
            String[] said = part.group(2).strip().split("[ ,]+");
            double[] n = new double[part.group(2).isBlank() ? 0 : said.length];
            for (int i = 0; i < n.length; i++) n[i] = Double.parseDouble(said[i]);
            if (part.group(1).equals("Z")) closed = true;
            else {
                if (part.group(1).equals("Q")) points.addAll(List.of((points.get(points.size() - 2) + 2 * n[0] + n[2]) / 4, (points.getLast() + 2 * n[1] + n[3]) / 4));
                points.addAll(List.of(n[n.length - 2], n[n.length - 1]));
            }
        }
        polyline(layer(shape), closed, points.stream().mapToDouble(each -> each).toArray());
    }

    private void text(Markup shape) {
        layers.add("TEXT");
        boolean upright = !shape.get("transform").isEmpty();
        int anchor = switch (shape.get("text-anchor")) {
            case "middle" -> 1;
            case "end" -> 2;
            default -> 0;
        };
        double x = along(at(shape, "x")), y = up(at(shape, "y"));
        pair(entities, 0, "TEXT", 8, "TEXT", 10, x, 20, y, 40, at(shape, "font-size") * Lettering.CAPITAL * ratio, 1, plain(shape.text()), 50, upright ? 90.0 : 0.0);
        if (anchor > 0) pair(entities, 72, anchor, 11, x, 21, y);
    }

    /// The release knows ASCII alone; a degree, and signs beyond it, have spellings of their own.
    private static String plain(String words) {
        StringBuilder said = new StringBuilder();
        words.codePoints().forEach(c -> {
            if (c == '°') said.append("%%d");
            else if (c == '×') said.append('x');
            else if (c >= 0x20 && c < 0x7F) said.append((char) c);
            else if (c == '–') said.append('-');
            else if (c <= 0xFFFF) said.append(String.format(Locale.ROOT, "\\U+%04X", c));
            else said.append('?');
        });
        return said.toString();
    }
}
