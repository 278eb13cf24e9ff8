package sillwright.work;

import java.util.List;
import java.util.Optional;

/// Every treatment that would hold, side by side, and what would change the choice.
///
/// @param all    those that would hold, as the choice ranks them, then those that are refused
/// @param words  which is recommended and why, as one would say it
/// @param turns  the nearest numbers at which another would be taken, one sentence each, nearest first
public record Comparison(List<Compared> all, String words, List<String> turns) {
    public static final Comparison NONE = new Comparison(List.of(), "", List.of());

    public Comparison {
        all = List.copyOf(all);
        turns = List.copyOf(turns);
    }

    /// One treatment.
    ///
    /// @param taken      whether it is the one that is done
    /// @param recommended whether it is the one recommended: the same, where nobody settled otherwise
    /// @param refusals   what refuses it, each with its number; where it is empty, or it is done all the same, all that follows is worked
    /// @param keptShare  of the piece's original wood
    /// @param lasting    years
    /// @param hours      of work, at the likeliest
    /// @param money      at the likeliest; empty without a price book
    /// @param undone     how well it can be undone
    /// @param use        share of its capacity that its load uses afterwards; empty where it bears none or it cannot be told
    /// @param worseThan  the treatment that is as good in everything and better in something; empty where there is none
    public record Compared(Treatment treatment, boolean taken, boolean recommended, List<String> refusals, double keptShare, Lasting lasting, double hours, Optional<Double> money, Undone undone, Optional<Double> use,
                           Optional<Treatment> worseThan) {
        public Compared { refusals = List.copyOf(refusals); }

        public boolean holds() { return refusals.isEmpty(); }

        /// Whether years, hours and money were worked for it.
        public boolean worked() { return holds() || taken; }
    }

    /// How well a treatment can be undone: own choice, by what stays behind.
    public enum Undone {
        /// Unscrewed or washed off, and nothing shows.
        WHOLLY("wholly"),
        /// New wood can come out again; what was cut does not come back.
        PARTLY("in part"),
        /// Resin stays in the wood for good.
        NEVER("not");

        private final String words;

        Undone(String words) { this.words = words; }

        public String words() { return words; }

        static Undone of(Treatment treatment) {
            return switch (treatment) {
                case Treatment.Watch _, Treatment.Recoat _, Treatment.Reseat _, Treatment.Sister _ -> WHOLLY;
                case Treatment.Dutchman _, Treatment.ButtSplice _, Treatment.ScarfSplice _, Treatment.HalfLap _, Treatment.BuildUp _, Treatment.ReplacePart _, Treatment.Replace _ -> PARTLY;
                case Treatment.Consolidate _, Treatment.Fill _ -> NEVER;
            };
        }
    }
}
