package org.shotledger.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FlameTest {
    static GasMixture withAir(String fuel, double oxygen, double phi) {
        Map<Gas, Double> amounts = new LinkedHashMap<>();
        amounts.put(Gases.of(fuel), phi);
        amounts.put(Gases.O2, oxygen);
        amounts.put(Gases.N2, oxygen * 3.76);
        return GasMixture.of(amounts);
    }

    @Test
    void methane_and_air_reach_the_handbook_temperature() {
        // Turns, An Introduction to Combustion, Table B.1 (from memory): 2226 K.
        Flame flame = Flame.of(withAir("CH4", 2, 1), 298.15, 101325, Equilibrium.DISSOCIATED);
        assertEquals(2226, flame.temperature(), 3);
    }

    @Test
    void atoms_and_enthalpy_are_kept_for_any_mixture() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 200; i++) {
            Map<Element, Double> atoms = new EnumMap<>(Element.class);
            double c = random.nextDouble(0.1, 1);
            double h = random.nextDouble(0.1, 3);
            atoms.put(Element.C, c);
            atoms.put(Element.H, h);
            atoms.put(Element.O, random.nextDouble(1.1, 4) * c);
            atoms.put(Element.N, random.nextDouble(0.1, 20));
            atoms.put(Element.AR, random.nextDouble(0.001, 0.2));
            double t = random.nextDouble(900, 4500);
            double p = Math.exp(random.nextDouble(Math.log(1e4), Math.log(3e7)));
            GasMixture found = Equilibrium.DISSOCIATED.at(atoms, t, p);
            atoms.forEach((e, n) -> assertEquals(n, found.atoms(e), 1e-10 * n, e.toString()));
            double water =
                    found.moles(Gases.CO) * found.moles(Gases.H2O) / found.moles(Gases.CO2) / found.moles(Gases.H2);
            double gibbs = Gases.CO.gibbs(t) + Gases.H2O.gibbs(t) - Gases.CO2.gibbs(t) - Gases.H2.gibbs(t);
            assertEquals(1, water / Math.exp(-gibbs), 1e-8, "law of mass action of the water-gas reaction");
        }
    }
}
