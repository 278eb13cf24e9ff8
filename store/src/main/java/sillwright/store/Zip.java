package sillwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

import sillwright.measure.Refused;

/// A zip that somebody sent. Nothing in it is ever written to a folder; names that would leave it, too many files, and
/// files that unpack to far more than they are refuse the whole of it. The sizes that a zip states are not believed: bytes are counted.
final class Zip implements AutoCloseable {
    /// All limits here are this program's own choice: a book of 20,000 readings and 1,000 photos is well within them.
    static final int MOST_FILES = 10_000;
    static final long MOST_BYTES = 4L << 30;
    private static final long SMALL = 1 << 20;
    private static final long MOST_TIMES = 100;

    private final String name;
    private final ZipFile zip;
    private long unpacked;

    Zip(Path path) {
        name = path.getFileName().toString();
        try {
            zip = new ZipFile(path.toFile());
        } catch (IOException e) {
            throw new Refused(name, "the zip cannot be opened: {}", "pack it again", String.valueOf(e.getMessage()));
        }
    }

    /// Every file in it, its name found harmless.
    List<ZipEntry> files() {
        List<? extends ZipEntry> all = zip.stream().toList();
        if (all.size() > MOST_FILES) throw new Refused(name, "the zip holds {} files, where {} are taken", "send one building to a zip", all.size(), MOST_FILES);
        Set<String> names = new HashSet<>();
        for (ZipEntry entry : all) {
            harmless(entry.getName());
            if (!names.add(entry.getName())) throw refused(entry.getName(), "stands twice in the zip", "pack it again");
        }
        return all.stream().filter(entry -> !entry.isDirectory()).<ZipEntry>map(entry -> entry).toList();
    }

    private void harmless(String file) {
        boolean leaves = file.isEmpty() || file.startsWith("/") || file.contains("\\") || file.contains(":") || file.chars().anyMatch(Character::isISOControl);
        for (String part : file.split("/", -1)) leaves |= part.equals("..") || part.equals(".");
        if (leaves || file.length() > 300) throw refused(file.length() > 60 ? file.substring(0, 57) + "..." : file, "is a name that leads out of the zip", "pack the survey and its photos folder, nothing else");
    }

    /// The bytes of one file.
    byte[] bytes(ZipEntry entry, long most) {
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] bytes = in.readNBytes((int) Math.min(most + 1, Integer.MAX_VALUE - 8));
            if (bytes.length > most) throw refused(entry.getName(), "unpacks to more than " + (most >> 20) + " MB", "send it smaller");
            if (bytes.length > SMALL && bytes.length > MOST_TIMES * Math.max(1, entry.getCompressedSize()))
                throw refused(entry.getName(), "unpacks to more than " + MOST_TIMES + " times its size", "pack it again with a common program");
            unpacked += bytes.length;
            if (unpacked > MOST_BYTES) throw new Refused(name, "the zip unpacks to more than {} GB", "send it in parts", MOST_BYTES >> 30);
            return bytes;
        } catch (ZipException e) {
            throw refused(entry.getName(), "is broken in the zip: " + e.getMessage(), "pack it again");
        } catch (IOException e) {
            throw refused(entry.getName(), "cannot be read from the zip: " + e.getMessage(), "pack it again");
        }
    }

    /// Counts from the start again: every file is read once to look at it and once to keep it.
    void again() { unpacked = 0; }

    private Refused refused(String file, String what, String mend) { return new Refused(name + ", " + file, what, mend); }

    @Override
    public void close() {
        try {
            zip.close();
        } catch (IOException e) {
            throw new Refused(name, "the zip cannot be closed: {}", "try again", String.valueOf(e.getMessage()));
        }
    }
}
