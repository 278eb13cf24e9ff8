package sillwright.work;

/// The numbers between one treatment and the next. None is published: each is the program's own choice, and the rule that
/// uses it says so.
final class Limits {
    private Limits() {}

    /// Shallow enough to leave or to paint, mm.
    static final double SHALLOW_MM = 5;
    /// A loaded member this whole may be left, fraction of area.
    static final double LEAVE_AREA = 0.97;

    /// Wood is filled, glued and painted at or below this; 15 to 18 % is common practice, makers differ.
    static final double DRY_ENOUGH = 0.15;

    static final double FILL_SHARE = 1.0 / 3;
    static final double FILL_MM = 38.1;
    static final double FILL_SEEN_ML = 355;
    static final double FILL_HIDDEN_ML = 710;
    static final double FILL_AREA = 0.90;
    static final double FILL_MODULUS = 0.85;
    /// Deeper than this, consolidated wood is built up to its face again, mm.
    static final double FILL_FROM_MM = 3;

    static final double PATCH_SHARE = 0.5;
    static final double PATCH_LENGTH = 0.5;
    static final double PATCH_KEPT = 0.75;
    /// The same for a member that lies on masonry all along and is only pressed, fraction of area.
    static final double PATCH_KEPT_PRESSED = 0.5;
    /// The thinnest dutchman, mm: 3/8 in.
    static final double PATCH_THIN_MM = 9.525;

    static final double BUILD_UP_MM = 300;
    static final double SPLICE_SHARE = 0.7;
    static final double JOINT_SHARE = 0.25;

    static final double URGENT_AREA = 0.75;
    static final double URGENT_AREA_LOW = 0.60;
    static final double URGENT_MODULUS = 0.65;
    /// Above this a piece that comes down can hit someone, mm.
    static final double OVERHEAD_MM = 2000;
}
