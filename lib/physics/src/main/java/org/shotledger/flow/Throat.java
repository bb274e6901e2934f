package org.shotledger.flow;

/**
 * The state at the narrowest section of an ideal (discharge coefficient 1) hole.
 *
 * @param massFlux mass flow per area, kg/(m2 s)
 * @param pressure absolute static pressure at the section, Pa
 * @param temperature temperature there, K
 * @param quality vapour mass fraction there, NaN in a single phase
 * @param density density there, kg/m3
 * @param velocity velocity there, m/s
 * @param choking what limits the flow
 */
public record Throat(
        double massFlux,
        double pressure,
        double temperature,
        double quality,
        double density,
        double velocity,
        Choking choking) {

    /**
     * Tells whether a lower downstream pressure would not raise the flow.
     *
     * @return true when choked in any way
     */
    public boolean choked() {
        return choking != Choking.NONE;
    }
}
