package org.shotledger.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ReactingGasTest {
    private static Map<Element, Double> atoms(double lambda, double nitrous) {
        // C8H18 with air and nitrous oxide.
        double oxygen = 12.5 * lambda;
        double air = oxygen * (1 - nitrous);
        double n2o = 2 * oxygen * nitrous;
        return Map.of(
                Element.C,
                8.0,
                Element.H,
                18.0,
                Element.O,
                2 * oxygen,
                Element.N,
                2 * 3.7276 * air + 2 * n2o,
                Element.AR,
                0.0446 * air);
    }

    /** Two ways to one answer: the multipliers of NASA RP-1311 and one equation in the potential of oxygen. */
    @Test
    void gives_the_composition_of_the_general_equilibrium() {
        var random = new SplittableRandom(7);
        for (int i = 0; i < 200; i++) {
            double lambda = random.nextDouble(0.5, 2.0);
            double t = random.nextDouble(1200, 3800);
            double p = Math.exp(random.nextDouble(Math.log(1e5), Math.log(3e7)));
            Map<Element, Double> atoms = atoms(lambda, random.nextDouble(0, 0.9));
            GasMixture known = Equilibrium.DISSOCIATED.at(atoms, t, p);
            double volume = known.moles() * Gas.MOLAR_CONSTANT * t / p;
            ReactingGas gas = new ReactingGas(atoms);
            ReactingGas.State state = gas.at(t, volume);
            assertEquals(1, state.pressure() / p, 1e-8);
            for (Gas species : known.gases()) {
                double x = known.moles(species) / known.moles();
                assertEquals(x, gas.composition().moles(species) / state.moles(), 1e-8, species.name());
            }
            double energy = known.enthalpy(t) - p * volume;
            assertEquals(energy, state.energy(), 1e-8 * Math.abs(known.moles() * Gas.MOLAR_CONSTANT * t));
        }
    }

    @Test
    void energy_and_entropy_lead_back_to_the_temperature() {
        ReactingGas gas = new ReactingGas(atoms(0.8, 0.3));
        ReactingGas.State state = gas.at(2900, 0.02);
        assertEquals(2900, gas.ofEnergy(state.energy(), 0.02, 2200).temperature(), 1e-4);
        assertEquals(2900, gas.ofEntropy(state.entropy(), 0.02, 3500).temperature(), 1e-4);
    }

    /** At constant entropy {@code dU = -p dV}: the slope of the energy along an expansion is the pressure. */
    @Test
    void expansion_at_constant_entropy_does_the_work_of_its_pressure() {
        ReactingGas gas = new ReactingGas(atoms(0.95, 0.2));
        ReactingGas.State peak = gas.at(3000, 0.02);
        ReactingGas.State before = gas.ofEntropy(peak.entropy(), 0.02 * 0.999, 3000);
        ReactingGas.State after = gas.ofEntropy(peak.entropy(), 0.02 * 1.001, 3000);
        assertEquals(1, (before.energy() - after.energy()) / (peak.pressure() * 0.02 * 0.002), 1e-5);
        ReactingGas.State cold = gas.at(1700, 0.05);
        ReactingGas.State frozen = gas.frozen(cold, 0.05 * 1.002);
        assertEquals(
                1, (cold.energy() - frozen.energy()) / (0.5 * (cold.pressure() + frozen.pressure()) * 0.0001), 1e-5);
    }
}
