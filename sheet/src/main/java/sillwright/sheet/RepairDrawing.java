package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Member.Face;
import sillwright.wood.Damage;
import sillwright.work.Repair;
import sillwright.work.Treatment;

/// The measured drawing of one repair: as found with the line to cut to, as repaired from two sides, the section; true to
/// scale and legible in black and white.
public final class RepairDrawing {
    /// Paper for a drawing of one kind: its whole width, what the section takes of it, the space between views, how high they may
    /// stand, and whether it explains itself.
    record Room(double width, double aside, double gap, double standing, double lying, boolean alone) {}

    private static final Room LARGE = new Room(178, 50, 22, 92, 42, true), SMALL = new Room(88, 29, 15, 44, 18, false);

    private final Room room;
    private final Repair repair;
    private final Units units;
    private final Damage damage;
    private final Member member;
    private final Face face;
    private final Face beside;
    private final Joint joint;
    private final double from;
    private final double to;
    private final Canvas canvas;
    private final boolean standing;
    private final boolean narrow;
    private final Scale scale;

    private RepairDrawing(Repair repair, Units units, Room room) {
        this.room = room;
        this.canvas = new Canvas(room.width, 0);
        this.repair = repair;
        this.units = units;
        this.damage = repair.damage();
        this.member = damage.member();
        this.face = damage.worst();
        this.beside = member.faces().stream().filter(one -> one != face && one != Member.opposite(face)).findFirst().orElse(face);
        this.joint = Joint.of(damage, repair.treatment());
        double[] shown = shown();
        this.from = shown[0];
        this.to = shown[1];
        this.standing = member.run() == Member.Run.UPRIGHT;
        this.narrow = joint.cuts() || repair.treatment() instanceof Treatment.Dutchman || repair.treatment() instanceof Treatment.Sister || repair.treatment() instanceof Treatment.ReplacePart;
        double over = across().stream().mapToDouble(each -> each).sum();
        this.scale = standing ? Scale.fitting(over, to - from, room.width - room.aside - room.gap * (narrow ? room.alone ? 3 : 2 : 1.4), narrow ? room.standing : room.standing / 2, units)
                : Scale.fitting(to - from, over, room.width - room.aside - (room.alone ? 20 : 8), narrow ? room.lying : room.lying * 0.62, units);
    }

    public static Drawing draw(Repair repair, Units units) { return new RepairDrawing(repair, units, LARGE).draw(8); }

    /// Without its title, for a page that says it already.
    static Drawing untitled(Repair repair, Units units) { return new RepairDrawing(repair, units, LARGE).draw(0); }

    /// For a page that holds several, and says beside it what stands in its notes.
    public static Drawing small(Repair repair, Units units) { return new RepairDrawing(repair, units, SMALL).draw(0); }

    /// What the signs of small drawings mean, once for all.
    static Drawing legend() {
        Canvas canvas = new Canvas(LARGE.width, 9.6);
        double x = Marks.swatch(canvas, 0.5, 0.5, Hatch.SOFTENED, "softened");
        x = Marks.swatch(canvas, x, 0.5, Hatch.DECAYED, "decayed, or lost");
        x = Marks.swatch(canvas, x, 0.5, Hatch.HOLLOW, "hollow");
        x = Marks.swatch(canvas, x, 0.5, Hatch.NEW_LEVEL, "new wood");
        x = Marks.swatch(canvas, x, 0.5, Hatch.BREAK, "capillary break");
        Marks.grain(canvas, x, 2.3, x + 7, 2.3);
        canvas.write(x + 8, 3.4, "grain", Ink.SMALL, Anchor.START, Ink.BLACK);
        canvas.add(Canvas.lined(0.5, 7.5, 8.5, 7.5, Ink.CUT));
        x = canvas.write(9.5, 8.6, "line to cut to: take it from sound wood, not from this sheet", Ink.SMALL, Anchor.START, Ink.ACT).right() + 5;
        canvas.write(x, 8.6, "screening; measure again before cutting", Ink.SMALL, Anchor.START, Ink.BLACK);
        return canvas.done("repair-legend", "Signs of the repair drawings", "What the hatches and lines of the repair drawings mean.", 0.8);
    }

    /// The stretch worth showing: all that is soft or new, and sound wood beside it.
    private double[] shown() {
        double low = damage.fromMm(), high = damage.toMm(), length = member.lengthMm();
        if (joint.cuts()) {
            low = Math.min(low, Math.min(joint.end(), joint.tip()));
            high = Math.max(high, Math.max(joint.end(), joint.tip()));
        }
        if (repair.treatment() instanceof Treatment.Dutchman patch) {
            low = Math.min(low, patchFrom(patch));
            high = Math.max(high, patchFrom(patch) + patch.lengthMm());
        }
        if (repair.treatment() instanceof Treatment.ReplacePart(var partFrom, var partTo)) {
            low = Math.min(low, partFrom);
            high = Math.max(high, partTo);
        }
        if (repair.treatment() instanceof Treatment.Sister) return new double[] {0, length};
        double more = Math.max(110, 0.2 * (high - low));
        low = Math.max(0, low - more);
        high = Math.min(length, high + more);
        return high - low > 0.8 * length ? new double[] {0, length} : new double[] {low, high};
    }

