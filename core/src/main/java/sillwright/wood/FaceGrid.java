package sillwright.wood;

/// Equal cells over one face; a value at a cell stands for its middle.
///
/// Cells are counted row by row, a row running along the member.
record FaceGrid(double lengthMm, double acrossMm, int columns, int rows) {
    private static final int MOST_CELLS = 288;

    /// As many cells as draws of the whole field can bear: fine across, where a section is cut, and no finer along than decay spreads.
    static FaceGrid forDraws(double lengthMm, double acrossMm) {
        int rows = between(2, acrossMm / 24, 6), columns = between(12, lengthMm / 15, MOST_CELLS / rows);
        return new FaceGrid(lengthMm, acrossMm, columns, rows);
    }

    /// Fine enough to be drawn and cut by.
    static FaceGrid forMap(double lengthMm, double acrossMm) {
        return new FaceGrid(lengthMm, acrossMm, between(24, lengthMm / 10, 240), between(4, acrossMm / 10, 12));
    }

    private static int between(int least, double wanted, int most) { return (int) Math.max(least, Math.min(most, Math.round(wanted))); }

    int cells() { return columns * rows; }

    double columnMm() { return lengthMm / columns; }

    double rowMm() { return acrossMm / rows; }

    double cellMm2() { return columnMm() * rowMm(); }

    double alongMm(int cell) { return (cell % columns + 0.5) * columnMm(); }

    double acrossMm(int cell) { return (cell / columns + 0.5) * rowMm(); }

    int columnAt(double alongMm) { return Math.max(0, Math.min(columns - 1, (int) (alongMm / columnMm()))); }

    int rowAt(double acrossMm) { return Math.max(0, Math.min(rows - 1, (int) (acrossMm / rowMm()))); }

    /// How much of a column lies between two stations, 0 to 1.
    double share(int column, double fromMm, double toMm) {
        double step = columnMm();
        return Math.max(0, Math.min((column + 1) * step, toMm) - Math.max(column * step, fromMm)) / step;
    }

    double[] alongs() { return java.util.stream.IntStream.range(0, cells()).mapToDouble(this::alongMm).toArray(); }

    double[] acrosses() { return java.util.stream.IntStream.range(0, cells()).mapToDouble(this::acrossMm).toArray(); }
}
