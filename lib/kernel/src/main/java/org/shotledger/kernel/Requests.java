package org.shotledger.kernel;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import org.shotledger.comm.CommMessage;
import org.shotledger.comm.Comms;
import org.shotledger.snippet.Assistant;
import org.shotledger.snippet.Completion;

/** Answers the requests that run nothing. */
final class Requests {

    private static final String VERSION = "0.1.0";

    private final Assistant assistant;
    private final Comms comms;

    Requests(Assistant assistant, Comms comms) {
        this.assistant = assistant;
        this.comms = comms;
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
        content.add("help_links", new JsonArray());
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
        content.add("metadata", Json.object("_jupyter_types_experimental", kinds(found, content)));
        return content;
    }

    /** The kinds of the matches, in the way the front ends that show them expect. */
    private static JsonArray kinds(Completion found, JsonObject content) {
        JsonArray kinds = new JsonArray();
        for (int i = 0; i < found.matches().size(); i++) {
            JsonObject kind = new JsonObject();
            kind.add("start", content.get("cursor_start"));
            kind.add("end", content.get("cursor_end"));
            kind.addProperty("text", found.matches().get(i));
            kind.addProperty("type", found.kinds().get(i));
            kinds.add(kind);
        }
        return kinds;
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

    /** Takes a message of a comm, and does what was put off if no other waits; what its receiver throws is the receiver's affair. */
    void comm(Message message, Runnable afterwards) {
        String id = message.text("comm_id", "");
        CommMessage inner = new CommMessage(
                Json.map(message.content().get("data")), Json.map(message.metadata()), message.buffers());
        guarded(() -> {
            switch (message.type()) {
                case "comm_open" -> comms.opened(id, message.text("target_name", ""), inner);
                case "comm_close" -> comms.closed(id);
                default -> comms.received(id, inner);
            }
        });
        guarded(afterwards);
    }

    private static void guarded(Runnable task) {
        try {
            task.run();
        } catch (RuntimeException | Error e) {
            System.err.println("A control could not be answered: " + e);
        }
    }

    JsonObject commInfo(Message request) {
        JsonObject open = new JsonObject();
        comms.list(request.text("target_name", ""))
                .forEach((id, target) -> open.add(id, Json.one("target_name", target)));
        JsonObject content = Json.ok();
        content.add("comms", open);
        return content;
    }

    private static int cursor(Message request, String code) {
        return CodePoints.toUnits(code, request.number("cursor_pos", code.codePointCount(0, code.length())));
    }
}
