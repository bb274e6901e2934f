package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * A valve or filter given by its flow coefficient.
 *
 * <p>{@code Kv} is the water flow in m3/h at 1 bar (IEC 60534-2-1); as a loss {@code dp = (m / A)^2 v / 2} with
 * {@code A = Kv sqrt(rho_w / (2 * 1e5)) / 3600}, rho_w = 1000 kg/m3.
 *
 * @param name name in reports
 * @param flowCoefficient Kv fully open, m3/h at 1 bar
 * @param opening share of the full coefficient, 0 (closed) to 1
 * @param volume inside volume, m3
 */
public record FlowValve(String name, double flowCoefficient, double opening, double volume) implements FeedElement {
    /** US flow coefficient (gal/min at 1 psi) per Kv. */
    public static final double CV_PER_KV = 1.156;

    private static final double AREA_PER_KV = Math.sqrt(1000 / 2e5) / 3600;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public FlowValve {
        Checks.positive("Valve " + name, "flow coefficient Kv", flowCoefficient, "m3/h");
        Checks.within("Valve " + name, "opening", opening, 0, 1, "");
        Checks.notNegative("Valve " + name, "volume", volume, "m3");
    }

    /**
     * An open valve.
     *
     * @param name name in reports
     * @param flowCoefficient Kv, m3/h at 1 bar
     * @return the part
     */
    public static FlowValve open(String name, double flowCoefficient) {
        return new FlowValve(name, flowCoefficient, 1, 0);
    }

    @Override
    public double outletPressure(FluidState inlet, double massFlow) {
        return massFlow == 0 ? inlet.pressure() : Losses.outlet(inlet, head(massFlow));
    }

    @Override
    public double shortfall(FluidState inlet, double massFlow) {
        return Losses.shortfall(inlet, head(massFlow), massFlow);
    }

    private double head(double massFlow) {
        double flux = massFlow / (AREA_PER_KV * flowCoefficient * opening);
        return 0.5 * flux * flux;
    }

    @Override
    public String blocked() {
        return opening > 0 ? "" : name + " is closed.";
    }
}
