package sillwright.sheet;

import sillwright.measure.Units;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Member;
import sillwright.wood.Damage;
import sillwright.work.Repair;
import sillwright.work.Treatment;
import sillwright.work.stock.Rings;

/// The cross-section of a repair, larger than its other views: what is lost, or what is let in.
final class RepairSection {
    private final Canvas canvas;
    private final Repair repair;
    private final Joint joint;
    private final Units units;
    private final Damage damage;
    private final Member member;
    private final Scale scale;
    private final double largest;

    /// @param largest it may be drawn on paper, mm
    RepairSection(Canvas canvas, Repair repair, Joint joint, double largest, Units units) {
        this.canvas = canvas;
        this.repair = repair;
        this.joint = joint;
        this.units = units;
        this.damage = repair.damage();
        this.member = damage.member();
        this.largest = largest;
        this.scale = Scale.fitting(Math.max(member.widthMm(), base(true)), Math.max(member.depthMm(), base(false)), largest, largest, units);
    }

    /// The built-up base is as wide as its widest piece.
    private double base(boolean width) {
        if (!(repair.treatment() instanceof Treatment.BuildUp)) return 0;
        return repair.pieces().stream().mapToDouble(piece -> width ? piece.widthMm() : piece.depthMm()).max().orElse(0);
    }

    /// @param x    of the middle
    /// @param room how wide its words may stand, mm
    /// @return how far down it reaches
    double draw(double x, double from, double room) {
        double[] bottom = {from};
        canvas.part(scale.ratio(), x, from, () -> bottom[0] = drawn(x, from, room));
        return bottom[0];
    }

    private double drawn(double x, double from, double room) {
        double top = Section.free(canvas, x, from, room, scaled(), name());
        Box whole = new Box(x - scale.paper(member.widthMm()) / 2, top + 11.5 + 3.8 * (lines(scaled(), room) + lines(name(), room) - 1), scale.paper(member.widthMm()), scale.paper(member.depthMm()));
        switch (repair.treatment()) {
            case Treatment.Dutchman patch -> patch(whole, patch);
            case Treatment.BuildUp _ -> whole = base(whole);
            case Treatment.Replace _ -> {
                canvas.rect(whole, Hatch.SOFTENED.fill(), Ink.BOLD);
                canvas.fill(whole.grown(-0.3), Ink.PAPER);
                endGrain(whole, repair.design().rings().orElse(Rings.BARK_OUT));
            }
            case Treatment.ButtSplice _, Treatment.HalfLap _, Treatment.ScarfSplice _, Treatment.Watch _, Treatment.Recoat _, Treatment.Reseat _,
                 Treatment.Consolidate _, Treatment.Fill _, Treatment.ReplacePart _ -> Section.outline(canvas, damage.section(), scale, whole);
            case Treatment.Sister sister -> {
                Section.outline(canvas, damage.section(), scale, whole);
                sister(whole, sister);
            }
        }
        Section.words(canvas, x, top + 2.6, room, scaled(), name());
        Marks.level(canvas, whole.left(), whole.right(), whole.top(), whole.top() - 4, Said.length(whole.width() * scale.ratio(), units));
        Marks.upright(canvas, whole.bottom(), whole.top(), whole.left(), whole.left() - 4, Said.length(whole.height() * scale.ratio(), units));
        String under = member.run() == Member.Run.OUTWARD ? "bottom" : "front";
        double line = whole.bottom() + 4;
        while (!canvas.free(Canvas.covers(x, line, under, Ink.SMALL, Anchor.MIDDLE))) line += 1;
        canvas.write(x, line, under, Ink.SMALL, Anchor.MIDDLE, Ink.GREY);
        // Once the words above and the sizes of the whole stand, so that these keep clear of them.
        if (repair.treatment() instanceof Treatment.Dutchman patch) sizes(whole, patch);
        return line + 2;
    }

    private String scaled() { return "section, " + (largest < 20 ? scale.plain() : scale.words()); }

    private static int lines(String words, double room) { return RepairNotes.wrapped(words, room).size(); }

