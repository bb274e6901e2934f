package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/** Pressure loss {@code dp = q v} with the mean specific volume of inlet and outlet. */
final class Losses {
    /** Above this share of the inlet pressure the homogeneous stream is close to choking and the loss law ends. */
    private static final double LARGEST_SHARE = 0.4;

    private static final int STEPS = 30;

    private Losses() {}

    /**
     * Outlet pressure.
     *
     * @param inlet state before
     * @param head loss per specific volume: K G^2 / 2, kg^2/(m4 s2)
     */
    static double outlet(FluidState inlet, double head) {
        double inletVolume = inlet.specificVolume();
        double drop = head * inletVolume;
        Stream stream = new Stream();
        for (int i = 0; i < STEPS; i++) {
            if (!(drop < LARGEST_SHARE * inlet.pressure())) {
                return Double.NaN;
            }
            double outletVolume =
                    stream.to(inlet.pressure() - drop, inlet.enthalpy()).volume();
            double next = 0.5 * head * (inletVolume + outletVolume);
            if (Math.abs(next - drop) <= 1e-9 * inlet.pressure()) {
                return inlet.pressure() - next;
            }
            drop = next;
        }
        return Double.NaN;
    }

    /** Shortfall of a part whose loss grows with the square of the flow. */
    static double shortfall(FluidState inlet, double head, double massFlow) {
        double drop = head * inlet.specificVolume();
        double largest = massFlow * Math.sqrt(LARGEST_SHARE * inlet.pressure() / drop);
        return Math.min(-1e-6 * massFlow, 0.9 * largest - massFlow);
    }
}
