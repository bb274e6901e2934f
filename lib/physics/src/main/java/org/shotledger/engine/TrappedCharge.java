package org.shotledger.engine;

import java.util.function.DoubleUnaryOperator;
import org.shotledger.curve.Bracket;
import org.shotledger.fuel.FrozenProducts;
import org.shotledger.fuel.FuelVapour;
import org.shotledger.fuel.Mixture;
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
 * @param heat released in a cycle and cylinder, J; what fuel still liquid takes while it burns is off it
 * @param evaporated heat that fuel took from the gas in the cylinder before compression, J
 * @param evaporating what fuel still liquid takes while it burns, J
 */
public record TrappedCharge(
        double freshMass,
        double residualMass,
        double temperature,
        GasPolynomial unburned,
        GasPolynomial burned,
        double heat,
        double evaporated,
        double evaporating) {
    /** Water-gas constant of rich exhaust as it leaves: Heywood, section 4.9, from memory. */
    private static final double WATER_GAS = 3.5;

    /** Within which the temperature of a charge still evaporating is found, K. */
    private static final double SETTLED = 1e-3;

    /**
     * Residual gas and evaporation in the cylinder.
     *
     * @param exhaustPressure before the turbine, Pa
     * @param temperature of the residual gas, K, 600 to 2000; 900 to 1200 is usual
     * @param lateEvaporation most that evaporates of the liquid fuel before compression and takes its heat from the gas, 0 to 1;
     *     0.5 is common practice. No more does than the gas can hold as vapour; the rest evaporates while it burns
     */
    public record Inside(double exhaustPressure, double temperature, double lateEvaporation) {
        public Inside {
            Require.within("exhaust pressure", exhaustPressure, 1e4, 2e6, "Pa");
            Require.within("temperature of the residual gas", temperature, 600, 2000, "K");
            Require.within("late evaporation", lateEvaporation, 0, 1, "");
        }
    }

    /**
     * Traps a charge whose products stay in chemical equilibrium while hot, as in {@link FuelAirCycle}. The heat is the
     * difference of the energies of formation, nitrous oxide's included, less what fuel still liquid takes to evaporate
     * while burning.
     *
     * @param engine the engine
     * @param rpm crankshaft speed
     * @param charge what the engine breathes
     * @param inside residual gas and evaporation
     * @return the trapped charge
     * @throws IllegalArgumentException so rich that soot would form
     */
    public static TrappedCharge reacting(Engine engine, double rpm, Charge charge, Inside inside) {
        double cycles = cycles(engine, rpm);
        Mixture mix = charge.mixture();
        BurnedGas burned =
                BurnedGas.of(mix, charge.temperature(), engine.clearance() * cycles, engine.compressionRatio());
        TrappedCharge vapour = trap(engine, cycles, charge, inside, burned.gas(), burned.heat() / cycles);
        return vapour.burning(charge.liquidHeat() / cycles - vapour.evaporated);
    }

    private TrappedCharge burning(double liquid) {
        return new TrappedCharge(
                freshMass, residualMass, temperature, unburned, burned, heat - liquid, evaporated, liquid);
    }

    private static double cycles(Engine engine, double rpm) {
        return engine.cylinders() * Require.positive("crankshaft speed", rpm, "rpm") / 120;
    }

    private static TrappedCharge trap(
            Engine engine, double cycles, Charge charge, Inside inside, GasPolynomial products, double heat) {
        Mixture mix = charge.mixture();
        double fresh = mix.totalFlow() / cycles;
        double residual =
                inside.exhaustPressure() * engine.clearance() / (products.gasConstant() * inside.temperature());
        GasPolynomial unburned = addProducts(ChargeGas.add(new GasPolynomial.Builder(), mix), mix, residual / fresh)
                .build();
        DoubleUnaryOperator mixed =
                evaporation -> mixed(charge.temperature(), fresh, unburned, residual, products, inside, evaporation);
        double stated = inside.lateEvaporation();
        double all = stated * charge.liquidHeat() / cycles;
        double temperature = Math.max(FuelVapour.COLDEST, mixed.applyAsDouble(all));
        DoubleUnaryOperator heatAt = charge.evaporationHeat(stated);
        double possible = heatAt.applyAsDouble(temperature) / cycles;
        if (possible < all) {
            double dry = mixed.applyAsDouble(0);
            temperature = Bracket.root(
                    t -> mixed.applyAsDouble(heatAt.applyAsDouble(t) / cycles) - t, temperature, dry, SETTLED);
            possible = heatAt.applyAsDouble(temperature) / cycles;
        }
        return new TrappedCharge(fresh, residual, temperature, unburned, products, heat, possible, 0);
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
        double step = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 20 && Math.abs(step) > 1e-9; i++) {
            double miss = (freshMass + residualMass) * (enthalpy(unburned, t) - cold) - target;
            step = miss / ((freshMass + residualMass) * (unburned.heatCapacity(t) + unburned.gasConstant()));
            t -= step;
        }
        return t;
    }

    private static double enthalpy(GasPolynomial gas, double t) {
        return gas.energy(t) + gas.gasConstant() * t;
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
     * Share of the heat of an all-vapour charge that is left when its liquid fuel has evaporated; the work of a
     * {@link FuelAirCycle}, which counts all fuel as vapour, shrinks by it.
     *
     * @return 0 to 1
     */
    public double heatLeft() {
        return heat / (heat + evaporating);
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
