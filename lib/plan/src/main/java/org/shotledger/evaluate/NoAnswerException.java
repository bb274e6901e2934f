package org.shotledger.evaluate;

/** The models have no answer at an operating point; the message says which part stops it. It never leaves an outcome. */
public final class NoAnswerException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    NoAnswerException(String message) {
        super(message);
    }

    NoAnswerException(String message, RuntimeException cause) {
        super(message, cause);
    }
}
