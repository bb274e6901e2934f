package org.shotledger.budget;

/** A wish that no budget can meet; the message says why, and what could be asked instead. */
public final class WishException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    /**
     * Makes the refusal.
     *
     * @param sentence what was asked, what is possible, what to change
     */
    public WishException(String sentence) {
        super(sentence);
    }
}
