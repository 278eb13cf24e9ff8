package sillwright.wood;

import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.IntFunction;

/// Where along a member its load uses up most of what is left, from draws of the decay: not where least wood is left, but where what is left has most to do.
///
/// @param stationMm   from the member's start; where most draws have it, or the middle of those where the whole member has more to do than any soft place
/// @param by          what it is used up by there
/// @param likely      the section of the draw nearest to the median, at that station; the whole section where no draw is soft there
/// @param utilisation the greatest along the member, 1 is all of it; each draw at its own worst station
/// @param left        what is left there, to be drawn; empty where the whole member has more to do than any soft place
public record Governing(double stationMm, By by, Section likely, Interval utilisation, Optional<SectionLeft> left) {
    public enum By {
        BENDING("bending"), SHEAR("shear"), BEARING("bearing on what it sits on"), BUCKLING("buckling"), CRUSHING("the press on what is left, and its standing off the middle");

        private final String words;

        By(String words) { this.words = words; }

        public String words() { return words; }
    }

    /// How much of a section a load uses up at one station, and by what.
    record Use(double share, By by) {
        Use orWorse(Use other) { return other.share > share ? other : this; }
    }

    /// @param stations where the draws are looked at, in order, mm
    /// @param sections for each draw the section at each of them
    /// @param left     what is left at a station
    static Governing of(Stations use, double[] stations, IntFunction<Section[]> sections, int draws, DoubleFunction<SectionLeft> left) {
        Use whole = use.whole();
        double[] shares = new double[draws];
        int[] at = new int[draws], votes = new int[stations.length + 1];
        Use[] uses = new Use[draws];
        for (int d = 0; d < draws; d++) {
            uses[d] = whole;
            at[d] = stations.length;
            Section[] here = sections.apply(d);
            for (int s = 0; s < stations.length; s++) {
                Use one = use.at(stations[s], here[s]);
                if (one.share <= uses[d].share) continue;
                uses[d] = one;
                at[d] = s;
            }
            shares[d] = uses[d].share;
            votes[at[d]]++;
        }
        Interval utilisation = Interval.of(shares);
        int most = 0;
        for (int s = 1; s < votes.length; s++) if (votes[s] > votes[most]) most = s;
        int nearest = -1;
        for (int d = 0; d < draws; d++)
            if (at[d] == most && (nearest < 0 || Math.abs(shares[d] - utilisation.median()) < Math.abs(shares[nearest] - utilisation.median()))) nearest = d;
        return most == stations.length ? new Governing(use.middleMm(), whole.by, use.wholeSection(), utilisation, Optional.empty())
                : new Governing(stations[most], uses[nearest].by, sections.apply(nearest)[most], utilisation, Optional.of(left.apply(stations[most])));
    }
}
