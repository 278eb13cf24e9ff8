package sillwright.walk;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// A piece of wood that does one job: a post, a sill, a stringer.
///
/// Its length runs along the grain from its start, the lower or left end. Its width is what is seen of it from the front,
/// across the grain; its depth goes away from the eye. An outward member (a porch floorboard, a joist) runs away from the
/// eye: its width lies level, its depth upright.
///
/// @param id      unique in the book: `s-post-3`
/// @param side    the side it is on
/// @param kind    what it is called
/// @param title   how people point at it: `porch post 3 from the left`
/// @param role    the heaviest of its jobs
/// @param species name of the species table, or any name where it is not in the table
/// @param run     which way its length lies
/// @param width   mm
/// @param depth   mm
/// @param length  mm
/// @param left    from the side's left end to its start, mm
/// @param above   from grade to its start, mm
/// @param slant   of a raking member, degrees above level; falls to the right when less than nothing
/// @param startEnd the end grain of its start
/// @param farEnd   the end grain of its far end
/// @param coat    the paint on it
/// @param contact what it stands on or lies against
public record Member(String id, String side, MemberKind kind, String title, Role role, String species, Run run, Quantity width, Quantity depth,
                     Quantity length, Quantity left, Quantity above, Optional<Quantity> slant, EndGrain startEnd, EndGrain farEnd, Coat coat,
                     Contact contact) implements Body {
    public Member {
        if (id.isEmpty()) throw new Refused("id", "is empty", "give the member a short name of its own, such as s-post-3");
        Measured.positive("width", width);
        Measured.positive("depth", depth);
        Measured.positive("length", length);
        for (Quantity across : List.of(width, depth))
            if (across.own() > 2000) throw new Refused("width", "{} is wider than any member of a house", "check the unit: in, ft, mm", across);
        if (length.own() > 30000) throw new Refused("length", "{} is longer than any member of a house", "check the unit: ft, in, m", length);
    }

    public enum Role { DECORATIVE, SHEDS_WATER, BEARS_LOAD }

    public enum Run { UPRIGHT, LEVEL, RAKING, OUTWARD }

    public enum EndGrain { BARE, COATED, COVERED }

    public enum Coat { NONE, SOUND, FAILING, STAIN, NOT_KNOWN }

    public enum Contact { NONE, GROUND, MASONRY, CONCRETE, PORCH_FLOOR }

    /// The same with a coat put on.
    Member coated(WorkDone.Coating put) {
        Coat now = switch (put.film()) {
            case STAIN, OIL -> Coat.STAIN;
            case OIL_PAINT, WATER_PAINT, SOLID_STAIN, LIMEWASH, OTHER -> Coat.SOUND;
        };
        return new Member(id, side, kind, title, role, species, run, width, depth, length, left, above, slant, put.ends() ? sealed(startEnd) : startEnd,
                put.ends() ? sealed(farEnd) : farEnd, now, contact);
    }

    private static EndGrain sealed(EndGrain end) { return end == EndGrain.BARE ? EndGrain.COATED : end; }

    public double widthMm() { return width.own(); }

    public double depthMm() { return depth.own(); }

    public double lengthMm() { return length.own(); }

    public double sectionMm2() { return widthMm() * depthMm(); }

    public boolean bearsLoad() { return role == Role.BEARS_LOAD; }

    /// The four long faces, the most seen first.
    public List<Face> faces() {
        return switch (run) {
            case UPRIGHT -> List.of(Face.FRONT, Face.LEFT, Face.RIGHT, Face.BACK);
            case LEVEL, RAKING -> List.of(Face.FRONT, Face.TOP, Face.BOTTOM, Face.BACK);
            case OUTWARD -> List.of(Face.TOP, Face.LEFT, Face.RIGHT, Face.BOTTOM);
        };
    }

    /// How far a face goes across the grain, mm.
    public double acrossMm(Face face) { return onWidth(face) ? widthMm() : depthMm(); }

    /// How much wood lies beneath a face, mm.
    public double throughMm(Face face) { return onWidth(face) ? depthMm() : widthMm(); }

    private boolean onWidth(Face face) {
        return run == Run.OUTWARD ? face == Face.TOP || face == Face.BOTTOM : face == Face.FRONT || face == Face.BACK;
    }

    /// The long face opposite this one.
    public static Face opposite(Face face) {
        return switch (face) {
            case FRONT -> Face.BACK;
            case BACK -> Face.FRONT;
            case LEFT -> Face.RIGHT;
            case RIGHT -> Face.LEFT;
            case TOP -> Face.BOTTOM;
            case BOTTOM -> Face.TOP;
        };
    }

    /// A long face. Along is measured from the member's start. Across is measured from the left edge of an upright
    /// front or back and of an outward top or bottom, from the bottom edge of a level or raking front or back, and from the
    /// edge nearest the eye on every other face (from the bottom edge on an outward left or right).
    public enum Face { FRONT, BACK, LEFT, RIGHT, TOP, BOTTOM }

    /// Which of the four faces of the section a face is: width runs left to right, depth front to back.
    public SectionSide sectionSide(Face face) {
        List<Face> order = switch (run) {
            case UPRIGHT -> List.of(Face.FRONT, Face.BACK, Face.LEFT, Face.RIGHT);
            case LEVEL, RAKING -> List.of(Face.FRONT, Face.BACK, Face.BOTTOM, Face.TOP);
            case OUTWARD -> List.of(Face.BOTTOM, Face.TOP, Face.LEFT, Face.RIGHT);
        };
        return SectionSide.values()[order.indexOf(face)];
    }

    /// The sides of a section drawn with its width level and its depth upright, front below.
    public enum SectionSide { FRONT, BACK, LEFT, RIGHT }
}
