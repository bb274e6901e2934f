package org.shotledger.bottle;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * A bottle with its contents at one moment, liquid and vapour in equilibrium.
 *
 * @param bottle the vessel
 * @param mass nitrous oxide in it, kg
 * @param state state of the whole contents at density mass / water capacity
 * @param wallTemperature temperature of the shell, K
 */
public record Charge(Bottle bottle, double mass, FluidState state, double wallTemperature) {

    /**
     * Pressure in the bottle.
     *
     * @return absolute pressure, Pa
     */
    public double pressure() {
        return state.pressure();
    }

    /**
     * Temperature of the contents.
     *
     * @return temperature, K
     */
    public double temperature() {
        return state.temperature();
    }

    /**
     * Liquid in the bottle.
     *
     * @return mass of liquid, kg; all of it when the bottle is liquid-full
     */
    public double liquidMass() {
        return state.isSaturated() ? mass * (1 - state.quality()) : isDense() ? mass : 0;
    }

    /**
     * Vapour in the bottle.
     *
     * @return mass of vapour, kg
     */
    public double vapourMass() {
        return mass - liquidMass();
    }

    /**
     * Share of the volume that is liquid.
     *
     * @return 0 to 1
     */
    public double liquidVolumeFraction() {
        if (!state.isSaturated()) {
            return isDense() ? 1 : 0;
        }
        double liquid = NitrousOxide.saturatedLiquid(state.temperature()).density();
        return liquidMass() / liquid / bottle.waterCapacity();
    }

    /**
     * State that enters the siphon tube: saturated liquid while there is any, else the whole contents.
     *
     * @return state at rest
     */
    public FluidState outlet() {
        return state.isTwoPhase() ? NitrousOxide.saturatedLiquid(state.temperature()) : state;
    }

    private boolean isDense() {
        return state.density() > NitrousOxide.CRITICAL_DENSITY;
    }
}
