package sillwright.desk;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Key;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.solve.ProvenCuts;
import sillwright.store.AnswerJson;

/// `sillwright figure NAME key=value ...`: one calculation, worked alone.
@Command(name = "figure", description = "Work one calculation alone: figure NAME key=value ... ; without a name, list them.", sortOptions = false)
final class FigureCommand implements Callable<Integer> {
    @Parameters(arity = "0..1", paramLabel = "NAME", description = "which figure")
    private String name;

    @Parameters(index = "1..*", paramLabel = "key=value", description = "its values, with their units: temp=70F rh=65%%")
    private List<String> typed = List.of();

    @Option(names = "--units", defaultValue = "us", paramLabel = "us|si", description = "units of the answer (default us)")
    private Units units;

    @Option(names = "--json", description = "print the answer as JSON, at full precision")
    private boolean json;

    @Option(names = {"-h", "--help"}, description = "tell the figure's keys, units, ranges and sources")
    private boolean help;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (name == null) {
            if (help) spec.commandLine().usage(out);
            list(out);
            return 0;
        }
        Figure figure = Figures.named(name, new ProvenCuts());
        if (help) {
            explain(out, figure);
            return 0;
        }
        Map<String, String> values = values(figure);
        Answer answer = figure.answer(values, files(figure, values));
        if (json) out.println(AnswerJson.text(answer, units));
        else say(out, figure, answer);
        return 0;
    }

    private Map<String, String> values(Figure figure) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String one : typed) {
            int equals = one.indexOf('=');
            if (equals <= 0)
                throw new Refused("figure " + figure.name(), "'{}' is not key=value", "write it as in: sillwright figure " + figure.name() + " " + figure.example(), one);
            if (values.putIfAbsent(one.substring(0, equals), one.substring(equals + 1)) != null)
                throw new Refused("figure " + figure.name() + ", " + one.substring(0, equals), "is given twice", "give it once");
        }
        return values;
    }

    /// The contents of the files that a figure's keys name.
    private static Map<String, String> files(Figure figure, Map<String, String> values) {
        Map<String, String> contents = new LinkedHashMap<>();
        for (Key key : figure.keys()) {
            String path = values.get(key.name());
            boolean table = key.name().equals("stock") && path != null && !Character.isDigit((path.strip() + "x").charAt(0));
            if (path == null || !key.name().equals("file") && !table && !(key.name().equals("stock") && Files.isRegularFile(Path.of(path)))) continue;
            try {
                contents.put(path, Files.readString(Path.of(path)));
            } catch (IOException e) {
                throw new Refused("figure " + figure.name() + ", " + key.name(), "the file {} cannot be read", "name a file that is there and is text", path);
            }
        }
        return contents;
    }

    private static void list(PrintWriter out) {
        String stage = "";
        for (Figure figure : Figures.all().values()) {
            if (!figure.stage().equals(stage)) out.println((stage.isEmpty() ? "" : "\n") + figure.stage());
            stage = figure.stage();
            out.println("  " + pad(figure.name(), 15) + figure.says());
        }
        out.println("\nsillwright figure NAME --help tells a figure's keys, units, ranges and sources.");
    }

    private void explain(PrintWriter out, Figure figure) {
        out.println(figure.name() + " (" + figure.stage() + "): " + figure.says());
        out.println("\nTakes");
        for (Key key : figure.keys()) {
            String standing = key.standing().map(text -> "; " + text + " where left out").orElse(key.needed() ? "" : "; may be left out");
            out.println("  " + pad(key.name(), 13) + key.says() + standing);
            out.println("  " + pad("", 13) + key.accepts(units));
        }
        out.println("\nGives");
        figure.gives().forEach((result, says) -> out.println("  " + pad(result, 20) + says));
        out.println("\nRests on");
        for (Basis basis : figure.basis()) out.println("  " + basis.words());
        out.println("\nExample\n  sillwright figure " + figure.name() + " " + figure.example());
    }

    private void say(PrintWriter out, Figure figure, Answer answer) {
        out.println(figure.name() + ": " + figure.says());
        answer.inputs().forEach((key, value) -> out.println("  " + pad(key, 20) + given(value)));
        out.println();
        answer.results().forEach((name, result) -> out.println("  " + pad(name, 20) + switch (result) {
            case Answer.Measured measured -> measured.words(units);
            case Answer.Said(var word) -> word;
            case Answer.True(var yes) -> yes ? "yes" : "no";
        }));
        out.println("\nRests on");
        for (Basis basis : answer.basis()) out.println("  " + basis.words());
        if (!answer.cautions().isEmpty()) out.println("\nBeware");
        for (String caution : answer.cautions()) out.println("  " + caution);
    }

    private static String given(Object value) {
        return switch (value) {
            case Quantity quantity -> quantity.text();
            case List<?> list -> String.join(", ", list.stream().map(one -> ((Quantity) one).text()).toList());
            case Boolean yes -> yes ? "yes" : "no";
            default -> value.toString();
        };
    }

    static String pad(String text, int width) { return text.length() >= width ? text + " " : text + " ".repeat(width - text.length()); }
}
