package org.shotledger.boost;

/**
 * A place on a compressor map.
 *
 * @param correctedFlow kg/s
 * @param pressureRatio total to total
 * @param correctedRpm corrected wheel speed, rpm
 * @param efficiency total-to-total isentropic efficiency
 * @param along place on the speed line, 0 at surge to 1 at choke
 * @param surgeFlow corrected flow at the surge line at this pressure ratio, kg/s
 * @param chokeFlow corrected flow at the choke end of this speed, kg/s
 */
public record MapPoint(
        double correctedFlow,
        double pressureRatio,
        double correctedRpm,
        double efficiency,
        double along,
        double surgeFlow,
        double chokeFlow) {
    /**
     * Distance from surge, {@code (W - W_surge) / W} at this pressure ratio.
     *
     * @return share of the flow that may be lost before surge
     */
    public double surgeMargin() {
        return (correctedFlow - surgeFlow) / correctedFlow;
    }

    /**
     * Distance from choke, {@code (W_choke - W) / W} at this speed.
     *
     * @return share of the flow that may be gained before choke
     */
    public double chokeMargin() {
        return (chokeFlow - correctedFlow) / correctedFlow;
    }
}
