package org.shotledger.kernel;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.SessionOptions;
import org.shotledger.snippet.Words;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** The front end of a kernel that runs in this process: sends requests and hears what is published about each. */
final class Page implements AutoCloseable {
    /** Frames of a request: delimiter, signature, header; what is published has its topic before them, and the parent behind. */
    private static final int HEADER = 2;

    private static final int PARENT = 4;

    private final Wire wire = new Wire("a secret");
    private final Thread serving;
    private final ZContext context = new ZContext();
    private final ZMQ.Socket heard = context.createSocket(SocketType.SUB);
    private final ZMQ.Socket shell = context.createSocket(SocketType.DEALER);
    private final ZMQ.Socket control = context.createSocket(SocketType.DEALER);

    /** Starts a kernel and waits until it is heard. */
    Page(String... imports) throws IOException {
        ConnectionFile meeting = free();
        List<String> lines =
                List.of(imports).stream().map(name -> "import " + name + ";").toList();
        Kernel kernel = new Kernel(meeting, () -> new JavaSession(SessionOptions.of(lines)), Words.NONE);
        serving = new Thread(() -> serve(kernel), "kernel");
        serving.start();
        heard.subscribe(new byte[0]);
        heard.connect(meeting.address(meeting.iopub()));
        shell.connect(meeting.address(meeting.shell()));
        control.connect(meeting.address(meeting.control()));
        settle();
    }

    /** A subscriber hears nothing until its subscription has reached the kernel. */
    private void settle() {
        heard.setReceiveTimeOut(300);
        List<Message> said = List.of();
        while (said.stream().noneMatch(Page::isIdle)) {
            said = ask("kernel_info_request", new JsonObject());
        }
        heard.setReceiveTimeOut(20_000);
    }

    /** Runs a cell; gives what was published about it. */
    List<Message> run(String code) {
        return ask("execute_request", Json.one("code", code));
    }

    /** Sends a request; gives what the kernel says to all about it until it is idle again, or says nothing more. */
    List<Message> ask(String type, JsonObject content) {
        return hear(send(type, content));
    }

    /** What is published about a request from now on until the kernel is idle about it. */
    List<Message> hear(String request) {
        List<Message> said = new ArrayList<>();
        while (said.stream().noneMatch(Page::isIdle)) {
            byte[] topic = heard.recv();
            if (topic == null) {
                return said;
            }
            List<byte[]> frames = new ArrayList<>(List.of(topic));
            while (heard.hasReceiveMore()) {
                frames.add(heard.recv());
            }
            if (new String(frames.get(PARENT), StandardCharsets.UTF_8).contains(request)) {
                wire.decode(frames).ifPresent(said::add);
            }
        }
        return said;
    }

    static boolean isIdle(Message message) {
        return message.type().equals("status")
                && message.text("execution_state", "").equals("idle");
    }

    /** Asks the kernel to stop what runs. */
    void interrupt() {
        send(control, "interrupt_request", new JsonObject());
    }

    /** Sends a request and gives its identity. */
    String send(String type, JsonObject content) {
        return send(shell, type, content);
    }

    private String send(ZMQ.Socket socket, String type, JsonObject content) {
        List<byte[]> request = wire.encode(List.of(), type, new JsonObject(), content);
        for (int i = 0; i < request.size(); i++) {
            socket.send(request.get(i), i < request.size() - 1 ? ZMQ.SNDMORE : 0);
        }
        return JsonParser.parseString(new String(request.get(HEADER), StandardCharsets.UTF_8))
                .getAsJsonObject()
                .get("msg_id")
                .getAsString();
    }

    @Override
    public void close() {
        send("shutdown_request", new JsonObject());
        try {
            serving.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        context.close();
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
