package sillwright.sheet;

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
    /// @return how far down it reaches
    static double draw(Canvas canvas, Member member, SectionLeft left, Scale scale, double x, double top, Units units) {
        double wide = scale.paper(member.widthMm()), high = scale.paper(member.depthMm());
        within(canvas, x, top + 2.6, "section, " + scale.words());
        within(canvas, x, top + 6.4, station(member, left, units));
        double y = top + 12.4;
        canvas.write(x, y - 1.2, "back", Ink.SMALL, Anchor.MIDDLE, Ink.GREY);
        Box whole = new Box(x - wide / 2, y, wide, high);
        outline(canvas, left, scale, whole);
        canvas.write(x, whole.bottom() + 3.4, "front", Ink.SMALL, Anchor.MIDDLE, Ink.GREY);
        double line = whole.bottom() + 7.6;
        for (String words : new String[] {Words.percent(left.areaKept()) + " of area left, at worst " + Words.percent(left.keptLow()),
                "bending " + Words.percent(left.sxKept()) + " and " + Words.percent(left.syKept())}) {
            within(canvas, x, line, words);
            line += 3.9;
        }
        return line - 3;
    }

    /// Words about a middle, moved in where they would run off the sheet.
    static void within(Canvas canvas, double x, double y, String words) {
        canvas.write(Math.min(x, canvas.width() - 0.5 - Lettering.widthMm(words, Ink.SMALL) / 2), y, words, Ink.SMALL, Anchor.MIDDLE, Ink.BLACK);
    }

    /// `at the foot`, `14 in from foot`.
    static String station(Member member, SectionLeft left, Units units) {
        return left.stationMm() < 1 ? "at the " + Said.startName(member) : Said.length(left.stationMm(), units) + " from " + Said.startName(member);
    }

    /// The whole outline, the lost bands hatched, what is left in firm ink.
    static void outline(Canvas canvas, SectionLeft left, Scale scale, Box whole) {
        double front = scale.paper(left.frontMm()), back = scale.paper(left.backMm()), l = scale.paper(left.leftMm()),
                r = scale.paper(left.rightMm());
        canvas.rect(whole, lost(left) ? Hatch.DECAYED.fill() : Ink.PAPER, Ink.THIN);
        double wide = whole.width() - l - r, high = whole.height() - front - back;
        if (wide > 0.05 && high > 0.05) canvas.rect(new Box(whole.left() + l, whole.top() + back, wide, high), Ink.PAPER, Ink.BOLD);
    }

    private static boolean lost(SectionLeft left) { return left.frontMm() + left.backMm() + left.leftMm() + left.rightMm() > 0; }
}
