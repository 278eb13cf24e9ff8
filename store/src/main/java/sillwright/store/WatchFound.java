package sillwright.store;

import static sillwright.store.Nodes.basis;
import static sillwright.store.Nodes.each;
import static sillwright.store.Nodes.finite;

import sillwright.walk.Choice;
import sillwright.watch.LookAhead;
import sillwright.watch.Trend;
import sillwright.watch.Verdict;
import sillwright.watch.WatchFindings;
import sillwright.work.cost.Range;
import tools.jackson.databind.node.ObjectNode;

/// What the watch stage found, as its part of `findings.json`.
final class WatchFound {
    private WatchFound() {}

    static void put(ObjectNode node, WatchFindings found) {
        each(node.putArray("rounds"), found.rounds(), WatchFound::round);
        each(node.putArray("trends"), found.trends(), WatchFound::trend);
        each(node.putArray("verdicts"), found.verdicts(), WatchFound::verdict);
        each(node.putArray("due"), found.due(), (n, d) -> {
            n.put("on", d.on().toString()).put("words", d.words()).put("side", d.side()).put("because", d.because()).put("hours", d.hours());
            d.member().ifPresent(member -> n.put("member", member));
            if (d.money().draws() > 0) money(n.putObject("money"), d.money());
        });
        found.ahead().ifPresent(ahead -> ahead(node.putObject("ahead"), ahead));
    }

    private static void money(ObjectNode node, Range range) { node.put("low", range.low()).put("middle", range.middle()).put("high", range.high()); }

    private static void spent(ObjectNode node, LookAhead.Spent spent) {
        Nodes.interval(node.putObject("spent"), spent.spent());
        Nodes.interval(node.putObject("all"), spent.all());
    }

    private static void ahead(ObjectNode node, LookAhead ahead) {
        node.put("priced", ahead.priced()).put("currency", ahead.currency());
        each(node.putArray("courses"), ahead.courses(), (n, c) -> {
            n.put("kind", Choice.word(c.kind())).put("delay", c.delay()).put("title", c.title());
            each(n.putArray("years"), c.years(), (y, year) -> {
                Nodes.interval(y.putObject("goneMl"), year.goneMl());
                Nodes.interval(y.putObject("lostMl"), year.lostMl());
                spent(y.putObject("hours"), year.hours());
                if (ahead.priced()) spent(y.putObject("money"), year.money());
                y.put("risk", year.risk());
            });
        });
        Nodes.words(node.putArray("left"), ahead.left());
        basis(node.putArray("basis"), ahead.basis());
    }

    private static void trend(ObjectNode node, Trend trend) {
        node.put("what", Choice.word(trend.what())).put("side", trend.side()).put("place", trend.place()).put("way", Choice.word(trend.way())).put("slope", finite(trend.slope()))
                .put("low", finite(trend.low())).put("high", finite(trend.high())).put("p", trend.p()).put("words", trend.words());
        trend.member().ifPresent(member -> node.put("member", member));
        trend.changed().ifPresent(day -> node.put("changed", day.toString()));
        each(node.putArray("points"), trend.points(), (n, p) -> {
            n.put("day", p.day().toString()).put("value", p.value());
            if (Double.isFinite(p.expected())) n.put("expected", p.expected());
        });
        basis(node.putArray("basis"), trend.basis());
    }

    private static void verdict(ObjectNode node, Verdict verdict) {
        node.put("id", verdict.id()).put("done", Choice.word(verdict.work().done())).put("on", verdict.work().on().toString()).put("side", verdict.work().side())
                .put("state", Choice.word(verdict.state())).put("failing", verdict.failing()).put("asOf", verdict.asOf().toString()).put("words", verdict.words());
        verdict.work().against().ifPresent(source -> node.put("against", source));
        verdict.told().ifPresent(day -> node.put("told", day.toString()));
        verdict.likelier().ifPresent(source -> node.put("likelier", source));
        each(node.putArray("places"), verdict.places(), (n, p) -> {
            n.put("member", p.member()).put("words", p.words()).put("failing", p.failing());
            put(n, "before", p.before());
            put(n, "last", p.last());
            put(n, "predictedLow", p.predictedLow());
            put(n, "predictedHigh", p.predictedHigh());
        });
        basis(node.putArray("basis"), verdict.basis());
    }

    private static void put(ObjectNode node, String field, double value) { if (Double.isFinite(value)) node.put(field, value); }

    private static void round(ObjectNode node, WatchFindings.Round round) {
        node.put("id", round.id()).put("title", round.title()).put("why", round.why()).put("minutes", round.minutes()).put("left", round.left());
        round.first().ifPresent(first -> node.put("first", first.toString()));
        each(node.putArray("checks"), round.checks(), (n, c) -> {
            n.put("side", c.side()).put("words", c.words()).put("last", c.last()).put("expected", c.expected()).put("because", c.because()).put("minutes", c.minutes());
            c.member().ifPresent(member -> n.put("member", member));
            each(n.putArray("asks"), c.asks(), WatchFound::ask);
        });
        basis(node.putArray("basis"), round.basis());
    }

    /// What a phone needs to write the answer down as an entry: where the meter or probe goes, or which sign is seen or not.
    private static void ask(ObjectNode node, WatchFindings.Ask ask) {
        node.put("kind", Choice.word(ask.kind())).put("words", ask.words()).put("last", ask.last()).put("expected", ask.expected());
        ask.spot().ifPresent(spot -> node.putObject("spot").put("member", spot.member()).put("face", Choice.word(spot.face())).put("along", spot.along().text()).put("across", spot.across().text()));
        ask.sign().ifPresent(sign -> node.put("sign", Choice.word(sign)));
    }
}
