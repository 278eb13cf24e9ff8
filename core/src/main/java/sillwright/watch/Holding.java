package sillwright.watch;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Basis;

/// Weighs, walk by walk, whether a remedy holds at some places or water still comes there.
///
/// Two states: it holds, and the excess over dry wood falls by half in each half-time; or it does not, and the excess stays about what it was, or
/// some lasting part of it. It may fail at once, or later. A hidden Markov filter, run for each of five speeds of drying; what the meter shifts on a
/// walk is common to all places and summed over; three numbers in a hundred may be slips, which tells little. Source: a standard of texts on state-space
/// models (from memory); the numbers are this program's own choice and were tried on histories whose truth is known.
final class Holding {
    static final Basis BASIS = Basis.own("a remedy holds or does not: readings weighed by a two-state filter against the predicted drying; said to hold at 19 to 1, to fail at 7 to 1");
    /// Odds at which a remedy is said to hold, and to fail: to look again in vain costs less than to leave wood wet. How often a remedy does not do its
    /// work from the start, and in each later year.
    static final double HELD = 0.95, FAILED = 0.88, AT_ONCE = 0.33, A_YEAR = 0.06;
    private static final double WET_SPREAD = 0.035, DRYING_SPREAD = 0.2, PARTLY = 0.5, SLIP = 0.03, SLIP_SPREAD = 0.08;
    /// A normal shift of the walk, by five points of Gauss and Hermite.
    private static final double[] SHIFTS = {-2.857, -1.3556, 0, 1.3556, 2.857}, SHIFT_WEIGHTS = {0.01126, 0.22208, 0.53333, 0.22208, 0.01126};

    /// A place before anything was done.
    ///
    /// @param wet      excess before the work, a fraction
    /// @param unsure   how unsure that is, one standard deviation
    /// @param halfDays predicted
    record Start(double wet, double unsure, double halfDays) {
        double expected(double days, int speed) { return wet * Math.pow(0.5, days / (halfDays * Drying.SPEEDS[speed])); }

        double spread() { return Math.hypot(Math.max(WET_SPREAD, 0.3 * wet), unsure); }
    }

    private final List<Start> places;
    /// For each speed: weight of the readings so far with the remedy holding, and failing.
    private final double[] holds = new double[Drying.SPEEDS.length];
    private final double[] fails = new double[Drying.SPEEDS.length];
    private double lastDays;

    Holding(List<Start> places) {
        this.places = List.copyOf(places);
        for (int s = 0; s < holds.length; s++) {
            holds[s] = Drying.WEIGHTS[s] * (1 - AT_ONCE);
            fails[s] = Drying.WEIGHTS[s] * AT_ONCE;
        }
    }

    private Holding(Holding other) {
        places = other.places;
        System.arraycopy(other.holds, 0, holds, 0, holds.length);
        System.arraycopy(other.fails, 0, fails, 0, fails.length);
        lastDays = other.lastDays;
    }

    /// Takes in one walk's readings.
    ///
    /// @param days   since the work
    /// @param excess over dry wood at each place, season and meter taken out; NaN where it was not read
    /// @param doubt  of what was taken out, one standard deviation
    void read(double days, double[] excess, double doubt) {
        double later = 1 - Math.pow(1 - A_YEAR, Math.max(0, days - lastDays) / 365), sum = 0;
        double[] held = new double[holds.length];
        double failing = 0;
        for (int q = 0; q < SHIFTS.length; q++) {
            double shift = SHIFTS[q] * doubt, wet = SHIFT_WEIGHTS[q];
            for (int p = 0; p < excess.length; p++) if (!Double.isNaN(excess[p])) wet *= ofFailing(places.get(p), excess[p] - shift);
            failing += wet;
            for (int s = 0; s < held.length; s++) {
                double dry = SHIFT_WEIGHTS[q];
                for (int p = 0; p < excess.length; p++) if (!Double.isNaN(excess[p])) dry *= ofHolding(places.get(p).expected(days, s), excess[p] - shift);
                held[s] += dry;
            }
        }
        for (int s = 0; s < holds.length; s++) {
            fails[s] = (fails[s] + later * holds[s]) * failing;
            holds[s] = holds[s] * (1 - later) * held[s];
            sum += fails[s] + holds[s];
        }
        for (int s = 0; s < holds.length; s++) {
            holds[s] /= sum;
            fails[s] /= sum;
        }
        lastDays = days;
    }

    private static double ofHolding(double expected, double excess) {
        return (1 - SLIP) * normal(excess - expected, Math.hypot(Baseline.REPEAT, DRYING_SPREAD * expected)) + SLIP * normal(excess - expected, SLIP_SPREAD);
    }

    /// Some remedies stop a part of the water: anything between hardly wet and wetter than before.
    private static double ofFailing(Start place, double excess) {
        double from = 0.03, to = place.wet + 0.06, between = excess >= from && excess <= to ? 1 / (to - from) : 0;
        return (1 - SLIP) * ((1 - PARTLY) * normal(excess - place.wet, place.spread()) + PARTLY * between) + SLIP * normal(excess - place.wet, SLIP_SPREAD);
    }

    private static double normal(double off, double spread) { return Math.exp(-off * off / (2 * spread * spread)) / (spread * Math.sqrt(2 * Math.PI)); }

    /// Probability that water still comes.
    double failing() {
        double sum = 0;
        for (double one : fails) sum += one;
        return sum;
    }

    /// In how many of the coming walks it will be told, if they come out as the likelier state has it; 0 where it is told, -1 where it will not be.
    ///
    /// @param days of the coming walks, since the work
    int toldIn(List<Double> days) {
        Holding then = new Holding(this);
        boolean fails = failing() > 0.5;
        for (int i = 0; i <= days.size(); i++) {
            if (then.told()) return i;
            if (i == days.size()) break;
            double on = days.get(i);
            then.read(on, places.stream().mapToDouble(place -> fails ? place.wet : place.expected(on, 2)).toArray(), 0.012);
        }
        return -1;
    }

    private boolean told() { return failing() >= FAILED || failing() <= 1 - HELD; }

    static List<Double> after(long fromMs, List<Long> days) {
        List<Double> since = new ArrayList<>();
        for (long day : days) since.add((day - fromMs) / 86_400_000.0);
        return since;
    }
}
