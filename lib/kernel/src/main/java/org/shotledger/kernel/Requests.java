package org.shotledger.kernel;

import com.google.gson.JsonObject;
import java.util.HashMap;
import java.util.Map;
import org.shotledger.snippet.Assistant;
import org.shotledger.snippet.Completion;

/** Answers the requests that run nothing. */
final class Requests {

    private static final String VERSION = "0.1.0";

    private final Assistant assistant;
    private final Map<String, JsonObject> comms = new HashMap<>();

    Requests(Assistant assistant) {
        this.assistant = assistant;
    }

    static JsonObject kernelInfo() {
        JsonObject language = new JsonObject();
        language.addProperty("name", "java");
        language.addProperty("version", System.getProperty("java.version"));
        language.addProperty("mimetype", "text/x-java-source");
        language.addProperty("file_extension", ".java");
        language.addProperty("pygments_lexer", "java");
        language.addProperty("codemirror_mode", "text/x-java");
        language.addProperty("nbconvert_exporter", "script");
        JsonObject content = Json.ok();
        content.addProperty("protocol_version", "5.3");
        content.addProperty("implementation", "shotledger");
        content.addProperty("implementation_version", VERSION);
        content.add("language_info", language);
        content.addProperty("banner", "Shotledger " + VERSION + " on Java " + System.getProperty("java.version"));
        content.addProperty("debugger", false);
        content.add("help_links", new com.google.gson.JsonArray());
        return content;
    }

    JsonObject complete(Message request) {
        String code = request.text("code", "");
        int cursor = cursor(request, code);
        Completion found = assistant.complete(code, cursor);
        JsonObject content = Json.ok();
        content.add("matches", Json.strings(found.matches()));
        content.addProperty("cursor_start", CodePoints.fromUnits(code, found.start()));
        content.addProperty("cursor_end", CodePoints.fromUnits(code, found.end()));
        content.add("metadata", new JsonObject());
        return content;
    }

    JsonObject inspect(Message request) {
        String code = request.text("code", "");
        JsonObject data = new JsonObject();
        assistant.explain(code, cursor(request, code)).ifPresent(text -> data.addProperty("text/plain", text));
        JsonObject content = Json.ok();
        content.addProperty("found", data.size() > 0);
        content.add("data", data);
        content.add("metadata", new JsonObject());
        return content;
    }

    JsonObject isComplete(Message request) {
        String status = assistant.completeness(request.text("code", ""));
        JsonObject content = Json.status(status);
        if (status.equals("incomplete")) {
            content.addProperty("indent", "");
        }
        return content;
    }

    /** Remembers what front ends open, although nothing here answers them. */
    void comm(Message message) {
        String id = message.text("comm_id", "");
        if (message.type().equals("comm_open")) {
            comms.put(id, Json.one("target_name", message.text("target_name", "")));
        } else if (message.type().equals("comm_close")) {
            comms.remove(id);
        }
    }

    JsonObject commInfo(Message request) {
        String target = request.text("target_name", "");
        JsonObject open = new JsonObject();
        comms.forEach((id, comm) -> {
            if (target.isEmpty() || target.equals(comm.get("target_name").getAsString())) {
                open.add(id, comm);
            }
        });
        JsonObject content = Json.ok();
        content.add("comms", open);
        return content;
    }

    private static int cursor(Message request, String code) {
        return CodePoints.toUnits(code, request.number("cursor_pos", code.codePointCount(0, code.length())));
    }
}