    private double patchFrom(Treatment.Dutchman patch) {
        return Math.clamp((damage.fromMm() + damage.toMm() - patch.lengthMm()) / 2, 0, Math.max(0, member.lengthMm() - patch.lengthMm()));
    }

    /// @param head paper kept for the title, mm; none where it is 0
    private Drawing draw(double head) {
        if (head > 0) canvas.write(0.5, 4.6, Lettering.fitted(repair.id() + "  " + repair.treatment().words() + ", " + Said.title(member), Ink.LARGE,
                room.width - 2), Ink.LARGE, Anchor.START, Ink.BLACK);
        List<Bench> benches = benches(head);
        asFound(benches.getFirst());
        if (benches.size() > 1) {
            asRepaired(benches.get(1), !room.alone && besides());
            if (benches.size() > 2) asRepaired(benches.get(2), true);
        }
        double bottom = benches.stream().mapToDouble(bench -> bench.whole().bottom()).max().orElse(0) + (standing ? 9.5 : 7);
        canvas.heighten(bottom);
        canvas.heighten(canvas.labels().stream().mapToDouble(label -> label.box().bottom() + 2).max().orElse(0));
        canvas.heighten(new RepairSection(canvas, repair, joint, room.alone ? 30 : 15, units).draw(room.width - room.aside / 2, head + (room.alone ? 3 : 0), room.aside) + 2);
        canvas.heighten(canvas.labels().stream().mapToDouble(label -> label.box().bottom() + 1).max().orElse(0));
        if (room.alone) JointDetail.of(canvas, repair, joint, units).ifPresent(detail -> canvas.heighten(detail.draw(canvas.height() + 4)));
        if (room.alone) new RepairNotes(canvas, repair, units).draw(scale, asFound(), narrow);
        return canvas.done("repair-" + repair.id(), repair.id() + " " + repair.treatment().words() + ", " + Said.title(member), told(), 0.8);
    }

    /// One view as found; two more as repaired where anything is cut.
    private List<Bench> benches(double head) {
        List<Bench> all = new ArrayList<>();
        double x = standing ? room.gap : room.alone ? 14 : 3, y = head + (standing ? 8 + scale.paper(to - from) : 5);
        for (double over : across()) {
            double paper = scale.paper(over);
            all.add(standing ? new Bench(canvas, member, scale, from, to, over, x, y) : new Bench(canvas, member, scale, from, to, over, x, y + paper
                    + 4));
            if (standing) x += paper + room.gap;
            else y += paper + (room.alone ? 19 : 13);
        }
        return all;
    }

    /// How wide the member is in each view: as found, as repaired, and from beside where that tells more.
    private List<Double> across() {
        double over = member.acrossMm(face);
        if (!narrow) return List.of(over);
        if (!room.alone) return List.of(over, besides() ? member.throughMm(face) : over);
        return repair.treatment() instanceof Treatment.Replace ? List.of(over, over) : List.of(over, over, member.throughMm(face));
    }

    /// Whether one view as repaired tells most from beside: where the joint is seen there and nowhere else.
    private boolean besides() { return joint.runs() && joint.through(); }

    private void asFound(Bench bench) {
        canvas.fill(bench.whole(), Ink.PAPER);
        double low = Math.max(from, damage.fromMm()), high = Math.min(to, damage.toMm()), end = joint.end(), sound = end == 0 ? damage.toMm()
                : damage.fromMm();
        if (high > low) canvas.fill(bench.box(low, high, 0, bench.across()), asFound().fill());
        bench.outline();
        if (joint.cuts() && newStops()) cut(bench, false);
        else for (double line : new double[] {damage.fromMm(), damage.toMm()}) if (line > 0 && line < member.lengthMm()) bench.line(line,
                -bench.across() * 0.06, line, bench.across() * 1.06, Ink.CUT);
        bench.grain(sound, end == 0 ? to : from);
        if (damage.atAnEnd() && sound > 0 && sound < member.lengthMm()) bench.measureAlong(damage.atStart() ? 0 : member.lengthMm(), damage.atStart()
                ? damage.toMm() : damage.fromMm(), 5, units);
        else bench.measureAlong(damage.fromMm(), damage.toMm(), 5, units);
        across(bench);
        bench.named(List.of("as found,", seen(face)));
    }

