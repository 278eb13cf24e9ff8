package sillwright;

import java.util.List;
import java.util.function.Consumer;

import sillwright.measure.Memo;
import sillwright.measure.Units;
import sillwright.walk.Survey;
import sillwright.watch.Past;
import sillwright.watch.Verdict;
import sillwright.watch.Verdicts;
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
    public static Assessment of(Survey survey, Settings settings, Consumer<String> progress) { return of(survey, settings, progress, Memo.NONE); }

    /// @param memo what was worked before: only what a change touches is worked again, and comes to the same
    public static Assessment of(Survey survey, Settings settings, Consumer<String> progress, Memo memo) {
        progress.accept("water: where it comes from");
        Survey unread = survey.unread();
        WaterFindings sighted = lived(survey, memo.of(new Watered(unread, List.of(), settings.units()), () -> Water.find(unread, settings.units())), memo);
        Past past = memo.of(new Passed(survey, settings.watching(), settings.seed()), () -> Past.of(survey, settings.watching().since(), settings.seed(), settings.transport()));
        List<Verdict> verdicts = Verdicts.of(survey, sighted, settings.start(), settings.units(), past);
        var told = Verdicts.told(verdicts);
        WaterFindings water = verdicts.isEmpty() ? sighted : memo.of(new Watered(survey, told, settings.units()), () -> Water.find(survey, told, settings.units()));
        progress.accept("wood: how far it has gone");
        WoodFindings wood = Wood.find(survey, water, (settings.start().getDayOfYear() - 1) % 365, settings.seed(), member -> progress.accept("wood: " + member), memo, settings.transport());
        progress.accept("work: what will hold");
        WorkFindings work = Work.find(survey, water, wood, settings.start(), settings.units(), settings.stockMm(), settings.solver(), settings.outfit(), settings.seed(), memo);
        progress.accept("watch: what to look at, and when");
        WatchFindings watch = Watch.find(survey, water, wood, work, settings.start(), settings.units(), verdicts, sighted, settings.outfit(), settings.watching(), past);
        return new Assessment(survey, settings, water, wood, work, watch);
    }

    /// What a change touches at once: where the water comes from, the condition of the members, and their repairs. The outlook, the order of work, the money and the watch
    /// stand as they were before, until the whole road is walked again.
    ///
    /// @param before the whole road, walked before the change
    public static Assessment soon(Survey survey, Settings settings, Memo memo, Assessment before) {
        Survey unread = survey.unread();
        WaterFindings water = lived(survey, unread.equals(before.survey.unread()) ? before.water : memo.of(new Watered(unread, List.of(), settings.units()), () -> Water.find(unread, settings.units())), memo);
        WoodFindings wood = Wood.soon(survey, settings.seed(), memo, before.wood);
        return new Assessment(survey, settings, water, wood, Work.soon(survey, water, wood, settings.start(), settings.units(), settings.outfit(), memo, before.work), before.watch);
    }

    private record Passed(Survey survey, Object watching, long seed) {}

    private record Lived(WaterFindings water, Object moistures) {}

    /// Whether what lives in the wood is at it now rests on the meter as well.
    private static WaterFindings lived(Survey survey, WaterFindings water, Memo memo) { return memo.of(new Lived(water, survey.moistures()), () -> Water.lived(survey, water)); }

    /// Where the water comes from rests on what was described, sighted and done, and on what repairs told, not on readings.
    private record Watered(Survey survey, Object told, Units units) {}
}
