package org.shotledger.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.SessionOptions;
import org.shotledger.snippet.Words;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** A page that opens comms to a running kernel: each message is framed by busy and idle, or a control would freeze. */
class KernelCommTest {

    /** Frames of a request: delimiter, signature, header; what is published has its topic before them, and the parent behind. */
    private static final int HEADER = 2;

    private static final int PARENT = 4;

    private final Wire wire = new Wire("a secret");

    @Test
    @Timeout(60)
    void commsOfThePageAreAnsweredBetweenBusyAndIdle() throws IOException, InterruptedException {
        ConnectionFile meeting = free();
        Kernel kernel = new Kernel(
                meeting,
                () -> new JavaSession(
                        SessionOptions.of(List.of("import org.shotledger.comm.*;", "import java.util.*;"))),
                Words.NONE);
        Thread serving = new Thread(() -> serve(kernel), "kernel");
        serving.start();
        try (ZContext context = new ZContext();
                ZMQ.Socket heard = context.createSocket(SocketType.SUB);
                ZMQ.Socket shell = context.createSocket(SocketType.DEALER)) {
            heard.subscribe(new byte[0]);
            heard.connect(meeting.address(meeting.iopub()));
            heard.setReceiveTimeOut(20_000);
            shell.connect(meeting.address(meeting.shell()));
            settle(shell, heard);
            assertEquals(List.of("busy", "comm_close", "idle"), ask(shell, heard, "comm_open", open("a", "unknown")));
            JsonObject code = Json.one(
                    "code",
                    "Comms.current().get().register(\"dial\", (comm, first) -> comm.onMessage(m ->"
                            + " comm.send(CommMessage.of(Map.of(\"twice\", 2 * (Double) m.data().get(\"value\"))))));");
            List<String> run = ask(shell, heard, "execute_request", code);
            assertFalse(run.contains("error"), run::toString);
            assertEquals(List.of("busy", "idle"), ask(shell, heard, "comm_open", open("b", "dial")));
            JsonObject moved = Json.one("comm_id", "b");
            JsonObject data = new JsonObject();
            data.addProperty("value", 4);
            moved.add("data", data);
            assertEquals(List.of("busy", "comm_msg {\"twice\":8.0}", "idle"), ask(shell, heard, "comm_msg", moved));
            send(shell, "shutdown_request", new JsonObject());
            serving.join();
        }
    }

    private static JsonObject open(String id, String target) {
        JsonObject content = Json.one("comm_id", id);
        content.addProperty("target_name", target);
        content.add("data", new JsonObject());
        return content;
    }

    /** A subscriber hears nothing until its subscription has reached the kernel. */
    private void settle(ZMQ.Socket shell, ZMQ.Socket heard) {
        heard.setReceiveTimeOut(300);
        List<String> said = List.of();
        while (!said.contains("idle")) {
            said = ask(shell, heard, "kernel_info_request", new JsonObject());
        }
        heard.setReceiveTimeOut(20_000);
    }

    /** What the kernel says to all about one request until it is idle again, or says nothing more. */
    private List<String> ask(ZMQ.Socket shell, ZMQ.Socket heard, String type, JsonObject content) {
        String request = send(shell, type, content);
        List<String> said = new ArrayList<>();
        while (!said.contains("idle")) {
            byte[] topic = heard.recv();
            if (topic == null) {
                return said;
            }
            List<byte[]> frames = new ArrayList<>(List.of(topic));
            while (heard.hasReceiveMore()) {
                frames.add(heard.recv());
            }
            if (new String(frames.get(PARENT), StandardCharsets.UTF_8).contains(request)) {
                wire.decode(frames).map(KernelCommTest::said).ifPresent(said::add);
            }
        }
        return said;
    }

    private static String said(Message message) {
        return switch (message.type()) {
            case "status" -> message.text("execution_state", "");
            case "comm_msg" -> "comm_msg " + message.content().get("data");
            default -> message.type();
        };
    }

    /** Sends a request and gives its identity. */
    private String send(ZMQ.Socket shell, String type, JsonObject content) {
        List<byte[]> request = wire.encode(List.of(), type, new JsonObject(), content);
        for (int i = 0; i < request.size(); i++) {
            shell.send(request.get(i), i < request.size() - 1 ? ZMQ.SNDMORE : 0);
        }
        return JsonParser.parseString(new String(request.get(HEADER), StandardCharsets.UTF_8))
                .getAsJsonObject()
                .get("msg_id")
                .getAsString();
    }

    private static void serve(Kernel kernel) {
        try {
            kernel.serve();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static ConnectionFile free() throws IOException {
        List<ServerSocket> held = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            held.add(new ServerSocket(0, 1, InetAddress.getLoopbackAddress()));
        }
        List<Integer> ports = held.stream().map(ServerSocket::getLocalPort).toList();
        for (ServerSocket socket : held) {
            socket.close();
        }
        return new ConnectionFile(
                "127.0.0.1", ports.get(0), ports.get(1), ports.get(2), ports.get(3), ports.get(4), "a secret");
    }
}
