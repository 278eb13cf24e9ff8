package sillwright.store;

import java.util.List;
import java.util.function.BiConsumer;

import sillwright.measure.Basis;
import sillwright.wood.Interval;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// How lists, intervals and sources are put into `findings.json`, whichever stage they come from.
final class Nodes {
    private Nodes() {}

    /// JSON has no number without end.
    static Double finite(double value) { return Double.isFinite(value) ? value : null; }

    static void interval(ObjectNode node, Interval i) { node.put("low", i.low()).put("median", i.median()).put("high", i.high()); }

    static void basis(ArrayNode array, List<Basis> all) {
        for (Basis one : all) array.addObject().put("source", one.source()).put("where", one.where()).put("known", one.known().words());
    }

    static void words(ArrayNode array, List<String> all) { all.forEach(array::add); }

    static <T> void each(ArrayNode array, List<T> all, BiConsumer<ObjectNode, T> put) { for (T one : all) put.accept(array.addObject(), one); }
}
