package sillwright.watch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import sillwright.measure.Units;
import sillwright.walk.Building;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings;
import sillwright.watch.WatchFindings.Check;
import sillwright.watch.WatchFindings.Round;
import sillwright.wood.WoodFindings;
import sillwright.work.WorkFindings;

/// The watch stage: two rounds a year, made from this building's own sources, repairs and readings.
public final class Watch {
    /// More than that is not walked in a morning: this program's own choice. What matters most is kept.
    static final int MOST_CHECKS = 40;

    private Watch() {}

    /// @param start the first day a round may fall due
    public static WatchFindings find(Survey survey, WaterFindings water, WoodFindings wood, WorkFindings work, LocalDate start, Units units) {
        Seasons seasons = Seasons.of(survey.building().map(Building::months).orElse(List.of()));
        List<Draft> drafts = new ArrayList<>(OwnRound.of(water, wood, work, units));
        drafts.addAll(CommonRound.of(survey, units));
        Round spring = new Round("spring", "Spring, after the thaw", Seasons.first(seasons.spring(), start),
                "Shows what winter has done, while there is a dry season ahead to mend it in.", checks(survey, drafts, Draft.When.SPRING), Seasons.BASIS);
        Round autumn = new Round("autumn", "Late autumn, after the leaves are down", Seasons.first(seasons.autumn(), start),
                "Gutters and ground are cleared for winter, and what summer dried is metered before the wet.", checks(survey, drafts, Draft.When.AUTUMN), Seasons.BASIS);
        return new WatchFindings(spring.first().isAfter(autumn.first()) ? List.of(autumn, spring) : List.of(spring, autumn));
    }

    /// The weightiest, in the order one walks: side after side as they were described, roof to ground, the inside last.
    private static List<Check> checks(Survey survey, List<Draft> drafts, Draft.When when) {
        List<String> sides = List.copyOf(survey.sides().keySet());
        return drafts.stream().filter(draft -> draft.when().contains(when)).sorted(Comparator.comparingDouble(draft -> -draft.weight())).limit(MOST_CHECKS)
                .sorted(Comparator.comparingInt((Draft draft) -> place(sides, draft.check().side())).thenComparingDouble(draft -> -draft.aboveMm()))
                .map(Draft::check).toList();
    }

    private static int place(List<String> sides, String side) { return sides.contains(side) ? sides.indexOf(side) : sides.size(); }
}
