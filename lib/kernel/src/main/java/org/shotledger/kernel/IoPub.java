package org.shotledger.kernel;

import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.shotledger.comm.Comm;
import org.shotledger.comm.CommMessage;
import org.shotledger.display.Display;
import org.shotledger.ipynb.MimeJson;
import org.shotledger.snippet.CellError;

/** What everybody who watches the kernel gets to see. */
final class IoPub {

    private final Channel channel;

    IoPub(Channel channel) {
        this.channel = channel;
    }

    private void send(String type, JsonObject parent, JsonObject content) {
        channel.send(List.of(type.getBytes(StandardCharsets.US_ASCII)), type, parent, content);
    }

    void status(String state, JsonObject parent) {
        send("status", parent, Json.one("execution_state", state));
    }

    void input(String code, int count, JsonObject parent) {
        JsonObject content = Json.one("code", code);
        content.addProperty("execution_count", count);
        send("execute_input", parent, content);
    }

    void stream(String name, String text, JsonObject parent) {
        JsonObject content = Json.one("name", name);
        content.addProperty("text", text);
        send("stream", parent, content);
    }

    void result(JsonObject data, int count, JsonObject parent) {
        JsonObject content = Json.object("data", data);
        content.add("metadata", new JsonObject());
        content.addProperty("execution_count", count);
        send("execute_result", parent, content);
    }

    void error(CellError error, JsonObject parent) {
        JsonObject content = Json.error(error);
        content.remove("status");
        send("error", parent, content);
    }

    void display(Map<String, Object> bundle, String id, boolean update, JsonObject parent) {
        JsonObject content = Json.object("data", MimeJson.of(bundle));
        content.add("metadata", new JsonObject());
        content.add("transient", id == null ? new JsonObject() : Json.one("display_id", id));
        send(update ? "update_display_data" : "display_data", parent, content);
    }

    void clear(boolean whenNextArrives, JsonObject parent) {
        JsonObject content = new JsonObject();
        content.addProperty("wait", whenNextArrives);
        send("clear_output", parent, content);
    }

    void comm(String type, JsonObject content, JsonObject parent) {
        send(type, parent, content);
    }

    void comm(String type, Comm comm, CommMessage message, JsonObject parent) {
        JsonObject content = Json.one("comm_id", comm.id());
        if (type.equals("comm_open")) {
            content.addProperty("target_name", comm.target());
        }
        content.add("data", Json.of(message.data()));
        channel.send(
                List.of(type.getBytes(StandardCharsets.US_ASCII)),
                type,
                parent,
                content,
                Json.of(message.metadata()),
                message.buffers());
    }

    /** Plain text of a shown value, for the history. */
    static String plain(JsonObject data) {
        return data.has(Display.TEXT) ? data.get(Display.TEXT).getAsString() : "";
    }
}
