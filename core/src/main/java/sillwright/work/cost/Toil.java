package sillwright.work.cost;

import java.util.List;

/// Work that is done: so much of a task of the [Labour] table.
///
/// @param task   its name there
/// @param amount in the task's unit
/// @param refs   ids of what it is for
public record Toil(String task, Spread amount, List<String> refs) {
    public Toil { refs = List.copyOf(refs); }

    public static Toil of(String task, double amount, String ref) { return new Toil(task, Spread.exactly(amount), List.of(ref)); }
}
