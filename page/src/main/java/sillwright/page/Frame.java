package sillwright.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import io.javalin.http.Context;
import sillwright.sheet.Markup;

/// What every office page has about it: its head, the way to the other pages, the place where changes are told.
final class Frame {
    static final List<String> STAGES = List.of("walk", "water", "wood", "work", "watch");

    private Frame() {}

    /// An address of one building: `/b/pond-lane-house/wood`.
    static String at(String building, String... rest) {
        return "/b/" + URLEncoder.encode(building, StandardCharsets.UTF_8).replace("+", "%20") + (rest.length == 0 ? "" : "/" + String.join("/", rest));
    }

    /// @param building the building and its name, where the page is of one
    /// @param stage    the stage it shows, or empty
    /// @param body     the main part, as HTML
    static void say(Context ctx, String title, Optional<String> building, String name, String stage, String body) {
        List<Markup> nav = new ArrayList<>();
        building.ifPresent(id -> {
            for (String one : STAGES) nav.add(Html.of("li", one.equals(stage) ? Html.a(at(id, one), one).with("aria-current", "page") : Html.a(at(id, one), one)));
        });
        nav.add(Html.of("li", stage.equals("figures") ? Html.a("/figures", "figures").with("aria-current", "page") : Html.a("/figures", "figures")));
        // On this machine alone there is nothing to leave.
        Access.Guest guest = AccessApi.guest(ctx);
        if (guest != null && !guest.id().equals(Access.HERE)) nav.add(Html.of("li", Html.a("/enter", "leave").with("data-leave", "")));
        Markup header = Html.of("header", Html.a("/", "Sillwright").with("class", "home"), building.map(id -> Html.a(at(id), name).with("class", "which")).map(List::of).orElse(List.of()),
                Html.of("nav", Html.of("ul", nav)).with("aria-label", "stages")).with("class", "top");
        Markup head = Html.of("head", Html.of("meta").with("charset", "utf-8"), Html.of("meta").with("name", "viewport").with("content", "width=device-width, initial-scale=1"),
                Html.of("title", title + " – Sillwright"), Html.of("link").with("rel", "stylesheet").with("href", "/looks/paper.css"),
                Html.of("link").with("rel", "stylesheet").with("href", "/office/office.css"), Html.of("script").with("type", "module").with("src", "/office/office.js"));
        String page = "<!doctype html>\n<html lang=\"en-US\">" + Html.text("head", head) + "<body" + building.map(id -> " data-building=\"" + attribute(id) + "\"").orElse("")
                + (stage.isEmpty() ? "" : " data-stage=\"" + stage + "\"") + "><a class=\"skip\" href=\"#main\">To the page</a>" + Html.text("top", header) + "<main id=\"main\" tabindex=\"-1\">" + body + "</main>"
                + "<aside id=\"touched\" aria-label=\"what the last change touched\" hidden></aside><p id=\"told\" role=\"status\"></p></body></html>";
        ctx.contentType("text/html; charset=utf-8").result(page.getBytes(StandardCharsets.UTF_8));
    }

    private static String attribute(String text) { return text.replace("&", "&amp;").replace("\"", "&quot;").replace("<", "&lt;"); }
}
