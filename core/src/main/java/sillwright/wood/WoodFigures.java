package sillwright.wood;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Figure;

/// The figures of this stage. Each is a call of the stage's own function; what it knows of its own is range and source.
public final class WoodFigures {
    private WoodFigures() {}

    public static List<Figure> all() {
        List<Figure> all = new ArrayList<>();
        all.addAll(MoistureFigures.all());
        all.addAll(MovementFigures.all());
        all.addAll(SpreadFigures.all());
        all.addAll(DryingFigures.all());
        all.add(FieldFigure.field());
        all.add(SectionFigure.section());
        all.addAll(StrengthFigures.all());
        all.addAll(MetricFigures.all());
        return List.copyOf(all);
    }
}
