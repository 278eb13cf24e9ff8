package sillwright.sheet;

import sillwright.walk.Side;

/// The line of the ground, each surface in strokes of its own.
final class ElevationGround {
    private ElevationGround() {}

    /// @param depth how deep the strokes go beneath the line, mm of paper
    static void draw(Canvas canvas, Side.Surface surface, double x1, double x2, double y, double depth) {
        canvas.fill(new Box(x1, y, x2 - x1, depth), Ink.PAPER);
        switch (surface) {
            case PAVING -> {
                canvas.rect(new Box(x1, y, x2 - x1, 1.4), Ink.PAPER, Ink.THIN);
                for (double x = x1 + 9; x < x2; x += 9) canvas.line(x, y, x, y + 1.4, Ink.THIN);
                slanted(canvas, x1, x2, y + 1.4, 1.4, 5);
            }
            case SOIL -> slanted(canvas, x1, x2, y, depth * 0.8, 3);
            case GRAVEL -> {
                for (int i = 0; x1 + 1 + i * 1.7 < x2 - 1; i++) canvas.circle(x1 + 1 + i * 1.7, y + 0.9 + (i * 7 % 5) * 0.42, 0.35
                        + (i * 3 % 4) * 0.09, "none", Ink.THIN);
            }
            case GRASS -> {
                for (int i = 0; x1 + 1 + i * 2.6 < x2 - 1; i++) {
                    double x = x1 + 1 + i * 2.6, tall = 0.9 + (i * 5 % 4) * 0.22;
                    canvas.polyline(Ink.HAIR, x - 0.7, y - tall, x, y, x + 0.2, y - tall - 0.3);
                    canvas.line(x, y, x + 0.9, y - tall * 0.8, Ink.HAIR);
                }
                slanted(canvas, x1, x2, y, depth * 0.6, 6);
            }
            case MULCH -> {
                for (int i = 0; x1 + 1 + i * 1.5 < x2 - 2; i++) {
                    double x = x1 + 1 + i * 1.5, down = y + 0.5 + (i * 7 % 6) * 0.4, lean = (i * 11 % 7 - 3) * 0.13;
                    canvas.line(x, down, x + 1.2, down + lean, Ink.THIN);
                }
            }
        }
        canvas.line(x1, y, x2, y, Ink.BOLD);
    }

    /// Short strokes in threes, as earth is drawn.
    private static void slanted(Canvas canvas, double x1, double x2, double y, double depth, double gap) {
        for (double x = x1 + depth; x < x2 - 2; x += gap + 2.4)
            for (int i = 0; i < 3 && x + i * 0.8 < x2; i++) canvas.line(x + i * 0.8, y, x + i * 0.8 - depth, y + depth, Ink.HAIR);
    }
}
