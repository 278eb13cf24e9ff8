package sillwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.sheet.Markup;
import sillwright.sheet.Pages;
import sillwright.store.Sync;
import sillwright.walk.Body;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.ProbeReading;
import sillwright.walk.Sighting;
import sillwright.walk.Spot;
import sillwright.walk.Survey;

/// Readings and sightings as forms: each says what was noted, and takes what should stand there instead.
final class Readings {
    private Readings() {}

    /// Every reading of one member.
    static List<Markup> of(Desk.Opened open, Member member) {
        List<Markup> all = new ArrayList<>();
        for (Survey.Noted<ProbeReading> noted : open.survey().probes()) if (noted.what().spot().member().equals(member.id())) all.add(probe(noted, member));
        for (Survey.Noted<MoistureReading> noted : open.survey().moistures()) if (noted.what().spot().member().equals(member.id())) all.add(moisture(noted, member));
        return all;
    }

    static int count(Desk.Opened open, Member member) {
        return (int) (open.survey().probes().stream().filter(noted -> noted.what().spot().member().equals(member.id())).count()
                + open.survey().moistures().stream().filter(noted -> noted.what().spot().member().equals(member.id())).count());
    }

    private static String place(Spot spot, Member member) { return Choice.said(spot.face()) + ", " + spot.along().text() + " from the " + Pages.start(member) + ", " + spot.across().text() + " across"; }

    private static Markup probe(Survey.Noted<ProbeReading> noted, Member member) {
        ProbeReading probe = noted.what();
        String place = place(probe.spot(), member);
        Markup ranOut = Html.of("input").with("type", "checkbox").with("name", "ranOut");
        return form(noted, probe, "probe, " + place, field("depth", "depth", probe.depth()), field("reach", "reach", probe.reach()),
                Html.of("label", probe.ranOut() ? ranOut.with("checked", "") : ranOut, " ran out"));
    }

    private static Markup moisture(Survey.Noted<MoistureReading> noted, Member member) {
        MoistureReading reading = noted.what();
        return form(noted, reading, "meter, " + place(reading.spot(), member), field("reading", "shown", reading.reading()),
                reading.wood().map(wood -> List.of(field("wood", "wood at", wood))).orElse(List.of()));
    }

    static List<Markup> sightings(Desk.Opened open) {
        List<Markup> all = new ArrayList<>();
        for (Survey.Noted<Sighting> noted : open.survey().sightings()) {
            Sighting sighting = noted.what();
            String where = Optional.ofNullable(open.survey().sides().get(sighting.side())).map(Pages::title).orElse(sighting.side())
                    + sighting.member().flatMap(id -> Optional.ofNullable(open.survey().members().get(id))).map(member -> ", " + Pages.title(member)).orElse("");
            Markup seen = Html.of("option", "seen").with("value", "true"), not = Html.of("option", "looked for, not seen").with("value", "false");
            all.add(form(noted, sighting, sighting.sign().words() + ": " + where,
                    Html.of("label", Html.of("select", sighting.seen() ? seen.with("selected", "") : seen, sighting.seen() ? not : not.with("selected", "")).with("name", "seen").with("aria-label", sighting.sign().words()))));
        }
        return all;
    }

    private static Markup field(String name, String words, Quantity value) {
        return Html.of("label", words + " ", Html.of("input").with("name", name).with("value", value.text()).with("size", "8").with("autocomplete", "off"));
    }

    private static Markup form(Survey.Noted<?> noted, Body body, String says, Object... fields) {
        return Html.of("form", Html.of("span", says).with("class", "says"), List.of(fields), Html.of("button", "change").with("type", "submit"),
                Html.button("take back").with("data-strike", noted.entry()), Html.of("span").with("class", "wrong").with("role", "alert"))
                .with("class", "reading").with("id", "reading-" + noted.entry()).with("tabindex", "-1").with("data-entry", noted.entry()).with("data-body", Sync.node(body).toString()).with("aria-label", says);
    }
}
