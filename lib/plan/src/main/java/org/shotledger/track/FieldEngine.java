package org.shotledger.track;

import org.shotledger.pass.PassEngine;
import org.shotledger.pass.TurboLag;

/**
 * The engine of a pass: torque by the field, and the turbocharger's shaft with its inertia. The wastegate holds the boost asked for; while
 * a shift cuts the torque the shaft coasts.
 */
record FieldEngine(EngineField field, double turboInertia, double launchRpm) implements PassEngine {
    /** Time constant with which a wastegate brings the boost to its target, s: common practice, no source. */
    private static final double WASTEGATE = 0.05;
    /** Time constant with which a shaft coasts while a shift cuts the torque, s: common practice, no source. */
    private static final double COASTING = 1.0;

    /** Below this speed a shaft does nothing; a trial step of the integrator may look there, rad/s: our choice. */
    private static final double SLOWEST = 100;

    @Override
    public double torque(double rpm, double throttleSeconds, double turbo, double nitrous) {
        return field.torque(rpm, field.plenum(rpm, turbo, nitrous), nitrous);
    }

    @Override
    public double turboAtStart() {
        return field.shaftWithoutBoost(launchRpm);
    }

    @Override
    public double turboRate(double rpm, double throttleSeconds, double turbo, double nitrous) {
        if (throttleSeconds <= 0) {
            return TurboLag.firstOrder(turbo, field.shaftWithoutBoost(rpm), COASTING);
        }
        double free = TurboLag.shaft(
                Math.max(turbo, SLOWEST), turboInertia, field.surplus(rpm, field.plenum(rpm, turbo, nitrous), nitrous));
        double held = TurboLag.firstOrder(turbo, field.shaftWanted(rpm, nitrous), WASTEGATE);
        return Math.min(free, held);
    }
}
