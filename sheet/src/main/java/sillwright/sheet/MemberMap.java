package sillwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.ProbeReading;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.SectionLeft;
import sillwright.wood.DepthMap;
import sillwright.wood.NextProbe;

/// The decay map of one member: its probed faces laid open one above the other, the wood hatched by how deep it is soft,
/// every probe with its depth, the sound-wood lines, and the section that is left.
public final class MemberMap {
    /// Paper for a map of one kind: its whole width, what the section takes of it, the most that a face may stand high, and whether it explains itself.
    private record Room(double width, double section, double face, boolean alone) {}

    private static final Room LARGE = new Room(178, 52, 26, true), SMALL = new Room(88, 25, 12, false);
    private static final double NAMES = 13;

    private final Room room;
    private final Condition condition;
    private final Member member;
    private final Units units;
    private final double from;
    private final double to;
    private final Scale along;
    private final Scale across;
    private final Canvas canvas;

    private MemberMap(Condition condition, Units units, Room room) {
        this.room = room;
        this.canvas = new Canvas(room.width, 0);
        this.condition = condition;
        this.member = condition.member();
        this.units = units;
        double[] shown = shown();
        this.from = shown[0];
        this.to = shown[1];
        this.along = Scale.fitting(to - from, 0, room.width - NAMES - room.section - 5, 1, units);
        double least = condition.maps().stream().mapToDouble(DepthMap::acrossMm).min().orElse(1),
                most = condition.maps().stream().mapToDouble(DepthMap::acrossMm).max().orElse(1);
        Scale wider = Scale.fitting(0, most, 1, room.face, units);
        this.across = along.paper(least) >= 9 && along.paper(most) <= 1.5 * room.face ? along : wider;
    }

    public static Drawing draw(Condition condition, Units units) { return new MemberMap(condition, units, LARGE).draw(); }

    /// For a page that holds several, and says once what the hatches mean.
    public static Drawing small(Condition condition, Units units) { return new MemberMap(condition, units, SMALL).draw(); }

    /// What the hatches of small maps mean, once for all.
    static Drawing legend(Units units) {
        Canvas canvas = new Canvas(LARGE.width, 17.2);
        double x = 0.5;
        for (Hatch hatch : List.of(Hatch.SOFTENED, Hatch.DECAYED, Hatch.HOLLOW)) x = Marks.swatch(canvas, x, 0.5, hatch, hatch.legend(units));
        canvas.add(Canvas.lined(x, 2.3, x + 8, 2.3, Ink.CUT));
        x = canvas.write(x + 9, 3.4, "sound-wood line", Ink.SMALL, Anchor.START, Ink.ACT).right() + 5;
        canvas.write(0.5, 8.6, depths(units), Ink.SMALL, Anchor.START, Ink.BLACK);
        canvas.write(0.5, 12.4, "section (where a load uses most of what is left, else where least is left): hatched lost, firm left", Ink.SMALL, Anchor.START, Ink.BLACK);
        canvas.write(0.5, 16.2, SIGNS, Ink.SMALL, Anchor.START, Ink.BLACK);
        return canvas.done("map-legend", "Signs of the decay maps", "What the hatches and lines of the decay maps mean.", 0.7);
    }

    private static String depths(Units units) { return "+ a probe and its depth in " + (units == Units.US ? "inches" : "mm") + ", alone where it found none, with + behind it where it ran out"; }

    private static final String SIGNS = "ring: probe here next; thin line: softness beyond it is less likely than 1 in 20";

    /// Soft wood that is less than this of a member longer than that is shown alone, with sound wood beside it: drawn whole, a long board leaves its readings no room. Own choice.
    private static final double SMALL_PART = 0.3, LONG_MM = 2400;

    /// The stretch that holds every soft place and every probe, with sound wood beside it; all of the member where that is
    /// most of it.
    private double[] shown() {
        double length = member.lengthMm(), low = length, high = 0;
        for (Damage damage : condition.damages()) {
            low = Math.min(low, damage.fromMm());
            high = Math.max(high, damage.toMm());
        }
        if (length > LONG_MM && high > low && high - low < SMALL_PART * length) {
            double from = low - 0.4 * (high - low), to = high + 0.4 * (high - low);
            if (probes().allMatch(probe -> probe.depthMm() == 0 || probe.spot().alongMm() > from && probe.spot().alongMm() < to)) return new double[] {Math.max(0, from), Math.min(length, to)};
        }
        for (ProbeReading probe : (Iterable<ProbeReading>) probes()::iterator) {
            low = Math.min(low, probe.spot().alongMm());
            high = Math.max(high, probe.spot().alongMm());
        }
        double beside = Math.max(100, 0.12 * (high - low));
        low = Math.max(0, low - beside);
        high = Math.min(length, high + beside);
        return high - low <= 0 || high - low > 0.75 * length ? new double[] {0, length} : new double[] {low, high};
    }

