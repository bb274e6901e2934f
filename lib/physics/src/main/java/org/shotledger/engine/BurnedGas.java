package org.shotledger.engine;

import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Mixture;
import org.shotledger.gas.Gas;
import org.shotledger.gas.GasMixture;
import org.shotledger.gas.GasPolynomial;
import org.shotledger.gas.ReactingGas;

/**
 * Products of a charge for the closed cycle: in equilibrium where hot, frozen below 1700 K, as one gas whose energy and gas
 * constant depend on temperature. Equilibrium also depends on density; each temperature is taken at the volume at which an
 * expansion passes it.
 *
 * @param gas the products
 * @param heat of combustion at constant volume and 25 C into the frozen products, J for each unit of the mixture's flows
 */
record BurnedGas(GasPolynomial gas, double heat) {
    /** Lowest temperature of the fit, K: below it the products are frozen anyway. */
    private static final double WARM = 1350;
    /** Least span of the fit above the freezing temperature, K: our choice. */
    private static final double LEAST_SPAN = 400;
    /** Volume over clearance at which most of the charge has burned, and the exponent of {@code T ~ V^-n} behind it. */
    private static final double BURNED_VOLUME = 1.3;

    /** Exponent kappa - 1 of an expansion of burned gas; 1.25 +- 0.05 by Heywood, section 9.2, from memory. */
    private static final double EXPANSION_EXPONENT = 0.25;
    /** How far above the constant-volume peak the polynomial must still hold. */
    private static final double ABOVE_PEAK = 1.03;

    /** Where the search for the peak begins, K. */
    private static final double FIRST_GUESS = 2800;

    /**
     * Finds the products.
     *
     * @param mixture flows
     * @param temperature of the charge, K
     * @param clearance clearance volume filled for each unit of the mixture's flows, m3
     * @param compressionRatio geometric
     */
    static BurnedGas of(Mixture mixture, double temperature, double clearance, double compressionRatio) {
        double mass = mixture.totalFlow();
        GasPolynomial charge =
                ChargeGas.add(new GasPolynomial.Builder(), mixture).build();
        double formation = ChargeGas.formation(mixture);
        double compressed = charge.isentropic(temperature, 1 / compressionRatio);
        ReactingGas products = new ReactingGas(ChargeGas.atoms(mixture));
        double volume = BURNED_VOLUME * clearance;
        double hottest = products.ofEnergy(formation + mass * charge.energy(compressed), volume, FIRST_GUESS)
                .temperature();
        double span = Math.max(LEAST_SPAN, ABOVE_PEAK * hottest - FuelAirCycle.FREEZING);
        double top = hottest;
        products.at(FuelAirCycle.FREEZING, volumeAt(FuelAirCycle.FREEZING, top, volume));
        GasMixture frozenMixture = products.composition();
        GasPolynomial frozen =
                ChargeGas.add(new GasPolynomial.Builder(), frozenMixture, 1).build();
        double zero = frozenMixture.enthalpy(Fuel.REFERENCE_TEMPERATURE)
                - frozenMixture.moles() * Gas.MOLAR_CONSTANT * Fuel.REFERENCE_TEMPERATURE;
        double[] t = {WARM, FuelAirCycle.FREEZING, 0.4, 0.72, 1};
        double[] energy = new double[t.length];
        double[] constant = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            if (i < 2) {
                energy[i] = frozen.energy(t[i]);
                constant[i] = frozen.gasConstant();
                continue;
            }
            t[i] = FuelAirCycle.FREEZING + t[i] * span;
            ReactingGas.State state = products.at(t[i], volumeAt(t[i], top, volume));
            energy[i] = (state.energy() - zero) / mass;
            constant[i] = state.moles() * Gas.MOLAR_CONSTANT / mass;
        }
        return new BurnedGas(GasPolynomial.reacting(frozen, t, energy, constant), formation - zero);
    }

    private static double volumeAt(double t, double top, double volume) {
        return volume * Math.max(1 / BURNED_VOLUME, Math.pow(top / t, 1 / EXPANSION_EXPONENT));
    }
}
