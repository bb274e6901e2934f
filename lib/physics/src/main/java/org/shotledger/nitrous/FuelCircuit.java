package org.shotledger.nitrous;

import org.shotledger.supply.PumpGroup;
import org.shotledger.supply.Regulator;

/**
 * The separate fuel supply of a wet kit: cell, pump, regulator, solenoid, jets.
 *
 * <p>The fuel stays liquid, so solenoid and jets are incompressible orifices in series,
 * {@code mdot = sqrt(2 rho (p_rail - p_nozzle)) / sqrt(1/(Cd A)_solenoid^2 + 1/(n Cd A_jet)^2)} (Bernoulli with
 * discharge coefficients). The regulator holds the rail while the pumps can follow; where they cannot, the rail settles
 * at the pressure at which pump and jets pass the same flow.
 *
 * @param pumps the pumps of this circuit
 * @param solenoid its solenoid
 * @param jetDischargeCoefficient discharge coefficient of a fuel jet, 0 to 1
 * @param cellVolume volume of the fuel cell, m3, positive
 */
public record FuelCircuit(
        PumpGroup pumps, Solenoid solenoid, double jetDischargeCoefficient, double cellVolume) {

    /** Checks the ranges. */
    public FuelCircuit {
        if (!(jetDischargeCoefficient > 0 && jetDischargeCoefficient <= 1)) {
            throw new IllegalArgumentException("The fuel jet's discharge coefficient is " + jetDischargeCoefficient
                    + "; allowed is above 0, at most 1.");
        }
        if (!(cellVolume > 0 && cellVolume < 0.2)) {
            throw new IllegalArgumentException(
                    "The fuel cell's volume is " + cellVolume + " m3; allowed is above 0 and below 0.2 m3.");
        }
    }

    /**
     * The pressures around the circuit.
     *
     * @param ambient ambient pressure, Pa absolute
     * @param plenum plenum pressure, which a boost-referenced regulator follows, Pa absolute
     * @param nozzle pressure at the nozzle, Pa absolute
     */
    public record Pressures(double ambient, double plenum, double nozzle) {}

    /**
     * What the circuit passes.
     *
     * @param massFlow fuel through all jets, kg/s
     * @param railPressure pressure after the regulator, Pa absolute
     * @param jetPressure pressure just before the jets, Pa absolute
     * @param pumpCapacity what the pumps could pass at the regulated pressure, kg/s
     * @param pumpLimited true when the pumps cannot hold the regulated pressure
     */
    public record FuelFlow(
            double massFlow, double railPressure, double jetPressure, double pumpCapacity, boolean pumpLimited) {

        /**
         * The same circuit passing a share of its flow, as when it is pulsed; the pressures are left as they are.
         *
         * @param share 0 or more
         * @return the scaled flow
         */
        public FuelFlow times(double share) {
            return new FuelFlow(share * massFlow, railPressure, jetPressure, pumpCapacity, pumpLimited);
        }
    }

    /**
     * Flow at given pressures.
     *
     * @param density fuel density, kg/m3
     * @param jets number of jets, at least 1
     * @param jetBore hole diameter of each, m
     * @param at the pressures around the circuit
     * @param regulator its regulator as it is set
     * @param voltage supply voltage at the pump's wiring, V
     * @return the flow; zero when the rail is not above the nozzle
     */
    public FuelFlow flow(
            double density, int jets, double jetBore, Pressures at, Regulator regulator, double voltage) {
        double rail = regulator.railPressure(at.ambient(), at.plenum());
        double area = effectiveArea(jets, jetBore);
        double wanted = flow(density, area, rail, at.nozzle());
        double capacity = density * pumps.capacity(rail - at.ambient(), voltage);
        if (wanted <= capacity) {
            return state(density, rail, wanted, capacity, false);
        }
        double settled = settle(density, area, at, rail, voltage);
        return state(density, settled, flow(density, area, settled, at.nozzle()), capacity, true);
    }

    /**
     * The jet that passes a wanted flow while the regulator holds the rail.
     *
     * @param massFlow fuel through all jets, kg/s, positive
     * @param density fuel density, kg/m3
     * @param jets number of jets, at least 1
     * @param at the pressures around the circuit
     * @param regulator its regulator as it is set
     * @return hole diameter of each jet, m
     * @throws IllegalArgumentException when the solenoid alone lets less pass
     */
    public double boreFor(double massFlow, double density, int jets, Pressures at, Regulator regulator) {
        double drop = regulator.railPressure(at.ambient(), at.plenum()) - at.nozzle();
        double through = drop > 0 ? flow(density, solenoid.effectiveArea(), at.nozzle() + drop, at.nozzle()) : 0;
        if (!(massFlow < through)) {
            throw new IllegalArgumentException("The fuel circuit must pass " + massFlow
                    + " kg/s, but its solenoid alone passes " + through + " kg/s at a pressure drop of " + drop
                    + " Pa; use a larger solenoid or more fuel pressure.");
        }
        double whole = massFlow / Math.sqrt(2 * density * drop);
        double jet = 1 / Math.sqrt(1 / (whole * whole) - 1 / square(solenoid.effectiveArea()));
        return Math.sqrt(4 * jet / (jets * jetDischargeCoefficient * Math.PI));
    }

    private FuelFlow state(double density, double rail, double flow, double capacity, boolean limited) {
        double drop = square(flow / solenoid.effectiveArea()) / (2 * density);
        return new FuelFlow(flow, rail, rail - drop, capacity, limited);
    }

    private double effectiveArea(int jets, double jetBore) {
        double jet = jets * jetDischargeCoefficient * Math.PI / 4 * jetBore * jetBore;
        return 1 / Math.sqrt(1 / square(solenoid.effectiveArea()) + 1 / square(jet));
    }

    private static double flow(double density, double area, double rail, double nozzle) {
        return rail > nozzle ? area * Math.sqrt(2 * density * (rail - nozzle)) : 0;
    }

    private double settle(double density, double area, Pressures at, double rail, double voltage) {
        double low = at.nozzle();
        double high = rail;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (flow(density, area, middle, at.nozzle()) < density * pumps.capacity(middle - at.ambient(), voltage)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double square(double x) {
        return x * x;
    }
}
