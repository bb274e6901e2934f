package org.shotledger.pass;

import org.shotledger.units.Require;

/**
 * Everything that makes one pass.
 *
 * @param vehicle the car
 * @param transmission its gears
 * @param engine what the engine gives
 * @param arming when nitrous flows; {@link Arming#NEVER} for a pass without
 * @param nitrous what the bottle does
 * @param strip the line
 * @param startSpeed at the start, m/s, zero for a standing start
 * @param traceStep time between rows of the trace, s, 0.001 to 1
 */
public record DrivenPass(
        RollingCar vehicle,
        Transmission transmission,
        PassEngine engine,
        Arming arming,
        NitrousSupply nitrous,
        Strip strip,
        double startSpeed,
        double traceStep) {
    public DrivenPass {
        Require.given("vehicle", vehicle);
        Require.given("transmission", transmission);
        Require.given("engine", engine);
        Require.given("arming", arming);
        Require.given("nitrous supply", nitrous);
        Require.given("strip", strip);
        Require.within("speed at the start", startSpeed, 0, 150, "m/s");
        Require.within("time between rows of the trace", traceStep, 0.001, 1, "s");
    }

    /**
     * Drives it: {@code m_eff dv/dt = F - R} with {@code m_eff = m + I_w/r^2 + I_e G^2 (1 - loss)/r^2} in gear, held to
     * {@link RollingCar#accelerationLimit}; where grip or the front wheels rule, the engine is taken to be held back to what is used, as a good
     * driver or controller does. While the clutch slips the engine stays at its launch speed. A shift takes the torque away and the engine
     * to its next speed; that energy is counted as lost. Known error: no slip of the tyres (some per cent of engine speed at the start), no
     * inertia of the torque converter's oil.
     *
     * @return marks, traces and the energy balance
     * @throws IllegalArgumentException when the car never reaches the finish; the sentence says where it stays
     */
    public PassResult run() {
        return new PassRun(this).go();
    }
}
