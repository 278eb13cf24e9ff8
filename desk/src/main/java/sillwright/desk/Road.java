package sillwright.desk;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillwright.Assessment;
import sillwright.Settings;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.page.Hands;
import sillwright.store.SurveyFile;
import sillwright.walk.Fault;
import sillwright.walk.Survey;

/// What every command that takes a survey asks for, and the way from the file to the assessment.
final class Road {
    @Parameters(paramLabel = "FILE", description = "a *.survey.json file")
    private Path file;

    @Option(names = "--units", paramLabel = "us|si", description = "units of what is said (default: those the survey was written in)")
    private Units units;

    @Option(names = "--start", paramLabel = "DATE", description = "first day that work may begin, as 2026-05-04 (default: the Monday after next)")
    private LocalDate start;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "of the draws behind every interval (default 1)")
    private long seed;

    @Option(names = "--weather", paramLabel = "FILE", description = "hourly weather in the EPW layout, in place of the survey's monthly temperatures, humidity and wind; rain where it gives it")
    private Path weather;

    @Mixin
    private Terms terms = new Terms();

    @Option(names = "--today", paramLabel = "DATE", description = "plan what is left from this day on; steps that the book has as done are kept")
    private LocalDate today;

    @Option(names = "--rained", paramLabel = "DATE", split = ",", description = "days lost to rain, as 2026-06-09")
    private List<LocalDate> rained = List.of();

    /// The default for the demo: a file and a day that make every run the same.
    Road file(Path file, LocalDate start) {
        this.file = file;
        this.start = start;
        this.seed = 1;
        return this;
    }

    /// The pictures that lie beside the survey, under the names it gives them.
    Function<String, Optional<byte[]>> beside() {
        Path folder = file.toAbsolutePath().getParent();
        return name -> {
            Path picture = folder.resolve(name).normalize();
            try {
                return picture.startsWith(folder) && Files.isRegularFile(picture) ? Optional.of(Files.readAllBytes(picture)) : Optional.empty();
            } catch (IOException e) {
                throw new Refused(name, "cannot be read: {}", "look at the file, or take it away", String.valueOf(e.getMessage()));
            }
        };
    }

    Road prices(Path prices) {
        terms.prices(prices);
        return this;
    }

    /// Reads and folds; names every fault on the way.
    SurveyFile.Held read() { return SurveyFile.read(file); }

    /// A survey that has gone the whole road.
    record Walked(SurveyFile.Held held, Assessment assessment, Progress progress) {
        int code() { return Road.code(assessment.survey()); }
    }

    /// From the file to the assessment; faults and progress are told on the way.
    Walked walk(PrintWriter err) {
        SurveyFile.Held held = read();
        Survey survey = held.fold();
        tell(survey.faults(), err);
        Progress progress = Progress.on(err);
        return new Walked(held, assess(survey, progress), progress);
    }

    private Assessment assess(Survey survey, Progress progress) {
        if (survey.members().isEmpty() && survey.sides().isEmpty())
            throw new Refused(file.getFileName().toString(), "no side and no member could be read, so there is nothing to work on", "describe at least one side and one member");
        LocalDate first = today != null ? today : start != null ? start : Settings.firstDay(LocalDate.now());
        Survey there = weather == null ? survey : Hourly.laid(survey, weather);
        Units said = units != null ? units : Settings.written(there);
        return Assessment.of(there, terms.settled(Set.copyOf(rained)).on(first, said, seed), progress::step, new Hands());
    }

    static void tell(List<Fault> faults, PrintWriter err) {
        for (Fault fault : faults) err.println((fault.grave() ? "set aside: " : "note: ") + fault.line());
    }

    static int code(Survey survey) { return survey.faults().stream().anyMatch(Fault::grave) ? Main.SET_ASIDE : 0; }
}
