package sillwright.desk;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import sillwright.measure.Words;
import sillwright.store.SurveyFile;
import sillwright.walk.Survey;

/// `sillwright check FILE`: reads a survey and names every fault at once.
@Command(name = "check", description = "Read a survey and name every fault in it, each with the way to mend it.", mixinStandardHelpOptions = true, sortOptions = false)
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private Road road;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        SurveyFile.Held held = road.read();
        Survey survey = held.fold();
        out.println(counts(survey));
        Road.tell(survey.faults(), out);
        long grave = survey.faults().stream().filter(f -> f.grave()).count();
        out.println(survey.faults().isEmpty() ? "No fault found." : Words.count(survey.faults().size(), "fault") + ", " + grave + " of them with something set aside.");
        return Road.code(survey);
    }

    static String counts(Survey survey) {
        List<String> counts = new ArrayList<>(List.of(Words.count(survey.sides().size(), "side"), Words.count(survey.members().size(), "member"),
                Words.count(survey.probes().size(), "probe reading"), Words.count(survey.moistures().size(), "moisture reading"),
                Words.count(survey.sightings().size(), "sighting") + " (" + survey.sightings().stream().filter(s -> !s.what().seen()).count() + " looked for and not seen)"));
        if (!survey.works().isEmpty()) counts.add(Words.count(survey.works().size(), "record") + " of work done");
        return survey.name() + ": " + Words.list(counts) + ".";
    }
}
