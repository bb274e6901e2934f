package org.shotledger.study;

import java.util.Arrays;

/**
 * One speed under one nitrous setting and boost: the boost that is held. An output is worked out when it is asked
 * for.
 */
final class SpeedRow {
    /** The boost that is held, Pa absolute. */
    double plenum;
    /** Stretched richness without fuel, and its slope per kg/s at the reference pressure. */
    double offset;

    double slope;
    private final SpeedTable table;
    private final double[][] powers;
    private final boolean[] known;
    private final double[] factors;
    private double[][] atPressure;

    SpeedRow(SpeedTable table) {
        this.table = table;
        this.powers = new double[table.outputs][table.basis.richness + 1];
        this.known = new boolean[table.outputs];
        this.factors = new double[table.basis.groups.length];
    }

    /** Puts nitrous setting and boost in. */
    void set(double[][] tableAtPressure, double held, KitTable.Nitrous nitrous, FuelRow fuel) {
        plenum = held;
        atPressure = tableAtPressure;
        table.factors(held, nitrous.enthalpy(), nitrous.flow(), factors);
        offset = table.richOffset(held, nitrous.flow());
        slope = table.richSlope(held, nitrous.flow()) * fuel.share(held);
        Arrays.fill(known, false);
    }

    /** An output as powers of the stretched richness, at the boost that is held. */
    double[] powers(int k) {
        if (!known[k]) {
            table.basis.gather(atPressure[k], factors, powers[k]);
            known[k] = true;
        }
        return powers[k];
    }
}
