package sillwright.page;

import java.util.regex.Pattern;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import sillwright.measure.Refused;
import sillwright.store.Book;
import sillwright.store.Photos;

/// Pictures by the digest of their bytes. What a picture is, its own head tells; the sender is not believed.
final class PhotoApi {
    /// As large as the store takes them.
    private static final int LARGEST = 32 << 20;
    private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");

    private final Book book;

    PhotoApi(Book book) { this.book = book; }

    void on(RoutesConfig routes) {
        routes.get("/api/photos/{sha256}", this::give);
        routes.head("/api/photos/{sha256}", this::has);
        routes.put("/api/photos/{sha256}", this::take);
    }

    private static String digest(Context ctx) {
        String digest = ctx.pathParam("sha256");
        if (!DIGEST.matcher(digest).matches()) throw new Refused("sha256", "is not 64 hex digits in lower case", "name the picture by the SHA-256 of its bytes");
        return digest;
    }

    private void give(Context ctx) {
        String digest = digest(ctx);
        Photos.Found found = book.photos().get(digest).orElseThrow(() -> missing(digest));
        if (!found.unharmed()) throw new Refusal(410, digest, "is no longer the picture that was kept", "send it again from the phone, or restore the book from a backup");
        // What has this name never changes.
        ctx.header("Cache-Control", "private, max-age=31536000, immutable").header("ETag", '"' + digest + '"');
        ctx.header("Content-Disposition", "inline; filename=\"" + Photos.file(digest, found.media()).substring("photos/".length()) + '"');
        ctx.contentType(found.media()).result(found.bytes());
    }

    private void has(Context ctx) { ctx.status(book.photos().has(digest(ctx)) ? 200 : 404); }

    private static Refusal missing(String digest) { return Refusal.notThere(digest, "there is no such picture here", "send it from the phone that took it"); }

    private void take(Context ctx) {
        String digest = digest(ctx);
        boolean fresh = book.photos().keepAs(digest, Wire.bytes(ctx, LARGEST));
        Photos.Found found = book.photos().get(digest).orElseThrow();
        ctx.status(fresh ? 201 : 200);
        Wire.say(ctx, Wire.object().put("file", Photos.file(digest, found.media())).put("media", found.media()));
    }
}
