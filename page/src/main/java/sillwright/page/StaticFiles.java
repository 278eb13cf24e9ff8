package sillwright.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/// Files that go with the program, from its own resources and nowhere else.
final class StaticFiles {
    private static final Map<String, String> MEDIA = Map.ofEntries(Map.entry("html", "text/html; charset=utf-8"), Map.entry("css", "text/css; charset=utf-8"),
            Map.entry("js", "text/javascript; charset=utf-8"), Map.entry("mjs", "text/javascript; charset=utf-8"), Map.entry("json", "application/json"),
            Map.entry("webmanifest", "application/manifest+json"), Map.entry("svg", "image/svg+xml; charset=utf-8"), Map.entry("png", "image/png"), Map.entry("ico", "image/x-icon"),
            Map.entry("ttf", "font/ttf"), Map.entry("woff2", "font/woff2"), Map.entry("wasm", "application/wasm"), Map.entry("txt", "text/plain; charset=utf-8"));
    /// Each step of a path begins with a letter or digit, so that none leads up or to a hidden file.
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*(?:/[A-Za-z0-9][A-Za-z0-9._-]*)*");

    /// @param tag changes whenever the bytes do
    private record Kept(byte[] bytes, String media, String tag) {
        static Kept of(String resource, byte[] bytes) {
            try {
                return new Kept(bytes, StaticFiles.media(resource), '"' + HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes), 0, 12) + '"');
            } catch (NoSuchAlgorithmException impossible) {
                throw new IllegalStateException("every Java has SHA-256", impossible);
            }
        }
    }

    private final Map<String, Optional<Kept>> kept = new ConcurrentHashMap<>();

    StaticFiles() {}

    /// @param resource one that is given out as these bytes instead, as a newer program would: `/sillwright/page/field/book.js`
    StaticFiles(String resource, byte[] instead) { kept.put(resource, Optional.of(Kept.of(resource, instead))); }

    void on(RoutesConfig routes) {
        // A service worker's scope ends with its slash.
        routes.get("/field", ctx -> ctx.redirect("/field/"));
        routes.get("/field/", ctx -> give(ctx, "/sillwright/page/field/", "index.html"));
        routes.get("/field/<file>", ctx -> give(ctx, "/sillwright/page/field/", ctx.pathParam("file")));
        routes.get("/favicon.ico", ctx -> give(ctx, "/sillwright/page/looks/", "mark.svg"));
        routes.get("/looks/<file>", ctx -> give(ctx, "/sillwright/page/looks/", ctx.pathParam("file")));
        routes.get("/api/openapi.json", ctx -> give(ctx, "/sillwright/page/", "openapi.json"));
        routes.get("/office/<file>", ctx -> give(ctx, "/sillwright/page/office/", ctx.pathParam("file")));
        routes.get("/fonts/<file>", ctx -> give(ctx, "/fonts/", ctx.pathParam("file")));
    }

    /// The bytes of a file by the path it is asked for.
    byte[] bytes(String path) {
        String resource = path.equals("/field/") ? "/sillwright/page/field/index.html" : path.startsWith("/fonts/") ? path : "/sillwright/page" + path;
        return kept.computeIfAbsent(resource, StaticFiles::read).orElseThrow(() -> new IllegalStateException(path + " is not among the program's own files")).bytes;
    }

    private void give(Context ctx, String folder, String file) {
        Kept one = NAME.matcher(file).matches() ? kept.computeIfAbsent(folder + file, StaticFiles::read).orElse(null) : null;
        if (one == null) throw Refusal.notThere(ctx.path(), "there is no such page", "begin at /");
        // Asked for again each time and answered with 304 where nothing changed: a phone's copy is never a mixture of two versions.
        ctx.header("Cache-Control", "no-cache").header("ETag", one.tag);
        if (one.tag.equals(ctx.header("If-None-Match"))) ctx.status(304);
        else ctx.contentType(one.media).result(one.bytes);
    }

    private static Optional<Kept> read(String resource) {
        try (InputStream in = media(resource) == null ? null : StaticFiles.class.getResourceAsStream(resource)) {
            return in == null ? Optional.empty() : Optional.of(Kept.of(resource, in.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String media(String resource) { return MEDIA.get(resource.substring(resource.lastIndexOf('.') + 1)); }
}
