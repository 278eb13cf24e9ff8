package sillwright.watch;

import java.util.HashMap;
import java.util.Map;

import sillwright.water.WaterFindings;
import sillwright.work.WorkFindings;

/// Hours of work for each repair and each source to stop, as the order of work has them.
///
/// A task's hours are shared by what it serves; waiting for wood to dry is no work. A source with no task has the hours of its first remedy.
public final class Effort {
    private final Map<String, Double> hours = new HashMap<>();

    public Effort(WaterFindings water, WorkFindings work) {
        for (WaterFindings.RankedSource source : water.toStop()) source.remedies().stream().findFirst().ifPresent(remedy -> hours.put(source.id(), remedy.hours()));
        Map<String, Double> planned = new HashMap<>();
        for (WorkFindings.Task task : work.tasks()) {
            if (task.kind() == WorkFindings.TaskKind.DRY || task.refs().isEmpty()) continue;
            for (String ref : task.refs()) planned.merge(ref, task.hours() / task.refs().size(), Double::sum);
        }
        planned.forEach(hours::putIfAbsent);
    }

    public double hours(String id) { return hours.getOrDefault(id, 0.0); }
}
