package org.shotledger.kernel;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.Words;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** Starts a kernel on free ports of this machine and talks to it as a front end would. */
public final class SelfCheck {

    private static final int CHANNELS = 5;
    private static final long WAIT_NANOS = 30_000_000_000L;

    private SelfCheck() {}

    /**
     * Runs one cell through all of the kernel: sockets, signatures, session.
     *
     * @param sessions makes the session
     * @param code the cell
     * @return the status of the reply, such as {@code ok}; empty if none came
     * @throws IOException if no ports are free
     * @throws InterruptedException if the calling thread is interrupted
     */
    public static Optional<String> run(Supplier<JavaSession> sessions, String code)
            throws IOException, InterruptedException {
        ConnectionFile connection = free();
        Kernel kernel = new Kernel(connection, sessions, Words.NONE);
        Thread serving = new Thread(() -> serve(kernel), "kernel");
        serving.setDaemon(true);
        serving.start();
        try (ZContext context = new ZContext();
                ZMQ.Socket shell = context.createSocket(SocketType.DEALER)) {
            shell.connect(connection.address(connection.shell()));
            shell.setReceiveTimeOut(200);
            Wire wire = new Wire(connection.key());
            for (String type : List.of("kernel_info_request", "is_complete_request", "complete_request")) {
                ask(shell, wire, type, code);
            }
            Optional<String> status = ask(shell, wire, "execute_request", code).map(reply -> reply.text("status", ""));
            ask(shell, wire, "shutdown_request", "");
            serving.join();
            return status;
        }
    }

    private static void serve(Kernel kernel) {
        try {
            kernel.serve();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static Optional<Message> ask(ZMQ.Socket shell, Wire wire, String type, String code) {
        List<byte[]> request = wire.encode(List.of(), type, new JsonObject(), Json.one("code", code));
        for (int i = 0; i < request.size(); i++) {
            shell.send(request.get(i), i < request.size() - 1 ? ZMQ.SNDMORE : 0);
        }
        long end = System.nanoTime() + WAIT_NANOS;
        while (System.nanoTime() < end) {
            byte[] first = shell.recv();
            if (first != null) {
                List<byte[]> frames = new ArrayList<>(List.of(first));
                while (shell.hasReceiveMore()) {
                    frames.add(shell.recv());
                }
                return wire.decode(frames);
            }
        }
        return Optional.empty();
    }

    private static ConnectionFile free() throws IOException {
        List<ServerSocket> held = new ArrayList<>();
        try {
            for (int i = 0; i < CHANNELS; i++) {
                held.add(new ServerSocket(0, 1, InetAddress.getLoopbackAddress()));
            }
            return new ConnectionFile(
                    "127.0.0.1",
                    held.get(0).getLocalPort(),
                    held.get(1).getLocalPort(),
                    held.get(2).getLocalPort(),
                    held.get(3).getLocalPort(),
                    held.get(4).getLocalPort(),
                    UUID.randomUUID().toString());
        } finally {
            for (ServerSocket socket : held) {
                socket.close();
            }
        }
    }
}
