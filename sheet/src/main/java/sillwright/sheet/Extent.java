package sillwright.sheet;

import java.util.List;
import java.util.function.ToDoubleFunction;

/// About how high a part stands in half a page, mm, before it is set: near enough to tell which of two columns is the longer, and what a page takes. The measures are those of
/// the dossier's style sheet.
final class Extent {
    private static final double POINT = 25.4 / 72;
    /// Of half a page on the narrower of the two papers, what stands between its halves taken off.
    private static final double WIDE = 88.4;
    private static final double READ = 8.5 * POINT, LINE = 1.14, NOTED = 8.6 * POINT, NOTED_LINE = 1.08;

    private Extent() {}

    static double of(Markup part) {
        return switch (part.name()) {
            case "svg" -> Double.parseDouble(part.get("height").replace("mm", ""));
            case "img" -> 72;
            case "h3" -> Math.ceil(Lettering.widthMm(part.text(), 11.5 * POINT) / WIDE) * 11.5 * POINT * LINE + 2;
            case "h4" -> Math.ceil(Lettering.widthMm(part.text(), 9.6 * POINT) / WIDE) * 9.6 * POINT * LINE + 3.2;
            case "div" -> part.get("class").equals("caution") ? words(part.text(), WIDE - 4) + 2.2 : inside(part) + (part.get("class").equals("repair") ? 1.2 : 0);
            case "p" -> part.get("class").equals("notes") ? lines(part.text(), WIDE, words -> Lettering.narrowMm(words, NOTED)) * NOTED * NOTED_LINE + 1 : words(part.text(), WIDE);
            default -> inside(part);
        };
    }

    /// What parts take that run over the whole page, mm, never less: twice as wide, words need about half the lines.
    static double over(List<Markup> parts) {
        double all = 0;
        for (Markup part : parts) all += of(part) * (part.name().equals("p") ? 0.6 : part.name().equals("div") ? 0.85 : 1) + 2;
        return all;
    }

    /// A paragraph of what is read, with the white beneath it.
    static double words(String words) { return words(words, WIDE); }

    private static double words(String words, double wide) { return words.isBlank() ? 0 : lines(words, wide, run -> Lettering.readingMm(run, READ)) * READ * LINE + 1; }

    /// So many lines as the words break into.
    private static int lines(String words, double wide, ToDoubleFunction<String> measure) {
        Breaks breaks = new Breaks();
        breaks.setText(words);
        int lines = 1, from = 0, last = 0;
        for (int at = breaks.next(); at > 0; at = breaks.next()) {
            if (last > from && measure.applyAsDouble(words.substring(from, at).stripTrailing()) > wide) {
                lines++;
                from = last;
            }
            last = at;
        }
        return lines;
    }

    private static double inside(Markup part) {
        double all = 0;
        for (Node child : part.children())
            switch (child) {
                case Markup element -> all += of(element);
                case Node.Text(var words) -> all += words(words, WIDE);
            }
        return all;
    }
}
