package sillwright.water;

import sillwright.walk.Member;
import sillwright.walk.Side.Opening;

/// A rectangle on a side, mm: from its left end, and above grade.
record Box(double fromMm, double toMm, double lowMm, double highMm) {
    boolean meets(Box other) {
        return fromMm <= other.toMm && other.fromMm <= toMm && lowMm <= other.highMm && other.lowMm <= highMm;
    }

    double midMm() { return (fromMm + toMm) / 2; }

    double lengthMm() { return toMm - fromMm; }

    /// The same, larger by so much to the left and right, below, and above.
    Box wider(double asideMm, double belowMm, double aboveMm) {
        return new Box(fromMm - asideMm, toMm + asideMm, lowMm - belowMm, highMm + aboveMm);
    }

    static Box of(Opening opening) {
        double left = opening.left().own(), bottom = opening.bottom().own();
        return new Box(left, left + opening.width().own(), bottom, bottom + opening.height().own());
    }

    /// Where a member is drawn on its side.
    static Box of(Member member) {
        double left = member.left().own(), above = member.above().own(), length = member.lengthMm(), width = member.widthMm();
        return switch (member.run()) {
            case UPRIGHT -> new Box(left, left + width, above, above + length);
            case LEVEL -> new Box(left, left + length, above, above + width);
            case OUTWARD -> new Box(left, left + width, above, above + member.depthMm());
            case RAKING -> {
                double slant = Math.toRadians(member.slant().map(angle -> angle.own()).orElse(45.0));
                double rise = length * Math.sin(slant);
                yield new Box(left, left + length * Math.cos(slant), above + Math.min(0, rise), above + Math.max(0, rise) + width);
            }
        };
    }
}
