package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * Homogeneous-equilibrium flow: one velocity, one temperature, constant entropy, phases in equilibrium.
 *
 * <p>{@code G(p) = rho sqrt(2 (h0 - h))} along {@code s = s0}; the critical flux is its maximum, which lies where the velocity
 * equals the equilibrium speed of sound, or at the kink where the second phase first appears (there the speed of sound jumps
 * down). Source: any two-phase text, e.g. G. B. Wallis, One-dimensional Two-phase Flow (1969), ch. 2; exact with the equation
 * of state. Range: every stagnation state of the equation of state; a throat below the triple point is cut off there. Known
 * error for nitrous oxide: with discharge coefficient 0.80 within 3 % for supercharge above 1.2 MPa; up to 25 % too low for
 * near-saturated liquid in short holes, because boiling needs time (measured points of AIAA 2013-3636).
 */
public final class HomogeneousEquilibrium implements OrificeFlow {
    /** The model as a swappable part. */
    public static final HomogeneousEquilibrium MODEL = new HomogeneousEquilibrium();

    private static final double TEMPERATURE_TOLERANCE = 1e-8;

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
        if (downstreamPressure >= stagnation.pressure()) {
            return throat(stagnation, 0, Choking.NONE);
        }
        Isentrope path = new Isentrope(stagnation);
        Throat critical = critical(path);
        if (downstreamPressure <= critical.pressure()) {
            return critical;
        }
        FluidState state = path.atPressure(downstreamPressure);
        return throat(state, path.velocitySquared(state), Choking.NONE);
    }

    /**
     * Flux at a throat pressure along the isentrope, not limited at choking.
     *
     * @param stagnation state upstream at rest
     * @param pressure throat pressure, Pa, from the triple-point pressure to the stagnation pressure
     * @return flux, kg/(m2 s); falls again below the critical pressure
     */
    public static double unlimitedFlux(FluidState stagnation, double pressure) {
        Isentrope path = new Isentrope(stagnation);
        FluidState state = path.atPressure(pressure);
        return state.density() * Math.sqrt(path.velocitySquared(state));
    }

    private static Throat critical(Isentrope path) {
        if (!path.flashes()) {
            return singlePhaseThroat(path, path.lowestPressure());
        }
        FluidState kink = path.atSaturation();
        boolean atKink = !path.stagnation.isSaturated();
        if (atKink && path.excess(kink) >= 0) {
            return singlePhaseThroat(path, kink.pressure());
        }
        if (atKink && path.excess(path.mixtureAt(path.saturationTemperature)) >= 0) {
            return throat(kink, path.velocitySquared(kink), Choking.FLASH_INCEPTION);
        }
        return twoPhaseThroat(path);
    }

    private static Throat singlePhaseThroat(Isentrope path, double low) {
        FluidState end = path.atPressure(low);
        if (path.excess(end) < 0) {
            return throat(end, path.velocitySquared(end), Choking.NONE);
        }
        double pressure = Roots.find(p -> path.excess(path.atPressure(p)), low, path.stagnation.pressure(), 1e-9 * low);
        FluidState state = path.atPressure(pressure);
        return throat(state, path.velocitySquared(state), Choking.SONIC);
    }

    private static Throat twoPhaseThroat(Isentrope path) {
        double high = path.saturationTemperature;
        double low = NitrousOxide.TRIPLE_TEMPERATURE;
        FluidState end = path.mixtureAt(low);
        if (path.excess(end) < 0) {
            return throat(end, path.velocitySquared(end), Choking.NONE);
        }
        double temperature = Roots.find(t -> path.excess(path.mixtureAt(t)), low, high, TEMPERATURE_TOLERANCE);
        FluidState state = path.mixtureAt(temperature);
        return throat(state, path.velocitySquared(state), Choking.SONIC);
    }

    private static Throat throat(FluidState state, double velocitySquared, Choking choking) {
        double velocity = Math.sqrt(velocitySquared);
        return new Throat(
                state.density() * velocity,
                state.pressure(),
                state.temperature(),
                state.quality(),
                state.density(),
                velocity,
                choking);
    }

    @Override
    public String title() {
        return "homogeneous equilibrium";
    }

    @Override
    public String knownError() {
        return "3 % for supercharged liquid with a coefficient of 0.80; up to 25 % low for near-saturated liquid";
    }

    @Override
    public double flux(FluidState stagnation, double downstreamPressure) {
        return massFlux(stagnation, downstreamPressure);
    }

    @Override
    public Throat throat(FluidState stagnation, double downstreamPressure) {
        return throatAt(stagnation, downstreamPressure);
    }
}
