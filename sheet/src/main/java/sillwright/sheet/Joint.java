package sillwright.sheet;

import sillwright.walk.Member;
import sillwright.wood.Damage;
import sillwright.work.Treatment;

/// Where a treatment cuts a member: the stretch that is renewed, and how its joint runs.
///
/// @param end     the end of the member that is renewed: 0, or its length; where nothing is cut off, the nearer one
/// @param full    where the joint starts, mm from the start: up to here the new wood is whole
/// @param tip     where it ends: beyond it the old wood is whole; the same as `full` for a square joint
/// @param sloped  whether the joint is a slope
/// @param lapped  whether each part is cut half through and laid over the other
/// @param through whether a slope or a lap runs from the worst face to the one behind it; else it is seen on the worst face
record Joint(double end, double full, double tip, boolean sloped, boolean lapped, boolean through) {
    static Joint of(Damage damage, Treatment treatment) {
        return switch (treatment) {
            case Treatment.ScarfSplice(var newMm, var slope, var scarfMm, _) -> {
                double thick = scarfMm / Math.max(1, slope);
                Member member = damage.member();
                boolean through = Math.abs(member.throughMm(damage.worst()) - thick) <= Math.abs(member.acrossMm(damage.worst()) - thick);
                yield from(damage, newMm - Math.min(newMm, scarfMm), newMm, true, false, through);
            }
            case Treatment.HalfLap(var newMm, var lapMm) -> from(damage, newMm - Math.min(newMm, lapMm), newMm, false, true, true);
            case Treatment.ButtSplice(var newMm) -> from(damage, newMm, newMm, false, false, false);
            case Treatment.BuildUp(var heightMm) -> from(damage, heightMm, heightMm, false, false, false);
            case Treatment.Replace _ -> from(damage, damage.member().lengthMm(), damage.member().lengthMm(), false, false, false);
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Reseat _, Treatment.Consolidate _, Treatment.Fill _, Treatment.Dutchman _, Treatment.Sister _, Treatment.ReplacePart _ -> from(damage, 0, 0, false, false, false);
        };
    }

    private static Joint from(Damage damage, double fullMm, double tipMm, boolean sloped, boolean lapped, boolean through) {
        double length = damage.member().lengthMm(), full = Math.min(fullMm, length), tip = Math.min(tipMm, length);
        boolean start = damage.atStart() || !damage.atFarEnd() && damage.fromMm() + damage.toMm() <= length;
        return start ? new Joint(0, full, tip, sloped, lapped, through) : new Joint(length, length - full, length - tip, sloped, lapped, through);
    }

    boolean cuts() { return tip != end; }

    double newMm() { return Math.abs(tip - end); }

    /// Whether the joint runs on along the member, as a slope or a lap.
    boolean runs() { return sloped || lapped; }

    double scarfMm() { return Math.abs(tip - full); }
}
