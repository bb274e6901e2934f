package org.shotledger.bottle;

/**
 * One pass: only seconds in which liquid leaves at a pressure within the band are part of it.
 *
 * @param start bottle and contents at its start
 * @param history what the bottle did, from opening to the end of the pass
 * @param end why it ended
 */
public record Pass(Charge start, History history, PassEnd end) {
    /**
     * Whether it lasted the whole time.
     *
     * @return true for the whole time
     */
    public boolean whole() {
        return end == PassEnd.FULL_TIME;
    }

    /**
     * How long liquid left within the band.
     *
     * @return time, s
     */
    public double seconds() {
        return history.last().time();
    }

    /**
     * Nitrous oxide that left.
     *
     * @return mass, kg
     */
    public double massUsed() {
        return history.balance().massOut();
    }

    /**
     * Nitrous oxide left in the bottle.
     *
     * @return mass, kg
     */
    public double massLeft() {
        return history.left().mass();
    }

    /**
     * Lowest pressure of the pass, the dip after opening included.
     *
     * @return absolute pressure, Pa
     */
    public double lowestPressure() {
        return history.moments().stream().mapToDouble(Sample::pressure).min().orElseThrow();
    }
}
