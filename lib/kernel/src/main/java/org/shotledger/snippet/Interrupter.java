package org.shotledger.snippet;

import jdk.jshell.spi.ExecutionControl;

/** Stops the running cell: first by asking, then by force; one that nothing stops is left behind. */
final class Interrupter {

    private static final long ASK_MILLIS = 250;
    private static final long FORCE_MILLIS = 3_000;
    private static final int BURST = 100;

    private final CellControl control;

    Interrupter(CellControl control) {
        this.control = control;
    }

    void reset() {
        control.allow();
    }

    /** Returns when the cell has stopped or was left behind. */
    void interrupt() throws InterruptedException {
        control.requestStop();
        Call call = control.lastCall();
        if (call == null) {
            return; // nothing runs yet, and nothing will be started
        }
        call.interrupt();
        if (!awaitEnd(call, ASK_MILLIS) && !force(call)) {
            call.abandon();
        }
    }

    /** Repeats in bursts, since a cell that catches everything can only be ended between two catches. */
    private boolean force(Call call) throws InterruptedException {
        long end = System.nanoTime() + FORCE_MILLIS * 1_000_000;
        while (System.nanoTime() < end) {
            for (int i = 0; i < BURST && !call.isDone(); i++) {
                stopOnce(call);
            }
            if (awaitEnd(call, 10)) {
                return true;
            }
        }
        return call.isDone();
    }

    private void stopOnce(Call call) {
        if (call.kill()) {
            return;
        }
        try {
            control.stop(); // newer Java weaves a look at this wish into the loops of cells
        } catch (ExecutionControl.EngineTerminationException | ExecutionControl.InternalException e) {
            throw new IllegalStateException("the running cell cannot be stopped", e);
        }
    }

    private static boolean awaitEnd(Call call, long millis) throws InterruptedException {
        long end = System.nanoTime() + millis * 1_000_000;
        while (!call.isDone() && System.nanoTime() < end) {
            Thread.sleep(2);
        }
        return call.isDone();
    }
}