    private Stream<ProbeReading> probes() { return condition.maps().stream().flatMap(map -> map.probes().stream()); }

    private boolean within(ProbeReading probe) { return probe.spot().alongMm() >= from && probe.spot().alongMm() <= to; }

    /// How many places beyond the stretch that is shown were probed, all of them sound.
    private long beyond() { return probes().filter(probe -> !within(probe)).count(); }

    private double x(double alongMm) { return NAMES + along.paper(alongMm - from); }

    private Drawing draw() {
        List<SoundLine> lines = soundLines();
        double y = room.alone ? 12 : lines.isEmpty() ? 4.5 : crowded(lines) ? 11.6 : 8;
        List<Box> faces = new ArrayList<>();
        for (DepthMap map : condition.maps()) {
            Box face = new Box(NAMES, y, along.paper(to - from), across.paper(map.acrossMm()));
            faces.add(face);
            face(map, face);
            y = face.bottom() + 4.4;
        }
        canvas.heighten(y);
        if (!faces.isEmpty()) soundLines(lines, faces);
        condition.next().filter(next -> !next.enough()).ifPresent(next -> next(next, faces));
        for (int i = 0; i < faces.size(); i++) depths(condition.maps().get(i), faces.get(i));
        double bottom = faces.isEmpty() ? y : stations(faces.getLast().bottom());
        Optional<SectionLeft> section = condition.section();
        if (room.alone) {
            section.ifPresent(left -> canvas.heighten(2 + Section.draw(canvas, member, left, Section.scale(member, 24, units), room.width - room.section / 2, 0,
                    room.section, units)));
            canvas.heighten(bottom);
            legend();
        } else {
            section.ifPresent(left -> canvas.heighten(Section.small(canvas, member, left, Section.scale(member, 14, units), room.width - room.section / 2, 0,
                    room.section, units)));
            String plain = along.ratio() == across.ratio() ? along.plain() : "along " + along.plain() + ", across " + across.plain();
            boolean beside = canvas.free(Canvas.covers(room.width, bottom - 2, plain, Ink.SMALL, Anchor.END).grown(1));
            canvas.write(beside ? room.width : 0.5, beside ? bottom - 2 : bottom + 2, plain, Ink.SMALL, beside ? Anchor.END : Anchor.START, Ink.GREY);
            canvas.heighten(beside ? bottom - 1 : bottom + 3);
        }
        return canvas.done("map-" + member.id(), "Decay map, " + Said.title(member), told(), 0.7);
    }

    private void face(DepthMap map, Box face) {
        double step = map.lengthMm() / map.columns();
        canvas.fill(face, Ink.PAPER);
        for (int row = 0; row < map.rows(); row++) {
            double high = face.height() / map.rows(), top = face.bottom() - (row + 1) * high;
            int start = 0;
            for (int column = 1; column <= map.columns(); column++) {
                if (column < map.columns() && Hatch.of(map.depthMm(column, row), map.throughMm()) == Hatch.of(map.depthMm(start, row),
                        map.throughMm())) continue;
                Hatch hatch = Hatch.of(map.depthMm(start, row), map.throughMm());
                double left = Math.max(face.left(), x(start * step)), right = Math.min(face.right(), x(column * step));
                if (hatch != Hatch.SOUND && right > left) canvas.fill(new Box(left, top, right - left, high), hatch.fill());
                start = column;
            }
        }
        String contour = Contour.of(map, from, to, this::x, acrossMm -> face.bottom() - across.paper(acrossMm));
        if (!contour.isEmpty()) canvas.add(Ink.DOUBT.on(Markup.of("path").with("d", contour).with("fill", "none")));
        canvas.line(face.left(), face.top(), face.right(), face.top(), Ink.FIRM);
        canvas.line(face.left(), face.bottom(), face.right(), face.bottom(), Ink.FIRM);
        end(face, face.left(), from <= 0.5);
        end(face, face.right(), to >= member.lengthMm() - 0.5);
        canvas.write(0, face.midY() + 1, Choice.said(map.face()), Ink.SMALL, Anchor.START, Ink.BLACK);
    }

    private void end(Box face, double x, boolean ends) {
        if (ends) canvas.line(x, face.top(), x, face.bottom(), Ink.FIRM);
        else Marks.broken(canvas, x, face.bottom(), x, face.top());
    }

