package sillwright.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import sillwright.Figures;
import sillwright.measure.Figure;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.solve.ProvenCuts;
import sillwright.store.AnswerJson;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// Every calculation that can be worked alone, over the wire; no file of this machine is ever opened for one.
final class FigureApi {
    private static final int MOST_BYTES = 4 << 20;

    void on(RoutesConfig routes) {
        routes.get("/api/figures", this::list);
        routes.get("/api/figure/{figure}", this::work);
        routes.post("/api/figure/{figure}", this::workWithFiles);
    }

    private void list(Context ctx) {
        ObjectNode root = Wire.object();
        ArrayNode all = root.putArray("figures");
        for (Figure figure : Figures.all().values()) describe(all.addObject(), figure);
        Wire.say(ctx, root);
    }

    private static void describe(ObjectNode node, Figure figure) {
        node.put("name", figure.name()).put("stage", figure.stage()).put("says", figure.says()).put("example", figure.example());
        ArrayNode keys = node.putArray("keys");
        for (Key key : figure.keys()) {
            ObjectNode one = keys.addObject().put("name", key.name()).put("says", key.says()).put("needed", key.needed());
            key.standing().ifPresent(text -> one.put("standing", text));
            one.put("accepts", key.accepts(Units.US));
            one.put("sort", sort(key));
            if (key.takes() instanceof Key.Takes.OneOf(var words)) words.forEach(one.putArray("words")::add);
        }
        ObjectNode gives = node.putObject("gives");
        figure.gives().forEach(gives::put);
        ArrayNode basis = node.putArray("basis");
        figure.basis().forEach(one -> basis.addObject().put("source", one.source()).put("where", one.where()).put("known", one.known().words()));
    }

    /// What a form would show for a key.
    static String sort(Key key) {
        return switch (key.takes()) {
            case Key.Takes.Measured(var kind, _, _) -> kind == Kind.NUMBER ? "number" : "measure";
            case Key.Takes.Several _ -> "several";
            case Key.Takes.OneOf _ -> "one-of";
            case Key.Takes.Text _ -> isFile(key) ? "file" : "text";
            case Key.Takes.YesNo _ -> "yes-no";
        };
    }

    static boolean isFile(Key key) { return key.name().equals("file"); }

    static Figure figure(Context ctx) {
        try {
            return Figures.named(ctx.pathParam("figure"), new ProvenCuts());
        } catch (Refused refused) {
            throw new Refusal(404, refused);
        }
    }

    static Units units(Optional<String> told) {
        return switch (told.orElse("us")) {
            case "us" -> Units.US;
            case "si" -> Units.SI;
            default -> throw new Refused("units", "'{}' is not a system of units", "write us or si", told.get());
        };
    }

    private void work(Context ctx) {
        Figure figure = figure(ctx);
        Map<String, String> values = new LinkedHashMap<>();
        Units units = units(Optional.ofNullable(ctx.queryParam("units")));
        ctx.queryParamMap().forEach((key, all) -> {
            if (key.equals("units")) return;
            if (all.size() > 1) throw new Refused("figure " + figure.name() + ", " + key, "is given twice", "give it once");
            values.put(key, all.getFirst());
        });
        for (Key key : figure.keys()) if (isFile(key) && values.containsKey(key.name()))
            throw new Refused("figure " + figure.name() + ", " + key.name(), "no file of the server is opened", "send its contents: POST {\"values\":{\"file\":\"mine.csv\"},\"files\":{\"mine.csv\":\"...\"}}");
        Wire.say(ctx, AnswerJson.text(figure.answer(values), units));
    }

    private void workWithFiles(Context ctx) {
        Figure figure = figure(ctx);
        JsonNode body = Wire.json(ctx, MOST_BYTES);
        for (String field : body.propertyNames()) if (!List.of("values", "files", "units").contains(field)) throw new Refused(field, "is not known here", "send values, files and units");
        Units units = units(body.has("units") ? Optional.of(body.get("units").asString("")) : Optional.empty());
        Wire.say(ctx, AnswerJson.text(figure.answer(texts(body, "values"), texts(body, "files")), units));
    }

    private static Map<String, String> texts(JsonNode body, String field) {
        Map<String, String> texts = new LinkedHashMap<>();
        if (!body.has(field)) return texts;
        if (!body.get(field).isObject()) throw new Refused(field, "is not an object", "send \"" + field + "\": { \"name\": \"text\" }");
        body.get(field).properties().forEach(one -> {
            if (!one.getValue().isString()) throw new Refused(field + "." + one.getKey(), "is not text", "write it as text, with its unit: \"70F\"");
            texts.put(one.getKey(), one.getValue().stringValue());
        });
        return texts;
    }
}
