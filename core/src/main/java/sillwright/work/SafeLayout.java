package sillwright.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.work.SafePlan.Area;
import sillwright.work.SafePlan.Near;
import sillwright.work.SafePlan.Shore;
import sillwright.work.SafePlan.Stand;

/// Lays the sheeting, the stands and the props of one side out on its plan.
///
/// What stands under a porch roof is taken to stand at the porch's front.
final class SafeLayout {
    /// Higher than this is not reached from the ground, mm.
    static final double REACH_MM = 2000;
    /// From here up new wood is let in from a scaffold and not from a ladder: 10 ft, own choice.
    private static final double SCAFFOLD_MM = Unit.FOOT.toOwn(10);
    /// One bay of a scaffold, and the width of a ladder's foot: common practice.
    private static final double BAY_MM = Unit.FOOT.toOwn(10), DEEP_MM = Unit.FOOT.toOwn(5), LADDER_MM = 450, OFF_MM = Unit.FOOT.toOwn(1);
    /// A prop stands so far beside what it holds, on a pad of this side where the load is not known: own choice.
    private static final double BESIDE_MM = 400, PAD_MM = 600, BIN_MM = 1000;

    private final Optional<Side> side;
    private final List<Repair> repairs;

    SafeLayout(Optional<Side> side, List<Repair> repairs) {
        this.side = side;
        this.repairs = repairs;
    }

    static double highestMm(Member member) {
        return member.above().own() + (member.run() == Member.Run.UPRIGHT ? member.lengthMm() : member.run() == Member.Run.OUTWARD ? member.depthMm() : member.widthMm());
    }

    private static boolean along(Member member) { return member.run() == Member.Run.LEVEL || member.run() == Member.Run.RAKING; }

    private static double left(Repair repair) {
        Member member = repair.damage().member();
        return member.left().own() + (along(member) ? repair.damage().fromMm() : 0);
    }

    private static double right(Repair repair) {
        Member member = repair.damage().member();
        return member.left().own() + (along(member) ? repair.damage().toMm() : member.widthMm());
    }

    private static double height(Repair repair) {
        Member member = repair.damage().member();
        return member.run() == Member.Run.UPRIGHT ? member.above().own() + repair.damage().toMm() : highestMm(member);
    }

    /// How far before the wall a member stands.
    double front(Member member) {
        double out = 0;
        boolean porch = switch (member.kind()) {
            case POST, COLUMN, COLUMN_BASE, PLINTH, BEAM, FLOORBOARD, STRINGER, TREAD, RAIL, BALUSTER, NEWEL, JOIST, BRACKET -> true;
            default -> false;
        };
        if (porch && side.isPresent()) for (Side.RoofEdge edge : side.get().edges())
            if (member.left().own() >= edge.left().own() - 1 && member.left().own() <= edge.left().own() + edge.length().own() + 1 && member.above().own() <= edge.height().own())
                out = Math.max(out, edge.projects().map(Quantity::own).orElse(0.0));
        return out;
    }

    Area work() {
        return new Area(repairs.stream().mapToDouble(SafeLayout::left).min().orElse(0), repairs.stream().mapToDouble(SafeLayout::right).max().orElse(0), 0,
                repairs.stream().mapToDouble(repair -> front(repair.damage().member())).max().orElse(0));
    }

    /// From the front of the work to the edge of the lot.
    double toLine() { return line() == Double.POSITIVE_INFINITY ? line() : Math.max(0, line() - work().far()); }

    double line() { return side.flatMap(Side::lotLine).map(Quantity::own).orElse(Double.POSITIVE_INFINITY); }

    /// @param rule what the lead rule asks of the side
    SafePlan plan(LeadSafe.Plan rule, List<SafePlan.Line> lines) {
        Area work = work();
        double cover = LeadSafe.COVER_MM, far = work.far() + rule.coverMm();
        Area sheet = rule.covered() ? new Area(work.left() - cover, work.right() + cover, 0, far) : Area.NONE;
        List<Near> near = near(work, sheet);
        return new SafePlan(work, sheet, line(), rule.barrier() ? Math.max(far, work.far()) : 0,
                repairs.stream().map(repair -> new SafePlan.Mark(repair.id(), left(repair), right(repair), front(repair.damage().member()))).toList(), near, stands(), shores(), waste(sheet.mm2() > 0 ? sheet : work, near), lines);
    }

