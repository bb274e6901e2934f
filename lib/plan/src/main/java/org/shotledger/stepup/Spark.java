package org.shotledger.stepup;

/**
 * The spark retard of one shot: what its setup has, beside the habit of the trade and what the closed cycle asks for.
 *
 * <p>The computed figure is not the one to trust alone: the model mixes the charge without heat from runners and valves, so it
 * is colder and knocks less than the real one.
 *
 * @param habitLow 1 degree for each 50 hp the nitrous adds at the crankshaft: common practice, no source
 * @param habitHigh 2 degrees for each 50 hp: common practice, no source
 * @param computed the least retard from the builder's own timing that keeps peak pressure and, against the same boost without
 *     nitrous, the knock integral; NaN when no retard up to 25 degrees does
 * @param planned the retard of the setup, with which every figure of the shot was worked out
 * @param peakPressure peak pressure with the planned retard, Pa absolute
 * @param knockRatio knock integral with the planned retard over that without nitrous; a comparison, not a proof
 */
public record Spark(
        double habitLow, double habitHigh, double computed, double planned, double peakPressure, double knockRatio) {

    /**
     * The most that habit and model ask for. Where that is more than is planned, begin there: set it in the setup and plan anew, for
     * the power falls with it.
     *
     * @return the largest of the habit's upper end, the computed and the planned one, crank degrees
     */
    public double most() {
        return Math.max(habitHigh, Double.isNaN(computed) ? planned : Math.max(computed, planned));
    }
}
