package sillwright.page;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Collection;

import io.javalin.http.Context;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.walk.Fault;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// What goes over the wire and how: JSON out, bodies in up to a limit, refusals by their parts.
final class Wire {
    static final JsonMapper JSON = JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

    private Wire() {}

    static ObjectNode object() { return JSON.createObjectNode(); }

    static void say(Context ctx, JsonNode node) { say(ctx, node.toString()); }

    static void say(Context ctx, String json) { ctx.contentType("application/json").result(json.getBytes(StandardCharsets.UTF_8)); }

    static void refuse(Context ctx, int status, Refused refused) {
        ObjectNode root = object();
        root.putObject("error").put("where", refused.where()).put("what", refused.what(Units.US)).put("mend", refused.mend());
        ctx.status(status);
        say(ctx, root);
    }

    static void faults(ArrayNode array, Collection<Fault> faults) {
        for (Fault fault : faults) array.addObject().put("entry", fault.entry()).put("field", fault.field()).put("what", fault.what()).put("mend", fault.mend());
    }

    /// The body of a request, of which no more than the limit is ever read.
    static byte[] bytes(Context ctx, int most) {
        if (ctx.req().getContentLengthLong() > most) throw tooLarge(most);
        try {
            byte[] bytes = ctx.req().getInputStream().readNBytes(most + 1);
            if (bytes.length > most) throw tooLarge(most);
            return bytes;
        } catch (IOException e) {
            throw new Refused("body", "did not arrive whole: {}", "send it again", String.valueOf(e.getMessage()));
        }
    }

    private static Refusal tooLarge(int most) { return new Refusal(413, "body", "has more than {} MB", "send it in parts, or smaller", most >> 20); }

    static String text(Context ctx, int most) {
        try {
            return StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes(ctx, most))).toString();
        } catch (CharacterCodingException _) {
            throw new Refused("body", "is not UTF-8 text", "send it as UTF-8");
        }
    }

    static JsonNode json(Context ctx, int most) {
        try {
            JsonNode node = JSON.readTree(text(ctx, most));
            if (node.isObject()) return node;
        } catch (JacksonException broken) {
            throw new Refused("body", "the JSON is broken: {}", "send one JSON object", String.valueOf(broken.getOriginalMessage()));
        }
        throw new Refused("body", "is not a JSON object", "send one JSON object");
    }
}
