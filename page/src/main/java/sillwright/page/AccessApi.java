package sillwright.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import sillwright.measure.Refused;
import sillwright.sheet.Markup;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// The door: who one is, coming in, letting devices in, shutting them out.
final class AccessApi {
    private static final int MOST_BYTES = 16 << 10, DEVICE_S = 180 * 86_400;

    private final Access access;
    private final DoorLog log;

    AccessApi(Access access, DoorLog log) {
        this.access = access;
        this.log = log;
    }

    void on(RoutesConfig routes) {
        routes.get("/api/session", this::who);
        routes.post("/api/session", this::enter);
        routes.delete("/api/session", this::leave);
        routes.post("/api/pairings", this::pair);
        routes.get("/api/devices", this::devices);
        routes.delete("/api/devices", ctx -> {
            access.shutAllOut();
            if (access.guarded()) log.told("all devices shut out", ctx, "by", guest(ctx).name());
            ctx.status(204);
        });
        routes.delete("/api/devices/{device}", ctx -> {
            access.shutOut(ctx.pathParam("device"));
            log.told("device shut out", ctx, "by", guest(ctx).name(), "device", ctx.pathParam("device"));
            ctx.status(204);
        });
        routes.get("/enter", ctx -> Frame.say(ctx, "The door", Optional.empty(), "", "", Html.text("enter", door())));
        routes.get("/devices", this::page);
    }

    static Access.Guest guest(Context ctx) { return ctx.attribute("guest"); }

    private void who(Context ctx) {
        Access.Guest guest = guest(ctx);
        Wire.say(ctx, Wire.object().put("guarded", access.guarded()).put("name", guest.name()).put("role", guest.role().word()));
    }

    private void enter(Context ctx) {
        if (!access.guarded()) throw new Refused("", "there is no door here", "the server listens on this machine alone");
        JsonNode body = Wire.json(ctx, MOST_BYTES);
        boolean code = body.has("code");
        Optional<String> before = Optional.ofNullable(ctx.cookie(Access.COOKIE));
        String token = code ? access.byCode(body.path("code").asString(""), ctx.ip()) : access.byPassphrase(body.path("passphrase").asString(""), ctx.ip());
        // Whoever comes in anew goes out by the old token.
        access.leave(before);
        Cookie cookie = new Cookie(Access.COOKIE, token, "/", code ? DEVICE_S : -1, true, true);
        cookie.setSameSite(SameSite.STRICT);
        ctx.cookie(cookie);
        Access.Guest guest = access.guest(Optional.of(token)).orElseThrow();
        log.told("let in", ctx, "by", code ? "code" : "passphrase", "who", guest.name(), "role", guest.role().word(), "device", guest.id());
        Wire.say(ctx, Wire.object().put("guarded", true).put("name", guest.name()).put("role", guest.role().word()));
    }

    /// What the browser was let see is forgotten there too; what a phone has not yet sent is not.
    private void leave(Context ctx) {
        access.leave(Optional.ofNullable(ctx.cookie(Access.COOKIE)));
        if (access.guarded()) log.told("left", ctx, "who", guest(ctx).name());
        ctx.header("Clear-Site-Data", "\"cookies\", \"cache\"").removeCookie(Access.COOKIE, "/");
        ctx.status(204);
    }

    private void pair(Context ctx) {
        if (!access.guarded()) throw new Refused("", "no device can reach a server that listens on this machine alone", "begin it with --open");
        JsonNode body = Wire.json(ctx, MOST_BYTES);
        Role role = switch (body.path("role").asString("")) {
            case "surveyor" -> Role.SURVEYOR;
            case "reader" -> Role.READER;
            default -> throw new Refused("role", "'{}' is not a role of a device", "use surveyor or reader", body.path("role").asString(""));
        };
        String code = access.code(role, body.path("name").asString(""));
        log.told("code shown", ctx, "by", guest(ctx).name(), "for", body.path("name").asString(""), "role", role.word());
        String address = ctx.scheme() + "://" + ctx.host() + "/enter#" + code;
        ctx.status(201);
        Wire.say(ctx, Wire.object().put("code", code).put("address", address).put("seconds", 600).put("svg", Html.text("qr", drawn(address))));
    }

    /// The address as a QR code, drawn here. Source: ISO/IEC 18004, by a library.
    static Markup drawn(String address) {
        try {
            BitMatrix bits = new QRCodeWriter().encode(address, BarcodeFormat.QR_CODE, 0, 0, Map.of(EncodeHintType.MARGIN, 4));
            StringBuilder path = new StringBuilder();
            for (int y = 0; y < bits.getHeight(); y++) for (int x = 0; x < bits.getWidth(); x++) if (bits.get(x, y)) path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
            return Markup.of("svg", Markup.of("rect").with("width", bits.getWidth()).with("height", bits.getHeight()).with("fill", "#fff"), Markup.of("path").with("d", path).with("fill", "#000"))
                    .with("viewBox", "0 0 " + bits.getWidth() + " " + bits.getHeight()).with("role", "img").with("aria-label", "the address with the code, for a camera").with("class", "qr");
        } catch (WriterException e) {
            throw new IllegalStateException(e);
        }
    }

    private void devices(Context ctx) {
        ObjectNode root = Wire.object();
        ArrayNode all = root.putArray("devices");
        for (AccessFile.Device one : access.devices()) all.addObject().put("id", one.id()).put("name", one.name()).put("role", one.role().word()).put("since", java.time.Instant.ofEpochMilli(one.sinceMs()).toString());
        Wire.say(ctx, root);
    }

    private static Markup door() {
        return Html.div("cover", Html.h(1, "The door"), Html.of("form", Html.p(Html.of("label", "passphrase of the book, or the code that its owner shows you").with("for", "key")),
                Html.p(Html.of("input").with("id", "key").with("name", "key").with("type", "password").with("autocomplete", "current-password").with("required", "")),
                Html.of("button", "Come in").with("type", "submit").with("class", "first"), Html.of("p").with("class", "wrong").with("role", "alert")).with("data-enter", ""));
    }

    private void page(Context ctx) {
        List<Markup> lines = access.devices().stream().map(one -> Html.of("li", one.name() + ", " + one.role().word() + " ", Html.button("shut out").with("data-shut", one.id()))).toList();
        Frame.say(ctx, "Devices", Optional.empty(), "", "", Html.text("devices", Html.div("cover", Html.h(1, "Devices"), lines.isEmpty() ? Html.p("No device was let in.") : List.of(Html.of("ul", lines), Html.p(Html.button("shut all out").with("data-shut-all", ""))),
                Html.h(2, "Let one in"), Html.of("form", Html.p(Html.of("label", "what it is called").with("for", "name")), Html.p(Html.of("input").with("id", "name").with("name", "name").with("required", "")),
                        Html.p(Html.of("label", "it may").with("for", "role"), " ", Html.of("select", Html.of("option", "add entries and photos").with("value", "surveyor"), Html.of("option", "look").with("value", "reader")).with("id", "role").with("name", "role")),
                        Html.of("button", "Show a code").with("type", "submit").with("class", "first"), Html.of("p").with("class", "wrong").with("role", "alert")).with("data-pair", ""), Html.div("paired"))));
    }
}
