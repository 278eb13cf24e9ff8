package sillwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import sillwright.Portfolio;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Markup;
import sillwright.work.cost.Range;
import tools.jackson.databind.node.ObjectNode;

/// Several buildings side by side: which cannot wait, and what a budget buys most of.
final class RankPage {
    private static final int AGAIN_S = 3;

    private final Ranks ranks;

    RankPage(Desks desks) { ranks = new Ranks(desks); }

    void on(RoutesConfig routes) {
        routes.get("/buildings", this::page);
        routes.get("/api/rank", this::api);
    }

    private static Optional<Double> budget(Context ctx) {
        String told = ctx.queryParam("budget");
        if (told == null || told.isBlank()) return Optional.empty();
        try {
            double budget = Double.parseDouble(told.strip());
            if (budget >= 0 && budget < 1e9) return Optional.of(budget);
        } catch (NumberFormatException _) {
            // Told below, as any other that is no budget.
        }
        throw new Refused("budget", "'{}' is no budget", "write the money or the hours there are, such as 120", told);
    }

    private void page(Context ctx) {
        Optional<Double> budget = Optional.empty();
        Optional<String> wrong = Optional.empty();
        try {
            budget = budget(ctx);
        } catch (Refused refused) {
            wrong = Optional.of(refused.getMessage());
        }
        Ranks.Ranked ranked = ranks.soon(budget);
        Portfolio portfolio = ranked.portfolio();
        List<Markup> all = new ArrayList<>(List.of(Html.h(1, "Buildings"), Html.p("What cannot wait stands first. What is called a limit is reached when the load of a piece uses up what decay has left of it.")));
        if (!ranked.missing().isEmpty()) {
            ctx.header("Refresh", String.valueOf(AGAIN_S));
            all.add(Html.p("Still to be worked: " + Words.list(ranked.missing()) + ". This page looks again by itself every few seconds.").with("role", "status"));
        }
        if (!portfolio.buildings().isEmpty()) all.add(standings(portfolio));
        for (String why : ranked.leftOut()) all.add(Html.caution("Left out, " + why));
        if (portfolio.buildings().isEmpty() && ranked.missing().isEmpty()) all.add(Html.p("No building is in the book yet. ", Html.a("/", "Begin on the first page"), "."));
        else all.addAll(bought(portfolio, budget, wrong));
        Frame.say(ctx, "Buildings", Optional.empty(), "", "", Html.text("rank", Html.div("answer", all)));
    }

    private static Markup standings(Portfolio portfolio) {
        List<List<?>> rows = new ArrayList<>();
        for (Portfolio.Standing one : portfolio.buildings())
            rows.add(List.of(String.valueOf(rows.size() + 1), Html.a(Frame.at(one.id()), one.name()), one.urgent() == 0 ? "-" : Html.a(Frame.at(one.id(), "work"), Words.count(one.urgent(), "repair")),
                    Words.percent(one.riskSoon()), one.failed() == 0 ? "-" : Html.a(Frame.at(one.id(), "watch"), String.valueOf(one.failed())), wood(one.lostMl()),
                    portfolio.cost(one)));
        return Html.table("buildings, what cannot wait first", List.of("", "Building", "Cannot wait", "At a limit within 2 years", "Remedies that did not hold", "More original wood lost by ten years of waiting", "The work takes"), rows);
    }

    /// In both measures, since the buildings of a book may be measured in either.
    private static String wood(double mL) { return Words.wood(mL, Units.US) + (mL <= 0 ? "" : " (" + Words.wood(mL, Units.SI) + ")"); }

    private static List<Markup> bought(Portfolio portfolio, Optional<Double> budget, Optional<String> wrong) {
        String unit = portfolio.priced() ? portfolio.currency().isEmpty() ? "money" : portfolio.currency() : "hours";
        List<Markup> all = new ArrayList<>(List.of(Html.h(2, "What a budget buys most of")));
        Markup field = Html.of("input").with("type", "number").with("name", "budget").with("id", "budget").with("min", "0").with("step", "any").with("value", budget.map(value -> Words.number(value, 2).replace(",", "")).orElse(""));
        all.add(Html.of("form", Html.of("label", "Budget, " + unit).with("for", "budget"), " ", field, " ", Html.of("button", "What does it buy?").with("type", "submit")).with("class", "budget").with("method", "get").with("action", "/buildings"));
        wrong.ifPresent(why -> all.add(Html.p(why).with("class", "wrong").with("role", "alert")));
        if (budget.isEmpty()) return all;
        all.add(Html.p(portfolio.sum(portfolio.spent()) + " of " + portfolio.sum(portfolio.budget()) + " buy most, proven: " + wood(portfolio.savedMl()) + " of original wood saved."));
        List<List<?>> rows = new ArrayList<>();
        for (Portfolio.Bought one : portfolio.chosen())
            rows.add(List.of(Html.a(Frame.at(one.building(), one.ref().startsWith("W") ? "water" : "work"), one.building() + " " + one.ref()), one.words(), portfolio.sum(portfolio.priced() ? one.money() : one.hours()),
                    one.needs().isEmpty() ? "-" : Words.list(one.needs())));
        if (!rows.isEmpty()) all.add(Html.table("what the budget buys", List.of("For", "What", "Takes", "Comes with"), rows));
        all.add(Html.caution((portfolio.priced() ? "Sums are middles of a range" : "Hours are rough") + ", and worth is counted in wood alone: what may hurt someone is propped and closed off first, whatever a list says."));
        return all;
    }

    private void api(Context ctx) {
        Ranks.Ranked ranked = ranks.whole(budget(ctx));
        Portfolio portfolio = ranked.portfolio();
        ObjectNode root = Wire.object().put("priced", portfolio.priced()).put("currency", portfolio.currency()).put("budget", portfolio.budget()).put("spent", portfolio.spent()).put("savedMl", portfolio.savedMl());
        var buildings = root.putArray("buildings");
        for (Portfolio.Standing one : portfolio.buildings()) {
            ObjectNode node = buildings.addObject().put("id", one.id()).put("name", one.name()).put("cannotWait", one.urgent()).put("riskWithinTwoYears", one.riskSoon()).put("moreLostMl", one.lostMl())
                    .put("remediesFailed", one.failed());
            range(node.putObject("hours"), one.hours());
            if (portfolio.priced()) range(node.putObject("money"), one.money());
        }
        var chosen = root.putArray("chosen");
        for (Portfolio.Bought one : portfolio.chosen()) {
            ObjectNode node = chosen.addObject().put("building", one.building()).put("ref", one.ref()).put("words", one.words()).put("hours", one.hours()).put("savedMl", one.savedMl());
            if (portfolio.priced()) node.put("money", one.money());
            one.needs().forEach(node.putArray("needs")::add);
        }
        ranked.leftOut().forEach(root.putArray("leftOut")::add);
        Wire.say(ctx, root);
    }

    private static void range(ObjectNode node, Range range) { node.put("low", range.low()).put("middle", range.middle()).put("high", range.high()); }
}
