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

    static final int POLL_MILLIS = 100;
    static final int LINGER_MILLIS = 1_000;

    private final ZMQ.Socket socket;
    private final Wire wire;

    Channel(ZContext context, SocketType type, String address, Wire wire) {
        this.wire = wire;
        socket = context.createSocket(type);
        socket.setLinger(LINGER_MILLIS);
        socket.setHWM(0);
        socket.setReceiveTimeOut(POLL_MILLIS);
        socket.bind(address);
    }

    /** The next message, if one comes within a tenth of a second. */
    synchronized Optional<Message> receive() {
        byte[] first = socket.recv();
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

    synchronized void send(List<byte[]> identities, String type, JsonObject parent, JsonObject content) {
        List<byte[]> frames = wire.encode(identities, type, parent, content);
        for (int i = 0; i < frames.size() - 1; i++) {
            socket.sendMore(frames.get(i));
        }
        socket.send(frames.get(frames.size() - 1));
    }
}
