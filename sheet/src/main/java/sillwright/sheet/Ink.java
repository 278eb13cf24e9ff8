package sillwright.sheet;

/// The look of every drawing: black ink on white paper, three widths of pen, and one colour for what must be acted upon.
/// All is legible in black alone; colour only repeats what a hatch, a dash or a word already says.
final class Ink {
    private Ink() {}

    static final String BLACK = "#1c1a17";
    static final String GREY = "#6d675e";
    static final String PAPER = "#ffffff";
    /// A red like iron oxide paint, dark enough to read as black on a grey printer.
    static final String ACT = "#9c3b1f";

    /// How a line is drawn: its colour, its width on paper in mm, its dashes (empty for none).
    record Pen(String colour, double widthMm, String dashes) {
        Pen in(String other) { return new Pen(other, widthMm, dashes); }

        Markup on(Markup shape) {
            Markup drawn = shape.with("stroke", colour).with("stroke-width", widthMm);
            return dashes.isEmpty() ? drawn : drawn.with("stroke-dasharray", dashes);
        }
    }

    /// Closes the joint between two shapes that are one.
    static final Pen SEAM = new Pen(PAPER, 0.06, "");
    static final Pen DOUBT = new Pen(BLACK, 0.15, "");
    static final Pen NEXT = new Pen(ACT, 0.35, "");
    static final Pen HAIR = new Pen(GREY, 0.13, "");
    static final Pen THIN = new Pen(BLACK, 0.18, "");
    static final Pen FIRM = new Pen(BLACK, 0.30, "");
    static final Pen BOLD = new Pen(BLACK, 0.55, "");
    /// What is hidden from the eye.
    static final Pen HIDDEN = new Pen(BLACK, 0.18, "1.4 0.9");
    /// What nobody probed.
    static final Pen UNKNOWN = new Pen(GREY, 0.18, "0.5 0.9");
    /// A sound-wood line, and the line to cut to.
    static final Pen CUT = new Pen(ACT, 0.40, "3.2 0.8 0.6 0.8");
    static final Pen ACTING = new Pen(ACT, 0.30, "");
    static final Pen LEADER = new Pen(ACT, 0.15, "");

    /// Heights of type, mm. Capitals of the drawing letter stand 0.719 of it high, so the least stands 2.2 mm on paper.
    static final double SMALL = 3.1;
    static final double PLAIN = 3.4;
    static final double LARGE = 4.6;
}
