package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Figure;

/// The figures of this stage. Each is a call of the stage's own function; what it knows of its own is range and source.
public final class WorkFigures {
    private WorkFigures() {}

    public static List<Figure> all() {
        List<Figure> all = new ArrayList<>();
        all.addAll(MixFigures.all());
        all.addAll(SiteFigures.all());
        all.add(ScarfFigure.scarf());
        all.addAll(FastenerFigures.all());
        return List.copyOf(all);
    }
}
