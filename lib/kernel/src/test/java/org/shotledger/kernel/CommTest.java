package org.shotledger.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shotledger.comm.Comm;
import org.shotledger.comm.CommMessage;
import org.shotledger.comm.Comms;

/** Comms as the messaging protocol of Jupyter 5.3, section "Custom messages", describes them. */
class CommTest {

    private record Sent(String type, String id, CommMessage message) {}

    private final List<Sent> sent = new ArrayList<>();
    private final Comms comms = new Comms((type, comm, message) -> sent.add(new Sent(type, comm.id(), message)));

    @Test
    void aCommThatIsOpenedHereCarriesMessagesBothWaysUntilItIsClosed() {
        List<Object> received = new ArrayList<>();
        Comm comm = comms.open("dial", CommMessage.of(Map.of("value", 1)));
        comm.onMessage(message -> received.add(message.data().get("value")));
        comms.received(comm.id(), CommMessage.of(Map.of("value", 2.5)));
        comm.send(CommMessage.of(Map.of("value", 3)));
        assertEquals(Map.of(comm.id(), "dial"), comms.list("dial"));
        assertEquals(Map.of(), comms.list("other"));
        comm.close();
        comm.close();
        comm.send(CommMessage.of(Map.of("value", 4)));
        comms.received(comm.id(), CommMessage.of(Map.of("value", 5)));
        assertEquals(List.of(2.5), received);
        assertEquals(
                List.of("comm_open", "comm_msg", "comm_close"),
                sent.stream().map(Sent::type).toList());
        assertFalse(comm.isOpen());
    }

    @Test
    void aCommThatThePageOpensIsAnsweredOrClosedAgain() {
        List<Comm> opened = new ArrayList<>();
        comms.register("control", (comm, message) -> opened.add(comm));
        comms.opened("a", "control", CommMessage.of(Map.of()));
        comms.opened("b", "unknown", CommMessage.of(Map.of()));
        assertEquals("a", opened.get(0).id());
        assertEquals(1, sent.size());
        assertEquals("comm_close", sent.get(0).type());
        assertEquals("b", sent.get(0).id());
        boolean[] told = {false};
        opened.get(0).onClose(() -> told[0] = true);
        comms.closed("a");
        comms.received("nobody", CommMessage.of(Map.of()));
        assertTrue(told[0]);
    }

    @Test
    void metadataAndBinaryContentGoOverTheWire() {
        Wire wire = new Wire("a secret");
        byte[] picture = "bytes".getBytes(StandardCharsets.US_ASCII);
        Message message = wire.decode(wire.encode(
                        List.of(),
                        "comm_open",
                        new com.google.gson.JsonObject(),
                        Json.one("comm_id", "a"),
                        Json.of(Map.of("version", "2.1.0")),
                        List.of(picture)))
                .orElseThrow();
        assertEquals(Map.of("version", "2.1.0"), Json.map(message.metadata()));
        assertEquals("bytes", new String(message.buffers().get(0), StandardCharsets.US_ASCII));
    }
}
