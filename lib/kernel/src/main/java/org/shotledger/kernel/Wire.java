package org.shotledger.kernel;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Messages to frames and back: delimiter, signature, header, parent header, metadata, content. */
final class Wire {

    private static final byte[] DELIMITER = "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII);
    private static final Gson GSON =
            new GsonBuilder().serializeNulls().disableHtmlEscaping().create();

    private final Signature signature;
    private final String session = UUID.randomUUID().toString();

    Wire(String key) {
        this.signature = new Signature(key.getBytes(StandardCharsets.UTF_8));
    }

    /** The message in these frames; empty if they are malformed or badly signed, which concerns nobody but the sender. */
    Optional<Message> decode(List<byte[]> frames) {
        int at = 0;
        while (at < frames.size() && !Arrays.equals(frames.get(at), DELIMITER)) {
            at++;
        }
        if (frames.size() < at + 6) {
            return Optional.empty();
        }
        List<byte[]> parts = frames.subList(at + 2, at + 6);
        if (!signature.matches(frames.get(at + 1), parts)) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Message(
                    List.copyOf(frames.subList(0, at)),
                    object(parts.get(0)),
                    object(parts.get(3)),
                    object(parts.get(2)),
                    List.copyOf(frames.subList(at + 6, frames.size()))));
        } catch (JsonParseException | IllegalStateException | StackOverflowError e) {
            return Optional.empty();
        }
    }

    private static JsonObject object(byte[] json) {
        return JsonParser.parseString(new String(json, StandardCharsets.UTF_8)).getAsJsonObject();
    }

    /** The frames of a message to send. */
    List<byte[]> encode(List<byte[]> identities, String type, JsonObject parent, JsonObject content) {
        return encode(identities, type, parent, content, new JsonObject(), List.of());
    }

    /** The frames of a message with metadata and binary content. */
    List<byte[]> encode(
            List<byte[]> identities,
            String type,
            JsonObject parent,
            JsonObject content,
            JsonObject metadata,
            List<byte[]> buffers) {
        List<byte[]> parts = List.of(bytes(header(type)), bytes(parent), bytes(metadata), bytes(content));
        List<byte[]> frames = new ArrayList<>(identities);
        frames.add(DELIMITER);
        frames.add(signature.sign(parts));
        frames.addAll(parts);
        frames.addAll(buffers);
        return frames;
    }

    private JsonObject header(String type) {
        JsonObject header = new JsonObject();
        header.addProperty("msg_id", UUID.randomUUID().toString());
        header.addProperty("session", session);
        header.addProperty("username", "kernel");
        header.addProperty("date", Instant.now().truncatedTo(ChronoUnit.MICROS).toString());
        header.addProperty("msg_type", type);
        header.addProperty("version", "5.3");
        return header;
    }

    private static byte[] bytes(JsonObject json) {
        return GSON.toJson(json).getBytes(StandardCharsets.UTF_8);
    }
}
