package org.shotledger.snippet;

import java.lang.ref.WeakReference;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.concurrent.CountDownLatch;
import java.util.function.BiConsumer;

/** One invocation of user code: the method, and afterwards its value or what it threw. */
final class Call {

    /** Carries the call from the compiler's thread into the thread that runs it. */
    private static final InheritableThreadLocal<Call> PENDING = new InheritableThreadLocal<>();

    private static final long JOIN_WAIT_NANOS = 5_000_000;

    private final Method method;
    private final BiConsumer<Thread, Throwable> uncaught;
    private final Thread caller;
    private final CountDownLatch ended = new CountDownLatch(1);
    private volatile Thread runner;
    private volatile boolean done;
    private volatile boolean stopped;
    private volatile boolean abandoned;
    private Object value;
    private Throwable thrown;

    Call(Method method, BiConsumer<Thread, Throwable> uncaught) {
        this.method = method;
        this.uncaught = uncaught;
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
        // a thread below this one, so that it can be left behind, in a group that tells what the cell's threads throw
        ThreadGroup group = new CellThreads(call.uncaught);
        new Thread(group, call::execute, "cell").start();
        call.awaitEnd();
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

    private void awaitEnd() {
        boolean over = false;
        while (!over) {
            over = isOver();
        }
    }

    /** What stops the cell's threads may hit this one as well, which has to go on waiting. */
    private boolean isOver() {
        try {
            ended.await();
            return true;
        } catch (InterruptedException | ThreadDeath e) {
            return false;
        }
    }

    private void execute() {
        runner = Thread.currentThread();
        try {
            Object result = method.invoke(null);
            value = abandoned ? null : result;
        } catch (InvocationTargetException e) {
            settle(e.getCause());
        } catch (Throwable e) {
            settle(e);
        } finally {
            done = true;
            ended.countDown();
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

    /** Lets whoever waits for this call go on without it. */
    void abandon() {
        abandoned = true;
        ended.countDown();
    }

    boolean isAbandoned() {
        return abandoned;
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
        return stopped || abandoned;
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
