package sillwright.page;

import java.util.concurrent.ConcurrentHashMap;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.router.Endpoint;

/// How much is being worked for one visitor at this moment. A browser asks for six things at a time; whoever has far more in hand waits.
final class InHand {
    /// Own choice: four windows of one browser.
    static final int MOST = 24;
    private final ConcurrentHashMap<String, Integer> now = new ConcurrentHashMap<>();

    /// The handler, for those who have not too much in hand already. On this machine alone, and at the door, nobody is counted.
    Handler over(Endpoint endpoint) {
        if (!endpoint.method.isHttpMethod()) return endpoint.handler;
        return ctx -> {
            if (now.getOrDefault(who(ctx), 0) >= MOST) {
                ctx.header("Retry-After", "10");
                throw new Refusal(429, "", "{} things are being worked for this visitor already", "wait for the first of them", MOST);
            }
            begin(ctx);
            try {
                endpoint.handler.handle(ctx);
            } finally {
                end(ctx);
            }
        };
    }

    /// Also for what goes on behind its handler, such as a stream.
    void begin(Context ctx) { if (!who(ctx).isEmpty()) now.merge(who(ctx), 1, Integer::sum); }

    void end(Context ctx) { if (!who(ctx).isEmpty()) now.computeIfPresent(who(ctx), (_, many) -> many > 1 ? many - 1 : null); }

    private static String who(Context ctx) {
        Access.Guest guest = AccessApi.guest(ctx);
        return guest == null || guest.id().equals(Access.HERE) ? "" : guest.id();
    }
}
