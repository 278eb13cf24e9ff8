package sillwright.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import sillwright.measure.Refused;
import sillwright.measure.Words;
import sillwright.walk.Entry;
import sillwright.walk.Fault;
import sillwright.walk.FieldBook;
import sillwright.walk.Survey;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// The exchange file: `*.survey.json`, one JSON document that holds a field book. Its schema is `survey-1.schema.json`.
///
/// An entry that cannot be read is set aside whole and named; every other entry is kept, those behind a torn or broken
/// place in the file too.
public final class SurveyFile {
    /// The largest file that is read, in bytes: a book of 20,000 readings has about 6 million.
    public static final long LARGEST = 64_000_000;

    static final String FORMAT = "sillwright-survey";
    static final int VERSION = 1;
    private static final JsonMapper JSON = JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
    private static final Pattern NEXT_ENTRY = Pattern.compile("\\{\\s*\"id\"\\s*:");

    /// What a file held.
    ///
    /// @param entries  every entry that could be read
    /// @param faults   every fault found while reading
    /// @param setAside the text of every entry that could not be read
    public record Held(String file, List<Entry> entries, List<Fault> faults, List<String> setAside) {
        public Held {
            entries = List.copyOf(entries);
            faults = List.copyOf(faults);
            setAside = List.copyOf(setAside);
        }

        public Survey fold() { return FieldBook.fold(file, entries, faults); }
    }

    private final String name;
    private final String text;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private final List<String> setAside = new ArrayList<>();
    private int count;

    private SurveyFile(String name, String text) {
        this.name = name;
        this.text = text;
    }

    /// @throws Refused when there is no such file, it is too large, is not UTF-8 text, or holds no book at all
    public static Held read(Path path) {
        String name = path.getFileName() == null ? path.toString() : path.getFileName().toString();
        try {
            if (!Files.exists(path)) throw new Refused(path.toString(), "there is no such file", "name a *.survey.json file; examples/ has four");
            if (Files.isDirectory(path)) throw new Refused(path.toString(), "this is a folder", "name a *.survey.json file in it");
            long size = Files.size(path);
            if (size > LARGEST)
                throw new Refused(name, "the file has {} MB, where a survey has at most {} MB", "keep photos as files beside the survey, and one building to a file",
                        Words.number(size / 1e6, 0), LARGEST / 1_000_000);
            return read(name, decode(name, Files.readAllBytes(path)));
        } catch (IOException e) {
            throw new Refused(path.toString(), "the file cannot be read: {}", "check that it may be read", String.valueOf(e.getMessage()));
        }
    }

