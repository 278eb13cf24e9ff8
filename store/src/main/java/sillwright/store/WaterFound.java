package sillwright.store;

import static sillwright.store.Nodes.basis;
import static sillwright.store.Nodes.each;
import static sillwright.store.Nodes.words;

import java.util.List;

import sillwright.walk.Choice;
import sillwright.water.WaterFindings;
import sillwright.wood.Change;
import sillwright.wood.WoodFindings;
import tools.jackson.databind.node.ObjectNode;

/// What the water stage found, as its part of `findings.json`.
final class WaterFound {
    private WaterFound() {}

    static void put(ObjectNode node, WaterFindings water, WoodFindings wood) {
        List<Change> changes = Change.all(water, wood);
        each(node.putArray("sources"), water.sources(), (n, s) -> {
            n.put("id", s.id()).put("source", Choice.word(s.source())).put("words", s.words()).put("side", s.side()).put("place", s.place())
                    .put("probability", s.probability()).put("prior", s.prior()).put("toStop", s.probability() >= WaterFindings.LIKELY);
            each(n.putArray("evidence"), s.evidence(), (e, one) -> e.put("words", one.words()).put("weightBits", one.weight()));
            each(n.putArray("remedies"), s.remedies(), (r, one) -> basis(r.put("word", one.word()).put("words", one.words()).put("hours", one.hours()).put("material", Choice.word(one.material())).put("touches", one.touches()).putArray("basis"), List.of(one.basis())));
            s.ruling().ifPresent(ruling -> n.putObject("decision").put("verdict", Choice.word(ruling.decision().verdict())).put("taken", ruling.decision().taken()).put("by", Choice.word(ruling.decision().by()))
                    .put("because", ruling.decision().because()).put("recommended", ruling.recommended()).put("words", ruling.words()).put("caution", ruling.caution()));
            words(n.putArray("members"), s.members());
            each(n.putArray("changes"), changes.stream().filter(change -> change.source().equals(s.id())).toList(), WaterFound::change);
        });
        each(node.putArray("gutters"), water.gutters(), (n, g) -> basis(n.put("side", g.side()).put("edge", g.edge()).put("inflowLitrePerSecond", g.inflowLs())
                .put("capacityLitrePerSecond", g.capacityLs()).put("downspoutLitrePerSecond", g.downspoutLs()).put("overflows", g.overflows())
                .put("cloggedMinutes", Nodes.finite(g.cloggedMinutes())).put("words", g.words()).putArray("basis"), g.basis()));
        each(node.putArray("splashes"), water.splashes(), (n, s) -> basis(n.put("side", s.side()).put("clearanceMm", s.clearanceMm()).put("reachMm", s.reachMm())
                .put("share", s.share()).put("words", s.words()).putArray("basis"), s.basis()));
        water.nextLook().ifPresent(look -> node.putObject("nextLook").put("side", look.side()).put("words", look.words()).put("minutes", look.minutes()).put("bits", look.bits()));
        each(node.putArray("rounds"), water.rounds(), (n, round) -> {
            n.put("when", Choice.word(round.when())).put("minutes", round.minutes()).put("outcome", round.outcome());
            each(n.putArray("steps"), round.steps(), (s, step) -> s.put("side", step.side()).put("place", step.place()).put("leftMm", step.leftMm()).put("words", step.words())
                    .put("minutes", step.minutes()).put("bits", step.bits()).put("chanceSeen", step.seen()));
        });
        each(node.putArray("inTheWood"), water.lives(), (n, life) -> {
            n.put("life", Choice.word(life.life())).put("words", life.life().words()).put("side", life.side()).put("member", life.member()).put("probability", life.probability())
                    .put("state", Choice.word(life.state())).put("active", life.active()).put("needs", life.needs()).put("call", life.call()).put("water", life.water());
            words(n.putArray("signs"), life.signs());
            words(n.putArray("sources"), life.sources());
            basis(n.putArray("basis"), List.of(life.basis()));
        });
        each(node.putArray("drivenRain"), water.rains(), (n, rain) -> {
            n.put("side", rain.side()).put("words", rain.words());
            rain.facingLM2().forEach(n.putArray("facingWindLitrePerM2ByMonth")::add);
            rain.onSideLM2().forEach(n.putArray("onWallLitrePerM2ByMonth")::add);
            basis(n.putArray("basis"), rain.basis());
        });
        water.cold().ifPresent(cold -> {
            ObjectNode n = node.putObject("coldWall").put("hoursPerYear", cold.hours()).put("words", cold.words());
            cold.hoursByMonth().forEach(n.putArray("hoursByMonth")::add);
            basis(n.putArray("basis"), cold.basis());
        });
        words(node.putArray("gaps"), water.gaps());
    }

    private static void change(ObjectNode node, Change change) {
        node.put("member", change.member()).put("wettingHoursPerYear", change.hours()).put("wettingHoursPerYearThen", change.hoursThen()).put("meanMoisture", change.moisture())
                .put("meanMoistureThen", change.moistureThen()).put("nextRating", change.nextRating()).put("words", change.words());
        change.years().ifPresent(years -> node.put("yearsToNextRating", years));
        change.yearsThen().ifPresent(years -> node.put("yearsToNextRatingThen", years));
        words(node.putArray("with"), change.with());
        change.alone().ifPresent(one -> {
            ObjectNode alone = node.putObject("alone").put("wettingHoursPerYear", one.hours()).put("meanMoisture", one.moisture());
            one.years().ifPresent(years -> alone.put("yearsToNextRating", years));
        });
    }
}
