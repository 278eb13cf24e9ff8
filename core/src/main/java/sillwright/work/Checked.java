package sillwright.work;

import java.util.List;

import sillwright.walk.Member;
import sillwright.walk.OpenChecks;
import sillwright.wood.Damage;
import sillwright.wood.Interval;
import sillwright.wood.SectionLeft;

/// Open checks in wood that no probe found soft, as something to be dealt with.
final class Checked {
    private Checked() {}

    /// From the start of the first group to the end of the last, on the face that has most of them; nothing of the section is lost.
    static Damage of(Member member, List<OpenChecks> groups) {
        double from = groups.stream().mapToDouble(group -> group.spot().alongMm()).min().orElseThrow(), to = groups.stream().mapToDouble(OpenChecks::toMm).max().orElseThrow();
        OpenChecks most = groups.getFirst();
        for (OpenChecks group : groups) if (group.count() * group.lengthMm() > most.count() * most.lengthMm()) most = group;
        double deepest = groups.stream().mapToDouble(OpenChecks::depthMm).max().orElseThrow(), area = 0;
        for (OpenChecks group : groups) area += Math.min(group.count() * SKIN_MM, member.acrossMm(group.spot().face())) * group.lengthMm();
        return new Damage(member.id() + "/checks", member, most.spot().face(), from, to, deepest, Interval.exactly(0), area, SectionLeft.whole((from + to) / 2), false);
    }

    /// Skin that goes with each check, across it, mm: an inch. Own choice.
    private static final double SKIN_MM = 25.4;
}
