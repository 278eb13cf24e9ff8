package sillwright.page;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import sillwright.measure.Refused;

/// What is thrown on the way to an answer: told by its parts to whoever asked, and to the log where it is of the door or of nobody's fault.
final class Thrown {
    private static final Refused OURS = new Refused("", "something went wrong here", "try it again; whoever keeps the server finds in its log where");

    /// To the network; where things lie, and what the disk or the database said, is for whoever reads the log.
    private static final Refused AWAY = new Refused("", "the book cannot be read or written just now", "try it again later; whoever keeps the server finds in its log why");

    private final DoorLog log;

    Thrown(DoorLog log) { this.log = log; }

    void on(JavalinConfig config) {
        config.routes.exception(Refused.class, this::refused);
        config.routes.exception(Refusal.class, (refusal, ctx) -> say(ctx, refusal.status(), refusal.refused()));
        config.routes.exception(HttpResponseException.class, (thrown, ctx) -> say(ctx, thrown.getStatus(), switch (thrown.getStatus()) {
            case 404 -> new Refused(ctx.path(), "there is no such page", "begin at /");
            case 405 -> new Refused(ctx.path(), "{} cannot be done here", "see /api/openapi.json for what can", ctx.method().toString());
            default -> new Refused(ctx.path(), String.valueOf(thrown.getMessage()), "");
        }));
        config.routes.exception(Exception.class, (thrown, ctx) -> {
            log.failed(ctx, 500, thrown);
            Wire.refuse(ctx, 500, OURS);
        });
        config.router.javaLangErrorHandler((response, error) -> {
            log.failed(error);
            response.setStatus(500);
        });
    }

    /// A store that fails is no mistake of the visitor's: a phone keeps what it has, and sends it again.
    private void refused(Refused refused, Context ctx) {
        if (refused.getCause() == null) say(ctx, 400, refused);
        else {
            log.failed(ctx, 503, refused);
            Wire.refuse(ctx, 503, log.place().isPresent() ? AWAY : refused);
        }
    }

    private void say(Context ctx, int status, Refused refused) {
        log.refused(ctx, status, refused);
        Wire.refuse(ctx, status, refused);
    }
}
