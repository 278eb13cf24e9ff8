package sillwright.sheet;

import sillwright.measure.Units;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Member;
import sillwright.wood.Damage;
import sillwright.work.Repair;
import sillwright.work.Treatment;

/// The cross-section of a repair, larger than its other views: what is lost, or what is let in.
final class RepairSection {
    private final Canvas canvas;
    private final Repair repair;
    private final Joint joint;
    private final Units units;
    private final Damage damage;
    private final Member member;
    private final Scale scale;

    RepairSection(Canvas canvas, Repair repair, Joint joint, Units units) {
        this.canvas = canvas;
        this.repair = repair;
        this.joint = joint;
        this.units = units;
        this.damage = repair.damage();
        this.member = damage.member();
        this.scale = Scale.fitting(Math.max(member.widthMm(), base(true)), Math.max(member.depthMm(), base(false)), 30, 28, units);
    }

    /// The built-up base is as wide as its widest piece.
    private double base(boolean width) {
        if (!(repair.treatment() instanceof Treatment.BuildUp)) return 0;
        return repair.pieces().stream().mapToDouble(piece -> width ? piece.widthMm() : piece.depthMm()).max().orElse(0);
    }

    /// @param x of the middle
    /// @return how far down it reaches
    double draw(double x, double top) {
        Box whole = new Box(x - scale.paper(member.widthMm()) / 2, top + 17, scale.paper(member.widthMm()), scale.paper(member.depthMm()));
        String name = switch (repair.treatment()) {
            case Treatment.Dutchman patch -> {
                patch(whole, patch);
                yield "through the patch";
            }
            case Treatment.BuildUp _ -> {
                whole = base(whole);
                yield "plan of the base";
            }
            case Treatment.Replace _ -> {
                canvas.rect(whole, Hatch.SOFTENED.fill(), Ink.BOLD);
                canvas.fill(whole.grown(-0.3), Ink.PAPER);
                endGrain(whole);
                yield "the new member";
            }
            case Treatment.ButtSplice _, Treatment.HalfLap _, Treatment.ScarfSplice _, Treatment.Watch _, Treatment.Recoat _, Treatment.Consolidate _ -> {
                Section.outline(canvas, damage.section(), scale, whole);
                yield "as found, " + Section.station(member, damage.section(), units);
            }
        };
        Section.within(canvas, x, top + 2.6, "section, " + scale.words());
        Section.within(canvas, x, top + 6.4, name);
        Marks.level(canvas, whole.left(), whole.right(), whole.top(), whole.top() - 4, Said.length(whole.width() * scale.ratio(), units));
        Marks.upright(canvas, whole.bottom(), whole.top(), whole.left(), whole.left() - 4, Said.length(whole.height() * scale.ratio(), units));
        canvas.write(x, whole.bottom() + 4, member.run() == Member.Run.OUTWARD ? "bottom" : "front", Ink.SMALL, Anchor.MIDDLE, Ink.GREY);
        return whole.bottom() + 6;
    }

    /// Let in from the worst face, whichever side of the section that is.
    private void patch(Box whole, Treatment.Dutchman patch) {
        canvas.rect(whole, Ink.PAPER, Ink.BOLD);
        double wide = scale.paper(patch.widthMm()), deep = scale.paper(patch.depthMm()), lean = deep / 12, x = whole.midX(), y = whole.midY();
        double[] corners = switch (member.sectionSide(damage.worst())) {
            case FRONT -> new double[] {x - wide / 2, whole.bottom(), x + wide / 2, whole.bottom(), x + wide / 2 - lean, whole.bottom() - deep,
                    x - wide / 2 + lean, whole.bottom() - deep};
            case BACK -> new double[] {x - wide / 2, whole.top(), x + wide / 2, whole.top(), x + wide / 2 - lean, whole.top() + deep, x - wide / 2
                    + lean, whole.top() + deep};
            case LEFT -> new double[] {whole.left(), y - wide / 2, whole.left(), y + wide / 2, whole.left() + deep, y + wide / 2 - lean, whole.left()
                    + deep, y - wide / 2 + lean};
            case RIGHT -> new double[] {whole.right(), y - wide / 2, whole.right(), y + wide / 2, whole.right() - deep, y + wide / 2 - lean,
                    whole.right() - deep, y - wide / 2 + lean};
        };
        canvas.polygon(Hatch.NEW_LEVEL.fill(), Ink.FIRM, corners);
    }

    /// The base from above: its pad beneath, held in from the edge, and the member on it.
    private Box base(Box member) {
        double wide = Math.max(member.width(), scale.paper(base(true))), high = Math.max(member.height(), scale.paper(base(false)));
        Box block = new Box(member.midX() - wide / 2, member.top(), wide, high);
        canvas.rect(block, Hatch.NEW_LEVEL.fill(), Ink.BOLD);
        canvas.rect(block.grown(-Math.max(0.8, scale.paper(6.35))), "none", Ink.HIDDEN);
        canvas.rect(new Box(block.midX() - member.width() / 2, block.midY() - member.height() / 2, member.width(), member.height()), Ink.PAPER,
                Ink.FIRM);
        return block;
    }

    /// Growth rings, as the end of a board shows them.
    private void endGrain(Box whole) {
        double step = Math.max(1.4, Math.min(whole.width(), whole.height()) / 7);
        for (double y = whole.bottom() - step; y > whole.top() + 0.4; y -= step) {
            double rise = Math.min(step * 0.8, y - whole.top() - 0.2);
            canvas.add(Ink.HAIR.on(Markup.of("path").with("fill", "none").with("d", "M" + Marks.at(whole.left(), y) + "Q"
                    + Marks.at(whole.midX(), y - rise * 2) + " " + Marks.at(whole.right(), y))));
        }
    }
}
