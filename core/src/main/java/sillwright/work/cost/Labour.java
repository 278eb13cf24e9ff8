package sillwright.work.cost;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Known;
import sillwright.measure.Refused;
import sillwright.measure.Words;

/// How many hours each task takes, by trade: a table that the user may replace, row by row.
///
/// @param tasks by name
public record Labour(Map<String, Task> tasks) {
    private static final Labour USUAL = read("the table of hours", LabourCsv.TEXT, Map.of());

    public Labour { tasks = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(tasks)); }

    /// @param words what is done, as a person says it
    /// @param unit  what the hours are for: `each`, `m2`, `m`, `L`, `side`, `h`
    /// @param hours for one unit, one person
    /// @param trade whose hours they are
    public record Task(String name, String words, String unit, Spread hours, String trade, Basis basis) {}

    /// The table that stands where the user gives none.
    public static Labour usual() { return USUAL; }

    /// The usual table with the rows of a user's own in place of those of the same name.
    ///
    /// @throws Refused with every bad row; a row whose task this program does not know is one
    public static Labour read(String file, String text) {
        Labour own = read(file, text, USUAL.tasks);
        Map<String, Task> all = new LinkedHashMap<>(USUAL.tasks);
        all.putAll(own.tasks);
        return new Labour(all);
    }

    private static Labour read(String file, String text, Map<String, Task> known) {
        Whole whole = new Whole(file, "table of hours");
        Csv csv = whole.csv(text, List.of("task", "low", "likely", "high"));
        Map<String, Task> tasks = new LinkedHashMap<>();
        for (Csv.Row row : csv.rows()) whole.row(row, () -> {
            Task task = task(row, known);
            if (tasks.putIfAbsent(task.name(), task) != null) throw new Refused("task", "'{}' stands twice", "keep one row", task.name());
        });
        whole.done();
        return new Labour(tasks);
    }

    private static Task task(Csv.Row row, Map<String, Task> known) {
        String name = row.get("task").strip();
        Task usual = known.get(name);
        if (!known.isEmpty() && usual == null) {
            List<String> near = Words.near(name, known.keySet());
            throw new Refused("task", "'{}' is not a task of this table", near.isEmpty() ? "use one of " + String.join(", ", known.keySet()) : "did you mean " + String.join(", ", near) + "?", name);
        }
        double low = row.number("low"), likely = row.number("likely"), high = row.number("high");
        if (!(low >= 0 && low <= likely && likely <= high && high < 1000))
            throw new Refused("likely", "{} does not lie between low {} and high {}", "write hours from 0 up, the least, the likeliest and the most", row.get("likely"), row.get("low"), row.get("high"));
        String trade = cell(row, "trade", usual == null ? "general" : usual.trade()), unit = cell(row, "unit", usual == null ? "each" : usual.unit());
        if (usual != null && !unit.equals(usual.unit())) throw new Refused("unit", "'{}' where this task is counted by {}", "write the hours for one " + usual.unit(), unit, usual.unit());
        String source = cell(row, "source", ""), where = cell(row, "where", "hours for " + name);
        Basis basis = usual == null ? source.isEmpty() ? Basis.practice(where) : new Basis(source, where, Known.of(row.get("known")))
                : new Basis(source.isEmpty() ? "The user's own table of hours" : source, where, Known.READ);
        return new Task(name, cell(row, "words", usual == null ? name : usual.words()), unit, new Spread(low, likely, high), trade, basis);
    }

    private static String cell(Csv.Row row, String column, String otherwise) {
        String cell = row.cells().getOrDefault(column, "").strip();
        return cell.isEmpty() ? otherwise : cell;
    }
}
