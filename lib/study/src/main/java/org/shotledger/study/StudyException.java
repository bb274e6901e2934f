package org.shotledger.study;

/** Says in one sentence why a study cannot be made and what to change. */
public final class StudyException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /**
     * Carries the sentence.
     *
     * @param message what is wrong, where, the value, what is allowed, what to do
     */
    public StudyException(String message) {
        super(message);
    }
}
