package org.shotledger.stepup;

import org.shotledger.limits.Provenance;
import org.shotledger.units.QuantityKind;

/**
 * One figure to be read after a step, and what it must be to go on.
 *
 * @param figure which figure it is
 * @param what the figure, in the words of the trade
 * @param kind what it measures
 * @param expected what the model expects, SI; NaN when the checkpoint is a bound alone
 * @param low lowest figure with which to go on, SI; negative infinity for none
 * @param high highest figure with which to go on, SI; positive infinity for none
 * @param otherwise what to do outside
 * @param provenance how the bounds are known
 */
public record Checkpoint(
        Figure figure,
        String what,
        QuantityKind kind,
        double expected,
        double low,
        double high,
        String otherwise,
        Provenance provenance) {

    /** The figures that are read after a step. */
    public enum Figure {
        /** Power at the wheels, W. */
        WHEEL_POWER,
        /** Mixture of all streams. */
        LAMBDA,
        /** Pressure of the nitrous fuel above the plenum, Pa. */
        NITROUS_FUEL_PRESSURE,
        /** Bottle pressure before opening, Pa absolute. */
        BOTTLE_PRESSURE,
        /** Share of the cycle the main injectors are open. */
        INJECTOR_DUTY,
        /** Torque at the crankshaft, N m. */
        CRANK_TORQUE,
        /** Exhaust temperature of the hottest cylinder above that of the coldest, K. */
        EXHAUST_SPREAD
    }

    /**
     * Tells whether a reading allows the next step.
     *
     * @param reading the figure read, SI
     * @return true between the bounds, ends included; false for a reading that is not a number
     */
    public boolean go(double reading) {
        return reading >= low && reading <= high;
    }
}
