package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Units;
import sillwright.measure.Words;

/// The hatch of each condition of wood, so that a drawing is read without colour.
enum Hatch {
    SOUND("sound"), SOFTENED("softened"), DECAYED("decayed"), HOLLOW("hollow"), NEW_UPRIGHT("new wood"), NEW_LEVEL("new wood"), FILLED("filler"),
    BREAK("capillary break");

    /// Wood soft no deeper than this is sound enough: an eighth of an inch, a thumbnail's mark. Own choice.
    static final double SOUND_MM = 3.175;
    /// Wood soft no deeper than this is drawn as softened, deeper as decayed: half an inch. Own choice.
    static final double SOFTENED_MM = 12.7;
    /// Wood soft for this share of the way through is drawn as hollow. Own choice.
    static final double HOLLOW_SHARE = 0.8;

    private final String words;

    Hatch(String words) { this.words = words; }

    String words() { return words; }

    static Hatch of(double depthMm, double throughMm) {
        if (depthMm < SOUND_MM) return SOUND;
        if (depthMm >= HOLLOW_SHARE * throughMm) return HOLLOW;
        return depthMm < SOFTENED_MM ? SOFTENED : DECAYED;
    }

    /// What the depth classes mean, for the legend: `softened, to 1/2 in deep`.
    String legend(Units units) {
        return switch (this) {
            case SOFTENED -> "soft to " + Words.length(SOFTENED_MM, units);
            case DECAYED -> "decayed deeper";
            case HOLLOW -> "hollow";
            case SOUND, NEW_UPRIGHT, NEW_LEVEL, FILLED, BREAK -> words;
        };
    }

    String id() { return "hatch-" + name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'); }

    /// As a fill; white where the wood is sound.
    String fill() { return this == SOUND ? Ink.PAPER : "url(#" + id() + ")"; }

    /// The pattern, its lines as far apart as a drawing of this fineness wants them.
    ///
    /// @param fine 1 for a detail, less where the wood is small on paper
    Markup pattern(double fine) {
        double step = fine * switch (this) {
            case SOFTENED -> 2.2;
            case DECAYED -> 1.1;
            case HOLLOW -> 1.3;
            case NEW_UPRIGHT, NEW_LEVEL -> 2.4;
            case FILLED -> 1.6;
            case BREAK -> 0.8;
            case SOUND -> 1;
        };
        Markup tile = Markup.of("pattern").with("id", id()).with("patternUnits", "userSpaceOnUse").with("width", step).with("height", step)
                .has(Markup.of("rect").with("width", step).with("height", step).with("fill", Ink.PAPER));
        double pen = Math.max(0.1, 0.17 * Math.sqrt(fine));
        return switch (this) {
            case SOUND -> tile;
            case SOFTENED -> tile.has(line(0, step, step, 0, pen), line(-step / 4, step / 4, step / 4, -step / 4, pen),
                    line(step * 3 / 4, step * 5 / 4, step * 5 / 4, step * 3 / 4, pen));
            case DECAYED -> tile.has(line(0, step, step, 0, pen), line(0, 0, step, step, pen), corner(0, 0, pen), corner(step, 0, pen),
                    corner(0, step, pen), corner(step, step, pen));
            case HOLLOW -> tile.has(Markup.of("circle").with("cx", step / 2).with("cy", step / 2).with("r", 0.21 * Math.max(0.7, fine))
                    .with("fill", Ink.BLACK));
            case NEW_UPRIGHT -> tile.has(line(step * 0.2, 0, step * 0.2, step, pen), line(step * 0.45, 0, step * 0.45, step, pen * 0.7),
                    line(step * 0.9, 0, step * 0.9, step, pen));
            case NEW_LEVEL -> tile.has(line(0, step * 0.2, step, step * 0.2, pen), line(0, step * 0.45, step, step * 0.45, pen * 0.7),
                    line(0, step * 0.9, step, step * 0.9, pen));
            case FILLED -> tile.has(dot(step * 0.25, step * 0.3), dot(step * 0.75, step * 0.8));
            case BREAK -> tile.has(Markup.of("rect").with("width", step).with("height", step).with("fill", Ink.BLACK));
        };
    }

    private static Markup line(double x1, double y1, double x2, double y2, double pen) {
        return Markup.of("line").with("x1", x1).with("y1", y1).with("x2", x2).with("y2", y2).with("stroke", Ink.BLACK).with("stroke-width", pen);
    }

    /// A speck where the lines of neighbouring tiles meet, so that no gap shows there.
    private static Markup corner(double x, double y, double pen) {
        return Markup.of("circle").with("cx", x).with("cy", y).with("r", pen * 0.6).with("fill", Ink.BLACK);
    }

    private static Markup dot(double x, double y) { return Markup.of("circle").with("cx", x).with("cy", y).with("r", 0.13).with("fill", Ink.BLACK); }

    static List<Markup> patterns(double fine) {
        List<Markup> all = new ArrayList<>();
        for (Hatch hatch : values()) if (hatch != SOUND) all.add(hatch.pattern(fine));
        return all;
    }
}
