package org.shotledger.pass;

/**
 * What the engine gives, told by the caller. The state of the turbocharger is one number whose meaning is the caller's: a share of full
 * boost, or a shaft speed; {@link TurboLag} has both.
 */
public interface PassEngine {

    /**
     * Torque at the flywheel, throttle open.
     *
     * @param rpm crankshaft speed
     * @param throttleSeconds time since the throttle opened, s; zero while a shift cuts the torque
     * @param turbo state of the turbocharger
     * @param nitrous share of the shot that flows, times its strength at the bottle's state, 0 to about 1
     * @return N m
     */
    double torque(double rpm, double throttleSeconds, double turbo, double nitrous);

    /**
     * How the turbocharger is at the start.
     *
     * @return initial state
     */
    default double turboAtStart() {
        return 0;
    }

    /**
     * How fast its state changes.
     *
     * @param rpm crankshaft speed
     * @param throttleSeconds time since the throttle opened, s; zero while a shift cuts the torque
     * @param turbo its state
     * @param nitrous share of the shot that flows, as above
     * @return change of the state, 1/s of its unit
     */
    default double turboRate(double rpm, double throttleSeconds, double turbo, double nitrous) {
        return 0;
    }
}
