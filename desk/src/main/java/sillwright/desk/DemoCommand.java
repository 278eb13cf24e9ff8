package sillwright.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

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
        Path examples = Home.folder().resolve("examples");
        return DossierCommand.run(new Road().file(examples.resolve("fallow-brook-house.survey.json"), START).prices(examples.resolve("prices.csv")), out, DossierCommand.Wish.ALL, spec.commandLine());
    }
}
