package org.shotledger.fuel;

import org.shotledger.units.Require;

/**
 * Rich mixtures leave carbon monoxide and hydrogen in the proportion at which the water-gas reaction freezes,
 * {@code K = n_CO n_H2O / (n_CO2 n_H2)}; the heat they hold is not freed. K = 3.5 fits measured exhaust gas (Heywood,
 * Internal Combustion Engine Fundamentals, section 4.9, from memory).
 *
 * @param waterGasConstant K, 1 to 10
 * @param burnedFraction share of the available heat really freed, 0.8 to 1; the rest leaves as unburned fuel
 */
public record WaterGasCombustion(double waterGasConstant, double burnedFraction) implements CombustionModel {
    /** Heat of combustion of carbon monoxide, J/mol. */
    private static final double CO_HEAT = 283.0e3;
    /** Heat of combustion of hydrogen to steam, J/mol. */
    private static final double H2_HEAT = 241.8e3;

    /** The default: K = 3.5, 97 % burned (Heywood fig. 3-9 shows 0.95 to 0.98 lean of stoichiometric, from memory). */
    public static final WaterGasCombustion DEFAULT = new WaterGasCombustion(3.5, 0.97);

    /** Checks the constants. */
    public WaterGasCombustion {
        Require.within("water-gas constant", waterGasConstant, 1, 10, "");
        Require.within("burned fraction", burnedFraction, 0.8, 1, "");
    }

    @Override
    public HeatRelease burn(Mixture mixture) {
        double fuelPower = mixture.fuelPower();
        double freed = burnedFraction * fuelPower;
        boolean rich = mixture.lambda() < 1;
        if (rich) {
            FrozenProducts products = FrozenProducts.of(mixture, waterGasConstant);
            freed -= burnedFraction * (products.carbonMonoxide() * CO_HEAT + products.hydrogen() * H2_HEAT);
        }
        return new HeatRelease(
                freed,
                mixture.nitrous() * Oxidisers.NITROUS_OXIDE_DECOMPOSITION,
                fuelPower > 0 ? freed / fuelPower : 1,
                rich ? HeatRelease.Scarce.OXYGEN : HeatRelease.Scarce.FUEL);
    }

    @Override
    public String basis() {
        return "element balance with water-gas constant " + waterGasConstant
                + " (Heywood section 4.9), burned fraction " + burnedFraction;
    }
}
