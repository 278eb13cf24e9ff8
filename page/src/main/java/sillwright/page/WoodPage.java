package sillwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Markup;
import sillwright.sheet.MemberMap;
import sillwright.sheet.OutlookDrawing;
import sillwright.sheet.Pages;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.ProbeReading;
import sillwright.walk.Side;
import sillwright.walk.Survey;
import sillwright.wood.Capacity;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Outlook;

/// How far it has gone, how strong is what is left, how fast does it go on: every member that was read, with its readings.
final class WoodPage implements StagePage {
    @Override
    public String question() { return "How far has it gone, how strong is what is left, how fast does it go on?"; }

    /// All that a member's part shows.
    private record Shown(Condition condition, Optional<Capacity> capacity, Optional<Outlook> outlook, List<Survey.Noted<ProbeReading>> probes, List<Survey.Noted<MoistureReading>> moistures, Units units, String building) {}

    @Override
    public List<Part> parts(Desk.Opened open, Remembered memory) {
        Assessment a = open.assessment();
        List<Part> all = new ArrayList<>(List.of(Part.of("wood-lead", lead(a))));
        for (Side side : open.survey().sides().values()) {
            all.add(Pointing.part(open, side, memory, "wood"));
            for (Member member : open.survey().membersOn(side.id())) {
                Condition condition = a.wood().of(member.id());
                if (condition == null) continue;
                Shown shown = new Shown(condition, a.wood().capacity(member.id()), a.wood().outlook(member.id()),
                        open.survey().probes().stream().filter(noted -> noted.what().spot().member().equals(member.id())).toList(),
                        open.survey().moistures().stream().filter(noted -> noted.what().spot().member().equals(member.id())).toList(), a.settings().units(), open.building());
                all.add(memory.of(shown, () -> member(open, shown)));
            }
        }
        return all;
    }

    private static List<Markup> lead(Assessment a) {
        List<Markup> all = new ArrayList<>();
        List<Condition> damaged = a.wood().all().stream().filter(Condition::needsWork).toList();
        all.add(Html.p(Words.count(damaged.size(), "member") + " of " + a.wood().all().size() + " with soft wood. Depths between the probes are estimated; the bounds hold the truth nine times in ten."));
        all.add(Html.caution("What is left of a member that bears load is a screening figure. Shore before cutting; a licensed engineer settles the load."));
        if (!a.wood().outlooks().isEmpty()) all.add(Html.caution(Outlook.CAUTION));
        all.addAll(Html.list(a.wood().gaps()));
        return all;
    }

    /// Which entries' forms lie in a list, so that a link to one of them finds the list.
    private static String ids(Shown shown) {
        return Stream.concat(shown.probes.stream(), shown.moistures.stream()).map(Survey.Noted::entry).collect(Collectors.joining(" "));
    }

    private static Part member(Desk.Opened open, Shown shown) {
        Condition c = shown.condition;
        Member member = c.member();
        Units units = shown.units;
        List<Markup> readings = Readings.of(open, member);
        if (!c.needsWork() && !readings.isEmpty() && shown.capacity.isEmpty()) return Part.of("member-" + member.id(), Html.of("article", Html.of("details", Html.of("summary", Words.sentence(Pages.title(member)) + ": " + Choice.said(c.state())
                + c.wettest().map(wettest -> ", wettest " + Words.percent(wettest)).orElse("") + "; " + Words.count(readings.size(), "reading")), readings).with("data-forms", ids(shown))).with("class", "member"));
        List<Markup> all = new ArrayList<>(List.of(Html.h(3, Words.sentence(Pages.title(member)) + ": " + Choice.said(c.state()))));
        all.add(Html.p(c.words() + c.wettest().map(wettest -> " Wettest " + Words.percent(wettest) + ".").orElse("")));
        for (Damage d : c.damages())
            all.add(Html.p("Soft " + Pages.stretch(d, units) + ", " + Words.length(d.deepestMm(), units) + " at the deepest" + (d.ranOut() ? " (a probe ran out: at least that)" : "") + ". "
                    + Pages.wood(d.volumeMl().median(), units) + " of wood (" + Pages.wood(d.volumeMl().low(), units) + " to " + Pages.wood(d.volumeMl().high(), units) + "). "
                    + Words.percent(d.section().areaKept()) + " of the section is left at its worst place, at worst " + Words.percent(d.section().keptLow()) + "."));
        shown.capacity.ifPresent(capacity -> {
            capacity.alert().ifPresent(alert -> all.add(Html.caution(alert + " A shore there bears about " + Words.force(capacity.shore().loadN(), units) + ".")));
            all.add(Html.p(capacity.words() + capacity.governs(units).map(said -> " " + said).orElse("")));
        });
        if (c.needsWork() && !c.maps().isEmpty()) all.add(Html.div("sheet", MemberMap.draw(c, units).svg()).with("tabindex", "0"));
        if (c.needsWork()) shown.outlook.ifPresent(outlook -> all.add(Html.of("details", Html.of("summary", "Drying and decay to come"), Html.p(outlook.words()),
                Html.div("sheet", OutlookDrawing.draw(outlook, Pages.title(member)).svg()).with("tabindex", "0"))));
        if (!readings.isEmpty()) {
            all.add(Html.of("details", Html.of("summary", Words.count(readings.size(), "reading")), readings).with("data-forms", ids(shown)));
        }
        return Part.of("member-" + member.id(), Html.of("article", all).with("class", "member"));
    }
}
