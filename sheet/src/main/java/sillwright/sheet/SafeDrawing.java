package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Side;
import sillwright.work.SafePlan;
import sillwright.work.WorkFindings.SafeSide;

/// The safe work of one side from above, true to scale: the wall above, the ground before it below, with the sheeting, what is closed, ladders and scaffolds, props and where waste waits.
///
/// A key beneath names each by its letter; what the rules ask stands in words beside the drawing.
public final class SafeDrawing {
    private static final double WIDTH = 178, HIGHEST = 62, LEFT = 4, ROW = 4.3, WALL = 2.6;

    /// What stands over the wall: its title and the names of the repairs, or these alone.
    private static final double TITLED = 11, BARE = 8;

    /// How far the second line of a key is set in.
    private static final double IN = 3;

    private final Canvas canvas;
    private final SafeSide safe;
    private final SafePlan plan;
    private final Units units;
    private final Scale scale;
    private final double head, x0, y0, lengthMm;
    private final List<String> key = new ArrayList<>();

    private SafeDrawing(Assessment assessment, SafeSide safe, boolean titled) {
        this.safe = safe;
        this.plan = safe.plan();
        this.units = assessment.settings().units();
        this.lengthMm = Optional.ofNullable(assessment.survey().sides().get(safe.side())).map(Side::lengthMm).orElse(plan.work().right());
        double left = Math.min(0, Math.min(plan.sheet().left(), plan.waste().left())), right = Math.max(lengthMm, Math.max(plan.sheet().right(), plan.waste().right()));
        for (SafePlan.Stand stand : plan.stands()) {
            left = Math.min(left, stand.foot().left());
            right = Math.max(right, stand.foot().right());
        }
        double far = farMm();
        this.scale = Scale.fitting(right - left, far, WIDTH - 2 * LEFT, HIGHEST, units);
        this.x0 = LEFT + (WIDTH - 2 * LEFT - scale.paper(right - left)) / 2 - scale.paper(left);
        this.head = titled ? TITLED : BARE;
        this.y0 = head + WALL;
        this.canvas = new Canvas(WIDTH, y0 + scale.paper(far) + 3);
    }

    /// The furthest thing to be drawn out from the wall; the edge of the lot where it is not far beyond.
    private double farMm() {
        double far = Math.max(Math.max(plan.sheet().far(), plan.waste().far()), plan.work().far() + 1000);
        for (SafePlan.Stand stand : plan.stands()) far = Math.max(far, stand.foot().far());
        return plan.line() < far * 1.3 ? Math.max(far, plan.line() + 300) : far;
    }

    /// Only of a side whose plan was laid out.
    public static Optional<Drawing> draw(Assessment assessment, SafeSide safe) { return safe.plan().equals(SafePlan.NONE) ? Optional.empty() : Optional.of(titled(assessment, safe)); }

    private static Drawing titled(Assessment assessment, SafeSide safe) {
        SafeDrawing drawing = new SafeDrawing(assessment, safe, true);
        drawing.canvas.write(LEFT, 4.2, Lettering.fitted(Said.sideTitle(assessment.survey(), safe.side()) + ", from above, " + drawing.scale.words(), Ink.PLAIN, WIDTH - 2 * LEFT), Ink.PLAIN, Anchor.START, Ink.BLACK);
        return drawing.draw(assessment);
    }

    /// For a page that says beside it which side it is: with its scale.
    static Optional<Untitled> untitled(Assessment assessment, SafeSide safe) {
        if (safe.plan().equals(SafePlan.NONE)) return Optional.empty();
        SafeDrawing drawing = new SafeDrawing(assessment, safe, false);
        return Optional.of(new Untitled(drawing.draw(assessment), drawing.scale));
    }

    record Untitled(Drawing drawing, Scale scale) {}

    private double x(double mm) { return x0 + scale.paper(mm); }

    private double y(double mm) { return y0 + scale.paper(mm); }

    private Box box(SafePlan.Area area) { return Box.around(x(area.left()), y(area.near()), x(area.right()), y(area.far())); }

    private String length(double mm) { return Said.length(Math.round(mm / step()) * step(), units); }

    /// Places on the ground are told to a hand's breadth.
    private double step() { return units == Units.US ? 152.4 : 100; }

