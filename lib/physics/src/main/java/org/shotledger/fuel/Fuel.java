package org.shotledger.fuel;

import java.util.Optional;
import org.shotledger.units.Require;

/**
 * A liquid fuel as the budget needs it.
 *
 * @param name what it is called
 * @param elements what it is made of
 * @param molarMass mean molar mass of its vapour, kg/mol, 0.01 to 0.4
 * @param density liquid density at 15 C, kg/m3, 500 to 1300
 * @param expansion thermal expansion of the liquid's volume, 1/K, 0 to 0.003
 * @param lowerHeatingValue heat of combustion, liquid fuel to water vapour at 25 C, J/kg, -2.6 to 60 MJ/kg; liquid
 *     water counts with minus its heat of vaporisation
 * @param vaporisation heat of vaporisation and its temperature
 * @param liquidHeatCapacity heat capacity of the liquid, J/(kg K), 1000 to 5000
 * @param vapourHeatCapacity heat capacity of the vapour near 330 K, J/(kg K), 500 to 4000
 * @param octane octane numbers, empty where not known
 * @param source where the figures come from
 */
public record Fuel(
        String name,
        Elements elements,
        double molarMass,
        double density,
        double expansion,
        double lowerHeatingValue,
        Vaporisation vaporisation,
        double liquidHeatCapacity,
        double vapourHeatCapacity,
        Optional<Octane> octane,
        String source) {
    /** Temperature of the stated density, K. */
    public static final double DENSITY_TEMPERATURE = 288.15;
    /** Temperature at which the liquid's enthalpy is counted as zero, K. */
    public static final double REFERENCE_TEMPERATURE = 298.15;

    /** Temperature of the stated heat capacity of the vapour, K. */
    public static final double VAPOUR_HEAT_CAPACITY_TEMPERATURE = 330;

    public Fuel {
        Require.named("fuel", name);
        Require.given("composition of " + name, elements);
        Require.within("molar mass of " + name, molarMass, 0.01, 0.4, "kg/mol");
        Require.within("density of " + name, density, 500, 1300, "kg/m3");
        Require.within("thermal expansion of " + name, expansion, 0, 0.003, "1/K");
        Require.within("lower heating value of " + name, lowerHeatingValue, -2.6e6, 60e6, "J/kg");
        Require.given("heat of vaporisation of " + name, vaporisation);
        Require.within("liquid heat capacity of " + name, liquidHeatCapacity, 1000, 5000, "J/(kg K)");
        Require.within("vapour heat capacity of " + name, vapourHeatCapacity, 500, 4000, "J/(kg K)");
        Require.given("octane entry of " + name, octane);
        Require.named("source of " + name, source);
    }

    /**
     * Liquid density, {@code rho = rho15 / (1 + beta (T - 288.15))}.
     *
     * @param temperature liquid temperature, K, 230 to 360
     * @return kg/m3
     */
    public double density(double temperature) {
        Require.within("temperature", name, temperature, 230, 360, "K");
        return density / (1 + expansion * (temperature - DENSITY_TEMPERATURE));
    }

    /**
     * Oxygen needed for complete combustion, from the atom balance.
     *
     * @return kg O2 per kg of fuel
     */
    public double oxygenDemand() {
        return elements.oxygenDemand();
    }

    /**
     * Dry air needed for complete combustion.
     *
     * @return kg of dry air per kg of fuel
     */
    public double stoichiometricAirFuel() {
        return oxygenDemand() / Oxidisers.OXYGEN_IN_DRY_AIR;
    }

    /**
     * Nitrous oxide needed for complete combustion when it is the only oxidiser.
     *
     * @return kg of N2O per kg of fuel
     */
    public double stoichiometricNitrousFuel() {
        return oxygenDemand() / Oxidisers.OXYGEN_IN_NITROUS_OXIDE;
    }

    /**
     * Heating value per oxygen consumed; near 13 MJ/kg for liquid fuels (Thornton 1917).
     *
     * @return J per kg O2
     */
    public double heatPerOxygen() {
        return lowerHeatingValue / oxygenDemand();
    }

    /**
     * Heat of vaporisation at another temperature.
     *
     * @param temperature K, 230 to 420
     * @return J/kg
     */
    public double vaporisationHeat(double temperature) {
        Require.within("temperature", name, temperature, 230, 420, "K");
        return vaporisation.at(temperature);
    }

    /**
     * Enthalpy of the liquid against the liquid at 25 C.
     *
     * @param temperature K, 230 to 420
     * @return J/kg
     */
    public double liquidEnthalpy(double temperature) {
        return liquidHeatCapacity * (temperature - REFERENCE_TEMPERATURE);
    }

    /**
     * Enthalpy of the vapour against the liquid at 25 C.
     *
     * @param temperature K, 230 to 420
     * @return J/kg
     */
    public double vapourEnthalpy(double temperature) {
        return vaporisationHeat(REFERENCE_TEMPERATURE) + vapourHeatCapacity * (temperature - REFERENCE_TEMPERATURE);
    }
}
