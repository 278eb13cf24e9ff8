package sillwright;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.walk.Species;

/// Every source that the program rests on, with what rests on it.
public final class Sources {
    private Sources() {}

    /// @param by the figure, table or stage that rests on it
    public record Use(Basis basis, String by) {}

    public static List<Use> all() {
        List<Use> all = new ArrayList<>();
        for (Figure figure : Figures.all().values()) for (Basis basis : figure.basis()) all.add(new Use(basis, "figure " + figure.name()));
        for (Species species : Species.all().values()) for (Basis basis : species.basis()) all.add(new Use(basis, "species table"));
        return List.copyOf(all);
    }
}