    static String decode(String name, byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException _) {
            throw new Refused(name, "the file is not UTF-8 text", "save it as UTF-8; a photo or a zip is not a survey");
        }
    }

    /// @param name what faults call the file
    public static Held read(String name, String text) {
        SurveyFile file = new SurveyFile(name, text);
        file.document();
        if (file.entries.isEmpty() && file.setAside.isEmpty()) {
            if (file.faults.isEmpty()) throw new Refused(name, "the survey holds no entry", "record the building, its sides and its members first");
            throw new Refused(name, file.faults.stream().map(f -> f.field().isEmpty() ? f.what() : f.field() + " " + f.what()).distinct().reduce((a, b) -> a + "; and " + b).orElseThrow(),
                    file.faults.getFirst().mend());
        }
        return new Held(name, file.entries, file.faults, file.setAside);
    }

    private void document() {
        try (JsonParser parser = JSON.createParser(text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                fault("", "", "the file does not open with {", "a survey is one JSON object: { \"format\": \"" + FORMAT + "\", \"version\": 1, \"entries\": [ ... ] }");
                return;
            }
            boolean format = false;
            while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
                String field = parser.currentName();
                JsonToken value = parser.nextToken();
                switch (field) {
                    case "format" -> {
                        format = true;
                        if (!FORMAT.equals(parser.getString())) fault("", "format", "is '" + clip(parser.getString()) + "'", "write \"format\": \"" + FORMAT + "\"");
                    }
                    case "version" -> {
                        if (value != JsonToken.VALUE_NUMBER_INT || parser.getLongValue() != VERSION)
                            fault("", "version", "is " + clip(parser.getString()) + ", where this program reads version " + VERSION, "write \"version\": 1, or read it with a newer program");
                    }
                    case "note" -> parser.skipChildren();
                    case "entries" -> entries(parser, value);
                    default -> {
                        fault("", field, "is not a field of a survey", "take it out; a survey has format, version, note and entries");
                        parser.skipChildren();
                    }
                }
            }
            if (!format) fault("", "format", "is missing", "add \"format\": \"" + FORMAT + "\"");
        } catch (JacksonException broken) {
            salvage(broken);
        }
    }

    private void entries(JsonParser parser, JsonToken value) {
        if (value != JsonToken.START_ARRAY) {
            fault("", "entries", "is not a list", "write \"entries\": [ ... ]");
            parser.skipChildren();
            return;
        }
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            TokenStreamLocation from = parser.currentTokenLocation();
            JsonNode node = parser.readValueAsTree();
            take(node, from.getLineNr());
        }
    }

    private void take(JsonNode node, int line) {
        count++;
        try {
            entries.add(EntryReader.read(node));
        } catch (Fields.Wrongs wrongs) {
            String where = "entry " + count + " (" + (node.path("id").isString() ? clip(node.path("id").stringValue()) + ", " : "") + "line " + line + ")";
            for (Fields.Wrong wrong : wrongs.all()) fault(where, wrong.field(), wrong.what(), wrong.mend());
            setAside.add(node.toString());
        }
    }

    /// The file is broken at one place: names it, then looks behind it for entries that are whole.
    private void salvage(JacksonException broken) {
        TokenStreamLocation at = broken.getLocation();
        boolean torn = at.getCharOffset() < 0 || text.substring((int) Math.min(text.length(), at.getCharOffset())).isBlank();
        fault(torn ? "behind entry " + count : "entry " + (count + 1) + " (line " + at.getLineNr() + ", column " + at.getColumnNr() + ")", "",
                torn ? "the file ends in the middle; what stands before was read" : "the JSON is broken here: " + clip(broken.getOriginalMessage()),
                torn ? "send the file again whole, or close it with ] }" : "mend the text here; the entries before and behind were read");
        // The broken entry opened before the place where the parser gave up: begin behind the last one that was read.
        int from = begun(count);
        Matcher next = NEXT_ENTRY.matcher(text);
        int at2 = from;
        boolean first = true;
        while (next.find(at2)) {
            int start = next.start();
            try (JsonParser parser = JSON.createParser(text.substring(start))) {
                parser.nextToken();
                JsonNode node = parser.readValueAsTree();
                if (node.has("kind") || node.has("at")) take(node, line(start));
                at2 = start + (int) parser.currentLocation().getCharOffset();
            } catch (JacksonException _) {
                int end = next.find(start + 1) ? next.start() : text.length();
                setAside.add(text.substring(start, end).strip());
                if (!first) fault("line " + line(start), "", "an entry is broken here", "mend the text here");
                count++;
                at2 = start + 1;
            }
            first = false;
        }
    }

    /// Where the entry after the first `read` ones begins in the text.
    private int begun(int read) {
        if (read == 0) return 0;
        int depth = 0, seen = 0;
        boolean quoted = false;
        int from = Math.max(0, text.indexOf('[', Math.max(0, text.indexOf("\"entries\""))));
        for (int i = from + 1; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted) {
                if (c == '\\') i++;
                else if (c == '"') quoted = false;
            } else if (c == '"') quoted = true;
            else if (c == '{' || c == '[') depth++;
            else if (c == '}' || c == ']') {
                depth--;
                if (depth == 0 && ++seen == read) return i + 1;
            }
        }
        return text.length();
    }

    private int line(int offset) {
        int line = 1;
        for (int i = 0; i < offset; i++) if (text.charAt(i) == '\n') line++;
        return line;
    }

    private static String clip(String text) { return text.length() <= 60 ? text : text.substring(0, 57) + "..."; }

    private void fault(String entry, String field, String what, String mend) { faults.add(new Fault(name, entry, field, what, mend, true)); }

    /// Writes a book, one entry to a line, so that two versions can be compared. The file is whole or not there.
    public static void write(Path path, String note, List<Entry> entries) {
        WholeFile.write(path, part -> Files.writeString(part, text(note, entries)));
    }

    /// The text of the exchange file; entries in the order of the fold.
    public static String text(String note, List<Entry> entries) {
        List<Entry> sorted = new ArrayList<>(entries);
        sorted.sort(Entry.ORDER.thenComparing(Comparator.comparing(entry -> entry.body().toString())));
        StringBuilder text = new StringBuilder("{\n\"format\": \"" + FORMAT + "\",\n\"version\": " + VERSION + ",\n\"note\": ");
        text.append(JSON.writeValueAsString(note)).append(",\n\"entries\": [\n");
        for (int i = 0; i < sorted.size(); i++)
            text.append(JSON.writeValueAsString(EntryWriter.write(sorted.get(i)))).append(i + 1 < sorted.size() ? ",\n" : "\n");
        return paired(text.append("]\n}\n").toString());
    }

    /// JSON whose half pairs of UTF-16 are written as escapes: UTF-8 has no letter for them, and would lose them.
    static String paired(String json) {
        StringBuilder paired = null;
        for (int i = 0; i < json.length(); i++) {
            char c = json.charAt(i);
            boolean pair = Character.isHighSurrogate(c) && i + 1 < json.length() && Character.isLowSurrogate(json.charAt(i + 1));
            if (pair) {
                if (paired != null) paired.append(c).append(json.charAt(i + 1));
                i++;
            } else if (Character.isSurrogate(c)) {
                if (paired == null) paired = new StringBuilder(json.substring(0, i));
                paired.append("\\u").append(HexFormat.of().toHexDigits(c));
            } else if (paired != null) paired.append(c);
        }
        return paired == null ? json : paired.toString();
    }
}
