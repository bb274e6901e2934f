package org.shotledger.snippet;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;

/** One invocation of user code: the method, and afterwards its value or what it threw. */
final class Call {

    /** Carries the call from the compiler's thread into the thread that runs it. */
    private static final InheritableThreadLocal<Call> PENDING = new InheritableThreadLocal<>();

    private static final long JOIN_WAIT_NANOS = 5_000_000;

    private final Method method;
    private final Thread caller;
    private volatile Thread runner;
    private volatile boolean done;
    private volatile boolean stopped;
    private Object value;
    private Throwable thrown;

    Call(Method method) {
        this.method = method;
        this.caller = Thread.currentThread();
    }

    /** Makes this the call that {@link #run} picks up in a thread created by the current one. */
    void offer() {
        PENDING.set(this);
    }

    static void withdraw() {
        PENDING.remove();
    }

    /** Entry point, invoked reflectively in the fresh thread of a cell. */
    public static void run() {
        Call call = PENDING.get();
        PENDING.remove();
        call.awaitJoin();
        call.execute();
    }

    /**
     * Waits until the caller has listed the threads it will wait for, so that threads started by the cell do not hold the
     * cell open.
     */
    private void awaitJoin() {
        long end = System.nanoTime() + JOIN_WAIT_NANOS;
        while (caller.getState() == Thread.State.RUNNABLE && System.nanoTime() < end) {
            Thread.onSpinWait();
        }
    }

    private void execute() {
        runner = Thread.currentThread();
        try {
            value = method.invoke(null);
        } catch (InvocationTargetException e) {
            settle(e.getCause());
        } catch (Throwable e) {
            settle(e);
        } finally {
            done = true;
        }
    }

    private void settle(Throwable cause) {
        if (cause instanceof ThreadDeath) {
            stopped = true;
        } else {
            thrown = cause;
        }
    }

    /** Ends this call before it has begun. */
    void refuse() {
        stopped = true;
        done = true;
    }

    void markStopped() {
        stopped = true;
    }

    void interrupt() {
        Thread thread = runner;
        if (thread != null && !done) {
            thread.interrupt();
        }
    }

    boolean isDone() {
        return done;
    }

    boolean isStopped() {
        return stopped;
    }

    Object value() {
        return value;
    }

    Throwable thrown() {
        return thrown;
    }
}
