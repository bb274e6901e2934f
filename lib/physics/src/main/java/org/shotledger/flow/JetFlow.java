package org.shotledger.flow;

/**
 * What a hole passes, with the spread of the models.
 *
 * @param massFlow best estimate, kg/s
 * @param low lower bracket, kg/s: homogeneous equilibrium with the same coefficient as a flooded hole
 * @param high upper bracket, kg/s: frozen expansion (Henry-Fauske), or the incompressible flux where nothing flashes
 * @param dischargeCoefficient coefficient used for the best estimate
 * @param expectedError expected relative error of the best estimate, one standard deviation
 * @param model name of the model of the best estimate
 * @param source where that model and its coefficient come from, several sources parted by a semicolon
 * @param throat state at the narrowest section by homogeneous equilibrium
 */
public record JetFlow(
        double massFlow,
        double low,
        double high,
        double dischargeCoefficient,
        double expectedError,
        String model,
        String source,
        Throat throat) {

    /**
     * The least flow to reckon with: where the models come together, as near the critical point, none of them is surer for it.
     *
     * @return the lower bracket, but at most the best estimate less its expected error, kg/s
     */
    public double least() {
        return Math.min(low, (1 - expectedError) * massFlow);
    }

    /**
     * The largest flow to reckon with.
     *
     * @return the upper bracket, but at least the best estimate and its expected error, kg/s
     */
    public double most() {
        return Math.max(high, (1 + expectedError) * massFlow);
    }
}
