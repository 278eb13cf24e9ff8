package sillwright.store;

import java.time.Instant;
import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.walk.Body;
import sillwright.walk.Building;
import sillwright.walk.Choice;
import sillwright.walk.Decision;
import sillwright.walk.Entry;
import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.OpenChecks;
import sillwright.walk.Photo;
import sillwright.walk.ProbeReading;
import sillwright.walk.Profile;
import sillwright.walk.Side;
import sillwright.walk.Sighting;
import sillwright.walk.Spot;
import sillwright.walk.WorkDone;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/// One entry into its JSON object, every measure as it was written.
final class EntryWriter {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private EntryWriter() {}

    static ObjectNode write(Entry entry) {
        ObjectNode node = NODES.objectNode();
        node.put("id", entry.id());
        node.put("at", Instant.ofEpochMilli(entry.stamp().wallMs()).toString());
        if (entry.stamp().tick() > 0) node.put("tick", entry.stamp().tick());
        if (!entry.device().isEmpty()) node.put("device", entry.device());
        if (!entry.author().isEmpty()) node.put("author", entry.author());
        body(node, entry.body());
        return node;
    }

    private static void body(ObjectNode node, Body body) {
        ObjectNode says = NODES.objectNode();
        node.put("kind", switch (body) {
            case Building building -> building(says, building);
            case Side side -> side(says, side);
            case Member member -> member(says, member);
            case ProbeReading probe -> probe(says, probe);
            case MoistureReading reading -> moisture(says, reading);
            case Sighting sighting -> sighting(says, sighting);
            case Photo photo -> photo(says, photo);
            case OpenChecks checks -> checks(says, checks);
            case Profile profile -> profile(says, profile);
            case WorkDone work -> workDone(says, work);
            case Decision decision -> decision(says, decision);
            case Body.Amended(var entry, var instead) -> {
                says.put("entry", entry);
                body(says, instead);
                yield "amend";
            }
            case Body.Struck(var entry, var because) -> {
                says.put("entry", entry);
                says.put("because", because);
                yield "strike";
            }
        });
        node.set("says", says);
    }

    private static String building(ObjectNode says, Building b) {
        says.put("id", b.id()).put("name", b.name()).put("note", b.note()).put("yearBuilt", b.yearBuilt());
        put(says, "designRain", b.designRain());
        put(says, "groundSnow", b.groundSnow());
        if (!b.months().isEmpty()) {
            ArrayNode months = says.putArray("months");
            for (Building.Month m : b.months()) {
                ObjectNode month = months.addObject();
                put(month, "meanHigh", m.meanHigh());
                put(month, "meanLow", m.meanLow());
                put(month, "rain", m.rain());
                month.put("rainDays", m.rainDays());
                put(month, "humidity", m.humidity());
                put(month, "wind", m.wind());
                put(month, "snow", m.snow());
            }
        }
        return "building";
    }

    private static String side(ObjectNode says, Side s) {
        says.put("id", s.id()).put("title", s.title());
        put(says, "bearing", s.bearing());
        put(says, "length", s.length());
        ArrayNode edges = says.putArray("edges");
        for (Side.RoofEdge e : s.edges()) edge(edges.addObject(), e);
        ObjectNode ground = says.putObject("ground").put("surface", Choice.word(s.ground().surface()));
        put(ground, "fall", s.ground().fall());
        put(ground, "clearance", s.ground().clearance());
        put(says, "lotLine", s.lotLine());
        ArrayNode openings = says.putArray("openings");
        for (Side.Opening o : s.openings()) {
            ObjectNode opening = openings.addObject().put("kind", Choice.word(o.kind()));
            put(opening, "left", o.left());
            put(opening, "bottom", o.bottom());
            put(opening, "width", o.width());
            put(opening, "height", o.height());
        }
        return "side";
    }

    private static void edge(ObjectNode node, Side.RoofEdge e) {
        node.put("id", e.id()).put("kind", Choice.word(e.kind()));
        put(node, "left", e.left());
        put(node, "length", e.length());
        put(node, "height", e.height());
        put(node, "overhang", e.overhang());
        put(node, "peak", e.peak());
        put(node, "projects", e.projects());
        put(node, "planDepth", e.planDepth());
        put(node, "pitch", e.pitch());
        e.gutter().ifPresent(g -> {
            ObjectNode gutter = node.putObject("gutter").put("shape", Choice.word(g.shape()));
            put(gutter, "size", g.size());
            put(gutter, "depth", g.depth());
            put(gutter, "fall", g.fall());
            ArrayNode downspouts = gutter.putArray("downspouts");
            for (Side.Downspout d : g.downspouts()) {
                ObjectNode downspout = downspouts.addObject();
                put(downspout, "left", d.left());
                put(downspout, "size", d.size());
                put(downspout, "size2", d.size2());
                downspout.put("empties", Choice.word(d.empties()));
                put(downspout, "carriesTo", d.carriesTo());
            }
        });
    }

