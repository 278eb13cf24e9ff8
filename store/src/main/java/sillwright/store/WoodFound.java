package sillwright.store;

import static sillwright.store.Nodes.basis;
import static sillwright.store.Nodes.each;
import static sillwright.store.Nodes.words;

import java.util.List;

import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Survey;
import sillwright.wood.Capacity;
import sillwright.wood.Climate;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Forecast;
import sillwright.wood.NextProbe;
import sillwright.wood.Outlook;
import sillwright.wood.SectionLeft;
import sillwright.wood.WoodFindings;
import tools.jackson.databind.node.ObjectNode;

/// What the wood stage found, as its part of `findings.json`.
final class WoodFound {
    private WoodFound() {}

    static void put(ObjectNode node, Survey survey, WoodFindings found) {
        Climate.index(survey.building()).ifPresent(index -> node.put("schefferIndex", index).put("climateHazard", Choice.word(Climate.hazard(index))));
        each(node.putArray("members"), List.copyOf(found.all()), WoodFound::condition);
        each(node.putArray("outlooks"), List.copyOf(found.outlooks().values()), WoodFound::outlook);
        each(node.putArray("capacities"), List.copyOf(found.capacities().values()), WoodFound::capacity);
        words(node.putArray("gaps"), found.gaps());
    }

    private static void condition(ObjectNode node, Condition c) {
        Member m = c.member();
        node.put("id", m.id()).put("title", m.title()).put("side", m.side()).put("kind", Choice.word(m.kind())).put("role", Choice.word(m.role()))
                .put("state", Choice.word(c.state())).put("readings", c.readings()).put("words", c.words());
        c.wettest().ifPresent(wettest -> node.put("wettestMoisture", wettest));
        each(node.putArray("damages"), c.damages(), WoodFound::damage);
        basis(node.putArray("basis"), c.basis());
        c.next().ifPresent(next -> next(node.putObject("nextProbe"), next));
        c.hidden().ifPresent(share -> Nodes.interval(node.putObject("hiddenSoftShare"), share));
    }

    private static void next(ObjectNode node, NextProbe next) {
        node.put("face", Choice.word(next.face())).put("alongMm", next.alongMm()).put("acrossMm", next.acrossMm()).put("decides", Choice.word(next.decides()))
                .put("why", Choice.word(next.why())).put("left", next.left()).put("enough", next.enough());
        Nodes.interval(node.putObject("now"), next.now());
        words(node.putArray("unseenFaces"), next.unseen().stream().map(Choice::word).toList());
    }

    private static void outlook(ObjectNode node, Outlook o) {
        node.put("member", o.member()).put("wettingHoursPerYear", o.wettingHours()).put("meanMoisture", o.meanMoisture()).put("dampDaysPerYear", o.dampDays()).put("limit", o.limit())
                .put("stoppedWettingHoursPerYear", o.stoppedHours()).put("stoppedMeanMoisture", o.stoppedMoisture())
                .put("driesInAYear", o.driesInAYear()).put("openedDriesInAYear", o.openedInAYear()).put("atAnEnd", o.atAnEnd()).put("words", o.words()).put("caution", Outlook.CAUTION);
        Nodes.interval(node.putObject("dryDownDays"), o.dryDownDays());
        Nodes.interval(node.putObject("openedDryDownDays"), o.openedDays());
        forecast(node.putObject("asIs"), o.asIs());
        forecast(node.putObject("stopped"), o.stopped());
        basis(node.putArray("basis"), o.basis());
    }

    private static void capacity(ObjectNode node, Capacity c) {
        node.put("member", c.member().id()).put("verdict", Choice.word(c.verdict())).put("words", c.words()).put("shoreLoadN", c.shore().loadN()).put("shorePadSideMm", c.shore().padSideMm());
        c.alert().ifPresent(alert -> node.put("alert", alert));
        Nodes.interval(node.putObject("utilisation"), c.utilisation());
        c.governing().ifPresent(at -> node.putObject("governing").put("stationMm", at.stationMm()).put("by", Choice.word(at.by())));
        words(node.putArray("assumptions"), c.assumptions());
        basis(node.putArray("basis"), c.basis());
    }

    private static void forecast(ObjectNode node, Forecast f) {
        each(node.putArray("ratings"), f.ratings(), Nodes::interval);
        Nodes.interval(node.putObject("doseDaysPerYear"), f.daysAYear());
        f.yearsToNext().ifPresent(years -> Nodes.interval(node.putObject("yearsToNext"), years));
    }

    private static void damage(ObjectNode node, Damage d) {
        node.put("id", d.id()).put("worstFace", Choice.word(d.worst())).put("fromMm", d.fromMm()).put("toMm", d.toMm()).put("deepestMm", d.deepestMm())
                .put("areaMm2", d.areaMm2()).put("probeRanOut", d.ranOut());
        Nodes.interval(node.putObject("volumeMl"), d.volumeMl());
        Damage.Doubt doubt = d.doubt();
        Nodes.interval(node.putObject("deepest"), doubt.deepestMm());
        Nodes.interval(node.putObject("softShare"), doubt.softShare());
        Nodes.interval(node.putObject("softFrom"), doubt.softFromMm());
        Nodes.interval(node.putObject("softTo"), doubt.softToMm());
        Damage.CutOut cut = doubt.cutOut();
        node.putObject("cutOut").put("face", Choice.word(cut.face())).put("fromMm", cut.fromMm()).put("toMm", cut.toMm()).put("acrossFromMm", cut.acrossFromMm())
                .put("acrossToMm", cut.acrossToMm()).put("deepMm", cut.deepMm());
        SectionLeft s = d.section();
        ObjectNode section = node.putObject("sectionLeft");
        s.shapes().ifPresent(shapes -> Nodes.interval(section.putObject("leastKept"), shapes.kept()));
        section.put("stationMm", s.stationMm()).put("areaKept", s.areaKept()).put("areaKeptLow", s.keptLow()).put("sxKept", s.sxKept())
                .put("syKept", s.syKept()).put("shiftXMm", s.shiftXMm()).put("shiftYMm", s.shiftYMm());
    }
}