    private Drawing draw(Assessment assessment) {
        ground();
        Optional.ofNullable(assessment.survey().sides().get(safe.side())).ifPresent(this::porches);
        wall();
        marks();
        stands();
        for (SafePlan.Shore shore : plan.shores()) {
            double half = Math.max(0.9, scale.paper(shore.pad()) / 2);
            canvas.rect(new Box(x(shore.x()) - half, y(shore.y()) - half, 2 * half, 2 * half), Hatch.DECAYED.fill(), Ink.FIRM);
        }
        if (!plan.shores().isEmpty()) key.add("Cross-hatched squares: props on spread footings, each side of the work.");
        waste();
        double down = canvas.height() + 2.5;
        for (String line : key) {
            List<String> parts = RepairNotes.wrapped(line, WIDTH - 2 * LEFT - IN);
            for (int i = 0; i < parts.size(); i++) {
                canvas.heighten(down + 2);
                canvas.write(i == 0 ? LEFT : LEFT + IN, down, parts.get(i), Ink.SMALL, Anchor.START, Ink.BLACK);
                down += ROW;
            }
        }
        return canvas.done("safe-" + safe.side(), "Working safely, " + Said.sideTitle(assessment.survey(), safe.side()), "Plan of the safe work on " + Said.sideTitle(assessment.survey(), safe.side())
                + ": " + String.join(" ", key), 0.8);
    }

    private void ground() {
        SafePlan.Area sheet = plan.sheet();
        if (sheet.mm2() > 0) {
            canvas.rect(box(sheet), "#f3efe6", Ink.HIDDEN);
            key.add("Tinted: sheeting taped down, " + length(sheet.right() - sheet.left()) + " by " + length(sheet.far()) + ", " + Words.area(sheet.mm2(), units) + ", " + length(safe.coverMm())
                    + " beyond the work or as far as debris falls (745.85(a)(2)(ii)(C)).");
        }
        if (plan.line() < farMm()) {
            canvas.line(LEFT, y(plan.line()), WIDTH - LEFT, y(plan.line()), new Ink.Pen(Ink.BLACK, 0.3, "4 1 0.8 1"));
            write(WIDTH - LEFT - 1, y(plan.line()) + 3.4, "edge of the lot", Anchor.END);
        }
        if (plan.barrier() > 0) {
            canvas.line(x(sheet.left()), y(plan.barrier()), x(sheet.right()), y(plan.barrier()), new Ink.Pen(Ink.ACT, 1, ""));
            key.add("Thick line: vertical barrier, " + length(sheet.right() - sheet.left()) + " long, the lot ends within 10 ft (3.05 m) (745.85(a)(2)(ii)(D)).");
        }
    }

    /// A porch or a bay that stands before the wall.
    private void porches(Side side) {
        for (Side.RoofEdge edge : side.edges()) edge.projects().filter(out -> out.own() > 0).ifPresent(out -> {
            double left = edge.left().own(), far = out.own();
            canvas.rect(Box.around(x(left), y(0), x(left + edge.length().own()), y(far)), "none", new Ink.Pen(Ink.GREY, 0.2, ""));
            write(x(left) + 1, y(0) + 3.4, "porch", Anchor.START);
        });
    }

    private void wall() {
        canvas.rect(Box.around(x(0), head, x(lengthMm), y0), Hatch.SOFTENED.fill(), Ink.BOLD);
        List<String> windows = new ArrayList<>(), doors = new ArrayList<>();
        for (SafePlan.Near near : plan.openings()) {
            Box hole = Box.around(x(near.left()), head, x(near.right()), y0);
            canvas.rect(hole, Ink.PAPER, Ink.THIN);
            canvas.line(hole.left(), hole.top(), hole.right(), hole.bottom(), Ink.ACTING);
            canvas.line(hole.left(), hole.bottom(), hole.right(), hole.top(), Ink.ACTING);
            (near.door() ? doors : windows).add(String.valueOf(near.number()));
        }
        if (!windows.isEmpty() || !doors.isEmpty()) key.add("Crossed: closed, as all within 20 ft (6.1 m), round corners too: " + (windows.isEmpty() ? "" : Words.count(windows.size(), "window"))
                + (windows.isEmpty() || doors.isEmpty() ? "" : " and ") + (doors.isEmpty() ? "" : Words.count(doors.size(), "door")) + (safe.leadApplies() ? " (745.85(a)(2)(ii)(A))" : "") + ".");
        if (plan.openings().stream().anyMatch(SafePlan.Near::inSheet)) key.add("A door opens onto the sheet: another way in and out, or a covered passage with a flap.");
    }

