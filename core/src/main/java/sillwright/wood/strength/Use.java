package sillwright.wood.strength;

import sillwright.measure.Unit;

/// What a size is graded as. Old wood is often full size; it goes by what it measures.
public enum Use {
    /// 2 to 4 in thick by name.
    LUMBER("lumber", "dimension lumber"),
    /// Posts and timbers: 5 × 5 in and up by name, width within 2 in of the thickness.
    POST("post", "posts and timbers"),
    /// Beams and stringers: 5 in thick and up by name, wider than that.
    BEAM("beam", "beams and stringers");

    /// Half a millimetre for sizes typed in the other units.
    private static final double SLACK_MM = 0.5;

    private final String word;
    private final String said;

    Use(String word, String said) {
        this.word = word;
        this.said = said;
    }

    String word() { return word; }

    public String said() { return said; }

    /// Of a section by its two sides, in either order, as first sawn: decay does not change what it was graded as.
    ///
    /// Source: *NDS* 4.1.3, with 5 in by name dressed to 4-1/2 in (from memory).
    public static Use of(double oneMm, double otherMm) {
        double thick = Math.min(oneMm, otherMm), wide = Math.max(oneMm, otherMm);
        if (thick < Unit.INCH.toOwn(4.5) - SLACK_MM) return LUMBER;
        return wide - thick > Unit.INCH.toOwn(2) + SLACK_MM ? BEAM : POST;
    }

    /// True where a side is too thin for the tables, under 2 in by name: a board.
    public static boolean isBoard(double oneMm, double otherMm) { return Math.min(oneMm, otherMm) < Unit.INCH.toOwn(1.5) - SLACK_MM; }

    /// The width by name that a measured width belongs to: 4, 5, 6, 8, 10, 12 or 14 in; 14 stands for more.
    static int namedInches(double wideMm) {
        double inches = Unit.INCH.fromOwn(wideMm - SLACK_MM);
        for (int named : new int[] {4, 5, 6, 8, 10, 12}) if (inches <= named) return named;
        return 14;
    }

    /// True of lumber 4 in thick by name, more than 3 in measured.
    static boolean isFourThick(double oneMm, double otherMm) { return Math.min(oneMm, otherMm) > Unit.INCH.toOwn(3) + SLACK_MM; }
}
