package org.shotledger.trust;

import static org.shotledger.trust.AirChecks.one;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.shotledger.fuel.Blend;
import org.shotledger.fuel.Elements;
import org.shotledger.fuel.EvaporationCooling;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Octane;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.fuel.Part;

/** Stoichiometry, heating values, blends, octane numbers, lambda with nitrous oxide (H04, H07-19, H07-20, H08-09). */
final class FuelChecks {
    private FuelChecks() {}

    static Map<String, Function<Row, double[]>> all() {
        Map<String, Function<Row, double[]>> m = new LinkedHashMap<>();
        m.put("H04-01", r -> one(Fuels.ISO_OCTANE.stoichiometricAirFuel()));
        m.put("H04-02", r -> one(Fuels.TOLUENE.stoichiometricAirFuel()));
        m.put("H04-03", r -> one(Fuels.ETHANOL.stoichiometricAirFuel()));
        m.put("H04-05", r -> one(Elements.ofMolecule(1, r.in("y"), 0, 0).oxygenDemand() / Oxidisers.OXYGEN_IN_DRY_AIR));
        m.put("H04-06", r -> {
            double moles = oxygenMoles(Fuels.ISO_OCTANE) * 4.76;
            double airFuel = moles * 28.97 / 114.22;
            return new double[] {moles, airFuel, 1.5 * airFuel};
        });
        m.put(
                "H04-07",
                r -> one(Fuels.lowerHeatingValue(r.in("HHV") * 1e3, 9 * r.in("H") / 100, r.in("ufg") * 1e3) / 1e3));
        m.put("H04-09", r -> one(oxygenMoles(Fuels.N_HEPTANE) / 0.21 * (0.21 * 32 + 0.79 * 28) / 100));
        m.put("H04-10", r -> one(oxygenMoles(Fuels.METHANOL) * 1.2 * 4.76 * 8.314 * 300 / 100));
        m.put(
                "H04-18", r -> new double[] {
                    Fuels.ETHANOL.vaporisationHeat(298.15) / 1e3, Fuels.ETHANOL.vaporisationHeat(351.4) / 1e3
                });
        m.put("H04-15", r ->
                new double[] {EvaporationCooling.heatPerAir(396, 9.0), EvaporationCooling.heatPerAir(506, 6.45)});
        m.put("H04-20", r -> one(Fuels.ISO_OCTANE.lowerHeatingValue() / 1e6));
        m.put("H04-21", r -> one(Fuels.TOLUENE.lowerHeatingValue() / 1e6));
        m.put("H04-22", r -> one(Fuels.ETHANOL.lowerHeatingValue() / 1e6));
        m.put("H04-24", r -> new double[] {
            100 * Fuels.ETHANOL.elements().oxygen(),
            100 * Fuels.METHANOL.elements().oxygen(),
            100 * Oxidisers.OXYGEN_IN_NITROUS_OXIDE
        });
        m.put("H04-25", r -> one(Fuels.ISO_OCTANE.stoichiometricNitrousFuel()));
        m.put("H04-26", r -> one(Fuels.TOLUENE.stoichiometricNitrousFuel()));
        m.put("H04-27", r -> one(Fuels.ETHANOL.stoichiometricNitrousFuel()));
        m.put("H04-28", r -> one(Fuels.METHANOL.stoichiometricNitrousFuel()));
        m.put("H04-30", r -> {
            double rich = ethanolByMass(0.85);
            double lean = ethanolByMass(0.51);
            return new double[] {rich, rich * 9 + (1 - rich) * 14.6, lean, lean * 9 + (1 - lean) * 14.6};
        });
        m.put("H04-32", r -> one(new Octane(r.in("RON"), r.in("MON")).antiKnockIndex()));
        m.put("H04-33", r -> one(new Octane(r.in("RON"), r.in("MON")).index(r.in("K"))));
        m.put("H08-08", r -> one(new Octane(95, 85).index(r.in("K"))));
        m.put("H04-34", r -> new double[] {Fuels.specificGravity(32), Fuels.specificGravity(35)});
        m.put("H04-35", r -> {
            double ethanol = ethanolByMass(0.10);
            return new double[] {ethanol * 9 + (1 - ethanol) * 14.6, 100 * (0.10 * 76330 / 116090 + 0.90)};
        });
        m.put(
                "H07-20",
                r -> one(new Mixture(r.in("ma"), 0, r.in("mN2O"), Fuels.ISO_OCTANE, 0.0252, Fuels.ISO_OCTANE, 0)
                        .lambda()));
        m.put("H08-09", r -> new double[] {
            EvaporationCooling.temperatureDrop(350, 14.6, 1.005),
            EvaporationCooling.temperatureDrop(921, 9.0, 1.005),
            EvaporationCooling.temperatureDrop(1177, 6.45, 1.005)
        });
        m.put("H08-10", r -> one(EvaporationCooling.temperatureDrop(396, 9.0, 0.24)));
        return m;
    }

    private static double oxygenMoles(Fuel fuel) {
        return fuel.oxygenDemand() * fuel.molarMass() / (2 * Elements.OXYGEN);
    }

    private static double ethanolByMass(double volume) {
        Fuel ethanol = withDensity(Fuels.ETHANOL, 789);
        Fuel gasoline = withDensity(Fuels.GASOLINE, 745);
        return Blend.massFraction(List.of(new Part(ethanol, volume), new Part(gasoline, 1 - volume)), 0);
    }

    private static Fuel withDensity(Fuel f, double density) {
        return new Fuel(
                f.name(),
                f.elements(),
                f.molarMass(),
                density,
                f.expansion(),
                f.lowerHeatingValue(),
                f.vaporisation(),
                f.liquidHeatCapacity(),
                f.vapourHeatCapacity(),
                f.octane(),
                f.source());
    }
}
