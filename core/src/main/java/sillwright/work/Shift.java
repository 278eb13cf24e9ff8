package sillwright.work;

import java.util.EnumMap;
import java.util.Map;

import sillwright.work.WorkFindings.TaskKind;
import sillwright.work.cost.Labour;
import sillwright.work.cost.Toil;

/// How many minutes each step of a repair takes, by the mean of the table of hours: the same hours that the cost counts.
final class Shift {
    private Shift() {}

    /// Minutes of one repair by step; a step that takes none is left out.
    static Map<TaskKind, Double> of(Job job, Repair repair, Labour labour) {
        Map<TaskKind, Double> minutes = new EnumMap<>(TaskKind.class);
        for (Toil toil : Hours.of(job, repair.treatment(), repair.id())) {
            if (toil.task().equals("probe-again")) continue;
            TaskKind kind = kind(toil.task());
            // What must dry is opened before it dries.
            if (kind == TaskKind.OPEN_AND_CUT && DryingTime.opensFirst(job, repair.treatment())) kind = TaskKind.OPEN_TO_DRY;
            minutes.merge(kind, toil.amount().mean() * minutes(labour, toil.task(), 1), Double::sum);
        }
        if (OrderOfWork.wantsProps(repair)) minutes.putIfAbsent(TaskKind.SHORE, minutes(labour, "prop", 1));
        return minutes;
    }

    static double minutes(Labour labour, String task, double amount) { return 60 * amount * labour.tasks().get(task).hours().mean(); }

    private static TaskKind kind(String task) {
        return switch (task) {
            case "prop" -> TaskKind.SHORE;
            case "move-ladder", "strip-paint", "open-up" -> TaskKind.OPEN_AND_CUT;
            case "consolidate" -> TaskKind.CONSOLIDATE;
            case "reseat", "sister", "replace", "dutchman", "build-up", "butt-splice", "half-lap", "scarf", "borate" -> TaskKind.JOIN;
            case "fill" -> TaskKind.FILL;
            case "sand", "prime" -> TaskKind.PRIME;
            case "coat" -> TaskKind.COAT;
            default -> throw new IllegalStateException("the hours of a repair have the task '" + task + "'");
        };
    }
}