    /// Where sound wood begins or ends, on paper, and what is written over it.
    private record SoundLine(double x, double middle, String words) {
        double half() { return Lettering.widthMm(words, Ink.SMALL) / 2; }
    }

    private List<SoundLine> soundLines() {
        List<SoundLine> lines = new ArrayList<>();
        for (Damage damage : condition.damages())
            for (double line : new double[] {damage.fromMm(), damage.toMm()}) {
                if (line <= 0 || line >= member.lengthMm()) continue;
                String words = "sound " + (line == damage.fromMm() ? "to " : "from ") + Said.length(line, units);
                double half = Lettering.widthMm(words, Ink.SMALL) / 2;
                lines.add(new SoundLine(x(line), Math.clamp(x(line), half, room.width - room.section - 1.5 - half), words));
            }
        return lines;
    }

    /// Whether the words of two of them do not stand beside each other.
    private static boolean crowded(List<SoundLine> lines) {
        List<SoundLine> sorted = lines.stream().sorted(Comparator.comparingDouble(SoundLine::middle)).toList();
        for (int i = 1; i < sorted.size(); i++) if (sorted.get(i - 1).middle + sorted.get(i - 1).half() > sorted.get(i).middle - sorted.get(i).half()) return true;
        return false;
    }

    /// Across every face, each with its place from the start.
    private void soundLines(List<SoundLine> lines, List<Box> faces) {
        double top = faces.getFirst().top() - 2, bottom = faces.getLast().bottom() + 1.5;
        for (SoundLine line : lines) {
            canvas.add(Canvas.lined(line.x, top, line.x, bottom, Ink.CUT));
            for (double base = top - 0.8; ; base -= 3.6) {
                boolean room = base >= 3;
                if (room && !canvas.free(Canvas.covers(line.middle, base, line.words, Ink.SMALL, Anchor.MIDDLE))) continue;
                if (room) canvas.write(line.middle, base, line.words, Ink.SMALL, Anchor.MIDDLE, Ink.ACT);
                else Marks.pointed(canvas, new Labels(canvas, new Box(0, 0, this.room.width - this.room.section, canvas.height())), line.x, top, line.words, Ink.SMALL, Ink.ACT);
                break;
            }
        }
    }

    private void depths(DepthMap map, Box face) {
        Labels labels = new Labels(canvas, new Box(NAMES - 2, Math.max(0, face.top() - 4), room.width - NAMES - room.section, face.height() + 8));
        List<ProbeReading> shown = map.probes().stream().filter(this::within).toList();
        for (ProbeReading probe : shown) {
            double[] at = at(probe, face);
            canvas.line(at[0] - 0.8, at[1], at[0] + 0.8, at[1], Ink.FIRM);
            canvas.line(at[0], at[1] - 0.8, at[0], at[1] + 0.8, Ink.FIRM);
            labels.keepBare(at[0], at[1], 0.6);
        }
        for (ProbeReading probe : shown) {
            if (probe.depthMm() == 0 && !probe.ranOut()) continue;       // a bare cross says so
            double[] at = at(probe, face);
            String words = depth(probe);
            double wide = Lettering.widthMm(words, Ink.SMALL) + 0.6;
            Box box = labels.place(at[0], at[1], wide, Ink.SMALL * 0.95);
            if (Math.hypot(box.nearX(at[0]) - at[0], box.nearY(at[1]) - at[1]) > 2) canvas.addOver(Canvas.lined(at[0], at[1], box.nearX(at[0]),
                    box.nearY(at[1]), Ink.HAIR));
            canvas.addOver(Markup.of("rect").with("x", box.left()).with("y", box.top()).with("width", wide).with("height", box.height())
                    .with("fill", Ink.PAPER).with("fill-opacity", 0.88));
            canvas.write(box.left() + 0.3, box.top() + Ink.SMALL * 0.76, words, Ink.SMALL, Anchor.START, Ink.BLACK);
        }
    }

    /// Where to probe next: a ring with a point in it.
    private void next(NextProbe next, List<Box> faces) {
        for (int i = 0; i < faces.size(); i++) {
            if (condition.maps().get(i).face() != next.face() || next.alongMm() < from || next.alongMm() > to) continue;
            double x = x(next.alongMm()), y = faces.get(i).bottom() - across.paper(next.acrossMm());
            for (double radius : new double[] {1.3, 0.35})
                canvas.addOver(Ink.NEXT.on(Markup.of("circle").with("cx", x).with("cy", y).with("r", radius).with("fill", radius < 1 ? Ink.ACT : "none")));
        }
    }

