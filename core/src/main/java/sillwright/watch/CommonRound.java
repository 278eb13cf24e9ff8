package sillwright.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Side;
import sillwright.walk.Sign;
import sillwright.walk.Survey;
import sillwright.watch.Draft.When;
import sillwright.watch.WatchFindings.Ask;

/// What is looked at on every building, by the inspection table of Preservation Brief 47 (read).
final class CommonRound {
    /// Ground to wood siding: 6 in. Source: IRC R317.1 (read).
    private static final double CLEAR_MM = 152.4;

    private final Units units;
    private final List<Draft> drafts = new ArrayList<>();

    private CommonRound(Units units) { this.units = units; }

    static List<Draft> of(Survey survey, Units units) {
        CommonRound round = new CommonRound(units);
        for (Side side : survey.sides().values()) round.side(side);
        round.all("attic", "look at the underside of the roof by torch", "dry, no new stain, no daylight", Draft.COMMON, 8, Draft.WATER);
        round.all("cellar or crawl space", "look at walls, sills and joist ends; current off first where it is flooded", "dry, no mud tubes, no new stain", Draft.COMMON, 8, Draft.WATER);
        round.all("chimney", "look from the ground, before heating begins", "cap and flashing whole, no open joints", Draft.SMALL, 2, Draft.AUTUMN);
        round.all("all round", "look for mud tubes, fresh powder, wings", "none", Draft.COMMON - 5, 4, Draft.SPRING);
        round.all("all round", "look from the ground for what the wind has loosened, and for limbs on wires: keep off and call the utility", "nothing loose overhead", Draft.DANGER - 5, 5, Draft.STORMS);
        return List.copyOf(round.drafts);
    }

    private void side(Side side) {
        boolean gutters = side.edges().stream().anyMatch(edge -> edge.gutter().isPresent());
        back(side, side.topMm(), Draft.look("from where you see it whole, with binoculars: roof edge, flashings, eave", "nothing lifted, missing or stained", Sign.ROOF_DAMAGED_ABOVE),
                Draft.COMMON + 3, 3, Draft.SPRING_AND_STORM);
        back(side, side.heightMm() / 2, Draft.look("walls, trim and paint", "no peeling, no open joints, no streaks", Sign.PEELING_TO_BARE_WOOD), Draft.COMMON + 2, 3, Draft.SPRING);
        if (!side.openings().isEmpty())
            back(side, side.heightMm() / 3, Draft.look("sills, putty and joints of " + Words.count(side.openings().size(), "opening"), "", "whole, falling outward, drip open"), Draft.COMMON,
                    1.0 * side.openings().size(), Draft.SPRING);
        back(side, 1, new Ask(Ask.Kind.LOOK, "measure from the ground to the lowest wood", side.ground().clearance().map(clear -> Words.length(clear.own(), units)).orElse(""),
                Words.length(CLEAR_MM, units) + " clear or more, ground falling away", Optional.empty(), Optional.of(Sign.SOIL_TOUCHES_WOOD)), Draft.COMMON + 1, 2, Draft.SPRING);
        back(side, 0, Draft.task("cut plants back, rake leaves and soil off the wood", "an open hand's breadth all along"), Draft.COMMON - 1, 5, Draft.AUTUMN);
        if (gutters) for (Side.RoofEdge edge : side.edges()) edge.gutter().ifPresent(gutter -> gutter(side, edge, gutter));
    }

    private void gutter(Side side, Side.RoofEdge edge, Side.Gutter gutter) {
        String stop = edge(side.id(), edge.id()), title = "gutter of the " + edge.id() + " edge";
        String spouts = gutter.downspouts().isEmpty() ? "" : " and " + (gutter.downspouts().size() == 1 ? "its downspout" : "its " + gutter.downspouts().size() + " downspouts");
        double left = edge.left().own(), above = edge.height().own();
        drafts.add(new Draft(stop, title, side.id(), Optional.empty(), true, left, above, Draft.look("clear? clear and flush it" + spouts, "runs free", Sign.GUTTER_FULL), "", Draft.GUTTER, 10, Draft.GUTTERS));
        drafts.add(new Draft(stop, title, side.id(), Optional.empty(), true, left, above, Draft.look("watch it in hard rain", "no drip at joints, nothing over the edge", Sign.GUTTER_OVERFLOWS), "",
                Draft.GUTTER - 1, 3, List.of(When.STORM)));
    }

    static String edge(String side, String edge) { return "edge " + side + "/" + edge; }

    /// All that is seen of a side standing back is one stop.
    private void back(Side side, double aboveMm, Ask ask, double weight, double minutes, List<When> when) {
        drafts.add(new Draft("side " + side.id(), "whole side", side.id(), Optional.empty(), true, 0, aboveMm, ask, "", weight, minutes, when));
    }

    private void all(String title, String words, String expected, double weight, double minutes, List<When> when) {
        drafts.add(new Draft("all " + title, title, "", Optional.empty(), false, drafts.size(), 0, Draft.look(words, "", expected), "", weight, minutes, when));
    }
}
