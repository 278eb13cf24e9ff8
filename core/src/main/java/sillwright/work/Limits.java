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
    static final double JOINT_SHARE = 0.25;

    /// Pairs of bolts through a sister lie no further apart, mm: 16 in.
    static final double SISTER_BOLT_MM = 406.4;

    /// Stock no thicker than this is a board, mm: 1-1/2 in.
    static final double BOARD_MM = 38.1;
    /// Wood that has softened and holds together is hardened without filler to this depth, mm: 3/8 in.
    static final double HOLDS_TOGETHER_MM = 9.525;
    /// A board wetter than this behind its paint is taken off and primed behind, a fraction.
    static final double WET_BEHIND = 0.20;
    /// Least chance of drying within a year at which resin is thought of.
    static final double DRIES = 0.5;
    static final double PART_SHARE = 0.6;
    /// A replaced part goes this far past the soft wood, mm: 2 in in flat stock.
    static final double PART_PAST_MM = 50.8;
    /// Less old wood than this at an end is not left standing beside a new part, mm: 1 ft.
    static final double STUB_MM = 304.8;
    /// A sister wants this much of the old section to be bolted to.
    static final double SISTER_KEPT = 0.5;
    static final double SISTER_THIN_MM = 38.1;
    /// A sister thicker than this times the old member is no sister.
    static final double SISTER_THICK = 1.5;
    /// Wood thinner than this has no room for nibs, mm.
    static final double NIB_FROM_MM = 38.1;

    /// Room for a hand and a tool beneath a piece, mm: 8 in.
    static final double BENEATH_MM = 203.2;

    static final double URGENT_AREA = 0.75;
    static final double URGENT_AREA_LOW = 0.60;
    static final double URGENT_MODULUS = 0.65;
    /// Above this a piece that comes down can hit someone, mm.
    static final double OVERHEAD_MM = 2000;
}
