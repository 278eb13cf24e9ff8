package sillwright.work;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import sillwright.measure.Basis;
import sillwright.work.joint.Fixings;
import sillwright.work.joint.Spacing;
import sillwright.work.resin.Checks;
import sillwright.work.resin.Mixing;

/// What the stage rests on besides its figures: the rules between one treatment and the next, and the amounts.
public final class WorkBasis {
    private WorkBasis() {}

    public static List<Basis> all() {
        Set<Basis> all = new LinkedHashSet<>();
        for (Rule rule : Rule.values()) all.addAll(rule.basis());
        all.addAll(Patch.BASIS);
        all.addAll(HalfLapping.BASIS);
        all.addAll(Scarfing.BASIS);
        all.addAll(Spacing.BASIS);
        all.add(Fixings.BASIS);
        all.addAll(Mixing.BASIS);
        all.addAll(List.of(Checks.BASIS));
        all.addAll(List.of(Lasting.BASIS));
        all.addAll(List.of(Amounts.BASIS, TakeOff.BASIS, DryingTime.BASIS, sillwright.work.schedule.Season.BASIS));
        sillwright.work.cost.Labour.usual().tasks().values().forEach(task -> all.add(task.basis()));
        return List.copyOf(new ArrayList<>(all));
    }
}
