package org.shotledger.study;

import org.shotledger.budget.Course;

/** One speed under one nitrous setting and boost: the row at the boost that is held, and where boost is taken back. */
final class SpeedRow {
    private static final int SCAN = 7;

    /** Each output as powers of the stretched richness. */
    final double[][] powers;
    /** How many of the powers matter, less one. */
    final int[] degrees;
    /** Stretched richness without fuel, and its slope per kg/s at the reference pressure. */
    double offset;

    double slope;
    /** Where torque, and where peak pressure, keeps its reserve; null where it always does. */
    TaperBranch torque;

    TaperBranch peak;
    /** The branch that rules for every fuel setting, or null. */
    TaperBranch only;
    /** Whether a branch rules for some fuel setting. */
    boolean tapered;

    SpeedRow(SpeedTable table) {
        powers = new double[table.outputs][table.basis.richness + 1];
        degrees = new int[table.outputs];
    }

    /** Puts nitrous setting and boost in; the branches must stand already. */
    void set(
            EngineTable table,
            int speed,
            double[][] atPressure,
            double plenum,
            KitTable.Nitrous nitrous,
            FuelRow fuel) {
        SpeedTable at = table.speeds[speed];
        at.row(atPressure, plenum, nitrous.enthalpy(), nitrous.flow(), powers);
        for (int k = 0; k < degrees.length; k++) {
            degrees[k] = Polynomials.degree(powers[k], k < Probe.MARGINS ? Math.abs(powers[k][0]) : 1);
        }
        offset = at.richOffset(plenum, nitrous.flow());
        slope = at.richSlope(plenum, nitrous.flow()) * fuel.share(plenum);
        look(table, fuel.lowest, fuel.highest);
    }

    /** Finds out which states rule along the fuel settings, from a few places. */
    private void look(EngineTable table, double low, double high) {
        boolean torqueRules = false;
        boolean peakRules = false;
        boolean heldRules = false;
        for (int i = 0; i < SCAN; i++) {
            double fuel = low + (high - low) * i / (SCAN - 1);
            double x = Math.max(-1, Math.min(1, offset + slope * fuel));
            boolean overTorque = torque != null && Polynomials.at(powers[table.torque], x) < Course.RESERVE;
            boolean overPeak = peak != null && Polynomials.at(powers[table.peak], x) < Course.RESERVE;
            boolean first = overTorque && (!overPeak || torque.pressure(fuel) <= peak.pressure(fuel));
            torqueRules |= first;
            peakRules |= overPeak && !first;
            heldRules |= !overTorque && !overPeak;
        }
        tapered = torqueRules || peakRules;
        only = null;
        if (!heldRules && torqueRules != peakRules) {
            only = torqueRules ? torque : peak;
        }
    }
}
