package sillwright.store;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.walk.Body;
import sillwright.walk.Building;
import sillwright.walk.Choice;
import sillwright.walk.Decision;
import sillwright.walk.Entry;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.MoistureReading;
import sillwright.walk.OpenChecks;
import sillwright.walk.Photo;
import sillwright.walk.ProbeReading;
import sillwright.walk.Profile;
import sillwright.walk.Side;
import sillwright.walk.Sighting;
import sillwright.walk.Sign;
import sillwright.walk.Spot;
import sillwright.walk.WorkDone;
import sillwright.water.Source;
import sillwright.water.Water;
import sillwright.work.Treatment;
import tools.jackson.databind.JsonNode;

/// One entry out of its JSON object.
final class EntryReader {
    private EntryReader() {}

    /// @throws Fields.Wrongs with every fault of the entry
    static Entry read(JsonNode node) throws Fields.Wrongs {
        Fields fields = new Fields(node, "", new ArrayList<>());
        if (!node.isObject()) {
            fields.wrong("", "an entry is an object", "write { \"id\": ..., \"at\": ..., \"kind\": ..., \"says\": { ... } }");
            throw new Fields.Wrongs(fields.wrongs());
        }
        Optional<Entry> entry = fields.make(EntryReader::entry);
        if (entry.isEmpty()) throw new Fields.Wrongs(fields.wrongs());
        return entry.get();
    }

    private static Entry entry(Fields f) {
        String id = f.text("id", "0196f0c2-5a00-7000-8000-000000000001");
        Entry.Stamp stamp = new Entry.Stamp(time(f, f.text("at", "2026-04-18T09:30:00Z")), f.wholeOr("tick", 0));
        String device = f.textOr("device", "");
        String author = f.textOr("author", "");
        Body body = body(f);
        if (body == null) throw new Refused("says", "cannot be read", "");
        return new Entry(id, stamp, device, author, body);
    }

    private static long time(Fields f, String text) {
        try {
            return Instant.parse(text).toEpochMilli();
        } catch (DateTimeException _) {
            if (!"x".equals(text)) f.wrong("at", "'" + text + "' is not a time", "write it as 2026-04-18T09:30:00Z");
            return 0;
        }
    }

    /// The body of an entry, or null with its faults noted.
    private static Body body(Fields f) {
        String kind = f.text("kind", "probe");
        Fields says = f.says();
        if (says == null) return null;
        Optional<? extends Body> body = switch (kind) {
            case "building" -> says.make(EntryReader::building);
            case "side" -> says.make(EntryReader::side);
            case "member" -> says.make(EntryReader::member);
            case "probe" -> says.make(EntryReader::probe);
            case "moisture" -> says.make(EntryReader::moisture);
            case "sighting" -> says.make(EntryReader::sighting);
            case "photo" -> says.make(EntryReader::photo);
            case "work-done" -> says.make(EntryReader::workDone);
            case "checks" -> says.make(EntryReader::checks);
            case "profile" -> says.make(EntryReader::profile);
            case "decision" -> says.make(EntryReader::decision);
            case "amend" -> says.make(EntryReader::amended);
            case "strike" -> says.make(s -> new Body.Struck(s.text("entry", "the id of an earlier entry"), s.textOr("because", "")));
            default -> {
                f.wrong("kind", "'" + kind + "' is not a kind of entry", "use one of building, side, member, probe, moisture, sighting, photo, work-done, checks, profile, decision, amend, strike");
                yield Optional.empty();
            }
        };
        return body.orElse(null);
    }

    private static Body.Amended amended(Fields f) {
        String target = f.text("entry", "the id of an earlier entry");
        Body instead = body(f);
        if (instead == null) throw new Refused("says", "cannot be read", "");
        return new Body.Amended(target, instead);
    }

    private static Building building(Fields f) {
        return new Building(f.text("id", "pond-lane-house"), f.text("name", "House on Pond Lane"), f.textOr("note", ""), f.whole("yearBuilt", "1888"),
                f.measureMaybe("designRain", Kind.RAIN), f.measureMaybe("groundSnow", Kind.STRESS), f.list("months", EntryReader::month));
    }

