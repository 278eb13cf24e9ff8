package sillwright.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Key;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.sheet.Markup;

/// A page of every calculation that can be worked alone, and one with a form for each.
final class FigurePages {
    void on(RoutesConfig routes) {
        routes.get("/figures", this::list);
        routes.get("/figures/{figure}", this::one);
    }

    private void list(Context ctx) {
        List<Markup> all = new ArrayList<>(List.of(Html.h(1, "Figures"), Html.p("One calculation alone, with what it rests on. The stages work the same ones.")));
        String stage = "";
        List<Markup> lines = new ArrayList<>();
        for (Figure figure : Figures.all().values()) {
            if (!figure.stage().equals(stage)) {
                flush(all, lines);
                all.add(Html.h(2, figure.stage()));
            }
            stage = figure.stage();
            lines.add(Html.of("li", Html.a("/figures/" + figure.name(), figure.name()), " ", figure.says()));
        }
        flush(all, lines);
        Frame.say(ctx, "Figures", Optional.empty(), "", "figures", Html.text("figures", Html.div("figures", all)));
    }

    private static void flush(List<Markup> all, List<Markup> lines) {
        if (!lines.isEmpty()) all.add(Html.of("ul", List.copyOf(lines)).with("class", "ways"));
        lines.clear();
    }

    private void one(Context ctx) {
        Figure figure = FigureApi.figure(ctx);
        Map<String, String> typed = new LinkedHashMap<>(), values = new LinkedHashMap<>();
        ctx.queryParamMap().forEach((key, all) -> typed.put(key, all.getFirst()));
        Map<String, String> files = new LinkedHashMap<>();
        for (Key key : figure.keys()) {
            String value = typed.getOrDefault(key.name(), "").strip();
            if (value.isEmpty()) continue;
            if (FigureApi.isFile(key)) files.put("typed", value);
            values.put(key.name(), FigureApi.isFile(key) ? "typed" : value);
        }
        String told = typed.getOrDefault("units", "us");
        Units units = told.equals("si") ? Units.SI : Units.US;
        List<Markup> all = new ArrayList<>(List.of(Html.h(1, figure.name()), Html.p(figure.says()), form(figure, typed, units)));
        if (!values.isEmpty()) all.add(answer(figure, values, files, units));
        all.add(Html.h(2, "Rests on"));
        all.addAll(Html.list(figure.basis().stream().map(Basis::words).toList()));
        all.add(Html.small("On the command line: ", Html.of("code", "sillwright figure " + figure.name() + " " + figure.example())));
        Frame.say(ctx, figure.name(), Optional.empty(), "", "figures", Html.text("figure", Html.div("figure", all)));
    }

    private static Markup answer(Figure figure, Map<String, String> values, Map<String, String> files, Units units) {
        try {
            Answer answer = figure.answer(values, files);
            List<List<?>> rows = new ArrayList<>();
            answer.results().forEach((name, result) -> rows.add(List.of(figure.gives().getOrDefault(name, name), Html.of("output", switch (result) {
                case Answer.Measured measured -> measured.words(units);
                case Answer.Said(var word) -> word;
                case Answer.True(var yes) -> yes ? "yes" : "no";
            }), name)));
            return Html.div("result", Html.h(2, "Answer"), Html.table("answer", List.of("what", "value", "name"), rows), answer.cautions().stream().map(Html::caution).toList());
        } catch (Refused refused) {
            return Html.div("wrong", Html.h(2, "Not yet"), Html.p(refused.line(units))).with("role", "alert");
        }
    }

    private static Markup form(Figure figure, Map<String, String> typed, Units units) {
        Map<String, String> example = example(figure);
        List<Markup> fields = new ArrayList<>();
        for (Key key : figure.keys()) fields.add(field(key, typed.getOrDefault(key.name(), typed.isEmpty() && !FigureApi.isFile(key) ? example.getOrDefault(key.name(), "") : ""), units));
        Markup us = Html.of("option", "US").with("value", "us"), si = Html.of("option", "metric").with("value", "si");
        fields.add(Html.of("p", Html.of("label", "units of the answer").with("for", "units"), Html.of("select", units == Units.US ? us.with("selected", "") : us, units == Units.SI ? si.with("selected", "") : si)
                .with("id", "units").with("name", "units")));
        return Html.of("form", fields, Html.of("button", "Work it").with("type", "submit").with("class", "first")).with("method", "get").with("class", "keys");
    }

    private static Markup field(Key key, String value, Units units) {
        String id = "key-" + key.name();
        Markup label = Html.of("label", key.says() + (key.needed() ? "" : " (may be left out)")).with("for", id);
        Markup hint = Html.of("span", key.name() + ": " + key.accepts(units) + key.standing().map(text -> "; " + text + " where left out").orElse("")).with("class", "small").with("id", id + "-hint");
        Markup input = switch (key.takes()) {
            case Key.Takes.OneOf(var words) -> choice(id, key, words, value);
            case Key.Takes.YesNo() -> choice(id, key, List.of("true", "false"), value);
            default -> FigureApi.isFile(key) ? Html.of("textarea", value).with("rows", "8").with("id", id).with("name", key.name()) : Html.of("input").with("id", id).with("name", key.name()).with("value", value).with("autocomplete", "off");
        };
        return Html.p(label, " ", input.with("aria-describedby", id + "-hint"), " ", hint);
    }

    private static Markup choice(String id, Key key, List<String> words, String value) {
        List<Markup> options = new ArrayList<>();
        if (!key.needed()) options.add(Html.of("option", "").with("value", "").with("label", "left out"));
        for (String word : words) options.add(word.equals(value) ? Html.of("option", word).with("value", word).with("selected", "") : Html.of("option", word).with("value", word));
        return Html.of("select", options).with("id", id).with("name", key.name());
    }

    /// The example's values by key. A value in quotes may hold spaces.
    private static Map<String, String> example(Figure figure) {
        Map<String, String> values = new LinkedHashMap<>();
        java.util.regex.Matcher each = java.util.regex.Pattern.compile("(\\w+)=(?:\"([^\"]*)\"|'([^']*)'|(\\S+))").matcher(figure.example());
        while (each.find()) values.put(each.group(1), each.group(2) != null ? each.group(2) : each.group(3) != null ? each.group(3) : each.group(4));
        return values;
    }
}
