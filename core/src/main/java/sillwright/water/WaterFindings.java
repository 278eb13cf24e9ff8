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
/// @param rounds   walks round the building that would settle what is open, on a dry day, in rain, in a cold spell
/// @param lives    what lives in the wood, by the signs it left
/// @param rains    wind-driven rain on each side, by month
/// @param gaps     what could not be worked, and what would let it be
/// @param cold     whether damp from indoors can wet walls from behind, month by month; empty without monthly normals
/// @param seenTo   sources that were at work before something was done against them
public record WaterFindings(List<GutterCheck> gutters, List<SplashCheck> splashes, List<RankedSource> sources, Optional<NextLook> nextLook,
                            List<Round> rounds, List<InTheWood> lives, List<RainCheck> rains, List<String> gaps, List<SeenTo> seenTo, Optional<ColdCheck> cold) {
    public WaterFindings {
        rounds = List.copyOf(rounds);
        lives = List.copyOf(lives);
        rains = List.copyOf(rains);
        gutters = List.copyOf(gutters);
        splashes = List.copyOf(splashes);
        sources = List.copyOf(sources);
        gaps = List.copyOf(gaps);
        seenTo = List.copyOf(seenTo);
    }

    /// Without normals.
    public WaterFindings(List<GutterCheck> gutters, List<SplashCheck> splashes, List<RankedSource> sources, Optional<NextLook> nextLook, List<Round> rounds, List<InTheWood> lives, List<RainCheck> rains,
                         List<String> gaps, List<SeenTo> seenTo) {
        this(gutters, splashes, sources, nextLook, rounds, lives, rains, gaps, seenTo, Optional.empty());
    }

    /// Of a building on which nothing was done yet, without rounds, lives and driven rain.
    public WaterFindings(List<GutterCheck> gutters, List<SplashCheck> splashes, List<RankedSource> sources, Optional<NextLook> nextLook, List<String> gaps) {
        this(gutters, splashes, sources, nextLook, List.of(), List.of(), List.of(), gaps, List.of());
    }

    /// A source that something was done against, as it stood before.
    ///
    /// @param members ids of the members it wetted
    public record SeenTo(Source source, String side, String place, List<String> members) {
        public SeenTo { members = List.copyOf(members); }
    }

    /// A leading source is taken as settled once it is this likely.
    public static final double SETTLED = 0.9;

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
    /// @param ruling      what was decided about its remedies
    public record RankedSource(String id, Source source, String side, String place, double leftMm, double aboveMm, double probability, double prior,
                               List<Evidence> evidence, List<Remedy> remedies, List<String> members, Optional<Ruling> ruling) {
        public RankedSource {
            evidence = List.copyOf(evidence);
            remedies = List.copyOf(remedies);
            members = List.copyOf(members);
        }

        /// Nothing decided about it.
        public RankedSource(String id, Source source, String side, String place, double leftMm, double aboveMm, double probability, double prior, List<Evidence> evidence, List<Remedy> remedies, List<String> members) {
            this(id, source, side, place, leftMm, aboveMm, probability, prior, evidence, remedies, members, Optional.empty());
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
    /// @param word  its name in the findings: `clear-gutter`
    /// @param words what to do, with its dimensions
    /// @param hours of work, for a plan; a rough figure of the trade
    /// @param basis what it rests on
    /// @param material how much it takes beside the hours
    /// @param touches  what else it touches; empty where nothing is known
    /// @param metres   that it runs along
    public record Remedy(String word, String words, double hours, Basis basis, Material material, String touches, double metres) {
        public Remedy(String words, double hours, Basis basis) { this("", words, hours, basis, Material.SMALL, "", 0); }

        /// Hours and material, as a band: `about 4 h and some material`.
        public String band() { return "about " + sillwright.measure.Words.number(hours, 1) + " h and " + material.words(); }
    }

    /// What was decided about the remedies of a source: the one taken stands first among them, one refused last.
    ///
    /// @param recommended the word of the remedy that was recommended
    /// @param words       one line, with the reason
    /// @param caution     what speaks against it; empty where nothing does
    public record Ruling(sillwright.walk.Decision decision, String recommended, String words, String caution) {}

    /// How much material a remedy takes, in bands; a price book says what that costs.
    public enum Material {
        NONE("no material"), SMALL("little material"), SOME("some material"), MUCH("much material");

        private final String words;

        Material(String words) { this.words = words; }

        public String words() { return words; }
    }

    /// The look worth taking next.
    ///
    /// @param side    where
    /// @param words   what to do and what to watch for
    /// @param minutes about how long it takes
    /// @param bits    expected to be learned of which sources are at work
    public record NextLook(String side, String words, double minutes, double bits) {}

    /// When a look can be taken.
    public enum When {
        DRY("on a dry day"), RAIN("in steady rain"), COLD("in a cold spell");

        private final String words;

        When(String words) { this.words = words; }

        public String words() { return words; }
    }

    /// A walk round the building: where to stand, what to watch, in what order.
    ///
    /// @param minutes in all
    /// @param outcome where the leading sources will stand, should each look come out as is likelier
    public record Round(When when, List<Step> steps, double minutes, String outcome) {
        public Round { steps = List.copyOf(steps); }
    }

    /// One look of a round.
    ///
    /// @param leftMm  where to stand, from the side's left end
    /// @param minutes it takes; looks taken standing at one place in rain share them
    /// @param bits    expected to be learned, the looks before it taken
    /// @param seen    the chance that it is seen
    public record Step(String side, String place, double leftMm, String words, double minutes, double bits, double seen) {}

    /// Whether what lives in the wood is at it.
    public enum AtIt { ACTIVE, CAN_GO_ON, AT_REST, NOT_KNOWN }

    /// What lives in the wood at a place, and what that asks for.
    ///
    /// @param member id; empty where the signs name none
    /// @param active in words, with how to tell
    /// @param signs  that speak of it
    /// @param needs  what moisture it needs
    /// @param call   who is to be called; empty where nobody
    /// @param water  what it has to do with the water, in words
    /// @param sources ids of the likely sources that wet the place
    public record InTheWood(Life life, String side, String member, double probability, AtIt state, String active, List<String> signs, String needs, String call, String water,
                            List<String> sources, Basis basis) {
        public InTheWood {
            signs = List.copyOf(signs);
            sources = List.copyOf(sources);
        }
    }

    /// Wind-driven rain on one side, were wind and rain to come from all round alike.
    ///
    /// @param facingLM2 by month, on a wall that faces the wind in the open, L/m²
    /// @param onSideLM2 by month, on this wall: a mean over all directions, less what its roof keeps off
    public record RainCheck(String side, List<Double> facingLM2, List<Double> onSideLM2, String words, List<Basis> basis) {
        public RainCheck {
            facingLM2 = List.copyOf(facingLM2);
            onSideLM2 = List.copyOf(onSideLM2);
            basis = List.copyOf(basis);
        }
    }

    /// How long the back of the boards is colder than the dew point of a usual room.
    ///
    /// @param hoursByMonth January to December, of an unfilled wall
    public record ColdCheck(List<Double> hoursByMonth, String words, List<Basis> basis) {
        public ColdCheck {
            hoursByMonth = List.copyOf(hoursByMonth);
            basis = List.copyOf(basis);
        }

        public double hours() { return hoursByMonth.stream().mapToDouble(hours -> hours).sum(); }
    }
}
