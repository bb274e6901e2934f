package org.shotledger.flow;

import org.shotledger.curve.Bracket;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * Homogeneous-equilibrium flow: one velocity, one temperature, constant entropy, phases in equilibrium.
 *
 * <p>{@code G(p) = rho sqrt(2 (h0 - h))} along {@code s = s0}; the critical flux is its maximum, which lies where the velocity
 * equals the equilibrium speed of sound, or at the kink where the second phase first appears (there the speed of sound jumps
 * down). Source: any two-phase text, e.g. G. B. Wallis, One-dimensional Two-phase Flow (1969), ch. 2; exact with the equation
 * of state. Range: every stagnation state of the equation of state; a throat below the triple point is cut off there. Known
 * error for nitrous oxide: measured holes pass 0.57 to 1.0 of it, smooth nozzles just above the boiling line up to 1.7 of it,
 * because boiling needs time ({@link OrificeLaw#CLASS} and its table say which hole does what).
 */
public final class HomogeneousEquilibrium {
    private static final double TEMPERATURE_TOLERANCE = 1e-6;
    private static final double USUAL_RATIO = 0.93;

    private HomogeneousEquilibrium() {}

    /**
     * Largest flux from a stagnation state.
     *
     * @param stagnation state upstream at rest
     * @return the throat with its flux, kg/(m2 s)
     */
    public static Throat criticalFlux(FluidState stagnation) {
        return critical(new Isentrope(stagnation));
    }

    /**
     * Flux to a downstream pressure, limited at the critical point: it never falls as the downstream pressure falls.
     *
     * @param stagnation state upstream at rest
     * @param downstreamPressure absolute pressure behind the hole, Pa
     * @return flux, kg/(m2 s); zero when downstream is at or above upstream
     */
    public static double massFlux(FluidState stagnation, double downstreamPressure) {
        return throatAt(stagnation, downstreamPressure).massFlux();
    }

    /**
     * Throat for a downstream pressure.
     *
     * @param stagnation state upstream at rest
     * @param downstreamPressure absolute pressure behind the hole, Pa
     * @return the throat: critical, or at the downstream pressure where that limits
     */
    public static Throat throatAt(FluidState stagnation, double downstreamPressure) {
        Checks.behind("Homogeneous equilibrium flow", downstreamPressure);
        Isentrope path = new Isentrope(stagnation);
        Throat critical = critical(path);
        if (downstreamPressure <= critical.pressure()) {
            return critical;
        }
        path.toPressure(Math.min(downstreamPressure, stagnation.pressure()));
        return path.throat(Choking.NONE);
    }

    /**
     * Flux at a throat pressure along the isentrope, not limited at choking.
     *
     * @param stagnation state upstream at rest
     * @param pressure throat pressure, Pa, from the triple-point pressure to the stagnation pressure
     * @return flux, kg/(m2 s); falls again below the critical pressure
     */
    public static double unlimitedFlux(FluidState stagnation, double pressure) {
        return new Isentrope(stagnation).fluxAt(pressure);
    }

    /** One inlet state with its choking point, for many pressures behind. */
    static final class Expansion {
        private final Isentrope path;
        private final Throat critical;

        Expansion(FluidState stagnation) {
            path = new Isentrope(stagnation);
            critical = critical(path);
        }

        double chokingPressure() {
            return critical.pressure();
        }

        double flux(double behind) {
            return behind <= critical.pressure() ? critical.massFlux() : path.fluxAt(behind);
        }
    }

    static Throat critical(Isentrope path) {
        if (!path.flashes()) {
            path.toPressure(path.lowestPressure());
            return singlePhaseThroat(path);
        }
        if (!path.saturated) {
            path.toSaturation();
            if (path.excess() >= 0) {
                return singlePhaseThroat(path);
            }
            if (path.mixtureExcess(path.saturationTemperature) >= 0) {
                path.toSaturation();
                return path.throat(Choking.FLASH_INCEPTION);
            }
        }
        return twoPhaseThroat(path);
    }

    /** The path stands at the low end of its single-phase part. */
    private static Throat singlePhaseThroat(Isentrope path) {
        if (path.excess() < 0) {
            return path.throat(Choking.NONE);
        }
        path.toPressure(path.sonicPressure(path.density()));
        return path.throat(Choking.SONIC);
    }

    private static Throat twoPhaseThroat(Isentrope path) {
        double lowest = NitrousOxide.TRIPLE_TEMPERATURE;
        double high = path.saturationTemperature;
        double atHigh = path.mixtureExcess(high);
        double low = Math.max(USUAL_RATIO * high, lowest);
        double atLow = path.mixtureExcess(low);
        while (atLow < 0) {
            if (low <= lowest) {
                return path.throat(Choking.NONE);
            }
            high = low;
            atHigh = atLow;
            low = Math.max(USUAL_RATIO * low, lowest);
            atLow = path.mixtureExcess(low);
        }
        double temperature = Bracket.root(path::mixtureExcess, low, atLow, high, atHigh, TEMPERATURE_TOLERANCE);
        path.toMixture(temperature);
        return path.throat(Choking.SONIC);
    }
}
