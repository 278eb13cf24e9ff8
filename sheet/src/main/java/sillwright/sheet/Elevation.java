package sillwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import sillwright.Assessment;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Side.RoofEdge;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.wood.Damage;
import sillwright.work.Repair;

/// One side of the building as it is seen standing before it, true to scale: every member at its place, hatched by its
/// condition, the water flagged where it acts, the repairs named where they go.
public final class Elevation {
    /// Paper for an elevation: on a lying sheet, or across a standing page with words beneath.
    private record Room(double width, double highest) {}

    private static final Room LYING = new Room(250, 178), STANDING = new Room(184, 178);
    private static final double LEFT = 19;
    private static final double RIGHT = 9;
    private static final double HEAD = 8;
    private static final double BENEATH = 21;

    private final Room room;
    private final Assessment assessment;
    private final Side side;
    private final Units units;
    private final List<Member> members;

    private Elevation(Assessment assessment, Side side, Room room) {
        this.room = room;
        this.assessment = assessment;
        this.side = side;
        this.units = assessment.settings().units();
        this.members = assessment.survey().membersOn(side.id());
    }

    /// @throws Refused where the survey has no such side
    public static Drawing draw(Assessment assessment, String sideId) { return of(assessment, sideId, LYING).draw(); }

    /// Across a standing page.
    static Drawing standing(Assessment assessment, String sideId) { return of(assessment, sideId, STANDING).draw(); }

    /// Whether a lying sheet would show the side at a larger scale than a standing page can.
    static boolean wantsALyingSheet(Assessment assessment, String sideId) {
        return of(assessment, sideId, LYING).scale().ratio() < of(assessment, sideId, STANDING).scale().ratio();
    }

    private static Elevation of(Assessment assessment, String sideId, Room room) {
        Side side = assessment.survey().sides().get(sideId);
        if (side == null)
            throw new Refused("side", "'{}' is not a side of this survey", "use one of "
                    + Words.list(List.copyOf(assessment.survey().sides().keySet())), sideId);
        return new Elevation(assessment, side, room);
    }

