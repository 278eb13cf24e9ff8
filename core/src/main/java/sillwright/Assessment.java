package sillwright;

import java.util.function.Consumer;

import sillwright.walk.Survey;
import sillwright.watch.Watch;
import sillwright.watch.WatchFindings;
import sillwright.water.Water;
import sillwright.water.WaterFindings;
import sillwright.wood.Wood;
import sillwright.wood.WoodFindings;
import sillwright.work.Work;
import sillwright.work.WorkFindings;

/// The whole road for one building: a pure function of its book and the settings.
public record Assessment(Survey survey, Settings settings, WaterFindings water, WoodFindings wood, WorkFindings work, WatchFindings watch) {
    public static Assessment of(Survey survey, Settings settings) { return of(survey, settings, stage -> {}); }

    /// @param progress told each step as it begins
    public static Assessment of(Survey survey, Settings settings, Consumer<String> progress) {
        progress.accept("water: where it comes from");
        WaterFindings water = Water.find(survey);
        progress.accept("wood: how far it has gone");
        WoodFindings wood = Wood.find(survey, water, (settings.start().getDayOfYear() - 1) % 365, settings.seed(), member -> progress.accept("wood: " + member));
        progress.accept("work: what will hold");
        WorkFindings work = Work.find(survey, water, wood, settings.start(), settings.units(), settings.stockMm(), settings.solver());
        progress.accept("watch: what to look at, and when");
        WatchFindings watch = Watch.find(survey, water, wood, work, settings.start(), settings.units());
        return new Assessment(survey, settings, water, wood, work, watch);
    }
}
