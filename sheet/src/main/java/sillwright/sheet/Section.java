package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Member;
import sillwright.wood.SectionLeft;

/// What is left of a member's section at its worst station: width level, depth upright, the front below.
final class Section {
    private Section() {}

    static Scale scale(Member member, double roomMm, Units units) { return Scale.fitting(member.widthMm(), member.depthMm(), roomMm, roomMm, units); }

    /// @param x    of the middle
    /// @param top  of all that is drawn
    /// @param room how wide its words may stand, mm
    /// @return how far down it reaches
    static double draw(Canvas canvas, Member member, SectionLeft left, Scale scale, double x, double top, double room, Units units) {
        double y = words(canvas, x, top + 2.6, room, "section, " + scale.words(), station(member, left, units)) + 2.2;
        canvas.write(x, y - 1.2, "back", Ink.SMALL, Anchor.MIDDLE, Ink.GREY);
        double bottom = box(canvas, member, left, scale, x, y);
        return words(canvas, x, bottom + 7.6, room, Words.percent(left.areaKept()) + " of area left, at worst " + Words.percent(left.keptLow()),
                "bending " + Words.percent(left.sxKept()) + " and " + Words.percent(left.syKept())) - 3;
    }

    /// With no more words than stand nowhere else.
    static double small(Canvas canvas, Member member, SectionLeft left, Scale scale, double x, double top, double room, Units units) {
        double y = words(canvas, x, top + 2.6, room, "section, " + scale.plain(), station(member, left, units)) - 2;
        return box(canvas, member, left, scale, x, y) + 4.2;
    }

    private static double box(Canvas canvas, Member member, SectionLeft left, Scale scale, double x, double y) {
        double wide = scale.paper(member.widthMm()), high = scale.paper(member.depthMm());
        Box whole = new Box(x - wide / 2, y, wide, high);
        outline(canvas, left, scale, whole);
        canvas.write(x, whole.bottom() + 3.4, "front", Ink.SMALL, Anchor.MIDDLE, Ink.GREY);
        return whole.bottom();
    }

    /// The first height from a top on at which lines about a middle stand clear of all that is lettered.
    static double free(Canvas canvas, double x, double top, double room, String... all) {
        List<String> lines = new ArrayList<>();
        for (String words : all) lines.addAll(RepairNotes.wrapped(words, room));
        for (double down = 0; down < 60; down += 1.5) {
            boolean free = true;
            for (int i = 0; i < lines.size(); i++) free &= canvas.free(Canvas.covers(middle(canvas, x, lines.get(i)), top + down + 2.6 + i * 3.8, lines.get(i), Ink.SMALL, Anchor.MIDDLE).grown(1));
            if (free) return top + down;
        }
        return top;
    }

    /// Lines about a middle, broken where they are wider than their room; returns where the next would stand.
    static double words(Canvas canvas, double x, double y, double room, String... all) {
        double line = y;
        for (String words : all)
            for (String part : RepairNotes.wrapped(words, room)) {
                within(canvas, x, line, part);
                line += 3.8;
            }
        return line;
    }

    /// Words about a middle, moved in where they would run off the sheet.
    static void within(Canvas canvas, double x, double y, String words) { canvas.write(middle(canvas, x, words), y, words, Ink.SMALL, Anchor.MIDDLE, Ink.BLACK); }

    private static double middle(Canvas canvas, double x, String words) {
        double half = Lettering.widthMm(words, Ink.SMALL) / 2;
        return Math.clamp(x, Math.min(x, half), Math.max(1, canvas.width() - 0.5 - half));
    }

    /// `at the foot`, `14 in from foot`.
    static String station(Member member, SectionLeft left, Units units) {
        return left.stationMm() < 1 ? "at the " + Said.startName(member) : Said.length(left.stationMm(), units) + " from " + Said.startName(member);
    }

    /// The whole outline, the lost bands hatched, what is left in firm ink.
    static void outline(Canvas canvas, SectionLeft left, Scale scale, Box whole) {
        if (left.shapes().isPresent()) {
            canvas.rect(whole, Hatch.DECAYED.fill(), Ink.THIN);
            List<double[]> slabs = left.shapes().get().likely().sound().slabs().stream().map(slab -> slab.stream().flatMapToDouble(corner ->
                    DoubleStream.of(whole.left() + scale.paper(corner.xMm()), whole.bottom() - scale.paper(corner.yMm()))).toArray()).toList();
            for (double[] slab : slabs) canvas.polygon(Ink.PAPER, Ink.BOLD, slab);
            for (double[] slab : slabs) canvas.polygon(Ink.PAPER, Ink.SEAM, slab);
            return;
        }
        double front = scale.paper(left.frontMm()), back = scale.paper(left.backMm()), l = scale.paper(left.leftMm()),
                r = scale.paper(left.rightMm());
        canvas.rect(whole, lost(left) ? Hatch.DECAYED.fill() : Ink.PAPER, Ink.THIN);
        double wide = whole.width() - l - r, high = whole.height() - front - back;
        if (wide > 0.05 && high > 0.05) canvas.rect(new Box(whole.left() + l, whole.top() + back, wide, high), Ink.PAPER, Ink.BOLD);
    }

    private static boolean lost(SectionLeft left) { return left.frontMm() + left.backMm() + left.leftMm() + left.rightMm() > 0; }
}
