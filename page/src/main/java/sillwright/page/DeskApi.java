package sillwright.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import sillwright.Assessment;
import sillwright.measure.Refused;
import sillwright.sheet.Dossier;
import sillwright.store.FindingsFile;
import sillwright.store.Pen;
import sillwright.store.Sync;
import sillwright.walk.Body;
import sillwright.walk.Entry;
import sillwright.walk.Fault;
import sillwright.walk.FieldBook;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// What the office pages do, over the wire: look at what was found, write an entry and be told all that it touched, set a dossier.
final class DeskApi {
    private static final int MOST_BYTES = 1 << 20;

    private final Desks desks;
    private final InHand inHand;
    private final String device = "desk-" + Integer.toHexString(new java.security.SecureRandom().nextInt(0x10000));
    /// The last dossier of each building, by the version it was set from.
    private final Map<String, Bound> bound = new ConcurrentHashMap<>();

    private record Bound(String version, byte[] pdf) {}

    DeskApi(Desks desks, InHand inHand) {
        this.desks = desks;
        this.inHand = inHand;
    }

    void on(RoutesConfig routes) {
        routes.post("/api/demo", ctx -> {
            Demo.into(desks.book());
            Wire.say(ctx, Wire.object().put("building", Demo.BUILDING));
        });
        routes.get("/api/buildings/{building}/findings", ctx -> Wire.say(ctx, FindingsFile.text(desk(ctx).open().assessment())));
        routes.post("/api/buildings/{building}/say", this::say);
        routes.post("/api/buildings/{building}/whole", this::whole);
        routes.get("/api/buildings/{building}/parts/{stage}", this::parts);
        routes.get("/api/buildings/{building}/parts/{stage}/{part}", this::part);
        routes.sse("/api/buildings/{building}/progress", this::progress);
        routes.get("/b/{building}/dossier.pdf", this::dossier);
    }

    /// Whoever writes stands in the book, under the name that they were let in by.
    private Pen pen(Context ctx) { return desks.book().pen(device, AccessApi.guest(ctx).id().equals(Access.HERE) ? "" : AccessApi.guest(ctx).name()); }

    private Desk desk(Context ctx) { return desks.of(ctx.pathParam("building")); }

    private void say(Context ctx) {
        JsonNode sent = Wire.json(ctx, MOST_BYTES);
        for (String field : sent.propertyNames()) if (!List.of("kind", "says", "stage", "known", "near").contains(field)) throw new Refused(field, "is not known here", "send kind, says, and stage, known and near to be shown a page's parts");
        Desk desk = desk(ctx);
        Desk.Opened before = desk.direct();
        Body body = Sync.body(sent);
        Entry entry = entry(before, body, pen(ctx));
        harmless(before, entry, desk.building());
        desks.book().append(desk.building(), entry);
        String since = desk.lastWhole();
        Desk.Opened after = desk.direct();
        ObjectNode root = Wire.object().put("entry", entry.id()).put("version", after.version()).put("whole", after.whole()).put("since", since);
        touched(root, before.assessment(), after.assessment());
        if (sent.has("stage")) show(root, desk, after, sent);
        ctx.status(201);
        Wire.say(ctx, root);
    }

    private static void touched(ObjectNode root, Assessment before, Assessment after) {
        ArrayNode touched = root.putArray("touched");
        for (Touched one : Touched.between(before, after)) touched.addObject().put("stage", one.stage()).put("what", one.what()).put("was", one.was()).put("now", one.now());
    }

    /// The whole road over what the book has now: waits for it, and tells all that changed since a version that was told before.
    private void whole(Context ctx) {
        JsonNode sent = Wire.json(ctx, MOST_BYTES);
        for (String field : sent.propertyNames()) if (!List.of("stage", "known", "near", "since").contains(field)) throw new Refused(field, "is not known here", "send stage, known and near to be shown a page's parts, and since as it was told");
        Desk desk = desk(ctx);
        Desk.Opened now = desk.open();
        ObjectNode root = Wire.object().put("version", now.version());
        touched(root, desk.whole(sent.path("since").asString("")).map(Desk.Opened::assessment).orElse(now.assessment()), now.assessment());
        if (sent.has("stage")) show(root, desk, now, sent);
        Wire.say(ctx, root);
    }

    private static Entry entry(Desk.Opened open, Body body, Pen pen) {
        String target = switch (body) {
            case Body.Amended(var id, _) -> id;
            case Body.Struck(var id, _) -> id;
            default -> "";
        };
        if (target.isEmpty()) return pen.entry(body);
        Entry earlier = open.entry(target).orElseThrow(() -> new Refused("entry", "'{}' is not in the book", "name an entry of this building", target));
        return pen.after(earlier, body);
    }

