package org.shotledger.flow;

/**
 * What a hole passes, with its predictive band and where it comes from.
 *
 * @param massFlow the flow, kg/s: the best estimate unless the hole is taken elsewhere in its band
 * @param low lower end of the 90 % band, kg/s
 * @param high upper end of the 90 % band, kg/s
 * @param shareOfEquilibrium the flow over homogeneous-equilibrium flow through the bore, coefficient 1
 * @param model name of the law that acted, which is the default where the law that was chosen does not cover the state
 * @param holeClass class of the hole and of what stands before it
 * @param source where law and coefficient come from, several sources parted by a semicolon
 * @param outside sentences that say what lies outside the measured holes and which way it tends; empty when nothing does
 * @param measured true when a flow test of this hole sets flow and band
 * @param throat state at the narrowest section by homogeneous equilibrium
 */
public record JetFlow(
        double massFlow,
        double low,
        double high,
        double shareOfEquilibrium,
        String model,
        HoleClass holeClass,
        String source,
        String outside,
        boolean measured,
        Throat throat) {

    /**
     * The error of the estimate.
     *
     * @return one standard deviation relative to the flow, from the whole width of the band; zero when nothing flows
     */
    public double expectedError() {
        return low > 0 ? new FlowBand(low, low, high).logarithmicDeviation() : 0;
    }
}
