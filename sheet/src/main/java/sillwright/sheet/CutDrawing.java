package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.walk.Species;
import sillwright.work.CutSolver;
import sillwright.work.Repair;
import sillwright.work.WorkFindings.Bar;
import sillwright.work.WorkFindings.CutPlan;

/// The cut list as bars: every stock length to scale along, the pieces in the order they are sawn, what is left hatched.
public final class CutDrawing {
    private static final double WIDTH = 178;
    private static final double ROW = 9.5;
    private static final double THICK = 5.2;
    private static final int ROWS = 20;

    private CutDrawing() {}

    /// As many sheets as the bars want; none where nothing is cut.
    public static List<Drawing> draw(List<CutPlan> plans, Units units) {
        double longest = plans.stream().flatMap(plan -> plan.bars().stream()).mapToDouble(Bar::stockMm).max().orElse(0);
        List<Drawing> sheets = new ArrayList<>();
        if (longest <= 0) return sheets;
        Scale scale = Scale.fitting(longest, 0, WIDTH - 20, 1, units);
        List<Row> rows = new ArrayList<>();
        for (CutPlan plan : plans) {
            rows.add(new Row(plan, Optional.empty()));
            for (Bar bar : plan.bars()) rows.add(new Row(plan, Optional.of(bar)));
        }
        for (int from = 0; from < rows.size(); from += ROWS) sheets.add(sheet(rows.subList(from, Math.min(rows.size(), from + ROWS)), scale,
                sheets.size() + 1));
        return List.copyOf(sheets);
    }

    /// One bar alone, small enough for a table; the pieces are named where they are long enough.
    ///
    /// @param longestMm the longest bar of the table, so that all stand to one scale
    static Drawing strip(CutPlan plan, Bar bar, double longestMm, Units units) {
        Scale scale = Scale.fitting(longestMm, 0, 58, 1, units);
        Canvas canvas = new Canvas(60, 4.6);
        bar(canvas, bar, scale, 0.3, 4, false);
        return canvas.done("cut-" + bar.pieces().stream().findFirst().map(Repair.Piece::label).orElse("bar"), "Stock length", "A bar of " + Said.length(bar.stockMm(), units) + " with "
                + Words.count(bar.pieces().size(), "piece") + ", at " + scale.plain() + ".", 0.6);
    }

    /// A heading where it has no bar.
    private record Row(CutPlan plan, Optional<Bar> bar) {}

    private static Drawing sheet(List<Row> rows, Scale scale, int number) {
        Canvas canvas = new Canvas(WIDTH, rows.size() * ROW + 6);
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (row.bar.isEmpty()) heading(canvas, row.plan, i * ROW + 6, scale.units());
            else bar(canvas, row.bar.get(), scale, i * ROW + 1.5, THICK, true);
        }
        canvas.write(0.5, canvas.height() - 1, "lengths " + scale.words() + "; hatched: left over, cross-hatched: defect", Ink.SMALL, Anchor.START, Ink.GREY);
        return canvas.done("cut-list-" + number, "Cut list", "The pieces of new wood laid out on " + Words.count((int) rows.stream()
                .filter(row -> row.bar.isPresent()).count(), "stock length") + "; the table says the same in words.", 0.6);
    }

    private static void heading(Canvas canvas, CutPlan plan, double y, Units units) {
        canvas.write(0.5, y, Lettering.fitted(words(plan, units), Ink.PLAIN, WIDTH - 2), Ink.PLAIN, Anchor.START, Ink.BLACK);
    }

    /// `eastern white pine, 1×10`, by its net section where its name is not known.
    static String stock(CutPlan plan, Units units) {
        return Species.said(plan.species()) + ", " + (plan.bought().name().isEmpty() ? Said.length(plan.widthMm(), units) + " × " + Said.length(plan.depthMm(), units) : plan.bought().name());
    }

    /// The stock of a plan, how much of it, and whether less would do.
    static String words(CutPlan plan, Units units) {
        return stock(plan, units) + ": "
                + Said.length(plan.stockMm(), units) + " of stock, "
                + (plan.proven() ? "no layout uses less" : "another layout might save up to " + Words.percent(plan.gap()));
    }

    private static void bar(Canvas canvas, Bar bar, Scale scale, double y, double thick, boolean alone) {
        canvas.rect(new Box(0.5, y, scale.paper(bar.stockMm()), thick), Hatch.SOFTENED.fill(), Ink.FIRM);
        double line = y + thick - 1.2;
        for (CutSolver.Flaw flaw : bar.flaws()) canvas.rect(new Box(0.5 + scale.paper(flaw.fromMm()), y, scale.paper(flaw.toMm() - flaw.fromMm()), thick), Hatch.DECAYED.fill(), Ink.FIRM);
        for (int k = 0; k < bar.pieces().size(); k++) {
            Repair.Piece piece = bar.pieces().get(k);
            Box box = new Box(0.5 + scale.paper(bar.startsMm().get(k)), y, scale.paper(piece.lengthMm()), thick);
            canvas.rect(box, Ink.PAPER, Ink.FIRM);
            String whole = piece.label() + " " + Said.length(piece.lengthMm(), scale.units());
            for (String words : alone ? List.of(whole, piece.repair() + " " + Said.length(piece.lengthMm(), scale.units()), piece.repair()) : List.of(piece.repair()))
                if (Lettering.widthMm(words, Ink.SMALL) < box.width() - 0.8) {
                    canvas.write(box.midX(), line, words, Ink.SMALL, Anchor.MIDDLE, Ink.BLACK);
                    break;
                }
        }
        if (alone) canvas.write(1.5 + scale.paper(bar.stockMm()), line, Said.length(bar.stockMm(), scale.units()), Ink.SMALL, Anchor.START, Ink.BLACK);
    }
}
