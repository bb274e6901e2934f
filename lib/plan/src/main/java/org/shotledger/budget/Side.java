package org.shotledger.budget;

/** On which side of its bound a value must stay. */
public enum Side {
    /** The value must not exceed the bound. */
    AT_MOST,
    /** The value must not fall below the bound. */
    AT_LEAST
}
