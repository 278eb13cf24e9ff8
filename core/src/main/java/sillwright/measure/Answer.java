package sillwright.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// What a figure gives back: its inputs as read, its results, what they rest on, and what to beware of.
public record Answer(String figure, Map<String, Object> inputs, Map<String, Result> results, List<Basis> basis, List<String> cautions) {
    public Answer {
        inputs = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
        results = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(results));
        basis = List.copyOf(basis);
        cautions = List.copyOf(cautions);
    }

    /// One result: a measured number, or a word where it is no number.
    public sealed interface Result permits Measured, Said, True {}

    /// A number in the program's own unit of its kind.
    public record Measured(double own, Kind kind) implements Result {
        public double in(Units units) { return kind.in(units).fromOwn(own); }

        /// Rounded as a person would round it.
        public String words(Units units) {
            Unit unit = kind.in(units);
            double value = unit.fromOwn(own);
            String symbol = unit.symbol().isEmpty() || unit == Unit.PERCENT ? unit.symbol() : " " + unit.symbol();
            if (kind == Kind.LENGTH && units == Units.US && Math.abs(own) >= 25.4 / 16) {
                String tape = Words.length(own, units);
                return Words.significant(value, 4) + symbol + (Math.abs(own) >= 25.4 ? " (" + tape + ")" : "");
            }
            return Words.significant(value, 4) + symbol;
        }
    }

    /// A word: a mode, a class, a sentence of advice.
    public record Said(String word) implements Result {}

    /// True or false.
    public record True(boolean yes) implements Result {}

    /// The number of a result, in the program's own unit.
    public double own(String result) { return ((Measured) results.get(result)).own(); }

    /// Collects an answer while a figure works.
    public static final class Sheet {
        private final Map<String, Result> results = new LinkedHashMap<>();
        private final List<Basis> basis = new ArrayList<>();
        private final List<String> cautions = new ArrayList<>();

        public Sheet put(String name, double own, Kind kind) {
            results.put(name, new Measured(own, kind));
            return this;
        }

        public Sheet put(String name, String word) {
            results.put(name, new Said(word));
            return this;
        }

        public Sheet put(String name, boolean yes) {
            results.put(name, new True(yes));
            return this;
        }

        /// What this answer rests on besides what the figure always rests on.
        public Sheet rests(Basis on) {
            if (!basis.contains(on)) basis.add(on);
            return this;
        }

        public Sheet beware(String caution) {
            if (!cautions.contains(caution)) cautions.add(caution);
            return this;
        }

        Answer done(String figure, Inputs inputs, List<Basis> always) {
            List<Basis> all = new ArrayList<>(always);
            for (Basis one : basis) if (!all.contains(one)) all.add(one);
            return new Answer(figure, inputs.all(), results, all, cautions);
        }
    }
}
