package sillwright.store;

import sillwright.Assessment;
import sillwright.walk.Fault;
import sillwright.walk.Survey;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/// All that the five stages found, as one JSON document: `findings.json`. Its schema is `findings-1.schema.json`.
///
/// The unit of a number is in its name; a fraction is of one.
public final class FindingsFile {
    private static final JsonMapper JSON = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private FindingsFile() {}

    public static String text(Assessment a) { return JSON.writeValueAsString(node(a)) + "\n"; }

    private static ObjectNode node(Assessment a) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("format", "sillwright-findings").put("version", 1);
        root.put("standing", "Screening, not engineering: load-bearing work, lead, asbestos, mould, work at height and electricity defer to local codes and licensed people.");
        Survey survey = a.survey();
        ObjectNode building = root.putObject("building");
        building.put("id", survey.building().map(b -> b.id()).orElse("")).put("name", survey.name()).put("note", survey.building().map(b -> b.note()).orElse(""));
        survey.building().ifPresent(b -> building.put("yearBuilt", b.yearBuilt()));
        ObjectNode walk = root.putObject("walk");
        walk.put("entries", survey.entries()).put("sides", survey.sides().size()).put("members", survey.members().size()).put("probes", survey.probes().size())
                .put("moistures", survey.moistures().size()).put("sightings", survey.sightings().size());
        Nodes.each(walk.putArray("faults"), survey.faults(), FindingsFile::fault);
        WaterFound.put(root.putObject("water"), a.water(), a.wood());
        WoodFound.put(root.putObject("wood"), a.survey(), a.wood());
        WorkFound.put(root.putObject("work"), a.work());
        WatchFound.put(root.putObject("watch"), a.watch());
        return root;
    }

    private static void fault(ObjectNode node, Fault f) {
        node.put("file", f.file()).put("entry", f.entry()).put("field", f.field()).put("what", f.what()).put("mend", f.mend()).put("setAside", f.grave());
    }
}
