package sillwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Markup;
import sillwright.sheet.Pages;
import sillwright.store.Sync;
import sillwright.walk.Choice;
import sillwright.walk.Decision;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.water.WaterFindings.Remedy;
import sillwright.work.Comparison.Compared;
import sillwright.work.Repair;

/// What could be done, side by side, each drawn by what it keeps, how long it serves and what it takes; and the form that keeps a decision about it.
final class Choosing {
    private Choosing() {}

    /// The entry of the decision that stands about a place.
    static Optional<String> entry(Survey survey, Optional<Decision> decision) {
        return decision.flatMap(made -> survey.decisions().stream().filter(noted -> noted.what().equals(made)).map(Survey.Noted::entry).reduce((_, later) -> later));
    }

    /// @param entry of the decision that stands
    static Markup treatments(Repair repair, Optional<String> entry, Units units) {
        List<Compared> worked = repair.comparison().all().stream().filter(Compared::worked).toList(), refused = repair.comparison().all().stream().filter(one -> !one.worked()).toList();
        double years = worked.stream().mapToDouble(one -> one.lasting().stopped()).max().orElse(1), hours = worked.stream().mapToDouble(Compared::hours).max().orElse(1), money = worked.stream().mapToDouble(one -> one.money().orElse(0.0)).max().orElse(1);
        List<Markup> rows = new ArrayList<>();
        for (Compared one : worked) {
            List<Object> bars = new ArrayList<>(List.of(bar("wood kept", one.keptShare(), 0, Words.percent(one.keptShare())),
                    bar("serves", one.lasting().stopped() / years, one.lasting().running() / years, served(one)), bar("work", one.hours() / Math.max(1e-9, hours), 0, Words.number(one.hours(), 1) + " h")));
            one.money().ifPresent(sum -> bars.add(bar("cost", sum / Math.max(1e-9, money), 0, sillwright.work.Costing.sum(sum))));
            String more = "Can be undone " + one.undone().words().replace("not", "in no way") + "." + one.use().map(use -> " Its load uses " + Words.significant(use, 2) + " of what it then bears.").orElse("")
                    + one.worseThan().map(better -> " No better in anything than " + better.words() + ".").orElse("") + (one.holds() ? "" : " A limit refuses it: " + String.join("; ", one.refusals()) + ".");
            rows.add(row(one.treatment().ownWord(), one.treatment().words(), one.taken(), one.recommended(), bars, more));
        }
        List<Markup> others = refused.stream().map(one -> row(one.treatment().ownWord(), one.treatment().words(), false, false, List.of(), "Refused: " + String.join("; ", one.refusals()) + ".")).toList();
        Decision.About about = new Decision.About.Wood(repair.damage().member().id(), sillwright.measure.Quantity.read(Words.length(repair.damage().section().stationMm(), units), sillwright.measure.Kind.LENGTH));
        String recommended = repair.comparison().all().stream().filter(Compared::recommended).findFirst().map(one -> one.treatment().ownWord()).orElse("");
        List<Object> all = new ArrayList<>(rows);
        if (!others.isEmpty()) all.add(Html.of("details", Html.of("summary", Words.count(others.size(), "other") + " refused by a limit"), others));
        return form("decide-" + WorkPage.key(repair), "What would hold, side by side", repair.id() + ", " + Pages.title(repair.damage().member()), about, recommended, all, entry, repair.ruling().map(ruling -> ruling.words()));
    }

    private static String served(Compared one) {
        String stopped = Words.number(one.lasting().stopped(), 0), running = Words.number(one.lasting().running(), 0);
        return stopped + " years" + (stopped.equals(running) ? "" : ", " + running + " if it stays wet");
    }

