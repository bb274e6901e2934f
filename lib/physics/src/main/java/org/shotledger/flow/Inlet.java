package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.SaturationCurve;

/** What stands before a hole, as far as measured holes differ by it. */
public enum Inlet {
    /** Liquid whose pressure is at least 1.3 times its boiling pressure. */
    SUBCOOLED("subcooled liquid"),
    /** Liquid at its boiling pressure or less than 1.3 times above it. */
    SATURATED("liquid near its boiling point"),
    /** Liquid with bubbles. */
    TWO_PHASE("two-phase inlet"),
    /** Saturated or superheated vapour, gas. */
    VAPOUR("vapour"),
    /** Dense fluid above the critical temperature. */
    DENSE("dense fluid above the critical temperature");

    /** Above this ratio to the boiling pressure late boiling no longer shows in measured flows (our choice from the data). */
    static final double SUBCOOLED_FROM = 1.3;

    private final String words;

    Inlet(String words) {
        this.words = words;
    }

    /**
     * The words a reader sees.
     *
     * @return for example {@code "two-phase inlet"}
     */
    public String words() {
        return words;
    }

    /**
     * The kind of a state.
     *
     * @param state state at rest before a hole
     * @return its kind
     */
    public static Inlet of(FluidState state) {
        if (state.isSaturated()) {
            return state.quality() <= 0 ? SATURATED : state.quality() >= 1 ? VAPOUR : TWO_PHASE;
        }
        if (state.density() < NitrousOxide.CRITICAL_DENSITY) {
            return VAPOUR;
        }
        if (state.temperature() >= NitrousOxide.CRITICAL_TEMPERATURE) {
            return DENSE;
        }
        return aboveBoiling(state) >= SUBCOOLED_FROM ? SUBCOOLED : SATURATED;
    }

    /** Pressure over boiling pressure; 1 for a mixture. Only below the critical temperature. */
    static double aboveBoiling(FluidState state) {
        return state.isSaturated() ? 1 : state.pressure() / SaturationCurve.pressure(state.temperature());
    }
}
