package sillwright.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.Weighing.Option;

/// What would change the choice: the nearest numbers at which another treatment would be taken, each found by weighing all of them again with that number past its limit
/// and everything else as it is.
final class Mind {
    private Mind() {}

    /// @param at    the limit that the number would pass
    /// @param up    true where it would rise past it
    /// @param apart how far off that is, as a share of the greater of the two; 1 for a thing that is so or not
    /// @param then  what would be taken
    record Turn(Gauge gauge, double now, double at, boolean up, double apart, Treatment then) {
        String words(Units units) {
            return Words.sentence(gauge.passing(at, up, units)) + (gauge.yesNo() ? "" : " (now " + gauge.said(now, units) + ")") + ", it would be: " + then.words() + ".";
        }
    }

    /// Nearest first; of several on one gauge the nearest alone.
    static List<Turn> turns(List<Option> options, Option taken) {
        List<Turn> turns = new ArrayList<>();
        for (Option option : options)
            for (Bar bar : option.bars()) {
                if (!bar.gauge().mayChange()) continue;
                boolean up = bar.atMost() == bar.clears();
                double past = bar.gauge().yesNo() ? 1 : bar.limit() + (up ? 1 : -1) * Math.max(1e-6, Math.abs(bar.limit()) * 1e-6), to = bar.clears() ? past : bar.limit();
                Optional<Option> then = takenWith(options, option, bar.gauge(), to);
                if (then.isEmpty() || then.get() == taken) continue;
                double apart = bar.gauge().yesNo() ? 1 : Math.abs(bar.limit() - bar.value()) / Math.max(1e-9, Math.max(Math.abs(bar.limit()), Math.abs(bar.value())));
                turns.add(new Turn(bar.gauge(), bar.value(), bar.limit(), up, apart, then.get().treatment()));
            }
        turns.sort(Comparator.comparingDouble(Turn::apart));
        List<Turn> nearest = new ArrayList<>();
        for (Turn turn : turns) if (nearest.stream().noneMatch(other -> other.gauge() == turn.gauge() && other.up() == turn.up())) nearest.add(turn);
        return nearest;
    }

    /// What would be taken if one number were another: everywhere, or for one treatment alone where each has its own.
    static Optional<Option> takenWith(List<Option> options, Option own, Gauge gauge, double value) {
        for (Option option : options) {
            boolean holds = true;
            for (Bar bar : option.bars()) {
                boolean changed = bar.gauge() == gauge && (gauge.alike() || option == own);
                holds &= changed ? bar.clears(value) : bar.clears();
                if (!holds) break;
            }
            if (holds) return Optional.of(option);
        }
        return Optional.empty();
    }
}
