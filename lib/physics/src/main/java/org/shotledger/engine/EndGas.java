package org.shotledger.engine;

import java.util.OptionalDouble;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Octane;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.gas.DryAir;
import org.shotledger.gas.Gases;

/**
 * What decides knock in a charge beside its pressure.
 *
 * @param octane research octane number of both fuels together; empty where one does not state it
 * @param lambda of all oxygen and all fuel
 * @param oxygenRatio mole fraction of oxygen in the charge, that of nitrous oxide counted as set free, over that of dry air
 * @param nitrous whether nitrous oxide or its fuel is in the charge
 * @param warm temperature the charge would have without any cooling by evaporation, K
 * @param fullCooling temperature drop by complete evaporation of all fuel and nitrous oxide, K
 * @param counted temperature of the fresh charge as the trapped charge counted it, late evaporation included, K
 * @param freshShare share of fresh charge in what is trapped, by mass, 0 to 1
 */
public record EndGas(
        OptionalDouble octane,
        double lambda,
        double oxygenRatio,
        boolean nitrous,
        double warm,
        double fullCooling,
        double counted,
        double freshShare) {
    /**
     * The end gas of a point.
     *
     * @param intake what met in the intake
     * @param charge what the engine breathes
     * @param trapped what is in the cylinder
     * @return the end gas
     */
    public static EndGas of(Intake intake, Charge charge, TrappedCharge trapped) {
        Mixture mix = charge.mixture();
        double gas = DryAir.specificHeat(intake.airTemperature()) * mix.dryAir()
                + mix.nitrous() * Gases.N2O.heatCapacity(charge.temperature()) / Oxidisers.NITROUS_OXIDE_MOLAR_MASS
                + mix.mainFlow() * mix.mainFuel().vapourHeatCapacity()
                + mix.nitrousFuelFlow() * mix.nitrousFuel().vapourHeatCapacity();
        double air = intake.airTemperature();
        double nitrousHeat = mix.nitrous()
                * (Gases.N2O.enthalpy(air) / Gases.N2O.molarMass()
                        - ChargeMixing.nitrousEnthalpy(intake.nitrousEnthalpy()));
        double fuelHeat =
                mix.mainFlow() * heat(intake.main(), air) + mix.nitrousFuelFlow() * heat(intake.nitrousFuel(), air);
        return new EndGas(
                Octane.of(mix).map(o -> OptionalDouble.of(o.research())).orElse(OptionalDouble.empty()),
                mix.lambda(),
                oxygen(mix) / DryAir.OXYGEN,
                mix.nitrous() > 0 || mix.nitrousFuelFlow() > 0,
                air,
                (nitrousHeat + fuelHeat) / gas,
                charge.temperature() - trapped.evaporated() / trapped.freshMass() * mix.totalFlow() / gas,
                trapped.freshMass() / trapped.mass());
    }

    private static double heat(Intake.FuelSupplied supplied, double air) {
        return supplied.fuel().vapourEnthalpy(air) - supplied.fuel().liquidEnthalpy(supplied.temperature());
    }

    private static double oxygen(Mixture mix) {
        double air = mix.dryAir() / DryAir.MOLAR_MASS;
        double nitrous = mix.nitrous() / Oxidisers.NITROUS_OXIDE_MOLAR_MASS;
        double rest = mix.waterVapour() / Oxidisers.WATER_MOLAR_MASS
                + mix.mainFlow() / mix.mainFuel().molarMass()
                + mix.nitrousFuelFlow() / mix.nitrousFuel().molarMass();
        return (air * DryAir.OXYGEN + nitrous / 2) / (air + 1.5 * nitrous + rest);
    }

    /**
     * Temperature of the end gas with another cooling than the trapped charge has.
     *
     * @param trapped temperature when compression begins as the trapped charge has it, K
     * @param credited cooling counted on, K
     * @return K
     */
    public double temperature(double trapped, double credited) {
        return trapped + freshShare * (warm - credited - counted);
    }
}
