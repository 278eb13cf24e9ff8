package sillwright.desk;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.Set;
import java.util.concurrent.Callable;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillwright.Sources;
import sillwright.measure.Basis;
import sillwright.measure.Words;

/// `sillwright sources`: every source the program rests on, and every check made against the outside.
@Command(name = "sources", description = "Print every source the program rests on and every check made against it.", mixinStandardHelpOptions = true, sortOptions = false)
final class SourcesCommand implements Callable<Integer> {
    @Option(names = "--work", description = "work every published value of a figure again, here and now, and say which do not come out")
    private boolean work;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Map<String, Map<String, Set<String>>> bySource = new TreeMap<>();
        for (Sources.Use use : Sources.all()) {
            Basis basis = use.basis();
            bySource.computeIfAbsent(basis.source() + " (" + basis.known().words() + ")", _ -> new LinkedHashMap<>())
                    .computeIfAbsent(basis.where(), _ -> new TreeSet<>()).add(use.by());
        }
        out.println("THE PROGRAM RESTS ON");
        bySource.forEach((source, places) -> {
            out.println("\n" + source);
            places.forEach((where, users) -> Brief.wrap(out, "  ", (where.isEmpty() ? "" : where + ": ") + String.join(", ", users)));
        });
        List<Check> checks = Check.all();
        out.println("\nCHECKS MADE AGAINST THE OUTSIDE");
        int rows = 0, wrong = 0;
        for (Check check : checks) {
            rows += check.csv().rows().size();
            out.println("\n" + check.name() + ": " + check.note("source") + (check.note("where").isEmpty() ? "" : ", " + check.note("where")) + " (" + check.note("known") + ")");
            out.println("  " + Words.count(check.csv().rows().size(), "value") + ", " + check.note("checks"));
            if (!work) continue;
            List<String> misses = check.misses();
            wrong += misses.size();
            for (String miss : misses) out.println("  DOES NOT COME OUT: " + miss);
        }
        out.println("\n" + Words.count(checks.size(), "table") + " of checks, " + Words.count(rows, "value") + "." + (work ? " " + (wrong == 0 ? "All that figures answer came out." : wrong + " did not come out.") : ""));
        return wrong == 0 ? 0 : Main.BAD_INPUT;
    }
}
