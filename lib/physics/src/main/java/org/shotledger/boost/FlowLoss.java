package org.shotledger.boost;

import org.shotledger.units.Require;

/**
 * Pressure loss of a filter, pipe or cooler, {@code dp = dp_ref (W/W_ref)^2 (rho_ref/rho)}.
 *
 * @param name what causes it
 * @param pressureLoss loss at the reference flow, Pa, 0 to 100 kPa
 * @param referenceFlow kg/s, above zero
 * @param referenceDensity density of the air at which the loss was measured, kg/m3, 0.3 to 6
 */
public record FlowLoss(String name, double pressureLoss, double referenceFlow, double referenceDensity) {
    public FlowLoss {
        Require.named("flow loss", name);
        Require.within("pressure loss of " + name, pressureLoss, 0, 100e3, "Pa");
        Require.positive("reference flow of " + name, referenceFlow, "kg/s");
        Require.within("reference density of " + name, referenceDensity, 0.3, 6, "kg/m3");
    }

    /**
     * The loss.
     *
     * @param flow kg/s
     * @param density of the air where it flows, kg/m3
     * @return Pa
     */
    public double loss(double flow, double density) {
        double share = flow / referenceFlow;
        return pressureLoss * share * share * referenceDensity / density;
    }
}
