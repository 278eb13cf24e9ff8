package sillwright;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.walk.Species;
import sillwright.watch.Watch;
import sillwright.water.WaterBasis;
import sillwright.wood.Decay;
import sillwright.work.WorkBasis;

/// Every source that the program rests on, with what rests on it.
public final class Sources {
    private Sources() {}

    /// @param by the figure, table or stage that rests on it
    public record Use(Basis basis, String by) {}

    public static List<Use> all() {
        List<Use> all = new ArrayList<>();
        for (Figure figure : Figures.all().values()) for (Basis basis : figure.basis()) all.add(new Use(basis, "figure " + figure.name()));
        for (Species species : Species.all().values()) for (Basis basis : species.basis()) all.add(new Use(basis, "species table"));
        for (Basis basis : WaterBasis.all()) all.add(new Use(basis, "water"));
        for (Basis basis : Decay.basis()) all.add(new Use(basis, "wood"));
        for (Basis basis : WorkBasis.all()) all.add(new Use(basis, "work"));
        for (Basis basis : Watch.basis()) all.add(new Use(basis, "watch"));
        return List.copyOf(all);
    }
}
