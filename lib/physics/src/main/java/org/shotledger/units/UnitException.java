package org.shotledger.units;

/** A figure with its unit could not be read; the message says what was found, what is allowed and what to write. */
public final class UnitException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param message one sentence
     */
    public UnitException(String message) {
        super(message);
    }
}
