package sillwright.wood;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.walk.Member;

/// How one member is.
///
/// @param member   the member
/// @param state    the worst of it
/// @param maps     one for each probed face
/// @param damages  its soft stretches, from start to far end
/// @param wettest  the highest corrected moisture, a fraction; empty where none was taken
/// @param moisture every corrected reading
/// @param readings how many probe readings it rests on
/// @param words    one sentence
/// @param basis    what it rests on
/// @param next     where to probe a damaged member next; empty for one that is not damaged
/// @param governing where its load uses up most of what is left; empty where it bears none, or nothing is soft
/// @param hidden   of its faces where every reading was sound, the share that may still be soft between them; empty where there is no such face
public record Condition(Member member, State state, List<DepthMap> maps, List<Damage> damages, Optional<Double> wettest, List<Corrected> moisture,
                        int readings, String words, List<Basis> basis, Optional<NextProbe> next,
                        Optional<Governing> governing, Optional<Interval> hidden) {
    public Condition(Member member, State state, List<DepthMap> maps, List<Damage> damages, Optional<Double> wettest, List<Corrected> moisture, int readings, String words,
                     List<Basis> basis) {
        this(member, state, maps, damages, wettest, moisture, readings, words, basis, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public Condition {
        maps = List.copyOf(maps);
        damages = List.copyOf(damages);
        moisture = List.copyOf(moisture);
        basis = List.copyOf(basis);
    }

    /// The trade's words for wood under hand and probe.
    public enum State { NOT_PROBED, SOUND, SOFTENED, DECAYED, HOLLOW }

    /// One meter reading, corrected for the wood's temperature.
    ///
    /// @param alongMm  from the member's start
    /// @param shown    what the meter showed
    /// @param moisture what the wood holds
    /// @param within   whether that lies where a pin meter can be trusted, 7 to 30 %
    public record Corrected(double alongMm, double shown, double moisture, boolean within) {}

    /// The section to draw: where its load uses up most of what is left, or for one that bears none where least is left; empty where nothing is soft.
    public Optional<SectionLeft> section() {
        return governing.flatMap(Governing::left).or(() -> damages.stream().map(Damage::section).min(Comparator.comparingDouble(SectionLeft::areaKept)));
    }

    public boolean needsWork() { return !damages.isEmpty(); }
}
