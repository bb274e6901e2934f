package org.shotledger.bottle;

/**
 * Places of the quantities that are integrated. Mass, energy and what crosses the boundary are linear in the rates, so that any
 * Runge-Kutta step keeps their balance to rounding.
 */
final class Layout {
    /** Nitrous oxide in the bottle, kg. */
    static final int MASS = 0;
    /** Internal energy of the contents, J. */
    static final int ENERGY = 1;
    /** Heat content of the shell, heat capacity times temperature, J. */
    static final int SHELL = 2;
    /** Mass that has left, kg. */
    static final int OUT = 3;
    /** Enthalpy that left with it, J. */
    static final int OUT_ENTHALPY = 4;
    /** Heat taken in from air and heater, J. */
    static final int HEAT = 5;
    /** Liquid, kg; only while liquid and vapour are kept apart. */
    static final int LIQUID = 6;
    /** Temperature of that liquid, K. */
    static final int LIQUID_TEMPERATURE = 7;
    /** Share of the boiling nuclei that are active, 0 to 1. */
    static final int BUBBLES = 8;
    /** Number of quantities. */
    static final int SIZE = 9;

    private Layout() {}
}