    /// An entry that the fold would set aside is refused before it is written: the desk can say so at once.
    private static void harmless(Desk.Opened open, Entry entry, String building) {
        List<Entry> all = new ArrayList<>(open.entries());
        all.add(entry);
        Set<Fault> known = new HashSet<>(open.survey().faults());
        for (Fault fault : FieldBook.fold(building, all).faults())
            if (fault.grave() && !known.contains(fault)) throw new Refused(fault.field(), fault.what(), fault.mend());
    }

    private void parts(Context ctx) {
        Desk desk = desk(ctx);
        Desk.Opened open = desk.soon();
        ObjectNode root = Wire.object().put("version", open.version()).put("whole", open.whole());
        show(root, desk, open, ctx.pathParam("stage"), Map.of(), Optional.empty());
        Wire.say(ctx, root);
    }

    /// One part of a page, whole: with the drawings that the page leaves out until they come near the window.
    private void part(Context ctx) {
        Desk desk = desk(ctx);
        Desk.Opened open = desk.soon();
        Part part = StagePage.of(ctx.pathParam("stage")).parts(open, desk.memory()).stream().filter(one -> one.id().equals(ctx.pathParam("part"))).findFirst()
                .orElseThrow(() -> Refusal.notThere(ctx.pathParam("part"), "there is no such part on this page", "see parts/" + ctx.pathParam("stage") + " for those there are"));
        Wire.say(ctx, Wire.object().put("version", open.version()).put("tag", part.tag()).put("html", "readings".equals(ctx.queryParam("without")) ? part.closed() : part.tagged()));
    }

    private static Map<String, String> tags(JsonNode known) {
        Map<String, String> tags = new java.util.HashMap<>();
        known.properties().forEach(one -> tags.put(one.getKey(), one.getValue().asString("")));
        return tags;
    }

    private static void show(ObjectNode root, Desk desk, Desk.Opened open, JsonNode sent) {
        if (sent.has("near") && !sent.get("near").isArray()) throw new Refused("near", "is no list", "list the parts that are in sight, or leave it out to be sent all");
        Optional<Set<String>> near = sent.has("near") ? Optional.of(sent.get("near").valueStream().map(id -> id.asString("")).collect(Collectors.toSet())) : Optional.empty();
        show(root, desk, open, sent.get("stage").asString(""), tags(sent.path("known")), near);
    }

    /// The parts of a page that differ from those that the asker has, and the order of all.
    ///
    /// @param near the parts that the asker sees; what differs of the others that it has is only named. All are sent where it is empty
    private static void show(ObjectNode root, Desk desk, Desk.Opened open, String stage, Map<String, String> known, Optional<Set<String>> near) {
        ObjectNode parts = root.putObject("parts");
        ArrayNode stale = root.putArray("stale"), order = root.putArray("order");
        for (Part part : StagePage.of(stage).parts(open, desk.memory())) {
            order.add(part.id());
            if (part.tag().equals(known.get(part.id()))) continue;
            if (near.isPresent() && known.containsKey(part.id()) && !near.get().contains(part.id())) stale.add(part.id());
            else parts.put(part.id(), part.tagged());
        }
    }

    /// Server-sent events: `step` with what is being worked, then `done`.
    private void progress(SseClient client) {
        inHand.begin(client.ctx());
        try {
            Desk desk = desks.of(client.ctx().pathParam("building"));
            Consumer<String> tell = step -> client.sendEvent("step", step);
            desk.follow(tell);
            if ("dossier".equals(client.ctx().queryParam("of"))) bind(desk, tell);
            client.sendEvent("done", "done");
            client.close();
        } finally {
            inHand.end(client.ctx());
        }
    }

    private byte[] bind(Desk desk, Consumer<String> tell) {
        Desk.Opened open = desk.open();
        return bound.compute(desk.building(), (_, known) -> {
            if (known != null && known.version.equals(open.version())) return known;
            try {
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                Dossier.write(open.assessment(), out, tell);
                return new Bound(open.version(), out.toByteArray());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }).pdf;
    }

    private void dossier(Context ctx) {
        byte[] pdf = bind(desk(ctx), step -> {});
        ctx.header("Content-Disposition", "inline; filename=\"dossier.pdf\"").contentType("application/pdf").result(pdf);
    }
}
