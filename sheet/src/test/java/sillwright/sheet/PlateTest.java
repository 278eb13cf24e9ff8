package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import sillwright.measure.Units;
import sillwright.sheet.Canvas.Anchor;

/// Drawings in a PDF as PDFBox's own reader and painter of pages find them; the page of a drawing has a margin of 10 mm.
@DisplayNameGeneration(ReplaceUnderscores.class)
class PlateTest {
    private static final double POINT = 25.4 / 72, MARGIN = 10;

    @TempDir
    private Path folder;

    private PDDocument page(Drawing drawing) throws Exception {
        Path file = folder.resolve("page.pdf");
        Dossier.page(drawing, file);
        return Loader.loadPDF(Files.readAllBytes(file));
    }

    private record Word(String said, double x, double y) {}

    private static List<Word> words(PDDocument pdf) throws Exception {
        List<Word> all = new ArrayList<>();
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                all.add(new Word(letter.getUnicode(), letter.getTextMatrix().getTranslateX() * POINT, (pdf.getPage(0).getMediaBox().getHeight() - letter.getTextMatrix().getTranslateY()) * POINT));
            }
        }.getText(pdf);
        return all;
    }

    @Test
    void every_label_of_an_elevation_begins_where_the_drawing_has_it() throws Exception {
        Drawing south = Elevation.draw(Porch.assessment(Units.US), "south");
        try (PDDocument pdf = page(south)) {
            List<Word> letters = words(pdf);
            for (Drawing.Label label : south.labels()) {
                boolean upright = Math.abs(label.box().width() - Lettering.widthMm(label.words(), label.sizeMm())) > 0.01;
                double x = MARGIN + (upright ? label.box().left() + 0.76 * label.sizeMm() : label.box().left()), y = MARGIN + (upright ? label.box().bottom() : label.box().top() + 0.76 * label.sizeMm());
                String first = label.words().substring(0, 1);
                assertTrue(letters.stream().anyMatch(letter -> letter.said.equals(first) && Math.hypot(letter.x - x, letter.y - y) < 0.1), label + " is not at " + x + ", " + y);
            }
        }
    }

    /// Ink of a place on the drawing, 0 for paper to 255.
    private static int ink(BufferedImage page, double xMm, double yMm) {
        int most = 0, x = (int) ((xMm + MARGIN) * DOTS), y = (int) ((yMm + MARGIN) * DOTS);
        for (int i = -1; i <= 1; i++) for (int j = -1; j <= 1; j++) most = Math.max(most, 255 - (page.getRGB(x + i, y + j) & 255));
        return most;
    }

    private static final int DOTS = 8;

    @Test
    void lines_curves_and_hatches_leave_their_ink_where_they_are_drawn() throws Exception {
        Canvas canvas = new Canvas(100, 80);
        canvas.line(10, 10, 50, 10, Ink.BOLD);
        canvas.rect(new Box(10, 20, 20, 10), Hatch.BREAK.fill(), Ink.FIRM);
        canvas.circle(60, 30, 8, "none", Ink.BOLD);
        canvas.polygon("none", Ink.BOLD, 70, 50, 90, 50, 90, 70);
        canvas.add(Ink.BOLD.on(Markup.of("path").with("fill", "none").with("d", "M10 60Q30 40 50 60")));
        canvas.write(20, 75, "ground", Ink.LARGE, Anchor.MIDDLE, Ink.BLACK);
        try (PDDocument pdf = page(canvas.done("try", "A trial", "Lines, a hatch, a circle, a triangle and a curve.", 1))) {
            BufferedImage page = new PDFRenderer(pdf).renderImage(0, DOTS * 25.4f / 72, ImageType.RGB);
            double[][] inked = {{30, 10}, {20, 25}, {68, 30}, {60, 22}, {54.343, 35.657}, {80, 50}, {80, 60}, {30, 50}, {20, 52.8}};
            for (double[] at : inked) assertTrue(ink(page, at[0], at[1]) > 150, at[0] + ", " + at[1] + " is bare");
            for (double[] at : new double[][] {{55, 10}, {60, 30}, {35, 25}, {85, 55}, {75, 60}, {30, 60}}) assertEquals(0, ink(page, at[0], at[1]), at[0] + ", " + at[1] + " has ink");
            assertTrue(words(pdf).stream().anyMatch(letter -> letter.said.equals("g") && Math.abs(letter.x - MARGIN - 20 + Lettering.widthMm("ground", Ink.LARGE) / 2) < 0.1));
        }
    }

    /// By hand: the middle of each circle from its ends and radius, and points of it.
    @Test
    void arcs_go_round_the_way_and_the_side_that_their_flags_say() throws Exception {
        Canvas canvas = new Canvas(100, 80);
        for (String arc : List.of("M10 60A20 20 0 0 1 50 60", "M60 60A25 25 0 1 1 90 60", "M10 20A25 25 0 0 0 40 20", "M62 70A5 5 0 0 0 82 70"))
            canvas.add(Ink.BOLD.on(Markup.of("path").with("fill", "none").with("d", arc)));
        try (PDDocument pdf = page(canvas.done("try", "A trial", "Four arcs.", 1))) {
            BufferedImage page = new PDFRenderer(pdf).renderImage(0, DOTS * 25.4f / 72, ImageType.RGB);
            double[][] inked = {{30, 40}, {15.858, 45.858}, {75, 15}, {50, 40}, {100 - 1e-3, 40}, {25, 25}, {17, 23.685}, {72, 80 - 1e-3}};
            for (double[] at : inked) assertTrue(ink(page, at[0], at[1]) > 150, at[0] + ", " + at[1] + " is bare");
            for (double[] at : new double[][] {{30, 80}, {75, 65}, {25, 15}, {25, 20}, {72, 60}}) assertEquals(0, ink(page, at[0], at[1]), at[0] + ", " + at[1] + " has ink");
        }
    }

    @Test
    void a_shape_that_it_does_not_know_is_refused_and_not_left_out() {
        for (Markup unknown : List.of(Markup.of("ellipse").with("rx", 3), Markup.of("path").with("d", "M0 0H2").with("fill", "#000000"), Markup.of("rect").with("width", 2).with("height", 2).with("fill", "red"))) {
            Canvas canvas = new Canvas(50, 50);
            canvas.add(unknown);
            assertThrows(IllegalStateException.class, () -> page(canvas.done("try", "A trial", "A shape that no drawing has.", 1)), unknown.xml());
        }
    }
}
