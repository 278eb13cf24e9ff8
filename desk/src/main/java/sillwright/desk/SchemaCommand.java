package sillwright.desk;

import java.util.concurrent.Callable;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sillwright.store.SchemaText;

/// `sillwright schema survey|findings|net`: the JSON Schema of what is read and written.
@Command(name = "schema", description = "Print the JSON Schema of the survey file, of findings.json, or of the network that the figure net reads.", mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
    enum Which { SURVEY, FINDINGS, NET }

    @Parameters(paramLabel = "survey|findings|net", description = "which schema")
    private Which which;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().getOut().println(switch (which) {
            case SURVEY -> SchemaText.survey();
            case FINDINGS -> SchemaText.findings();
            case NET -> SchemaText.net();
        });
        return 0;
    }
}
