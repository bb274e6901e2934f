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

    /** The one-gas form goes through its states and joins the frozen gas without a jump. */
    @Test
    void a_reacting_polynomial_goes_through_its_states() {
        GasPolynomial frozen = new GasPolynomial.Builder()
                .add(Gases.N2, 0.75)
                .add(Gases.CO2, 0.12)
                .add(Gases.H2O, 0.13)
                .build();
        double[] t = {1350, 1700, 2200, 2700, 3200};
        double[] energy = new double[t.length];
        double[] constant = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            energy[i] = frozen.energy(t[i]) * (1 + 0.03 * i);
            constant[i] = frozen.gasConstant() * (1 + 0.005 * i);
        }
        GasPolynomial gas = GasPolynomial.reacting(frozen, t, energy, constant);
        for (int i = 0; i < t.length; i++) {
            assertEquals(1, gas.energy(t[i]) / energy[i], 1e-9);
            assertEquals(1, gas.gasConstant(t[i]) / constant[i], 1e-9);
            double slope = (gas.energy(t[i] + 0.5) - gas.energy(t[i] - 0.5));
            assertEquals(1, gas.heatCapacity(t[i]) / slope, 1e-5);
        }
        assertEquals(gas.energy(1000), gas.energy(1000.001), 2);
        assertEquals(frozen.energy(700), gas.energy(700), 0);
    }

    /** {@code T ds = du} at constant volume, and an isentrope returns where it came from. */
    @Test
    void volume_entropy_belongs_to_the_energy() {
        GasPolynomial air = new GasPolynomial.Builder()
                .add(Gases.N2, 0.79)
                .add(Gases.O2, 0.21)
                .build();
        for (double t : new double[] {300, 600, 999, 1400}) {
            double ds = air.volumeEntropy(t + 0.5) - air.volumeEntropy(t - 0.5);
            assertEquals(1, ds * t / air.heatCapacity(t), 2e-4);
        }
        double compressed = air.isentropic(300, 0.1);
        assertEquals(300, air.isentropic(compressed, 10), 1e-6);
        // Air tables (Keenan and Kaye): v_r falls tenfold from 300 K to some 731 K.
        assertEquals(731, compressed, 4);
    }
}