    private double[] at(ProbeReading probe, Box face) { return new double[] {x(probe.spot().alongMm()),
            face.bottom() - across.paper(probe.spot().acrossMm())}; }

    /// The depth without its unit, which the legend says; a plus where the probe ran out.
    private String depth(ProbeReading probe) {
        String words = Words.length(probe.depthMm(), units);
        return words.substring(0, words.lastIndexOf(' ')) + (probe.ranOut() ? "+" : "");
    }

    /// What lies at either end of the stretch that is shown; returns how far down it reaches.
    private double stations(double bottom) {
        double line = bottom + 5;
        for (Drawing.Label label : canvas.labels()) if (label.box().left() < room.width - room.section) line = Math.max(line, label.box().bottom() + 2.6);
        String start = from <= 0.5 ? Said.startName(member) : Said.length(from, units) + " from " + Said.startName(member);
        String end = to >= member.lengthMm() - 0.5 ? Said.farName(member) : "goes on " + Said.length(member.lengthMm() - to, units) + " to the "
                + Said.farName(member);
        Box left = canvas.write(NAMES, line, start, Ink.SMALL, Anchor.START, Ink.GREY);
        double right = Math.min(x(to), room.width - room.section), wide = Lettering.widthMm(end, Ink.SMALL);
        boolean beside = right - wide > left.right() + 2;
        Box far = canvas.write(beside ? right : NAMES, beside ? line : line + 3.8, end, Ink.SMALL, beside ? Anchor.END : Anchor.START, Ink.GREY);
        line += beside ? 2 : 5.8;
        if (beyond() == 0) return line;
        String sound = "sound at " + Words.count((int) beyond(), "probe") + " beyond";
        if (!beside && far.right() + 4 + Lettering.widthMm(sound, Ink.SMALL) < room.width - room.section) {
            canvas.write(far.right() + 4, line - 2, sound, Ink.SMALL, Anchor.START, Ink.GREY);
            return line;
        }
        canvas.write(NAMES, line + 1.8, sound, Ink.SMALL, Anchor.START, Ink.GREY);
        return line + 3.8;
    }

    private String scaled() { return along.ratio() == across.ratio() ? "faces at " + along.words() : "along " + along.words() + ", across " + across.words(); }

    private void legend() {
        double y = canvas.height() + 1.5, x = 0.5;
        for (Hatch hatch : List.of(Hatch.SOFTENED, Hatch.DECAYED, Hatch.HOLLOW)) if (shows(hatch)) x = Marks.swatch(canvas, x, y, hatch,
                hatch.legend(units));
        canvas.add(Canvas.lined(x, y + 1.8, x + 8, y + 1.8, Ink.CUT));
        x = canvas.write(x + 9, y + 2.9, "sound-wood line", Ink.SMALL, Anchor.START, Ink.ACT).right() + 5;
        String words = scaled() + "; depths in " + (units == Units.US ? "inches" : "mm") + ", none at a bare cross, + where the probe ran out";
        boolean beside = x + Lettering.widthMm(words, Ink.SMALL) < room.width;
        canvas.write(beside ? x : 0.5, beside ? y + 2.9 : y + 8.2, words, Ink.SMALL, Anchor.START, Ink.BLACK);
        double signs = y + (beside ? 8.2 : 12.2);
        canvas.write(0.5, signs, SIGNS, Ink.SMALL, Anchor.START, Ink.BLACK);
        canvas.heighten(signs + 1.2);
    }

    /// Whether any cell of any face is drawn so, or the section, which is drawn as decayed.
    private boolean shows(Hatch hatch) {
        for (DepthMap map : condition.maps())
            for (int row = 0; row < map.rows(); row++)
                for (int column = 0; column < map.columns(); column++) if (Hatch.of(map.depthMm(column, row), map.throughMm()) == hatch) return true;
        return hatch == Hatch.DECAYED && condition.needsWork();
    }

    private String told() {
        Optional<Damage> worst = condition.damages().stream().max(Comparator.comparingDouble(Damage::deepestMm));
        return "Decay map of " + Said.title(member) + ", faces " + Words.list(condition.maps().stream().map(map -> Choice.said(map.face())).toList())
                + ". "
                + worst.map(damage -> "Soft " + Said.stretch(damage, units) + ", " + Said.length(damage.deepestMm(), units)
                        + " deep at most.").orElse("No soft stretch.") + condition.next().map(next -> " " + next.words(units)).orElse("");
    }
}
