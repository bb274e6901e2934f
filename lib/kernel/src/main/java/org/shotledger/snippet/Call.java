package org.shotledger.snippet;

import java.lang.ref.WeakReference;
import java.lang.reflect.InvocationTargetException;
import java.util.function.BiConsumer;

/**
 * One invocation of user code: what is called, and afterwards its value or what it threw.
 *
 * <p>The code runs in a thread of its own beside the compiler's, in a group of its own: it can be left behind, and threads it starts hold
 * nobody up. Whether it has ended is asked of the thread itself. Nothing that the thread does last may decide that: what stops a cell
 * comes again and again, and hits its last steps as well.
 */
final class Call {

    /** Carries the call from the session's thread into the one that the compiler waits for. */
    private static final InheritableThreadLocal<Call> PENDING = new InheritableThreadLocal<>();

    private static final long LOOK_MILLIS = 100;

    private final Code code;
    private final CellThreads group;
    private final Thread thread;
    private volatile boolean interrupted;
    private volatile boolean refused;
    private volatile boolean abandoned;
    private boolean returned;
    private Object value;
    private Throwable thrown;

    /** What is called. */
    interface Code {
        Object run() throws ReflectiveOperationException;
    }

    Call(Code code, BiConsumer<Thread, Throwable> uncaught) {
        this.code = code;
        this.group = new CellThreads(uncaught);
        this.thread = new Thread(group, this::execute, "cell");
    }

    /** Makes this the call that {@link #run} picks up in a thread created by the current one. */
    void offer() {
        PENDING.set(this);
    }

    static void withdraw() {
        PENDING.remove();
    }

    /** Entry point, invoked reflectively in the thread that the compiler waits for. */
    public static void run() {
        Call call = PENDING.get();
        PENDING.remove();
        call.thread.start();
        while (!call.isDone() && !call.abandoned) {
            call.join();
        }
    }

    private void join() {
        try {
            thread.join(LOOK_MILLIS);
        } catch (InterruptedException e) {
            // meant for the cell, which gets it itself; this thread has nothing to do but wait
        }
    }

    private void execute() {
        if (interrupted) {
            Thread.currentThread().interrupt(); // asked for before there was a thread to ask
        }
        try {
            Object result = code.run();
            value = abandoned ? null : result;
            returned = true;
        } catch (InvocationTargetException e) {
            settle(e.getCause());
        } catch (Throwable e) {
            settle(e);
        }
    }

    private void settle(Throwable cause) {
        if (!(cause instanceof ThreadDeath)) {
            thrown = cause;
        }
    }

    /** Ends this call before it has begun. */
    void refuse() {
        refused = true;
    }

    /** Lets whoever waits for this call go on without it. */
    void abandon() {
        abandoned = true;
    }

    boolean isAbandoned() {
        return abandoned;
    }

    /** Asks the cell's own thread to stop. */
    void interrupt() {
        interrupted = true;
        thread.interrupt();
    }

    /**
     * Throws a {@link ThreadDeath} into the cell's own thread and those it has started.
     *
     * @return false if this version of Java cannot do that any more
     */
    @SuppressWarnings({"deprecation", "removal"}) // nothing else stops a loop that never looks whether it should stop
    boolean kill() {
        Thread[] all = new Thread[group.activeCount() + 10];
        int count = group.enumerate(all);
        try {
            for (int i = 0; i < count; i++) {
                all[i].stop();
            }
            return true;
        } catch (UnsupportedOperationException | NoSuchMethodError newerJava) {
            return false;
        }
    }

    boolean isDone() {
        return refused || thread.getState() == Thread.State.TERMINATED;
    }

    /** Whether a call that is over was ended from outside: it has neither given a value back nor thrown anything of its own. */
    boolean isStopped() {
        return refused || abandoned || (!returned && thrown == null);
    }

    Object value() {
        return value;
    }

    Throwable thrown() {
        return thrown;
    }

    /** The threads of one cell. Java 17 keeps every group to its end, which must not keep the session. */
    private static final class CellThreads extends ThreadGroup {
        private final WeakReference<BiConsumer<Thread, Throwable>> uncaught;

        CellThreads(BiConsumer<Thread, Throwable> uncaught) {
            super("cell");
            this.uncaught = new WeakReference<>(uncaught);
        }

        @Override
        public void uncaughtException(Thread thread, Throwable thrown) {
            BiConsumer<Thread, Throwable> told = uncaught.get();
            if (told != null && !(thrown instanceof ThreadDeath)) {
                told.accept(thread, thrown);
            }
        }
    }
}
