package org.shotledger.fuel;

import org.shotledger.units.Require;

/**
 * Octane numbers of a fuel. Those of pure alcohols lie outside the design range of the test methods (ASTM D2699 and
 * D2700) and the printed values differ by several numbers.
 *
 * @param research research octane number RON, 0 to 140
 * @param motor motor octane number MON, 0 to 140
 */
public record Octane(double research, double motor) {
    /** Checks the ranges. */
    public Octane {
        Require.within("research octane number", research, 0, 140, "");
        Require.within("motor octane number", motor, 0, 140, "");
    }

    /**
     * The mean of both methods, the number on pumps in some countries.
     *
     * @return (RON + MON) / 2
     */
    public double antiKnockIndex() {
        return (research + motor) / 2;
    }

    /**
     * The octane index after Kalghatgi, SAE 2001-01-3584: {@code OI = RON - K (RON - MON)}; K is negative in boosted
     * engines.
     *
     * @param k the engine's K, from -2 to 1
     * @return the octane index
     */
    public double index(double k) {
        Require.within("K of the octane index", k, -2, 1, "");
        return research - k * (research - motor);
    }
}
