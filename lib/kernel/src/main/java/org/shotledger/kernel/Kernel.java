package org.shotledger.kernel;

import com.google.gson.JsonObject;
import java.nio.channels.ClosedSelectorException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.shotledger.comm.Comms;
import org.shotledger.controls.ControlTarget;
import org.shotledger.display.Display;
import org.shotledger.snippet.Assistant;
import org.shotledger.snippet.JavaSession;
import org.shotledger.snippet.OutputRouter;
import org.shotledger.snippet.Words;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/** A kernel: four channels and a heartbeat around one Java session. */
public final class Kernel {

    /** How Jupyter tells a kernel who started it. */
    private static final String PARENT_ID = "JPY_PARENT_PID";

    private static final long PARENT_CHECK_MILLIS = 2_000;
    private static final long LEAVE_NANOS = 500_000_000L;
    private static final long CLOSE_MILLIS = Channel.LINGER_MILLIS + 500;

    private final ConnectionFile connection;
    private final Supplier<JavaSession> sessions;
    private final Words words;
    private final CountDownLatch end = new CountDownLatch(1);
    private volatile JavaSession session;

    /**
     * A kernel, not yet started.
     *
     * @param connection where to listen
     * @param sessions makes the session
     * @param words what the product adds to completion
     */
    public Kernel(ConnectionFile connection, Supplier<JavaSession> sessions, Words words) {
        this.connection = connection;
        this.sessions = sessions;
        this.words = words;
    }

    /**
     * Serves until a front end asks for the end, or the process that started this one is gone.
     *
     * @throws InterruptedException if the calling thread is interrupted
     */
    public void serve() throws InterruptedException {
        // the compiler takes longest to start: let it start while the sockets are opened
        CompletableFuture<JavaSession> starting = CompletableFuture.supplyAsync(sessions);
        ZContext context = new ZContext();
        Wire wire = new Wire(connection.key());
        Channel shell = channel(context, SocketType.ROUTER, connection.shell(), wire);
        Channel control = channel(context, SocketType.ROUTER, connection.control(), wire);
        Channel stdin = channel(context, SocketType.ROUTER, connection.stdin(), wire);
        IoPub iopub = new IoPub(channel(context, SocketType.PUB, connection.iopub(), wire));
        iopub.status("starting", new JsonObject());
        Thread heartbeat = daemon("heartbeat", () -> heartbeat(context));
        Thread controlling = daemon("control", () -> control(control, iopub));
        try (OutputRouter router = new OutputRouter((stream, text) -> iopub.stream(stream, text, new JsonObject()))) {
            FrontEnd frontEnd = new FrontEnd(iopub, stdin, router);
            System.setIn(new AskedInput(frontEnd));
            Display.install(frontEnd);
            Thread answering = daemon("shell", () -> shell(shell, iopub, router, frontEnd, starting));
            awaitEnd();
            for (int port : new int[] {connection.heartbeat(), connection.control(), connection.shell()}) {
                Channel.wake(context, connection.address(port));
            }
            leave(heartbeat, controlling, answering);
            Display.install(null);
            Comms.install(null);
        }
        // what is still to be sent gets a moment; a cell that goes on running must not keep the process
        daemon("closing", context::close).join(CLOSE_MILLIS);
    }

    private void awaitEnd() throws InterruptedException {
        Optional<ProcessHandle> parent = parent();
        if (parent.isEmpty() && System.getenv(PARENT_ID) != null) {
            return; // whoever started this kernel is gone already
        }
        while (!end.await(PARENT_CHECK_MILLIS, TimeUnit.MILLISECONDS)) {
            if (parent.isPresent() && !parent.get().isAlive()) {
                return;
            }
        }
    }

    /** A front end names itself, since a parent that dies early is no longer the parent. */
    private static Optional<ProcessHandle> parent() {
        String named = System.getenv(PARENT_ID);
        return named != null && named.matches("\\d{1,9}")
                ? ProcessHandle.of(Long.parseLong(named))
                : ProcessHandle.current().parent();
    }

    /** A socket must not be closed under the thread that uses it; each thread leaves soon, unless a cell goes on running. */
    private static void leave(Thread... threads) throws InterruptedException {
        long until = System.nanoTime() + LEAVE_NANOS;
        for (Thread thread : threads) {
            thread.join(Math.max(1, (until - System.nanoTime()) / 1_000_000));
        }
    }

    private Channel channel(ZContext context, SocketType type, int port, Wire wire) {
        int poll = port == connection.stdin() ? Channel.ASK_MILLIS : Channel.POLL_MILLIS;
        return new Channel(context, type, connection.address(port), wire, poll);
    }

