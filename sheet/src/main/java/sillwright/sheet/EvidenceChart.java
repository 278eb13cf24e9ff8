package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.water.WaterFindings.Evidence;

/// The evidence of one source as bars from a middle line, numbered as the list beside it: right and filled where it speaks for the source, left
/// and open where it speaks against it. Two millimetres to a bit; a bar at the edge goes on beyond.
final class EvidenceChart {
    private static final double WIDTH = 18, MIDDLE = 5.5, BIT = 2, ROW = 3.3;

    private EvidenceChart() {}

    static Drawing draw(String source, List<Evidence> evidence) {
        Canvas canvas = new Canvas(WIDTH, evidence.size() * ROW + 0.4);
        List<String> told = new ArrayList<>();
        for (int i = 0; i < evidence.size(); i++) {
            double bits = evidence.get(i).weight(), y = i * ROW + 0.5;
            double wide = Math.clamp(Math.abs(bits) * BIT, 0.4, bits >= 0 ? WIDTH - MIDDLE - 1 : MIDDLE - 1);
            canvas.rect(new Box(bits >= 0 ? MIDDLE : MIDDLE - wide, y, wide, ROW - 1.1), bits >= 0 ? Ink.BLACK : Ink.PAPER, Ink.THIN);
            canvas.write(bits >= 0 ? MIDDLE - 0.8 : MIDDLE + 0.8, y + 2.1, String.valueOf(i + 1), Ink.SMALL, bits >= 0 ? Anchor.END : Anchor.START, Ink.BLACK);
            told.add((i + 1) + (bits >= 0 ? " for " : " against ") + Words.number(Math.abs(bits), 1));
        }
        canvas.line(MIDDLE, 0, MIDDLE, canvas.height(), Ink.HAIR);
        return canvas.done("evidence-" + source.toLowerCase(java.util.Locale.ROOT), "Evidence for " + source, "Evidence for " + source + " in bits: " + String.join(", ", told) + ".", 1);
    }
}
