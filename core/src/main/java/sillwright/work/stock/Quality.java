package sillwright.work.stock;

import sillwright.measure.Units;

/// What is asked of a board beside its species and size. Names of grades: common practice, no source; the marks differ by species and mill.
public enum Quality {
    /// Its face is seen or takes paint: no knot, no pitch.
    FINISH("clear finish grade, dry", "clear joinery class, dry"),
    /// It bears load: a stamped grade, as an engineer would ask for it.
    STRUCTURAL("structural grade No. 1 or better, dry", "strength class C24 or better, dry");

    private final String us, si;

    Quality(String us, String si) {
        this.us = us;
        this.si = si;
    }

    public String words(Units units) { return units == Units.US ? us : si; }
}
