package sillwright.desk;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillwright.Assessment;
import sillwright.store.SurveyFile;
import sillwright.walk.Survey;

/// `sillwright demo`: the whole road on an invented house.
@Command(name = "demo", description = "Run the whole road on an invented house and say what a person wants to know first.", mixinStandardHelpOptions = true, sortOptions = false)
final class DemoCommand implements Callable<Integer> {
    /// The demo is planned from this day, so that it is the same whenever it is run.
    static final LocalDate START = LocalDate.of(2026, 6, 1);

    @Option(names = {"-o", "--out"}, paramLabel = "DIR", defaultValue = "dossier", description = "folder to write into (default dossier)")
    private Path out;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        Road road = new Road().file(Home.folder().resolve("examples").resolve("fallow-brook-house.survey.json"), START);
        SurveyFile.Held held = road.read();
        Survey survey = held.fold();
        Road.tell(survey.faults(), err);
        Progress progress = Progress.on(err);
        Assessment assessment = road.assess(survey, err, progress);
        List<Path> written = DossierCommand.write(assessment, held, out, progress);
        progress.done();
        Brief.print(assessment, spec.commandLine().getOut());
        DossierCommand.files(spec.commandLine().getOut(), written);
        return Road.code(survey);
    }
}
