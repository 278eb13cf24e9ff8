package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

/// Some entries of a list that stand side by side on a page: those before the middle on the left, the others on the right.
///
/// @param from   the first
/// @param middle the first on the right
/// @param to     the first that is no longer in the band
record Band(int from, int middle, int to) {
    /// No band is longer, so that who reads down a column does not lose its neighbour. Own choice.
    private static final int LONGEST = 6;

    /// A list in bands whose columns are as nearly of one length as their order lets them be.
    static List<Band> of(List<Markup> entries) {
        double[] high = entries.stream().mapToDouble(Extent::of).toArray();
        List<Band> all = new ArrayList<>();
        for (int from = 0; from < high.length; from = all.getLast().to) {
            Band best = new Band(from, from + 1, Math.min(from + 2, high.length));
            for (int to = from + 2; to <= Math.min(from + LONGEST, high.length); to++)
                for (int middle = from + 1; middle < to; middle++) {
                    Band other = new Band(from, middle, to);
                    if (other.waste(high) < best.waste(high) - 0.02) best = other;
                }
            all.add(best);
        }
        return all;
    }

    /// All in one band, parted where the columns are most nearly of one length.
    static Band whole(List<Markup> entries) {
        double[] high = entries.stream().mapToDouble(Extent::of).toArray();
        Band best = new Band(0, Math.min(1, high.length), high.length);
        for (int middle = 2; middle <= high.length; middle++) {
            Band other = new Band(0, middle, high.length);
            if (other.waste(high) < best.waste(high)) best = other;
        }
        return best;
    }

    /// The share of its paper that stays white.
    private double waste(double[] high) {
        double left = sum(high, from, middle), right = sum(high, middle, to);
        return Math.abs(left - right) / (2 * Math.max(left, right));
    }

    private static double sum(double[] high, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) sum += high[i];
        return sum;
    }
}
