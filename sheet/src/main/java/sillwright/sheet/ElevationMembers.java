package sillwright.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.walk.Member;
import sillwright.walk.Member.Face;
import sillwright.walk.ProbeReading;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.DepthMap;

/// Every member at its place, hatched by what the probe found.
final class ElevationMembers {
    private final Canvas canvas;
    private final View view;
    private final Assessment assessment;
    private final List<Member> members;

    ElevationMembers(Canvas canvas, View view, Assessment assessment, List<Member> members) {
        this.canvas = canvas;
        this.view = view;
        this.assessment = assessment;
        this.members = members;
    }

    /// The large first, so that the small stand in front of them.
    void draw() {
        members.stream().sorted(Comparator.comparingDouble((Member member) -> -member.widthMm() * View.seenLengthMm(member))).forEach(this::draw);
    }

    private void draw(Member member) {
        Optional<Condition> condition = Optional.ofNullable(assessment.wood().of(member.id()));
        boolean probed = condition.isPresent() && condition.get().state() != Condition.State.NOT_PROBED;
        double[] whole = view.stretch(member, 0, View.seenLengthMm(member));
        canvas.pointed("data-member", member.id(), Ink.PAPER, probed ? Ink.FIRM : Ink.UNKNOWN, whole);
        condition.ifPresent(known -> hatch(known, member));
        if (condition.isPresent() && condition.get().needsWork()) canvas.polygon("none", Ink.FIRM, whole);
        if (member.run() != Member.Run.OUTWARD) probes(member);
    }

    private void hatch(Condition condition, Member member) {
        if (condition.damages().isEmpty()) return;
        if (member.run() == Member.Run.OUTWARD) {
            double deepest = condition.damages().stream().mapToDouble(Damage::deepestMm).max().orElse(0);
            canvas.polygon(shown(Hatch.of(deepest, member.depthMm())).fill(), Ink.THIN, view.stretch(member, 0, member.depthMm()));
            return;
        }
        Optional<DepthMap> front = condition.maps().stream().filter(map -> map.face() == Face.FRONT).findFirst();
        front.ifPresent(map -> columns(map, member));
        for (Damage damage : condition.damages()) {
            double[] stretch = view.stretch(member, damage.fromMm(), damage.toMm());
            if (damage.ranOut() && condition.state() == Condition.State.HOLLOW) canvas.polygon(Hatch.HOLLOW.fill(), Ink.HIDDEN, stretch);
            else if (front.isEmpty()) canvas.polygon("none", Ink.HIDDEN, stretch);
        }
    }

    /// Neighbouring columns of one class are drawn as one piece, each by the deepest place in it.
    private void columns(DepthMap map, Member member) {
        double cell = map.lengthMm() / map.columns();
        int from = 0;
        for (int column = 1; column <= map.columns(); column++) {
            if (column < map.columns() && classOf(map, column) == classOf(map, from)) continue;
            Hatch hatch = classOf(map, from);
            if (hatch != Hatch.SOUND) canvas.add(polygon(hatch, view.stretch(member, from * cell, column * cell)));
            from = column;
        }
    }

    private static Markup polygon(Hatch hatch, double[] corners) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < corners.length; i += 2) points.append(i == 0 ? ""
                : " ").append(Markup.number(corners[i])).append(',').append(Markup.number(corners[i + 1]));
        return Markup.of("polygon").with("points", points).with("fill", hatch.fill());
    }

    private static Hatch classOf(DepthMap map, int column) {
        double deepest = 0;
        for (int row = 0; row < map.rows(); row++) deepest = Math.max(deepest, map.depthMm(column, row));
        return Hatch.of(deepest, map.throughMm());
    }

    private static Hatch shown(Hatch hatch) { return hatch == Hatch.SOUND ? Hatch.SOFTENED : hatch; }

    private void probes(Member member) {
        for (ProbeReading probe : assessment.survey().probesOn(member.id(), Face.FRONT)) {
            double[] at = view.point(member, probe.spot().alongMm(), probe.spot().acrossMm());
            canvas.add(Canvas.lined(at[0] - 0.45, at[1], at[0] + 0.45, at[1], Ink.THIN).with("data-probe", member.id() + " " + Math.round(probe.spot().alongMm()) + " " + Math.round(probe.spot().acrossMm())));
            canvas.line(at[0], at[1] - 0.45, at[0], at[1] + 0.45, Ink.THIN);
        }
    }

    /// A number at each member, the same as in the table of the side.
    void keys(Labels labels, Map<String, Integer> numbers) {
        for (Member member : members) {
            double seen = View.seenLengthMm(member);
            double[] at = view.point(member, member.run() == Member.Run.OUTWARD ? seen / 2 : seen * 0.62, member.widthMm() / 2);
            Marks.key(canvas, labels, at[0], at[1], String.valueOf(numbers.get(member.id())), Ink.SMALL);
        }
    }
}