    private static String member(ObjectNode says, Member m) {
        says.put("id", m.id()).put("side", m.side()).put("kind", Choice.word(m.kind())).put("title", m.title()).put("role", Choice.word(m.role()))
                .put("species", m.species()).put("run", Choice.word(m.run()));
        put(says, "width", m.width());
        put(says, "depth", m.depth());
        put(says, "length", m.length());
        put(says, "left", m.left());
        put(says, "above", m.above());
        put(says, "slant", m.slant());
        says.put("startEnd", Choice.word(m.startEnd())).put("farEnd", Choice.word(m.farEnd())).put("coat", Choice.word(m.coat()))
                .put("contact", Choice.word(m.contact()));
        return "member";
    }

    private static void spot(ObjectNode node, Spot spot) {
        node.put("member", spot.member()).put("face", Choice.word(spot.face()));
        put(node, "along", spot.along());
        put(node, "across", spot.across());
    }

    private static String probe(ObjectNode says, ProbeReading p) {
        spot(says, p.spot());
        put(says, "depth", p.depth());
        put(says, "reach", p.reach());
        if (p.ranOut() != p.depth().own() >= p.reach().own() - 1e-6) says.put("ranOut", p.ranOut());
        return "probe";
    }

    private static String moisture(ObjectNode says, MoistureReading m) {
        spot(says, m.spot());
        put(says, "reading", m.reading());
        put(says, "wood", m.wood());
        put(says, "pins", m.pins());
        return "moisture";
    }

    private static String sighting(ObjectNode says, Sighting s) {
        says.put("sign", Choice.word(s.sign())).put("seen", s.seen()).put("side", s.side());
        s.member().ifPresent(member -> says.put("member", member));
        put(says, "left", s.left());
        put(says, "above", s.above());
        if (!s.words().isEmpty()) says.put("words", s.words());
        return "sighting";
    }

    private static String checks(ObjectNode says, OpenChecks c) {
        spot(says, c.spot());
        says.put("count", c.count());
        put(says, "length", c.length());
        put(says, "width", c.width());
        put(says, "depth", c.depth());
        return "checks";
    }

    private static String profile(ObjectNode says, Profile p) {
        says.put("member", p.member()).put("title", p.title());
        ArrayNode offsets = says.putArray("offsets");
        for (Profile.Offset o : p.offsets()) {
            ObjectNode offset = offsets.addObject();
            put(offset, "across", o.across());
            put(offset, "out", o.out());
        }
        return "profile";
    }

    private static String photo(ObjectNode says, Photo p) {
        says.put("file", p.file()).put("side", p.side());
        p.pin().ifPresent(pin -> spot(says.putObject("pin"), pin));
        says.put("caption", p.caption());
        return "photo";
    }

    private static String workDone(ObjectNode says, WorkDone w) {
        says.put("done", Choice.word(w.done())).put("on", w.on().toString()).put("side", w.side());
        w.member().ifPresent(member -> says.put("member", member));
        put(says, "from", w.from());
        put(says, "to", w.to());
        w.against().ifPresent(source -> says.put("against", source));
        if (!w.place().isEmpty()) says.put("place", w.place());
        w.step().ifPresent(step -> says.put("step", step));
        w.coat().ifPresent(c -> {
            ObjectNode coat = says.putObject("coat").put("film", Choice.word(c.film())).put("primer", c.primer()).put("coats", c.coats()).put("backs", c.backs()).put("ends", c.ends());
            put(coat, "moisture", c.moisture());
            put(coat, "air", c.air());
            put(coat, "humidity", c.humidity());
        });
        w.hours().ifPresent(hours -> says.put("hours", hours));
        w.cost().ifPresent(cost -> says.put("cost", cost));
        if (!w.words().isEmpty()) says.put("words", w.words());
        return "work-done";
    }

    private static String decision(ObjectNode says, Decision d) {
        switch (d.about()) {
            case Decision.About.Wood(var member, var along) -> put(says.put("member", member), "along", along);
            case Decision.About.Water(var source, var side, var place) -> {
                says.put("source", source).put("side", side);
                if (!place.isEmpty()) says.put("place", place);
            }
        }
        says.put("verdict", Choice.word(d.verdict())).put("taken", d.taken()).put("by", Choice.word(d.by()));
        if (!d.because().isEmpty()) says.put("because", d.because());
        return "decision";
    }

    private static void put(ObjectNode node, String field, Quantity value) { node.put(field, value.text()); }

    private static void put(ObjectNode node, String field, Optional<Quantity> value) { value.ifPresent(v -> put(node, field, v)); }
}