    /// The number that each member of a side goes by on its drawing and in its table.
    static Map<String, Integer> numbers(Assessment assessment, String sideId) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (Member member : assessment.survey().membersOn(sideId)) numbers.put(member.id(), numbers.size() + 1);
        return numbers;
    }

    /// Every part of the side on a unit scale, so that what the paper must hold is known before the scale is.
    private Box extent() {
        View unit = new View(new Scale(1, units), 0, 0);
        double left = 0, right = side.lengthMm(), top = ElevationRoof.topMm(side);
        for (RoofEdge edge : side.edges()) {
            left = Math.min(left, edge.left().own() - edge.overhang().own());
            right = Math.max(right, edge.left().own() + edge.length().own() + edge.overhang().own());
        }
        for (Member member : members) {
            Box box = View.around(unit.stretch(member, 0, View.seenLengthMm(member)));
            left = Math.min(left, box.left());
            right = Math.max(right, box.right());
            top = Math.max(top, -box.top());
        }
        return Box.around(left, -top, right, 0);
    }

    private double roomWide() { return room.width - LEFT - RIGHT; }

    private double roomHigh() { return room.highest - HEAD - BENEATH - TitleBlock.HEIGHT; }

    private Scale scale() { return Scale.fitting(extent().width(), extent().height(), roomWide(), roomHigh(), units); }

    private Drawing draw() {
        Box extent = extent();
        double roomWide = roomWide(), roomHigh = roomHigh();
        Scale scale = scale();
        double wide = scale.paper(extent.width()), high = scale.paper(extent.height()), head = HEAD + (room == LYING ? Math.min(20, (roomHigh - high) / 2) : 0),
                grade = head + high;
        View view = new View(scale, LEFT + (roomWide - wide) / 2 - scale.paper(extent.left()), grade);
        Canvas canvas = new Canvas(room.width, grade + BENEATH);
        ElevationRoof roof = new ElevationRoof(canvas, view, side);
        roof.behind();
        for (Side.Opening opening : side.openings()) opening(canvas, view, opening);
        roof.before();
        ElevationMembers drawn = new ElevationMembers(canvas, view, assessment, members);
        drawn.draw();
        roof.gutters();
        ElevationGround.draw(canvas, side.ground().surface(), LEFT - 6, room.width - RIGHT + 3, grade, 3.2);
        dimensions(canvas, view, extent);
        label(canvas, view, drawn, extent, new Box(LEFT - 4, 1, room.width - LEFT - RIGHT + 10, grade - 2.5));
        // Where the sheet is full, numbers stand in rows beneath it.
        double lowest = canvas.labels().stream().mapToDouble(label -> label.box().bottom()).max().orElse(0);
        canvas.heighten(legend(canvas, Math.max(grade + BENEATH - 6, lowest + 1)));
        TitleBlock.draw(canvas, assessment.survey(), side, scale);
        return canvas.done("elevation-" + side.id(), "Elevation, " + Said.title(side), told(scale), 0.45);
    }

    private void opening(Canvas canvas, View view, Side.Opening opening) {
        Box box = view.box(opening.left().own(), opening.bottom().own(), opening.width().own(), opening.height().own());
        canvas.rect(box, Ink.PAPER, Ink.THIN);
        Box in = box.grown(-Math.min(0.7, Math.min(box.width(), box.height()) / 6));
        switch (opening.kind()) {
            case WINDOW -> {
                canvas.rect(in, Ink.PAPER, Ink.HAIR);
                canvas.line(in.left(), in.midY(), in.right(), in.midY(), Ink.THIN);
                canvas.line(in.midX(), in.top(), in.midX(), in.bottom(), Ink.HAIR);
            }
            case DOOR -> {
                canvas.rect(in, Ink.PAPER, Ink.HAIR);
                double w = in.width(), h = in.height();
                canvas.rect(new Box(in.left() + w * 0.18, in.top() + h * 0.08, w * 0.64, h * 0.42), "none", Ink.HAIR);
                canvas.rect(new Box(in.left() + w * 0.18, in.top() + h * 0.58, w * 0.64, h * 0.34), "none", Ink.HAIR);
                canvas.circle(in.right() - w * 0.09, in.top() + h * 0.54, 0.35, "none", Ink.THIN);
            }
            case VENT -> {
                for (double y = in.top() + 0.6; y < in.bottom(); y += 0.8) canvas.line(in.left(), y, in.right(), y, Ink.HAIR);
            }
        }
    }

    private void dimensions(Canvas canvas, View view, Box extent) {
        double below = view.gradePaper() + 9.5, x1 = view.x(0), x2 = view.x(side.lengthMm());
        Marks.level(canvas, x1, x2, view.gradePaper() + 3, below, Said.length(side.lengthMm(), units));
        double beside = Math.min(x1, view.x(extent.left())) - 4.5;
        List<Double> heights = new ArrayList<>();
        if (!side.edges().isEmpty()) heights.add(side.heightMm());
        if (side.topMm() > side.heightMm() + 1) heights.add(side.topMm());
        side.edges().stream().filter(edge -> edge.projects().isPresent()).findFirst().map(edge -> edge.height().own())
                .filter(high -> heights.stream().noneMatch(other -> Math.abs(other - high) < 100)).ifPresent(heights::add);
        heights.sort(Double::compare);
        for (double high : heights) {
            Marks.upright(canvas, view.y(0), view.y(high), beside + 3, beside, Said.length(high, units));
            beside -= 4.8;
        }
    }

    private void label(Canvas canvas, View view, ElevationMembers drawn, Box extent, Box bounds) {
        Labels labels = new Labels(canvas, bounds);
        for (Member member : members) labels.avoid(View.around(view.stretch(member, 0, View.seenLengthMm(member))), 0.6);
        for (Side.Opening opening : side.openings())
            labels.avoid(view.box(opening.left().own(), opening.bottom().own(), opening.width().own(), opening.height().own()), 0.05);
        double strings = view.x(Math.min(0, extent.left()));
        labels.avoid(new Box(strings - 18, 0, 18, view.gradePaper()), 0.3);
        List<Repair> repairs = assessment.work().repairs().stream().filter(repair -> repair.damage().member().side().equals(side.id())).toList();
        List<RankedSource> sources = assessment.water().toStop().stream().filter(source -> source.side().equals(side.id())).toList();
        Map<Repair, double[]> spots = new LinkedHashMap<>();
        for (Repair repair : repairs) {
            double[] corners = stretch(view, repair.damage());
            labels.avoid(View.around(corners), 2);
            double[] spot = {(corners[0] + corners[2] + corners[4] + corners[6]) / 4, (corners[1] + corners[3] + corners[5] + corners[7]) / 4};
            spots.put(repair, spot);
            labels.keepBare(spot[0], spot[1], 0.7);
        }
        Map<RankedSource, double[]> drops = new LinkedHashMap<>();
        for (RankedSource source : sources) {
            double[] drop = {Math.clamp(view.x(source.leftMm()), bounds.left(), bounds.right()), Math.clamp(view.y(source.aboveMm()), bounds.top(),
                    view.gradePaper())};
            drops.put(source, drop);
            labels.keepBare(drop[0], drop[1], 1.4);
        }
        drawn.keys(labels, numbers(assessment, side.id()));
        drops.forEach((source, drop) -> Marks.flag(canvas, labels, drop[0], drop[1], source.id()));
        boolean worded = repairs.size() <= 8;
        spots.forEach((repair, spot) -> Marks.pointed(canvas, labels, spot[0], spot[1],
                repair.id() + (worded ? " " + repair.treatment().words() : "") + (repair.urgent() ? " !" : ""), Ink.SMALL, Ink.ACT));
    }

    private static double[] stretch(View view, Damage damage) {
        Member member = damage.member();
        return member.run() == Member.Run.OUTWARD ? view.stretch(member, 0, member.depthMm()) : view.stretch(member, damage.fromMm(), damage.toMm());
    }

    /// What the signs mean, in as many rows as the sheet wants.
    private double legend(Canvas canvas, double top) {
        double start = LEFT - 6, x = start, y = top;
        for (Hatch hatch : List.of(Hatch.SOFTENED, Hatch.DECAYED, Hatch.HOLLOW)) x = Marks.swatch(canvas, x, y, hatch, hatch.legend(units));
        for (boolean hidden : new boolean[] {false, true}) {
            canvas.rect(new Box(x, y, 6, 3.6), Ink.PAPER, hidden ? Ink.HIDDEN : Ink.UNKNOWN);
            x = canvas.write(x + 7, y + 2.9, hidden ? "soft, not seen here" : "not probed", Ink.SMALL, Anchor.START, Ink.BLACK).right() + 4.5;
        }
        if (x + 90 > room.width) {
            x = start;
            y += 5;
        }
        canvas.line(x, y + 1.8, x + 1.4, y + 1.8, Ink.THIN);
        canvas.line(x + 0.7, y + 1.1, x + 0.7, y + 2.5, Ink.THIN);
        x = canvas.write(x + 2.4, y + 2.9, "probed", Ink.SMALL, Anchor.START, Ink.BLACK).right() + 4.5;
        canvas.add(Markup.of("path").with("d", Marks.drop(x + 1, y + 2.2)).with("fill", Ink.ACT));
        x = canvas.write(x + 3, y + 2.9, "water, W", Ink.SMALL, Anchor.START, Ink.ACT).right() + 4.5;
        canvas.circle(x + 0.6, y + 1.8, 0.55, Ink.ACT, Ink.LEADER);
        x = canvas.write(x + 2.2, y + 2.9, "repair, R (! cannot wait)", Ink.SMALL, Anchor.START, Ink.ACT).right() + 4.5;
        canvas.write(x, y + 2.9, "numbers: the members of the table", Ink.SMALL, Anchor.START, Ink.BLACK);
        return y + 6;
    }

    private String told(Scale scale) {
        long soft = members.stream().map(member -> assessment.wood().of(member.id())).filter(condition -> condition != null
                && condition.needsWork()).count();
        List<String> flags = assessment.water().toStop().stream().filter(source -> source.side().equals(side.id())).map(source -> source.id() + " "
                + source.words()).toList();
        return "Elevation of the " + Said.title(side) + " at " + scale.words() + ": " + Words.count(members.size(), "member") + ", " + soft
                + " with soft wood. "
                + (flags.isEmpty() ? "No likely source of water is on this side." : "Water: " + String.join("; ", flags) + ".");
    }
}