    /// Where repairs lie along the wall, and how far out they stand: those close together under one label, above them.
    private void marks() {
        List<SafePlan.Mark> marks = plan.marks().stream().sorted(java.util.Comparator.comparingDouble(SafePlan.Mark::out).thenComparingDouble(mark -> mark.left() + mark.right())).toList();
        for (int i = 0; i < marks.size(); ) {
            int j = i;
            List<String> ids = new ArrayList<>();
            double from = middle(marks.get(i)), to = from, at = y(marks.get(i).out());
            for (; j < marks.size() && marks.get(j).out() == marks.get(i).out() && (j == i || middle(marks.get(j)) - to < 6); j++) {
                to = middle(marks.get(j));
                ids.add(marks.get(j).repair());
                canvas.line(x(marks.get(j).left()), at, Math.max(x(marks.get(j).left()) + 0.8, x(marks.get(j).right())), at, new Ink.Pen(Ink.ACT, 0.9, ""));
            }
            double over = marks.get(i).out() == 0 ? head - 1.2 : at - 1.4 - (plan.shores().isEmpty() ? 0 : propMm() / 2);
            for (double up : new double[] {0, 3.6, 7.2, -9.5}) if (write((from + to) / 2, over - up, String.join(", ", ids), Anchor.MIDDLE)) break;
            i = j;
        }
    }

    private double middle(SafePlan.Mark mark) { return x((mark.left() + mark.right()) / 2); }

    /// The side of a prop's pad on paper.
    private double propMm() { return plan.shores().stream().mapToDouble(shore -> Math.max(1.8, scale.paper(shore.pad()))).max().orElse(0); }

    private void stands() {
        char letter = 'A';
        for (SafePlan.Stand stand : plan.stands()) {
            Box foot = box(stand.foot());
            canvas.rect(foot, "none", Ink.FIRM);
            if (stand.scaffold()) {
                canvas.line(foot.left(), foot.top(), foot.right(), foot.bottom(), Ink.THIN);
                canvas.line(foot.left(), foot.bottom(), foot.right(), foot.top(), Ink.THIN);
            } else for (double rung = foot.top() + 0.9; rung < foot.bottom(); rung += 0.9) canvas.line(foot.left(), rung, foot.right(), rung, Ink.HAIR);
            for (double down : new double[] {3.4, 6.8, 10.2, -1}) if (write((foot.left() + foot.right()) / 2, foot.bottom() + down, String.valueOf(letter), Anchor.MIDDLE)) break;
            String serves = " for " + String.join(", ", stand.repairs());
            key.add(letter + ": " + (stand.scaffold() ? "scaffold " + length(stand.foot().right() - stand.foot().left()) + " by " + length(stand.foot().far() - stand.foot().near()) + ", work at " + length(stand.height())
                    + ", guard rails from 10 ft (3 m), tied" + serves + " (29 CFR 1926.451)."
                    : "ladder of " + length(stand.length()) + ", its foot " + length(stand.foot().far() - stand.foot().near()) + " out, 75°, tied, work at " + length(stand.height()) + serves + " (29 CFR 1926.1053(b))."));
            letter++;
        }
    }

    private void waste() {
        if (plan.waste().mm2() <= 0) return;
        Box bin = box(plan.waste());
        canvas.rect(bin, Hatch.HOLLOW.fill(), Ink.FIRM);
        key.add("Dotted square: waste, bagged and sealed on the sheet, carried out by this end, stored closed" + (safe.leadApplies() ? " (745.85(a)(4))" : "") + ".");
    }

    private boolean write(double x, double y, String words, Anchor anchor) {
        Box box = Canvas.covers(x, y, words, Ink.SMALL, anchor);
        if (!canvas.free(box.grown(0.3)) || box.top() < 0.2 || box.left() < 0.5 || box.right() > WIDTH - 0.5) return false;
        canvas.heighten(box.bottom() + 0.5);
        canvas.write(x, y, words, Ink.SMALL, anchor, Ink.BLACK);
        return true;
    }
}
