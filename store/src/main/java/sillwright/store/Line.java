package sillwright.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

import sillwright.measure.Refused;
import sillwright.walk.Entry;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.databind.json.JsonMapper;

/// One entry as a database holds it: what it said, word for word, and a digest that shows whether it still says so.
///
/// @param place    the order of arrival; 0 for one not yet kept
/// @param building whose book it is in
/// @param digest   SHA-256 of `said`, in hex
/// @param said     the entry as one line of JSON, in ASCII, so that no server's encoding can change it
record Line(long place, String building, String id, String digest, Entry.Stamp stamp, String device, String said) {
    /// Longer names are nobody's, and would not go into an index.
    private static final int LONGEST_NAME = 100;
    private static final JsonMapper JSON = JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

    /// @throws Refused when the entry's id or device is not a name that can be looked up
    static Line of(String building, Entry entry) {
        name("id", entry.id());
        if (!entry.device().isEmpty()) name("device", entry.device());
        String said = JSON.writeValueAsString(EntryWriter.write(entry));
        return new Line(0, building, entry.id(), digest(said.getBytes(StandardCharsets.US_ASCII)), entry.stamp(), entry.device(), said);
    }

    private static void name(String field, String name) {
        if (name.length() > LONGEST_NAME || name.chars().anyMatch(c -> Character.isISOControl(c) || Character.isSurrogate((char) c)))
            throw new Refused(field, "is longer than {} letters, or holds a letter that cannot be printed", "use a UUID of version 7 for an id, and a short name for a device", LONGEST_NAME);
    }

    /// @throws Fields.Wrongs with every fault, where this cannot be read as an entry
    Entry entry() throws Fields.Wrongs {
        try {
            return EntryReader.read(JSON.readTree(said));
        } catch (JacksonException broken) {
            throw new Fields.Wrongs(List.of(new Fields.Wrong("", "the JSON is broken: " + broken.getOriginalMessage(), "restore it from a backup or from the phone that sent it")));
        }
    }

    /// True where `said` is still what was kept.
    boolean unharmed() { return unharmed(digest, said); }

    static boolean unharmed(String digest, String said) { return digest.equals(digest(said.getBytes(StandardCharsets.UTF_8))); }

    /// SHA-256 (FIPS 180-4), 64 hex digits in lower case.
    static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
