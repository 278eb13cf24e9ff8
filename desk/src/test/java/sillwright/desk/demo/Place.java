package sillwright.desk.demo;

import sillwright.walk.Member;
import sillwright.walk.Side;

/// The rectangle a thing fills on the drawing of its side, mm from the side's left end and from grade.
record Place(double left, double right, double bottom, double top) {
    static Place of(Side.Opening hole) {
        return new Place(hole.left().own(), hole.left().own() + hole.width().own(), hole.bottom().own(), hole.bottom().own() + hole.height().own());
    }

    /// A member from its start, the lower left corner of what is seen of it.
    static Place of(Member m) {
        double left = m.left().own(), bottom = m.above().own();
        return switch (m.run()) {
            case UPRIGHT -> new Place(left, left + m.widthMm(), bottom, bottom + m.lengthMm());
            case LEVEL -> new Place(left, left + m.lengthMm(), bottom, bottom + m.widthMm());
            case OUTWARD -> new Place(left, left + m.widthMm(), bottom, bottom + m.depthMm());
            case RAKING -> {
                double slant = Math.toRadians(m.slant().orElseThrow().own());
                double rise = m.lengthMm() * Math.sin(slant), run = m.lengthMm() * Math.cos(slant), upright = m.widthMm() / Math.cos(slant);
                yield new Place(left, left + run, bottom + Math.min(0, rise), bottom + Math.max(0, rise) + upright);
            }
        };
    }

    boolean overlaps(Place other) { return left < other.right && other.left < right && bottom < other.top && other.bottom < top; }
}
