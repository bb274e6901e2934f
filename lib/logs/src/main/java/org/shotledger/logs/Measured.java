package org.shotledger.logs;

/**
 * A figure and how well it is known.
 *
 * @param value the figure, SI
 * @param standard its standard uncertainty, SI, not negative
 */
public record Measured(double value, double standard) {
    public Measured {
        if (!Double.isFinite(value) || !(standard >= 0) || !Double.isFinite(standard)) {
            throw new IllegalArgumentException("A figure of " + value + " with a standard uncertainty of " + standard
                    + " cannot be used; both must be finite, the uncertainty not negative.");
        }
    }

    Measured plusStandard() {
        return new Measured(value + standard, standard);
    }
}
