package sillwright.sheet;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDTilingPattern;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;

/// A drawing set into a page of PDF: the few shapes of SVG that a [Canvas] draws, each as the operators of ISO 32000-1 that draw the same. A shape that it does not know is refused, so that none is lost.
final class Plate {
    /// Units of the form to a millimetre: pixels of a style sheet, 96 to the inch.
    static final double UNITS = 96 / 25.4;

    /// How far the handles of a curve stand out that is as good as a quarter circle, as a share of its radius. Source: (4/3)(√2 - 1), a standard of drawing programs (from memory).
    private static final double QUARTER = 0.5522847;

    private static final Pattern PATH = Pattern.compile("([A-Za-z])([^A-Za-z]*)");

    private final PDFont letter;
    private final PDResources resources = new PDResources();
    private final AffineTransform paper;
    private final StringBuilder out = new StringBuilder();
    private final Map<String, COSName> hatches = new HashMap<>(), veils = new HashMap<>();
    private final COSName letterName;
    /// What the pen and the fill were set to last.
    private String fill = "", stroke = "", width = "", dashes = "";

    private Plate(PDFont letter, AffineTransform paper) {
        this.letter = letter;
        this.paper = paper;
        this.letterName = resources.add(letter);
    }

    /// Draws into a form, in place of what it holds.
    ///
    /// @param svg    one unit to a millimetre
    /// @param letter of all its words
    static void draw(Markup svg, PDFont letter, PDFormXObject form) throws IOException {
        double wide = mm(svg.get("width")) * UNITS, high = mm(svg.get("height")) * UNITS;
        Plate plate = new Plate(letter, new AffineTransform(UNITS, 0, 0, -UNITS, 0, high));
        form.setBBox(new PDRectangle((float) wide, (float) high));
        plate.out.append(Markup.number(UNITS, 6)).append(" 0 0 ").append(Markup.number(-UNITS, 6)).append(" 0 ").append(Markup.number(high, 4)).append(" cm\n");
        for (Node child : svg.children()) if (child instanceof Markup shape) plate.shape(shape);
        form.setResources(plate.resources);
        try (OutputStream to = form.getStream().createOutputStream(COSName.FLATE_DECODE)) {
            to.write(plate.out.toString().getBytes(StandardCharsets.US_ASCII));
        }
    }

    static double mm(String said) { return Double.parseDouble(said.replace("mm", "")); }

    private void shape(Markup shape) throws IOException {
        switch (shape.name()) {
            case "title", "desc", "style" -> {}
            case "defs" -> { for (Markup hatch : shape.all("pattern")) hatch(hatch); }
            case "g" -> { for (Node child : shape.children()) if (child instanceof Markup one) shape(one); }
            case "text" -> text(shape);
            case "line" -> painted(shape, path("", shape.get("x1"), shape.get("y1"), "m", shape.get("x2"), shape.get("y2"), "l"), false);
            case "polyline" -> painted(shape, points(shape), true);
            case "polygon" -> painted(shape, points(shape) + "h ", true);
            case "rect" -> painted(shape, rect(shape), true);
            case "circle" -> painted(shape, rounded(at(shape, "cx") - at(shape, "r"), at(shape, "cy") - at(shape, "r"), 2 * at(shape, "r"), 2 * at(shape, "r"), at(shape, "r")), true);
            case "path" -> painted(shape, curves(shape.get("d")), true);
            default -> throw new IllegalStateException("no drawing has a " + shape.name());
        }
    }

    private static double at(Markup shape, String attribute) { return shape.get(attribute).isEmpty() ? 0 : Double.parseDouble(shape.get(attribute)); }

    private static String path(String before, Object... parts) {
        StringBuilder all = new StringBuilder(before);
        for (Object part : parts) all.append(part instanceof Double number ? Markup.number(number, 3) : part).append(' ');
        return all.toString();
    }

    private static String points(Markup shape) {
        StringBuilder all = new StringBuilder();
        String then = " m ";
        for (String point : shape.get("points").split(" ")) {
            all.append(point.replace(',', ' ')).append(then);
            then = " l ";
        }
        return all.toString();
    }

