package sillwright.watch;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Refused;
import sillwright.walk.Building;
import sillwright.walk.Building.Month;
import sillwright.walk.Member;
import sillwright.walk.Species;
import sillwright.wood.drying.Skin;
import sillwright.wood.drying.SteadyDrying;
import sillwright.wood.drying.Timber;

/// How fast a piece dries once its water is stopped: the time in which it loses half of what it holds too much, in the moving air that [sillwright.wood.Outlook] dries it in.
final class Drying {
    /// Real pieces take half to twice as long as the computation says (its own caution): five speeds with their weights.
    static final double[] SPEEDS = {0.5, 0.7, 1, 1.4, 2}, WEIGHTS = {0.1, 0.2, 0.4, 0.2, 0.1};
    private static final double LONGEST_DAYS = 1500, SHORTEST_DAYS = 4, MILD_C = 12, DAMP = 0.75, WARM_ENOUGH_C = 3;

    private Drying() {}

    /// Days to half; the longest where the computation finds no end.
    static double halfDays(Member member, double fromMoisture, Optional<Building> building) {
        List<Month> months = building.map(Building::months).orElse(List.of());
        double tempC = months.isEmpty() ? MILD_C : Math.max(WARM_ENOUGH_C, months.stream().mapToDouble(Month::meanC).average().orElseThrow());
        double humidity = months.isEmpty() ? DAMP : Math.clamp(months.stream().mapToDouble(month -> month.humidity().own()).average().orElseThrow(), 0.1, 0.9);
        Timber timber = Timber.of(Species.orCareful(member.species()), Timber.Grain.ACROSS);
        double rest = sillwright.wood.moisture.Moisture.atRest(tempC, humidity), from = Math.clamp(fromMoisture, rest + 0.02, timber.full());
        try {
            double seconds = SteadyDrying.of(timber, Math.min(member.widthMm(), member.depthMm()) / 1000, 2, Skin.outside(member.coat(), timber), from, (from + rest) / 2, tempC, humidity).timeS();
            return Math.clamp(seconds / 86_400, SHORTEST_DAYS, LONGEST_DAYS);
        } catch (Refused refused) {
            return LONGEST_DAYS;
        }
    }
}
