package org.shotledger.kernel;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Map;
import org.shotledger.comm.Comms;
import org.shotledger.ipynb.MimeJson;
import org.shotledger.snippet.CellResult;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.OutputRouter;

/** Runs the cells that front ends send. */
final class Executor {

    private final JavaSession session;
    private final IoPub iopub;
    private final OutputRouter router;
    private final FrontEnd frontEnd;
    private final Comms comms;
    private final History history = new History();
    private int count;
    private Instant failedAt = Instant.MIN;

    Executor(JavaSession session, IoPub iopub, OutputRouter router, FrontEnd frontEnd, Comms comms) {
        this.session = session;
        this.iopub = iopub;
        this.router = router;
        this.frontEnd = frontEnd;
        this.comms = comms;
    }

    FrontEnd frontEnd() {
        return frontEnd;
    }

    History history() {
        return history;
    }

    JsonObject execute(Message request) {
        if (sentBefore(request, failedAt)) {
            // it was already on its way when the cell before it failed: "run all" stops at the first error
            JsonObject aborted = Json.status("aborted");
            aborted.addProperty("execution_count", count);
            return aborted;
        }
        String code = request.text("code", "");
        boolean silent = request.flag("silent", false);
        boolean stored = !silent && request.flag("store_history", true);
        if (stored && !code.isBlank()) {
            count++;
        }
        if (!silent) {
            iopub.input(code, count, request.header());
        }
        CellResult result = run(request, code, silent);
        String shown = show(result, silent, request.header());
        if (stored && !code.isBlank()) {
            history.add(count, code, shown);
        }
        if (!result.ok() && request.flag("stop_on_error", true)) {
            failedAt = Instant.now();
        }
        return reply(request, result);
    }

    private CellResult run(Message request, String code, boolean silent) {
        frontEnd.serve(request);
        if (!silent) {
            comms.beginCell(cell(request, code));
        }
        JsonObject parent = request.header();
        router.begin((stream, text) -> {
            if (!silent) {
                iopub.stream(stream, text, parent);
            }
        });
        try {
            return session.evaluate(code, "In [" + Math.max(1, count) + "]");
        } finally {
            router.flush();
        }
    }

    /** Front ends name the cell since JupyterLab 3; of others a cell is known by what stands in it. */
    private static String cell(Message request, String code) {
        JsonElement id = request.metadata().get("cellId");
        return id != null && id.isJsonPrimitive() ? id.getAsString() : code;
    }

    private String show(CellResult result, boolean silent, JsonObject parent) {
        String shown = null;
        if (!silent) {
            result.notes().forEach(note -> iopub.stream("stderr", note + "\n", parent));
        }
        if (result.hasValue()) {
            JsonObject data = MimeJson.of(result.value());
            router.flush();
            shown = IoPub.plain(data);
            if (!silent) {
                iopub.result(data, count, parent);
            }
        }
        if (!result.ok() && !silent) {
            iopub.error(result.error(), parent);
        }
        return shown;
    }

    private JsonObject reply(Message request, CellResult result) {
        JsonObject content = result.ok() ? Json.ok() : Json.error(result.error());
        content.addProperty("execution_count", count);
        if (result.ok()) {
            content.add("payload", new JsonArray());
            content.add("user_expressions", userExpressions(request));
        }
        return content;
    }

    private JsonObject userExpressions(Message request) {
        JsonObject values = new JsonObject();
        JsonElement asked = request.content().get("user_expressions");
        if (asked != null && asked.isJsonObject()) {
            for (Map.Entry<String, JsonElement> entry : asked.getAsJsonObject().entrySet()) {
                values.add(entry.getKey(), userExpression(entry.getValue().getAsString()));
            }
        }
        return values;
    }

    private JsonObject userExpression(String code) {
        CellResult result = session.evaluate(code, "expression");
        if (!result.ok()) {
            return Json.error(result.error());
        }
        JsonObject value = Json.ok();
        value.add("data", MimeJson.of(result.value()));
        value.add("metadata", new JsonObject());
        return value;
    }

    private static boolean sentBefore(Message request, Instant moment) {
        try {
            return OffsetDateTime.parse(request.date()).toInstant().isBefore(moment);
        } catch (DateTimeParseException e) {
            return false;
        }
    }
}
