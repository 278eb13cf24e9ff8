package sillwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.ProbeReading;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.DepthMap;

/// The decay map of one member: its probed faces laid open one above the other, the wood hatched by how deep it is soft,
/// every probe with its depth, the sound-wood lines, and the section that is left.
public final class MemberMap {
    private static final double WIDTH = 178;
    private static final double NAMES = 15;
    private static final double SECTION = 52;
    private static final double HEAD = 12;

    private final Condition condition;
    private final Member member;
    private final Units units;
    private final double from;
    private final double to;
    private final Scale along;
    private final Scale across;
    private final Canvas canvas = new Canvas(WIDTH, 0);

    private MemberMap(Condition condition, Units units) {
        this.condition = condition;
        this.member = condition.member();
        this.units = units;
        double[] shown = shown();
        this.from = shown[0];
        this.to = shown[1];
        this.along = Scale.fitting(to - from, 0, WIDTH - NAMES - SECTION - 6, 1, units);
        double least = condition.maps().stream().mapToDouble(DepthMap::acrossMm).min().orElse(1),
                most = condition.maps().stream().mapToDouble(DepthMap::acrossMm).max().orElse(1);
        Scale wider = Scale.fitting(0, most, 1, 26, units);
        this.across = along.paper(least) >= 9 && along.paper(most) <= 40 ? along : wider;
    }

    public static Drawing draw(Condition condition, Units units) { return new MemberMap(condition, units).draw(); }

    /// The stretch that holds every soft place and every probe, with sound wood beside it; all of the member where that is
    /// most of it.
    private double[] shown() {
        double length = member.lengthMm(), low = length, high = 0;
        for (Damage damage : condition.damages()) {
            low = Math.min(low, damage.fromMm());
            high = Math.max(high, damage.toMm());
        }
        for (DepthMap map : condition.maps())
            for (ProbeReading probe : map.probes()) {
                low = Math.min(low, probe.spot().alongMm());
                high = Math.max(high, probe.spot().alongMm());
            }
        double beside = Math.max(100, 0.12 * (high - low));
        low = Math.max(0, low - beside);
        high = Math.min(length, high + beside);
        return high - low <= 0 || high - low > 0.75 * length ? new double[] {0, length} : new double[] {low, high};
    }

    private double x(double alongMm) { return NAMES + along.paper(alongMm - from); }

    private Drawing draw() {
        double y = HEAD;
        List<Box> faces = new ArrayList<>();
        for (DepthMap map : condition.maps()) {
            Box face = new Box(NAMES, y, along.paper(to - from), across.paper(map.acrossMm()));
            faces.add(face);
            face(map, face);
            y = face.bottom() + 4.4;
        }
        canvas.heighten(y);
        if (!faces.isEmpty()) soundLines(faces);
        for (int i = 0; i < faces.size(); i++) depths(condition.maps().get(i), faces.get(i));
        double bottom = faces.isEmpty() ? y : stations(faces.getLast().bottom());
        condition.damages().stream().min(Comparator.comparingDouble(damage -> damage.section().areaKept())).ifPresent(damage -> {
            double down = Section.draw(canvas, member, damage.section(), Section.scale(member, 24, units), WIDTH - SECTION / 2, 0, units);
            canvas.heighten(down + 2);
        });
        canvas.heighten(bottom);
        legend();
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

    /// Across every face, each with its place from the start.
    private void soundLines(List<Box> faces) {
        double top = faces.getFirst().top() - 2, bottom = faces.getLast().bottom() + 1.5;
        for (Damage damage : condition.damages())
            for (double line : new double[] {damage.fromMm(), damage.toMm()}) {
                if (line <= 0 || line >= member.lengthMm()) continue;
                canvas.add(Canvas.lined(x(line), top, x(line), bottom, Ink.CUT));
                String words = "sound " + (line == damage.fromMm() ? "to " : "from ") + Said.length(line, units);
                double wide = Lettering.widthMm(words, Ink.SMALL);
                for (double base = top - 0.8; ; base -= 3.6) {
                    double at = Math.clamp(x(line), wide / 2, WIDTH - SECTION - wide / 2);
                    if (base < 3 || canvas.free(Canvas.covers(at, base, words, Ink.SMALL, Anchor.MIDDLE))) {
                        if (base >= 3) canvas.write(at, base, words, Ink.SMALL, Anchor.MIDDLE, Ink.ACT);
                        else Marks.pointed(canvas, new Labels(canvas, new Box(0, 0, WIDTH - SECTION, canvas.height())), x(line), top, words,
                                Ink.SMALL, Ink.ACT);
                        break;
                    }
                }
            }
    }

    private void depths(DepthMap map, Box face) {
        Labels labels = new Labels(canvas, new Box(NAMES - 2, Math.max(0, face.top() - 4), WIDTH - NAMES - SECTION, face.height() + 8));
        for (ProbeReading probe : map.probes()) {
            double[] at = at(probe, face);
            canvas.line(at[0] - 0.8, at[1], at[0] + 0.8, at[1], Ink.FIRM);
            canvas.line(at[0], at[1] - 0.8, at[0], at[1] + 0.8, Ink.FIRM);
            labels.keepBare(at[0], at[1], 0.6);
        }
        for (ProbeReading probe : map.probes()) {
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
        String start = from <= 0.5 ? Said.startName(member) : Said.length(from, units) + " from " + Said.startName(member);
        String end = to >= member.lengthMm() - 0.5 ? Said.farName(member) : "goes on " + Said.length(member.lengthMm() - to, units) + " to the "
                + Said.farName(member);
        Box left = canvas.write(NAMES, line, start, Ink.SMALL, Anchor.START, Ink.GREY);
        double right = Math.min(x(to), WIDTH - SECTION), wide = Lettering.widthMm(end, Ink.SMALL);
        boolean beside = right - wide > left.right() + 2;
        canvas.write(beside ? right : NAMES, beside ? line : line + 3.8, end, Ink.SMALL, beside ? Anchor.END : Anchor.START, Ink.GREY);
        return line + (beside ? 2 : 5.8);
    }

    private void legend() {
        double y = canvas.height() + 1.5, x = 0.5;
        for (Hatch hatch : List.of(Hatch.SOFTENED, Hatch.DECAYED, Hatch.HOLLOW)) if (shows(hatch)) x = Marks.swatch(canvas, x, y, hatch,
                hatch.legend(units));
        canvas.add(Canvas.lined(x, y + 1.8, x + 8, y + 1.8, Ink.CUT));
        x = canvas.write(x + 9, y + 2.9, "sound-wood line", Ink.SMALL, Anchor.START, Ink.ACT).right() + 5;
        String scales = along.ratio() == across.ratio() ? "faces at " + along.words() : "along " + along.words() + ", across " + across.words();
        String words = scales + "; depths in " + (units == Units.US ? "inches" : "mm") + ", + where the probe ran out";
        boolean beside = x + Lettering.widthMm(words, Ink.SMALL) < WIDTH;
        canvas.write(beside ? x : 0.5, beside ? y + 2.9 : y + 8.2, words, Ink.SMALL, Anchor.START, Ink.BLACK);
        canvas.heighten(y + (beside ? 4.2 : 9.4));
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
                        + " deep at most.").orElse("No soft stretch.");
    }
}
