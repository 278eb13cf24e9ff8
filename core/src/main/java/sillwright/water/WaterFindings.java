package sillwright.water;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;

/// What the water stage found.
///
/// @param gutters  each roof edge that should shed its water through a gutter, checked
/// @param splashes each side's ground against its lowest wood
/// @param sources  the likely sources, most likely first, each with its evidence
/// @param nextLook the look that would tell most, if any would
/// @param gaps     what could not be worked, and what would let it be
public record WaterFindings(List<GutterCheck> gutters, List<SplashCheck> splashes, List<RankedSource> sources, Optional<NextLook> nextLook,
                            List<String> gaps) {
    public WaterFindings {
        gutters = List.copyOf(gutters);
        splashes = List.copyOf(splashes);
        sources = List.copyOf(sources);
        gaps = List.copyOf(gaps);
    }

    /// Sources at or above this probability are to be stopped before wood is repaired.
    public static final double LIKELY = 0.5;

    /// The sources to stop, most likely first.
    public List<RankedSource> toStop() { return sources.stream().filter(source -> source.probability() >= LIKELY).toList(); }

    /// The likely sources that wet a member, most likely first.
    public List<RankedSource> wetting(String member) {
        return sources.stream().filter(source -> source.probability() >= LIKELY && source.members().contains(member)).toList();
    }

    /// One roof edge's water against what its gutter carries.
    ///
    /// @param side       id
    /// @param edge       id of the roof edge
    /// @param inflowLs   what the roof sends in the design rain, L/s
    /// @param capacityLs what the gutter carries by the level-gutter formula or the code table, L/s; 0 with no gutter
    /// @param downspoutLs what its downspouts carry, L/s; 0 where none were recorded
    /// @param overflows  whether it overflows in the design rain, clean and well hung
    /// @param cloggedMinutes minutes of the design rain until it overflows with its outlet shut
    /// @param words      one sentence
    public record GutterCheck(String side, String edge, double inflowLs, double capacityLs, double downspoutLs, boolean overflows,
                              double cloggedMinutes, String words, List<Basis> basis) {
        public GutterCheck { basis = List.copyOf(basis); }
    }

    /// How much of the splash reaches the wood of one side.
    ///
    /// @param clearanceMm from ground to the lowest wood
    /// @param reachMm     how high the splash comes that matters
    /// @param share       of the splash that reaches the wood, 0 to 1
    /// @param words       one sentence
    public record SplashCheck(String side, double clearanceMm, double reachMm, double share, String words, List<Basis> basis) {
        public SplashCheck { basis = List.copyOf(basis); }
    }

    /// A source of water, how likely it is here, and why.
    ///
    /// @param id          `W1`, `W2`, ... in the order of the ranking
    /// @param source      what
    /// @param side        where
    /// @param place       nearer: a roof edge, a window, a member; empty for the whole side
    /// @param leftMm      where it is drawn, from the side's left end
    /// @param aboveMm     and above grade
    /// @param probability of its being at work, all evidence weighed
    /// @param prior       before the sightings
    /// @param evidence    what speaks for and against it, the weightiest first
    /// @param remedies    what stops it, the simplest first
    /// @param members     ids of the members it wets
    public record RankedSource(String id, Source source, String side, String place, double leftMm, double aboveMm, double probability, double prior,
                               List<Evidence> evidence, List<Remedy> remedies, List<String> members) {
        public RankedSource {
            evidence = List.copyOf(evidence);
            remedies = List.copyOf(remedies);
            members = List.copyOf(members);
        }

        /// `clogged gutter, west side, main eave`
        public String words() { return source.words() + ", " + side + " side" + (place.isEmpty() ? "" : ", " + place); }
    }

    /// One thing that speaks for a source or against it.
    ///
    /// @param words  in words a carpenter would use
    /// @param weight change of the log of the odds were it left out, base 2 (bits); above nothing speaks for the source
    public record Evidence(String words, double weight) {}

    /// What stops a source.
    ///
    /// @param words what to do, with its dimensions
    /// @param hours of work, for a plan; a rough figure of the trade
    /// @param basis what it rests on
    public record Remedy(String words, double hours, Basis basis) {}

    /// The look worth taking next.
    ///
    /// @param side    where
    /// @param words   what to do and what to watch for
    /// @param minutes about how long it takes
    /// @param bits    expected to be learned of which sources are at work
    public record NextLook(String side, String words, double minutes, double bits) {}
}
