package sillwright.page;

import java.util.ArrayList;
import java.util.List;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.sheet.Drawing;
import sillwright.sheet.Elevation;
import sillwright.sheet.Markup;
import sillwright.sheet.Node;
import sillwright.sheet.Pages;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.wood.Condition;
import sillwright.work.Repair;

/// An elevation that one can point at: every member is a link over its place, every probe a smaller one, and keys and
/// buttons move and widen the view.
final class Pointing {
    private Pointing() {}

    /// All that an elevation shows.
    private record Shown(Survey survey, List<Condition> conditions, List<Repair> repairs, List<RankedSource> sources, String side, String stage, Units units) {}

    /// @param stage the stage whose page a member is looked up on
    static Part part(Desk.Opened open, Side side, Remembered memory, String stage) {
        Assessment a = open.assessment();
        List<Member> members = open.survey().membersOn(side.id());
        Shown shown = new Shown(onSide(open.survey(), side), members.stream().map(member -> a.wood().of(member.id())).toList(),
                a.work().repairs().stream().filter(repair -> repair.damage().member().side().equals(side.id())).toList(),
                a.water().toStop().stream().filter(source -> source.side().equals(side.id())).toList(), side.id(), stage, a.settings().units());
        return memory.of(shown, () -> Part.drawn("elevation-" + side.id(), () -> draw(open, side, stage)));
    }

    private static Survey onSide(Survey survey, Side side) {
        return new Survey(survey.building(), java.util.Map.of(side.id(), side), survey.members(), survey.probes().stream().filter(noted -> on(survey, noted.what().spot().member(), side)).toList(),
                List.of(), List.of(), List.of(), survey.works(), List.of(), 0);
    }

    private static boolean on(Survey survey, String member, Side side) { return survey.members().containsKey(member) && survey.members().get(member).side().equals(side.id()); }

    private static List<Markup> draw(Desk.Opened open, Side side, String stage) {
        Drawing drawing = Elevation.draw(open.assessment(), side.id());
        List<Markup> targets = new ArrayList<>();
        for (Markup polygon : drawing.svg().all("polygon")) if (!polygon.get("data-member").isEmpty()) targets.add(member(open, polygon, stage));
        for (Markup line : drawing.svg().all("line")) if (!line.get("data-probe").isEmpty()) probe(open, line, stage).ifPresent(targets::add);
        Markup picture = drawing.svg().with("class", "elevation").with("role", "group").with("aria-label", drawing.title()).has(Markup.of("g", targets).with("class", "targets"));
        Markup tools = Html.div("tools", tool("closer", "closer"), tool("wider", "wider"), tool("left", "left"), tool("right", "right"), tool("whole", "all"));
        return List.of(Html.h(2, Pages.title(side)), Html.div("pointing", tools, Html.div("sheet", bare(picture))).with("data-pan", ""),
                Html.of("details", Html.of("summary", "The drawing in words"), Html.small(drawing.told())));
    }

    private static Markup tool(String way, String words) { return Html.button(words).with("data-way", way); }

    /// Without its own title, which a browser would show as a tip over everything.
    private static Markup bare(Markup svg) {
        List<Node> children = svg.children().stream().filter(child -> !(child instanceof Markup element && (element.name().equals("title") || element.name().equals("desc")))).toList();
        return new Markup(svg.name(), svg.attributes(), children);
    }

    private static Markup member(Desk.Opened open, Markup polygon, String stage) {
        String id = polygon.get("data-member");
        Member member = open.survey().members().get(id);
        Condition condition = open.assessment().wood().of(id);
        String said = Pages.title(member) + (condition == null ? "" : ": " + Choice.said(condition.state()));
        return Html.a(Frame.at(open.building(), stage) + "#member-" + id, Markup.of("polygon", Markup.of("title", said)).with("points", polygon.get("points"))).with("class", "member").with("aria-label", said);
    }

    private static java.util.Optional<Markup> probe(Desk.Opened open, Markup line, String stage) {
        String[] named = line.get("data-probe").split(" ");
        return open.survey().probes().stream().filter(noted -> noted.what().spot().member().equals(named[0]) && noted.what().spot().face() == Member.Face.FRONT
                && Math.round(noted.what().spot().alongMm()) == Long.parseLong(named[1]) && Math.round(noted.what().spot().acrossMm()) == Long.parseLong(named[2])).reduce((a, b) -> b).map(noted -> {
            String said = "probe on " + Pages.title(open.survey().members().get(named[0])) + ": " + noted.what().depth().text() + (noted.what().ranOut() ? " and more" : "");
            double x = (Double.parseDouble(line.get("x1")) + Double.parseDouble(line.get("x2"))) / 2;
            return Html.a(Frame.at(open.building(), stage) + "#reading-" + noted.entry(), Markup.of("circle", Markup.of("title", said)).with("cx", x).with("cy", line.get("y1")).with("r", 0.9)).with("class", "probe")
                    .with("aria-label", said).with("tabindex", "-1");
        });
    }
}
