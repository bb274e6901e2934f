package org.shotledger.budget;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.DENSITY;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.PRESSURE_DIFFERENCE;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.SPECIFIC_ENERGY;

import org.shotledger.build.Build;
import org.shotledger.fuel.Fuel;

/** The nitrous fuel from its regulator to the jets, and the two fuels. */
final class FuelEntries {
    private FuelEntries() {}

    static void write(LedgerPen pen, LedgerSubject from) {
        Evaluation peak = from.peak();
        Build build = from.build();
        var kit = build.wetKit().fuel();
        pen.sheet(
                "fuel-pressure",
                "set pressure of the nitrous fuel",
                "p_F",
                PRESSURE_DIFFERENCE,
                kit.regulator().basePressure(),
                "wet-kit.fuel.regulator.base-pressure");
        pen.sheet(
                "boost-reference",
                "boost reference of its regulator",
                "k_b",
                RATIO,
                kit.regulator().boostReference(),
                "wet-kit.fuel.regulator.boost-reference");
        pen.calculated(
                        "fuel-rail",
                        "pressure at the nitrous fuel rail",
                        "p_r",
                        ABSOLUTE_PRESSURE,
                        peak.nitrousFuel().railPressure())
                .by("p_a + p_F + k_b (p_m - p_a)", "definition")
                .on("ambient-pressure", "fuel-pressure", "boost-reference", "plenum-pressure");
        fuelProperties(
                pen,
                "nitrous-fuel",
                "nitrous fuel",
                build.fuels().nitrous(),
                build.fuels().temperature());
        fuelProperties(
                pen,
                "main-fuel",
                "main fuel",
                build.fuels().main(),
                build.fuels().temperature());
        pen.calculated(
                        "nitrous-fuel-flow",
                        "nitrous fuel flow",
                        "m_F",
                        MASS_FLOW,
                        peak.nitrousFuel().massFlow())
                .by("sqrt(2 rho (p_r - p_m)) over solenoid and jets in series", "Bernoulli with discharge coefficients")
                .on("fuel-rail", "plenum-pressure", "fuel-jet", "nitrous-fuel-density");
    }

    private static void fuelProperties(LedgerPen pen, String key, String name, Fuel fuel, double temperature) {
        pen.published(
                key + "-density",
                "density of the " + name + ", " + fuel.name(),
                "rho",
                DENSITY,
                fuel.density(temperature),
                "property at the fuel's temperature",
                fuel.source());
        pen.published(
                key + "-oxygen",
                "oxygen demand of the " + name + ", kg per kg",
                "s",
                RATIO,
                fuel.oxygenDemand(),
                "atom balance to carbon dioxide and water",
                fuel.source());
        pen.published(
                key + "-heat",
                "lower heating value of the " + name,
                "H",
                SPECIFIC_ENERGY,
                fuel.lowerHeatingValue(),
                "property",
                fuel.source());
    }
}
