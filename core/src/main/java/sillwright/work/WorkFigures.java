package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Figure;
import sillwright.work.joint.FastenerFigures;
import sillwright.work.joint.ScarfFigure;
import sillwright.work.resin.MixFigures;

/// The figures of this stage. Each is a call of the stage's own function; what it knows of its own is range and source.
public final class WorkFigures {
    private WorkFigures() {}

    public static List<Figure> all() { return all(new FirstFit()); }

    /// @param solver lays out cut lists
    public static List<Figure> all(CutSolver solver) {
        List<Figure> all = new ArrayList<>();
        all.addAll(MixFigures.all());
        all.addAll(SiteFigures.all());
        all.add(ScarfFigure.scarf());
        all.addAll(FastenerFigures.all());
        all.add(CutFigure.of(solver));
        return List.copyOf(all);
    }
}
