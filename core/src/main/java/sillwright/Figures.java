package sillwright;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import sillwright.measure.Figure;
import sillwright.measure.Refused;
import sillwright.measure.Words;
import sillwright.water.WaterFigures;
import sillwright.wood.WoodFigures;
import sillwright.work.CutSolver;
import sillwright.work.FirstFit;
import sillwright.work.WorkFigures;

/// Every figure of every stage, by name.
public final class Figures {
    private static final Map<String, Figure> ALL = gather(new FirstFit());

    private Figures() {}

    public static Map<String, Figure> all() { return ALL; }

    /// The same, with a solver of the caller's for cut lists.
    public static Figure named(String name, CutSolver cuts) {
        named(name);
        return gather(cuts).get(name);
    }

    /// @throws Refused with the nearest names
    public static Figure named(String name) {
        Figure figure = ALL.get(name);
        if (figure != null) return figure;
        List<String> near = Words.near(name, ALL.keySet());
        throw new Refused("figure", "there is no figure '{}'", near.isEmpty() ? "the figures are " + String.join(", ", ALL.keySet())
                : "did you mean " + String.join(", ", near) + "?", name);
    }

    private static Map<String, Figure> gather(CutSolver cuts) {
        List<Figure> figures = new ArrayList<>();
        figures.addAll(WaterFigures.all());
        figures.addAll(WoodFigures.all());
        figures.addAll(WorkFigures.all(cuts));
        Map<String, Figure> byName = new LinkedHashMap<>();
        for (Figure figure : figures)
            if (byName.put(figure.name(), figure) != null) throw new IllegalStateException("two figures are called " + figure.name());
        return java.util.Collections.unmodifiableMap(byName);
    }
}
