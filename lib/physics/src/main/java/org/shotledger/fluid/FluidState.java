package org.shotledger.fluid;

/**
 * One equilibrium state of the fluid.
 *
 * <p>Enthalpy, entropy and internal energy are zero-based at the saturated liquid at 101 325 Pa (h = s = 0 there).
 * The {@code quality} tells the phase: NaN in a single-phase state away from saturation, 0 for saturated liquid, 1 for
 * saturated vapour, between them a mixture. On the saturation line itself (quality exactly 0 or 1) cp, cv and sound
 * speed are those of the phase alone. Inside the dome cp is NaN (it has no finite value: temperature does not rise at
 * constant pressure), cv is that of the mixture kept in equilibrium, and the sound speed is the
 * homogeneous-equilibrium one, far below that of either phase.
 *
 * @param temperature temperature, K
 * @param pressure absolute pressure, Pa
 * @param density density, kg/m3
 * @param enthalpy specific enthalpy, J/kg
 * @param entropy specific entropy, J/(kg K)
 * @param internalEnergy specific internal energy, J/kg
 * @param cp isobaric heat capacity, J/(kg K); NaN inside the dome
 * @param cv isochoric heat capacity, J/(kg K)
 * @param soundSpeed speed of sound, m/s; at homogeneous equilibrium inside the dome
 * @param quality vapour mass fraction, 0 to 1, or NaN in a single-phase state
 */
public record FluidState(
        double temperature,
        double pressure,
        double density,
        double enthalpy,
        double entropy,
        double internalEnergy,
        double cp,
        double cv,
        double soundSpeed,
        double quality) {

    /**
     * Tells whether liquid and vapour are both present.
     *
     * @return true when the quality lies strictly between 0 and 1
     */
    public boolean isTwoPhase() {
        return quality > 0 && quality < 1;
    }

    /**
     * Tells whether the state lies on or inside the saturation dome.
     *
     * @return true when the quality is a number, the two ends included
     */
    public boolean isSaturated() {
        return !Double.isNaN(quality);
    }

    /**
     * Specific volume.
     *
     * @return volume per mass, m3/kg
     */
    public double specificVolume() {
        return 1 / density;
    }
}
