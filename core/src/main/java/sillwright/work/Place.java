package sillwright.work;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.wood.Damage;

/// Places on a member as one points at them: the foot, the head, the left end, 2 ft up.
public final class Place {
    private Place() {}

    /// What the start of a member is called: `foot`.
    public static String start(Member member) {
        return switch (member.run()) {
            case UPRIGHT -> "foot";
            case LEVEL -> "left end";
            case RAKING -> member.slant().map(slant -> slant.own() < 0 ? "head" : "foot").orElse("left end");
            case OUTWARD -> "near end";
        };
    }

    /// What its far end is called: `head`.
    public static String farEnd(Member member) {
        return switch (member.run()) {
            case UPRIGHT -> "head";
            case LEVEL -> "right end";
            case RAKING -> member.slant().map(slant -> slant.own() < 0 ? "foot" : "head").orElse("right end");
            case OUTWARD -> "far end";
        };
    }

    /// `foot of porch post 3`, or `sill, 2 ft from the left end`.
    public static String of(Damage damage, Units units) {
        Member member = damage.member();
        if (damage.atStart()) return start(member) + " of " + member.title();
        if (damage.atFarEnd()) return farEnd(member) + " of " + member.title();
        return member.title() + ", " + at(member, (damage.fromMm() + damage.toMm()) / 2, units);
    }

    /// `6 in up` on an upright, else `2 ft from the left end`: to the half inch or the centimetre, as one points.
    public static String at(Member member, double alongMm, Units units) {
        double step = units == Units.US ? 12.7 : 10;
        String length = Words.length(Math.round(alongMm / step) * step, units);
        return member.run() == Member.Run.UPRIGHT ? length + " up" : length + " from the " + start(member);
    }
}
