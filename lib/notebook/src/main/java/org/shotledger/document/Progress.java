package org.shotledger.document;

import java.util.concurrent.CancellationException;

/** Hears how far a document is, and is where its making can be stopped. */
@FunctionalInterface
public interface Progress {
    /** Hears nothing. */
    Progress NONE = (what, done, of) -> {};

    /**
     * Hears what begins.
     *
     * @param what what begins, in a few words
     * @param done steps that are done
     * @param of all steps
     */
    void begins(String what, int done, int of);

    /**
     * Tells what begins, unless the thread was interrupted.
     *
     * @param what what begins, in a few words
     * @param done steps that are done
     * @param of all steps
     * @throws CancellationException when the thread was interrupted; nothing is written then, and the interrupt stays for the caller
     */
    default void next(String what, int done, int of) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("The document was stopped before \"" + what + "\" (step " + (done + 1)
                    + " of " + of + "); no file was changed. Write it again when you want it.");
        }
        begins(what, done, of);
    }
}
