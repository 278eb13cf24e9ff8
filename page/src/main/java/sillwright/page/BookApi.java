package sillwright.page;

import java.time.Instant;
import java.util.List;
import java.util.Locale;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import sillwright.measure.Refused;
import sillwright.store.Book;
import sillwright.store.Photos;
import sillwright.store.Sync;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// The field book over the wire: what phones sync with.
final class BookApi {
    private static final int MOST_BYTES = 8 << 20;
    private static final int COMMON = 1_000;

    private final Book book;

    BookApi(Book book) { this.book = book; }

    void on(RoutesConfig routes) {
        routes.get("/api/buildings", this::buildings);
        routes.get("/api/buildings/{building}/entries", this::give);
        routes.post("/api/buildings/{building}/entries", this::take);
        routes.get("/api/buildings/{building}/photos", this::photos);
    }

    private void buildings(Context ctx) {
        ObjectNode root = Wire.object();
        ArrayNode all = root.putArray("buildings");
        for (Book.Shelf shelf : book.buildings())
            all.addObject().put("id", shelf.building()).put("name", book.title(shelf.building()).orElse("")).put("entries", shelf.entries()).put("last", Instant.ofEpochMilli(shelf.lastMs()).toString());
        Wire.say(ctx, root);
    }

    private void give(Context ctx) {
        String since = ctx.queryParam("since");
        Book.Lines given = book.linesSince(ctx.pathParam("building"), since == null ? "" : since, limit(ctx));
        ObjectNode rest = Wire.object().put("mark", given.mark()).put("more", given.more()).put("again", given.again());
        Wire.faults(rest.putArray("faults"), given.faults());
        // What is kept is JSON already: fifty phones that fetch at once would have the server do nothing but read and write it again.
        StringBuilder said = new StringBuilder("{\"entries\":[");
        for (int i = 0; i < given.entries().size(); i++) said.append(i == 0 ? "" : ",").append(given.entries().get(i));
        Wire.say(ctx, said.append("],").append(rest.toString().substring(1)).toString());
    }

    private static int limit(Context ctx) {
        String limit = ctx.queryParam("limit");
        if (limit == null) return COMMON;
        try {
            int most = Integer.parseInt(limit);
            if (most >= 1 && most <= 10_000) return most;
        } catch (NumberFormatException _) {
            // Said below, with what would do.
        }
        throw new Refused("limit", "'{}' is not a number from 1 to 10,000", "leave it out, or write limit=1000", limit);
    }

    private void take(Context ctx) {
        List<Sync.Receipt> receipts = Sync.take(book, ctx.pathParam("building"), Wire.text(ctx, MOST_BYTES));
        ObjectNode root = Wire.object();
        ArrayNode all = root.putArray("receipts");
        for (Sync.Receipt receipt : receipts)
            Wire.faults(all.addObject().put("id", receipt.id()).put("fate", receipt.fate().name().toLowerCase(Locale.ROOT)).putArray("faults"), receipt.faults());
        Wire.say(ctx, root);
    }

    private void photos(Context ctx) {
        String building = ctx.pathParam("building");
        ObjectNode root = Wire.object();
        ArrayNode here = root.putArray("photos");
        for (Photos.Named named : book.photos().of(building)) here.addObject().put("file", named.file()).put("sha256", named.sha256());
        ArrayNode missing = root.putArray("missing");
        book.photos().missing(building).forEach(missing::add);
        Wire.say(ctx, root);
    }
}