    private static Building.Month month(Fields f) {
        return new Building.Month(f.measure("meanHigh", Kind.TEMPERATURE), f.measure("meanLow", Kind.TEMPERATURE), f.measure("rain", Kind.LENGTH),
                f.number("rainDays"), f.measure("humidity", Kind.PERCENT), f.measure("wind", Kind.WIND), f.measure("snow", Kind.LENGTH));
    }

    private static Side side(Fields f) {
        return new Side(f.text("id", "south"), f.textOr("title", ""), f.measure("bearing", Kind.ANGLE), f.measure("length", Kind.LENGTH),
                f.list("edges", EntryReader::edge),
                f.object("ground", g -> new Side.Ground(g.choice("surface", Side.Surface.class), g.measureMaybe("fall", Kind.FALL), g.measureMaybe("clearance", Kind.LENGTH)))
                        .orElseGet(() -> groundNotTold(f)),
                f.measureMaybe("lotLine", Kind.LENGTH),
                f.list("openings", o -> new Side.Opening(o.choice("kind", Side.OpeningKind.class), o.measure("left", Kind.LENGTH), o.measure("bottom", Kind.LENGTH),
                        o.measure("width", Kind.LENGTH), o.measure("height", Kind.LENGTH))));
    }

    private static Side.Ground groundNotTold(Fields f) {
        f.wrong("ground", "is missing or wrong", "add \"ground\": { \"surface\": \"grass\" }");
        return new Side.Ground(Side.Surface.SOIL, Optional.empty(), Optional.empty());
    }

    private static Side.RoofEdge edge(Fields f) {
        return new Side.RoofEdge(f.textOr("id", "main"), f.choice("kind", Side.Edge.class), f.measure("left", Kind.LENGTH), f.measure("length", Kind.LENGTH),
                f.measure("height", Kind.LENGTH), f.measure("overhang", Kind.LENGTH), f.measureMaybe("peak", Kind.LENGTH), f.measureMaybe("projects", Kind.LENGTH),
                f.measureMaybe("planDepth", Kind.LENGTH), f.measureMaybe("pitch", Kind.PITCH), f.object("gutter", EntryReader::gutter));
    }

    private static Side.Gutter gutter(Fields f) {
        return new Side.Gutter(f.choice("shape", Side.GutterShape.class), f.measure("size", Kind.LENGTH), f.measureMaybe("depth", Kind.LENGTH),
                f.measureMaybe("fall", Kind.FALL),
                f.list("downspouts", d -> new Side.Downspout(d.measure("left", Kind.LENGTH), d.measure("size", Kind.LENGTH), d.measureMaybe("size2", Kind.LENGTH),
                        d.choice("empties", Side.Empties.class), d.measureMaybe("carriesTo", Kind.LENGTH))));
    }

    private static Member member(Fields f) {
        return new Member(f.text("id", "s-post-3"), f.text("side", "south"), f.choice("kind", MemberKind.class), f.textOr("title", ""),
                f.choice("role", Member.Role.class), f.text("species", "pine-eastern-white"), f.choice("run", Member.Run.class), f.measure("width", Kind.LENGTH),
                f.measure("depth", Kind.LENGTH), f.measure("length", Kind.LENGTH), f.measure("left", Kind.LENGTH), f.measure("above", Kind.LENGTH),
                f.measureMaybe("slant", Kind.ANGLE), f.choiceOr("startEnd", Member.EndGrain.class, Member.EndGrain.COVERED),
                f.choiceOr("farEnd", Member.EndGrain.class, Member.EndGrain.COVERED), f.choiceOr("coat", Member.Coat.class, Member.Coat.NOT_KNOWN),
                f.choiceOr("contact", Member.Contact.class, Member.Contact.NONE));
    }

    private static Spot spot(Fields f) {
        return new Spot(f.text("member", "s-post-3"), f.choice("face", Member.Face.class), f.measure("along", Kind.LENGTH), f.measure("across", Kind.LENGTH));
    }