    private static String rect(Markup shape) {
        double x = at(shape, "x"), y = at(shape, "y"), wide = at(shape, "width"), high = at(shape, "height"), round = Math.min(at(shape, "rx"), Math.min(wide, high) / 2);
        return round > 0 ? rounded(x, y, wide, high, round) : path("", x, y, wide, high, "re");
    }

    /// A rectangle with round corners; a circle where they meet.
    private static String rounded(double x, double y, double wide, double high, double r) {
        double right = x + wide, bottom = y + high, k = r * (1 - QUARTER);
        return path("", x + r, y, "m", right - r, y, "l", right - k, y, right, y + k, right, y + r, "c", right, bottom - r, "l", right, bottom - k, right - k, bottom, right - r, bottom, "c",
                x + r, bottom, "l", x + k, bottom, x, bottom - k, x, bottom - r, "c", x, y + r, "l", x, y + k, x + k, y, x + r, y, "c", "h");
    }

    private static String curves(String said) {
        StringBuilder all = new StringBuilder();
        double x = 0, y = 0;
        Matcher part = PATH.matcher(said);
        while (part.find()) {
            String[] words = part.group(2).strip().split("[ ,]+");
            double[] n = new double[part.group(2).isBlank() ? 0 : words.length];
            for (int i = 0; i < n.length; i++) n[i] = Double.parseDouble(words[i]);
            all.append(switch (part.group(1)) {
                case "M" -> path("", n[0], n[1], "m");
                case "L" -> path("", n[0], n[1], "l");
                case "C" -> path("", n[0], n[1], n[2], n[3], n[4], n[5], "c");
                case "Q" -> path("", x + (n[0] - x) * 2 / 3, y + (n[1] - y) * 2 / 3, n[2] + (n[0] - n[2]) * 2 / 3, n[3] + (n[1] - n[3]) * 2 / 3, n[2], n[3], "c");
                case "A" -> arc(x, y, n[0], n[3] != 0, n[4] != 0, n[5], n[6]);
                case "Z" -> "h ";
                default -> throw new IllegalStateException("no drawing has a path by " + part.group(1));
            });
            if (n.length > 1) {
                x = n[n.length - 2];
                y = n[n.length - 1];
            }
        }
        return all.toString();
    }

