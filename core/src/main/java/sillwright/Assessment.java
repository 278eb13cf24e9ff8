package sillwright;

import sillwright.walk.Survey;
import sillwright.watch.WatchFindings;
import sillwright.water.WaterFindings;
import sillwright.wood.WoodFindings;
import sillwright.work.WorkFindings;

/// The whole road for one building: a pure function of its book and the settings.
public record Assessment(Survey survey, Settings settings, WaterFindings water, WoodFindings wood, WorkFindings work, WatchFindings watch) {}
