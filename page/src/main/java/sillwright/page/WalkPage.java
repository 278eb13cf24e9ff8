package sillwright.page;

import java.util.ArrayList;
import java.util.List;

import sillwright.sheet.Pages;
import sillwright.walk.Side;

/// What is there, and what was seen, probed and measured.
final class WalkPage implements StagePage {
    @Override
    public String question() { return "What is there, and what did we see, probe and measure?"; }

    @Override
    public List<Part> parts(Desk.Opened open, Remembered memory) {
        List<Part> all = new ArrayList<>();
        for (Side side : open.survey().sides().values()) {
            all.add(Pointing.part(open, side, memory, "wood"));
            all.add(Part.of("side-" + side.id(), Pages.side(open.assessment(), side).stream().filter(one -> !one.name().equals("h2")).toList()));
        }
        all.add(Part.of("walk-gaps", Pages.gaps(open.assessment())));
        return all;
    }
}
