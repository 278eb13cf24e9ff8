package sillwright.store;

import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// A figure's answer as JSON: the shape that every answer has, on the command line and over the API.
public final class AnswerJson {
    private static final JsonMapper JSON = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private AnswerJson() {}

    public static String text(Answer answer, Units units) {
        ObjectNode root = JSON.createObjectNode();
        root.put("figure", answer.figure());
        ObjectNode inputs = root.putObject("inputs");
        answer.inputs().forEach((key, value) -> input(inputs.putObject(key), value));
        ObjectNode results = root.putObject("results");
        answer.results().forEach((name, result) -> {
            ObjectNode node = results.putObject(name);
            switch (result) {
                case Answer.Measured measured -> number(node, measured.in(units)).put("unit", measured.kind().in(units).symbol());
                case Answer.Said(var word) -> node.put("value", word).put("unit", "");
                case Answer.True(var yes) -> node.put("value", yes).put("unit", "");
            }
        });
        ArrayNode basis = root.putArray("basis");
        answer.basis().forEach(one -> basis.addObject().put("source", one.source()).put("where", one.where()).put("known", one.known().words()));
        ArrayNode cautions = root.putArray("cautions");
        answer.cautions().forEach(cautions::add);
        return JSON.writeValueAsString(root);
    }

    /// JSON has no number without end: such a result is null, and its caution says why.
    private static ObjectNode number(ObjectNode node, double value) {
        if (Double.isFinite(value)) node.put("value", value);
        else node.putNull("value");
        return node;
    }

    private static void input(ObjectNode node, Object value) {
        switch (value) {
            case Quantity quantity -> node.put("value", quantity.value()).put("unit", symbol(quantity.unit()));
            case List<?> list -> {
                ArrayNode values = node.putArray("value");
                String unit = "";
                for (Object one : list) {
                    Quantity quantity = (Quantity) one;
                    values.add(quantity.value());
                    unit = symbol(quantity.unit());
                }
                node.put("unit", unit);
            }
            case Boolean yes -> node.put("value", yes).put("unit", "");
            default -> node.put("value", value.toString()).put("unit", "");
        }
    }

    private static String symbol(Unit unit) { return unit.symbol(); }
}
