package sillwright.wood;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Words;
import sillwright.walk.Building;
import sillwright.walk.Choice;

/// How hard a place is on wood above ground.
public final class Climate {
    private Climate() {}

    /// What the place does to wood above ground, in a sentence; empty without monthly normals.
    public static Optional<String> words(Optional<Building> building) {
        return index(building).map(index -> "The climate index for decay above ground is " + Words.number(index, 0) + ": " + Choice.said(hazard(index)) + " hazard (Scheffer 1971, from memory).");
    }

    /// Scheffer's index from a building's monthly normals.
    public static Optional<Double> index(Optional<Building> building) {
        return building.map(Building::months).filter(months -> !months.isEmpty())
                .map(months -> scheffer(months.stream().map(Building.Month::meanC).toList(), months.stream().map(Building.Month::rainDays).toList()));
    }

    /// The bands of the index: below 35, to 65, above.
    public enum Hazard { LOW, MODERATE, HIGH }

    /// Scheffer's index of the climate for decay of wood off the ground: warm months with many wet days.
    ///
    /// Σ (T - 35 °F)(D - 3)/30 over the months; a factor below nothing counts as nothing, before the product. Written here in °C, 35 °F being
    /// 5/3 °C exactly.
    /// Source: Scheffer, *Forest Products Journal* (1971) (from memory).
    ///
    /// @param meanC    mean temperature of each of twelve months, °C
    /// @param rainDays days in each with 0.01 in (0.25 mm) of rain or more
    public static double scheffer(List<Double> meanC, List<Double> rainDays) {
        double sum = 0;
        for (int month = 0; month < 12; month++)
            sum += Math.max(0, (meanC.get(month) - 5.0 / 3) * 9 / 5) * Math.max(0, rainDays.get(month) - 3) / 30;
        return sum;
    }

    /// Source: Scheffer (1971) (from memory); later use has the upper bound at 70.
    public static Hazard hazard(double index) { return index < 35 ? Hazard.LOW : index <= 65 ? Hazard.MODERATE : Hazard.HIGH; }
}