    private static ProbeReading probe(Fields f) {
        Spot spot = spot(f);
        Quantity depth = f.measure("depth", Kind.LENGTH);
        Quantity reach = f.measure("reach", Kind.LENGTH);
        return new ProbeReading(spot, depth, reach, f.yesOr("ranOut", depth.own() >= reach.own() - 1e-6));
    }

    private static MoistureReading moisture(Fields f) {
        return new MoistureReading(spot(f), f.measure("reading", Kind.PERCENT), f.measureMaybe("wood", Kind.TEMPERATURE), f.measureMaybe("pins", Kind.LENGTH));
    }

    private static Sighting sighting(Fields f) {
        return new Sighting(f.choice("sign", Sign.class), f.yesOr("seen", true), f.text("side", "south"), f.textMaybe("member"),
                f.measureMaybe("left", Kind.LENGTH), f.measureMaybe("above", Kind.LENGTH), f.textOr("words", ""));
    }

    private static OpenChecks checks(Fields f) {
        return new OpenChecks(spot(f), f.whole("count", "6"), f.measure("length", Kind.LENGTH), f.measure("width", Kind.LENGTH), f.measure("depth", Kind.LENGTH));
    }

    private static Profile profile(Fields f) {
        return new Profile(f.text("member", "e-casing-1l"), f.textOr("title", ""), f.list("offsets", o -> new Profile.Offset(o.measure("across", Kind.LENGTH), o.measure("out", Kind.LENGTH))));
    }

    private static Photo photo(Fields f) {
        return new Photo(f.text("file", "photos/s-post-3.jpg"), f.text("side", "south"), f.object("pin", EntryReader::spot), f.textOr("caption", ""));
    }

    private static WorkDone workDone(Fields f) {
        return new WorkDone(f.choice("done", WorkDone.Done.class), day(f, f.text("on", "2026-06-12")), f.text("side", "south"), f.textMaybe("member"),
                f.measureMaybe("from", Kind.LENGTH), f.measureMaybe("to", Kind.LENGTH), f.choiceMaybe("against", Source.class).map(Choice::word), f.textOr("place", ""),
                f.textMaybe("step"), f.object("coat", EntryReader::coating), f.numberMaybe("hours"), f.numberMaybe("cost"), f.textOr("words", ""));
    }

    private static WorkDone.Coating coating(Fields f) {
        return new WorkDone.Coating(f.choice("film", WorkDone.Film.class), f.wholeOr("primer", 0), f.wholeOr("coats", 1), f.yesOr("backs", false), f.yesOr("ends", false),
                f.measureMaybe("moisture", Kind.PERCENT), f.measureMaybe("air", Kind.TEMPERATURE), f.measureMaybe("humidity", Kind.PERCENT));
    }

    private static Decision decision(Fields f) {
        Decision.Verdict verdict = f.choice("verdict", Decision.Verdict.class);
        Decision.By by = f.choiceOr("by", Decision.By.class, Decision.By.PRACTITIONER);
        String taken = f.text("taken", "dutchman"), because = f.textOr("because", "");
        Optional<String> member = f.textMaybe("member");
        Optional<Source> source = f.choiceMaybe("source", Source.class);
        if (member.isPresent() == source.isPresent()) f.wrong("member", member.isPresent() ? "and source are both named" : "is missing", "name a member and along, or a source and its side");
        List<String> words = source.map(Water::remedies).orElse(Treatment.WORDS);
        if (!words.contains(source.isPresent() ? taken : taken.replaceFirst("-[0-9]+$", "")))
            f.wrong("taken", "'" + taken + "' is not the word of a " + (source.isPresent() ? "remedy of " + Choice.word(source.get()) : "treatment"), "use one of " + String.join(", ", words));
        Decision.About about = source.<Decision.About>map(one -> new Decision.About.Water(Choice.word(one), f.text("side", "south"), f.textOr("place", "")))
                .orElseGet(() -> new Decision.About.Wood(member.orElse("x"), f.measure("along", Kind.LENGTH)));
        return new Decision(about, verdict, taken, by, because);
    }

    private static LocalDate day(Fields f, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException _) {
            if (!"x".equals(text)) f.wrong("on", "'" + text + "' is not a day", "write it as 2026-06-12");
            return LocalDate.of(2000, 1, 1);
        }
    }
}
