package sillwright.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Side;
import sillwright.walk.Survey;
import sillwright.watch.WatchFindings.Check;

/// What is looked at on every building, by the inspection table of Preservation Brief 47 (read).
final class CommonRound {
    /// Ground to wood siding: 6 in. Source: IRC R317.1 (read).
    private static final double CLEAR_MM = 152.4;

    private CommonRound() {}

    static List<Draft> of(Survey survey, Units units) {
        List<Draft> drafts = new ArrayList<>();
        for (Side side : survey.sides().values()) side(side, units, drafts);
        all("look at the attic and the underside of the roof, by torch, after rain", "dry, no new stain, no daylight", Draft.COMMON, Draft.BOTH, drafts);
        all("look at the cellar or crawl space, walls, sills and joist ends; current off first where it is flooded", "dry, no mud tubes, no new stain", Draft.COMMON, Draft.BOTH, drafts);
        all("look at doors and entries: thresholds, bottoms of doors, steps", "tight, painted, nothing soft", Draft.SMALL, Draft.BOTH, drafts);
        all("look at the chimney from the ground, before heating begins", "cap and flashing whole, no open joints", Draft.SMALL, Draft.AUTUMN, drafts);
        all("look for termites and beetles: mud tubes, fresh powder, wings", "none", Draft.COMMON - 5, Draft.SPRING, drafts);
        return drafts;
    }

    private static void side(Side side, Units units, List<Draft> drafts) {
        add(side, side.topMm(), "look over roof edge, flashings and eave from the ground with binoculars", "", "nothing lifted, missing or stained", Draft.COMMON - 2,
                Draft.SPRING, drafts);
        for (Side.RoofEdge edge : side.edges()) edge.gutter().ifPresent(gutter -> add(side, edge.height().own(),
                "clear and flush the gutter of the " + edge.id() + " edge" + (gutter.downspouts().isEmpty() ? "" : " and " + (gutter.downspouts().size() == 1
                        ? "its downspout" : "its " + gutter.downspouts().size() + " downspouts")) + ", and watch it in hard rain",
                "", "runs free, no drip at joints, nothing over the edge", Draft.GUTTER, Draft.BOTH, drafts));
        add(side, side.heightMm() / 2, "look over walls, trim and paint, dry and wet", "", "no peeling, no open joints, no streaks", Draft.COMMON + 2, Draft.SPRING, drafts);
        if (!side.openings().isEmpty())
            add(side, side.heightMm() / 3, "look at sills, putty and joints of " + Words.count(side.openings().size(), "opening"), "", "whole, falling outward, drip open",
                    Draft.COMMON, Draft.SPRING, drafts);
        add(side, 0, "look at the ground along the wall and measure from it to the lowest wood", side.ground().clearance().map(clear -> Words.length(clear.own(), units) + " clear").orElse(""),
                Words.length(CLEAR_MM, units) + " clear or more, falling away from the wall", Draft.COMMON + 1, Draft.SPRING, drafts);
        add(side, 1, "cut plants back and rake leaves and soil off the wood", "", "an open hand's breadth all along", Draft.COMMON - 1, Draft.AUTUMN, drafts);
    }

    private static void add(Side side, double aboveMm, String words, String last, String expected, double weight, List<Draft.When> when, List<Draft> drafts) {
        drafts.add(new Draft(new Check(side.id(), Optional.empty(), words, last, expected, ""), aboveMm, weight, when));
    }

    private static void all(String words, String expected, double weight, List<Draft.When> when, List<Draft> drafts) {
        drafts.add(new Draft(new Check("", Optional.empty(), words, "", expected, ""), 0, weight, when));
    }
}
