package org.shotledger.kernel;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.List;

/**
 * A message, as received.
 *
 * @param identities routing frames in front of the delimiter
 * @param header its header
 * @param content its content
 * @param metadata what goes beside it
 * @param buffers binary content
 */
record Message(
        List<byte[]> identities, JsonObject header, JsonObject content, JsonObject metadata, List<byte[]> buffers) {

    String type() {
        return text(header, "msg_type", "");
    }

    String date() {
        return text(header, "date", "");
    }

    String text(String name, String fallback) {
        return text(content, name, fallback);
    }

    boolean flag(String name, boolean fallback) {
        JsonElement value = content.get(name);
        return (value != null && value.isJsonPrimitive()) ? value.getAsBoolean() : fallback;
    }

    int number(String name, int fallback) {
        JsonElement value = content.get(name);
        return value != null && value.isJsonPrimitive() ? value.getAsInt() : fallback;
    }

    private static String text(JsonObject json, String name, String fallback) {
        JsonElement value = json.get(name);
        return value != null && value.isJsonPrimitive() ? value.getAsString() : fallback;
    }
}