    /// How wide the view is; a small drawing of a lying member leaves that to its section, which has both measures.
    private void across(Bench bench) {
        if (room.alone || standing) bench.measureAcross(units);
    }

    /// The face that is seen; in a small drawing, which has no notes, with its scale.
    private String seen(Face seen) { return Choice.said(seen) + (room.alone ? "" : ", " + scale.plain()); }

    private Hatch asFound() { return Hatch.of(Math.max(damage.deepestMm(), Hatch.SOUND_MM), member.throughMm(face)); }

    /// Whether old wood remains beyond the joint.
    private boolean newStops() { return joint.newMm() < member.lengthMm() - 0.5; }

    private void cut(Bench bench, boolean edge) {
        boolean slopes = joint.sloped() && joint.through() == edge;
        if (joint.lapped() && edge) {
            bench.line(joint.full(), bench.across() * 1.08, joint.full(), bench.across() / 2, Ink.CUT);
            bench.line(joint.full(), bench.across() / 2, joint.tip(), bench.across() / 2, Ink.CUT);
        }
        bench.line(slopes ? joint.full() : joint.tip(), bench.across() * 1.08, joint.tip(), -bench.across() * 0.08, Ink.CUT);
    }

    private void asRepaired(Bench bench, boolean edge) {
        canvas.fill(bench.whole(), Ink.PAPER);
        double over = bench.across(), end = joint.end();
        if (repair.treatment() instanceof Treatment.Dutchman patch) patch(bench, patch, edge);
        else if (repair.treatment() instanceof Treatment.Sister sister) sister(bench, sister, edge);
        else if (repair.treatment() instanceof Treatment.ReplacePart part) part(bench, part, edge);
        else if (joint.sloped() && joint.through() == edge) {
            double nib = repair.treatment() instanceof Treatment.ScarfSplice(_, _, _, var nibMm) ? Math.min(nibMm, over / 2) : 0;
            if (nib > 0) bench.shape(bench.newWood().fill(), Ink.FIRM, end, 0, end, over, joint.full(), over, joint.full(), over - nib, joint.tip(), nib, joint.tip(), 0);
            else bench.shape(bench.newWood().fill(), Ink.FIRM, end, 0, end, over, joint.full(), over, joint.tip(), 0);
        }
        else if (joint.lapped() && edge) {
            double lean = over / 12 * (end == 0 ? 1 : -1);
            bench.shape(bench.newWood().fill(), Ink.FIRM, end, 0, end, over, joint.full(), over, joint.full() + lean, over / 2, joint.tip(), over / 2,
                    joint.tip() - lean, 0);
        } else {
            double out = repair.treatment() instanceof Treatment.BuildUp ? Math.max(0, (widest(edge) - over) / 2) : 0;
            bench.shape(bench.newWood().fill(), Ink.FIRM, end, -out, end, over + out, joint.tip(), over + out, joint.tip(), -out);
            if (joint.runs()) bench.line(joint.full(), 0, joint.full(), over, Ink.HIDDEN);
        }
        if (repair.treatment() instanceof Treatment.BuildUp) {
            bench.line(joint.tip(), 0, to, 0, Ink.FIRM);
            bench.line(joint.tip(), over, to, over, Ink.FIRM);
            bench.end(joint.end() == 0 ? to : from, false);
        } else bench.outline();
        if (repair.treatment() instanceof Treatment.BuildUp) bench.shape(Hatch.BREAK.fill(), Ink.THIN, end, over * 0.03, end, over * 0.97, end
                + (end == 0 ? -1 : 1) * scale.ratio() * 0.9, over * 0.97, end + (end == 0 ? -1 : 1) * scale.ratio() * 0.9, over * 0.03);
        if (joint.cuts() && newStops()) {
            if (joint.runs()) bench.measureAlong(joint.full(), joint.tip(), 5, units);
            bench.measureAlong(end, joint.tip(), joint.runs() ? 10 : 5, units);
            bench.grain(joint.tip(), end == 0 ? to : from);
            fasteners(bench, edge);
        } else if (joint.cuts()) bench.measureAlong(0, member.lengthMm(), 5, units);
        across(bench);
        bench.named(List.of("as repaired,", seen(edge ? beside : face)));
    }

    /// The widest piece of a built-up base, as it is seen in a view.
    private double widest(boolean edge) {
        boolean width = member.acrossMm(face) == member.widthMm() != edge;
        return repair.pieces().stream().mapToDouble(piece -> width ? piece.widthMm() : piece.depthMm()).max().orElse(0);
    }

