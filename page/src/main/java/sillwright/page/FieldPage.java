package sillwright.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// What the field page is given besides its files: the words of the trade out of the core, and the list of all that a
/// phone keeps of the page, with a version that changes whenever one of them does.
final class FieldPage {
    /// The page's own files beneath `/field/`.
    static final List<String> FILES = List.of("app.js", "book.js", "clock.js", "depth.js", "dom.js", "elevation.js", "face.js", "field.css", "fold.js", "hatch.js",
            "icon-192.png", "icon-512.png", "icon.svg", "keep.js", "kinds.js", "manifest.webmanifest", "measure.js", "member.js", "moisture.js", "next.js", "photo.js",
            "places.js", "round.js", "side.js", "signs.js", "sync.js");
    /// What it shares with the office pages.
    private static final List<String> SHARED = List.of("/looks/paper.css", "/fonts/CharisSIL-Regular.ttf", "/fonts/CharisSIL-Bold.ttf", "/fonts/CharisSIL-Italic.ttf",
            "/fonts/routed-gothic.ttf", "/fonts/routed-gothic-narrow.ttf");

    private final StaticFiles files;
    private final byte[] words = FieldWords.json().toString().getBytes(StandardCharsets.UTF_8);

    FieldPage(StaticFiles files) { this.files = files; }

    /// Before the files, whose folder these two stand in.
    void on(RoutesConfig routes) {
        routes.get("/field/words.json", ctx -> give(ctx, "application/json", words));
        routes.get("/field/files.js", ctx -> give(ctx, "text/javascript; charset=utf-8", list()));
    }

    private static void give(Context ctx, String media, byte[] bytes) { ctx.header("Cache-Control", "no-cache").contentType(media).result(bytes); }

    /// Read by the service worker: a browser installs a new one as soon as this differs from what it had.
    private byte[] list() {
        List<String> paths = new ArrayList<>(List.of("/field/", "/field/words.json"));
        for (String file : FILES) paths.add("/field/" + file);
        paths.addAll(SHARED);
        MessageDigest digest = sha256();
        digest.update(words);
        for (String path : paths) if (!path.equals("/field/words.json")) digest.update(files.bytes(path));
        digest.update(files.bytes("/field/sw.js"));
        ObjectNode list = Wire.object().put("version", HexFormat.of().formatHex(digest.digest(), 0, 8));
        ArrayNode all = list.putArray("paths");
        paths.forEach(all::add);
        return ("self.FILES = " + list + ";\n").getBytes(StandardCharsets.UTF_8);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
