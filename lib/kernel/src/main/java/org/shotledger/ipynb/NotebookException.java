package org.shotledger.ipynb;

/** A notebook file that cannot be used; the message is one sentence for the user. */
public final class NotebookException extends RuntimeException {

    /**
     * A refusal.
     *
     * @param message what is wrong, where, and what to do
     */
    public NotebookException(String message) {
        super(message);
    }
}
