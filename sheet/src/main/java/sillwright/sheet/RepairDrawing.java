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
import sillwright.work.Material;
import sillwright.work.Repair;
import sillwright.work.Treatment;

/// The measured drawing of one repair: as found with the line to cut to, as repaired from two sides, the section; true to
/// scale and legible in black and white.
public final class RepairDrawing {
    static final double WIDTH = 178;
    private static final double ASIDE = 50;

    private final Repair repair;
    private final Units units;
    private final Damage damage;
    private final Member member;
    private final Face face;
    private final Face beside;
    private final Joint joint;
    private final double from;
    private final double to;
    private final Canvas canvas = new Canvas(WIDTH, 0);
    private final boolean standing;
    private final boolean narrow;
    private final Scale scale;

    private RepairDrawing(Repair repair, Units units) {
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
        this.narrow = joint.cuts() || repair.treatment() instanceof Treatment.Dutchman;
        double over = across().stream().mapToDouble(each -> each).sum();
        this.scale = standing ? Scale.fitting(over, to - from, WIDTH - ASIDE - (narrow ? 66 : 30), narrow ? 92 : 46, units)
                : Scale.fitting(to - from, over, WIDTH - ASIDE - 26, narrow ? 42 : 26, units);
    }

    public static Drawing draw(Repair repair, Units units) { return new RepairDrawing(repair, units).draw(8); }

    /// Without its title, for a page that says it already.
    static Drawing untitled(Repair repair, Units units) { return new RepairDrawing(repair, units).draw(0); }

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
                WIDTH - 2), Ink.LARGE, Anchor.START, Ink.BLACK);
        List<Bench> benches = benches(head);
        asFound(benches.getFirst());
        if (benches.size() > 1) {
            asRepaired(benches.get(1), false);
            if (benches.size() > 2) asRepaired(benches.get(2), true);
        }
        double bottom = benches.stream().mapToDouble(bench -> bench.whole().bottom()).max().orElse(0) + (standing ? 9.5 : 7);
        canvas.heighten(bottom);
        canvas.heighten(canvas.labels().stream().mapToDouble(label -> label.box().bottom() + 2).max().orElse(0));
        canvas.heighten(new RepairSection(canvas, repair, joint, units).draw(WIDTH - ASIDE / 2, head + 3) + 2);
        new RepairNotes(canvas, repair, units).draw(scale, asFound(), narrow);
        return canvas.done("repair-" + repair.id(), repair.id() + " " + repair.treatment().words() + ", " + Said.title(member), told(), 0.8);
    }

    /// One view as found; two more as repaired where anything is cut.
    private List<Bench> benches(double head) {
        List<Bench> all = new ArrayList<>();
        double x = standing ? 22 : 14, y = head + (standing ? 8 + scale.paper(to - from) : 5);
        for (double over : across()) {
            double paper = scale.paper(over);
            all.add(standing ? new Bench(canvas, member, scale, from, to, over, x, y) : new Bench(canvas, member, scale, from, to, over, x, y + paper
                    + 4));
            if (standing) x += paper + 22;
            else y += paper + 19;
        }
        return all;
    }

    /// How wide the member is in each view: as found, as repaired, and from beside where that tells more.
    private List<Double> across() {
        double over = member.acrossMm(face);
        if (!narrow) return List.of(over);
        return repair.treatment() instanceof Treatment.Replace ? List.of(over, over) : List.of(over, over, member.throughMm(face));
    }

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
        bench.measureAcross(units);
        bench.named(List.of("as found,", Choice.said(face)));
    }

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
        else if (joint.sloped() && joint.through() == edge) bench.shape(bench.newWood().fill(), Ink.FIRM, end, 0, end, over, joint.full(), over,
                joint.tip(), 0);
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
        bench.measureAcross(units);
        bench.named(List.of("as repaired,", Choice.said(edge ? beside : face)));
    }

    /// The widest piece of a built-up base, as it is seen in a view.
    private double widest(boolean edge) {
        boolean width = member.acrossMm(face) == member.widthMm() != edge;
        return repair.pieces().stream().mapToDouble(piece -> width ? piece.widthMm() : piece.depthMm()).max().orElse(0);
    }

    private void patch(Bench bench, Treatment.Dutchman patch, boolean edge) {
        double a = patchFrom(patch), b = a + patch.lengthMm();
        if (edge) {
            double deep = Math.min(patch.depthMm(), bench.across()), lean = deep / 12;
            bench.shape("none", Ink.HIDDEN, a, 0, a + lean, deep, b - lean, deep, b, 0);
        } else {
            double wide = Math.min(patch.widthMm(), bench.across()), low = (bench.across() - wide) / 2;
            bench.shape(bench.newWood().fill(), Ink.FIRM, a, low, b, low, b, low + wide, a, low + wide);
        }
        bench.measureAlong(a, b, 5, units);
    }

    /// Centre lines of the screws or dowels that the repair states, spread over the joint: how many, not how long.
    private void fasteners(Bench bench, boolean edge) {
        int screws = (int) Math.round(repair.needs().stream()
                .filter(need -> need.material() == Material.SCREW).mapToDouble(Repair.Need::amount).sum());
        double over = bench.across();
        Ink.Pen centre = new Ink.Pen(Ink.BLACK, 0.18, "1.8 0.5 0.4 0.5");
        if (joint.sloped() && screws > 0) {
            int pairs = (int) Math.ceil(Math.min(screws, 12) / 2.0);
            for (int i = 0; i < pairs; i++) {
                double at = joint.full() + (joint.tip() - joint.full()) * (i + 1) / (pairs + 1);
                if (edge == joint.through()) bench.line(at, -over * 0.06, at, over * 1.06, centre);
                else for (double row : new double[] {0.28, 0.72}) canvas.circle(bench.px(at, over * row), bench.py(at, over * row), 0.55, Ink.PAPER,
                        Ink.THIN);
            }
        } else if (joint.lapped()) {
            for (double share : new double[] {0.25, 0.75}) {
                double at = joint.full() + (joint.tip() - joint.full()) * share;
                if (edge) bench.line(at, -over * 0.1, at, over * 1.1, centre);
                else canvas.circle(bench.px(at, over / 2), bench.py(at, over / 2), 1, Ink.PAPER, Ink.FIRM);
            }
        } else if (repair.steps().stream().anyMatch(step -> step.contains("dowel"))) {
            double reach = Math.max(60, over * 0.5);
            for (double row : new double[] {0.3, 0.7}) bench.line(joint.tip() - reach, over * row, joint.tip() + reach, over * row, centre);
        }
    }

    private String told() {
        String cut = joint.cuts() ? " New wood over " + Said.length(joint.newMm(), units) + " from the " + (joint.end() == 0 ? Said.startName(member)
                : Said.farName(member))
                + (joint.sloped() ? ", the joint sloping over " + Said.length(joint.scarfMm(), units) : "")
                + (joint.lapped() ? ", lapped over " + Said.length(joint.scarfMm(), units) : "") + "." : "";
        return Words.sentence(repair.treatment().words()) + " of " + Said.title(member) + ", soft " + Said.stretch(damage, units) + "." + cut;
    }
}
