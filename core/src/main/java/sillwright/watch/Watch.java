package sillwright.watch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import sillwright.measure.Units;
import sillwright.walk.Building;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings;
import sillwright.watch.WatchFindings.Round;
import sillwright.wood.WoodFindings;
import sillwright.work.Outfit;
import sillwright.work.WorkFindings;

/// The watch stage: two rounds a year and more, made from this building's own sources, repairs and readings.
public final class Watch {
    private Watch() {}

    /// What the choice of the rounds rests on.
    public static List<sillwright.measure.Basis> basis() {
        List<sillwright.measure.Basis> all = new ArrayList<>(Seasons.BASIS);
        all.addAll(List.of(Baseline.BASIS, Past.BASIS, Holding.BASIS, sillwright.watch.trend.Kendall.BASIS, sillwright.watch.trend.Slopes.BASIS, sillwright.watch.trend.Break.BASIS, Trends.MANY, Ahead.BASIS, sillwright.watch.budget.Choices.BASIS));
        all.addAll(Dues.BASIS);
        return List.copyOf(all);
    }

    /// @param start the first day a round may fall due
    public static WatchFindings find(Survey survey, WaterFindings water, WoodFindings wood, WorkFindings work, LocalDate start, Units units) {
        return find(survey, water, wood, work, start, units, List.of(), water, Outfit.COMMON, Watching.USUAL, Past.of(survey));
    }

    /// @param verdicts on what was done, by [Verdicts]
    /// @param before   the sources by the sightings alone, before the verdicts were weighed in
    /// @param outfit   whose prices and hours say what falls due
    /// @param past     what dry wood would have shown on each walk
    public static WatchFindings find(Survey survey, WaterFindings water, WoodFindings wood, WorkFindings work, LocalDate start, Units units, List<Verdict> verdicts, WaterFindings before, Outfit outfit,
                                     Watching watching, Past past) {
        return new WatchFindings(rounds(survey, water, wood, work, start, units), Trends.of(survey, water, wood, units, past), Verdicts.likelier(verdicts, before, water), Dues.of(survey, start, outfit),
                Ahead.of(water, wood, work, watching.waits(), start.toEpochDay()));
    }

    static List<Round> rounds(Survey survey, WaterFindings water, WoodFindings wood, WorkFindings work, LocalDate start, Units units) {
        Seasons seasons = Seasons.of(survey.building().map(Building::months).orElse(List.of()));
        List<Draft> drafts = new ArrayList<>(OwnRound.of(survey, water, wood, work, units));
        drafts.addAll(CommonRound.of(survey, units));
        Walk walk = new Walk(survey);
        Set<String> owed = new HashSet<>();
        List<Round> rounds = new ArrayList<>();
        List<Planned> planned = new ArrayList<>(List.of(
                new Planned("spring", "Spring, after the thaw", Optional.of(Seasons.first(seasons.spring(), start)), Draft.When.SPRING,
                        "Shows what winter has done, while there is a dry season ahead to mend it in."),
                new Planned("autumn", seasons.leafFall().isPresent() ? "Autumn, before the freeze" : "Late autumn, after the leaves are down and before the freeze",
                        Optional.of(Seasons.first(seasons.autumn(), start)), Draft.When.AUTUMN, "Gutters and ground are cleared for winter, and what summer dried is metered before the wet.")));
        boolean gutters = survey.sides().values().stream().flatMap(side -> side.edges().stream()).anyMatch(edge -> edge.gutter().isPresent());
        if (gutters) seasons.leafFall().ifPresent(day -> planned.add(new Planned("leaves", "Gutters, after leaf fall", Optional.of(Seasons.first(day, start)), Draft.When.LEAVES,
                "The leaves come down at another time than the round before the freeze: gutters want a look of their own.")));
        planned.sort(Comparator.comparing(one -> one.first.orElseThrow()));
        planned.add(new Planned("storm", "After a storm", Optional.empty(), Draft.When.STORM, "Within a day or two of hard rain or wind, while water still shows where it came in. From the ground: no ladder in wind or on wet ground."));
        for (Planned one : planned) {
            Walk.Laid laid = walk.lay(drafts.stream().filter(draft -> draft.when().contains(one.when)).toList(), owed);
            if (one.first.isPresent()) owed = laid.left();
            rounds.add(new Round(one.id, one.title, one.first, one.why, laid.checks(), laid.left().size(), Seasons.BASIS));
        }
        return List.copyOf(rounds);
    }

    private record Planned(String id, String title, Optional<LocalDate> first, Draft.When when, String why) {}
}
