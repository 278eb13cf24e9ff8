package sillwright.desk;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sillwright.Assessment;
import sillwright.measure.Refused;
import sillwright.sheet.GroupMap;
import sillwright.sheet.Print;
import sillwright.sheet.Sheets;
import sillwright.store.FindingsFile;
import sillwright.store.SurveyFile;

/// `sillwright dossier FILE -o DIR`: the whole road, onto paper.
@Command(name = "dossier", description = "Run all five stages on a survey and write the dossier, drawings, order, cut list, calendars and findings.",
        mixinStandardHelpOptions = true, sortOptions = false)
final class DossierCommand implements Callable<Integer> {
    @Mixin
    private Road road;

    @Option(names = {"-o", "--out"}, paramLabel = "DIR", required = true, description = "folder to write into; made where it is missing")
    private Path out;

    @Option(names = "--for", paramLabel = "owner|crew|board", split = ",", description = "a print for each reader named, in place of the whole dossier")
    private List<Print.Reader> readers = List.of();

    @Option(names = "--paper", paramLabel = "letter|a4", description = "default: letter for US units, A4 for SI")
    private Print.Paper paper;

    @Option(names = "--at", paramLabel = "LAT,LON", description = "where the building stands, in degrees, for building.geojson; it is written nowhere else, and not unless it is given")
    private String at;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        return run(road, out, new Wish(readers, Optional.ofNullable(paper), Optional.ofNullable(at).map(Wish::place)), spec.commandLine());
    }

    /// What is wanted on paper.
    record Wish(List<Print.Reader> readers, Optional<Print.Paper> paper, Optional<GroupMap.Position> at) {
        static final Wish ALL = new Wish(List.of(), Optional.empty(), Optional.empty());

        static GroupMap.Position place(String words) {
            String[] parts = words.split(",");
            try {
                if (parts.length == 2) return new GroupMap.Position(Double.parseDouble(parts[0].strip()), Double.parseDouble(parts[1].strip()));
            } catch (NumberFormatException unread) {
                // refused below
            }
            throw new Refused("--at", "'{}' is not a place", "write degrees north and east, such as --at 44.26,-72.58", words);
        }
    }

    /// Walks the road, writes everything into a folder, and says what a person wants to know first.
    static int run(Road road, Path folder, Wish wish, CommandLine line) {
        Road.Walked walked = road.walk(line.getErr());
        List<Path> written = write(walked.assessment(), walked.held(), folder, wish, road.beside(), walked.progress());
        walked.progress().done();
        Brief.print(walked.assessment(), line.getOut());
        files(line.getOut(), written);
        return walked.code();
    }

    /// Writes everything; a folder that cannot be written is refused.
    static List<Path> write(Assessment assessment, SurveyFile.Held held, Path folder, Wish wish, Function<String, Optional<byte[]>> pictures, Progress progress) {
        try {
            Files.createDirectories(folder);
            List<Path> written = new ArrayList<>(Sheets.write(assessment, prints(assessment, wish, pictures), wish.at(), folder, progress::step));
            written.add(Files.writeString(folder.resolve("findings.json"), FindingsFile.text(assessment)));
            Path aside = folder.resolve("set-aside.json");
            if (held.setAside().isEmpty()) Files.deleteIfExists(aside);
            else written.add(Files.writeString(aside, "[\n" + String.join(",\n", held.setAside()) + "\n]\n"));
            return written;
        } catch (IOException e) {
            throw new Refused(folder.toString(), "cannot be written: {}", "name a folder that may be written with -o", String.valueOf(e.getMessage()));
        }
    }

    private static List<Print> prints(Assessment assessment, Wish wish, Function<String, Optional<byte[]>> pictures) {
        Print whole = new Print(Print.Reader.EVERYBODY, wish.paper().orElse(Print.Paper.of(assessment.settings().units())), pictures);
        return wish.readers().isEmpty() ? List.of(whole) : wish.readers().stream().distinct().map(whole::read).toList();
    }

    static void files(PrintWriter out, List<Path> written) {
        out.println("Written to " + written.getFirst().toAbsolutePath().getParent());
        List<String> names = written.stream().map(path -> path.getFileName().toString()).toList();
        for (String kind : List.of("dossier", "elevation", "repair", "")) {
            List<String> some = names.stream().filter(name -> kind.isEmpty() ? !name.matches("(dossier|elevation|repair).*") : name.startsWith(kind))
                    .sorted(java.util.Comparator.comparing(String::length).thenComparing(name -> name)).toList();
            if (some.size() > 4 && !kind.isEmpty()) out.println("  " + some.getFirst() + " to " + some.getLast() + " (" + some.size() + " drawings)");
            else if (!some.isEmpty()) out.println("  " + String.join("  ", some));
        }
    }
}