    /// The remedies of one source.
    static Markup remedies(RankedSource source, Optional<String> entry) {
        double hours = source.remedies().stream().mapToDouble(Remedy::hours).max().orElse(1);
        String recommended = source.ruling().map(ruling -> ruling.recommended()).orElse(source.remedies().getFirst().word());
        List<Object> rows = new ArrayList<>();
        for (Remedy one : source.remedies())
            rows.add(row(one.word(), Words.sentence(one.words()), one == source.remedies().getFirst(), one.word().equals(recommended), List.of(bar("work", one.hours() / hours, 0, Words.number(one.hours(), 1) + " h, " + one.material().words())),
                    one.touches().isEmpty() ? "" : "Mind: " + one.touches() + "."));
        Decision.About about = new Decision.About.Water(Choice.word(source.source()), source.side(), source.place());
        return form("decide-" + source.id(), "What stops it, side by side", source.words(), about, recommended, rows, entry, source.ruling().map(ruling -> ruling.words() + (ruling.caution().isEmpty() ? "" : ". " + ruling.caution())));
    }

    private static Markup row(String word, String words, boolean taken, boolean recommended, List<?> bars, String more) {
        Markup pick = Html.of("input").with("type", "radio").with("name", "taken").with("value", word);
        return Html.of("label", taken ? pick.with("checked", "") : pick, Html.of("b", Words.sentence(words)), taken ? Html.of("span", "taken").with("class", "tag act") : List.of(), recommended && !taken ? Html.of("span", "recommended").with("class", "tag") : List.of(),
                bars.isEmpty() ? List.of() : Html.of("span", bars).with("class", "bars"), more.isEmpty() ? List.of() : Html.of("span", more).with("class", "small")).with("class", "option" + (taken ? " taken" : ""));
    }

    /// @param share of the widest, 0 to 1
    /// @param sure  the part of it that is there in any case
    private static Markup bar(String what, double share, double sure, String says) {
        List<Markup> boxes = new ArrayList<>(List.of(box("whole", 100), box("share", 100 * Math.clamp(share, 0, 1))));
        if (sure > 0) boxes.add(box("sure", 100 * Math.clamp(sure, 0, 1)));
        return Html.of("span", Html.of("span", what).with("class", "what"), Markup.of("svg", boxes).with("viewBox", "0 0 100 10").with("preserveAspectRatio", "none").with("class", "bar").with("aria-hidden", "true"), Html.of("span", says)).with("class", "measure");
    }

    private static Markup box(String look, double wide) { return Markup.of("rect").with("class", look).with("width", wide).with("height", 10); }

    private static Markup form(String id, String legend, String what, Decision.About about, String recommended, List<?> rows, Optional<String> entry, Optional<String> stands) {
        String says = Sync.node(new Decision(about, Decision.Verdict.ACCEPTED, recommended, Decision.By.PRACTITIONER, "")).get("says").toString();
        List<Markup> by = new ArrayList<>();
        for (Decision.By one : Decision.By.values()) by.add(Html.of("option", "the " + Choice.said(one)).with("value", Choice.word(one)));
        List<Object> all = new ArrayList<>();
        stands.ifPresent(words -> all.add(Html.p(Html.of("b", "Decided: "), words + ". ", entry.map(one -> List.of(Html.button("take it back").with("data-strike", one))).orElse(List.of())).with("class", "decided")));
        all.add(Html.of("fieldset", Html.of("legend", legend), rows));
        all.add(Html.of("label", "Why ", Html.of("input").with("name", "because").with("autocomplete", "off").with("size", "30")));
        all.add(Html.of("label", "Decided by ", Html.of("select", by).with("name", "by")));
        all.add(Html.div("tools", Html.of("button", "Take the one marked").with("type", "submit").with("value", "taken"), Html.of("button", "Refuse the one marked").with("type", "submit").with("value", "refused")));
        all.add(Html.of("p").with("class", "wrong").with("role", "alert"));
        return Html.of("form", all).with("class", "decide").with("id", id).with("data-decide", says).with("data-recommended", recommended).with("aria-label", legend + ": " + what);
    }
}
