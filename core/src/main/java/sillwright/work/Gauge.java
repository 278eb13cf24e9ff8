package sillwright.work;

import sillwright.measure.Units;
import sillwright.measure.Words;

/// The numbers that treatments are held against. Each knows how it is said when it passes a limit.
///
/// `alike` tells whether every treatment of one damage is held against the same number, so that to change it is to change it for all.
enum Gauge {
    DEPTH(Sort.LENGTH, true, "if it were soft to more than {}", "if it were soft no deeper than {}"),
    AREA_KEPT(Sort.SHARE, true, "if it kept {} of its section or more", "if it kept less than {} of its section"),
    MODULUS_KEPT(Sort.SHARE, true, "if it kept {} of its bending modulus or more", "if it kept less than {} of its bending modulus"),
    SOFT_VOLUME(Sort.VOLUME, true, "if more than {} were soft", "if no more than {} were soft"),
    LOST_VOLUME(Sort.VOLUME, true, "if more than {} of wood were gone", "if no wood were gone"),
    FACES_SOFT(Sort.COUNT, true, "if it were soft on more than {} faces", "if it were soft on no more than {} faces"),
    MOISTURE(Sort.SHARE, true, "if it held more than {} of water", "if it held {} of water or less"),
    DRIES(Sort.SHARE, true, "if it were {} likely to dry within a year", "if it were less than {} likely to dry within a year"),
    WARMEST(Sort.TEMPERATURE, true, "if a month there reached {}", "if no month there reached {}"),
    CHECK_WIDTH(Sort.LENGTH, true, "if its checks were wider than {}", "if its checks were no wider than {}"),
    DEPTH_UNKNOWN(Sort.YES, true, "if a probe ran out in it", "if a longer probe found its end"),
    IN_GROUND(Sort.YES, true, "if it stood in the ground", "if it were clear of the ground"),
    COAT_POOR(Sort.YES, true, "if its paint were no longer sound", "if its paint were sound"),
    WATER_UNKNOWN(Sort.YES, true, "if its water were not known", "if its water were found"),
    HOLLOW(Sort.YES, true, "if it were hollow", "if it were opened up and found whole"),
    BEARS_LOAD(Sort.YES, true, "if it bore a load", "if it bore no load"),
    BENDING(Sort.YES, true, "if its load bent it", "if its load did not bend it"),
    STRETCHED(Sort.YES, true, "if it lay on the stretched side", "if it lay off the stretched side"),
    LIES_WET(Sort.YES, true, "if it lay level in the rain", "if it stood upright"),
    ANGLED(Sort.YES, true, "if it ran at an angle", "if it ran straight"),
    NOT_AT_END(Sort.YES, true, "if it lay away from both ends", "if it lay at an end"),
    ORNAMENT_SEEN(Sort.YES, true, "if it were ornament in plain view", "if it were plain or out of view"),
    CLEARANCE(Sort.LENGTH, true, "if there were {} of room beneath it", "if there were less than {} of room beneath it"),
    PUSH(Sort.SHARE, false, "if a push used more than {} of it", "if a push used no more than {} of it"),
    THICKNESS(Sort.LENGTH, true, "if it were {} thick or more", "if it were thinner than {}"),
    RENEWED(Sort.SHARE, false, "if it renewed more than {} of the piece", "if it renewed no more than {} of the piece"),
    REACH(Sort.SHARE, false, "if the joint reached past {} of the length", "if the joint stayed within {} of the length"),
    OPENING_DEPTH(Sort.SHARE, false, "if the opening went more than {} through", "if the opening went no more than {} through"),
    OPENING_LENGTH(Sort.SHARE, false, "if the opening were longer than {} of the piece", "if the opening were no longer than {} of the piece"),
    HEIGHT(Sort.LENGTH, false, "if the base were taller than {}", "if the base were no taller than {}"),
    USE(Sort.SHARE, false, "if its load used more than {} of it", "if its load used no more than {} of it"),
    STUB(Sort.LENGTH, false, "if {} of old wood or more were left at the end", "if less than {} of old wood were left at the end"),
    SISTER_THICKNESS(Sort.RATIO, false, "if a sister had to be more than {} times as thick", "if a sister {} times as thick were enough");

    private enum Sort { LENGTH, SHARE, VOLUME, COUNT, TEMPERATURE, RATIO, YES }

    private final Sort sort;
    private final boolean alike;
    private final String over;
    private final String under;

    Gauge(Sort sort, boolean alike, String over, String under) {
        this.sort = sort;
        this.alike = alike;
        this.over = over;
        this.under = under;
    }

    boolean alike() { return alike; }

    /// Whether a further look, another season or another cut could change it; a fact of the piece cannot.
    boolean mayChange() {
        return switch (this) {
            case BEARS_LOAD, BENDING, LIES_WET, ANGLED, NOT_AT_END, ORNAMENT_SEEN, THICKNESS, WARMEST, CLEARANCE -> false;
            default -> true;
        };
    }

    boolean yesNo() { return sort == Sort.YES; }

    /// `were it soft to more than 1-1/2 in`.
    String passing(double limit, boolean up, Units units) { return (up ? over : under).replace("{}", said(limit, units)); }

    String said(double value, Units units) {
        return switch (sort) {
            case LENGTH -> Words.length(value, units);
            case SHARE -> Words.percent(value);
            case VOLUME -> Words.wood(value, units);
            case COUNT -> Words.number(value, 0);
            case TEMPERATURE -> Words.temperature(value, units);
            case RATIO -> Words.number(value, 1);
            case YES -> value > 0 ? "yes" : "no";
        };
    }
}