    private String name() {
        return switch (repair.treatment()) {
            case Treatment.Dutchman _ -> "through the patch";
            case Treatment.BuildUp _ -> "plan of the base";
            case Treatment.Replace _ -> "the new member";
            case Treatment.ButtSplice _, Treatment.HalfLap _, Treatment.ScarfSplice _, Treatment.Watch _, Treatment.Recoat _, Treatment.Reseat _,
                 Treatment.Consolidate _, Treatment.Fill _, Treatment.Sister _, Treatment.ReplacePart _ ->
                    (largest < 20 ? "" : "as found, ") + Section.station(member, damage.section(), units);
        };
    }

    /// Let in from the worst face, whichever side of the section that is.
    private void patch(Box whole, Treatment.Dutchman patch) {
        canvas.rect(whole, Ink.PAPER, Ink.BOLD);
        double wide = scale.paper(patch.widthMm()), deep = scale.paper(patch.depthMm()), lean = patch.widthMm() < member.acrossMm(damage.worst()) - 0.5 ? deep / 12 : 0, x = whole.midX(), y = whole.midY();
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

    /// How deep and, where it is let in between two edges, how wide.
    private void sizes(Box whole, Treatment.Dutchman patch) {
        double wide = scale.paper(patch.widthMm()), deep = scale.paper(patch.depthMm());
        boolean edges = patch.widthMm() < member.acrossMm(damage.worst()) - 0.5;
        String deepSaid = Said.length(patch.depthMm(), units), wideSaid = Said.length(patch.widthMm(), units);
        switch (member.sectionSide(damage.worst())) {
            case FRONT, BACK -> {
                boolean front = member.sectionSide(damage.worst()) == Member.SectionSide.FRONT;
                double face = front ? whole.bottom() : whole.top();
                Marks.upright(canvas, face, front ? face - deep : face + deep, whole.right(), whole.right() + 4, deepSaid);
                if (edges) Marks.level(canvas, whole.midX() - wide / 2, whole.midX() + wide / 2, whole.bottom(), whole.bottom() + 8, wideSaid);
            }
            case LEFT, RIGHT -> {
                boolean left = member.sectionSide(damage.worst()) == Member.SectionSide.LEFT;
                double face = left ? whole.left() : whole.right();
                Marks.level(canvas, face, left ? face + deep : face - deep, whole.bottom(), whole.bottom() + 8, deepSaid);
                if (edges) Marks.upright(canvas, whole.midY() + wide / 2, whole.midY() - wide / 2, whole.right(), whole.right() + 4, wideSaid);
            }
        }
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

    /// Growth rings as they are to lie: upright to the face where quarter-sawn; else in arcs about a heart that is behind the face, or off the corner of a timber.
    private void endGrain(Box whole, Rings rings) {
        double step = Math.max(1.4, Math.min(whole.width(), whole.height()) / 7);
        if (rings == Rings.QUARTER) {
            boolean level = whole.width() < whole.height();
            if (level) for (double y = whole.top() + step; y < whole.bottom() - 0.4; y += step) canvas.line(whole.left(), y, whole.right(), y, Ink.HAIR);
            else for (double x = whole.left() + step; x < whole.right() - 0.4; x += step) canvas.line(x, whole.top(), x, whole.bottom(), Ink.HAIR);
            return;
        }
        for (double y = whole.top() + step; y < whole.bottom() - 0.4; y += step) {
            double sink = Math.min(step * 0.8, whole.bottom() - y - 0.2);
            boolean free = rings == Rings.FREE_OF_HEART;
            double left = free ? y - sink : y, right = free ? Math.min(whole.bottom(), y + sink) : y;
            canvas.add(Ink.HAIR.on(Markup.of("path").with("fill", "none").with("d", "M" + Marks.at(whole.left(), Math.max(whole.top(), left)) + "Q"
                    + Marks.at(whole.midX(), y + sink * 2) + " " + Marks.at(whole.right(), right))));
        }
    }

    /// The sister beside the old section, on the side away from the face.
    private void sister(Box whole, Treatment.Sister sister) {
        double thick = scale.paper(sister.thickMm());
        boolean out = member.run() == Member.Run.OUTWARD;
        Box beside = out ? new Box(whole.right(), whole.top(), thick, whole.height()) : new Box(whole.left(), whole.top() - thick, whole.width(), thick);
        canvas.rect(beside, Hatch.NEW_LEVEL.fill(), Ink.BOLD);
    }
}
