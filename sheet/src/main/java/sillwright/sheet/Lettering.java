package sillwright.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/// The letter of the drawings, measured from the font itself, so that what a label covers is known before it is set down.
final class Lettering {
    /// The drawing letter first; what stands in for it is narrow, so that the labels still fit.
    static final String FAMILY = "'Routed Gothic', 'Liberation Sans Narrow', 'Arial Narrow', sans-serif";
    static final String FILE = "/fonts/routed-gothic.ttf";
    /// Height of a capital as a share of the type size, from the font's own table.
    static final double CAPITAL = 736.0 / 1024;
    /// How far a letter reaches below its line, as a share of the type size.
    static final double BELOW = 0.23;

    private static final Lettering ROUTED = read(FILE), READING = read("/fonts/CharisSIL-Regular.ttf"), NARROW = read("/fonts/routed-gothic-narrow.ttf");

    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double unitsPerEm;

    private Lettering(TrueTypeFont font) throws IOException {
        this.font = font;
        this.glyphs = font.getUnicodeCmapLookup();
        this.unitsPerEm = font.getUnitsPerEm();
    }

    static byte[] bytes(String resource) {
        try (InputStream in = Lettering.class.getResourceAsStream(resource)) {
            if (in == null) throw new IllegalStateException("the font " + resource + " is not in the jar");
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Lettering read(String resource) {
        try {
            return new Lettering(new TTFParser().parse(new RandomAccessReadBuffer(bytes(resource))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /// How wide words stand on paper, mm.
    ///
    /// @param size of the type, mm
    static double widthMm(String words, double size) { return ROUTED.width(sayable(words)) * size; }

    /// How wide words stand in the letter of what is read, mm.
    ///
    /// @param size of the type, mm
    static double readingMm(String words, double size) { return READING.width(words) * size; }

    /// How wide words stand in the narrow letter of tables and notes, mm.
    static double narrowMm(String words, double size) { return NARROW.width(words) * size; }

    private synchronized double width(String words) {
        try {
            double units = 0;
            for (int c : words.codePoints().toArray()) units += font.getAdvanceWidth(glyphs.getGlyphId(c));
            return units / unitsPerEm;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static boolean has(int codePoint) { return ROUTED.glyphs.getGlyphId(codePoint) != 0; }

    /// The words with every sign that the drawing letter lacks written out in signs that it has.
    static String sayable(String words) {
        StringBuilder said = new StringBuilder();
        words.codePoints().forEach(c -> {
            String instead = INSTEAD.get(c);
            if (instead != null) said.append(instead);
            else if (has(c)) said.appendCodePoint(c);
            else said.append(Character.isWhitespace(c) ? ' ' : '?');
        });
        return said.toString();
    }

    private static final Map<Integer, String> INSTEAD = instead();

    private static Map<Integer, String> instead() {
        Map<Integer, String> all = new LinkedHashMap<>();
        String[] pairs = {"≥", "at least ", "≤", "at most ", "≈", "about ", "⅓", "1/3", "⅔", "2/3", "⅛", "1/8", "⅜", "3/8", "⅝", "5/8", "⅞", "7/8",
                "½", "1/2",
                "¼", "1/4", "¾", "3/4", "₂", "2", "√", "root ", "∅", "dia. ", "⌀", "dia. ", "≠", "not ", "∞", "without end"};
        for (int i = 0; i < pairs.length; i += 2) if (!has(pairs[i].codePointAt(0)) || pairs[i + 1].contains("/")) all.put(pairs[i].codePointAt(0),
                pairs[i + 1]);
        return all;
    }

    /// The words cut to a width, with dots where they were cut.
    static String fitted(String words, double size, double widthMm) {
        String said = sayable(words);
        if (widthMm(said, size) <= widthMm) return said;
        int keep = said.length();
        while (keep > 1 && widthMm(said.substring(0, keep).strip() + "...", size) > widthMm) keep--;
        return said.substring(0, keep).strip() + "...";
    }

    /// The letters that a drawing uses, and no others, as a font to carry inside its file.
    static String fontFace(String letters) {
        return "@font-face{font-family:'Routed Gothic';src:url(data:font/ttf;base64," + Base64.getEncoder().encodeToString(ROUTED.subset(letters))
                + ") format('truetype')}";
    }

    private synchronized byte[] subset(String letters) {
        try {
            TTFSubsetter subsetter = new TTFSubsetter(font);
            letters.codePoints().filter(Lettering::has).sorted().distinct().forEach(subsetter::add);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subsetter.writeToStream(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