    private Thread daemon(String name, Runnable task) {
        Thread thread = new Thread(() -> untilSocketsClose(task), name);
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    /** At shutdown the sockets go first; a thread that still waits on one just ends. */
    private void untilSocketsClose(Runnable task) {
        try {
            task.run();
        } catch (ClosedSelectorException e) {
            if (end.getCount() > 0) {
                throw e;
            }
        } catch (ZMQException e) {
            if (e.getErrorCode() != ZMQ.Error.ETERM.getCode()) {
                throw e;
            }
        }
    }

    private void heartbeat(ZContext context) {
        try (ZMQ.Socket socket = context.createSocket(SocketType.REP)) {
            socket.setReceiveTimeOut(Channel.POLL_MILLIS);
            socket.bind(connection.address(connection.heartbeat()));
            while (end.getCount() > 0) {
                byte[] beat = socket.recv();
                if (beat != null) {
                    socket.send(beat);
                }
            }
        }
    }

    private void control(Channel channel, IoPub iopub) {
        while (end.getCount() > 0) {
            channel.receive()
                    .ifPresent(message -> guarded(() -> {
                        iopub.status("busy", message.header());
                        switch (message.type()) {
                            case "interrupt_request" -> {
                                reply(channel, message, Json.ok());
                                interrupt();
                            }
                            case "shutdown_request" -> shutdown(channel, iopub, message);
                            case "kernel_info_request" -> reply(channel, message, Requests.kernelInfo());
                            default -> {
                                // not spoken here: the protocol says to ignore what is unknown
                            }
                        }
                        iopub.status("idle", message.header());
                    }));
        }
    }

    private void interrupt() {
        JavaSession running = session;
        if (running == null) {
            return;
        }
        try {
            running.interrupt();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void shutdown(Channel channel, IoPub iopub, Message message) {
        JsonObject content = Json.ok();
        content.addProperty("restart", message.flag("restart", false));
        reply(channel, message, content);
        iopub.comm("shutdown_reply", content, message.header());
        iopub.status("idle", message.header());
        end.countDown();
    }

    private void shell(
            Channel channel,
            IoPub iopub,
            OutputRouter router,
            FrontEnd frontEnd,
            CompletableFuture<JavaSession> starting) {
        // the kernel describes itself while the session still starts
        Message pending = null;
        while (!starting.isDone() && pending == null) {
            pending = channel.receive()
                    .filter(m -> !answeredInfo(channel, iopub, m))
                    .orElse(null);
        }
        session = starting.join();
        Comms comms = new Comms((type, comm, message) -> iopub.comm(type, comm, message, frontEnd.parent()));
        comms.register(ControlTarget.NAME, ControlTarget.of(comms));
        Comms.install(comms);
        Executor executor = new Executor(session, iopub, router, frontEnd, comms);
        Requests requests = new Requests(new Assistant(session, words), comms);
        Deque<Message> arrived = new ArrayDeque<>();
        if (pending != null) {
            arrived.add(pending);
        }
        while (end.getCount() > 0) {
            if (arrived.isEmpty()) {
                channel.receive().ifPresent(arrived::add);
            }
            takeWaiting(channel, arrived);
            Message message = arrived.poll();
            if (message != null) {
                boolean settles = isComm(message) && (arrived.isEmpty() || !isComm(arrived.peek()));
                handle(
                        channel,
                        iopub,
                        message,
                        executor,
                        requests,
                        settles ? () -> comms.settle(session::run) : () -> {});
            }
        }
    }

    /** What has already come is taken in at once, so that a control which moved on meanwhile is answered for its newest value alone. */
    private static void takeWaiting(Channel channel, Deque<Message> arrived) {
        Optional<Message> next = channel.receiveWaiting();
        while (next.isPresent()) {
            arrived.add(next.get());
            next = channel.receiveWaiting();
        }
    }

    private static boolean isComm(Message message) {
        return message.type().startsWith("comm_") && !message.type().endsWith("_request");
    }

    private boolean answeredInfo(Channel channel, IoPub iopub, Message message) {
        boolean info = message.type().equals("kernel_info_request");
        if (info) {
            handle(channel, iopub, message, null, null, () -> {});
        }
        return info;
    }

    private void handle(
            Channel channel, IoPub iopub, Message message, Executor executor, Requests requests, Runnable afterwards) {
        guarded(() -> {
            iopub.status("busy", message.header());
            try {
                answer(channel, iopub, message, executor, requests, afterwards);
            } finally {
                iopub.status("idle", message.header());
            }
        });
    }

    private void answer(
            Channel channel, IoPub iopub, Message message, Executor executor, Requests requests, Runnable afterwards) {
        switch (message.type()) {
            case "kernel_info_request" -> reply(channel, message, Requests.kernelInfo());
            case "execute_request" -> reply(channel, message, executor.execute(message));
            case "complete_request" -> reply(channel, message, requests.complete(message));
            case "inspect_request" -> reply(channel, message, requests.inspect(message));
            case "is_complete_request" -> reply(channel, message, requests.isComplete(message));
            case "history_request" -> reply(channel, message, executor.history().reply(message));
            case "comm_info_request" -> reply(channel, message, requests.commInfo(message));
            case "comm_open", "comm_msg", "comm_close" ->
                executor.frontEnd().during(message, () -> requests.comm(message, afterwards));
            case "shutdown_request" -> shutdown(channel, iopub, message);
            default -> {
                // not spoken here: the protocol says to ignore what is unknown
            }
        }
    }

    private static void reply(Channel channel, Message request, JsonObject content) {
        String type = request.type().replace("_request", "_reply");
        channel.send(request.identities(), type, request.header(), content);
    }

    /** Whatever goes wrong with one message must not end the channel. */
    private void guarded(Runnable work) {
        try {
            work.run();
        } catch (ZMQException e) {
            throw e;
        } catch (RuntimeException | Error e) {
            if (end.getCount() > 0) { // at the end the sockets go while the last status is still on its way
                System.err.println("A message could not be answered: " + e);
            }
        }
    }
}
