package org.shotledger.pass;

/** What the bottle does while it empties, told by the caller. */
public interface NitrousSupply {
    /** Shot of constant strength that weighs nothing: for a car without nitrous, or where the bottle is of no interest. */
    NitrousSupply NONE = new NitrousSupply() {
        @Override
        public double massFlow(double used) {
            return 0;
        }

        @Override
        public double strength(double used) {
            return 1;
        }
    };

    /**
     * Flow with the valves fully open.
     *
     * @param used nitrous oxide taken since the start, kg
     * @return kg/s
     */
    double massFlow(double used);

    /**
     * What the shot gives at this state of the bottle, over what it gives at the start.
     *
     * @param used nitrous oxide taken since the start, kg
     * @return 0 to about 1
     */
    double strength(double used);
}
