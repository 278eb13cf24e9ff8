package sillwright.work;

import java.util.List;
import java.util.Optional;

import sillwright.work.schedule.Timetable;

/// What the work takes besides material.
///
/// @param cost      the money and the hours
/// @param timetable how sure the end is; its slots stand in the order of the tasks
/// @param tools     to have at hand
public record Plan(Costing cost, Optional<Timetable> timetable, List<Tool> tools) {
    public static final Plan NONE = new Plan(Costing.NONE, Optional.empty(), List.of());

    public Plan { tools = List.copyOf(tools); }
}
