package sillwright.wood;

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
public record Condition(Member member, State state, List<DepthMap> maps, List<Damage> damages, Optional<Double> wettest, List<Corrected> moisture,
                        int readings, String words, List<Basis> basis) {
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

    public boolean needsWork() { return !damages.isEmpty(); }
}
