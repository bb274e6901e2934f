package org.shotledger.bottle;

/**
 * Mass and energy balance of one run: what the bottle held, what left it, what heat came in. Energy is that of contents and shell together.
 *
 * @param massBefore nitrous oxide at the start, kg
 * @param massAfter nitrous oxide at the end, kg
 * @param massOut nitrous oxide that left, the integral of the flow, kg
 * @param energyBefore internal energy of contents and shell at the start, J
 * @param energyAfter the same at the end, J
 * @param enthalpyOut enthalpy that left with the flow, J
 * @param heatIn heat from air and heater, J
 */
public record Balance(
        double massBefore,
        double massAfter,
        double massOut,
        double energyBefore,
        double energyAfter,
        double enthalpyOut,
        double heatIn) {

    /**
     * What the mass balance leaves open.
     *
     * @return share of the mass at the start; rounding only
     */
    public double massError() {
        return Math.abs(massAfter + massOut - massBefore) / massBefore;
    }

    /**
     * What the energy balance leaves open.
     *
     * @return share of the energy that is there or passes through; rounding only
     */
    public double energyError() {
        double whole = Math.abs(energyBefore) + Math.abs(enthalpyOut) + Math.abs(heatIn);
        return Math.abs(energyAfter + enthalpyOut - heatIn - energyBefore) / whole;
    }
}
