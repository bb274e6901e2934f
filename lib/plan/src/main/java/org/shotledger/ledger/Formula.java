package org.shotledger.ledger;

/** How a figure is made from the figures its entry names. */
@FunctionalInterface
public interface Formula {
    /**
     * Makes the figure.
     *
     * @param inputs values of the entry's inputs, SI, in their order
     * @return the figure, SI
     */
    double of(double... inputs);
}
