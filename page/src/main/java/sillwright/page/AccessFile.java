package sillwright.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import sillwright.measure.Refused;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// Who may come to one book, kept beside it: the passphrase as Argon2id left it, and the devices that were let in. No
/// token and no passphrase can be read from it.
final class AccessFile {
    /// @param digest SHA-256 of the token that the device carries
    record Device(String id, String name, Role role, String digest, long sinceMs) {}

    private final Path place;
    private String passphrase;
    private final List<Device> devices = new ArrayList<>();

    private AccessFile(Path place, String passphrase) {
        this.place = place;
        this.passphrase = passphrase;
    }

    /// Opens what was kept, and keeps a new passphrase where one is told.
    static AccessFile at(Path place, java.util.Optional<String> told) {
        AccessFile file = Files.exists(place) ? read(place) : new AccessFile(place, "");
        told.ifPresent(words -> {
            file.passphrase = Passphrase.kept(words, place.getFileName().toString());
            file.write();
        });
        if (file.passphrase.isEmpty()) throw new Refused("--open", "opens the book to the network, and no passphrase is set", "put one into a file and name it: --passphrase-file FILE");
        return file;
    }

    private static AccessFile read(Path place) {
        try {
            JsonNode root = Wire.JSON.readTree(Files.readString(place));
            AccessFile file = new AccessFile(place, root.path("passphrase").asString(""));
            for (JsonNode one : root.path("devices"))
                file.devices.add(new Device(one.path("id").asString(""), one.path("name").asString(""), Role.valueOf(one.path("role").asString("").toUpperCase(Locale.ROOT)), one.path("digest").asString(""),
                        one.path("sinceMs").asLong(0)));
            return file;
        } catch (IOException | JacksonException | IllegalArgumentException e) {
            throw new Refused(place.toString(), "cannot be read: {}", "mend it, or remove it and let the devices in anew", String.valueOf(e.getMessage()));
        }
    }

    String passphrase() { return passphrase; }

    List<Device> devices() { return List.copyOf(devices); }

    void add(Device device) {
        devices.add(device);
        write();
    }

    boolean remove(String id) {
        boolean any = devices.removeIf(device -> device.id.equals(id));
        if (any) write();
        return any;
    }

    void removeAll() {
        devices.clear();
        write();
    }

    private void write() {
        ObjectNode root = Wire.object().put("passphrase", passphrase);
        ArrayNode all = root.putArray("devices");
        for (Device one : devices) all.addObject().put("id", one.id).put("name", one.name).put("role", one.role.word()).put("digest", one.digest).put("sinceMs", one.sinceMs);
        try {
            Path part = place.resolveSibling(place.getFileName() + ".part");
            Files.deleteIfExists(part);
            if (place.getFileSystem().supportedFileAttributeViews().contains("posix")) Files.createFile(part, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            Files.writeString(part, root.toString());
            Files.move(part, place, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            Refused refused = new Refused(place.toString(), "cannot be written: {}", "name a book in a folder that may be written", String.valueOf(e.getMessage()));
            refused.initCause(e);
            throw refused;
        }
    }
}
