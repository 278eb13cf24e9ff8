package sillwright.page;

import java.net.URI;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/// What stands before every page: who may ask from where, and what a browser may do with the answer.
final class Guard {
    private static final String POLICY = String.join("; ", "default-src 'none'", "script-src 'self'", "style-src 'self'", "img-src 'self' blob: data:", "font-src 'self'",
            "connect-src 'self'", "manifest-src 'self'", "worker-src 'self'", "form-action 'self'", "base-uri 'none'", "frame-ancestors 'none'");
    /// An answer of the API is read by a program; a browser that is led to one as to a page shows it and does nothing with it.
    private static final String DATA_POLICY = "default-src 'none'; sandbox; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";
    private static final Set<HandlerType> READS = Set.of(HandlerType.GET, HandlerType.HEAD);
    /// Requests from one address over the network, in a minute. Own choice: a phone that sends a day's photos stays well below.
    private static final int MOST_A_MINUTE = 1_200;

    private final Supplier<Set<String>> names;
    private final Access access;
    private final Map<String, Integer> asked = new HashMap<>();
    private long minute;

    /// @param names the names that this server goes by, as a browser's Host line says them
    Guard(Supplier<Set<String>> names, Access access) {
        this.names = names;
        this.access = access;
    }

    void on(RoutesConfig routes) {
        routes.before(ctx -> {
            ctx.header("Content-Security-Policy", ctx.path().startsWith("/api/") ? DATA_POLICY : POLICY).header("X-Content-Type-Options", "nosniff").header("Referrer-Policy", "no-referrer")
                    .header("Cross-Origin-Opener-Policy", "same-origin").header("Cross-Origin-Resource-Policy", "same-origin").header("X-Frame-Options", "DENY")
                    .header("Permissions-Policy", "camera=(self), geolocation=(), microphone=(), payment=(), usb=()").header("Cache-Control", "no-store");
            name(ctx);
            if (access.guarded()) often(ctx);
            if (!READS.contains(ctx.method())) write(ctx);
            enter(ctx);
        });
    }

    /// What is no request at all never comes to the pages: it is answered with its status and nothing else.
    static boolean bare(Request request, Response response, Callback callback) {
        response.getHeaders().put("Content-Security-Policy", DATA_POLICY).put("X-Content-Type-Options", "nosniff").put("Referrer-Policy", "no-referrer").put("Cache-Control", "no-store");
        callback.succeeded();
        return true;
    }

    /// A name that leads here by somebody else's name server is not ours: a foreign page could read the answers through it.
    private void name(Context ctx) {
        String host = ctx.header("Host");
        if (host == null || !names.get().contains(host)) throw new Refusal(421, "Host", "'{}' is not a name of this server", "open it as " + names.get().stream().sorted().findFirst().orElse(""), String.valueOf(host));
    }

    /// A page of somebody else's can make a browser send a form, but not JSON or a picture, and not without saying where it is from.
    private void write(Context ctx) {
        String origin = ctx.header("Origin"), site = ctx.header("Sec-Fetch-Site");
        if (origin != null && !own(origin) || site != null && !site.equals("same-origin"))
            throw new Refusal(403, "Origin", "the request comes from another page", "send it from a page of this server");
        String type = ctx.contentType();
        if (ctx.method() == HandlerType.DELETE && type == null) return;
        if (type == null || !(type.startsWith("application/json") || type.startsWith("image/")))
            throw new Refusal(415, "Content-Type", "'{}' is not taken", "send application/json, or a picture as image/jpeg", type == null ? "none" : type);
    }

    private boolean own(String origin) {
        try {
            return names.get().contains(URI.create(origin).getRawAuthority());
        } catch (IllegalArgumentException _) {
            return false;
        }
    }

    private synchronized void often(Context ctx) {
        long now = System.currentTimeMillis() / 60_000;
        if (now != minute) asked.clear();
        minute = now;
        if (asked.merge(ctx.ip(), 1, Integer::sum) > MOST_A_MINUTE) {
            ctx.header("Retry-After", "60");
            throw new Refusal(429, "", "more than {} requests in a minute", "wait a minute", MOST_A_MINUTE);
        }
    }

    /// What holds nothing of a book is for everybody; the rest is for those who were let in, and may do it.
    private void enter(Context ctx) {
        String path = ctx.path();
        Optional<Access.Guest> guest = access.guest(Optional.ofNullable(ctx.cookie(Access.COOKIE)));
        guest.ifPresent(one -> ctx.attribute("guest", one));
        boolean door = path.equals("/enter") || path.equals("/api/session") && ctx.method() == HandlerType.POST || path.equals("/favicon.ico") || path.equals("/api/openapi.json");
        for (String open : new String[] {"/looks/", "/fonts/", "/office/", "/field/"}) door |= path.startsWith(open);
        if (door) return;
        if (guest.isEmpty()) {
            if (path.startsWith("/api/") || !READS.contains(ctx.method())) throw new Refusal(401, "", "nobody was let in by this request", "come in at /enter, by the passphrase or a code");
            ctx.redirect("/enter");
            ctx.skipRemainingHandlers();
            return;
        }
        Role needed = needed(ctx, path);
        if (!guest.get().role().may(needed)) throw new Refusal(403, "", "a " + guest.get().role().word() + " may not do this", "ask the owner of the book");
    }

    private static Role needed(Context ctx, String path) {
        if (path.startsWith("/api/pairings") || path.startsWith("/api/devices") || path.equals("/devices")) return Role.OWNER;
        if (READS.contains(ctx.method()) || path.startsWith("/api/figure/") || path.equals("/api/session") || path.endsWith("/whole")) return Role.READER;
        return Role.SURVEYOR;
    }
}
