package sillwright.store;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Refused;
import sillwright.walk.Body;
import sillwright.walk.Entry;
import sillwright.walk.Fault;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/// What a phone and a book say to each other: entries exactly as the exchange file has them, some at a time.
///
/// To send an entry again changes nothing. An answer is given only when all that it acknowledges is durable.
public final class Sync {
    /// The most entries that are taken at a time. This program's own choice.
    public static final int MOST = 1_000;
    private static final JsonMapper JSON = JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

    private Sync() {}

    /// What became of one entry that was sent.
    public enum Fate {
        /// It is in the book now.
        TAKEN,
        /// It was there already, word for word.
        KNOWN,
        /// It could not be read: it is set aside as it came, and the sender should mend it.
        REFUSED
    }

    /// @param id     as sent; empty where none could be read
    /// @param faults why it was refused, every one; or what to know of one that was taken: another entry has its id
    public record Receipt(String id, Fate fate, List<Fault> faults) {
        public Receipt { faults = List.copyOf(faults); }
    }

    /// One entry as the exchange file writes it.
    public static ObjectNode node(Entry entry) { return EntryWriter.write(entry); }

    /// What an entry would say, from its `kind` and `says` as the exchange file writes them.
    ///
    /// @throws Refused naming every field that is wrong
    public static Body body(JsonNode kindAndSays) {
        ObjectNode entry = JSON.createObjectNode().put("id", "new").put("at", "2000-01-01T00:00:00Z");
        for (String field : List.of("kind", "says")) if (kindAndSays.has(field)) entry.set(field, kindAndSays.get(field));
        try {
            return EntryReader.read(entry).body();
        } catch (Fields.Wrongs wrongs) {
            throw new Refused(String.join(", ", wrongs.all().stream().map(Fields.Wrong::field).distinct().toList()), String.join("; ", wrongs.all().stream().map(Fields.Wrong::what).toList()),
                    String.join("; ", wrongs.all().stream().map(Fields.Wrong::mend).distinct().toList()));
        }
    }

    /// The `kind` and `says` that would write a body down.
    public static ObjectNode node(Body body) {
        ObjectNode entry = EntryWriter.write(new Entry("new", new Entry.Stamp(0, 0), "", "", body));
        return JSON.createObjectNode().<ObjectNode>set("kind", entry.get("kind")).<ObjectNode>set("says", entry.get("says"));
    }

    /// Keeps what was sent; when this returns, every entry that it does not refuse is durable.
    ///
    /// @param sent a JSON array of entries
    /// @return one receipt for each, in the order sent
    /// @throws Refused when the building's name will not do, this is no array, or it holds more than [#MOST]; then nothing was kept
    public static List<Receipt> take(Book book, String building, String sent) {
        Book.named(building);
        JsonNode array = array(sent);
        Receipt[] receipts = new Receipt[array.size()];
        List<Line> lines = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        List<byte[]> asides = new ArrayList<>();
        for (int i = 0; i < receipts.length; i++) {
            JsonNode one = array.get(i);
            try {
                lines.add(Line.of(building, EntryReader.read(one)));
                places.add(i);
            } catch (Fields.Wrongs wrongs) {
                String at = "entry " + (i + 1);
                receipts[i] = refused(one, wrongs.all().stream().map(wrong -> new Fault("", at, wrong.field(), wrong.what(), wrong.mend(), true)).toList());
            } catch (Refused refused) {
                receipts[i] = refused(one, List.of(Fault.of("", "entry " + (i + 1), refused)));
            }
            if (receipts[i] != null && one.isObject()) asides.add(SurveyFile.paired(one.toString()).getBytes(StandardCharsets.UTF_8));
        }
        List<Ledger.Fate> fates = book.put(lines, ledger -> {
            for (byte[] aside : asides) ledger.setAside(building, aside, book.nowMs());
        });
        for (int i = 0; i < fates.size(); i++) receipts[places.get(i)] = kept(lines.get(i).id(), fates.get(i));
        return List.of(receipts);
    }

    private static Receipt refused(JsonNode one, List<Fault> faults) {
        return new Receipt(Optional.ofNullable(one.get("id")).filter(JsonNode::isString).map(JsonNode::stringValue).orElse(""), Fate.REFUSED, faults);
    }

    private static Receipt kept(String id, Ledger.Fate fate) {
        return switch (fate) {
            case FRESH -> new Receipt(id, Fate.TAKEN, List.of());
            case REPEATED -> new Receipt(id, Fate.KNOWN, List.of());
            case CLASHING -> new Receipt(id, Fate.TAKEN, List.of(new Fault("", "entry " + id, "id", "another entry in the book has this id and says something else; both are kept", "give every entry an id of its own", false)));
        };
    }

    private static JsonNode array(String sent) {
        JsonNode array;
        try {
            array = JSON.readTree(sent);
        } catch (JacksonException broken) {
            throw new Refused("body", "the JSON is broken: {}", "send a JSON array of entries", String.valueOf(broken.getOriginalMessage()));
        }
        if (!array.isArray()) throw new Refused("body", "is not a list of entries", "send [ { \"id\": ..., \"at\": ..., \"kind\": ..., \"says\": { ... } }, ... ]");
        if (array.size() > MOST) throw new Refused("body", "holds {} entries, where {} are taken at a time", "send them in parts", array.size(), MOST);
        return array;
    }
}
