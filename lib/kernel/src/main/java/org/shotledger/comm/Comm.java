package org.shotledger.comm;

import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** One open line between Java and the page; either side may close it. */
public final class Comm {

    private final Comms comms;
    private final String id;
    private final String target;
    private volatile Consumer<CommMessage> receiver = message -> {};
    private volatile Runnable whenClosed = () -> {};
    private volatile Supplier<Map<String, Object>> state = Map::of;

    Comm(Comms comms, String id, String target) {
        this.comms = comms;
        this.id = id;
        this.target = target;
    }

    /**
     * What both sides call this comm.
     *
     * @return 32 hexadecimal digits if it was opened here
     */
    public String id() {
        return id;
    }

    /**
     * What the comm is for.
     *
     * @return the name under which the other side knows what to do with it
     */
    public String target() {
        return target;
    }

    /**
     * Says who is told what arrives.
     *
     * @param consumer called for each message, one at a time, and never while a cell runs; what it throws is shown under the newest
     *     cell
     * @return this comm
     */
    public Comm onMessage(Consumer<CommMessage> consumer) {
        receiver = consumer;
        return this;
    }

    /**
     * Says who is told that the page has closed the comm.
     *
     * @param task called once
     * @return this comm
     */
    public Comm onClose(Runnable task) {
        whenClosed = task;
        return this;
    }

    /**
     * Says what a page must know that was loaded after the comm was opened.
     *
     * @param current asked for at that moment
     * @return this comm
     */
    public Comm describedBy(Supplier<Map<String, Object>> current) {
        state = current;
        return this;
    }

    /**
     * What a page must know that was loaded after the comm was opened.
     *
     * @return empty where nobody said what describes it
     */
    public Map<String, Object> state() {
        return state.get();
    }

    /**
     * Sends a message; may be called from any thread, also while a cell runs.
     *
     * @param message the message; dropped if the comm is closed
     */
    public void send(CommMessage message) {
        if (isOpen()) {
            comms.send("comm_msg", this, message);
        }
    }

    /** Closes the comm; closing twice does no harm. */
    public void close() {
        comms.close(this);
    }

    /**
     * Whether messages still go through.
     *
     * @return false once either side has closed the comm
     */
    public boolean isOpen() {
        return comms.isOpen(this);
    }

    void receive(CommMessage message) {
        receiver.accept(message);
    }

    void closed() {
        whenClosed.run();
    }
}
