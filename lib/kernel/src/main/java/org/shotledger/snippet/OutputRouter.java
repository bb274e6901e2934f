package org.shotledger.snippet;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinWorkerThread;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Leads {@code System.out} and {@code System.err} to the cell that prints, also when it prints from its own threads or after
 * its end.
 */
public final class OutputRouter implements AutoCloseable {

    private static final long FLUSH_MILLIS = 40;
    private static final InheritableThreadLocal<OutputBuffer> OWN = new InheritableThreadLocal<>();

    private final AtomicReference<OutputBuffer> current = new AtomicReference<>();
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "output");
        thread.setDaemon(true);
        return thread;
    });
    private final PrintStream originalOut = System.out;
    private final PrintStream originalErr = System.err;
    private final InputStream originalIn = System.in;

    /**
     * Takes the process's streams.
     *
     * @param outside told what is printed while no cell has run yet
     */
    public OutputRouter(OutputListener outside) {
        current.set(new OutputBuffer(outside));
        System.setOut(stream("stdout"));
        System.setErr(stream("stderr"));
    }

    private PrintStream stream(String name) {
        return new PrintStream(new Route(name), false, StandardCharsets.UTF_8);
    }

    /**
     * Sends what this thread, and each thread it starts from now on, prints to a listener.
     *
     * @param listener told what is printed
     */
    public void begin(OutputListener listener) {
        OutputBuffer buffer = new OutputBuffer(listener);
        OWN.set(buffer);
        current.set(buffer);
    }

    /** Passes on at once what the newest cell has printed so far. */
    public void flush() {
        current.get().flush();
    }

    /** Gives the process its own streams back. */
    @Override
    public void close() {
        flush();
        System.setOut(originalOut);
        System.setErr(originalErr);
        System.setIn(originalIn);
        clock.shutdownNow();
    }

    private OutputBuffer buffer() {
        // a pool's threads are shared by all cells: they print for the newest
        OutputBuffer mine = Thread.currentThread() instanceof ForkJoinWorkerThread ? null : OWN.get();
        return mine == null ? current.get() : mine;
    }

    /** One of the two streams. */
    private final class Route extends OutputStream {
        private final String name;

        Route(String name) {
            this.name = name;
        }

        @Override
        public void write(int b) throws IOException {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int offset, int count) {
            OutputBuffer buffer = buffer();
            if (buffer.append(name, bytes, offset, count)) {
                // a failing flush shows itself at the next, on the cell's own thread
                ScheduledFuture<?> unused = clock.schedule(buffer::flush, FLUSH_MILLIS, TimeUnit.MILLISECONDS);
            }
        }
    }
}
