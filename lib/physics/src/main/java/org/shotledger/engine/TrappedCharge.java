package org.shotledger.engine;

import org.shotledger.fuel.FrozenProducts;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.HeatRelease;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.gas.DryAir;
import org.shotledger.gas.Gas;
import org.shotledger.gas.GasPolynomial;
import org.shotledger.gas.Gases;
import org.shotledger.units.Require;

/**
 * What a cylinder has trapped when the intake valve closes: the fresh charge, the rest of the fuel evaporated inside, and
 * the residual gas of the clearance volume.
 *
 * @param freshMass of a cycle and cylinder, fuel included, kg
 * @param residualMass kg
 * @param temperature after mixing, K
 * @param unburned properties before burning
 * @param burned properties of the products
 * @param heat released in a cycle and cylinder, J
 */
public record TrappedCharge(
        double freshMass,
        double residualMass,
        double temperature,
        GasPolynomial unburned,
        GasPolynomial burned,
        double heat) {
    private static final double WATER_GAS = 3.5;
    private static final double FUEL_SHAPE_TEMPERATURE = 330;
    private static final Gas FUEL_SHAPE = Gases.of("iso-C8H18");

    /**
     * Residual gas and evaporation in the cylinder.
     *
     * @param exhaustPressure before the turbine, Pa
     * @param temperature of the residual gas, K, 600 to 1600; 900 to 1200 is usual
     * @param lateEvaporation share of the liquid fuel that takes its heat from the gas before burning, 0 to 1; 0.5 is
     *     common practice
     * @param liquidFraction share of all fuel that arrives liquid, 0 to 1
     */
    public record Inside(double exhaustPressure, double temperature, double lateEvaporation, double liquidFraction) {
        /** Checks the ranges. */
        public Inside {
            Require.within("exhaust pressure", exhaustPressure, 1e4, 2e6, "Pa");
            Require.within("temperature of the residual gas", temperature, 600, 1600, "K");
            Require.within("late evaporation", lateEvaporation, 0, 1, "");
            Require.within("liquid fraction of the fuel", liquidFraction, 0, 1, "");
        }
    }

    /**
     * Traps a charge.
     *
     * @param engine the engine
     * @param rpm crankshaft speed
     * @param charge what the engine breathes
     * @param release its heat
     * @param inside residual gas and evaporation
     * @return the trapped charge
     */
    public static TrappedCharge of(Engine engine, double rpm, Charge charge, HeatRelease release, Inside inside) {
        Require.positive("crankshaft speed", rpm, "rpm");
        double cycles = engine.cylinders() * rpm / 120;
        Mixture mix = charge.mixture();
        double fresh = mix.totalFlow() / cycles;
        GasPolynomial products = burned(mix);
        double residual =
                inside.exhaustPressure() * engine.clearance() / (products.gasConstant() * inside.temperature());
        GasPolynomial unburned = unburned(mix, residual / fresh);
        double late = inside.liquidFraction() * inside.lateEvaporation();
        double evaporation = late == 0
                ? 0
                : late
                        * (mix.mainFlow() * mix.mainFuel().vaporisationHeat(charge.temperature())
                                + mix.nitrousFuelFlow() * mix.nitrousFuel().vaporisationHeat(charge.temperature()))
                        / cycles;
        double temperature = mixed(charge.temperature(), fresh, unburned, residual, products, inside, evaporation);
        return new TrappedCharge(fresh, residual, temperature, unburned, products, release.total() / cycles);
    }

    /** Temperature at which fresh charge and residual gas hold their joint enthalpy. */
    private static double mixed(
            double fresh,
            double freshMass,
            GasPolynomial unburned,
            double residualMass,
            GasPolynomial products,
            Inside inside,
            double evaporation) {
        double target =
                residualMass * (enthalpy(products, inside.temperature()) - enthalpy(products, fresh)) - evaporation;
        double cold = enthalpy(unburned, fresh);
        double t = fresh;
        for (int i = 0; i < 20; i++) {
            double miss = (freshMass + residualMass) * (enthalpy(unburned, t) - cold) - target;
            t -= miss / ((freshMass + residualMass) * (unburned.heatCapacity(t) + unburned.gasConstant()));
        }
        return t;
    }

    private static double enthalpy(GasPolynomial gas, double t) {
        return gas.energy(t) + gas.gasConstant() * t;
    }

    private static GasPolynomial burned(Mixture mix) {
        return addProducts(new GasPolynomial.Builder(), mix, 1).build();
    }

    private static GasPolynomial unburned(Mixture mix, double residualShare) {
        double air = mix.dryAir() / DryAir.MOLAR_MASS;
        GasPolynomial.Builder builder = new GasPolynomial.Builder()
                .add(Gases.N2, air * DryAir.NITROGEN)
                .add(Gases.O2, air * DryAir.OXYGEN)
                .add(Gases.AR, air * DryAir.ARGON)
                .add(Gases.CO2, air * DryAir.CARBON_DIOXIDE)
                .add(Gases.H2O, mix.waterVapour() / Oxidisers.WATER_MOLAR_MASS)
                .add(Gases.N2O, mix.nitrous() / Oxidisers.NITROUS_OXIDE_MOLAR_MASS);
        addFuel(builder, mix.mainFuel(), mix.mainFlow());
        addFuel(builder, mix.nitrousFuel(), mix.nitrousFuelFlow());
        return addProducts(builder, mix, residualShare).build();
    }

    /** Fuel vapour with the shape of iso-octane's heat capacity and the fuel's own value at 330 K. */
    private static void addFuel(GasPolynomial.Builder builder, Fuel fuel, double mass) {
        double own = fuel.vapourHeatCapacity() * fuel.molarMass();
        double scale = own / FUEL_SHAPE.heatCapacity(FUEL_SHAPE_TEMPERATURE);
        builder.add(FUEL_SHAPE, mass / fuel.molarMass(), mass, scale);
    }

    private static GasPolynomial.Builder addProducts(GasPolynomial.Builder builder, Mixture mix, double share) {
        FrozenProducts p = FrozenProducts.of(mix, WATER_GAS);
        return builder.add(Gases.CO2, share * p.carbonDioxide())
                .add(Gases.CO, share * p.carbonMonoxide())
                .add(Gases.H2O, share * p.steam())
                .add(Gases.H2, share * p.hydrogen())
                .add(Gases.O2, share * p.oxygen())
                .add(Gases.N2, share * p.nitrogen())
                .add(Gases.AR, share * p.argon());
    }

    /**
     * All mass in the cylinder.
     *
     * @return kg
     */
    public double mass() {
        return freshMass + residualMass;
    }

    /**
     * The cycle input with this charge.
     *
     * @param rpm crankshaft speed
     * @param burning course of burning
     * @param wallTemperature K
     * @param exhaustPressure Pa
     * @param octane octane number for the knock index
     * @return ready for {@link Cylinder#run}
     */
    public CycleInput cycle(double rpm, Wiebe burning, double wallTemperature, double exhaustPressure, double octane) {
        return new CycleInput(
                rpm, mass(), temperature, unburned, burned, heat, burning, wallTemperature, exhaustPressure, octane);
    }
}
