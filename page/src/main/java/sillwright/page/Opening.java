package sillwright.page;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import sillwright.measure.Refused;

/// Where the server listens, and who is let in.
///
/// @param port        0 for any that is free
/// @param certificate shown to the network; empty on this machine alone, where nothing leaves it
/// @param names       that a browser may call it by
/// @param log         what is told of who came to the door
public record Opening(int port, Optional<Certificate> certificate, Set<String> names, Access access, DoorLog log) {
    public Opening { names = Set.copyOf(names); }

    /// On this machine alone, without a door.
    public static Opening here(int port) { return new Opening(port, Optional.empty(), Set.of("127.0.0.1", "localhost", "[::1]"), Access.none(), DoorLog.aloud(System.err::println)); }

    /// To the network, behind a passphrase and TLS; what guards the door is kept beside the book.
    ///
    /// @param beside     the book's file, or a folder-and-name for a database's
    /// @param passphrase a new one, or empty for the one that was set before
    /// @param own        a certificate of one's own, or empty to have one made
    /// @param more       further names that the machine goes by
    public static Opening network(int port, Path beside, Optional<String> passphrase, Optional<Path> own, String secret, List<String> more) {
        List<String> names = new ArrayList<>(Certificate.machineNames());
        for (String one : more) {
            if (!one.matches("[A-Za-z0-9.-]{1,253}")) throw new Refused("--name", "'{}' is not the name of a machine", "write it as browsers do, such as office.local", one);
            names.add(one);
        }
        AccessFile file = AccessFile.at(beside.resolveSibling(beside.getFileName() + ".access.json"), passphrase);
        Certificate certificate = own.map(place -> Certificate.own(place, secret)).orElseGet(() -> Certificate.made(beside.resolveSibling(beside.getFileName() + ".tls.p12"), names));
        DoorLog log = DoorLog.at(beside.resolveSibling(beside.getFileName() + ".door.log"), InstantSource.system());
        log.told(passphrase.isPresent() ? "begun, with a new passphrase" : "begun");
        return new Opening(port, Optional.of(certificate), new LinkedHashSet<>(names), Access.of(file, InstantSource.system()), log);
    }

    boolean open() { return certificate.isPresent(); }
}
