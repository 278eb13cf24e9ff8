package sillwright.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.UUID;

import sillwright.measure.Refused;

/// A file that is whole or not there: written beside its place, forced to the disk, then moved.
final class WholeFile {
    private WholeFile() {}

    interface Writing {
        /// @param part a name that no file has yet
        void into(Path part) throws IOException;
    }

    /// @throws Refused when the place cannot be written
    static void write(Path place, Writing writing) {
        Path folder = place.toAbsolutePath().getParent(), part = folder.resolve("." + place.getFileName() + "-" + UUID.randomUUID() + ".part");
        try {
            Files.createDirectories(folder);
            writing.into(part);
            force(part);
            Files.move(part, place, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            // A folder cannot be opened for this on Windows.
            if (!System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows")) forceFolder(folder);
        } catch (IOException e) {
            throw new Refused(place.toString(), "cannot be written: {}", "name a place that may be written and has room", reason(e));
        } finally {
            remove(part);
        }
    }

    private static String reason(IOException e) {
        return e instanceof FileSystemException of && of.getReason() != null ? of.getReason() : e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ", " + e.getMessage());
    }

    private static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) { channel.force(true); }
    }

    private static void forceFolder(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) { channel.force(true); }
    }

    private static void remove(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            throw new Refused(part.toString(), "an unfinished file cannot be removed: {}", "remove it by hand", reason(e));
        }
    }
}