    /// An arc of a circle in strokes of a quarter turn at most; widened to half a circle where its ends lie too far apart, as SVG has it.
    private static String arc(double x, double y, double radius, boolean large, boolean clockwise, double toX, double toY) {
        double dx = toX - x, dy = toY - y, apart = Math.hypot(dx, dy);
        if (apart < 1e-9) return "";
        double r = Math.max(radius, apart / 2), off = Math.sqrt(Math.max(0, r * r - apart * apart / 4)) * (large == clockwise ? -1 : 1);
        double cx = x + dx / 2 - off * dy / apart, cy = y + dy / 2 + off * dx / apart, from = Math.atan2(y - cy, x - cx), turn = Math.atan2(toY - cy, toX - cx) - from;
        if (clockwise && turn < 0) turn += 2 * Math.PI;
        if (!clockwise && turn > 0) turn -= 2 * Math.PI;
        int parts = (int) Math.ceil(Math.abs(turn) / (Math.PI / 2) - 1e-9);
        double each = turn / parts, pull = r * 4 / 3 * Math.tan(each / 4);
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < parts; i++) {
            double a = from + i * each, b = a + each;
            all.append(path("", cx + r * Math.cos(a) - pull * Math.sin(a), cy + r * Math.sin(a) + pull * Math.cos(a), cx + r * Math.cos(b) + pull * Math.sin(b), cy + r * Math.sin(b) - pull * Math.cos(b),
                    cx + r * Math.cos(b), cy + r * Math.sin(b), "c"));
        }
        return all.toString();
    }

    /// Fills and strokes a path as the shape says; black where it names no fill, as SVG has it.
    private void painted(Markup shape, String path, boolean encloses) throws IOException {
        String filled = !encloses ? "none" : shape.get("fill").isEmpty() ? Ink.BLACK : shape.get("fill"), veil = shape.get("fill-opacity");
        boolean fills = !filled.equals("none"), strokes = !shape.get("stroke").isEmpty() && !shape.get("stroke").equals("none");
        if (!fills && !strokes) return;
        if (fills) fill(filled);
        if (strokes) pen(shape);
        if (!veil.isEmpty()) out.append("q /").append(veil(veil).getName()).append(" gs ");
        out.append(path).append(fills && strokes ? "B" : fills ? "f" : "S").append(veil.isEmpty() ? "\n" : " Q\n");
    }

    private void fill(String wanted) {
        if (wanted.equals(fill)) return;
        fill = wanted;
        if (wanted.startsWith("url(#")) out.append("/Pattern cs /").append(hatches.get(wanted.substring(5, wanted.length() - 1)).getName()).append(" scn ");
        else out.append(colour(wanted)).append("rg ");
    }

    private void pen(Markup shape) {
        if (!shape.get("stroke").equals(stroke)) out.append(colour(stroke = shape.get("stroke"))).append("RG ");
        if (!shape.get("stroke-width").equals(width)) out.append(width = shape.get("stroke-width")).append(" w ");
        if (!shape.get("stroke-dasharray").equals(dashes)) out.append('[').append(dashes = shape.get("stroke-dasharray")).append("] 0 d ");
    }

    /// `#1c1a17` as three shares of one.
    private static String colour(String said) {
        if (!said.matches("#[0-9a-f]{6}")) throw new IllegalStateException("no drawing has the colour " + said);
        return path("", Integer.parseInt(said.substring(1, 3), 16) / 255.0, Integer.parseInt(said.substring(3, 5), 16) / 255.0, Integer.parseInt(said.substring(5), 16) / 255.0);
    }

    private COSName veil(String opacity) {
        return veils.computeIfAbsent(opacity, _ -> {
            PDExtendedGraphicsState state = new PDExtendedGraphicsState();
            state.setNonStrokingAlphaConstant(Float.parseFloat(opacity));
            return resources.add(state);
        });
    }

    /// A hatch is a tile laid from the corner of the paper; its strokes are no content of their own, and are marked so.
    private void hatch(Markup hatch) throws IOException {
        float wide = (float) at(hatch, "width"), high = (float) at(hatch, "height");
        PDTilingPattern tile = new PDTilingPattern();
        tile.setPaintType(PDTilingPattern.PAINT_COLORED);
        tile.setTilingType(PDTilingPattern.TILING_CONSTANT_SPACING_FASTER_TILING);
        tile.setBBox(new PDRectangle(wide, high));
        tile.setXStep(wide);
        tile.setYStep(high);
        tile.setMatrix(paper);
        tile.setResources(new PDResources());
        Plate strokes = new Plate(letter, paper);
        for (Node child : hatch.children()) if (child instanceof Markup shape) strokes.shape(shape);
        try (OutputStream to = tile.getContentStream().createOutputStream(COSName.FLATE_DECODE)) {
            to.write(("/Artifact BMC\n" + strokes.out + "EMC\n").getBytes(StandardCharsets.US_ASCII));
        }
        hatches.put(hatch.get("id"), resources.add(tile));
    }

    /// Words, level or climbing the page; their place is their start, middle or end.
    private void text(Markup shape) throws IOException {
        String words = shape.text();
        double size = at(shape, "font-size"), x = at(shape, "x"), y = at(shape, "y");
        boolean upright = !shape.get("transform").isEmpty();
        if (upright && !shape.get("transform").equals("rotate(-90 " + shape.get("x") + " " + shape.get("y") + ")")) throw new IllegalStateException("no drawing turns its words by " + shape.get("transform"));
        double back = Lettering.widthMm(words, size) * switch (shape.get("text-anchor")) {
            case "middle" -> 0.5;
            case "end" -> 1;
            default -> 0;
        };
        fill(shape.get("fill"));
        out.append("BT /").append(letterName.getName()).append(' ').append(shape.get("font-size")).append(upright ? " Tf 0 -1 -1 0 " : " Tf 1 0 0 -1 ")
                .append(path("", upright ? x : x - back, upright ? y + back : y)).append("Tm <");
        for (int i = 0; i < words.length(); i += Character.charCount(words.codePointAt(i))) letter.addToSubset(words.codePointAt(i));
        for (byte one : letter.encode(words)) out.append(Character.forDigit(one >> 4 & 15, 16)).append(Character.forDigit(one & 15, 16));
        out.append("> Tj ET\n");
    }
}
