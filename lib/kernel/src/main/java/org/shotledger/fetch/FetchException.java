package org.shotledger.fetch;

/** A library cannot be had; the message says which, why, and what to do. */
public final class FetchException extends Exception {

    private static final long serialVersionUID = 1;

    FetchException(String message, Throwable cause) {
        super(message, cause);
    }
}
