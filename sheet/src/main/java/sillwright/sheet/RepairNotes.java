package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Species;
import sillwright.wood.Damage;
import sillwright.work.Repair;
import sillwright.work.Treatment;

/// What stands beneath the views of a repair: the pieces, what to mind, what the hatches mean.
final class RepairNotes {
    private final Canvas canvas;
    private final Repair repair;
    private final Units units;
    private final Damage damage;

    RepairNotes(Canvas canvas, Repair repair, Units units) {
        this.canvas = canvas;
        this.repair = repair;
        this.units = units;
        this.damage = repair.damage();
    }

    /// @param asFound how the damage is hatched
    /// @param cuts    whether new wood is drawn
    void draw(Scale scale, Hatch asFound, boolean cuts) {
        notes();
        legend(scale, asFound, cuts);
    }

    private void notes() {
        List<String> lines = new ArrayList<>();
        for (Repair.Piece piece : repair.pieces()) lines.add(piece.label() + ": " + Species.said(piece.species()) + ", " + Said.size(piece.widthMm(),
                piece.depthMm(), piece.lengthMm(), units) + ", grain along its length");
        switch (repair.treatment()) {
            case Treatment.Watch(var until) -> lines.add("nothing is cut; look again: " + until);
            case Treatment.Recoat(var areaMm2) -> lines.add("coat " + Words.area(areaMm2, units) + " of bare or failing skin");
            case Treatment.Reseat(var backMm2) -> lines.add("taken off whole, " + Words.area(backMm2, units) + " of its back primed, and fixed again");
            case Treatment.Consolidate(var liquidMl) -> lines.add("consolidant " + Words.volume(liquidMl, units));
            case Treatment.Fill(var liquidMl, var fillMl) -> lines.add("consolidant " + Words.volume(liquidMl, units) + ", filler " + Words.volume(fillMl, units));
            case Treatment.Sister _ -> lines.add("the old member stays; the sister carries its load");
            case Treatment.ReplacePart _ -> lines.add("red dashes: the lines to cut to, each over a stud, joist or block");
            case Treatment.Dutchman(_, _, var depthMm) -> lines.add("pocket " + Said.length(depthMm, units)
                    + " deep, its edges back-cut a little so that the line at the face closes (drawn 1 in 12)");
            case Treatment.BuildUp _ -> lines.add("black: capillary break under the base, held in from its edge; leave a gap that drains");
            case Treatment.HalfLap _ -> lines.add("red dashes: the line to cut to; bolts and props are the engineer's to settle");
            case Treatment.ButtSplice _, Treatment.ScarfSplice _ ->
                    lines.add("red dashes: the line to cut to; take it from sound wood, not from this sheet");
            case Treatment.Replace(var because) -> lines.add("the whole member in kind: " + because);
        }
        if (damage.ranOut()) lines.add("a probe ran out here: the wood may be soft or hollow further in than is drawn");
        repair.design().joint().flatMap(joint -> joint.fixings()).ifPresent(fixings -> lines.add(Fixed.words(fixings, units)));
        repair.design().rings().ifPresent(rings -> lines.add(rings.words()));
        double y = canvas.height() + 3;
        for (String line : lines)
            for (String part : wrapped(line, canvas.width() - 4)) {
                canvas.write(0.5, y, part, Ink.SMALL, Anchor.START, Ink.BLACK);
                y += 4.2;
            }
        canvas.heighten(y - 2);
    }

    static List<String> wrapped(String words, double widthMm) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Lettering.sayable(words).split(" ")) {
            if (!line.isEmpty() && Lettering.widthMm(line + " " + word, Ink.SMALL) > widthMm) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        if (!line.isEmpty()) lines.add(line.toString());
        return lines;
    }

    private void legend(Scale scale, Hatch asFound, boolean cuts) {
        double y = canvas.height() + 1.5, x = 0.5;
        if (asFound != Hatch.DECAYED) x = Marks.swatch(canvas, x, y, asFound, asFound.legend(units));
        x = Marks.swatch(canvas, x, y, Hatch.DECAYED, asFound == Hatch.DECAYED ? "decayed" : "lost from the section");
        if (cuts) x = Marks.swatch(canvas, x, y, Hatch.NEW_LEVEL, "new wood");
        if (repair.treatment() instanceof Treatment.BuildUp) x = Marks.swatch(canvas, x, y, Hatch.BREAK, "capillary break");
        Marks.grain(canvas, x, y + 1.8, x + 7, y + 1.8);
        x = canvas.write(x + 8, y + 2.9, "grain", Ink.SMALL, Anchor.START, Ink.BLACK).right() + 5;
        String views = "views " + scale.words();
        if (x + Lettering.widthMm(views, Ink.SMALL) > canvas.width() - 1) {
            x = 0.5;
            y += 4.7;
        }
        x = canvas.write(x, y + 2.9, views, Ink.SMALL, Anchor.START, Ink.BLACK).right() + 5;
        String beware = "screening; measure again before cutting";
        boolean beside = x + Lettering.widthMm(beware, Ink.SMALL) < canvas.width() - 1;
        canvas.write(canvas.width() - 1, beside ? y + 2.9 : y + 7.6, beware, Ink.SMALL, Anchor.END, Ink.ACT);
        canvas.heighten(y + (beside ? 4.4 : 9));
    }
}
