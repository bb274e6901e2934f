package org.shotledger.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A page that opens comms to a running kernel: each message is framed by busy and idle, or a control would freeze. */
class KernelCommTest {

    @Test
    @Timeout(60)
    void commsOfThePageAreAnsweredBetweenBusyAndIdle() throws IOException {
        try (Page page = new Page("org.shotledger.comm.*", "java.util.*")) {
            assertEquals(List.of("busy", "comm_close", "idle"), said(page.ask("comm_open", open("a", "unknown"))));
            List<String> run = said(
                    page.run(
                            "Comms.current().get().register(\"dial\", (comm, first) -> comm.onMessage(m ->"
                                    + " comm.send(CommMessage.of(Map.of(\"twice\", 2 * (Double) m.data().get(\"value\"))))));"));
            assertFalse(run.contains("error"), run::toString);
            assertEquals(List.of("busy", "idle"), said(page.ask("comm_open", open("b", "dial"))));
            JsonObject moved = Json.one("comm_id", "b");
            JsonObject data = new JsonObject();
            data.addProperty("value", 4);
            moved.add("data", data);
            assertEquals(List.of("busy", "comm_msg {\"twice\":8.0}", "idle"), said(page.ask("comm_msg", moved)));
        }
    }

    private static JsonObject open(String id, String target) {
        JsonObject content = Json.one("comm_id", id);
        content.addProperty("target_name", target);
        content.add("data", new JsonObject());
        return content;
    }

    private static List<String> said(List<Message> messages) {
        return messages.stream()
                .map(message -> switch (message.type()) {
                    case "status" -> message.text("execution_state", "");
                    case "comm_msg" -> "comm_msg " + message.content().get("data");
                    default -> message.type();
                })
                .toList();
    }
}
