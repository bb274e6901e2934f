package org.shotledger.kernel;

import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** One socket; every use of it holds its lock, since sockets belong to one thread at a time. */
final class Channel {

    /** A waiting thread looks round this often; whoever wants it to end sooner wakes it with a message. */
    static final int POLL_MILLIS = 2_000;

    /** For questions to the user, which can be given up. */
    static final int ASK_MILLIS = 100;

    static final int LINGER_MILLIS = 1_000;

    private final ZMQ.Socket socket;
    private final Wire wire;

    Channel(ZContext context, SocketType type, String address, Wire wire, int pollMillis) {
        this.wire = wire;
        socket = context.createSocket(type);
        socket.setLinger(LINGER_MILLIS);
        socket.setHWM(0);
        socket.setReceiveTimeOut(pollMillis);
        socket.bind(address);
    }

    /** The next message, if one comes in time. */
    Optional<Message> receive() {
        return receive(0);
    }

    /** A message that has already come. */
    Optional<Message> receiveWaiting() {
        return receive(ZMQ.DONTWAIT);
    }

    private synchronized Optional<Message> receive(int flags) {
        byte[] first = socket.recv(flags);
        if (first == null) {
            return Optional.empty();
        }
        List<byte[]> frames = new ArrayList<>();
        frames.add(first);
        while (socket.hasReceiveMore()) {
            frames.add(socket.recv());
        }
        return wire.decode(frames);
    }

    /** Ends the waiting of whoever waits at this address, with a message that says nothing. */
    static void wake(ZContext context, String address) {
        try (ZMQ.Socket socket = context.createSocket(SocketType.DEALER)) {
            socket.setLinger(LINGER_MILLIS);
            socket.connect(address);
            socket.sendMore(new byte[0]);
            socket.send(new byte[0]);
        }
    }

    void send(List<byte[]> identities, String type, JsonObject parent, JsonObject content) {
        send(wire.encode(identities, type, parent, content));
    }

    void send(
            List<byte[]> identities,
            String type,
            JsonObject parent,
            JsonObject content,
            JsonObject metadata,
            List<byte[]> buffers) {
        send(wire.encode(identities, type, parent, content, metadata, buffers));
    }

    private synchronized void send(List<byte[]> frames) {
        for (int i = 0; i < frames.size() - 1; i++) {
            socket.sendMore(frames.get(i));
        }
        socket.send(frames.get(frames.size() - 1));
    }
}
