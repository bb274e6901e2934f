package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * A fitting, bend, screen or siphon entry with a loss coefficient on the velocity head.
 *
 * @param name name in reports
 * @param bore bore the coefficient refers to, m
 * @param coefficient loss coefficient K, zero or above
 */
public record LocalLoss(String name, double bore, double coefficient) implements FeedElement {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when one lies outside its range
     */
    public LocalLoss {
        Checks.positive("Loss " + name, "bore", bore, "m");
        Checks.notNegative("Loss " + name, "loss coefficient", coefficient, "");
    }

    @Override
    public double volume() {
        return 0;
    }

    @Override
    public double outletPressure(FluidState inlet, double massFlow) {
        return Losses.outlet(inlet, head(massFlow));
    }

    @Override
    public double shortfall(FluidState inlet, double massFlow) {
        return Losses.shortfall(inlet, head(massFlow), massFlow);
    }

    private double head(double massFlow) {
        double flux = massFlow / (Math.PI / 4 * bore * bore);
        return 0.5 * coefficient * flux * flux;
    }
}
