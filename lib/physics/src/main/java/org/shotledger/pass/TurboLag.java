package org.shotledger.pass;

import org.shotledger.units.Require;

/** Rates of a turbocharger's state for {@link PassEngine#turboRate}. */
public final class TurboLag {
    private TurboLag() {}

    /**
     * First-order lag, {@code ds/dt = (s_end - s)/tau}: a description, not a model; the time constant is to be taken from a log.
     *
     * @param state now
     * @param end where it goes to
     * @param timeConstant s, above zero
     * @return 1/s of the state's unit
     */
    public static double firstOrder(double state, double end, double timeConstant) {
        return (end - state) / Require.positive("time constant of the lag", timeConstant, "s");
    }

    /**
     * Shaft with inertia, {@code I w dw/dt = P_turbine eta_m - P_compressor} (balance of power on the shaft).
     *
     * @param speed of the shaft, rad/s, above zero
     * @param inertia of both wheels and the shaft, kg m2, above zero
     * @param surplus turbine power less bearing loss less compressor power, W
     * @return rad/s2
     */
    public static double shaft(double speed, double inertia, double surplus) {
        Require.positive("speed of the turbocharger's shaft", speed, "rad/s");
        return surplus / (Require.positive("inertia of the turbocharger", inertia, "kg m2") * speed);
    }
}
