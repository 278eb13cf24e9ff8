package sillwright.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import sillwright.sheet.Markup;
import sillwright.sheet.Pages;
import sillwright.store.Book;

/// The pages for the desk.
final class OfficePages {
    /// How long a page waits for the road before it shows how far it has come.
    private static final long PATIENCE_MS = 400;

    private final Desks desks;

    OfficePages(Desks desks) { this.desks = desks; }

    void on(RoutesConfig routes) {
        routes.get("/", this::first);
        routes.get("/b/{building}", ctx -> opened(ctx, this::building));
        for (String stage : Frame.STAGES) routes.get("/b/{building}/" + stage, ctx -> opened(ctx, (c, open) -> stage(c, open, stage)));
    }

    private interface Shows { void show(Context ctx, Desk.Opened open); }

    private void opened(Context ctx, Shows page) {
        Desk desk = desks.of(ctx.pathParam("building"));
        Optional<Desk.Opened> open = desk.openSoon(PATIENCE_MS);
        if (open.isPresent()) page.show(ctx, open.get());
        else Frame.say(ctx, "Working", Optional.of(desk.building()), desk.building(), "", Html.text("wait", Html.div("working", Html.h(1, "Working it out"),
                Html.p("The first time, all of the building is worked. This page opens by itself when it is done; without scripts, ask for it again in a few seconds."),
                Html.p("beginning").with("id", "step").with("role", "status")).with("data-await", "")));
    }

    private void first(Context ctx) {
        List<Book.Shelf> shelves = desks.book().buildings();
        List<Markup> all = new java.util.ArrayList<>(List.of(Html.h(1, "Sillwright"),
                Html.p("Find where an older wooden building is failing and how deep, stop the water, keep the wood that still does its work, make the least repair that will hold, and see each spring and autumn that it stays dry.")));
        if (!shelves.isEmpty()) all.add(Html.of("ul", shelves.stream().map(shelf -> Html.of("li", Html.a(Frame.at(shelf.building()), name(shelf.building())), " ",
                Html.of("span", shelf.entries() + " entries").with("class", "small"))).toList()).with("class", "shelves"));
        if (shelves.size() > 1) all.add(Html.p(Html.a("/buildings", "All buildings, ranked"), ": what cannot wait, and what a budget buys most of."));
        if (shelves.stream().noneMatch(shelf -> shelf.building().equals(Demo.BUILDING)))
            all.add(Html.of("form", Html.of("button", "Open the example house").with("type", "submit").with("class", "first")).with("data-demo", ""));
        all.add(Html.p(Html.a("/field/", "The field page"), " is for the phone: it works with no signal, and sends what was noted when it meets this desk again."));
        all.add(Html.small("Everything here is screening, not engineering: load-bearing work, lead, asbestos, mould, work at height and electricity near wet walls defer to local codes and licensed people. The example house is invented."));
        Frame.say(ctx, "Buildings", Optional.empty(), "", "", Html.text("first", Html.div("cover", all)));
    }

    private String name(String building) { return desks.book().read(building).fold().building().map(described -> described.name()).filter(name -> !name.isBlank()).orElse(building); }

    private void building(Context ctx, Desk.Opened open) {
        List<Markup> ways = Frame.STAGES.stream().map(stage -> Html.of("li", Html.a(Frame.at(open.building(), stage), Html.of("b", stage)), " ", StagePage.of(stage).question())).toList();
        Markup actions = Html.div("actions", Html.a(Frame.at(open.building(), "dossier.pdf"), "The dossier, as PDF").with("class", "button first").with("data-long", "dossier"), " ",
                Html.a("/api/buildings/" + Frame.at(open.building()).substring(3) + "/findings", "All findings, as data").with("class", "button"));
        Frame.say(ctx, open.survey().name(), Optional.of(open.building()), open.survey().name(), "",
                Html.text("building", Html.div("answer", Pages.answer(open.assessment()), actions, Html.h(2, "The five stages"), Html.of("ul", ways).with("class", "ways"))));
    }

    private void stage(Context ctx, Desk.Opened open, String stage) {
        StagePage page = StagePage.of(stage);
        List<Part> parts = page.parts(open, desks.of(open.building()).memory());
        List<Markup> ways = parts.stream().flatMap(part -> part.head().map(words -> Html.of("li", Html.a("#" + part.id(), words))).stream()).toList();
        List<Markup> way = ways.size() < 2 ? List.of() : List.of(Html.of("nav", Html.of("ul", ways)).with("class", "onpage").with("aria-label", "on this page"));
        String head = Html.text("stage", Html.div("stage", Html.of("hgroup", Html.h(1, stage), Html.p(page.question())), way));
        Frame.say(ctx, stage + ", " + open.survey().name(), Optional.of(open.building()), open.survey().name(), stage,
                head + "<div id=\"parts\" data-version=\"" + open.version() + "\" data-whole=\"" + open.whole() + "\">" + parts.stream().map(Part::light).collect(Collectors.joining()) + "</div>");
    }
}
