package sillwright.work;

import sillwright.measure.Units;
import sillwright.wood.Damage;

/// Where a decayed end is sawn off: squared across the sound-wood line, and moved outward to a size that can be marked.
///
/// @param fromStart whether the start of the member goes, else its far end
/// @param newMm     from that end to the line
record CutLine(boolean fromStart, double newMm) {
    /// From the nearer end, so that the least sound wood goes with the soft.
    static CutLine of(Damage damage, Units units) {
        double length = damage.member().lengthMm();
        double start = up(damage.toMm(), units), far = up(length - damage.fromMm(), units);
        return start <= far ? new CutLine(true, Math.min(length, start)) : new CutLine(false, Math.min(length, far));
    }

    /// The least size that a tape is read to at the bench: a quarter of an inch, or 5 mm.
    static double step(Units units) { return units == Units.US ? 25.4 / 4 : 5; }

    static double up(double mm, Units units) { return Math.ceil(mm / step(units) - 1e-6) * step(units); }

    static double down(double mm, Units units) { return Math.floor(mm / step(units) + 1e-6) * step(units); }
}
