package sillwright.page;

import java.util.List;
import java.util.Optional;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import sillwright.Assessment;
import sillwright.measure.Refused;
import sillwright.store.FindingsFile;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.ProbeReading;
import sillwright.walk.Survey;
import sillwright.wood.NextProbe;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/// What a phone on the wall asks of the stages: where to probe next, and the rounds of the watch, to be walked without signal.
///
/// Working a building's road takes seconds, so that no phone waits for it: the answer about rounds is what was worked last, and where
/// entries came since, it is worked anew for the next time that somebody asks.
final class FieldApi {
    private final Desks desks;

    FieldApi(Desks desks) { this.desks = desks; }

    void on(RoutesConfig routes) {
        routes.get("/api/buildings/{building}/rounds", this::rounds);
        routes.get("/api/buildings/{building}/next", this::next);
    }

    /// Where on a member to push the probe next, as the decay map of its readings has it; null where it has no reading yet.
    private void next(Context ctx) {
        Survey survey = desks.book().read(ctx.pathParam("building")).fold();
        String id = Optional.ofNullable(ctx.queryParam("member")).orElseThrow(() -> new Refused("member", "is missing", "name one: next?member=s-post-2"));
        Member member = Optional.ofNullable(survey.members().get(id)).orElseThrow(() -> Refusal.notThere(id, "there is no such member in this building", "see its entries"));
        List<ProbeReading> readings = member.faces().stream().flatMap(face -> survey.probesOn(id, face).stream()).toList();
        ObjectNode root = Wire.object().putNull("next");
        NextProbe.of(member, readings).ifPresent(next -> {
            ObjectNode node = root.putObject("next").put("face", Choice.word(next.face())).put("alongMm", next.alongMm()).put("acrossMm", next.acrossMm())
                    .put("decides", Choice.word(next.decides())).put("why", next.why().words()).put("left", next.left()).put("enough", next.enough());
            next.unseen().forEach(face -> node.withArray("unseen").add(Choice.word(face)));
            node.withArray("unseen");
        });
        Wire.say(ctx, root);
    }

    private void rounds(Context ctx) {
        String building = ctx.pathParam("building");
        Desk desk = ctx.queryParam("units") == null ? desks.of(building) : desks.of(building, FigureApi.units(Optional.of(ctx.queryParam("units"))));
        Desk.Last last = desk.last();
        ObjectNode root = Wire.object().put("ready", last.ready());
        root.set("rounds", last.opened().map(opened -> desk.memory().of(List.of("rounds", opened.version()), () -> rounds(opened.assessment()))).orElseGet(() -> Wire.object().arrayNode()));
        Wire.say(ctx, root);
    }

    private static JsonNode rounds(Assessment assessment) { return Wire.JSON.readTree(FindingsFile.text(assessment)).get("watch").get("rounds"); }
}
