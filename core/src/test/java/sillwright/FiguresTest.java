package sillwright;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillwright.measure.Answer;
import sillwright.measure.Dimension;
import sillwright.measure.Figure;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Unit;
import sillwright.measure.Units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/// What holds of every figure, whichever stage it is of.
@DisplayNameGeneration(ReplaceUnderscores.class)
class FiguresTest {
    static Collection<Figure> figures() { return Figures.all().values(); }

    /// Those whose example names no file: the core opens none.
    static List<Figure> typed() {
        return figures().stream().filter(figure -> figure.keys().stream().noneMatch(key -> key.name().equals("file") && key.needed())).toList();
    }

    private static Map<String, String> example(Figure figure) {
        Map<String, String> typed = new LinkedHashMap<>();
        Matcher matcher = Pattern.compile("(\\w+)=(.*?)(?= \\w+=|$)").matcher(figure.example());
        while (matcher.find()) typed.put(matcher.group(1), matcher.group(2));
        return typed;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("typed")
    void the_example_works_and_gives_every_result_that_is_promised(Figure figure) {
        Answer answer = figure.answer(example(figure));
        assertEquals(figure.name(), answer.figure());
        assertTrue(figure.gives().keySet().containsAll(answer.results().keySet()), answer.results().keySet() + " are more than are promised");
        assertTrue(answer.results().keySet().containsAll(figure.gives().keySet()), figure.gives().keySet() + " are promised");
        assertFalse(answer.basis().isEmpty(), "it rests on nothing");
        for (var result : answer.results().entrySet())
            if (result.getValue() instanceof Answer.Measured measured) {
                assertTrue(Double.isFinite(measured.own()), result.getKey());
                for (Units units : Units.values()) assertFalse(measured.words(units).isEmpty());
            }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("typed")
    void typed_in_the_other_units_it_gives_the_same_answer(Figure figure) {
        Answer first = figure.answer(example(figure));
        for (Units units : Units.values()) {
            Map<String, String> again = new LinkedHashMap<>();
            for (var input : first.inputs().entrySet()) again.put(input.getKey(), text(input.getValue(), key(figure, input.getKey()), units));
            Answer second = figure.answer(again);
            for (var result : first.results().entrySet()) {
                Answer.Result other = second.results().get(result.getKey());
                if (result.getValue() instanceof Answer.Measured one) {
                    Answer.Measured two = (Answer.Measured) other;
                    assertEquals(one.own(), two.own(), 1e-9 * Math.max(1e-3, Math.abs(one.own())), result.getKey());
                    Unit us = one.kind().in(Units.US), si = one.kind().in(Units.SI);
                    assertEquals(us.toOwn(one.in(Units.US)), si.toOwn(one.in(Units.SI)), 1e-9 * Math.max(1e-6, Math.abs(one.own())), result.getKey());
                } else assertEquals(result.getValue(), other, result.getKey());
            }
        }
    }

    private static Key key(Figure figure, String name) { return figure.keys().stream().filter(key -> key.name().equals(name)).findFirst().orElseThrow(); }

    private static String text(Object value, Key key, Units units) {
        return switch (value) {
            case Quantity quantity -> written(quantity.own(), key.kind().orElseThrow(), units);
            case List<?> several -> several.stream().map(one -> written(((Quantity) one).own(), key.kind().orElseThrow(), units)).collect(Collectors.joining(","));
            default -> String.valueOf(value);
        };
    }

    private static String written(double own, Kind kind, Units units) {
        if (kind == Kind.FRACTION) return BigDecimal.valueOf(own * 100).toPlainString() + "%";
        Unit unit = kind.in(units);
        return BigDecimal.valueOf(unit.fromOwn(own)) + (kind.dimension() == Dimension.SLOPE && unit.symbol().isEmpty() ? ":1" : unit.symbol());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void a_key_it_does_not_have_is_refused_and_its_keys_are_named(Figure figure) {
        Map<String, String> typed = example(figure);
        typed.put("colour", "red");
        String said = assertThrows(Refused.class, () -> figure.answer(typed)).getMessage();
        assertTrue(said.startsWith("figure " + figure.name()) && said.contains("'colour'") && said.contains(figure.keys().getFirst().name()), said);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void with_nothing_typed_every_key_it_needs_is_named_at_once(Figure figure) {
        List<Key> needed = figure.keys().stream().filter(Key::needed).toList();
        if (needed.isEmpty()) return;
        String said = assertThrows(Refused.class, () -> figure.answer(Map.of())).getMessage();
        for (Key key : needed) assertTrue(said.contains(key.name() + ": is missing"), said);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("typed")
    void a_bare_number_is_refused_with_the_units_that_are_taken(Figure figure) {
        for (Key key : figure.keys()) {
            Optional<Kind> kind = key.kind().filter(k -> k != Kind.NUMBER);
            if (kind.isEmpty()) continue;
            Map<String, String> typed = example(figure);
            typed.put(key.name(), "7");
            String said = assertThrows(Refused.class, () -> figure.answer(typed), key.name()).getMessage();
            assertTrue(said.contains(key.name()) && said.contains("'7'") && said.contains(kind.get().example()), said);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("typed")
    void a_value_out_of_range_is_refused_with_the_range(Figure figure) {
        for (Key key : figure.keys()) {
            if (!(key.takes() instanceof Key.Takes.Measured(var kind, var least, var most))) continue;
            assertTrue(least > -Double.MAX_VALUE && most < Double.MAX_VALUE, figure.name() + ", " + key.name() + " has no bounds");
            for (double beyond : new double[] {least - 0.01 * (most - least) - 1e-6, most + 0.01 * (most - least) + 1e-6}) {
                Map<String, String> typed = example(figure);
                typed.put(key.name(), written(beyond, kind, Units.SI));
                String said = assertThrows(Refused.class, () -> figure.answer(typed), figure.name() + " " + key.name() + "=" + written(beyond, kind, Units.SI)).getMessage();
                assertTrue(said.contains(key.name()) && said.contains("range"), said);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("typed")
    void wood_that_is_in_no_table_is_worked_as_its_kin_with_a_caution_and_refused_where_it_has_none(Figure figure) {
        for (Key key : figure.keys()) {
            if (!key.name().toLowerCase(Locale.ROOT).endsWith("species")) continue;
            Map<String, String> typed = example(figure);
            if (figure.name().equals("porosity")) typed.remove("sg");
            typed.put(key.name(), "pine-estern-white");
            String kin = String.join("; ", figure.answer(typed).cautions());
            assertTrue(kin.contains("pine-estern-white") && kin.contains("share its name") && kin.contains("pine-eastern-white"), figure.name() + ": " + kin);
            typed.put(key.name(), "zebrawood");
            String said = assertThrows(Refused.class, () -> figure.answer(typed)).getMessage();
            assertTrue(said.contains(figure.name()) && said.contains(key.name()) && said.contains("zebrawood"), said);
        }
    }

    /// By weight: the wood of the table that weighs most nearly as much, or where some share its name the nearest of those.
    @Test
    void wood_that_is_in_no_table_is_worked_by_its_weight() {
        for (String name : List.of("meter", "drying", "movement", "shrink-gap", "consolidant")) {
            Map<String, String> typed = example(Figures.named(name));
            typed.put("species", "zebrawood");
            typed.put("gravity", "0.34");
            String said = String.join("; ", Figures.named(name).answer(typed).cautions());
            assertTrue(said.contains("nearest in weight") && said.contains("0.34 was given"), name + ": " + said);
        }
        Map<String, String> typed = new HashMap<>(Map.of("species", "oak-mystery", "gravity", "0.56", "width", "200mm", "from", "8%", "to", "14%"));
        Answer oak = Figures.named("movement").answer(typed);
        assertTrue(String.join("; ", oak.cautions()).contains("oak-northern-red"), oak.cautions().toString());
        typed.put("species", "oak-northern-red");
        assertEquals(Figures.named("movement").answer(typed).own("change"), oak.own("change"));
    }

    @Test
    void a_figure_mistyped_is_answered_with_the_nearest() {
        assertTrue(assertThrows(Refused.class, () -> Figures.named("dewpiont")).getMessage().contains("dewpoint"));
    }
}