    /// The new piece stands behind the face and beside it when seen from the end's side.
    private void sister(Bench bench, Treatment.Sister sister, boolean edge) {
        double over = bench.across();
        if (edge) bench.shape(bench.newWood().fill(), Ink.FIRM, Math.max(from, sister.fromMm()), 0, Math.min(to, sister.toMm()), 0, Math.min(to, sister.toMm()), -sister.thickMm(),
                Math.max(from, sister.fromMm()), -sister.thickMm());
        else bench.shape("none", Ink.HIDDEN, Math.max(from, sister.fromMm()), over * 0.04, Math.min(to, sister.toMm()), over * 0.04, Math.min(to, sister.toMm()), over * 0.96, Math.max(from, sister.fromMm()), over * 0.96);
        repair.design().joint().ifPresent(joinery -> Fixed.draw(bench, joinery, sister.fromMm(), 1, !edge, 0));
        bench.measureAlong(Math.max(from, sister.fromMm()), Math.min(to, sister.toMm()), edge ? 5 + scale.paper(sister.thickMm()) : 5, units);
    }

    /// New between two cuts; seen from beside they slope by the thickness, the upper lapping the lower.
    private void part(Bench bench, Treatment.ReplacePart part, boolean edge) {
        double over = bench.across(), lean = edge ? over : 0;
        bench.shape(bench.newWood().fill(), Ink.FIRM, part.fromMm(), 0, part.toMm(), 0, part.toMm() + lean, over, part.fromMm() + lean, over);
        repair.design().joint().ifPresent(joinery -> {
            Fixed.draw(bench, joinery, part.fromMm(), -1, !edge, 0);
            Fixed.draw(bench, joinery, part.toMm(), 1, !edge, 0);
        });
        bench.measureAlong(part.fromMm(), part.toMm(), 5, units);
        bench.grain(part.toMm() + lean, to);
    }

    private void patch(Bench bench, Treatment.Dutchman patch, boolean edge) {
        double a = patchFrom(patch), b = a + patch.lengthMm();
        if (edge) {
            double deep = Math.min(patch.depthMm(), bench.across()), near = a > 0.5 ? deep / 12 : 0, far = b < member.lengthMm() - 0.5 ? deep / 12 : 0;
            bench.shape("none", Ink.HIDDEN, a, 0, a + near, deep, b - far, deep, b, 0);
        } else {
            double wide = Math.min(patch.widthMm(), bench.across()), low = (bench.across() - wide) / 2;
            bench.shape(bench.newWood().fill(), Ink.FIRM, a, low, b, low, b, low + wide, a, low + wide);
        }
        double lowMm = (bench.across() - Math.min(patch.widthMm(), bench.across())) / 2;
        repair.design().joint().ifPresent(joinery -> Fixed.draw(bench, joinery, a, 1, !edge, lowMm));
        bench.measureAlong(a, b, room.alone && !edge && string(bench, a, b) ? 13 : 5, units);
    }

    /// Ends and steps of the fasteners of a patch, where it has any.
    private boolean string(Bench bench, double a, double b) {
        List<Double> alongs = repair.design().joint().flatMap(joinery -> joinery.fixings()).map(fixings -> fixings.places().stream().map(place -> Math.round(place.alongMm() * 100) / 100.0).distinct().sorted().toList()).orElse(List.of());
        if (alongs.isEmpty()) return false;
        double first = alongs.getFirst(), last = alongs.getLast();
        List<Double> stops = last > first ? List.of(a, a + first, a + last, b) : List.of(a, a + first, b);
        List<String> words = new ArrayList<>(List.of(Said.length(first, units), Said.length(b - a - last, units)));
        if (last > first) words.add(1, (alongs.size() > 2 ? (alongs.size() - 1) + " × " : "") + Said.length((last - first) / (alongs.size() - 1), units));
        bench.string(stops, words, 5);
        return true;
    }

    /// The fasteners at their true places; those of an inlay and a scarf are driven from its face, bolts and dowels as the joint has them.
    private void fasteners(Bench bench, boolean edge) {
        repair.design().joint().ifPresent(joinery -> {
            int way = joint.end() == 0 ? 1 : -1;
            boolean driven = switch (joinery.sort()) {
                case SCARF, HALF_LAP -> edge != joint.through();
                case BUTT -> Math.abs(bench.across() - joinery.wideMm()) < 1;
                case INLAY -> !edge;
                case SISTER -> !edge;
            };
            Fixed.draw(bench, joinery, joint.full(), way, driven, 0);
        });
    }

    private String told() {
        String cut = joint.cuts() ? " New wood over " + Said.length(joint.newMm(), units) + " from the " + (joint.end() == 0 ? Said.startName(member)
                : Said.farName(member))
                + (joint.sloped() ? ", the joint sloping over " + Said.length(joint.scarfMm(), units) : "")
                + (joint.lapped() ? ", lapped over " + Said.length(joint.scarfMm(), units) : "") + "." : "";
        return Words.sentence(repair.treatment().words()) + " of " + Said.title(member) + ", soft " + Said.stretch(damage, units) + "." + cut;
    }
}
