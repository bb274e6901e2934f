package org.shotledger.nitrous;

import org.shotledger.flow.FlowFactor;
import org.shotledger.flow.FlowTest;

/**
 * A flow test of the car's own jets and what it told.
 *
 * @param name name in the sheet
 * @param side which jets were tested
 * @param test what was measured
 * @param bore hole diameter of each jet fitted, m
 * @param nozzles number of nozzles open
 * @param pressure mean bottle pressure during the discharge, or flowing pressure of the liquid at its rail, Pa absolute
 * @param expected flow that was expected before the test, kg/s
 * @param stateDeviation one standard deviation of the logarithm of the expected flow from what is not known of the state
 * @param before what was known of the jets' factor before the test
 * @param after what is known of it after the test
 */
public record FlowTested(
        String name,
        JetSide side,
        FlowTest test,
        double bore,
        int nozzles,
        double pressure,
        double expected,
        double stateDeviation,
        FlowFactor before,
        FlowFactor after) {

    /** Jets off their tested bore by more than this are told to be other jets: our choice. */
    private static final double SAME_BORE = 0.15;

    /** Beyond this many standard deviations the test and what was known before do not go together: our choice. */
    private static final double SURPRISE = 2;

    /**
     * Tells whether other jets are so different in size that the test says less about them.
     *
     * @param other hole diameter, m
     * @return true beyond 15 % of the tested bore
     */
    public boolean isFarFrom(double other) {
        return Math.abs(other / bore - 1) > SAME_BORE;
    }

    /**
     * Tells whether the test lies so far from what was known before that one of the two is wrong.
     *
     * @return true beyond two standard deviations of both
     */
    public boolean isSurprising() {
        return Math.abs(after.surprise()) > SURPRISE;
    }
}
