package sillwright.page;

import java.util.List;

import sillwright.sheet.Pages;

/// Did it work, and what comes next?
final class WatchPage implements StagePage {
    @Override
    public String question() { return "Did it work, and what comes next?"; }

    @Override
    public List<Part> parts(Desk.Opened open, Remembered memory) { return List.of(Part.later("watch-rounds", Html.h(2, "What to look at, and when"), Pages.watch(open.assessment()))); }
}
