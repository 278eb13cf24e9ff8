package sillwright.work.cost;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Csv;
import sillwright.measure.Refused;
import sillwright.measure.Units;

/// Reads a table that must be whole: every row that cannot be read is told at once, and nothing is taken until all are mended.
public final class Whole {
    private final String file;
    private final String what;
    private final List<String> faults = new ArrayList<>();

    public Whole(String file, String what) {
        this.file = file;
        this.what = what;
    }

    public Csv csv(String text, List<String> needed) {
        Csv csv;
        try {
            csv = Csv.read(text);
        } catch (Refused refused) {
            throw refused.at(file);
        }
        List<String> missing = needed.stream().filter(column -> !csv.header().contains(column)).toList();
        if (!missing.isEmpty())
            throw new Refused(file, "the " + what + " has no column {}", "write a header with " + String.join(", ", needed) + "; this one has " + (csv.header().isEmpty() ? "none" : String.join(", ", csv.header())),
                    String.join(", ", missing));
        return csv;
    }

    public void row(Csv.Row row, Runnable read) {
        try {
            read.run();
        } catch (Refused refused) {
            fault("line " + row.line() + ", " + refused.line(Units.US));
        }
    }

    public void fault(String line) { faults.add(line); }

    public void done() {
        if (!faults.isEmpty()) throw new Refused(file, "the " + what + " is taken whole or not at all, and " + (faults.size() == 1 ? "one row is" : faults.size() + " rows are") + " wrong:\n  " + String.join("\n  ", faults), "");
    }
}
