package sillwright.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Refused;

/// Who is let in where the server is open to the network. On this machine alone, everybody is the owner.
///
/// The passphrase makes an owner for a day; a code that an owner shows makes a device that stays. Only digests of what
/// devices carry are kept. What a device wrote stands in the field book, under its name.
final class Access {
    static final String COOKIE = "__Host-sillwright", HERE = "here";
    private static final long CODE_MS = 600_000, OWNER_MS = 12 * 3_600_000L, OWNER_IDLE_MS = 2 * 3_600_000L, DEVICE_MS = 180 * 86_400_000L;
    private static final String LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    /// Tries at the door in a minute, from one address and from all.
    private static final int TRIES = 10, ALL_TRIES = 40;

    /// Somebody who was let in.
    record Guest(String id, String name, Role role) {}

    private record Code(Role role, String name, long untilMs) {}

    private static final class Owner {
        final long untilMs;
        long seenMs;

        Owner(long untilMs, long seenMs) {
            this.untilMs = untilMs;
            this.seenMs = seenMs;
        }
    }

    private final Optional<AccessFile> file;
    private final InstantSource clock;
    private final SecureRandom random = new SecureRandom();
    private final Map<String, Owner> owners = new HashMap<>();
    private final Map<String, Code> codes = new HashMap<>();
    private final Map<String, List<Long>> tries = new HashMap<>();

    private Access(Optional<AccessFile> file, InstantSource clock) {
        this.file = file;
        this.clock = clock;
    }

    static Access none() { return new Access(Optional.empty(), InstantSource.system()); }

    static Access of(AccessFile file, InstantSource clock) { return new Access(Optional.of(file), clock); }

    boolean guarded() { return file.isPresent(); }

    /// Who carries this token; empty where nobody is let in by it.
    synchronized Optional<Guest> guest(Optional<String> token) {
        if (file.isEmpty()) return Optional.of(new Guest(HERE, "this machine", Role.OWNER));
        if (token.isEmpty() || token.get().length() > 100) return Optional.empty();
        String digest = digest(token.get());
        long now = clock.millis();
        Owner owner = owners.get(digest);
        if (owner != null) {
            if (owner.untilMs < now || owner.seenMs + OWNER_IDLE_MS < now) owners.remove(digest);
            else {
                owner.seenMs = now;
                return Optional.of(new Guest("owner", "owner", Role.OWNER));
            }
        }
        return file.get().devices().stream().filter(device -> device.digest().equals(digest) && device.sinceMs() + DEVICE_MS >= now).findFirst().map(device -> new Guest(device.id(), device.name(), device.role()));
    }

    /// Lets an owner in by the passphrase.
    ///
    /// @param from the address that asks
    /// @return the token to carry
    String byPassphrase(String passphrase, String from) {
        attempt(from);
        if (!Passphrase.fits(passphrase, file.orElseThrow().passphrase())) throw new Refusal(401, "passphrase", "is not right", "type it again");
        synchronized (this) {
            String token = token();
            owners.put(digest(token), new Owner(clock.millis() + OWNER_MS, clock.millis()));
            return token;
        }
    }

    /// A code that lets one device in, once, within ten minutes.
    synchronized String code(Role role, String name) {
        if (name.isBlank() || name.length() > 60) throw new Refused("name", "is empty or longer than 60 letters", "name the device, such as Anna's phone");
        if (role == Role.OWNER) throw new Refused("role", "no device is an owner", "use surveyor or reader; an owner comes by the passphrase");
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < 12; i++) code.append(i > 0 && i % 4 == 0 ? "-" : "").append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        codes.values().removeIf(one -> one.untilMs < clock.millis());
        codes.put(digest(code.toString()), new Code(role, name, clock.millis() + CODE_MS));
        return code.toString();
    }

    String byCode(String typed, String from) {
        attempt(from);
        synchronized (this) {
            Code code = codes.remove(digest(typed.strip().toUpperCase(java.util.Locale.ROOT)));
            if (code == null || code.untilMs < clock.millis()) throw new Refusal(401, "code", "is not known, or was used, or is older than ten minutes", "ask the owner for a new one");
            String token = token();
            byte[] id = new byte[6];
            random.nextBytes(id);
            file.orElseThrow().add(new AccessFile.Device(HexFormat.of().formatHex(id), code.name, code.role, digest(token), clock.millis()));
            return token;
        }
    }

    /// Whoever leaves is let in by this token no more, a device as little as an owner.
    synchronized void leave(Optional<String> token) {
        if (file.isEmpty() || token.isEmpty()) return;
        String digest = digest(token.get());
        owners.remove(digest);
        for (AccessFile.Device device : List.copyOf(file.get().devices())) if (device.digest().equals(digest)) file.get().remove(device.id());
    }

    synchronized List<AccessFile.Device> devices() { return file.map(AccessFile::devices).orElse(List.of()); }

    synchronized void shutOut(String device) {
        if (file.isEmpty() || !file.get().remove(device)) throw Refusal.notThere("device", "there is no such device", "see /api/devices for those there are");
    }

    synchronized void shutAllOut() { file.ifPresent(AccessFile::removeAll); }

    private synchronized void attempt(String from) {
        long now = clock.millis();
        tries.values().forEach(times -> times.removeIf(time -> time < now - 60_000));
        tries.values().removeIf(List::isEmpty);
        int all = tries.values().stream().mapToInt(List::size).sum();
        List<Long> own = tries.computeIfAbsent(from, _ -> new ArrayList<>());
        if (own.size() >= TRIES || all >= ALL_TRIES) throw new Refusal(429, "", "too many tries", "wait a minute");
        own.add(now);
    }

    private String token() {
        byte[] bytes = new byte[32];
        random.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    static String digest(String token) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
