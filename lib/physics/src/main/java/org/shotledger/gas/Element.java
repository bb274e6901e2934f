package org.shotledger.gas;

/** The elements of combustion, with their place in the data file. */
public enum Element {
    /** Carbon. */
    C(0),
    /** Hydrogen. */
    H(1),
    /** Oxygen. */
    O(2),
    /** Nitrogen. */
    N(3),
    /** Argon. */
    AR(4);

    private final int column;

    Element(int column) {
        this.column = column;
    }

    int column() {
        return column;
    }
}