    private List<Near> near(Area work, Area sheet) {
        List<Near> near = new ArrayList<>();
        if (side.isEmpty()) return near;
        for (int i = 0; i < side.get().openings().size(); i++) {
            Side.Opening opening = side.get().openings().get(i);
            double left = opening.left().own(), right = left + opening.width().own();
            double apart = Math.max(0, Math.max(work.left() - right, left - work.right()));
            if (apart > LeadSafe.CLOSE_MM) continue;
            boolean door = opening.kind() == Side.OpeningKind.DOOR;
            near.add(new Near(i + 1, door, left, right, opening.bottom().own(), door && sheet.mm2() > 0 && right > sheet.left() && left < sheet.right()));
        }
        return near;
    }

    /// Repairs out of reach, by bays from the left: a scaffold where wood is let in high up, else a ladder.
    private List<Stand> stands() {
        List<Repair> high = repairs.stream().filter(repair -> height(repair) > REACH_MM).sorted(Comparator.comparingDouble(SafeLayout::left)).toList();
        List<Stand> stands = new ArrayList<>();
        for (int i = 0; i < high.size(); ) {
            double from = left(high.get(i)), out = front(high.get(i).damage().member());
            int j = i;
            List<Repair> bay = new ArrayList<>();
            while (j < high.size() && right(high.get(j)) <= Math.max(from + BAY_MM, right(high.get(i))) && front(high.get(j).damage().member()) == out) bay.add(high.get(j++));
            stands.add(stand(bay, out));
            i = j;
        }
        return stands;
    }

    private static Stand stand(List<Repair> bay, double out) {
        double from = bay.stream().mapToDouble(SafeLayout::left).min().orElse(0), to = bay.stream().mapToDouble(SafeLayout::right).max().orElse(0), height = bay.stream().mapToDouble(SafeLayout::height).max().orElse(0);
        List<String> ids = bay.stream().map(Repair::id).toList();
        if (height > SCAFFOLD_MM && bay.stream().anyMatch(repair -> repair.treatment().cuts() || !repair.pieces().isEmpty())) {
            double wide = Math.max(1, Math.ceil((to - from) / BAY_MM - 1e-9)) * BAY_MM, middle = (from + to) / 2;
            return new Stand(true, new Area(middle - wide / 2, middle + wide / 2, out + OFF_MM, out + OFF_MM + DEEP_MM), height, 0, ids);
        }
        double middle = (from + to) / 2, foot = height * LeadSafe.LADDER_OUT;
        return new Stand(false, new Area(middle - LADDER_MM / 2, middle + LADDER_MM / 2, out, out + foot), height, Math.hypot(1, LeadSafe.LADDER_OUT) * (height + LeadSafe.LADDER_ABOVE_MM), ids);
    }

    private List<Shore> shores() {
        List<Shore> shores = new ArrayList<>();
        for (Repair repair : repairs) if (OrderOfWork.wantsProps(repair)) {
            double y = front(repair.damage().member());
            for (double x : new double[] {left(repair) - BESIDE_MM, right(repair) + BESIDE_MM})
                if (shores.stream().noneMatch(other -> other.y() == y && Math.abs(other.x() - x) < PAD_MM)) shores.add(new Shore(x, y, PAD_MM, repair.id()));
        }
        return shores;
    }

    private static Area waste(Area at, List<Near> near) {
        double left = Double.POSITIVE_INFINITY, right = Double.POSITIVE_INFINITY;
        for (Near opening : near) if (opening.door()) {
            left = Math.min(left, Math.abs(opening.left() - at.left()));
            right = Math.min(right, Math.abs(at.right() - opening.right()));
        }
        double x = right >= left ? at.right() : at.left() - BIN_MM;
        return new Area(x, x + BIN_MM, Math.max(0, at.far() - BIN_MM), Math.max(BIN_MM, at.far()));
    }
}
