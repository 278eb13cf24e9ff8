package sillwright.desk;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import sillwright.measure.Refused;
import sillwright.measure.Units;

/// `sillwright`: exit code 0 worked, 1 worked with something set aside, 2 could not be done.
@Command(name = "sillwright", subcommands = {DemoCommand.class, DossierCommand.class, CheckCommand.class, StageCommands.Walk.class, StageCommands.Water.class,
        StageCommands.Wood.class, StageCommands.Work.class, StageCommands.Watch.class, RankCommand.class, BookCommand.class, ServeCommand.class, FigureCommand.class, SpeciesCommand.class, SourcesCommand.class, SchemaCommand.class},
        mixinStandardHelpOptions = true, version = "Sillwright 0.1.0", sortOptions = false, usageHelpAutoWidth = true,
        description = "Look after an older wooden building: walk, water, wood, work, watch.",
        footer = {"", "Exit code: 0 worked, 1 worked with something set aside or left open, 2 could not be done.",
                "Screening, not engineering: loads, lead, heights, mould and electricity defer to local codes and licensed people."})
public final class Main implements Runnable {
    /// Something was set aside, and the rest was done.
    static final int SET_ASIDE = 1;
    /// Nothing could be done with what was given.
    static final int BAD_INPUT = 2;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8), err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code = run(out, err, args);
        out.flush();
        System.exit(code);
    }

    /// Runs one command; nothing is printed elsewhere.
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Main());
        line.setOut(out).setErr(err).setCaseInsensitiveEnumValuesAllowed(true);
        line.setExecutionExceptionHandler((thrown, _, _) -> {
            if (thrown instanceof Refused refused) {
                out.flush();
                err.println("sillwright: " + refused.line(Units.US));
                return BAD_INPUT;
            }
            throw thrown;
        });
        line.setParameterExceptionHandler((wrong, _) -> {
            CommandLine at = wrong.getCommandLine();
            err.println("sillwright: " + wrong.getMessage() + "; see: " + at.getCommandSpec().qualifiedName() + " --help");
            return BAD_INPUT;
        });
        int code = line.execute(args);
        out.flush();
        return code;
    }

    @Override
    public void run() { spec.commandLine().usage(spec.commandLine().getOut()); }
}
