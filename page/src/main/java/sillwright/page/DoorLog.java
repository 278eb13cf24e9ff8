package sillwright.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import io.javalin.http.Context;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/// What happens at the door, what is refused there and what fails, a line each: beside the book where the server is open to the
/// network, on standard error where it is not.
///
/// A line is one JSON object in printable ASCII, whatever a request says. It holds no passphrase, code, token, body or query.
final class DoorLog {
    /// Refused for who asks, from where or how often, rather than for what was asked.
    private static final Set<Integer> AT_THE_DOOR = Set.of(401, 403, 413, 415, 421, 429);
    /// Own choices: a guesser fills neither the disk nor the eyes of who reads, and what went before stays to be read.
    private static final int OF_ONE = 10, OF_ALL = 300, LONGEST = 200, FRAMES = 12;
    static final int LARGEST = 4 << 20;
    private static final JsonMapper ASCII = JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

    private final Optional<Path> place;
    private final Consumer<String> aloud;
    private final InstantSource clock;
    private final Map<String, Integer> times = new HashMap<>();
    private long minute;
    private int all, untold;

    private DoorLog(Optional<Path> place, Consumer<String> aloud, InstantSource clock) {
        this.place = place;
        this.aloud = aloud;
        this.clock = clock;
    }

    static DoorLog at(Path place, InstantSource clock) { return new DoorLog(Optional.of(place), System.err::println, clock); }

    static DoorLog aloud(Consumer<String> aloud) { return new DoorLog(Optional.empty(), aloud, InstantSource.system()); }

    Optional<Path> place() { return place; }

    /// What was done at the door, with pairs of a name and what it was.
    void told(String what, Context ctx, String... pairs) {
        ObjectNode line = line(what).put("from", ctx.ip());
        for (int i = 0; i + 1 < pairs.length; i += 2) line.put(pairs[i], cut(pairs[i + 1]));
        write(line);
    }

    void told(String what) { write(line(what)); }

    /// What a body held is not repeated: somebody may have put a passphrase where none belongs.
    void refused(Context ctx, int status, Refused refused) {
        boolean door = AT_THE_DOOR.contains(status);
        if (!door && (status != 400 || place.isEmpty())) return;
        ObjectNode line = asked(line("refused"), ctx, status);
        if (door) line.put("why", cut((refused.where() + " " + refused.what(Units.US)).strip()));
        some(line, "refused " + status + " " + ctx.ip());
    }

    /// What went wrong by no fault of the visitor's. Where in the program, and not in which words: those may hold what was being worked on.
    /// What a store says of itself is another thing.
    void failed(Context ctx, int status, Throwable thrown) {
        ObjectNode line = asked(line("failed"), ctx, status);
        if (thrown instanceof Refused refused) line.put("why", cut(refused.line(Units.US)));
        some(thrown(line, thrown), "failed " + thrown.getClass());
    }

    void failed(Throwable thrown) { some(thrown(line("failed"), thrown), "failed " + thrown.getClass()); }

    private static ObjectNode thrown(ObjectNode line, Throwable thrown) {
        Set<Throwable> seen = new HashSet<>();
        for (Throwable at = thrown; at != null && seen.add(at); at = at.getCause()) {
            List<String> frames = new ArrayList<>();
            for (StackTraceElement frame : at.getStackTrace()) if (frames.size() < FRAMES) frames.add(frame.getClassName() + "." + frame.getMethodName() + ":" + frame.getLineNumber());
            ObjectNode one = line.withArray("thrown").addObject().put("class", at.getClass().getName());
            frames.forEach(one.putArray("at")::add);
        }
        return line;
    }

    private ObjectNode line(String what) { return ASCII.createObjectNode().put("at", clock.instant().toString()).put("what", what); }

    private static ObjectNode asked(ObjectNode line, Context ctx, int status) {
        Optional.ofNullable(AccessApi.guest(ctx)).ifPresent(guest -> line.put("who", cut(guest.name())).put("role", guest.role().word()));
        return line.put("from", ctx.ip()).put("method", cut(ctx.method().name())).put("path", cut(ctx.path())).put("status", status);
    }

    private static String cut(String text) { return (text.length() > LONGEST ? text.substring(0, LONGEST) + "..." : text).replace('\u007f', '?'); }

    /// Some of a kind in a minute; how many more there were is told when the minute is over.
    private synchronized void some(ObjectNode line, String kind) {
        long now = clock.millis() / 60_000;
        if (now != minute) {
            if (untold > 0) write(line("more of the same").put("times", untold));
            times.clear();
            all = untold = 0;
            minute = now;
        }
        if (all >= OF_ALL || times.merge(kind, 1, Integer::sum) > OF_ONE) untold++;
        else {
            all++;
            write(line);
        }
    }

    private synchronized void write(ObjectNode line) {
        String text = ASCII.writeValueAsString(line);
        if (place.isEmpty()) {
            aloud.accept(text);
            return;
        }
        Path file = place.get();
        try {
            if (Files.exists(file) && Files.size(file) > LARGEST) Files.move(file, file.resolveSibling(file.getFileName() + ".1"), StandardCopyOption.REPLACE_EXISTING);
            if (!Files.exists(file) && file.getFileSystem().supportedFileAttributeViews().contains("posix")) Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            Files.writeString(file, text + "\n", StandardCharsets.US_ASCII, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            // A disk that is full keeps nobody out who may come in, and lets nobody in who may not.
            aloud.accept(text);
        }
    }
}
