package org.shotledger.flow;

/** Shape of a hole's inlet. */
public enum Edge {
    /** Rounded or coned inlet; the usual jet. */
    ROUNDED,
    /** Sharp square edge, as drilled. */
    SQUARE
}
