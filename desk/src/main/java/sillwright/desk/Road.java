package sillwright.desk;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillwright.Assessment;
import sillwright.Settings;
import sillwright.measure.Dimension;
import sillwright.measure.Refused;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.solve.ProvenCuts;
import sillwright.store.SurveyFile;
import sillwright.walk.Fault;
import sillwright.walk.Member;
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

    /// The default for the demo: a file and a day that make every run the same.
    Road file(Path file, LocalDate start) {
        this.file = file;
        this.start = start;
        this.seed = 1;
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
        LocalDate today = LocalDate.now();
        LocalDate first = start != null ? start : today.plusDays(14 - (today.getDayOfWeek().getValue() - 1));
        Survey there = weather == null ? survey : Hourly.laid(survey, weather);
        Settings settings = new Settings(first, units != null ? units : written(there), seed, new ProvenCuts(), Settings.COMMON_STOCK_MM);
        return Assessment.of(there, settings, progress::step);
    }

    /// The units most members were measured in.
    static Units written(Survey survey) {
        int metric = 0, all = 0;
        for (Member member : survey.members().values()) {
            all++;
            Unit unit = member.width().unit();
            if (unit.dimension() == Dimension.LENGTH && (unit == Unit.MILLIMETRE || unit == Unit.CENTIMETRE || unit == Unit.METRE)) metric++;
        }
        return metric * 2 > all ? Units.SI : Units.US;
    }

    static void tell(List<Fault> faults, PrintWriter err) {
        for (Fault fault : faults) err.println((fault.grave() ? "set aside: " : "note: ") + fault.line());
    }

    static int code(Survey survey) { return survey.faults().stream().anyMatch(Fault::grave) ? Main.SET_ASIDE : 0; }
}
