package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Units;
import sillwright.measure.Words;

/// How somebody's tape and probe are marked.
enum Marks {
    /// Feet, inches and sixteenths.
    INCHES(25.4, 25.4 / 16),
    /// Whole millimetres.
    MILLIMETRES(1, 1);

    private final double unitMm;
    private final double stepMm;

    Marks(double unitMm, double stepMm) {
        this.unitMm = unitMm;
        this.stepMm = stepMm;
    }

    /// One unit of the bare numbers in a table, mm.
    double unitMm() { return unitMm; }

    /// The nearest mark that is not above a limit.
    Quantity nearest(double mm, double limitMm) {
        long steps = Math.min(Math.round(mm / stepMm), (long) Math.floor(limitMm / stepMm + 1e-6));
        return Quantity.read(text(steps), Kind.LENGTH);
    }

    private String text(long steps) {
        if (this == MILLIMETRES) return steps + " mm";
        if (steps < 36 * 16) return Words.length(steps * stepMm, Units.US);
        long feet = steps / (12 * 16), rest = steps % (12 * 16);
        String inches = Words.length(rest * stepMm, Units.US);
        return feet + "' " + inches.substring(0, inches.length() - " in".length()) + "\"";
    }

    Quantity temperature(double celsius) {
        return Quantity.read(this == INCHES ? Words.number(celsius * 9 / 5 + 32, 0) + " F" : Words.number(celsius, 0) + " C", Kind.TEMPERATURE);
    }
}
